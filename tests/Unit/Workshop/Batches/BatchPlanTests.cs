using CsCheck;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Workshop.Stock;
using Litterfall.Workshop.Batches;
using Litterfall.Workshop.Mixing;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Batches;

/// <summary>Soil batches: volumes, water, lots, what is learned. Figures are own worked examples.</summary>
public sealed class BatchPlanTests
{
    private static readonly RecipeEntry Recipe = SampleFiles.Catalog.Find<RecipeEntry>("standard-rainforest")!;

    private static readonly ShopTerms Terms = new()
    {
        Name = "workshop",
        TubLiters = 60,
        TubFillPercent = 80,
        LiftKilograms = 50,
        JugLiters = 0,
    };

    private static Order Order(int number) =>
        new()
        {
            Number = number,
            Customer = "somebody",
            State = OrderState.Accepted,
        };

    private static MixNeed Need(int order, double liters) => new(Order(order), "tank", Recipe.Key, liters);

    private static Ledger Stocked()
    {
        var ledger = new Ledger();
        foreach (var part in Recipe.Parts)
        {
            ledger.Buy($"{part.Material.ToUpperInvariant().Replace("-", "", StringComparison.Ordinal)}-1",
                100,
                50m,
                l => l with { Good = part.Material }
            );
        }

        return ledger;
    }

    private static BatchPlan Plan(StockBook book, params MixNeed[] needs) =>
        BatchPlan.From(
            Recipe,
            needs,
            0,
            new(book, SampleFiles.Catalog, Terms, Ledger.Day),
            BatchLearning.From([])
        );

    /// <summary>
    /// 60 L at 2:2:1:1:1 with a yield of 0.88: 68.18 L of parts, 7 shares of 9.740 L; water for 36 % by volume is
    /// 21.6 L in all.
    /// </summary>
    [Fact]
    public void Sixty_liters_take_sixty_eight_of_parts()
    {
        var plan = Plan(Stocked().Book, Need(1, 36), Need(2, 24));
        Assert.Equal(60 / 0.88, plan.Mix!.LooseLiters, 1e-9);
        Assert.Equal(
            [19.480519, 19.480519, 9.740260, 9.740260, 9.740260],
            plan.Parts.Select(p => Math.Round(p.Liters, 6))
        );
        Assert.Equal(21.6, plan.Mix.Water.WantedKg!.Value, 1e-9);
        // 68.18 L do not fit 48 L of a tub; 34.09 L do.
        Assert.Equal(2, plan.Mix.BatchCount);
    }

    [Fact]
    public void Mix_that_is_ready_is_taken_first()
    {
        var ledger = Stocked().Make("MIX-1", 20, l => l with { Good = Recipe.Key });
        var plan = Plan(ledger.Book, Need(1, 50));
        Assert.Equal((20.0, 30.0), (plan.Ready.Lots.Single().Amount, plan.MakeLiters));
        Assert.Null(Plan(ledger.Book, Need(1, 15)).Mix);
    }

    /// <summary>A part of the recipe that is short is told, and nothing is written.</summary>
    [Fact]
    public void A_mix_without_its_parts_is_not_made()
    {
        var ledger = Stocked();
        ledger.Use("CHARCOAL-1", 95, null);
        var plan = Plan(ledger.Book, Need(1, 60));
        Assert.True(plan.IsShort);
        var (run, fault) = BatchRun.Make(plan, "MIX-1", new(60, null, null, 0), ledger.Book, (Ledger.Day, "Ilse"));
        Assert.Null(run);
        Assert.StartsWith("charcoal", fault, StringComparison.Ordinal);
        Assert.Contains("short by 4.7 L", fault, StringComparison.Ordinal);
    }

    /// <summary>What is written: each lot's use, the lot, its cost from what went in, and what came out.</summary>
    [Fact]
    public void A_mix_that_was_made_is_a_lot_with_its_cost()
    {
        var ledger = Stocked();
        var plan = Plan(ledger.Book, Need(7, 60));
        var (run, _) = BatchRun.Make(
            plan,
            "MIX-1",
            new(58, 27.5, 0.6, 9),
            ledger.Book,
            (Ledger.Day, "Ilse")
        );
        // 100 L cost 50.00: 9.740 and 19.481 L cost 4.87 and 9.74.
        Assert.Equal((3 * 4.87m) + (2 * 9.74m), run!.Step.Lots[0].Cost);
        Assert.Equal((58.0, 7), (run.Batch.OutLiters!.Value, run.Batch.Orders.Single()));
        foreach (var line in run.Step.Lines)
        {
            ledger.Add(line);
        }

        var book = StockBook.Empty.With([.. ledger.Lots, .. run.Step.Lots], ledger.Lines);
        Assert.Equal(run.Step.Lots[0].Cost, book.Find("MIX-1")!.Value);
        Assert.Equal(5, Genealogy.Ancestors(book, "MIX-1").Count);
        Assert.Equal(250m, book.Lots.Sum(l => l.Value));
        Assert.NotNull(
            BatchRun.Make(plan, "MIX-2", new(80, null, null, 0), book, (Ledger.Day, "Ilse")).Fault
        );
    }

    /// <summary>
    /// Two batches of 80 L gave 72 and 68 L: shrink 0.10 and 0.15. With a prior of 0.12 that counts for two, the
    /// mean is (2 × 0.12 + 0.25) / 4 = 0.1225. 30 kg with a dry share of 0.6 in 60 L hold 20 % of water.
    /// </summary>
    [Fact]
    public void Batches_teach_yield_and_wetness()
    {
        SoilBatch Batch(double came) =>
            new()
            {
                Lot = "MIX-1",
                Recipe = Recipe.Key,
                Day = Ledger.Day,
                Parts = [new("peat", "PEAT-1", 80, 10)],
                OutLiters = came,
                Who = "Ilse",
            };
        var learned = BatchLearning.From([Batch(72), Batch(68)]).Yield!;
        Assert.Equal(1 - 0.1225, learned.Mean, 1e-12);
        Assert.True(learned.Low < learned.Mean && learned.Mean < learned.High);
        Assert.Equal(
            "learned from 2 batches: 160 L of parts gave 140 L",
            BatchLearning.Told([Batch(72), Batch(68)])
        );
        var wet = Batch(60) with { OutKilograms = 30, DryShare = 0.6, PlannedWetPercent = 36 };
        Assert.Equal(20, BatchLearning.WetPercent(wet)!.Value, 1e-12);
        // A prior of no difference counts for two: (0 + 0 − 16) / 3.
        Assert.Equal(-16.0 / 3, BatchLearning.From([wet]).WetMiss.Mean, 1e-12);
        Assert.Null(BatchLearning.From([]).Yield);
    }

    /// <summary>Parts add up to the loose volume and that yields the need, for any orders.</summary>
    [Fact]
    public void Liters_add_up()
    {
        var book = Stocked().Book;
        Gen.Double[0.5, 60]
            .Array[1, 6]
            .Sample(
                liters =>
                {
                    var plan = Plan(book, [.. liters.Select((l, i) => Need(i, l))]);
                    var loose = plan.Parts.Sum(p => p.Liters);
                    return Math.Abs(loose - (liters.Sum() / 0.88)) < 1e-9 * loose
                        && plan.Parts.All(p =>
                            Math.Abs(p.Lots.Lots.Sum(l => l.Amount) + p.Lots.Short - p.Liters) < 1e-6
                        );
                },
                iter: 200,
                seed: "0000KRKhdEj0"
            );
    }

    /// <summary>What already lies in a tank of the order is not mixed again.</summary>
    [Fact]
    public void A_need_that_is_met_falls_away()
    {
        var book = new Ledger()
            .Make("MIX-1", 40, l => l with { Good = Recipe.Key })
            .Make("TANK-1", 1, l => l with { Order = 3 })
            .Use("MIX-1", 12, "TANK-1")
            .Sell("MIX-1", 5, "4")
            .Book;
        var open = MixNeed.Open([Need(3, 20), Need(4, 5), Need(5, 7)], book);
        Assert.Equal([(3, 8.0), (5, 7.0)], open.Select(n => (n.Order.Number, n.Liters)));
    }
}
