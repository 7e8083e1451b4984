using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain.Findings;

namespace Litterfall.Documents.Layout;

/// <summary>A sign before a line: its shape speaks first, its color second.</summary>
public enum Sign
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A box to tick with a pencil.</summary>
    Tick,

    /// <summary>An octagon.</summary>
    Stop,

    /// <summary>A triangle.</summary>
    Caution,

    /// <summary>A circle.</summary>
    Note,

    /// <summary>A dash.</summary>
    Dash,
}

/// <summary>Drawing of signs.</summary>
internal static class Signs
{
    public static Sign Of(Severity severity) =>
        severity switch
        {
            Severity.Stop => Sign.Stop,
            Severity.Caution => Sign.Caution,
            _ => Sign.Note,
        };

    public static double Width(Sign sign, Style style) =>
        sign == Sign.None ? 0 : style.Points * Lettering.Point * 1.35;

    public static void Draw(Sketch sketch, Sign sign, Spot baseline, Style style)
    {
        var size = style.Points * Lettering.Point * 0.82;
        var center = baseline.Moved(size / 2, -size * 0.42);
        switch (sign)
        {
            case Sign.Tick:
                sketch.Rectangle(center.Moved(-size / 2, -size / 2), size, size, new Pen(Tone.Ink, 0.25));
                break;
            case Sign.Stop:
                sketch.Area(Polygon(center, size * 0.58, 8, Math.PI / 8), null, Tone.Stop);
                break;
            case Sign.Caution:
                sketch.Area(
                    Polygon(center.Moved(0, size * 0.1), size * 0.62, 3, -Math.PI / 2),
                    new Pen(Tone.Caution, 0.35),
                    Tone.Paper
                );
                break;
            case Sign.Note:
                sketch.Rings([new Ring(center, size * 0.42)], new Pen(Tone.Note, 0.35));
                break;
            case Sign.Dash:
                sketch.Line(center.Moved(-size * 0.4, 0), center.Moved(size * 0.2, 0), Pen.Thin);
                break;
            case Sign.None:
            default:
                break;
        }
    }

    public static ImmutableArray<Spot> Polygon(Spot center, double radius, int corners, double turn) =>
        [
            .. Enumerable
                .Range(0, corners)
                .Select(i =>
                    center.Moved(
                        radius * Math.Cos(turn + 2 * Math.PI * i / corners),
                        radius * Math.Sin(turn + 2 * Math.PI * i / corners)
                    )
                ),
        ];
}
