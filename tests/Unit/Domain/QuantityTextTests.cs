using System.Globalization;
using CsCheck;
using Litterfall.Domain.Units;

namespace Litterfall.UnitTests.Domain;

/// <summary>Quantities as people write them. Expected values are worked out beside each line.</summary>
public sealed class QuantityTextTests
{
    public static TheoryData<string, string, double> Written =>
        new()
        {
            { "Length", "17 3/4 in", 0.45085 }, // 17.75 x 25.4 mm
            { "Length", "17-3/4 in", 0.45085 },
            { "Length", "17¾ in", 0.45085 },
            { "Length", "17 ¾\"", 0.45085 },
            { "Length", "19 11/16 in", 0.5000625 }, // 19.6875 x 25.4 mm
            { "Length", "1' 6\"", 0.4572 }, // 18 x 25.4 mm
            { "Length", "1'6\"", 0.4572 },
            { "Length", "1' 6 1/2\"", 0.4699 }, // 18.5 x 25.4 mm
            { "Length", "1 ft 6 in", 0.4572 },
            { "Length", "1′ 6″", 0.4572 },
            { "Length", "1 foot 6 inches", 0.4572 },
            { "Length", "3/8 in", 0.009525 }, // 0.375 x 25.4 mm
            { "Length", "½ in", 0.0127 },
            { "Length", "17½ in", 0.4445 }, // 17.5 x 25.4 mm
            { "Length", "0,125 in", 0.003175 }, // a leading 0 cannot be a thousands group
            { "Length", "450mm", 0.45 },
            { "Length", "450 MM", 0.45 },
            { "Length", "  450   mm  ", 0.45 },
            { "Length", "4,5 cm", 0.045 },
            { "Length", "4.5 cm", 0.045 },
            { "Length", "1,25 m", 1.25 },
            { "Length", "12,3456 cm", 0.123456 },
            { "Length", "1234,567 mm", 1.234567 },
            { "Length", "0 cm", 0 },
            { "Area", "60 cm2", 0.006 },
            { "Area", "60 cm²", 0.006 },
            { "Area", "9 sq in", 0.00580644 }, // 9 x 6.4516 cm2
            { "Volume", "2.5 gal", 0.00946352946 }, // 2.5 x 231 x 16.387064 mL
            { "Volume", "8 dry qt", 0.00880976754172 }, // 8 x 67.200625 x 16.387064 mL
            { "Volume", "8 liquid qt", 0.007570823568 }, // 8 x 57.75 x 16.387064 mL
            { "Volume", "322,5 L", 0.3225 },
            { "Volume", "3.8 cu ft", 0.1076040170496 }, // 3.8 x 28.316846592 L
            { "Mass", "2 lb 3 oz", 0.992233309375 }, // 35 x 28.349523125 g
            { "Mass", "0,8 kg", 0.8 },
            { "Mass", "250 g", 0.25 },
            { "Temperature", "72 F", 295.37222222222222 }, // (72 - 32) x 5/9 + 273.15
            { "Temperature", "-5 C", 268.15 },
            { "Temperature", "−5 °C", 268.15 },
            { "Temperature", "22C", 295.15 },
            { "Temperature", "-40 F", 233.15 }, // -40 F is -40 C
            { "TemperatureDifference", "5 F", 2.7777777777777777 }, // 5 x 5/9
            { "TemperatureDifference", "1 K", 1 },
            { "Share", "45 %", 0.45 },
            { "Share", "45%", 0.45 },
            { "Share", "5,25 percent", 0.0525 },
            { "Share", "100 %", 1 },
            { "Flow", "90 mL/min", 1.5e-6 }, // 90 / 60 mL a second
            { "Flow", "5,4 L/h", 1.5e-6 },
            { "Duration", "20 s", 20 },
            { "Duration", "1,5 h", 5400 },
            { "Duration", "3 days", 259200 },
            { "Power", "18", 18 },
            { "Power", "18 W", 18 },
            { "LuminousFlux", "2000", 2000 },
            { "LuminousFlux", "2 klm", 2000 },
            { "AirChangeRate", "2", 5.5555555555555556e-4 }, // 2 / 3600
            { "AirChangeRate", "2/h", 5.5555555555555556e-4 },
            { "AirChangeRate", "0,5 /h", 1.3888888888888889e-4 },
        };

    public static TheoryData<string, string> Refused =>
        new()
        {
            { "Length", "" },
            { "Length", "   " },
            { "Length", "5" },
            { "Length", "cm" },
            { "Length", "five cm" },
            { "Length", "-3 cm" },
            { "Length", "−3 cm" },
            { "Length", "1,200 mm" },
            { "Length", "12,345 mm" },
            { "Length", "1,200,5 mm" },
            { "Length", "1.200,5 mm" },
            { "Length", "1.2.3 mm" },
            { "Length", "1. mm" },
            { "Length", "40 gal" },
            { "Length", "3/5 in" },
            { "Length", "3/0 in" },
            { "Length", "17 5/4 in" },
            { "Length", "17 3/ in" },
            { "Length", "5 cm 3" },
            { "Length", "5 cm 3 kg" },
            { "Length", "6\" 1'" },
            { "Length", "5 cm -3 mm" },
            { "Mass", "2 lb -3 oz" },
            { "Length", "5 cm 5 cm" },
            { "Length", "5 cm2" },
            { "Length", "5 cm²" },
            { "Length", "5 mmm" },
            { "Length", "5 L" },
            { "Length", "1e400 m" },
            { "Length", "99999999999999999999 m" },
            { "Length", "21 m" },
            { "Length", "NaN cm" },
            { "Length", "Infinity cm" },
            { "Length", "٣ cm" },
            { "Length", "5 cm; 6 cm" },
            { "Area", "60 cm" },
            { "Volume", "5 qt" },
            { "Volume", "8 quarts" },
            { "Volume", "1 L 5 mL of water" },
            { "Mass", "3 L" },
            { "Mass", "3 oz 2 lb" },
            { "Temperature", "22" },
            { "Temperature", "-300 C" },
            { "Temperature", "0 K" },
            { "Temperature", "500 C" },
            { "TemperatureDifference", "-1 K" },
            { "Share", "120 %" },
            { "Share", "-1 %" },
            { "Share", "0.45" },
            { "Flow", "90 mL" },
            { "Duration", "20" },
            { "Duration", "07:30" },
            { "Power", "18 V" },
            { "Power", "-18" },
            { "LuminousFlux", "2000 lux" },
            { "AirChangeRate", "2 /d" },
        };

    [Theory]
    [MemberData(nameof(Written))]
    public void Is_read_as_people_mean_it(string kind, string text, double si)
    {
        Assert.True(
            QuantityText.TryParse(UnitOracle.Kind(kind), text, out var got, out var problem),
            problem
        );
        Assert.Equal(si, got, Math.Abs(si) * 1e-14 + 1e-300);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Is_refused_with_a_reason(string kind, string text)
    {
        Assert.False(
            QuantityText.TryParse(UnitOracle.Kind(kind), text, out var got, out var problem),
            $"{got}"
        );
        Assert.NotEmpty(problem);
        Assert.DoesNotContain("\n", problem, StringComparison.Ordinal);
    }

    /// <summary>
    /// A hyphen between feet and inches joins them, as on a drawing; it must never subtract.
    /// </summary>
    [Theory]
    [InlineData("1'-6\"")]
    [InlineData("1' - 6\"")]
    [InlineData("1 ft -6 in")]
    public void A_hyphen_between_feet_and_inches_never_subtracts(string text)
    {
        Assert.True(QuantityText.TryParse(QuantityKinds.Length, text, out var si, out var problem), problem);
        Assert.Equal(0.4572, si, 1e-15);
    }

    [Theory]
    [InlineData("Volume", "5 qt", "dry qt")]
    [InlineData("Length", "40 gal", "measure")]
    [InlineData("Length", "1,200 mm", "1.200")]
    [InlineData("Length", "5", "unit is missing")]
    [InlineData("Length", "5 L", "'L' is not a unit")]
    [InlineData("Length", "-3 cm", "negative")]
    [InlineData("Share", "120 %", "more than the whole")]
    public void The_reason_helps(string kind, string text, string says)
    {
        Assert.False(QuantityText.TryParse(UnitOracle.Kind(kind), text, out _, out var problem));
        Assert.Contains(says, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_typed_quantity_keeps_its_text()
    {
        Assert.True(QuantityText.TryParse<Length>("17 3/4 in", out var typed, out _));
        Assert.Equal("17 3/4 in", typed.Text);
    }

    /// <summary>Any number with any unit word, with point or comma, with or without a blank.</summary>
    [Fact]
    public void Every_number_with_every_unit_word_is_read()
    {
        var gen =
            from kind in Pick.From([.. UnitOracle.Names])
            from word in Pick.From([.. UnitOracle.Kind(kind).Words])
            from digits in Gen.Int[1, 4].Where(n => n != 3)
            from whole in Gen.Int[0, 999]
            from part in Gen.Int[0, (int)Math.Pow(10, digits) - 1]
            from mark in Pick.From('.', ',')
            from blanks in Gen.Int[0, 2]
            select (kind, word.Word, Number: Shown(whole, part, digits, mark), blanks);
        gen.Sample(
            c =>
            {
                var (kind, word, number, blanks) = c;
                var plain = double.Parse(number.Replace(',', '.'), CultureInfo.InvariantCulture);
                var expected = UnitOracle.Si(kind, word, plain);
                var range = UnitOracle.Kind(kind);
                var text = number + new string(' ', blanks) + word;
                var read = QuantityText.TryParse(range, text, out var si, out var problem);
                bool isInRange = expected <= range.Maximum && expected >= range.Minimum;
                Assert.True(read == isInRange, $"{text}: {problem}");
                Assert.True(!read || Math.Abs(si - expected) <= Math.Abs(expected) * 1e-12, $"{text}: {si}");
            },
            iter: LongRun.Cases(5_000, 20_000)
        );
    }

    /// <summary>Whatever is typed, there is an answer, and a number only for a sensible one.</summary>
    [Fact]
    public void No_text_makes_it_stumble()
    {
        string[] parts1 = ["1", "0", "17", ",", ".", "/", "3/4", " ", "-", "½", "cm", "in", "'", "\"", "qt"];
        string[] parts2 = ["%", "C", "e9", "²", "\u00A0", "é"];
        var pieces = Pick.From([.. parts1, .. parts2]);
        var gen = Gen.Select(Pick.From([.. UnitOracle.Names]), pieces.Array[0, 8]);
        gen.Sample(
            (kind, parts) =>
            {
                var range = UnitOracle.Kind(kind);
                if (QuantityText.TryParse(range, string.Concat(parts), out var si, out var problem))
                {
                    Assert.InRange(si, range.Minimum - 1e-9, range.Maximum * (1 + 1e-9));
                }
                else
                {
                    Assert.NotEmpty(problem);
                }
            },
            iter: LongRun.Cases(10_000, 50_000)
        );
    }

    private static string Shown(int whole, int part, int digits, char mark) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{whole}{mark}{part.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0')}"
        );
}
