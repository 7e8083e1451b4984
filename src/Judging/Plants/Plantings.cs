using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Plants;

/// <summary>One entry of plants with its place in the file.</summary>
internal sealed record PlacedPlant(string Path, PlantEntry Species, Planting Entry)
{
    /// <summary>True when what the library says of its poison has the word in it.</summary>
    public bool IsToxic(string word) => Says(Species.Toxicity, word);

    /// <summary>True when the water its roots want has the word in it.</summary>
    public bool Wants(string word) => Says(Species.Water, word);

    /// <summary>True when the way it grows has the word in it.</summary>
    public bool Grows(string word) => Says(Species.Habit, word);

    private static bool Says(CatalogText? text, string word) =>
        text?.Text.Contains(word, StringComparison.OrdinalIgnoreCase) is true;
}

/// <summary>The plants of a design and the ground under them.</summary>
internal static class Plantings
{
    public static IEnumerable<PlacedPlant> Of(DesignNumbers n)
    {
        var plants = n.Design.Design.Plants;
        return Enumerable
            .Range(0, plants.Count)
            .Select(i =>
            {
                var path = $"plants[{i.ToString(CultureInfo.InvariantCulture)}]";
                return new PlacedPlant(path, n.Design.Entry<PlantEntry>($"{path}.plant"), plants[i]);
            });
    }

    /// <summary>
    /// Soil depth where a plant stands. Without a place only a level soil is known; a wedge is straight from
    /// front to back, and steps lie from left to right.
    /// </summary>
    public static Figure? SoilAt(DesignNumbers n, Place? place)
    {
        if (n.Design.Design.Floor.Soil is not { } soil)
        {
            return null;
        }

        if (soil.Zones.Count == 0)
        {
            return Depth(n, "floor.soil", (soil.Depth, soil.Front, soil.Back), place);
        }

        if (place is null || n.Box.InsideLength.Si <= 0)
        {
            return null;
        }

        var along = place.X.Si / n.Box.InsideLength.Si;
        var end = 0.0;
        for (var i = 0; i < soil.Zones.Count; i++)
        {
            var zone = soil.Zones[i];
            end += zone.Share.Si;
            if (along <= end || i == soil.Zones.Count - 1)
            {
                return Depth(
                    n,
                    $"floor.soil.zones[{i.ToString(CultureInfo.InvariantCulture)}]",
                    (zone.Depth, zone.Front, zone.Back),
                    place
                );
            }
        }

        return null;
    }

    private static Figure? Depth(
        DesignNumbers n,
        string path,
        (Typed<Length>? Level, Typed<Length>? Front, Typed<Length>? Back) soil,
        Place? place
    )
    {
        if (soil.Level is { } level)
        {
            return n.Design.Figure($"{path}.depth", "soil depth", level, Unit.Centimeter);
        }

        if (soil is not { Front: { } front, Back: { } back } || place is null || n.Box.InsideDepth.Si <= 0)
        {
            return null;
        }

        var low = n.Design.Figure($"{path}.front", "soil depth at the front", front, Unit.Centimeter);
        var high = n.Design.Figure($"{path}.back", "soil depth at the back", back, Unit.Centimeter);
        var share = Math.Clamp(place.Y.Si / n.Box.InsideDepth.Si, 0, 1);
        return Figure
            .Computed(
                "front + (back − front) × distance from the front ÷ inside depth",
                low.Si + (high.Si - low.Si) * share,
                Unit.Meter.Dimension,
                low,
                high,
                n.Box.InsideDepth
            )
            .As("soil depth at the plant", Unit.Centimeter);
    }
}
