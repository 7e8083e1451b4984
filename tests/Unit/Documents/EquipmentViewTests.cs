using Litterfall.Documents.Drawings;
using Litterfall.Documents.Views;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Documents;

/// <summary>The sketches of water and plugs: readable type that nothing crosses.</summary>
public sealed class EquipmentViewTests
{
    public static TheoryData<string> Samples =>
        [.. SampleFiles.Paths.Where(p => p.StartsWith("samples/", StringComparison.Ordinal))];

    private readonly record struct Field(double Left, double Top, double Right, double Bottom)
    {
        public bool Meets(Field other) =>
            Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Type_is_readable_and_nothing_crosses_it(string sample) => IsWell(Posed.Sample(sample));

    /// <summary>Much of everything: the columns are narrow, the list is long.</summary>
    [Theory]
    [InlineData("bulkhead", "outside: { length: 60 cm, depth: 45 cm, height: 45 cm }")]
    [InlineData("standpipe", "outside: { length: 48 in, depth: 24 1/16 in, height: 24 3/16 in }")]
    [InlineData("siphon", "outside: { length: 24 in, depth: 18 in, height: 18 in }")]
    public void A_box_with_everything_is_readable(string drain, string edges) =>
        IsWell(
            Posed.Run(
                $"{{ {edges}, glass: {{ walls: 5 mm }} }}",
                "{ drainage: { raised: 6 cm, grid: plastic-light-grid }, "
                    + "soil: { recipe: ready-rainforest, depth: 6 cm } }",
                $$"""
                drain: { kind: {{drain}}, height: 3 cm }
                boxes: 12
                misting: { nozzles: 20, each: 90 mL/min, times: [ { at: "07:30", for: 20 s } ] }
                heating: { watts: 15 W }
                fan: { flow: 8 m3/h, use: stir, on: "09:00", off: "09:20" }
                fogger: { rate: 100 mL/h, times: [ { at: "06:00", for: 600 s } ] }
                lamps:
                  - { lamp: led-bar-6500k, lumens: 2000, above: 3 cm, on: "08:00", off: "20:00" }
                  - { lamp: led-panel-6500k, lumens: 2000, above: 3 cm, on: "08:00", off: "20:00" }
                """
            )
        );

    private static void IsWell(PosedDesign posed)
    {
        var drawings = new[] { PlumbingView.Draw(posed.Numbers), WiringView.Draw(posed.Numbers) };
        foreach (var drawing in drawings.OfType<Drawing>())
        {
            var texts = drawing
                .Marks.Select((mark, at) => (mark, at))
                .Where(m => m.mark is TextMark)
                .Select(m => (Mark: (TextMark)m.mark, m.at, Field: Around((TextMark)m.mark)))
                .ToList();
            Assert.NotEmpty(texts);
            // Smallest type that is read at a bench (common practice, no source).
            Assert.All(texts, t => Assert.True(t.Mark.Points >= 9, t.Mark.Text));
            Assert.All(texts, t =>
                Assert.True(
                    t.Field.Left >= 0
                        && t.Field.Top >= 0
                        && t.Field.Right <= drawing.Width
                        && t.Field.Bottom <= drawing.Height,
                    $"'{t.Mark.Text}' leaves the drawing"
                )
            );
            for (var i = 0; i < texts.Count; i++)
            {
                for (var j = i + 1; j < texts.Count; j++)
                {
                    Assert.False(
                        texts[i].Field.Meets(texts[j].Field),
                        $"'{texts[i].Mark.Text}' lies on '{texts[j].Mark.Text}'"
                    );
                }

                var (text, at, field) = texts[i];
                var crossed = drawing.Marks.Where(
                    (mark, k) =>
                        mark is PathMark path && Crosses(path, field) && !IsCovered(drawing, k, at, field)
                );
                Assert.True(!crossed.Any(), $"a line crosses '{text.Text}'");
            }
        }
    }

    private static Field Around(TextMark text)
    {
        var width = Lettering.Width(text.Text, text.Points, text.Bold);
        var height = text.Points * Lettering.Point * 0.72;
        var back =
            text.Align == Align.Start ? 0
            : text.Align == Align.End ? width
            : width / 2;
        return text.Upright
            ? new(text.At.X - height, text.At.Y - width + back, text.At.X, text.At.Y + back)
            : new(text.At.X - back, text.At.Y - height, text.At.X - back + width, text.At.Y);
    }

    /// <summary>True where a number stands in a white ring drawn over the line.</summary>
    private static bool IsCovered(Drawing drawing, int line, int text, Field field) =>
        drawing
            .Marks.Take(text)
            .Skip(line + 1)
            .OfType<PathMark>()
            .Where(p => p.Fill == Tone.Paper)
            .SelectMany(p => p.Rings)
            .Any(r =>
                r.Center.X - r.Radius <= field.Left
                && field.Right <= r.Center.X + r.Radius
                && r.Center.Y - r.Radius <= field.Top
                && field.Bottom <= r.Center.Y + r.Radius
            );

    private static bool Crosses(PathMark path, Field field) =>
        path.Pen is not null
        && path.Contours.Any(c =>
            c.Spots.Zip(c.Closed ? c.Spots.Skip(1).Append(c.Spots[0]) : c.Spots.Skip(1))
                .Any(pair =>
                    Enumerable.Range(0, 41).Any(k => Holds(field, pair.First, pair.Second, k / 40.0))
                )
        );

    private static bool Holds(Field field, Spot from, Spot to, double share)
    {
        var (x, y) = (from.X + share * (to.X - from.X), from.Y + share * (to.Y - from.Y));
        return x > field.Left && x < field.Right && y > field.Top && y < field.Bottom;
    }
}
