using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Views;

/// <summary>A part named beside a drawing.</summary>
/// <param name="At">Where the leader points, on paper.</param>
/// <param name="Text">What it says.</param>
/// <param name="Key">Key of the design it shows.</param>
internal readonly record struct Callout(Spot At, string Text, string Key);

/// <summary>Dimensions as on a workshop drawing, outside the thing.</summary>
internal static class Dimensions
{
    /// <summary>Size of the figures.</summary>
    public const double Points = 9;

    private const double Slash = 1.1;

    /// <summary>A dimension under or over an edge.</summary>
    public static void Across(
        Sketch sketch,
        Spot from,
        Spot to,
        double offset,
        (string Text, string Key) said
    )
    {
        sketch.Key = said.Key;
        var (a, b) = (from.Moved(0, offset), to.Moved(0, offset));
        var beyond = Math.Sign(offset) * 1.0;
        sketch.Lines(
            [
                new([from.Moved(0, beyond), a.Moved(0, beyond)], false),
                new([to.Moved(0, beyond), b.Moved(0, beyond)], false),
                new([a, b], false),
                new([a.Moved(-Slash, Slash), a.Moved(Slash, -Slash)], false),
                new([b.Moved(-Slash, Slash), b.Moved(Slash, -Slash)], false),
            ],
            Pen.Fine,
            Layers.Dimension
        );
        sketch.Text(new((a.X + b.X) / 2, a.Y - 0.9), said.Text, Points, Align.Middle);
        sketch.Key = "";
    }

    /// <summary>A dimension left or right of an edge; its figure runs upward.</summary>
    public static void Upward(
        Sketch sketch,
        Spot from,
        Spot to,
        double offset,
        (string Text, string Key) said
    )
    {
        sketch.Key = said.Key;
        var (a, b) = (from.Moved(offset, 0), to.Moved(offset, 0));
        var beyond = Math.Sign(offset) * 1.0;
        sketch.Lines(
            [
                new([from.Moved(beyond, 0), a.Moved(beyond, 0)], false),
                new([to.Moved(beyond, 0), b.Moved(beyond, 0)], false),
                new([a, b], false),
                new([a.Moved(-Slash, Slash), a.Moved(Slash, -Slash)], false),
                new([b.Moved(-Slash, Slash), b.Moved(Slash, -Slash)], false),
            ],
            Pen.Fine,
            Layers.Dimension
        );
        sketch.Add(
            new TextMark(new(a.X - 0.9, (a.Y + b.Y) / 2), said.Text, Points)
            {
                Align = Align.Middle,
                Upright = true,
                Key = said.Key,
                Layer = Layers.Label,
            }
        );
        sketch.Key = "";
    }

    /// <summary>
    /// Names beside a drawing, one above the other without touching, each with a leader to its part.
    /// </summary>
    /// <param name="sketch">The drawing.</param>
    /// <param name="callouts">The parts.</param>
    /// <param name="x">Where the names start (to the right of the thing) or end (to the left).</param>
    /// <param name="align">Start on the right of the thing, End on its left.</param>
    /// <param name="reach">Highest and lowest baseline.</param>
    public static void Beside(
        Sketch sketch,
        IEnumerable<Callout> callouts,
        double x,
        Align align,
        (double Top, double Bottom) reach
    )
    {
        var pitch = Points * Lettering.Point * 1.12;
        var sorted = callouts.OrderBy(c => c.At.Y).ToList();
        var lines = sorted.ConvertAll(c => c.At.Y + 1);
        Spread(lines, pitch, reach);
        var shift = align == Align.Start ? 1.0 : -1.0;
        for (var i = 0; i < sorted.Count; i++)
        {
            var (at, text, key) = sorted[i];
            sketch.Key = key;
            var middle = lines[i] - 1;
            sketch.Lines(
                [new([at, new(x - shift * 3, middle), new(x - shift * 0.6, middle)], false)],
                Pen.Fine,
                Layers.Dimension
            );
            sketch.Rings([new Ring(at, 0.35)], null, Tone.Quiet, Layers.Dimension);
            sketch.Text(new(x, lines[i]), Lettering.Clean(text), Points, align);
        }

        sketch.Key = "";
    }

    /// <summary>A bar of round length at the scale of the drawing.</summary>
    public static void ScaleBar(Sketch sketch, Spot at, double scale, bool inInches)
    {
        var (millimeters, words) = Bar(scale, inInches);
        var width = millimeters * scale;
        sketch.Key = "";
        sketch.Rectangle(at, width / 2, 1.2, Pen.Thin, Tone.Ink);
        sketch.Rectangle(at.Moved(width / 2, 0), width / 2, 1.2, Pen.Thin);
        sketch.Text(at.Moved(width + 1.5, 1.6), words, Points);
    }

    /// <summary>How wide the bar and its figure are, mm on paper.</summary>
    public static double BarWidth(double scale, bool inInches)
    {
        var (millimeters, words) = Bar(scale, inInches);
        return millimeters * scale + 1.5 + Lettering.Width(words, Points);
    }

    /// <summary>The longest round length that is no longer than 32 mm on paper.</summary>
    private static (double Millimeters, string Words) Bar(double scale, bool inInches)
    {
        var unit = inInches ? 25.4 : 10.0;
        var length = new[] { 50, 20, 10, 5, 2, 1 }.First(n => n * unit * scale <= 32 || n == 1);
        return (length * unit, FormattableString.Invariant($"{length} {(inInches ? "in" : "cm")}"));
    }

    private static void Spread(List<double> lines, double pitch, (double Top, double Bottom) reach)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            lines[i] = Math.Max(lines[i], i == 0 ? reach.Top : lines[i - 1] + pitch);
        }

        var limit = reach.Bottom;
        for (var i = lines.Count - 1; i >= 0; i--)
        {
            lines[i] = Math.Min(lines[i], limit);
            limit = lines[i] - pitch;
        }
    }
}
