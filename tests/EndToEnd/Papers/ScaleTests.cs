using System.Globalization;
using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>The drawings of the build sheet measured with a ruler: what is drawn, times the scale, is real.</summary>
public sealed partial class ScaleTests(PaperFolder papers)
{
    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_plan_is_drawn_to_the_scale_it_states(string sample)
    {
        var sheet = papers.Of(sample).Pdf("01-build-sheet.pdf").Sides[0];
        var (scale, left) = Stated(sheet, "Plan");
        var caption = sheet.Signs[sheet.Signs.Count - 1];
        Assert.NotNull(caption);
        var frame = sheet
            .Shapes.Where(s => s is { Stroked: true, Closed: true, Corners: >= 4 } && s.Field.Left > left - 1)
            .MaxBy(s => s.Field.Width * s.Field.Height)!;
        var facts = SampleFacts.Of(sample);
        // Where no glass is entered the walls are drawn too, and the frame to measure is the one inside.
        if (frame.Field.Width * scale > facts.Length + 1 && papers.Check(sample)["design"] is not null)
        {
            frame = sheet
                .Shapes.Where(s => s is { Stroked: true, Closed: true, Corners: >= 4 } && Inside(s, frame))
                .MaxBy(s => s.Field.Width * s.Field.Height)!;
        }

        Assert.True(Math.Abs(frame.Field.Width * scale - facts.Length) < 1, $"{frame.Field} at 1 : {scale}");
        Assert.True(Math.Abs(frame.Field.Height * scale - facts.Depth) < 1, $"{frame.Field} at 1 : {scale}");
    }

    /// <summary>A bar of so many centimeters beside each caption has that length at the scale.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void The_scale_bars_have_their_length(string sample)
    {
        var sheet = papers.Of(sample).Pdf("01-build-sheet.pdf").Sides[0];
        foreach (var view in new[] { "Section", "Plan" })
        {
            var caption = Caption(view).Match(string.Join('\n', sheet.Lines));
            Assert.True(caption.Success, string.Join('\n', sheet.Lines));
            var (scale, left) = Stated(sheet, view);
            var millimeters = Read(caption, "bar") * (caption.Groups["unit"].Value == "in" ? 25.4 : 10);
            var baseline = sheet.Signs.First(s => Math.Abs(s.X - left) < 0.001).Baseline;
            var wanted = millimeters / scale;
            Assert.Contains(
                sheet.Shapes,
                s =>
                    s.Field.Left > left
                    && Math.Abs(s.Field.Bottom - baseline) < 5
                    && Math.Abs(s.Field.Width - wanted) < 0.3
            );
        }
    }

    private static bool Inside(Shape shape, Shape frame) =>
        shape.Field.Left > frame.Field.Left + 0.05
        && shape.Field.Right < frame.Field.Right - 0.05
        && shape.Field.Top > frame.Field.Top + 0.05
        && shape.Field.Bottom < frame.Field.Bottom - 0.05;

    /// <summary>Denominator of the scale in a caption, and where the caption starts.</summary>
    private static (double Scale, double Left) Stated(PdfSide sheet, string view)
    {
        var words = Caption(view).Match(string.Join('\n', sheet.Lines));
        Assert.True(words.Success, string.Join('\n', sheet.Lines));
        var text = string.Concat(sheet.Signs.Select(s => s.Text));
        var at = text.IndexOf($"{view}, scale 1 : ", StringComparison.Ordinal);
        return (Read(words, "scale"), sheet.Signs[at].X);
    }

    private static double Read(Match match, string group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static Regex Caption(string view) => view == "Plan" ? PlanCaption() : SectionCaption();

    [GeneratedRegex(
        @"Plan, scale 1 : (?<scale>[0-9.]+) (?<bar>[0-9]+) (?<unit>cm|in)",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex PlanCaption();

    [GeneratedRegex(
        @"Section, scale 1 : (?<scale>[0-9.]+) (?<bar>[0-9]+) (?<unit>cm|in)",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex SectionCaption();
}
