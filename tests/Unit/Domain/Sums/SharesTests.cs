using System.Globalization;
using CsCheck;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;

namespace Litterfall.UnitTests.Domain.Sums;

/// <summary>Money adds up to the last step in every rule of rounding.</summary>
public sealed class SharesTests
{
    private static readonly Gen<RoundingRule> Rules = Gen.Int[0, 2].Select(i => RoundingRule.All[i]);
    private static readonly Gen<decimal> Weights = Gen.OneOf(
        Gen.Const(0m),
        Gen.Int[0, 1_000_000].Select(w => w / 997m)
    );

    [Fact]
    public void Parts_add_up_to_the_total_and_are_less_than_a_step_from_their_share() =>
        Gen.Select(Gen.Int[-10_000_000, 10_000_000], Weights.Array[1, 20], Rules)
            .Sample(
                (cents, weights, rule) =>
                {
                    var total = cents / 100m;
                    var parts = Shares.Split(total, weights, rule);
                    var rest = Math.Abs(total % rule.Step);
                    var all = weights.Sum();
                    return parts.Sum() == total
                        && parts
                            .Zip(weights)
                            .All(p =>
                            {
                                var exact = all == 0m ? total / weights.Length : total * p.Second / all;
                                return Math.Abs(p.First - exact) < rule.Step + rest + 1e-9m;
                            });
                }
            );

    /// <summary>One unit in three equal parts: own worked example of the largest remainder.</summary>
    [Fact]
    public void The_largest_remainder_takes_the_cent_that_is_left()
    {
        Assert.Equal([0.34m, 0.33m, 0.33m], Shares.Split(1m, [1m, 1m, 1m], RoundingRule.Cent));
        Assert.Equal([0.17m, 0.83m], Shares.Split(1m, [1m, 5m], RoundingRule.Cent));
        Assert.Throws<ArgumentException>(() => Shares.Split(1m, [1m, -1m], RoundingRule.Cent));
    }

    [Theory]
    [InlineData("2.345", "cent", "2.35")]
    [InlineData("-2.345", "cent", "-2.35")]
    [InlineData("2.325", "five-cents", "2.35")]
    [InlineData("2.32", "five-cents", "2.30")]
    [InlineData("2.5", "whole", "3")]
    public void Halves_go_away_from_zero(string amount, string rule, string rounded) =>
        Assert.Equal(
            decimal.Parse(rounded, CultureInfo.InvariantCulture),
            RoundingRule
                .All.Single(r => r.Word == rule)
                .Round(decimal.Parse(amount, CultureInfo.InvariantCulture))
        );

    /// <summary>
    /// Three lines of 0.83 at 19 %: by line 3 × 0.16 (0.1577), by the total 0.47 (0.4731). Own worked
    /// example.
    /// </summary>
    [Fact]
    public void Tax_by_line_and_by_total()
    {
        var rule = new TaxRule(19m, false, RoundingRule.Cent);
        Seq<decimal> lines = [0.83m, 0.83m, 0.83m];
        Assert.Equal(new TaxedSum(2.49m, 0.48m), rule.Sum(lines, TaxRounding.ByLine));
        Assert.Equal(new TaxedSum(2.49m, 0.47m), rule.Sum(lines, TaxRounding.ByTotal));
    }

    [Fact]
    public void A_bill_adds_up_whether_prices_hold_the_tax_or_not() =>
        Gen.Select(Gen.Int[0, 10_000_000], Gen.Int[0, 300], Gen.Bool, Rules)
            .Sample(
                (net, rate, isIncluded, rounding) =>
                {
                    var rule = new TaxRule(rate / 10m, isIncluded, rounding);
                    var sum = rule.Charge(net / 997m);
                    return sum.Net + sum.Tax == sum.Gross
                        && sum.Gross * 100m == Math.Floor(sum.Gross * 100m)
                        && Math.Abs((sum.Net * rate / 1000m) - sum.Tax) <= 0.011m;
                }
            );
}
