using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Bands;

/// <summary>
/// Classes of temperature. They are derived from critical maxima less the margin that keepers leave, and
/// from keeper practice; none of the limits is a published one for transport. They protect animals, so they
/// may stop all the same.
/// </summary>
public static class TransportBands
{
    /// <summary>Class of feeder cultures.</summary>
    public const string Feeders = "F";

    /// <summary>Class of plants and moss.</summary>
    public const string Plants = "G";

    /// <summary>Water in cups and moss freezes: nothing is borne below where no limit is known, °C.</summary>
    private const double Freezing = 0;

    /// <summary>All classes in the order of their letters.</summary>
    public static ImmutableArray<TransportBand> All { get; } =
    [
        Band("A", "the most heat-shy frogs", (16, 24), (13, 25), (5, 29)),
        Band("B", "other poison frogs, tree frogs, crested geckos", (17, 26), (13, 27), (3, 33)),
        Band("C", "warmth-loving tree frogs and mourning geckos", (18, 29), (12, 30), (3, 35)),
        Band("D", "temperate springtails and isopods", (10, 24), (7, 26), (null, 30)),
        Band("E", "tropical springtails, dwarf isopods, millipedes", (16, 28), (12, 30), (null, 32)),
        Band("F", "fruit fly cultures", (15, 26), (10, 28), (null, 30)),
        Band("G", "plants and moss", (10, 28), (5, 32), (2, 38)),
    ];

    /// <summary>The class of a letter; null where there is none.</summary>
    public static TransportBand? Find(string letter) =>
        All.FirstOrDefault(b => string.Equals(b.Letter, letter.Trim(), StringComparison.OrdinalIgnoreCase));

    private static TransportBand Band(
        string letter,
        string words,
        (double Low, double High) keep,
        (double Low, double High) hold,
        (double? Low, double High) stop
    ) =>
        new()
        {
            Letter = letter,
            Words = words,
            KeepLow = keep.Low,
            KeepHigh = keep.High,
            HoldBelow = hold.Low,
            HoldAbove = hold.High,
            StopBelow = stop.Low,
            StopAbove = stop.High,
            BearsLow = stop.Low ?? Freezing,
            BearsHigh = stop.High,
            Origin = new Citation(
                "own-derivation",
                $"bands from the heat limit less 5 K and keeper practice, class {letter}",
                Provenance.Recalled
            ),
        };
}
