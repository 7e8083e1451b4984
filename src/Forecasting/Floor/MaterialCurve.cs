using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;

namespace Litterfall.Forecasting.Floor;

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

    /// <summary>
    /// The parameters as the catalog gives them; for a recipe without a curve of its own but of
    /// parts that all have one, an estimate from the parts (<see cref="MixEstimate"/>); null otherwise.
    /// </summary>
    /// <param name="entry">A soil, recipe, moss, litter, aggregate or grid.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static VanGenuchtenParameters? Of(CatalogEntry entry, TradeCatalog catalog) =>
        Of(entry) ?? Estimate(entry, catalog)?.Parameters;

    /// <summary>
    /// A recipe as estimated from its parts, whether it has a curve of its own or not; its mixing yield gives
    /// the mixed volume where it has one. Null when it has no parts, a part has no curve, or the parts hold
    /// more water than the mix has room for.
    /// </summary>
    /// <param name="recipe">A recipe.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static MixedSoil? Estimate(CatalogEntry recipe, TradeCatalog catalog)
    {
        var parts = recipe.Parts.IsDefaultOrEmpty
            ? []
            : recipe.Parts.Select(p => Part(p, catalog)).OfType<MixPart>().ToImmutableArray();
        if (parts.Length == 0 || parts.Length < recipe.Parts.Length)
        {
            return null;
        }

        return MixEstimate.Of(parts, new MixingLaw { MixingYield = recipe.Figure("mixingYield")?.Si });
    }

    /// <summary>The figures behind the curve, for the question where a number comes from.</summary>
    public static ImmutableArray<Figure> Figures(CatalogEntry entry) =>
        [.. Names.Select(entry.Figure).OfType<Figure>()];

    /// <summary>The same; for an estimated curve those of its parts.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static ImmutableArray<Figure> Figures(CatalogEntry entry, TradeCatalog catalog) =>
        Of(entry) is not null || entry.Parts.IsDefaultOrEmpty
            ? Figures(entry)
            :
            [
                .. entry
                    .Parts.Select(p => catalog.Find(p.Material))
                    .OfType<CatalogEntry>()
                    .SelectMany(part => Figures(part)),
            ];

    private static MixPart? Part(RecipePart part, TradeCatalog catalog) =>
        part.Parts > 0 && catalog.Find(part.Material) is { } material && Of(material) is { } curve
            ? Part(part.Parts, curve, material.Figure("bulkDensityDry")?.Si)
            : null;

    /// <summary>
    /// The catalog gives no ash: the least share of it is taken with which the solids find room beside the
    /// water of saturation, so that sand comes out mineral and peat organic. Without a density the solids
    /// fill the room there is.
    /// </summary>
    private static MixPart Part(double volume, VanGenuchtenParameters curve, double? dryDensity)
    {
        const double organic = 1 / MixEstimate.OrganicSolidsKilogramsPerCubicMeter;
        const double mineral = 1 / MixEstimate.MineralSolidsKilogramsPerCubicMeter;
        var room = 1 - curve.ThetaS;
        var density = dryDensity ?? Math.Max(room, 0.01) / organic;
        var ash = Math.Clamp((organic - room / density) / (organic - mineral), 0, 1);
        return new MixPart(volume, new VanGenuchten(curve), density, ash);
    }

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
