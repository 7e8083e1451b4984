using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Lists;

namespace Litterfall.App.Shipping;

/// <summary>A case of <c>ship</c>: a parcel, and the day that is asked for.</summary>
/// <param name="Task">The parcel with all that it is judged by.</param>
/// <param name="Day">The day that is asked for; null for any.</param>
/// <param name="Notes">What was guessed while reading, one sentence each.</param>
public sealed record ShipCase(WeekTask Task, DateOnly? Day, Seq<string> Notes);
