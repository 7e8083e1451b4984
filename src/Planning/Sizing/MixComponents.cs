using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Sizing;

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
            .Parts.Select(part => Figure.Given($"parts of {part.Material}", part.Parts, Units.One, origin))
            .ToArray();
        var all = Figure.Total(parts, Dimension.None).As($"all parts of {recipe.Name}", Units.One);
        return
        [
            .. recipe.Parts.Select(
                (part, i) =>
                    One(
                        catalog.Find(part.Material)!,
                        (parts[i] / all).As($"share of {part.Material}", Units.Percent),
                        layer,
                        loss
                    )
            ),
        ];
    }

    private static LayerComponent One(CatalogEntry material, Figure share, FloorLayer layer, Figure loss)
    {
        var loose = (layer.Loose * share).As($"loose {material.Name}", Units.Liter);
        var dry = material.Figure("bulkDensityDry");
        var sold = material.Figure("bulkDensityAsSold") ?? dry;
        var mass = sold is null
            ? null
            : (loose * sold).As($"mass of {material.Name} as sold", Units.Kilogram);
        return new LayerComponent
        {
            Material = material,
            Share = share,
            Finished = (layer.Finished * share).As($"{material.Name} in the finished soil", Units.Liter),
            Mixed = (layer.Mixed * share).As($"{material.Name} in the mixed soil", Units.Liter),
            Loose = loose,
            ToBuy = (loose * (Figure.Number(1) + loss)).As($"{material.Name} to buy", Units.Liter),
            Mass = mass,
            DryMass = dry is null ? null : (loose * dry).As($"dry mass of {material.Name}", Units.Kilogram),
            WaterIn =
                mass is not null && material.Figure("moistureAsSold") is { } wet
                    ? (mass * wet / SizingPolicy.Water).As($"water in {material.Name} as sold", Units.Liter)
                    : null,
        };
    }
}
