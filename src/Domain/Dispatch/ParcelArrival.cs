using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>How a parcel arrived; its evidence holds the same, frozen.</summary>
/// <param name="Parcel">Number of the parcel.</param>
/// <param name="DeliveredAt">When the carrier brought it, UTC.</param>
/// <param name="Counts">Sent and dead of each content.</param>
public sealed record ParcelArrival(int Parcel, DateTime DeliveredAt, Seq<ArrivalCount> Counts);
