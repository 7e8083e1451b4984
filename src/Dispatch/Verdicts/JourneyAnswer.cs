using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>What the computed journeys say of a day.</summary>
internal sealed record JourneyAnswer
{
    /// <summary>Reasons.</summary>
    public required ImmutableArray<ShipReason> Reasons { get; init; }

    /// <summary>The best way of packing; null where none could be tried.</summary>
    public PackChoice? Choice { get; init; }

    /// <summary>In words, where packs keep the band and so pass a hold; empty where not.</summary>
    public string Passes { get; init; } = "";

    /// <summary>In a few words.</summary>
    public string Words { get; init; } = "";
}
