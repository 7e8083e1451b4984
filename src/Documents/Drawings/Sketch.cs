using System.Collections.Immutable;

namespace Litterfall.Documents.Drawings;

/// <summary>Collects marks; used while one drawing is made and then thrown away.</summary>
public sealed class Sketch
{
    private readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Key given to the marks that follow.</summary>
    public string Key { get; set; } = "";

    /// <summary>The drawing so far.</summary>
    public Drawing Done(double width, double height, double scale = 1) =>
        new(width, height, scale, marks.ToImmutable());

    /// <summary>A mark that is ready.</summary>
    public void Add(Mark mark) => marks.Add(mark);

    /// <summary>A straight line.</summary>
    public void Line(Spot from, Spot to, Pen pen, string layer = Layers.Outline) =>
        Lines([new Contour([from, to], false)], pen, layer);

    /// <summary>Several lines drawn with one pen.</summary>
    public void Lines(ImmutableArray<Contour> contours, Pen pen, string layer = Layers.Outline) =>
        marks.Add(
            new PathMark(contours, [])
            {
                Pen = pen,
                Key = Key,
                Layer = layer,
            }
        );

    /// <summary>A closed area with an outline, a filling or both.</summary>
    public void Area(ImmutableArray<Spot> spots, Pen? pen, Tone? fill = null, double strength = 1) =>
        marks.Add(
            new PathMark([new Contour(spots, true)], [])
            {
                Pen = pen,
                Fill = fill,
                Strength = strength,
                Key = Key,
            }
        );

    /// <summary>A rectangle from its upper left corner.</summary>
    public void Rectangle(Spot corner, double width, double height, Pen? pen, Tone? fill = null) =>
        Area(Corners(corner, width, height), pen, fill);

    /// <summary>Circles drawn with one pen.</summary>
    public void Rings(
        ImmutableArray<Ring> rings,
        Pen? pen,
        Tone? fill = null,
        string layer = Layers.Outline
    ) =>
        marks.Add(
            new PathMark([], rings)
            {
                Pen = pen,
                Fill = fill,
                Key = Key,
                Layer = layer,
            }
        );

    /// <summary>A text at its baseline.</summary>
    public void Text(Spot at, string text, double points, Align align = Align.Start, Tone tone = Tone.Ink) =>
        marks.Add(
            new TextMark(at, text, points)
            {
                Align = align,
                Tone = tone,
                Key = Key,
                Layer = Layers.Label,
            }
        );

    /// <summary>Another drawing with its upper left corner at a point.</summary>
    public void Place(Drawing drawing, Spot at)
    {
        foreach (var mark in drawing.Marks)
        {
            marks.Add(Moved(mark, at.X, at.Y));
        }
    }

    /// <summary>The corners of a rectangle.</summary>
    public static ImmutableArray<Spot> Corners(Spot corner, double width, double height) =>
        [corner, corner.Moved(width, 0), corner.Moved(width, height), corner.Moved(0, height)];

    private static Mark Moved(Mark mark, double dx, double dy) =>
        mark switch
        {
            TextMark text => text with { At = text.At.Moved(dx, dy) },
            PictureMark picture => picture with { At = picture.At.Moved(dx, dy) },
            PathMark path => path with
            {
                Contours =
                [
                    .. path.Contours.Select(c =>
                        c with
                        {
                            Spots = [.. c.Spots.Select(s => s.Moved(dx, dy))],
                        }
                    ),
                ],
                Rings = [.. path.Rings.Select(r => r with { Center = r.Center.Moved(dx, dy) })],
            },
            _ => throw new InvalidOperationException("A kind of mark is not known here."),
        };
}
