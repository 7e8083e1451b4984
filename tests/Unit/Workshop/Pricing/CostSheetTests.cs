using System.Globalization;
using CsCheck;
using Litterfall.Domain.Sums;
using Litterfall.Workshop.Pricing;

namespace Litterfall.UnitTests.Workshop.Pricing;

/// <summary>Prices against worked examples and against sums written from the definitions.</summary>
public sealed class CostSheetTests
{
    /// <summary>Own worked example: a planted tank sent by post.</summary>
    private static readonly CostCase Tank = new()
    {
        Currency = "EUR",
        Materials = 61.40m,
        WastePercent = 6m,
        Labor = [new LaborLine(3.25m, 24m)],
        OverheadPerHour = 7.5m,
        Machine = 2.10m,
        Live = 14.20m,
        Packaging = 6.80m,
        Shipping = 19.90m,
        Loss = new LossPromise(5m, true, null),
        Fee = new FeeRule(2.9m, 0.30m, true),
        MarginPercent = 35m,
        TaxPercent = 19m,
        FixedCosts = 1450m,
    };

    private static readonly CostSheet Sheet = CostSheet.From(Tank);

    [Fact]
    public void Cost_by_kind()
    {
        var cost = Sheet.Cost;
        Assert.Equal((65.084m, 78m, 26.475m), (cost.Materials, cost.Labor, cost.Overhead));
        Near(2.1526m, cost.Reserve);
        Near(212.6116m, cost.Total);
        Assert.Equal(2.045m, CostParts.Sum(Tank with { Loss = new LossPromise(5m, false, null) }).Reserve);
    }

    [Fact]
    public void Price_at_a_margin()
    {
        Near(345.9222m, Sheet.Net);
        Assert.Equal(41165, Sheet.ChargedCents);
        Near(342.8529m, CostSheet.From(Tank with { Fee = Tank.Fee! with { IsOnGross = false } }).Net);
        Assert.Equal(12.24m, RoundingRule.Cent.Round(Sheet.Fee));
        Assert.Equal(121.07m, RoundingRule.Cent.Round(Sheet.Profit));
        Near(35.0004m, Sheet.MarginPercent!.Value);
        Near(35.0004m, CostSheet.From(Tank with { Charge = 411.65m }).MarginPercent!.Value);
    }

    [Fact]
    public void Contribution_and_break_even()
    {
        Near(145.4478m, Sheet.Contribution);
        Assert.Equal(10m, Sheet.BreakEvenUnits);
        Assert.Equal(75.08m, Math.Round(Sheet.BreakingChancePercent!.Value, 2));
    }

    /// <summary>At the price of 5 % loss a chance of 10 % leaves 34.31 %.</summary>
    [Fact]
    public void More_losses_at_the_same_price()
    {
        var worse = CostSheet.From(Tank with { Loss = new LossPromise(10m, true, null), Charge = 411.65m });
        Assert.Equal(34.31m, Math.Round(worse.MarginPercent!.Value, 2));
    }

    [Fact]
    public void The_slip_of_mark_up_for_margin()
    {
        var onNet = CostSheet.From(Tank with { Fee = Tank.Fee! with { IsOnGross = false } });
        Assert.Equal(287.43m, RoundingRule.Cent.Round(onNet.MarkUpSlip!.Value.Net));
        Assert.Equal(23.0m, Math.Round(onNet.MarkUpSlip!.Value.MarginPercent, 1));
    }

    /// <summary>Own worked example: 300.15 of cost; 461.77 is 35 %, 405.20 is 25.9 %.</summary>
    [Fact]
    public void Margin_is_not_mark_up()
    {
        var plain = new CostCase
        {
            Materials = 118m,
            Labor = [new LaborLine(6.5m, 22m)],
            OverheadPercent = 15m,
            MarginPercent = 35m,
        };
        var sheet = CostSheet.From(plain);
        Assert.Equal(300.15m, sheet.Cost.Total);
        Assert.Equal(46177, sheet.ChargedCents);
        var marked = CostSheet.From(plain with { Charge = 405.20m });
        Assert.Equal(25.9m, Math.Round(marked.MarginPercent!.Value, 1));
        Assert.Equal(35.0m, Math.Round(marked.MarkUpPercent!.Value, 1));
    }

    [Theory]
    [InlineData("hours", "312.66", "379.19", "0.481")]
    [InlineData("wage", "320.58", "371.27", "0.366")]
    [InlineData("materials", "324.77", "367.07", "0.306")]
    [InlineData("overhead", "338.00", "353.84", "0.114")]
    [InlineData("shipping", "339.12", "352.73", "0.098")]
    [InlineData("live", "341.07", "350.78", "0.070")]
    [InlineData("waste", "344.73", "347.12", "0.017")]
    [InlineData("lossChance", "345.19", "346.67", "0.011")]
    public void A_fifth_less_and_more(string input, string low, string high, string elasticity)
    {
        var row = Sheet.Sensitivity().Single(r => r.Input == input);
        Assert.Equal(Read(low), Math.Round(row.Low!.Value, 2));
        Assert.Equal(Read(high), Math.Round(row.High!.Value, 2));
        Assert.Equal(Read(elasticity), Math.Round(row.Elasticity!.Value, 3));
    }

    private static decimal Read(string number) => decimal.Parse(number, CultureInfo.InvariantCulture);

    [Fact]
    public void The_widest_range_comes_first()
    {
        var ranges = Sheet.Sensitivity().Select(r => r.High - r.Low).ToList();
        Assert.Equal(ranges.OrderDescending(), ranges);
    }

    [Fact]
    public void Margin_and_fees_that_take_all_are_refused()
    {
        var all = Tank with { MarginPercent = 100m - (100m * Tank.FeeShare) };
        Assert.False(all.LeavesRoom);
        Assert.Throws<ArgumentException>(() => CostSheet.From(all));
    }

    [Fact]
    public void Prices_without_tax_are_rounded_before_it()
    {
        var sheet = CostSheet.From(Tank with { PricesIncludeTax = false });
        Assert.Equal(new TaxedSum(345.92m, 65.72m), sheet.Charged);
    }

    /// <summary>
    /// Written again from the definitions: cost with waste, overhead by hour and share, geometric losses, and
    /// the price by trying: a bisection on the profit that is left.
    /// </summary>
    [Fact]
    public void Any_case_is_that_of_a_second_way() =>
        Gen.Select(Gen.Int[0, 50_000].Array[8], Gen.Int[0, 400].Array[7], Gen.Bool, Gen.Bool)
            .Sample(
                (money, shares, isAgain, isOnGross) =>
                {
                    var asked = Drawn(money, shares, isAgain, isOnGross);
                    var sheet = CostSheet.From(asked);
                    var cost = Cost(asked);
                    var (low, high) = (0m, 1e7m);
                    for (var i = 0; i < 90; i++)
                    {
                        var net = (low + high) / 2m;
                        (low, high) =
                            Left(asked, net, cost) < asked.MarginPercent / 100m * net
                                ? (net, high)
                                : (low, net);
                    }

                    var charged = Math.Round(sheet.Gross, 2, MidpointRounding.AwayFromZero);
                    var netCharged = charged / (1m + (asked.TaxPercent / 100m));
                    return Math.Abs(cost - sheet.Cost.Total) < 1e-9m
                        && Math.Abs(low - sheet.Net) < 1e-6m
                        && sheet.ChargedCents == 100m * charged
                        && Math.Abs(Left(asked, netCharged, cost) - sheet.Profit) < 1e-9m
                        && sheet.Breakdown().Sum(p => p.Amount) == sheet.Charged.Net;
                }
            );

    private static decimal Cost(CostCase c)
    {
        var materials = c.Materials + (c.Materials * c.WastePercent / 100m);
        var hours = 0m;
        var wages = 0m;
        foreach (var line in c.Labor)
        {
            hours += line.Hours;
            wages += line.Hours * line.WagePerHour;
        }

        var overhead =
            (hours * c.OverheadPerHour) + ((materials + wages) * c.OverheadPercent / 100m) + c.Machine;
        var again = c.Live + c.Packaging + c.Shipping;
        var p = c.Loss!.ChancePercent / 100m;
        var lost = 0m;
        var chance = p;
        for (var n = 0; n < (c.Loss.IsReplacedAgain ? 200 : 1); n++)
        {
            lost += chance * again;
            chance *= p;
        }

        return materials + wages + overhead + again + lost;
    }

    private static decimal Left(CostCase c, decimal net, decimal cost)
    {
        var basis = c.Fee!.IsOnGross ? net + (net * c.TaxPercent / 100m) : net;
        return net - (basis * c.Fee.Percent / 100m) - c.Fee.Fixed - cost;
    }

    private static CostCase Drawn(int[] money, int[] shares, bool isAgain, bool isOnGross) =>
        new()
        {
            Materials = money[0] / 100m,
            WastePercent = shares[0] / 10m,
            Labor = [new LaborLine(shares[1] / 20m, 20m), new LaborLine(shares[2] / 50m, 17.5m)],
            OverheadPerHour = money[1] / 5000m,
            OverheadPercent = shares[3] / 10m,
            Machine = money[2] / 1000m,
            Live = money[3] / 100m,
            Packaging = money[4] / 1000m,
            Shipping = money[5] / 1000m,
            Loss = new LossPromise(shares[4] / 10m, isAgain, null),
            Fee = new FeeRule(shares[5] / 40m, money[6] / 50_000m, isOnGross),
            MarginPercent = shares[6] / 8m,
            TaxPercent = money[7] / 2000m,
        };

    private static void Near(decimal expected, decimal actual) =>
        Assert.Equal(expected, Math.Round(actual, 4, MidpointRounding.AwayFromZero));
}
