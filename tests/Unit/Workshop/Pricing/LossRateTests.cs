using Litterfall.Workshop.Pricing;

namespace Litterfall.UnitTests.Workshop.Pricing;

/// <summary>Chances of loss against worked examples and sums of single chances.</summary>
public sealed class LossRateTests
{
    /// <summary>
    /// Own worked example: 3 of 58; the exact interval is that of Clopper and Pearson 1934.
    /// </summary>
    [Fact]
    public void Three_of_fifty_eight()
    {
        var rate = new LossRate(3, 58);
        Assert.Equal(5.172, 100 * rate.Seen, 3);
        Assert.Equal(1.080, 100 * rate.Low, 3);
        Assert.Equal(14.380, 100 * rate.High, 3);
        Assert.Equal(5.128, 100 * rate.Mean, 3);
        Assert.Equal(9.763, 100 * rate.P95, 3);
    }

    /// <summary>
    /// The ends of the interval are where the binomial tails are 2.5 %, summed term by term.
    /// </summary>
    [Theory]
    [InlineData(0, 12)]
    [InlineData(12, 12)]
    [InlineData(1, 400)]
    [InlineData(37, 90)]
    public void The_interval_cuts_off_tails_of_a_fortieth(int lost, int shipped)
    {
        var rate = new LossRate(lost, shipped);
        Assert.Equal(lost == 0 ? 1.0 : 0.025, 1.0 - AtMost(shipped, rate.Low, lost - 1), 8);
        Assert.Equal(lost == shipped ? 1.0 : 0.025, AtMost(shipped, rate.High, lost), 8);
    }

    /// <summary>Own worked example: 40 shipments at 5 %.</summary>
    [Fact]
    public void Forty_shipments()
    {
        var fund = new LossFund(40, 0.05);
        Assert.Equal((2.0, 4, 6), (fund.Mean, fund.Quantile(0.95), fund.Quantile(0.99)));
        Assert.Equal(0.04803, 1.0 - fund.AtMost(4), 5);
    }

    [Theory]
    [InlineData(1, 0.3)]
    [InlineData(25, 0.5)]
    [InlineData(300, 0.02)]
    [InlineData(40, 0.0)]
    [InlineData(40, 1.0)]
    public void Chances_of_at_most_so_many_are_sums(int shipments, double chance)
    {
        var fund = new LossFund(shipments, chance);
        for (var losses = 0; losses <= shipments; losses++)
        {
            Assert.Equal(AtMost(shipments, chance, losses), fund.AtMost(losses), 9);
        }
    }

    /// <summary>Own worked example: a box of 12 that fails with 2 %, else 1.5 % each.</summary>
    [Fact]
    public void A_box_of_twelve()
    {
        var box = new BoxLoss(12, 0.02, 0.015);
        Assert.Equal(0.4164, box.Expected, 4);
        Assert.Equal(0.18255, box.AtLeastOne, 5);
    }

    private static double AtMost(int n, double p, int losses)
    {
        var sum = 0.0;
        for (var k = 0; k <= losses; k++)
        {
            var ways = 1.0;
            for (var i = 1; i <= k; i++)
            {
                ways *= (double)(n - k + i) / i;
            }

            sum += ways * Math.Pow(p, k) * Math.Pow(1.0 - p, n - k);
        }

        return sum;
    }
}
