using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>One bag of a kit.</summary>
/// <param name="Letter">A, B, C and so on, in the order the builder opens them.</param>
/// <param name="Contents">What is in it.</param>
/// <param name="Amount">Liters in the bag of one kit.</param>
/// <param name="Key">Key of the design it belongs to, such as "floor.soil".</param>
public sealed record KitBag(string Letter, string Contents, Figure Amount, string Key);

/// <summary>The bags of one kit, a bag for each layer of the floor.</summary>
public static class KitBags
{
    /// <summary>
    /// Aggregate, mixed soil, moss and leaves, in liters as poured: the soil is mixed before it is bagged, so
    /// its bag holds the mixed liters.
    /// </summary>
    public static ImmutableArray<KitBag> Of(DesignNumbers numbers)
    {
        var bags = ImmutableArray.CreateBuilder<KitBag>();
        foreach (var layer in numbers.Layers)
        {
            if (layer.Material is not { } material)
            {
                continue;
            }

            bags.Add(
                new KitBag(
                    ((char)('A' + bags.Count)).ToString(),
                    Contents(layer, material),
                    layer.Mixed,
                    $"floor.{layer.Layer}"
                )
            );
        }

        return bags.ToImmutable();
    }

    /// <summary>"bag B, ", or nothing where the design is no kit.</summary>
    public static string Name(ImmutableArray<KitBag> bags, string key) =>
        bags.FirstOrDefault(b => b.Key == key) is { } bag ? $"bag {bag.Letter}, " : "";

    private static string Contents(FloorLayer layer, CatalogEntry material) =>
        layer.Kind == LayerKind.Soil && layer.Components.Length > 0
            ? $"{material.Name}, mixed and moist"
            : material.Name;
}
