using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>Splits a mixed layer into the parts of its recipe.</summary>
public static class MixComponents
{
    /// <summary>One component per part; none for a ready mix or a single material.</summary>
    public static ImmutableArray<LayerComponent> Of(TradeCatalog catalog, FloorLayer layer, Figure loss)
    {
        var recipe = layer.Material!;
        if (recipe.Parts.IsDefaultOrEmpty)
        {
            return [];
        }

        var origin = recipe.PartsOrigin ?? Citation.OwnDerivation;
        var parts = recipe
            .Parts.Select(part => Figure.Given($"parts of {part.Material}", part.Parts, Unit.One, origin))
            .ToArray();
        var all = Figure.Total(parts, Dimension.None).As($"all parts of {recipe.Name}", Unit.One);
        return
        [
            .. recipe.Parts.Select(
                (part, i) =>
                    One(
                        catalog.Find(part.Material)!,
                        (parts[i] / all).As($"share of {part.Material}", Unit.Percent),
                        layer,
                        loss
                    )
            ),
        ];
    }

    private static LayerComponent One(CatalogEntry material, Figure share, FloorLayer layer, Figure loss)
    {
        var loose = (layer.Loose * share).As($"loose {material.Name}", Unit.Liter);
        var substrate = material as SubstrateEntry;
        var dry = substrate?.DryDensity;
        var sold = substrate?.DensityAsSold ?? dry;
        var mass = sold is null ? null : (loose * sold).As($"mass of {material.Name} as sold", Unit.Kilogram);
        return new LayerComponent
        {
            Material = material,
            Share = share,
            Finished = (layer.Finished * share).As($"{material.Name} in the finished soil", Unit.Liter),
            Mixed = (layer.Mixed * share).As($"{material.Name} in the mixed soil", Unit.Liter),
            Loose = loose,
            ToBuy = (loose * (Figure.Number(1) + loss)).As($"{material.Name} to buy", Unit.Liter),
            Mass = mass,
            DryMass = dry is null ? null : (loose * dry).As($"dry mass of {material.Name}", Unit.Kilogram),
            WaterIn =
                mass is not null && substrate?.MoistureAsSold is { } wet
                    ? (mass * wet / SizingPolicy.Water).As($"water in {material.Name} as sold", Unit.Liter)
                    : null,
        };
    }
}
