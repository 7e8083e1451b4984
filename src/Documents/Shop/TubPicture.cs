using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;

namespace Litterfall.Documents.Shop;

/// <summary>
/// The tub in section, to scale in height: the components on top of each other before they are mixed, and the
/// rim.
/// </summary>
internal sealed class TubPicture(BatchCardText card, double width) : Block
{
    private const double TubHeight = 42;
    private const double Slant = 3;
    private const double Small = 9;

    /// <inheritdoc/>
    public override double Height(double room, Style style) => TubHeight + style.Gap(5);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double room, Style style)
    {
        var top = at.Y + style.Gap(3);
        var foot = top + TubHeight;
        var perLiter = TubHeight / Math.Max(card.TubLiters, card.LooseLiters);
        var y = foot;
        var tones = new[] { Tone.Field, Tone.Paper };
        var labels = new List<(double Y, string Text)>();
        for (var i = 0; i < card.Parts.Count; i++)
        {
            var part = card.Parts[i];
            var next = y - (part.Liters * perLiter);
            sketch.Area(
                [
                    new(at.X + Inset(y), y),
                    new(at.X + width - Inset(y), y),
                    new(at.X + width - Inset(next), next),
                    new(at.X + Inset(next), next),
                ],
                new Pen(Tone.Ink, 0.2),
                tones[i % tones.Length]
            );
            labels.Add(((y + next) / 2, $"{part.Name}, {Liters(part.Liters)}"));
            y = next;
        }

        sketch.Lines(
            [
                new(
                    [
                        new(at.X, top),
                        new(at.X + Slant, foot),
                        new(at.X + width - Slant, foot),
                        new(at.X + width, top),
                    ],
                    false
                ),
            ],
            new Pen(Tone.Ink, 0.6)
        );
        Label(sketch, labels, new(at.X + width, top), style);

        double Inset(double level) => Slant * (level - top) / TubHeight;
    }

    /// <summary>Names beside the tub with a line to each layer, never one over the other.</summary>
    private static void Label(Sketch sketch, List<(double Y, string Text)> labels, Spot at, Style style)
    {
        var line = Small * Lettering.Point * 1.25;
        var below = double.MaxValue;
        foreach (var (level, text) in labels)
        {
            var y = Math.Min(level, below - line);
            sketch.Line(new(at.X - 2, level), new(at.X + 5, y), new Pen(Tone.Quiet, 0.2));
            sketch.Text(new(at.X + 6, y + 1), style.Said(text), Small);
            below = y;
        }
    }

    private static string Liters(double liters) =>
        string.Create(CultureInfo.InvariantCulture, $"{liters:0.0} L");
}
