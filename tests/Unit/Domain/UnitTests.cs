using Litterfall.Domain.Units;

namespace Litterfall.UnitTests.Domain;

/// <summary>Every unit word, and every unit of the catalog, against values from outside.</summary>
public sealed class UnitTests
{
    public static TheoryData<string, string> Words
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var kind in UnitOracle.Names)
            {
                foreach (var word in UnitOracle.Kind(kind).Words)
                {
                    data.Add(kind, word.Word);
                }
            }

            return data;
        }
    }

    /// <summary>
    /// The factors are exact by definition, so only rounding may differ: 1e-14 is about 50 units in the last
    /// place; the package's own products for temperatures, volumes and flows lose a little more.
    /// </summary>
    [Theory]
    [MemberData(nameof(Words))]
    public void A_unit_word_is_worth_what_it_is_elsewhere(string kind, string word)
    {
        var entry = UnitOracle.Kind(kind).Words.Single(w => w.Word == word);
        foreach (var number in new[] { 1, 0.5, 3.75, 64 })
        {
            var expected = UnitOracle.Si(kind, word, number);
            var tolerance = kind is "Temperature" or "Volume" or "Flow" ? 1e-12 : 1e-14;
            Assert.Equal(expected, number * entry.Factor + entry.Offset, Math.Abs(expected) * tolerance);
        }
    }

    [Fact]
    public void Every_kind_of_quantity_has_an_oracle()
    {
        var kinds = typeof(QuantityKinds)
            .GetFields()
            .Where(f => f.FieldType == typeof(QuantityKind))
            .Select(f => f.Name);
        Assert.Equal(kinds.Order(), UnitOracle.Names.Order());
    }

    /// <summary>
    /// Definitions: yard and pound agreement 1959, NIST Handbook 44 appendix C, SI brochure.
    /// </summary>
    [Theory]
    [InlineData("in", 0.0254)]
    [InlineData("ft", 0.3048)]
    [InlineData("lb", 0.45359237)]
    [InlineData("oz", 0.028349523125)] // lb / 16
    [InlineData("gal", 0.003785411784)] // 231 in3 of 16.387064 mL
    [InlineData("liquid qt", 0.000946352946)] // gal / 4
    [InlineData("dry qt", 0.001101220942715)] // 67.200625 in3
    [InlineData("cu ft", 0.028316846592)] // 0.3048^3
    [InlineData("L", 0.001)]
    [InlineData("mL", 1e-6)]
    [InlineData("kPa", 1000)]
    [InlineData("MPa", 1e6)]
    [InlineData("GPa", 1e9)]
    [InlineData("cm2", 1e-4)]
    [InlineData("mm2", 1e-6)]
    [InlineData("%", 0.01)]
    [InlineData("g", 1e-3)]
    [InlineData("mg", 1e-6)]
    [InlineData("g/L", 1)]
    [InlineData("mg/L", 1e-3)]
    [InlineData("g/m2", 1e-3)]
    [InlineData("1/cm", 100)]
    [InlineData("cm/h", 2.7777777777777777e-6)] // 0.01 / 3600
    [InlineData("min", 60)]
    [InlineData("h", 3600)]
    [InlineData("d", 86400)]
    [InlineData("week", 604800)]
    [InlineData("year", 31557600)] // Julian year, 365.25 d
    [InlineData("month", 2629800)] // a twelfth of it
    [InlineData("L/cm", 0.1)] // 1e-3 m3 over 1e-2 m
    [InlineData("L/cm2", 10)] // 1e-3 m3 over 1e-4 m2
    [InlineData("mL/m", 1e-6)]
    [InlineData("kJ/kg", 1000)]
    [InlineData("K d", 86400)]
    [InlineData("umol/m2/s", 1e-6)]
    [InlineData("mol/m2/d", 1.1574074074074073e-5)] // 1 / 86400
    [InlineData("umol/s/klm", 1e-9)]
    public void A_catalog_unit_has_its_defined_factor(string symbol, double factor)
    {
        var unit = Unit.Find(symbol);
        Assert.NotNull(unit);
        Assert.Equal(factor, unit.ToSi, factor * 1e-14);
    }

    [Theory]
    [InlineData(0, 273.15)]
    [InlineData(-40, 233.15)]
    [InlineData(37.8, 310.95)]
    public void Celsius_has_its_offset(double celsius, double kelvins)
    {
        Assert.Equal(kelvins, Unit.Celsius.ToSiValue(celsius), 1e-12);
        Assert.Equal(celsius, Unit.Celsius.FromSi(kelvins), 1e-12);
    }
}
