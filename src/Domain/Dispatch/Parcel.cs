using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>How far a parcel is.</summary>
public enum ParcelState
{
    /// <summary>Its day is not fixed yet.</summary>
    Planned,

    /// <summary>Its verdict is frozen; it may be packed and labeled.</summary>
    Cleared,

    /// <summary>Given to the carrier.</summary>
    HandedOver,

    /// <summary>Arrived, and somebody said how.</summary>
    Arrived,

    /// <summary>It will not go.</summary>
    Dropped,
}

/// <summary>Something alive in a parcel.</summary>
/// <param name="Key">Key in the library: a species, a crew animal, a feeder, a plant.</param>
/// <param name="Count">Animals, cups of a culture, or pots.</param>
public sealed record LiveContent(string Key, int Count)
{
    /// <summary>Where it comes from: number of its tank or lot; empty where nobody said.</summary>
    public string From { get; init; } = "";

    /// <summary>Length from snout to vent, m; null for the adult's.</summary>
    public double? LengthMeters { get; init; }
}

/// <summary>A parcel with live goods, from the wish to its arrival.</summary>
public sealed record Parcel
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Number of the order; null for none.</summary>
    public int? Order { get; init; }

    /// <summary>Who gets it.</summary>
    public required string Recipient { get; init; }

    /// <summary>What lives in it.</summary>
    public required Seq<LiveContent> Contents { get; init; }

    /// <summary>Key of the region it goes to.</summary>
    public required string Region { get; init; }

    /// <summary>Key of the carrier's terms.</summary>
    public required string Carrier { get; init; }

    /// <summary>Name of the place where the hub is; empty where nobody knows.</summary>
    public string HubPlace { get; init; } = "";

    /// <summary>Name of the place it goes to.</summary>
    public string DestinationPlace { get; init; } = "";

    /// <summary>True where the customer picks it up at the depot.</summary>
    public bool IsDepotPickUp { get; init; }

    /// <summary>Day wished for; null for the first that works.</summary>
    public DateOnly? WishedDay { get; init; }

    /// <summary>Day it was cleared for; null before that.</summary>
    public DateOnly? ShipDay { get; init; }

    /// <summary>How far it is.</summary>
    public ParcelState State { get; init; }

    /// <summary>Keys of papers that were looked at and are with it.</summary>
    public Seq<string> Papers { get; init; } = [];

    /// <summary>What to remember.</summary>
    public string Note { get; init; } = "";
}
