using System.Globalization;
using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// Exchange files read back by ezdxf: files for a shop hold what a machine may cut and nothing else.
/// </summary>
public sealed partial class ShopFileTests(PaperFolder papers)
{
    private static readonly string[] ShopLayers = ["CUT", "DRILL", "ENGRAVE", "REF"];

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_exchange_file_opens_clean_and_has_its_reference(string sample)
    {
        foreach (var (name, file) in Files(sample, ""))
        {
            file.IsClean(name);
            file.HasReference(name);
            Assert.Matches("(^|[-0-9])mm\\.dxf$", name);
            Assert.All(File.ReadAllBytes(papers.Of(sample).At(name)), b => Assert.InRange(b, 10, 126));
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Shop_files_have_their_layers_and_no_text(string sample)
    {
        foreach (var (name, file) in Files(sample, "cut/"))
        {
            Assert.All(file.Entities, e => Assert.Contains(e.Layer, ShopLayers));
            Assert.DoesNotContain(file.Entities, e => e.Kind is "TEXT" or "MTEXT" or "ATTRIB" or "INSERT");
            Assert.All(file.Entities.Where(e => e.Layer == "CUT"), e =>
                Assert.True(e is { Kind: "POLYLINE", Closed: true }, name)
            );
            Assert.All(file.Entities.Where(e => e.Layer == "DRILL"), e => Assert.Equal("CIRCLE", e.Kind));
            Assert.Contains(file.Entities, e => e.Layer == "CUT");
        }
    }

    /// <summary>The machine would cut an edge that lies there twice, twice.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Nothing_lies_twice_in_a_shop_file(string sample)
    {
        foreach (var (name, file) in Files(sample, "cut/"))
        {
            var twice = file
                .Entities.SelectMany(e => e.Edges())
                .GroupBy(e => e, StringComparer.Ordinal)
                .Where(g => g.Count() > 1)
                .Select(g => g.Key);
            Assert.True(!twice.Any(), $"{name}: {string.Join("; ", twice)}");
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Outlines_have_the_size_of_the_part_and_of_the_name(string sample)
    {
        var cuts = papers.Check(sample)["cuts"]!.AsArray();
        var files = Files(sample, "cut/").OrderBy(f => f.Name, StringComparer.Ordinal).ToList();
        Assert.Equal(cuts.Count, files.Count);
        for (var i = 0; i < files.Count; i++)
        {
            var (width, height) = files[i].File.Size("CUT");
            Marked(cuts[i]!["lengthMm"]!.GetValue<double>(), width, files[i].Name);
            Marked(cuts[i]!["widthMm"]!.GetValue<double>(), height, files[i].Name);
            var named = Named().Match(files[i].Name);
            // The name has one decimal.
            Near(Read(named, "length"), width, 0.0501, files[i].Name);
            Near(Read(named, "width"), height, 0.0501, files[i].Name);
        }
    }

    /// <summary>
    /// Own hand arithmetic for LD-203, 90 × 60 × 60 cm outside of 6 mm glass with joints of 1.5 mm: front and
    /// back stand on the base (600 − 6 − 1.5 high), the sides between them (600 − 2 · 6 − 2 · 1.5 long).
    /// </summary>
    [Theory]
    [InlineData("base", 900, 600)]
    [InlineData("front", 900, 592.5)]
    [InlineData("back", 900, 592.5)]
    [InlineData("left", 585, 592.5)]
    [InlineData("right", 585, 592.5)]
    public void The_panes_of_the_foyer_fit_together(string pane, double length, double width)
    {
        var (name, file) = Pane(pane);
        var size = file.Size("CUT");
        Near(length, size.Width, 0.01, name);
        Near(width, size.Height, 0.01, name);
        Assert.Equal(pane == "back" ? 1 : 0, file.Entities.Count(e => e.Layer == "DRILL"));
    }

    /// <summary>
    /// Own hand arithmetic: 12 cm along the back from the left inside corner is 120 + 6 from the edge of the
    /// pane; 3 cm over the inside base is 30 − 1.5 from its lower edge, which stands on a joint. The hole of
    /// 22 mm has a radius of 11.
    /// </summary>
    [Fact]
    public void The_hole_of_the_foyer_lies_where_the_outlet_goes()
    {
        var (name, file) = Pane("back");
        var hole = Assert.Single(file.Entities, e => e.Layer == "DRILL");
        var pane = file.Extents["CUT"];
        Near(11, hole.Radius!.Value, 0.001, name);
        Near(126, hole.Points[0][0] - pane[0], 0.01, name);
        Near(28.5, hole.Points[0][1] - pane[1], 0.01, name);
    }

    /// <summary>Plan and front show the length; the section shows the depth, or the length if cut that way.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Drawings_have_the_size_of_the_box(string sample)
    {
        var facts = SampleFacts.Of(sample);
        foreach (var (name, file) in Files(sample, "drawings/"))
        {
            Assert.Contains(file.Entities, e => e.Kind == "TEXT");
            var wanted = name.Contains("section", StringComparison.Ordinal)
                ? new[] { facts.Length, facts.Depth }
                : [facts.Length];
            Assert.True(
                file.Entities.Where(e => e.Layer == "OUTLINE" && e.Points.Length > 1)
                    .Select(e => e.Span(0))
                    .Any(s => wanted.Any(w => Math.Abs(s.High - s.Low - w) < 1)),
                $"{name}: nothing is {string.Join(" or ", wanted)} mm wide"
            );
            var (width, height) = file.Size("OUTLINE");
            Assert.InRange(width, wanted.Min() - 1, 2 * wanted.Max() + 200);
            Assert.InRange(height, 100, 2500);
        }
    }

    private (string Name, DxfFile File) Pane(string pane)
    {
        var sample = Cli.Samples.Single(s => s.Contains("ld-203", StringComparison.Ordinal));
        return Files(sample, "cut/").Single(f => f.Name.Contains($"-pane-{pane}-", StringComparison.Ordinal));
    }

    private IEnumerable<(string Name, DxfFile File)> Files(string sample, string folder) =>
        papers
            .Of(sample)
            .Ending(".dxf")
            .Where(f => f.StartsWith(folder, StringComparison.Ordinal))
            .Select(f => (f, papers.Audit(sample, f)));

    /// <summary>Down to half a millimeter, as a tape marks it.</summary>
    private static void Marked(double computed, double actual, string name) =>
        Near(Math.Floor((2 * computed) + 1e-3) / 2, actual, 0.01, name);

    private static void Near(double expected, double actual, double tolerance, string name) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"{name}: {actual}, expected {expected}");

    private static double Read(Match match, string group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("-(?<length>[0-9.]+)x(?<width>[0-9.]+)mm\\.dxf$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Named();
}
