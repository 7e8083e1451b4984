using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>Masses of the soil and the water that brings it to squeeze wetness.</summary>
public static class SoilWater
{
    /// <summary>Adds masses and waters to a soil layer.</summary>
    public static FloorLayer Add(CheckedDesign design, SoilLayer soil, FloorLayer layer)
    {
        var recipe = (SubstrateEntry)layer.Material!;
        var squeeze = soil.Squeeze is { } s
            ? design.Figure("floor.soil.squeeze", "water at squeeze wetness", s, Unit.Percent)
            : recipe.SqueezeWater ?? SizingPolicy.SqueezeWater;
        var water = (layer.Finished * squeeze).As("water in the soil at squeeze wetness", Unit.Liter);
        var dry = DryMass(layer);
        var sold = MassAsSold(layer);
        var brought = Brought(layer, sold);
        return layer with
        {
            DryMass = dry,
            Mass = sold ?? dry,
            SqueezeWater = water,
            WaterBrought = brought,
            MostWater = (layer.Mixed * WetEnd(soil, recipe, squeeze)).As(
                "most water the fresh mix may hold",
                Unit.Liter
            ),
            WaterToAdd = Figure.NotNegative(water - brought).As("water to add to the soil", Unit.Liter),
            SaturatedWater = recipe.SaturatedWater is { } full
                ? Figure.Max(layer.Finished * full, water).As("water in the saturated soil", Unit.Liter)
                : water,
        };
    }

    private static Figure WetEnd(SoilLayer soil, SubstrateEntry recipe, Figure squeeze) =>
        soil.Squeeze is null && recipe.SqueezeWaterBand is { } band ? band.High : squeeze;

    /// <summary>Water in the goods as sold: of each part, or of a ready mix.</summary>
    private static Figure Brought(FloorLayer layer, Figure? massAsSold)
    {
        var parts = layer.Components.Where(c => c.WaterIn is not null).Select(c => c.WaterIn!).ToList();
        if (
            layer.Components.Length == 0
            && massAsSold is not null
            && layer.Material is SubstrateEntry { MoistureAsSold: { } moisture }
        )
        {
            parts.Add(massAsSold * moisture / SizingPolicy.Water);
        }

        return Figure.Total(parts, Unit.Liter.Dimension).As("water the goods bring", Unit.Liter);
    }

    private static Figure? DryMass(FloorLayer layer)
    {
        if (layer.Components.Length > 0 && layer.Components.All(c => c.DryMass is not null))
        {
            return Figure
                .Total([.. layer.Components.Select(c => c.DryMass!)], Unit.Kilogram.Dimension)
                .As("dry mass of the soil", Unit.Kilogram);
        }

        return layer.Material is SubstrateEntry { DryDensity: { } density }
            ? (layer.Finished * density).As("dry mass of the soil", Unit.Kilogram)
            : null;
    }

    private static Figure? MassAsSold(FloorLayer layer)
    {
        if (layer.Components.Length == 0)
        {
            return layer.Material is SubstrateEntry { DensityAsSold: { } sold }
                ? (layer.Loose * sold).As("mass of the mix as sold", Unit.Kilogram)
                : null;
        }

        return layer.Components.All(c => c.Mass is not null)
            ? Figure
                .Total([.. layer.Components.Select(c => c.Mass!)], Unit.Kilogram.Dimension)
                .As("mass of the soil parts as sold", Unit.Kilogram)
            : null;
    }
}
