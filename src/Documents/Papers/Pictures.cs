using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;

namespace Litterfall.Documents.Papers;

/// <summary>Drawings side by side, each with its name and scale below.</summary>
internal static class Pictures
{
    /// <summary>Rows of so many drawings.</summary>
    public static IEnumerable<Block> Grid(
        ImmutableArray<(string Label, Drawing Drawing)> pictures,
        int columns
    ) => pictures.Chunk(columns).Select(row => new PictureRow([.. row], columns));

    private sealed class PictureRow(ImmutableArray<(string Label, Drawing Drawing)> row, int columns) : Block
    {
        private const double LabelHeight = 5;

        public override double Height(double width, Style style) =>
            row.Max(p => p.Drawing.Height) + LabelHeight + style.Gap(1);

        public override void Draw(Sketch sketch, Spot at, double width, Style style)
        {
            var room = width / columns;
            var bottom = at.Y + row.Max(p => p.Drawing.Height) + 3;
            for (var i = 0; i < row.Length; i++)
            {
                var (label, drawing) = row[i];
                sketch.Place(drawing, at.Moved(i * room, row.Max(p => p.Drawing.Height) - drawing.Height));
                sketch.Text(
                    new(at.X + i * room, bottom),
                    Lettering.Cut($"{label}, {ViewScale.Words(drawing.Scale)}", room - 3, 9),
                    9,
                    Align.Start,
                    Tone.Quiet
                );
            }
        }
    }
}
