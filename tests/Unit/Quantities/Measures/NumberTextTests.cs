using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Instructions.Building;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Quantities.Measures;

/// <summary>Numbers as printed, against conversions done by hand.</summary>
public sealed class NumberTextTests
{
    // 1 in = 25.4 mm exactly (international yard and pound, 1959). 114.3 mm = 4.5 in; 5 cm = 1.9685 in,
    // nearest sixteenth 31.5/16 rounds to 1 15/16 (31/16 = 1.9375, 32/16 = 2: 1.9685 × 16 = 31.496).
    [Theory]
    [InlineData(0.1143, "4 1/2 in")]
    [InlineData(0.05, "1 15/16 in")]
    [InlineData(0.0254, "1 in")]
    [InlineData(0.003175, "1/8 in")]
    [InlineData(0, "0 in")]
    public void Inches_are_the_nearest_sixteenth(double meters, string expected) =>
        Assert.Equal(expected, NumberText.InInches(meters));

    [Theory]
    [InlineData(9.68, "9.7 L")]
    [InlineData(13.552, "13.6 L")]
    [InlineData(10, "10.0 L")]
    [InlineData(0.02, "20 mL")]
    [InlineData(0, "0.0 L")]
    public void Liters_have_one_decimal(double liters, string expected) =>
        Assert.Equal(expected, NumberText.Liters(Number(liters, Unit.Liter)));

    [Theory]
    [InlineData(5, false, "5 cm")]
    [InlineData(8.2352941, false, "8.2 cm")]
    [InlineData(11.43, true, "11.4 cm (4 1/2 in)")]
    public void Depths_are_centimeters(double centimeters, bool inches, string expected) =>
        Assert.Equal(expected, NumberText.Depth(Number(centimeters, Unit.Centimeter), inches));

    [Fact]
    public void Cut_sizes_are_what_a_tape_shows() =>
        Assert.Equal(
            "597.5 × 445 mm",
            NumberText.Size(Number(597.6, Unit.Millimeter), Number(445, Unit.Millimeter))
        );

    private static Figure Number(double value, Litterfall.Domain.Units.Unit unit) =>
        Figure.Choice("posed", value, unit, "posed");
}
