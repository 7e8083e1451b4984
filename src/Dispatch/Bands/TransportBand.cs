using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Bands;

/// <summary>
/// What a class of animals and plants bears on its way, °C: what to keep inside, from which forecast a
/// parcel is held, and from which it never goes.
/// </summary>
public sealed record TransportBand
{
    /// <summary>Letter of the class.</summary>
    public required string Letter { get; init; }

    /// <summary>Who is in it.</summary>
    public required string Words { get; init; }

    /// <summary>Coldest inside the parcel, °C.</summary>
    public required double KeepLow { get; init; }

    /// <summary>Warmest inside the parcel, °C.</summary>
    public required double KeepHigh { get; init; }

    /// <summary>Held where a forecast is colder, °C.</summary>
    public required double HoldBelow { get; init; }

    /// <summary>Held where a forecast is warmer, °C.</summary>
    public required double HoldAbove { get; init; }

    /// <summary>Never where a forecast is colder, °C; null where none is known.</summary>
    public double? StopBelow { get; init; }

    /// <summary>Never where a forecast is warmer, °C.</summary>
    public required double StopAbove { get; init; }

    /// <summary>Inside the parcel it is not to be colder on any account, °C.</summary>
    public required double BearsLow { get; init; }

    /// <summary>Inside the parcel it is not to be warmer on any account, °C.</summary>
    public required double BearsHigh { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation Origin { get; init; }
}
