using Litterfall.Documents.Drawings;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>
/// A stepped soil from above, to be poured from: each edge dimensioned from the left, each step with the
/// depth it settles to and the depth it is poured.
/// </summary>
internal static class ZoneView
{
    private const double Left = 8;
    private const double Below = 26;
    private const double Line = 3.9;

    /// <summary>The drawing; null where the soil has no steps.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="inInches">True for a reader of inches.</param>
    /// <param name="room">Room on paper, mm.</param>
    public static Drawing? Of(DesignNumbers numbers, bool inInches, (double Width, double Height) room)
    {
        var design = numbers.Design;
        if (design.Design.Floor.Soil is not { Zones.Count: > 0 } soil)
        {
            return null;
        }

        var (length, depth) = (numbers.Box.InsideLength.Si, numbers.Box.InsideDepth.Si);
        var scale = Math.Min(
            ViewScale.Fitting(length, room.Width - 2 * Left),
            ViewScale.Fitting(depth, room.Height)
        );
        var (wide, tall) = (length * 1000 * scale, depth * 1000 * scale);
        var sketch = new Sketch { Key = "floor.soil.zones" };
        sketch.Area(Sketch.Corners(new(Left, 2), wide, tall), Pen.Strong);
        var foot = new Spot(Left, 2 + tall);
        var share = 0.0;
        for (var i = 0; i < soil.Zones.Count; i++)
        {
            var from = share;
            share = i == soil.Zones.Count - 1 ? 1 : Math.Min(1, share + soil.Zones[i].Share.Si);
            var (start, end) = (foot.Moved(from * wide, 0), foot.Moved(share * wide, 0));
            if (share < 1)
            {
                sketch.Line(end, end.Moved(0, -tall), Pen.Thin);
            }

            sketch.Key = FormattableString.Invariant($"floor.soil.zones[{i}].share");
            Dimensions.Across(
                sketch,
                start,
                end,
                6,
                (Lengths.Edge((share - from) * length, inInches), sketch.Key)
            );
            Depths(
                sketch,
                numbers,
                i,
                (new(0.5 * (start.X + end.X), foot.Y + 11 + (i % 2) * 2 * Line), inInches)
            );
        }

        sketch.Key = "";
        sketch.Text(
            new(Left, foot.Y + Below - 0.5),
            "front, left to right",
            Dimensions.Points,
            tone: Tone.Quiet
        );
        return Legible.Whole(Legible.Of(sketch.Done(wide + 2 * Left, 2 + tall + Below, scale)));
    }

    /// <summary>Settled and poured depth of one step, below it.</summary>
    private static void Depths(Sketch sketch, DesignNumbers numbers, int zone, (Spot At, bool InInches) place)
    {
        var depths = SoilDepths.Zone(numbers.Design, zone);
        var (front, back) = (depths.Front, depths.Back);
        sketch.Key = FormattableString.Invariant($"floor.soil.zones[{zone}].depth");
        string[] lines = [$"settled {Both(front, back)}", $"pour {Both(Poured(front), Poured(back))}"];
        for (var i = 0; i < lines.Length; i++)
        {
            sketch.Text(place.At.Moved(0, i * Line), lines[i], Dimensions.Points, Align.Middle);
        }

        Figure Poured(Figure depth) => CornerDepths.BeforeSettling(numbers.Design, depth, "as poured");

        string Both(Figure a, Figure b) =>
            Math.Abs(a.Si - b.Si) < 5e-4
                ? Lengths.Short(a.Si, place.InInches)
                : $"{Lengths.Bare(a.Si, place.InInches)} front, {Lengths.Short(b.Si, place.InInches)} back";
    }
}
