using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;

namespace Litterfall.Planning.Water;

/// <summary>The hydraulic curve of a catalog entry.</summary>
public static class MaterialCurve
{
    /// <summary>
    /// The parameters as the catalog gives them; null when it has none. Saturated conductivity may be scaled
    /// to ask how far an answer moves over its range.
    /// </summary>
    /// <param name="entry">A soil, recipe, moss, litter, aggregate or grid.</param>
    public static VanGenuchtenParameters? Of(CatalogEntry entry)
    {
        if (
            entry.Figure("thetaR") is not { } dry
            || entry.Figure("thetaS") is not { } full
            || entry.Figure("ks") is not { } ks
            || Mode(entry, "1", entry.Figure("weight1")?.Si ?? 1) is not { } first
        )
        {
            return null;
        }

        var second = first.Weight < 1 ? Mode(entry, "2", 1 - first.Weight) : null;
        return new VanGenuchtenParameters
        {
            ThetaR = dry.Si,
            ThetaS = full.Si,
            Modes = second is { } other ? [first, other] : [first with { Weight = 1 }],
            KsMetersPerSecond = ks.Si,
            L = entry.Figure("l")?.Si ?? 0.5,
        };
    }

    /// <summary>The figures behind the curve, for the question where a number comes from.</summary>
    public static ImmutableArray<Figure> Figures(CatalogEntry entry) =>
        [.. Names.Select(entry.Figure).OfType<Figure>()];

    private static readonly string[] Names =
    [
        "thetaR",
        "thetaS",
        "weight1",
        "alpha1",
        "n1",
        "alpha2",
        "n2",
        "ks",
        "l",
    ];

    private static PoreMode? Mode(CatalogEntry entry, string number, double weight) =>
        entry.Figure("alpha" + number) is { } alpha && entry.Figure("n" + number) is { } n
            ? new PoreMode(weight, alpha.Si, n.Si)
            : null;
}
