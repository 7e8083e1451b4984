using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;

namespace Litterfall.Documents.Shop;

/// <summary>Columns of blocks side by side, each in its own frame; they stand on one side together.</summary>
internal sealed class SideBySide(ImmutableArray<ImmutableArray<Block>> columns) : Block
{
    private const double Gutter = 4;
    private const double Pad = 2.5;

    /// <inheritdoc/>
    public override double Height(double width, Style style) => Tallest(width, style) + style.Gap(2);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var (room, tallest) = (Room(width), Tallest(width, style));
        for (var i = 0; i < columns.Length; i++)
        {
            var x = at.X + i * (room + Gutter);
            sketch.Rectangle(new(x, at.Y), room, tallest, new Pen(Tone.Rule, 0.3));
            var y = at.Y + Pad;
            foreach (var block in columns[i])
            {
                block.Draw(sketch, new(x + Pad, y), room - 2 * Pad, style);
                y += block.Height(room - 2 * Pad, style);
            }
        }
    }

    private double Room(double width) => (width - Gutter * (columns.Length - 1)) / columns.Length;

    private double Tallest(double width, Style style) =>
        columns.Max(c => c.Sum(b => b.Height(Room(width) - 2 * Pad, style))) + 2 * Pad;
}

/// <summary>Text with a picture at its right.</summary>
internal sealed class BesidePicture(ImmutableArray<Block> text, ImmutableArray<byte> picture) : Block
{
    private const double PictureWidth = 72;
    private const double PictureHeight = 56;
    private const double Gutter = 6;

    /// <inheritdoc/>
    public override double Height(double width, Style style) =>
        Math.Max(text.Sum(b => b.Height(Room(width), style)), Picture(default, style)?.Height ?? 0)
        + style.Gap(3);

    /// <inheritdoc/>
    public override void Draw(Sketch sketch, Spot at, double width, Style style)
    {
        var y = at.Y;
        foreach (var block in text)
        {
            block.Draw(sketch, new(at.X, y), Room(width), style);
            y += block.Height(Room(width), style);
        }

        if (Picture(new(at.X + Room(width) + Gutter, at.Y), style) is { } mark)
        {
            sketch.Add(mark);
        }
    }

    private double Room(double width) => picture.IsDefaultOrEmpty ? width : width - PictureWidth - Gutter;

    /// <summary>On a tight side the picture gives room.</summary>
    private PictureMark? Picture(Spot at, Style style) =>
        PictureFit.Into(picture, at, PictureWidth, PictureHeight * (0.6 + 0.4 * Math.Min(1, style.Air)));
}
