using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;

namespace Litterfall.Documents.Views;

/// <summary>Numbered balloons on a sketch and the list beside it that tells what each is.</summary>
internal sealed class Balloons(Sketch sketch, bool isUs)
{
    private const double Points = 9;
    private const double Radius = 2.6;
    private const double Line = 3.9;
    private const double Ascent = 3.2;
    private const double Between = 0.7;
    private const double Indent = 6.5;
    private readonly List<(string Text, string Key)> listed = [];

    /// <summary>A balloon at a point, with a leader to its part where that lies apart.</summary>
    /// <param name="at">Its middle.</param>
    /// <param name="part">The part it points at.</param>
    /// <param name="text">What the part is.</param>
    /// <param name="key">Key of the design.</param>
    public void Add(Spot at, Spot part, string text, string key)
    {
        listed.Add((isUs ? UsUnits.Of(text) : text, key));
        var (dx, dy) = (part.X - at.X, part.Y - at.Y);
        var far = Math.Sqrt(dx * dx + dy * dy);
        sketch.Key = key;
        if (far > Radius)
        {
            var from = at.Moved(dx / far * Radius, dy / far * Radius);
            sketch.Line(from, part, Pen.Fine, Layers.Dimension);
        }

        sketch.Rings([new Ring(at, Radius)], new Pen(Tone.Ink, 0.2), Tone.Paper, Layers.Dimension);
        sketch.Text(at.Moved(0, 1.15), Number(listed.Count), Points, Align.Middle);
        sketch.Key = "";
    }

    /// <summary>The list: what the first room holds, the rest in the second; gives its height.</summary>
    /// <param name="first">Upper left corner, width and lower end of the first room.</param>
    /// <param name="second">Upper left corner and width of the second.</param>
    public double List((Spot Corner, double Width, double End) first, (Spot Corner, double Width) second)
    {
        var (corner, width) = (first.Corner, first.Width);
        var y = corner.Y;
        for (var i = 0; i < listed.Count; i++)
        {
            var lines = Lettering.Wrap(listed[i].Text, width - Indent, Points);
            if (corner == first.Corner && y + lines.Count * Line > first.End)
            {
                (corner, width) = second;
                y = corner.Y;
                lines = Lettering.Wrap(listed[i].Text, width - Indent, Points);
            }

            sketch.Key = listed[i].Key;
            sketch.Text(new(corner.X + Indent - 2, y + Ascent), Number(i + 1), Points, Align.End, Tone.Quiet);
            foreach (var words in lines)
            {
                sketch.Text(new(corner.X + Indent, y + Ascent), words, Points);
                y += Line;
            }

            y += Between;
        }

        sketch.Key = "";
        return y;
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
