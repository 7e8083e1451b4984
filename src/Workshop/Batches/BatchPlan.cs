using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Mixing;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Batches;

/// <summary>A component of a planned mix and the lots it comes from.</summary>
/// <param name="Key">Key of the good.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Liters">Liters of all batches, loose, as the jug measures them.</param>
/// <param name="Kilograms">Mass, kg; null where nobody knows the density.</param>
/// <param name="Lots">Lots, and what is short.</param>
public sealed record PlannedPart(string Key, string Name, double Liters, double? Kilograms, Picking Lots);

/// <summary>
/// How the mix that several orders need is made: what stock has ready, the rest in tubs, its components from
/// lots.
/// </summary>
public sealed record BatchPlan
{
    /// <summary>The recipe.</summary>
    public required RecipeEntry Recipe { get; init; }

    /// <summary>What the orders need.</summary>
    public required ImmutableArray<MixNeed> Needs { get; init; }

    /// <summary>Mix that is ready in stock, the first to spoil first.</summary>
    public required Picking Ready { get; init; }

    /// <summary>Mixed liters to make; 0 where stock covers the need.</summary>
    public required double MakeLiters { get; init; }

    /// <summary>The tubs; null where nothing is made or it cannot be.</summary>
    public MixPlan? Mix { get; init; }

    /// <summary>Why the tubs cannot be planned as the workshop wants; null where they can.</summary>
    public MixRefusal? Refusal { get; init; }

    /// <summary>Components of all tubs.</summary>
    public ImmutableArray<PlannedPart> Parts { get; init; } = [];

    /// <summary>Target wetness of the mix, percent by volume; null for none.</summary>
    public double? WetPercent { get; init; }

    /// <summary>Mixed liters that are needed.</summary>
    public double NeedLiters => Needs.Sum(n => n.Liters);

    /// <summary>True where a component is short.</summary>
    public bool IsShort => Parts.Any(p => p.Lots.IsShort);

    /// <summary>Plans a mix.</summary>
    /// <param name="recipe">The recipe, with the yield that counts at this workshop.</param>
    /// <param name="needs">What orders need of it; none to make some for stock.</param>
    /// <param name="more">Liters to make beyond the needs.</param>
    /// <param name="from">Stock, library and the workshop's terms.</param>
    /// <param name="learned">What batches taught.</param>
    public static BatchPlan From(
        RecipeEntry recipe,
        IReadOnlyCollection<MixNeed> needs,
        double more,
        BatchSources from,
        BatchLearning learned
    )
    {
        var need = needs.Sum(n => n.Liters);
        var ready = Picking.Propose(from.Book, recipe.Key, need, from.Day);
        var plan = new BatchPlan
        {
            Recipe = recipe,
            Needs = [.. needs],
            Ready = ready,
            MakeLiters = ready.Short + more,
            WetPercent = recipe.SqueezeWater is { } wet ? 100 * wet.Si : null,
        };
        if (plan.MakeLiters <= 0)
        {
            return plan;
        }

        var asked = Asked(recipe, plan, from, learned);
        var (mix, refusal) = MixPlan.From(asked);
        if (mix is null && refusal?.Key == "jugLiters")
        {
            // A jug that is too coarse for a small part: that part is weighed instead.
            (mix, _) = MixPlan.From(asked with { JugLiters = null });
        }

        return plan with
        {
            Mix = mix,
            Refusal = refusal,
            Parts = mix is null ? [] : [.. Components(recipe, mix, from)],
        };
    }

    private static MixCase Asked(RecipeEntry recipe, BatchPlan plan, BatchSources from, BatchLearning learned)
    {
        var terms = from.Terms;
        var yield = recipe.MixingYield?.Si ?? Quantities.Sizing.SizingPolicy.MixingYield.Si;
        return new()
        {
            Recipe =
            [
                .. recipe.Parts.Select(p =>
                {
                    var entry = from.Catalog.Find(p.Material);
                    var soil = entry as SubstrateEntry;
                    return new MixPart(
                        entry?.Name ?? p.Material,
                        p.Parts,
                        KilogramsPerLiter(entry),
                        100 * (soil?.MoistureAsSold?.Si ?? 0),
                        []
                    );
                }),
            ],
            NeedLiters = plan.MakeLiters,
            Shrink = LearnedShare.Given(1 - yield),
            WetMiss = learned.WetMiss,
            TubLiters = terms.TubLiters,
            FillPercent = terms.TubFillPercent,
            LiftKg = terms.LiftKilograms,
            JugLiters = terms.JugLiters > 0 ? terms.JugLiters : null,
            Target = plan.WetPercent is null ? WetTarget.None : WetTarget.ByVolume,
            WetPercent = plan.WetPercent ?? 0,
        };
    }

    private static IEnumerable<PlannedPart> Components(RecipeEntry recipe, MixPlan mix, BatchSources from)
    {
        for (var i = 0; i < recipe.Parts.Length; i++)
        {
            var at = i;
            var liters = mix.Batches.Sum(b => b.Count * b.Shares[at].JugLiters);
            var entry = from.Catalog.Find(recipe.Parts[i].Material);
            yield return new(
                recipe.Parts[i].Material,
                mix.Case.Recipe[i].Name,
                liters,
                liters * KilogramsPerLiter(entry),
                Picking.Propose(from.Book, recipe.Parts[i].Material, liters, from.Day)
            );
        }
    }

    /// <summary>Mass of a loose liter as it comes out of the bag.</summary>
    private static double? KilogramsPerLiter(CatalogEntry? entry) =>
        entry switch
        {
            SubstrateEntry soil => (soil.DensityAsSold ?? soil.DryDensity)?.Si / 1000,
            AggregateEntry grains => grains.BulkDensity?.Si / 1000,
            _ => null,
        };
}

/// <summary>What a batch is planned from.</summary>
/// <param name="Book">The book of stock.</param>
/// <param name="Catalog">The library.</param>
/// <param name="Terms">The workshop: tub, jug, lift limit.</param>
/// <param name="Day">Day it is made.</param>
public sealed record BatchSources(StockBook Book, TradeCatalog Catalog, ShopTerms Terms, DateOnly Day);
