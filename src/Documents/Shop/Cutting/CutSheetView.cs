using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Views;

namespace Litterfall.Documents.Shop.Cutting;

/// <summary>
/// A sheet to scale as it lies on the bench: parts, cuts with their numbers, running measures from the lower
/// left corner, what is kept and what is waste. Kept and wasted fields differ by their hatching, so that grey
/// print tells them apart.
/// </summary>
public static class CutSheetView
{
    private const double Points = 9;
    private const double Beside = 17;
    private const double Below = 17;
    private const double Air = 5;
    private const double Least = 3.5;
    private const double Badge = 2.4;

    /// <summary>Draws a sheet at the largest usual scale that fits.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="room">Room in millimeters.</param>
    public static Drawing Draw(CutSheetText sheet, (double Width, double Height) room)
    {
        var scale = Math.Min(
            ViewScale.Fitting(sheet.Length / 1000, room.Width - Beside - Air),
            ViewScale.Fitting(sheet.Width / 1000, room.Height - Below - Air)
        );
        return new Board(sheet, scale, int.MaxValue).Draw();
    }

    /// <summary>Draws a sheet for a screen, cuts up to one of them, that one thick.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="room">Room in millimeters.</param>
    /// <param name="upto">Number of the cut that is next; 0 for the sheet without cuts.</param>
    public static Drawing Screen(CutSheetText sheet, (double Width, double Height) room, int upto)
    {
        var scale = Math.Min(
            (room.Width - Beside - Air) / sheet.Length,
            (room.Height - Below - Air) / sheet.Width
        );
        return new Board(sheet, scale, upto).Draw();
    }

    /// <summary>"scale 1 : 10".</summary>
    /// <param name="drawing">The drawing.</param>
    public static string Scale(Drawing drawing) => ViewScale.Words(drawing.Scale);

    private sealed class Board(CutSheetText sheet, double scale, int upto)
    {
        private readonly Sketch sketch = new();
        private readonly List<Spot> badges = [];
        private readonly double left = Beside;
        private readonly double foot = Air + (sheet.Width * scale);

        public Drawing Draw()
        {
            Waste();
            foreach (var offcut in sheet.Offcuts)
            {
                Kept(offcut);
            }

            foreach (var part in sheet.Parts)
            {
                Part(part);
            }

            Trim();
            sketch.Rectangle(At(0, sheet.Width), sheet.Length * scale, sheet.Width * scale, Pen.Thin);
            foreach (var cut in sheet.Cuts.Where(c => c.Number <= upto))
            {
                Number(cut);
            }

            Measures();
            Grain();
            return Legible.Whole(
                Legible.Of(sketch.Done(left + (sheet.Length * scale) + Air, foot + Below, scale))
            );
        }

        /// <summary>All of the sheet in wide hatching; what is used is painted over it.</summary>
        private void Waste() => Hatch(0, 0, sheet.Length, sheet.Width, 4, new Pen(Tone.Rule, 0.15));

        private void Kept(SheetOffcut offcut)
        {
            Blank(offcut.X, offcut.Y, offcut.Length, offcut.Width, Tone.Paper);
            Hatch(offcut.X, offcut.Y, offcut.Length, offcut.Width, 1.6, new Pen(Tone.Well, 0.13));
            Outline(offcut.X, offcut.Y, offcut.Length, offcut.Width, new Pen(Tone.Well, 0.35, 2));
            Label(
                (offcut.X, offcut.Y, offcut.Length, offcut.Width),
                [$"keep {offcut.Number}", Size(offcut.Length, offcut.Width)],
                Tone.Well
            );
        }

        private void Part(SheetPart part)
        {
            Blank(part.X, part.Y, part.Length, part.Width, Tone.Field);
            Outline(part.X, part.Y, part.Length, part.Width, Pen.Strong);
            Label(
                (part.X, part.Y, part.Length, part.Width),
                [
                    part.Number + (part.IsTurned ? " turned" : ""),
                    Size(part.Length, part.Width),
                    part.Name,
                    part.For,
                ],
                Tone.Ink
            );
        }

        private void Trim()
        {
            var (across, along) = (sheet.TrimAcross, sheet.TrimAlong);
            if (across > 0 || along > 0)
            {
                Outline(
                    across,
                    along,
                    sheet.Length - (2 * across),
                    sheet.Width - (2 * along),
                    new Pen(Tone.Quiet, 0.15, 1)
                );
            }
        }

        /// <summary>
        /// The number of a cut in a ring where it begins, at the datum side of its piece; along the cut where
        /// another number is there already.
        /// </summary>
        private void Number(SheetCut cut)
        {
            var start = cut.IsUpright ? At(cut.At, cut.From) : At(cut.From, cut.At);
            var at = Enumerable
                .Range(0, 12)
                .Select(i => Badge * (1 + (2.2 * i)))
                .Select(d => cut.IsUpright ? start.Moved(0, -d) : start.Moved(d, 0))
                .FirstOrDefault(spot => badges.TrueForAll(b => IsApart(b, spot)), start);
            badges.Add(at);
            sketch.Line(
                cut.IsUpright ? At(cut.At, cut.From) : At(cut.From, cut.At),
                cut.IsUpright ? At(cut.At, cut.To) : At(cut.To, cut.At),
                new Pen(Tone.Stop, cut.Number == upto ? 0.9 : 0.3, sheet.IsScored ? 1.5 : 0)
            );
            sketch.Rings([new Ring(at, Badge)], new Pen(Tone.Stop, 0.2), Tone.Paper);
            sketch.Text(at.Moved(0, 1.1), Whole(cut.Number), Points, Align.Middle, Tone.Stop);
        }

        private static bool IsApart(Spot one, Spot other) =>
            Math.Abs(one.X - other.X) > 2 * Badge || Math.Abs(one.Y - other.Y) > 2 * Badge;

        /// <summary>Running measures from the lower left corner; close ones are spread and led to.</summary>
        private void Measures()
        {
            var across = Places(sheet.Cuts.Where(c => c.IsUpright), sheet.Length);
            var spread = Spread([.. across.Select(p => left + (p * scale))]);
            for (var i = 0; i < across.Length; i++)
            {
                var tick = new Spot(left + (across[i] * scale), foot);
                var text = new Spot(spread[i], foot + 3.2);
                sketch.Lines(
                    [new Contour([tick, tick.Moved(0, 1.2), text], false)],
                    Pen.Fine,
                    Layers.Dimension
                );
                sketch.Add(
                    new TextMark(text.Moved(1.1, 10.6), Millimeters(across[i]), Points)
                    {
                        Upright = true,
                        Layer = Layers.Label,
                    }
                );
            }

            var along = Places(sheet.Cuts.Where(c => !c.IsUpright), sheet.Width);
            var stacked = Spread([.. along.Reverse().Select(p => foot - (p * scale))]).Reverse().ToArray();
            for (var i = 0; i < along.Length; i++)
            {
                var tick = new Spot(left, foot - (along[i] * scale));
                var text = new Spot(left - 3.2, stacked[i]);
                sketch.Lines(
                    [new Contour([tick, tick.Moved(-1.2, 0), text], false)],
                    Pen.Fine,
                    Layers.Dimension
                );
                sketch.Text(text.Moved(-0.4, 1.1), Millimeters(along[i]), Points, Align.End);
            }
        }

        private void Grain()
        {
            if (!sheet.HasGrain)
            {
                return;
            }

            var from = new Spot(left + (sheet.Length * scale) - 30, foot + Below - 2.2);
            var pen = new Pen(Tone.Ink, 0.3);
            sketch.Line(from, from.Moved(14, 0), pen);
            sketch.Lines(
                [new Contour([from.Moved(11.5, -1.3), from.Moved(14, 0), from.Moved(11.5, 1.3)], false)],
                pen
            );
            sketch.Text(from.Moved(15.5, 1.1), "grain", Points);
        }

        private static ImmutableArray<double> Places(IEnumerable<SheetCut> cuts, double end) =>
            [
                .. cuts.Select(c => Math.Round(c.At, 1))
                    .Append(Math.Round(end, 1))
                    .Where(p => p > 0)
                    .Distinct()
                    .Order(),
            ];

        /// <summary>Places at least a line apart, near where they were.</summary>
        private static double[] Spread(double[] wanted)
        {
            var placed = (double[])wanted.Clone();
            for (var round = 0; round < 60; round++)
            {
                var isCalm = true;
                for (var i = 0; i + 1 < placed.Length; i++)
                {
                    var lack = Least - (placed[i + 1] - placed[i]);
                    if (lack > 1e-6)
                    {
                        placed[i] -= lack / 2;
                        placed[i + 1] += lack / 2;
                        isCalm = false;
                    }
                }

                if (isCalm)
                {
                    break;
                }
            }

            return placed;
        }

        private void Label((double X, double Y, double Length, double Width) on, string[] lines, Tone tone)
        {
            const double pitch = 3.7;
            var (wide, high) = ((on.Length * scale) - 1.6, (on.Width * scale) - 1.2);
            var isUpright = wide < high && Lettering.Width(lines[0], Points) > wide;
            var (along, across) = isUpright ? (high, wide) : (wide, high);
            var most = (int)(across / pitch);
            // What does not fit stands in the table of parts: a word that is cut off misleads.
            var shown = lines
                .Select(l => Lettering.Clean(l))
                .Where(l => l.Length > 0)
                .SelectMany((l, i) => i == 0 ? [l] : Lettering.Wrap(l, along, Points))
                .Take(most)
                .TakeWhile(l => Lettering.Width(l, Points, true) <= along)
                .ToList();
            var middle = At(on.X + (on.Length / 2), on.Y + (on.Width / 2));
            for (var i = 0; i < shown.Count; i++)
            {
                var off = ((i - ((shown.Count - 1) / 2.0)) * pitch) + 1.1;
                sketch.Add(
                    new TextMark(isUpright ? middle.Moved(off, 0) : middle.Moved(0, off), shown[i], Points)
                    {
                        Align = Align.Middle,
                        Upright = isUpright,
                        Bold = i == 0,
                        Tone = tone,
                        Layer = Layers.Label,
                    }
                );
            }
        }

        private void Hatch(double x, double y, double length, double width, double pitch, Pen pen)
        {
            var corner = At(x, y + width);
            var (wide, high) = (length * scale, width * scale);
            var lines = ImmutableArray.CreateBuilder<Contour>();
            for (var d = pitch; d < wide + high; d += pitch)
            {
                var (fromX, fromY) = (Math.Max(0, d - high), Math.Min(high, d));
                var (toX, toY) = (Math.Min(wide, d), Math.Max(0, d - wide));
                lines.Add(new([corner.Moved(fromX, fromY), corner.Moved(toX, toY)], false));
            }

            sketch.Lines(lines.ToImmutable(), pen, Layers.Hatch);
        }

        private void Blank(double x, double y, double length, double width, Tone fill) =>
            sketch.Rectangle(At(x, y + width), length * scale, width * scale, null, fill);

        private void Outline(double x, double y, double length, double width, Pen pen) =>
            sketch.Rectangle(At(x, y + width), length * scale, width * scale, pen);

        private Spot At(double x, double y) => new(left + (x * scale), foot - (y * scale));

        private static string Size(double length, double width) =>
            $"{Millimeters(length)} × {Millimeters(width)}";

        private static string Millimeters(double value) =>
            value.ToString("0.#", CultureInfo.InvariantCulture);

        private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
    }
}
