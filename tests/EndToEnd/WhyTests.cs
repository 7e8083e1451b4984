using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Tests.EndToEnd.Papers;

namespace Litterfall.Tests.EndToEnd;

/// <summary>Every number of a check can say where it comes from.</summary>
public sealed class WhyTests
{
    private static readonly string[] OwnSources = ["design", "workshop"];

    public static TheoryData<string> Samples => [.. Cli.Samples];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_number_is_found_by_its_key_and_explained(string sample)
    {
        var result = InProcess.Sample(sample);
        var (design, report) = (result.Numbers.Design, result.Report);
        var numbers = 0;
        var seen = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
        foreach (var (path, node) in report.Leaves())
        {
            Assert.Same(node, ReportPath.Find(report, path));
            if (node is ReportNumber number)
            {
                numbers++;
                Assert.NotEqual("", number.Unit.Symbol);
                Assert.Equal(number.Unit.Dimension, number.Figure.Dimension);
                Explained(number.Figure, path, design, seen);
            }
            else if (node is ReportAbsent absent)
            {
                Assert.NotEqual("", absent.Reason);
            }
        }

        Assert.True(numbers > 50, $"only {numbers} numbers");
    }

    [Theory]
    [InlineData("weights.dryKg", "kg")]
    [InlineData("weights.wetKg", "kg")]
    [InlineData("quantities[0].toBuyLitres", "L")]
    [InlineData("quantities.0.massKg", "kg")]
    [InlineData("cuts[0].lengthMm", "mm")]
    [InlineData("geometry.insideLengthMm", "mm")]
    [InlineData("elapsedMs", "ms")]
    public void The_command_explains_a_number(string key, string unit)
    {
        var sample = Cli.Samples.Single(s => s.Contains("ld-202", StringComparison.Ordinal));
        var ended = Cli.Run("why", sample, key, "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        var why = ended.Json;
        Assert.Equal(key, why["key"]!.GetValue<string>());
        Assert.Equal(unit, why["unit"]!.GetValue<string>());
        foreach (var part in new[] { "equation", "source", "place", "provenance" })
        {
            Assert.NotEqual("", why[part]!.GetValue<string>());
        }

        Assert.True(why["equation"]!.GetValue<string>() == "given" || why["inputs"]!.AsArray().Count > 0);
        var text = Cli.Run("why", sample, key);
        Assert.Equal(0, text.Code);
        Assert.Contains(unit, text.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_and_check_give_the_same_number()
    {
        var sample = Cli.Samples[0];
        var check = Cli.Once("check", sample, "--json").Json["weights"]!["wetKg"]!.GetValue<double>();
        var why = Cli.Run("why", sample, "weights.wetKg", "--json").Json["value"]!.GetValue<double>();
        Assert.Equal(check, why);
    }

    [Theory]
    [InlineData("weights")]
    [InlineData("weights.drykilo")]
    [InlineData("design.name")]
    [InlineData("")]
    [InlineData("quantities[9999].massKg")]
    [InlineData("quantities[-1].massKg")]
    [InlineData("]][[")]
    public void A_key_that_is_no_number_is_refused(string key)
    {
        Cli.Refuses("why", Cli.Samples[0], key);
        Cli.RefusesInJson("why", Cli.Samples[0], key);
    }

    private static void Explained(Figure figure, string path, CheckedDesign design, HashSet<Figure> seen)
    {
        // Each figure once: many numbers share their inputs.
        if (!seen.Add(figure))
        {
            return;
        }

        Assert.False(string.IsNullOrWhiteSpace(figure.Name), path);
        Assert.False(string.IsNullOrWhiteSpace(figure.Origin.Place), $"{path}: {figure.Name}");
        Assert.True(
            OwnSources.Contains(figure.Origin.Source)
                || design.Catalog.Sources.ContainsKey(figure.Origin.Source),
            $"{path}: {figure.Name} cites '{figure.Origin.Source}'"
        );
        Assert.True(double.IsFinite(figure.Si), $"{path}: {figure.Name}");
        Assert.NotEqual("", figure.Origin.Provenance.Word());
        Assert.True(!figure.IsGiven || figure.Inputs.IsEmpty, $"{path}: {figure.Name}");
        foreach (var input in figure.Inputs)
        {
            Explained(input, path, design, seen);
        }
    }
}
