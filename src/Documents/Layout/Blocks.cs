using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Layout;

/// <summary>A piece of a page that is not broken across columns.</summary>
public abstract class Block
{
    /// <summary>True for a heading, which must not end a column.</summary>
    public bool KeepsWithNext { get; init; }

    /// <summary>True for the rows of a table, which stay together unless the page is set at its tightest.
    /// </summary>
    public bool PrefersNext { get; init; }

    /// <summary>Height in millimeters.</summary>
    public abstract double Height(double width, Style style);

    /// <summary>Draws it from its upper left corner.</summary>
    public abstract void Draw(Sketch sketch, Spot at, double width, Style style);
}

/// <summary>A heading with a rule above it.</summary>
public sealed class Heading(string text) : Block
{
    private const double Larger = 1.5;

    /// <inheritdoc/>
    public override double Height(double width, Style style) =>
        style.Gap(2.6) + (style.Points + Larger) * Lettering.Point * 1.2 + style.Gap(0.8);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var points = style.Points + Larger;
        var baseline = at.Y + style.Gap(2.6) + points * Lettering.Point * 0.95;
        sketch.Add(
            new TextMark(
                new Spot(at.X, baseline),
                Lettering.Cut(style.Said(text), width, points, true),
                points
            )
            {
                Bold = true,
                Tone = Tone.Ink,
                Layer = Layers.Label,
            }
        );
        var under = baseline + points * Lettering.Point * 0.32;
        sketch.Line(new(at.X, under), new(at.X + width, under), new Pen(Tone.Rule, 0.25));
    }
}

/// <summary>Running text with an optional sign before it.</summary>
public sealed class Words(string text) : Block
{
    private (double Width, Style? Style, List<string> Lines) kept = (0, null, []);

    /// <summary>Sign before the first line.</summary>
    public Sign Sign { get; init; } = Sign.None;

    /// <summary>Color.</summary>
    public Tone Tone { get; init; } = Tone.Ink;

    /// <summary>Heavier.</summary>
    public bool Bold { get; init; }

    /// <summary>Added to the size of running text, in points.</summary>
    public double Larger { get; init; }

    /// <summary>Gap below in millimeters before the style's factor.</summary>
    public double After { get; init; } = 0.7;

    /// <summary>Most lines; the last is cut.</summary>
    public int MostLines { get; init; } = int.MaxValue;

    /// <summary>Key of the design it speaks of.</summary>
    public string Key { get; init; } = "";

    /// <inheritdoc/>
    public override double Height(double width, Style style) =>
        Lines(width, style).Count * LineHeight(style) + style.Gap(After);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var line = LineHeight(style);
        var baseline = at.Y + line * 0.78;
        var indent = Signs.Width(Sign, style);
        sketch.Key = Key;
        if (Sign != Sign.None)
        {
            Signs.Draw(sketch, Sign, new(at.X, baseline), style);
        }

        foreach (var words in Lines(width, style))
        {
            sketch.Add(
                new TextMark(new(at.X + indent, baseline), words, style.Points + Larger)
                {
                    Bold = Bold,
                    Tone = Tone,
                    Key = Key,
                    Layer = Layers.Label,
                }
            );
            baseline += line;
        }

        sketch.Key = "";
    }

    private double LineHeight(Style style) => style.Line * (style.Points + Larger) / style.Points;

    private List<string> Lines(double width, Style style)
    {
        if (kept.Style != style || Math.Abs(kept.Width - width) > 1e-9)
        {
            kept = (width, style, Wrapped(width, style));
        }

        return kept.Lines;
    }

    private List<string> Wrapped(double width, Style style)
    {
        var room = width - Signs.Width(Sign, style);
        var lines = Lettering.Wrap(style.Said(text), room, style.Points + Larger, Bold);
        if (lines.Count > MostLines)
        {
            lines[MostLines - 1] = Lettering.Cut(
                lines[MostLines - 1] + " " + lines[MostLines],
                room,
                style.Points + Larger,
                Bold
            );
            lines.RemoveRange(MostLines, lines.Count - MostLines);
        }

        return lines;
    }
}

/// <summary>A column of a table.</summary>
/// <param name="Share">Share of the width.</param>
/// <param name="Align">Alignment of its cells.</param>
public readonly record struct TableColumn(double Share, Align Align = Align.Start);

/// <summary>A row of a table; a cell too wide for its column wraps, numbers are cut.</summary>
public sealed class TableRow(ImmutableArray<TableColumn> columns, ImmutableArray<string> cells) : Block
{
    private const double Gutter = 1.6;
    private (double Width, Style? Style, List<string>[] Lines) kept = (0, null, []);

    /// <summary>Heavier, for the head of a table.</summary>
    public bool IsHead { get; init; }

    /// <summary>Heavier, for the name of the rows that follow.</summary>
    public bool IsGroup { get; init; }

    /// <summary>A box to tick before the row.</summary>
    public bool HasTick { get; init; }

    /// <summary>Key of the design it shows.</summary>
    public string Key { get; init; } = "";

    /// <summary>The same row as the last of its table.</summary>
    public TableRow Last() =>
        new(columns, cells)
        {
            IsHead = IsHead,
            IsGroup = IsGroup,
            HasTick = HasTick,
            Key = Key,
        };

    /// <inheritdoc/>
    public override double Height(double width, Style style) =>
        Enumerable.Range(0, cells.Length).Max(i => Lines(i, width, style).Count) * style.Line
        + style.Gap(0.5);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var x = at.X;
        for (var i = 0; i < cells.Length; i++)
        {
            var room = columns[i].Share * width;
            var baseline = at.Y + style.Line * 0.78;
            foreach (var words in Lines(i, width, style))
            {
                sketch.Add(
                    new TextMark(
                        new(columns[i].Align == Align.End ? x + room - Gutter : x, baseline),
                        words,
                        style.Points
                    )
                    {
                        Align = columns[i].Align,
                        Bold = IsHead || IsGroup,
                        Tone = IsHead ? Tone.Quiet : Tone.Ink,
                        Key = Key,
                        Layer = Layers.Label,
                    }
                );
                baseline += style.Line;
            }

            x += room;
        }

        if (HasTick)
        {
            Signs.Draw(sketch, Sign.Tick, new(at.X, at.Y + style.Line * 0.78), style);
        }

        if (IsHead)
        {
            var under = at.Y + Height(width, style) - style.Gap(0.3);
            sketch.Line(new(at.X, under), new(at.X + width, under), new Pen(Tone.Rule, 0.2));
        }
    }

    private List<string> Lines(int i, double width, Style style)
    {
        if (kept.Style != style || Math.Abs(kept.Width - width) > 1e-9)
        {
            kept = (
                width,
                style,
                [
                    .. cells.Select(
                        (cell, c) =>
                            Lettering.Wrap(
                                style.Said(cell),
                                columns[c].Share * width - Gutter,
                                style.Points,
                                IsHead || IsGroup
                            )
                    ),
                ]
            );
        }

        return kept.Lines[i];
    }
}

/// <summary>What follows starts in the next column.</summary>
public sealed class ColumnBreak : Block
{
    /// <inheritdoc/>
    public override double Height(double width, Style style) => 0;

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style) { }
}

/// <summary>Air.</summary>
public sealed class Air(double millimeters) : Block
{
    /// <inheritdoc/>
    public override double Height(double width, Style style) => style.Gap(millimeters);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style) { }
}

/// <summary>A line to be filled in by hand.</summary>
public sealed class Blank(string label) : Block
{
    /// <inheritdoc/>
    public override double Height(double width, Style style) => style.Line + style.Gap(2.2);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var baseline = at.Y + style.Line * 0.8 + style.Gap(1.6);
        var words = Lettering.Cut(style.Said(label), width * 0.6, style.Points);
        sketch.Text(new(at.X, baseline), words, style.Points, Align.Start, Tone.Quiet);
        var from = at.X + Lettering.Width(words, style.Points) + 2;
        sketch.Line(new(from, baseline + 0.6), new(at.X + width, baseline + 0.6), new Pen(Tone.Quiet, 0.2));
    }
}

/// <summary>Blocks inside a frame.</summary>
public sealed class Framed(ImmutableArray<Block> inner, Tone tone) : Block
{
    private const double Pad = 2;

    /// <inheritdoc/>
    public override double Height(double width, Style style) =>
        inner.Sum(b => b.Height(width - 2 * Pad, style)) + 2 * Pad + style.Gap(1.5);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var height = Height(width, style) - style.Gap(1.5);
        sketch.Rectangle(at, width, height, new Pen(tone, 0.7));
        var y = at.Y + Pad;
        foreach (var block in inner)
        {
            block.Draw(sketch, new(at.X + Pad, y), width - 2 * Pad, style);
            y += block.Height(width - 2 * Pad, style);
        }
    }
}
