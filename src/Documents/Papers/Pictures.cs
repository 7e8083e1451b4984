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
        private const double Gap = 3;
        private const double Points = 9;
        private const double LineHeight = 3.8;

        private Drawing[]? said;

        /// <summary>The drawings as the reader gets them.</summary>
        private Drawing[] Shown(Style style) =>
            said ??= [
                .. row.Select(p => style.IsUs ? Legible.Whole(Legible.Of(UsUnits.Of(p.Drawing))) : p.Drawing),
            ];

        private double Tallest(Style style) => Shown(style).Max(d => d.Height);

        public override double Height(double width, Style style) =>
            Tallest(style) + 1.2 + (LineHeight * row.Max(p => Label(p, width).Count)) + style.Gap(1);

        public override void Draw(Sketch sketch, Spot at, double width, Style style)
        {
            var room = width / columns;
            for (var i = 0; i < row.Length; i++)
            {
                var x = i * room;
                var drawing = Shown(style)[i];
                sketch.Place(drawing, at.Moved(x, Tallest(style) - drawing.Height));
                var bottom = at.Y + Tallest(style) + Gap;
                foreach (var line in Label(row[i], width))
                {
                    sketch.Text(new(at.X + x, bottom), line, Points, Align.Start, Tone.Quiet);
                    bottom += LineHeight;
                }
            }
        }

        /// <summary>Name and scale, in as many lines as they need.</summary>
        private List<string> Label((string Label, Drawing Drawing) picture, double width) =>
            Lettering.Wrap(
                $"{picture.Label}, {ViewScale.Words(picture.Drawing.Scale)}",
                (width / columns) - Gap,
                Points
            );
    }
}
