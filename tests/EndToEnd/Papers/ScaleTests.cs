using System.Globalization;
using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The drawings of the build sheet measured with a ruler: what is drawn, times the scale, is real.
/// </summary>
public sealed partial class ScaleTests(PaperFolder papers)
{
    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_plan_is_drawn_to_the_scale_it_states(string sample)
    {
        var sheet = papers.Of(sample).Pdf("01-build-sheet.pdf").Sides[0];
        var facts = SampleFacts.Of(sample);
        var (scale, caption) = Stated(sheet, "Plan");
        var frames = sheet
            .Shapes.Where(s =>
                s is { Stroked: true, Closed: true, Corners: >= 4 } && s.Field.Left > caption.X - 1
            )
            .OrderByDescending(s => s.Field.Width * s.Field.Height)
            .ToList();
        // Walls are drawn where no glass is entered too; the frame to measure is then the one inside.
        var frame = (facts.IsInside ? frames.First(f => Inside(f, frames[0])) : frames[0]).Field;
        Assert.True(Math.Abs(frame.Width * scale - facts.Length) < 1, $"{frame} at 1 : {scale}");
        Assert.True(Math.Abs(frame.Height * scale - facts.Depth) < 1, $"{frame} at 1 : {scale}");
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
            var (scale, first) = Stated(sheet, view);
            var millimeters = Read(caption, "bar") * (caption.Groups["unit"].Value == "in" ? 25.4 : 10);
            // The bar has a full half and an empty half.
            var halves = sheet
                .Shapes.Where(s =>
                    s.Stroked && s.Field.Left > first.X && Math.Abs(s.Field.Bottom - first.Baseline) < 2
                )
                .Where(s => Math.Abs(s.Field.Width - millimeters / scale / 2) < 0.1)
                .OrderBy(s => s.Field.Left)
                .Take(2)
                .ToList();
            Assert.True(halves.Count == 2, $"{view}: no bar of {millimeters / scale} mm");
            Assert.True(Math.Abs(halves[1].Field.Right - halves[0].Field.Left - millimeters / scale) < 0.1);
        }
    }

    private static bool Inside(Shape shape, Shape frame) =>
        shape.Field.Left > frame.Field.Left + 0.05
        && shape.Field.Right < frame.Field.Right - 0.05
        && shape.Field.Top > frame.Field.Top + 0.05
        && shape.Field.Bottom < frame.Field.Bottom - 0.05;

    /// <summary>Denominator of the scale in a caption, and the first sign of the caption.</summary>
    private static (double Scale, Sign First) Stated(PdfSide sheet, string view)
    {
        var words = Caption(view).Match(string.Join('\n', sheet.Lines));
        Assert.True(words.Success, string.Join('\n', sheet.Lines));
        var text = string.Concat(sheet.Signs.Select(s => s.Text));
        var at = text.IndexOf($"{view}, scale 1 : ", StringComparison.Ordinal);
        return (Read(words, "scale"), sheet.Signs[at]);
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
