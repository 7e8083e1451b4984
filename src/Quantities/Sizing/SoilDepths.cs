using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>Depths of a level, wedge or stepped soil in meters.</summary>
public sealed record SoilDepths(Figure Mean, Figure Front, Figure Back, Figure Highest, Figure Lowest)
{
    /// <summary>Reads the three forms; a wedge is straight from front to back.</summary>
    public static SoilDepths Of(CheckedDesign design, SoilLayer soil)
    {
        if (soil.Zones.Count == 0)
        {
            return One(design, "floor.soil", "soil depth", soil.Depth, soil.Front, soil.Back);
        }

        var means = new List<Figure>();
        var fronts = new List<Figure>();
        var backs = new List<Figure>();
        for (var i = 0; i < soil.Zones.Count; i++)
        {
            var zone = soil.Zones[i];
            var path = ZonePath(i);
            var depths = Zone(design, i);
            means.Add(
                design.Figure($"{path}.share", $"length share of step {i + 1}", zone.Share, Unit.Percent)
                    * depths.Mean
            );
            fronts.Add(depths.Front);
            backs.Add(depths.Back);
        }

        var front = Figure.Max([.. fronts]).As("largest soil depth at the front", Unit.Centimeter);
        var back = Figure.Max([.. backs]).As("largest soil depth at the back", Unit.Centimeter);
        return new SoilDepths(
            Figure.Total(means, Unit.Meter.Dimension).As("mean soil depth", Unit.Centimeter),
            front,
            back,
            Figure.Max(front, back).As("largest soil depth", Unit.Centimeter),
            Figure.Min([.. fronts, .. backs]).As("thinnest soil", Unit.Centimeter)
        );
    }

    /// <summary>Depths of one step of a stepped soil, counted from the left.</summary>
    public static SoilDepths Zone(CheckedDesign design, int zone)
    {
        var typed = design.Design.Floor.Soil!.Zones[zone];
        return One(
            design,
            ZonePath(zone),
            $"soil depth of step {zone + 1}",
            typed.Depth,
            typed.Front,
            typed.Back
        );
    }

    private static string ZonePath(int zone) => $"floor.soil.zones[{zone}]";

    private static SoilDepths One(
        CheckedDesign design,
        string path,
        string name,
        Typed<Length>? depth,
        Typed<Length>? front,
        Typed<Length>? back
    )
    {
        if (depth is { } level)
        {
            var figure = design.Figure($"{path}.depth", name, level, Unit.Centimeter);
            return new SoilDepths(figure, figure, figure, figure, figure);
        }

        var low = design.Figure($"{path}.front", $"{name} at the front", front!.Value, Unit.Centimeter);
        var high = design.Figure($"{path}.back", $"{name} at the back", back!.Value, Unit.Centimeter);
        return new SoilDepths(
            ((low + high) / Figure.Number(2)).As($"mean {name}", Unit.Centimeter),
            low,
            high,
            Figure.Max(low, high).As($"largest {name}", Unit.Centimeter),
            Figure.Min(low, high).As($"thinnest {name}", Unit.Centimeter)
        );
    }
}
