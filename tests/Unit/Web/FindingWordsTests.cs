using System.Collections.Immutable;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Xunit;

namespace Litterfall.UnitTests.Web;

/// <summary>
/// Sentences in the reader's units; by hand: 19.5 °C is 67.1 °F, 4.3 K are 7.7 °F, 5 cm 1.97 in.
/// </summary>
public sealed class FindingWordsTests
{
    [Theory]
    [InlineData(
        "In January the box averages 19.5 °C by day.",
        "In January the box averages 67 °F (19.5 °C) by day."
    )]
    [InlineData("Warm the room by 4.3 K.", "Warm the room by 8 °F (4.3 °C).")]
    [InlineData("Lay 5 cm of clay.", "Lay 5 cm of clay.")]
    [InlineData("LED panel 6500 K shines through mesh.", "LED panel 6500 K shines through mesh.")]
    public void Warmth_alone_is_told_in_Fahrenheit(string sentence, string told) =>
        Assert.Equal(told, FindingWords.Of(sentence, UnitPreferences("temperature", "F")));

    [Theory]
    [InlineData("Lay 5 cm of clay.", "Lay 1 15/16 in (5 cm) of clay.")]
    [InlineData("It is 19.5 °C by day.", "It is 19.5 °C by day.")]
    public void Lengths_alone_are_told_in_inches(string sentence, string told) =>
        Assert.Equal(told, FindingWords.Of(sentence, UnitPreferences("length", "in")));

    [Fact]
    public void A_metric_reader_gets_degrees_for_differences() =>
        Assert.Equal(
            "Warm the room by 4.3 °C to 21 °C.",
            FindingWords.Of("Warm the room by 4.3 K to 21 °C.", Litterfall.Web.Library.UnitPreferences.Metric)
        );

    private static UnitPreferences UnitPreferences(string kind, string unit) =>
        new(ImmutableDictionary<string, string>.Empty.Add(kind, unit));
}
