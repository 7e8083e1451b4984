using Litterfall.Domain.Trade;
using Litterfall.UnitTests.Workshop.Orders;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.UnitTests.Workshop.Quoting;

/// <summary>Estimate against actual, and the table that learns; own worked examples.</summary>
public sealed class ActualCostTests
{
    private static readonly ShopTerms Terms = OrderExamples.Terms with
    {
        Wage = 24,
        OverheadPercent = 10,
        Labor = [new LaborStage("plant", "plant and dress", LaborPer.Plant, 5)],
    };

    private static Quote Quote() =>
        OrderQuotes.Make(
            1,
            OrderExamples.Enquiry(),
            OrderExamples.Head with
            {
                Shop = Terms,
            },
            [
                OrderExamples.Option("Planted", 200, OrderExamples.Bark(20)) with
                {
                    Minutes = [new WorkedMinutes("plant", 60)],
                    Cost = new(8, 24, 3.20m, 0, 5, 15, 0, 0),
                },
            ]
        );

    private static Order Order(params WorkedTime[] worked) =>
        OrderExamples.Accepted(7, OrderExamples.Today) with
        {
            State = OrderState.Delivered,
            Worked = [.. worked],
        };

    /// <summary>
    /// 30 L for 13.50 and 2 h at 24.00: (13.50 + 48.00) × 1.10 = 67.65, packaging 5 and shipping 15 make
    /// 87.65; of 200.00 before tax 112.35 are left, 56.2 %.
    /// </summary>
    [Fact]
    public void Hours_and_goods_that_were_used_give_the_true_margin()
    {
        var actual = ActualCost.Compare(
            Order(new WorkedTime("plant", 120, OrderExamples.Today, "Ilse")),
            Quote(),
            new Dictionary<string, UsedGood> { ["fine-bark"] = new(30, 13.50m) }
        );
        Assert.Equal(87.65m, actual.Sheet.Cost.Total);
        Assert.Equal(56.2m, Math.Round(actual.Sheet.MarginPercent!.Value, 1));
        Assert.Equal(
            (20.0, 30.0, 13.50m),
            (actual.Goods[0].Quoted, actual.Goods[0].Used, actual.Goods[0].UsedCost)
        );
        Assert.Equal(new StageActual("plant and dress", 60, 120), actual.Stages[0]);
    }

    [Fact]
    public void What_nobody_wrote_down_counts_as_quoted_and_says_so()
    {
        var actual = ActualCost.Compare(Order(), Quote(), new Dictionary<string, UsedGood>());
        Assert.False(actual.HasGoods);
        Assert.False(actual.HasHours);
        Assert.Equal(8m, actual.Sheet.Cost.Materials);
        Assert.Equal(24m, actual.Sheet.Cost.Labor);
    }

    /// <summary>
    /// Three orders took 10 min a plant where the table says 5: with the table counting for three, the mean
    /// of
    /// the logarithms is half of ln 2, so the proposal is 5 × √2 = 7.07 min.
    /// </summary>
    [Fact]
    public void The_table_learns_from_hours_and_a_person_takes_it()
    {
        var order = Order(new WorkedTime("plant", 120, OrderExamples.Today, "Ilse"));
        var samples = LaborLearning.Samples([(order, Quote()), (order, Quote()), (order, Quote())]).ToList();
        Assert.Equal([10.0, 10.0, 10.0], samples.Select(s => s.Minutes));
        var proposal = Assert.Single(LaborLearning.Propose(Terms.Labor, samples));
        Assert.Equal(5 * Math.Sqrt(2), proposal.Minutes, 1e-9);
        Assert.Equal(3, proposal.Orders);
        Assert.True(proposal.Low < proposal.Minutes && proposal.Minutes < proposal.High);
        Assert.Equal(7.1, proposal.Taken.Minutes);
    }

    /// <summary>A table that is right stays, and more orders narrow its band.</summary>
    [Fact]
    public void Orders_that_took_what_the_table_says_change_nothing()
    {
        LaborProposal After(int orders) =>
            LaborLearning.Propose(Terms.Labor, Enumerable.Repeat(new StageSample("plant", 5), orders))[0];
        Assert.Equal(5, After(1).Minutes, 1e-9);
        Assert.Equal(5, After(20).Minutes, 1e-9);
        Assert.True(After(20).High - After(20).Low < After(1).High - After(1).Low);
    }

    [Fact]
    public void An_open_order_teaches_nothing_yet() =>
        Assert.Empty(
            LaborLearning.Samples([
                (
                    Order(new WorkedTime("plant", 120, OrderExamples.Today, "Ilse")) with
                    {
                        State = OrderState.InWork,
                    },
                    Quote()
                ),
            ])
        );
}
