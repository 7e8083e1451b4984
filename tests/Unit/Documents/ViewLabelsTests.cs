using System.Collections.Concurrent;
using System.Collections.Immutable;
using CsCheck;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Views;
using Litterfall.Forecasting;
using Litterfall.UnitTests.Domain;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// Words of the drawings can be read: no line of another thing strikes them, none lies on another.
/// </summary>
public sealed class ViewLabelsTests
{
    private const double Over = 0.70;
    private const double Under = 0.02;
    private const double Touch = 0.6;

    /// <summary>A plate or filling of this strength hides what is behind it.</summary>
    private const double Hides = 0.9;

    private static readonly (double, double)[] Rooms = [(176, 104), (92, 130), (240, 140)];

    public static TheoryData<string> Samples => [.. SampleFiles.Paths];

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_word_of_a_drawing_of_a_sample_is_struck(string sample)
    {
        var numbers = Posed.Sample(sample).Numbers;
        var faults = Faults(numbers, withLight: true).Distinct(StringComparer.Ordinal).ToArray();
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Fact]
    public void No_word_of_a_drawing_of_a_random_design_is()
    {
        var dice = new PCG(7, 4021);
        var designs = Enumerable
            .Range(0, LongRun.Cases(16, 1500))
            .Select(_ => RandomFittings.Quick.Generate(dice, null, out var _))
            .ToArray();
        var faults = new ConcurrentBag<string>();
        Parallel.ForEach(designs, design =>
        {
            foreach (var fault in Faults(DesignNumbers.Shape(design), withLight: false))
            {
                faults.Add(fault);
            }
        });
        var told = faults.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        Assert.True(told.Length == 0, $"{told.Length}\n" + string.Join('\n', told.Take(60)));
    }

    private static IEnumerable<string> Faults(DesignNumbers numbers, bool withLight)
    {
        var wet = new Moment(0.02, [(0, 0.3), (0.5, 0.6), (1, 0.9)]) { IsLit = true, FrontFogs = true };
        foreach (var onScreen in new[] { true, false })
        {
            var views = new DesignViews(numbers, onScreen);
            foreach (var room in Rooms)
            {
                var drawings = new List<(string, Drawing?)>
                {
                    ("section", views.Section(room)),
                    ("section of an hour", onScreen ? views.Section(room, wet) : null),
                    ("plan", views.Plan(room)),
                    ("front", views.Front(room)),
                    ("light", withLight ? views.LightPlan(room) : null),
                    ("light section", withLight && !onScreen ? views.LightSection(room) : null),
                };
                foreach (var (name, drawing) in drawings)
                {
                    foreach (var fault in drawing is null ? [] : Faults(drawing))
                    {
                        yield return $"{name} {room} {(onScreen ? "screen" : "paper")}: {fault}";
                    }
                }
            }
        }
    }

    private static IEnumerable<string> Faults(Drawing drawing)
    {
        var texts = new List<(TextMark Text, Box Box)>();
        for (var i = 0; i < drawing.Marks.Length; i++)
        {
            if (drawing.Marks[i] is not TextMark { Text.Length: > 0 } text)
            {
                continue;
            }

            var box = Of(text);
            if (texts.Find(t => t.Box.Meets(box)) is { Text: { } other })
            {
                yield return $"{text.Text} lies on {other.Text}";
            }

            texts.Add((text, box));
            var struck = Struck(drawing.Marks, text, box);
            if (struck is not null)
            {
                yield return $"{text.Text} is struck by {struck}";
            }
        }
    }

    /// <summary>Key of a line that shows across a word; null where none does.</summary>
    private static string? Struck(ImmutableArray<Mark> marks, TextMark text, in Box box)
    {
        string? struck = null;
        foreach (var mark in marks)
        {
            if (mark is not PathMark path)
            {
                continue;
            }

            if ((path.Fill ?? (object?)path.Shade) is not null && path.Strength >= Hides && box.IsUnder(path))
            {
                struck = null;
            }

            if (path.Pen is not null && (path.Key.Length == 0 || path.Key != text.Key) && box.IsCrossed(path))
            {
                struck = path.Key.Length == 0 ? path.Layer : path.Key;
            }
        }

        return struck;
    }

    private static Box Of(TextMark text)
    {
        var width = Lettering.Width(text.Text, text.Points, text.Bold);
        var size = text.Points * Lettering.Point;
        var start = text.Align switch
        {
            Align.Middle => -width / 2,
            Align.End => -width,
            _ => 0,
        };
        var box = text.Upright
            ? new Box(
                text.At.X - (Over * size),
                text.At.Y - start - width,
                text.At.X + (Under * size),
                text.At.Y - start
            )
            : new Box(
                text.At.X + start,
                text.At.Y - (Over * size),
                text.At.X + start + width,
                text.At.Y + (Under * size)
            );
        return new(box.Left + Touch / 2, box.Top + Touch / 2, box.Right - Touch / 2, box.Bottom - Touch / 2);
    }

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public bool Meets(Box other) =>
            Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

        public bool IsUnder(PathMark path)
        {
            Spot[] corners = [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];
            return path.Contours.Any(c => c.Closed && Array.TrueForAll(corners, k => Contains(c.Spots, k)))
                || path.Rings.Any(r => Array.TrueForAll(corners, k => Far(k, r.Center) <= r.Radius));
        }

        public bool IsCrossed(PathMark path)
        {
            foreach (var contour in path.Contours)
            {
                for (var i = contour.Closed ? 0 : 1; i < contour.Spots.Length; i++)
                {
                    if (Cuts(contour.Spots[i == 0 ? ^1 : i - 1], contour.Spots[i]))
                    {
                        return true;
                    }
                }
            }

            var box = this;
            return path.Rings.Any(r =>
            {
                const int Sides = 24;
                for (var k = 0; k < Sides; k++)
                {
                    var (a, b) = (At(r, k), At(r, k + 1));
                    if (box.Cuts(a, b))
                    {
                        return true;
                    }
                }

                return false;

                static Spot At(Ring ring, int k)
                {
                    var (sin, cos) = Math.SinCos(k * 2 * Math.PI / Sides);
                    return ring.Center.Moved(ring.Radius * cos, ring.Radius * sin);
                }
            });
        }

        /// <summary>True where a line runs through it: clipped to it, some of the line is left.</summary>
        private bool Cuts(Spot a, Spot b)
        {
            var (enter, leave) = (0.0, 1.0);
            foreach (
                var (p, d, low, high) in new[]
                {
                    (a.X, b.X - a.X, Left, Right),
                    (a.Y, b.Y - a.Y, Top, Bottom),
                }
            )
            {
                if (Math.Abs(d) < 1e-12)
                {
                    if (p <= low || p >= high)
                    {
                        return false;
                    }

                    continue;
                }

                enter = Math.Max(enter, Math.Min((low - p) / d, (high - p) / d));
                leave = Math.Min(leave, Math.Max((low - p) / d, (high - p) / d));
            }

            return enter < leave - 1e-9;
        }

        private static double Far(Spot a, Spot b) =>
            Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

        private static bool Contains(ImmutableArray<Spot> around, Spot at)
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
    }
}
