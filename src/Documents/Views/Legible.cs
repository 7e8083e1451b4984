using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Views;

/// <summary>
/// A drawing whose words can be read: none lies on another, and dimension lines and leaders are broken where
/// they would run through one, as on a drawing made by hand.
/// </summary>
internal static class Legible
{
    /// <summary>Height of figures and capitals over the line, in type sizes.</summary>
    private const double Over = 0.74;

    private const double Under = 0.06;

    /// <summary>What a line may touch of a word's field, mm; a plate is as much larger.</summary>
    private const double Inset = 0.2;

    /// <summary>Air kept around a word, mm.</summary>
    private const double Air = 0.35;

    private const int Rings = 6;

    private const double PlateStrength = 0.9;

    /// <summary>The same drawing, made legible.</summary>
    /// <param name="drawing">A drawing.</param>
    public static Drawing Of(Drawing drawing)
    {
        var marks = Apart(drawing);
        var fields = marks.OfType<TextMark>().Where(t => t.Text.Length > 0).Select(Field.Of).ToList();
        return drawing with
        {
            Marks = Plated([.. marks.Select(mark => Broken(mark, fields)).OfType<Mark>()]),
        };
    }

    /// <summary>Words last, each on a plate of paper where a line of another thing runs under it.</summary>
    private static ImmutableArray<Mark> Plated(List<Mark> marks)
    {
        var drawn = ImmutableArray.CreateBuilder<Mark>(marks.Count + 16);
        drawn.AddRange(marks.Where(m => m is not TextMark));
        foreach (var text in marks.OfType<TextMark>())
        {
            var field = Field.Of(text);
            if (text.Text.Length > 0 && IsStruck(marks, text, field))
            {
                drawn.Add(
                    new PathMark([new(field.Corners(), true)], [])
                    {
                        Fill = Tone.Paper,
                        Strength = PlateStrength,
                        Key = text.Key,
                        Layer = Layers.Label,
                    }
                );
            }

            drawn.Add(text);
        }

        return drawn.ToImmutable();
    }

    /// <summary>
    /// True where the last that is drawn there is a line of another thing, not a filling over it.
    /// </summary>
    private static bool IsStruck(List<Mark> marks, TextMark text, in Field field)
    {
        var isStruck = false;
        foreach (var mark in marks.OfType<PathMark>())
        {
            var hides = mark is { Strength: >= 1 } && (mark.Fill ?? (object?)mark.Shade) is not null;
            isStruck = isStruck && !(hides && field.IsCovered(mark));
            var isOwn = mark.Key.Length > 0 && mark.Key == text.Key;
            isStruck |= mark.Pen is not null && !isOwn && field.IsCrossed(mark);
        }

        return isStruck;
    }

    /// <summary>The same drawing, as large as its words need.</summary>
    /// <param name="drawing">A drawing.</param>
    public static Drawing Whole(Drawing drawing)
    {
        var fields = drawing.Marks.OfType<TextMark>().Select(Field.Of).ToList();
        if (fields.TrueForAll(f => f.IsWithin(drawing)))
        {
            return drawing;
        }

        var (left, top) = (Math.Max(0, -fields.Min(f => f.Left)), Math.Max(0, -fields.Min(f => f.Top)));
        var right = Math.Max(drawing.Width, fields.Max(f => f.Right));
        var bottom = Math.Max(drawing.Height, fields.Max(f => f.Bottom));
        var sketch = new Sketch();
        sketch.Place(drawing, new(left, top));
        return sketch.Done(left + right, top + bottom, drawing.Scale);
    }

    /// <summary>Words that lie on an earlier one are moved aside, no farther than needed.</summary>
    private static List<Mark> Apart(Drawing drawing)
    {
        var placed = new List<Field>();
        var marks = new List<Mark>(drawing.Marks.Length);
        foreach (var mark in drawing.Marks)
        {
            if (mark is not TextMark { Text.Length: > 0 } text)
            {
                marks.Add(mark);
                continue;
            }

            var moved = Aside(Inside(text, drawing), placed, drawing);
            placed.Add(Field.Of(moved));
            marks.Add(moved);
        }

        return marks;
    }

    /// <summary>A word that sticks out of the drawing is moved in, where it has room.</summary>
    private static TextMark Inside(TextMark text, Drawing drawing)
    {
        var here = Field.Of(text);
        return text with
        {
            At = text.At.Moved(
                Shift(here.Left, here.Right, drawing.Width),
                Shift(here.Top, here.Bottom, drawing.Height)
            ),
        };
    }

    private static double Shift(double low, double high, double end) =>
        high - low > end ? 0
        : low < 0 ? -low
        : high > end ? end - high
        : 0;

    private static TextMark Aside(TextMark text, List<Field> placed, Drawing drawing)
    {
        var here = Field.Of(text);
        if (!placed.Exists(here.Meets))
        {
            return text;
        }

        var step = 0.5 * text.Points * Lettering.Point;
        (double X, double Y)? outside = null;
        for (var ring = 1; ring <= Rings * 2; ring++)
        {
            foreach (var (dx, dy) in Around(ring * step))
            {
                var there = here.Moved(dx, dy);
                if (placed.Exists(there.Meets))
                {
                    continue;
                }

                if (there.IsWithin(drawing))
                {
                    return text with { At = text.At.Moved(dx, dy) };
                }

                outside ??= (dx, dy);
            }
        }

        return outside is { } far ? text with { At = text.At.Moved(far.X, far.Y) } : text;
    }

    private static IEnumerable<(double X, double Y)> Around(double far) =>
        [(0, -far), (0, far), (far, 0), (-far, 0), (far, -far), (-far, -far), (far, far), (-far, far)];

    /// <summary>A dimension line without what would run through a word; null where nothing is left.</summary>
    private static Mark? Broken(Mark mark, List<Field> fields)
    {
        if (mark is not PathMark { Pen: not null, Layer: Layers.Dimension } path || path.Contours.IsEmpty)
        {
            return mark;
        }

        var whole = path
            .Contours.SelectMany(c => c.Closed ? [c] : Pieces(c.Spots, fields))
            .ToImmutableArray();
        return whole.IsEmpty && path.Rings.IsEmpty ? null : path with { Contours = whole };
    }

    private static IEnumerable<Contour> Pieces(ImmutableArray<Spot> spots, List<Field> fields)
    {
        if (!spots.Zip(spots.Skip(1)).Any(s => fields.Exists(f => f.Span(s.First, s.Second) is not null)))
        {
            yield return new Contour(spots, false);
            yield break;
        }

        for (var i = 1; i < spots.Length; i++)
        {
            foreach (var (from, to) in Open(spots[i - 1], spots[i], fields))
            {
                yield return new Contour(
                    [Along(spots[i - 1], spots[i], from), Along(spots[i - 1], spots[i], to)],
                    false
                );
            }
        }
    }

    /// <summary>The parts of a line outside all words, as shares of its length.</summary>
    private static List<(double From, double To)> Open(Spot a, Spot b, List<Field> fields)
    {
        List<(double From, double To)> open = [(0, 1)];
        foreach (var (enter, leave) in fields.Select(f => f.Span(a, b)).OfType<(double, double)>())
        {
            open =
            [
                .. open.SelectMany(o =>
                        new[] { (o.From, To: Math.Min(o.To, enter)), (From: Math.Max(o.From, leave), o.To) }
                    )
                    .Where(o => o.To - o.From > 1e-6),
            ];
        }

        return open;
    }

    private static Spot Along(Spot a, Spot b, double share) =>
        new(a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));

    /// <summary>What a word covers with the air around it, mm.</summary>
    private readonly record struct Field(double Left, double Top, double Right, double Bottom)
    {
        public static Field Of(TextMark text)
        {
            var width = Lettering.Width(text.Text, text.Points, text.Bold);
            var size = text.Points * Lettering.Point;
            var start = text.Align switch
            {
                Align.Middle => -width / 2,
                Align.End => -width,
                _ => 0,
            };
            var (x, y) = (text.At.X, text.At.Y);
            return text.Upright
                ? new(x - Over * size, y - start - width, x + Under * size, y - start)
                : new(x + start, y - Over * size, x + start + width, y + Under * size);
        }

        public bool Meets(Field other) =>
            Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

        public Field Moved(double dx, double dy) => new(Left + dx, Top + dy, Right + dx, Bottom + dy);

        public ImmutableArray<Spot> Corners() =>
            Sketch.Corners(new(Left - Inset, Top), Right - Left + (2 * Inset), Bottom - Top + Inset);

        /// <summary>True where a filled contour or ring covers all of it.</summary>
        public bool IsCovered(PathMark mark)
        {
            Spot[] corners = [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];
            return mark.Rings.Any(r => corners.All(c => Far(c, r.Center) <= r.Radius))
                || mark.Contours.Any(c => c.Closed && corners.All(k => IsIn(c.Spots, k)));
        }

        /// <summary>True where a line of a mark runs through it.</summary>
        public bool IsCrossed(PathMark mark)
        {
            var inner = new Field(Left + Inset, Top + Inset, Right - Inset, Bottom - Inset);
            foreach (var contour in mark.Contours)
            {
                for (var i = contour.Closed ? 0 : 1; i < contour.Spots.Length; i++)
                {
                    var from = contour.Spots[i == 0 ? contour.Spots.Length - 1 : i - 1];
                    if (inner.Bare(from, contour.Spots[i]))
                    {
                        return true;
                    }
                }
            }

            return mark.Rings.Any(r => inner.IsOnRim(r));
        }

        private bool IsOnRim(Ring ring)
        {
            var (x, y) = (Math.Clamp(ring.Center.X, Left, Right), Math.Clamp(ring.Center.Y, Top, Bottom));
            var far = Math.Max(
                Math.Max(Far(new(Left, Top), ring.Center), Far(new(Right, Top), ring.Center)),
                Math.Max(Far(new(Left, Bottom), ring.Center), Far(new(Right, Bottom), ring.Center))
            );
            return Far(new(x, y), ring.Center) < ring.Radius && far > ring.Radius;
        }

        private bool Bare(Spot a, Spot b)
        {
            var bare = this with
            {
                Left = Left + Air,
                Top = Top + Air,
                Right = Right - Air,
                Bottom = Bottom - Air,
            };
            return bare.Span(a, b) is not null;
        }

        private static double Far(Spot a, Spot b) =>
            Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

        private static bool IsIn(ImmutableArray<Spot> around, Spot at)
        {
            var isIn = false;
            for (var (i, j) = (0, around.Length - 1); i < around.Length; j = i++)
            {
                var (a, b) = (around[i], around[j]);
                if (a.Y > at.Y != b.Y > at.Y && at.X < ((b.X - a.X) * (at.Y - a.Y) / (b.Y - a.Y)) + a.X)
                {
                    isIn = !isIn;
                }
            }

            return isIn;
        }

        public bool IsWithin(Drawing drawing) =>
            Left >= 0 && Top >= 0 && Right <= drawing.Width && Bottom <= drawing.Height;

        /// <summary>Where a line runs through it, as shares of the line; null where it does not.</summary>
        public (double Enter, double Leave)? Span(Spot a, Spot b)
        {
            var (enter, leave) = (0.0, 1.0);
            foreach (
                var (at, along, low, high) in new[]
                {
                    (a.X, b.X - a.X, Left - Air, Right + Air),
                    (a.Y, b.Y - a.Y, Top - Air, Bottom + Air),
                }
            )
            {
                if (Math.Abs(along) < 1e-12)
                {
                    if (at <= low || at >= high)
                    {
                        return null;
                    }

                    continue;
                }

                var (one, two) = ((low - at) / along, (high - at) / along);
                (enter, leave) = (Math.Max(enter, Math.Min(one, two)), Math.Min(leave, Math.Max(one, two)));
            }

            return enter < leave - 1e-9 ? (enter, leave) : null;
        }
    }
}
