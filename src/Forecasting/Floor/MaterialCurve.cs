using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
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
    public static VanGenuchtenParameters? Of(PorousEntry entry)
    {
        if (
            entry.ResidualWater is not { } dry
            || entry.SaturatedWater is not { } full
            || entry.SaturatedConductivity is not { } ks
            || Mode((entry.FirstPoreAlpha, entry.FirstPoreShape), entry.FirstPoreWeight?.Si ?? 1)
                is not { } first
        )
        {
            return null;
        }

        var second =
            first.Weight < 1 ? Mode((entry.SecondPoreAlpha, entry.SecondPoreShape), 1 - first.Weight) : null;
        return new VanGenuchtenParameters
        {
            ThetaR = dry.Si,
            ThetaS = full.Si,
            Modes = second is { } other ? [first, other] : [first with { Weight = 1 }],
            KsMetersPerSecond = ks.Si,
            L = entry.PoreConnectivity?.Si ?? 0.5,
        };
    }

    /// <summary>
    /// The parameters as the catalog gives them; for a recipe without a curve of its own but of
    /// parts that all have one, an estimate from the parts (<see cref="MixEstimate"/>); null otherwise.
    /// </summary>
    /// <param name="entry">A soil, recipe, moss, litter, aggregate or grid.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static VanGenuchtenParameters? Of(PorousEntry entry, TradeCatalog catalog) =>
        Of(entry) ?? Estimate(entry, catalog)?.Parameters;

    /// <summary>
    /// A recipe as estimated from its parts, whether it has a curve of its own or not; its mixing yield gives
    /// the mixed volume where it has one. Null when it has no parts, a part has no curve, or the parts hold
    /// more water than the mix has room for.
    /// </summary>
    /// <param name="recipe">A recipe.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static MixedSoil? Estimate(PorousEntry recipe, TradeCatalog catalog)
    {
        var parts = recipe.Parts.IsDefaultOrEmpty
            ? []
            : recipe.Parts.Select(p => Part(p, catalog)).OfType<MixPart>().ToImmutableArray();
        if (parts.Length == 0 || parts.Length < recipe.Parts.Length)
        {
            return null;
        }

        return MixEstimate.Of(
            parts,
            new MixingLaw { MixingYield = (recipe as GroundEntry)?.MixingYield?.Si }
        );
    }

    /// <summary>The figures behind the curve, for the question where a number comes from.</summary>
    public static ImmutableArray<Figure> Figures(PorousEntry entry) =>
        [
            .. new[]
            {
                entry.ResidualWater,
                entry.SaturatedWater,
                entry.FirstPoreWeight,
                entry.FirstPoreAlpha,
                entry.FirstPoreShape,
                entry.SecondPoreAlpha,
                entry.SecondPoreShape,
                entry.SaturatedConductivity,
                entry.PoreConnectivity,
            }.OfType<Figure>(),
        ];

    /// <summary>The same; for an estimated curve those of its parts.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="catalog">Where its parts are.</param>
    public static ImmutableArray<Figure> Figures(PorousEntry entry, TradeCatalog catalog) =>
        Of(entry) is not null || entry.Parts.IsDefaultOrEmpty
            ? Figures(entry)
            :
            [
                .. entry
                    .Parts.Select(p => catalog.Find<PorousEntry>(p.Material))
                    .OfType<PorousEntry>()
                    .SelectMany(part => Figures(part)),
            ];

    private static MixPart? Part(RecipePart part, TradeCatalog catalog) =>
        part.Parts > 0
        && catalog.Find<PorousEntry>(part.Material) is { } material
        && Of(material) is { } curve
            ? Part(part.Parts, curve, (material as SubstrateEntry)?.DryDensity?.Si)
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

    private static PoreMode? Mode((Figure? Alpha, Figure? Shape) given, double weight) =>
        given is { Alpha: { } alpha, Shape: { } n } ? new PoreMode(weight, alpha.Si, n.Si) : null;
}
