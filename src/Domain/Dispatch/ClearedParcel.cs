using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>
/// A parcel whose verdict is frozen, with all that its papers say. Nothing is labeled from anything else.
/// </summary>
public sealed record ClearedParcel
{
    /// <summary>The parcel.</summary>
    public required Parcel Parcel { get; init; }

    /// <summary>The verdict of the day it leaves.</summary>
    public required DayVerdict Day { get; init; }

    /// <summary>How it is packed.</summary>
    public required PackingPlan Plan { get; init; }

    /// <summary>The carrier's terms.</summary>
    public required CarrierTerms Carrier { get; init; }

    /// <summary>Fingerprint of the link it was frozen in, 64 small hexadecimal digits.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Papers of the animals.</summary>
    public Seq<AnimalPaper> Papers { get; init; } = [];

    /// <summary>What the customer is told, a paragraph each.</summary>
    public Seq<string> Message { get; init; } = [];

    /// <summary>Address of who gets it, one line each.</summary>
    public Seq<string> Address { get; init; } = [];

    /// <summary>
    /// Why no label may be printed; empty where one may. It is the last door, and does not ask what was
    /// decided before: no Friday, no week-end, and only what the verdict allows.
    /// </summary>
    public string LabelRefusal =>
        Day.Day.DayOfWeek is DayOfWeek.Friday or DayOfWeek.Saturday or DayOfWeek.Sunday
            ? $"No label for a {Day.Day.DayOfWeek}: the parcel would lie over the week-end."
        : !Day.MayShip ? "No label: the verdict of this day does not let the parcel go."
        : Parcel.ShipDay != Day.Day ? "No label: the parcel is not cleared for this day."
        : Parcel.State is ParcelState.Planned or ParcelState.Dropped ? "No label: the parcel is not cleared."
        : Day.Verdict == ShipVerdict.DepotOnly && !Parcel.IsDepotPickUp
            ? "No label: on this day it may only be picked up at the depot."
        : !Plan.Fits ? $"No label: {Plan.Refusal}"
        : Fingerprint.Length != 64 ? "No label: the verdict is not frozen yet."
        : Day.Arrives is not { } arrives ? "No label: nobody knows the day it arrives."
        : arrives <= Day.Day || arrives.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday
            ? "No label: it would not arrive on a working day."
        : "";
}
