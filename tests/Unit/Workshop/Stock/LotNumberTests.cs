using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Stock;

/// <summary>Numbers on labels.</summary>
public sealed class LotNumberTests
{
    /// <summary>
    /// ISO 7064 MOD 37,36 as two other systems print it: the example of the Global Release Identifier
    /// standard (A1-2425G-ABC1234002-M) and that of ISO 15706, the audiovisual number
    /// (0000-0000-D07A-0090-Q).
    /// </summary>
    [Theory]
    [InlineData("A1-2425G-ABC1234002", 'M')]
    [InlineData("0000-0000-D07A-0090", 'Q')]
    public void The_check_character_is_that_of_the_standard(string number, char check) =>
        Assert.Equal(check, LotNumber.Check(number));

    /// <summary>The system finds every single wrong sign and every swap of neighbors that differ.</summary>
    [Fact]
    public void A_slip_of_one_sign_is_found()
    {
        const string good = "PEAT31";
        var check = LotNumber.Check(good);
        foreach (var i in Enumerable.Range(0, good.Length))
        {
            foreach (var other in "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".Where(c => c != good[i]))
            {
                Assert.NotEqual(check, LotNumber.Check(good[..i] + other + good[(i + 1)..]));
            }
        }
    }

    [Theory]
    [InlineData(" peat-31 ", "PEAT-31", "")]
    [InlineData("PEAT-31-{0}", "PEAT-31", "")]
    [InlineData("PEAT-13-{0}", null, "mistyped")]
    [InlineData("PEAT-99", null, "There is no lot PEAT-99")]
    [InlineData("", null, "Type the number")]
    public void Typed_numbers_are_read_or_told(string typed, string? lot, string words)
    {
        var text = string.Format(
            System.Globalization.CultureInfo.InvariantCulture,
            typed,
            LotNumber.Check("PEAT-31")
        );
        var (found, fault) = LotNumber.Read(text, id => id is "PEAT-31" or "PEAT-13");
        Assert.Equal(lot, found);
        Assert.Contains(words, fault ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_number_follows_the_highest_of_its_letters()
    {
        var peat = new Good
        {
            Key = "peat",
            Name = "peat moss",
            Kind = GoodKind.Bulk,
            Unit = StockUnit.Liters,
        };
        Assert.Equal("PEAT-1", LotNumber.Next(peat, []));
        Assert.Equal("PEAT-32", LotNumber.Next(peat, ["PEAT-31", "PEAT-4", "PEATY-90", "PEAT-X9"]));
        Assert.Equal("SPH-1", LotNumber.Next(peat with { Letters = "SPH" }, ["PEAT-31"]));
    }
}
