using System.Text.RegularExpressions;
using Litterfall.Documents.Layout;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// US units by their definitions: 1 in = 25.4 mm, 1 qt = 0.946 352 946 L, 1 gal = 4 qt,
/// 1 lb = 0.453 592 37 kg, °F = 1.8 °C + 32 (NIST Special Publication 811, from memory).
/// </summary>
public sealed partial class UsUnitsTests
{
    [Theory]
    // 25.4 mm an inch; 590 ÷ 25.4 = 23.228, 3.66 sixteenths, so 1/4.
    [InlineData("590.0 × 440.0 mm", "23 1/4 × 17 5/16 in (590.0 × 440.0 mm)")]
    [InlineData("5 cm deep", "1 15/16 in (5 cm) deep")]
    [InlineData("22 to 25 °C", "72 to 77 °F (22 to 25 °C)")]
    [InlineData("1.8 K less", "3 °F (1.8 K) less")]
    [InlineData("0.4 K less", "0.7 °F (0.4 K) less")]
    [InlineData("LED panel 6500 K shines", "LED panel 6500 K shines")]
    // 9.9 ÷ 0.946353 = 10.46 qt, 2.615 gal.
    [InlineData("9.9 L of clay", "2.6 gal (9.9 L) of clay")]
    // A cell of a table that is nothing else.
    [InlineData("9.9 L", "2.6 gal")]
    [InlineData("with 3.8 L", "with 4 qt (3.8 L)")]
    [InlineData("120 mL a day", "4.1 fl oz (120 mL) a day")]
    [InlineData("weighs 15.5 kg", "weighs 34.2 lb (15.5 kg)")]
    // What already stands in both is left alone.
    [InlineData("18 in (457 mm)", "18 in (457 mm)")]
    [InlineData("5.1 cm (2 in)", "5.1 cm (2 in)")]
    [InlineData("24 to 26 °C (75 to 79 °F)", "24 to 26 °C (75 to 79 °F)")]
    // Strengths and light are told the same everywhere.
    [InlineData("50 mg/L, 32 µmol/m²/s, 45 W", "50 mg/L, 32 µmol/m²/s, 45 W")]
    [InlineData("bark 3-6 mm (fine)", "bark 1/8-1/4 in (3-6 mm) (fine)")]
    public void Metric_amounts_get_their_US_units_first(string metric, string told) =>
        Assert.Equal(told, UsUnits.Of(metric));

    /// <summary>No amount on any paper of a box typed in inches stands in metric units alone.</summary>
    [Fact]
    public void A_design_in_inches_has_no_metric_number_alone()
    {
        var papers = SamplePapers.Of("samples/converted-inch-tank.viv.yaml");
        var alone = papers
            .Files.SelectMany(f => f.Pages.Select(page => (f.Name, Text: SamplePapers.Bare(page))))
            .SelectMany(p => Alone().Matches(p.Text).Select(m => $"{p.Name}: {Around(p.Text, m.Index)}"))
            .ToArray();
        Assert.True(alone.Length == 0, string.Join('\n', alone));
    }

    private static string Around(string text, int at) =>
        text.Substring(Math.Max(0, at - 40), Math.Min(90, text.Length - Math.Max(0, at - 40)));

    /// <summary>A metric amount neither in brackets nor followed by its US unit in brackets.</summary>
    [GeneratedRegex(
        @"\d (?:mm|cm|m|mL|L|kg|g|°C|K)\b(?![/·])(?![^()]{0,20}\))"
            + @"(?! \([^()]{0,40}(?:in|°F|qt|gal|lb|oz|ft)\))",
        RegexOptions.None,
        60_000
    )]
    private static partial Regex Alone();
}
