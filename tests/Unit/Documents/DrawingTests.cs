using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.UnitTests.Documents;

/// <summary>The drawing model: what a sketch keeps of each mark, and how drawings are placed.</summary>
public sealed class DrawingTests
{
    [Fact]
    public void A_sketch_keeps_marks_in_order_with_their_key_and_layer()
    {
        var sketch = new Sketch { Key = "floor.soil" };
        sketch.Line(new Spot(0, 0), new Spot(10, 0), Pen.Thin, Layers.Cut);
        sketch.Key = "";
        sketch.Text(new Spot(1, 2), "soil", 9);
        var drawing = sketch.Done(20, 30, 0.1);
        Assert.Equal((20.0, 30.0, 0.1), (drawing.Width, drawing.Height, drawing.Scale));
        var line = Assert.IsType<PathMark>(drawing.Marks[0]);
        Assert.Equal(("floor.soil", Layers.Cut, Pen.Thin), (line.Key, line.Layer, line.Pen));
        Assert.Null(line.Fill);
        var text = Assert.IsType<TextMark>(drawing.Marks[1]);
        Assert.Equal(("", Layers.Label, "soil", 9.0), (text.Key, text.Layer, text.Text, text.Points));
    }

    [Fact]
    public void A_rectangle_is_one_closed_run_of_four_corners()
    {
        var sketch = new Sketch();
        sketch.Rectangle(new Spot(5, 7), 10, 20, null, Tone.Water);
        var mark = Assert.IsType<PathMark>(Assert.Single(sketch.Done(30, 30).Marks));
        var contour = Assert.Single(mark.Contours);
        Assert.True(contour.Closed);
        Assert.Equal(
            [new Spot(5, 7), new Spot(15, 7), new Spot(15, 27), new Spot(5, 27)],
            contour.Spots.AsEnumerable()
        );
        Assert.Equal((Tone.Water, null), (mark.Fill, mark.Pen));
    }

    /// <summary>All of it moves by the same distance: lines, circles and text.</summary>
    [Fact]
    public void A_placed_drawing_is_moved_and_nothing_else()
    {
        var inner = new Sketch { Key = "drain" };
        inner.Line(new Spot(1, 1), new Spot(2, 3), Pen.Fine);
        inner.Rings([new Ring(new Spot(4, 4), 1.5)], Pen.Thin);
        inner.Text(new Spot(0, 5), "drain", 8, Align.End, Tone.Quiet);
        var outer = new Sketch();
        outer.Place(inner.Done(6, 6), new Spot(100, 200));
        var marks = outer.Done(300, 300).Marks;
        Assert.Equal(
            [new Spot(101, 201), new Spot(102, 203)],
            ((PathMark)marks[0]).Contours[0].Spots.AsEnumerable()
        );
        Assert.Equal(new Ring(new Spot(104, 204), 1.5), ((PathMark)marks[1]).Rings[0]);
        var text = (TextMark)marks[2];
        Assert.Equal((new Spot(100, 205), Align.End, Tone.Quiet), (text.At, text.Align, text.Tone));
        Assert.All(marks, mark => Assert.Equal("drain", mark.Key));
    }

    /// <summary>
    /// WCAG 2.2, 1.4.3: text needs 4.5 : 1 against its ground. Relative luminance as defined there.
    /// </summary>
    [Theory]
    [InlineData(Tone.Ink)]
    [InlineData(Tone.Quiet)]
    [InlineData(Tone.Stop)]
    [InlineData(Tone.Caution)]
    [InlineData(Tone.Note)]
    [InlineData(Tone.Well)]
    public void Inks_of_text_can_be_read_on_paper_and_field(Tone tone)
    {
        foreach (var ground in new[] { Tone.Paper, Tone.Field })
        {
            var (dark, light) = (Luminance(Inks.Of(tone)), Luminance(Inks.Of(ground)));
            Assert.True((light + 0.05) / (dark + 0.05) >= 4.5, $"{tone} on {ground}");
        }
    }

    [Fact]
    public void Each_tone_has_its_own_ink()
    {
        var inks = Enum.GetValues<Tone>().Select(Inks.Of).ToImmutableArray();
        Assert.Distinct(inks);
    }

    private static double Luminance(uint ink)
    {
        static double Linear(uint part)
        {
            var share = part / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Linear((ink >> 16) & 0xFF))
            + (0.7152 * Linear((ink >> 8) & 0xFF))
            + (0.0722 * Linear(ink & 0xFF));
    }
}
