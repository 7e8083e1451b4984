using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Layout;

/// <summary>What stands at the head and foot of a page.</summary>
/// <param name="Title">Kind of paper, e.g. "Build sheet".</param>
/// <param name="Name">Name of the build.</param>
/// <param name="Mark">Number of the tank and the date.</param>
/// <param name="Foot">What the numbers rest on.</param>
public sealed record PageHead(string Title, string Name, string Mark, string Foot)
{
    /// <summary>True for a reader of inches.</summary>
    public bool IsUs { get; init; }
}

/// <summary>Head, foot and the 100 mm bar of a page; the rest is room for blocks.</summary>
public static class PageFrame
{
    private const double Width = 190;
    private const double Margin = 11;
    private const double HeadHeight = 15;
    private const double FootHeight = 9;

    /// <summary>The room between head and foot.</summary>
    public static Room Inside(PaperSize size) =>
        new(
            (size.Width - Width) / 2,
            Margin + HeadHeight,
            Width,
            size.Height - 2 * Margin - HeadHeight - FootHeight
        );

    /// <summary>A paper whose blocks are set as roomy as one side allows.</summary>
    /// <param name="size">The sheet.</param>
    /// <param name="head">Head and foot.</param>
    /// <param name="blocks">What it says.</param>
    /// <param name="columns">How many columns.</param>
    /// <returns>Its sides.</returns>
    public static IReadOnlyList<Drawing> Sides(
        PaperSize size,
        PageHead head,
        Func<Style, IReadOnlyList<Block>> blocks,
        int columns = 1
    ) => Sides(size, head, (style, _) => blocks(style), _ => Flow.Columns(Inside(size), columns));

    /// <summary>
    /// A paper with a drawn upper part and columns below. What even the tightest style cannot set on one side
    /// goes on to the next: nothing is left out.
    /// </summary>
    /// <returns>Its sides.</returns>
    public static IReadOnlyList<Drawing> Sides(
        PaperSize size,
        PageHead head,
        Func<Style, Sketch?, IReadOnlyList<Block>> blocks,
        Func<Style, IReadOnlyList<Room>> rooms,
        IReadOnlyList<Style>? styles = null
    )
    {
        Style[] ladder = [.. (styles ?? Style.RoomyToTight).Select(s => s with { IsUs = head.IsUs })];
        var style = ladder.FirstOrDefault(s =>
        {
            var set = blocks(s, null);
            return Flow.Set(set, rooms(s), s, null) == set.Count;
        });
        if (style is not null)
        {
            return Pages(size, head, blocks, rooms, style);
        }

        // More than one side: as roomy as the fewest sides allow.
        var tightest = Pages(size, head, blocks, rooms, ladder[^1]);
        return ladder
            .Select(s => Pages(size, head, blocks, rooms, s))
            .FirstOrDefault(sides => sides.Count <= tightest.Count)
            ?? tightest;
    }

    private static List<Drawing> Pages(
        PaperSize size,
        PageHead head,
        Func<Style, Sketch?, IReadOnlyList<Block>> blocks,
        Func<Style, IReadOnlyList<Room>> rooms,
        Style style
    )
    {
        var sketch = Framed(size, head);
        IReadOnlyList<Block> left = blocks(style, sketch);
        var places = rooms(style);
        var sides = new List<Drawing>();
        var columns = Flow.Columns(Inside(size), places.Count);
        while (true)
        {
            var set = Flow.Set(left, places, style, sketch);
            sides.Add(sketch.Done(size.Width, size.Height));
            // A block taller than a side is in no paper; one that is would otherwise come for ever.
            left = [.. left.Skip(sides.Count > 1 ? Math.Max(1, set) : set).SkipWhile(b => b is ColumnBreak)];
            if (left.Count == 0)
            {
                return sides;
            }

            sketch = Framed(
                size,
                head with
                {
                    Title = FormattableString.Invariant($"{head.Title}, side {sides.Count + 1}"),
                }
            );
            places = columns;
        }
    }

    /// <summary>A sheet with its head, foot and bar alone.</summary>
    public static Sketch Framed(PaperSize size, PageHead head)
    {
        var sketch = new Sketch();
        Frame(sketch, size, head);
        return sketch;
    }

    private static void Frame(Sketch sketch, PaperSize size, PageHead head)
    {
        var left = (size.Width - Width) / 2;
        var right = left + Width;
        var mark = Lettering.Clean(head.Mark);
        var room = Width - Lettering.Width(mark, 9) - 4;
        sketch.Add(
            new TextMark(new(left, Margin + 5.4), Lettering.Cut(head.Title, room, 16, true), 16)
            {
                Bold = true,
                Layer = Layers.Label,
            }
        );
        sketch.Text(new(left, Margin + 11), Lettering.Cut(head.Name, Width, 11), 11);
        sketch.Text(new(right, Margin + 4.6), mark, 9, Align.End, Tone.Quiet);
        sketch.Line(new(left, Margin + 13), new(right, Margin + 13), new Pen(Tone.Ink, 0.5));
        var foot = size.Height - Margin;
        CheckBar(sketch, new(left, foot - 1.2));
        sketch.Text(new(left, foot - 3.6), Lettering.Cut(head.Foot, Width, 9), 9, Align.Start, Tone.Quiet);
        sketch.Text(
            new(left + 104, foot),
            "print at 100 %: this bar is 100 mm long",
            9,
            Align.Start,
            Tone.Quiet
        );
    }

    /// <summary>A bar of 100 mm with a tick each 10 mm.</summary>
    private static void CheckBar(Sketch sketch, Spot at)
    {
        var pen = new Pen(Tone.Ink, 0.25);
        sketch.Line(at, at.Moved(100, 0), pen, Layers.Reference);
        for (var i = 0; i <= 10; i++)
        {
            sketch.Line(at.Moved(i * 10, 0), at.Moved(i * 10, i % 10 == 0 ? -2 : -1), pen, Layers.Reference);
        }
    }
}
