using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Nursery;
using Litterfall.UnitTests.Workshop.Cultures;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Nursery;

/// <summary>Quarantine clocks, losses learned, cuttings and what orders need.</summary>
public sealed class NurseryTests
{
    private static readonly DateOnly Day = new(2026, 8, 1);
    private static readonly NurseryBench Apart = new()
    {
        Key = "apart",
        Name = "Quarantine box",
        Use = BenchUse.Quarantine,
    };

    private static PlantTray Tray(string number, DateOnly since, int plants = 10) =>
        new()
        {
            Number = number,
            Plant = "fittonia-albivenis",
            Origin = TrayOrigin.Bought,
            Supplier = "tarn-thimble",
            Since = since,
            Plants = plants,
            Bench = "apart",
            QuarantineDays = 30,
        };

    private static NurseryBook Book(params PlantTray[] trays) =>
        new(trays, [Apart], [], [], (CultureModelTests.Library.Value, StockBook.Empty, Day));

    /// <summary>All in, all out: plants that join on day 20 hold all until day 50.</summary>
    [Fact]
    public void Plants_that_join_start_the_clock_again()
    {
        Assert.Equal(Day.AddDays(30), QuarantineClock.Of(Apart, [Tray("A", Day)])!.Ends);
        var clock = QuarantineClock.Of(Apart, [Tray("A", Day), Tray("B", Day.AddDays(20))])!;
        Assert.Equal((Day.AddDays(20), Day.AddDays(50)), (clock.Started, clock.Ends));
        Assert.Equal("B joined", clock.Why);
    }

    [Fact]
    public void What_is_found_starts_the_clock_of_all_again()
    {
        var sick = Tray("A", Day) with
        {
            Inspections = [new TrayInspection(Day.AddDays(14), "snails", "Ilse")],
        };
        var clock = QuarantineClock.Of(Apart, [sick, Tray("B", Day)])!;
        Assert.Equal(Day.AddDays(44), clock.Ends);
    }

    /// <summary>Two clean looks since the start, the last within three days of the release.</summary>
    [Fact]
    public void Nothing_is_released_without_two_looks()
    {
        QuarantineClock Clock(params int[] looks) =>
            QuarantineClock.Of(
                Apart,
                [
                    Tray("A", Day) with
                    {
                        Inspections = [.. looks.Select(l => new TrayInspection(Day.AddDays(l), "", "Ilse"))],
                    },
                ]
            )!;
        Assert.Contains("2 more days", Clock(14, 27).Bar(Day.AddDays(28)), StringComparison.Ordinal);
        Assert.Contains("looked at once", Clock(14).Bar(Day.AddDays(30)), StringComparison.Ordinal);
        Assert.Contains("too old", Clock(10, 14).Bar(Day.AddDays(30)), StringComparison.Ordinal);
        Assert.Null(Clock(14, 28).Bar(Day.AddDays(30)));
        Assert.Equal(Day.AddDays(14), Clock().NextLook(Tray("A", Day)));
    }

    /// <summary>
    /// Before anything is seen 2 of 20; 3 of 10 seen make 5 of 30. For the interval a Beta(1, 10), whose
    /// distribution is 1 − (1 − x)^10: 1 − 0.975^0.1 and 1 − 0.025^0.1.
    /// </summary>
    [Fact]
    public void Losses_are_learned_with_their_interval()
    {
        var old = Tray("A", Day.AddDays(-60)) with
        {
            Deaths = [new TrayDeath(Day.AddDays(-50), 3, "rot", "Ilse")],
        };
        var young = Tray("B", Day.AddDays(-2));
        var loss = PlantLoss.OfSupplier([old, young], "tarn-thimble", Day);
        Assert.Equal((3, 10), (loss.Lost, loss.Plants));
        Assert.Equal(5.0 / 30, loss.Mean, 1e-12);
        Assert.False(loss.IsTooMany);
        var exact = new PlantLoss(0, 9, 1, 2);
        Assert.Equal(1 - Math.Pow(0.975, 0.1), exact.Low, 1e-9);
        Assert.Equal(1 - Math.Pow(0.025, 0.1), exact.High, 1e-9);
        Assert.Equal(15, PlantTimes.ToTake(12, loss));
    }

    /// <summary>
    /// Runners root in 21 d at 22 °C; by degree days over 10 °C that is 21 · 12 ÷ 14 = 18 d at 24 °C and
    /// 21 · 12 ÷ 8 = 31.5 d at 18 °C.
    /// </summary>
    [Theory]
    [InlineData(22, 21)]
    [InlineData(24, 18)]
    [InlineData(18, 32)]
    public void Cuttings_root_by_warmth(double celsius, int days)
    {
        var vine = CultureModelTests.Library.Value.Of<PlantEntry>().First(p => p.Form?.Text == "vine");
        Assert.Equal(days, NurseryPractice.RootingDays(vine, celsius));
    }

    [Fact]
    public void No_more_die_than_there_are()
    {
        var tray = Tray("A", Day);
        var book = Book(tray);
        Assert.Contains(
            "has 10 plants",
            NurserySteps.Die(book, tray, 11, "rot", (Day, "Ilse")).Fault,
            StringComparison.Ordinal
        );
        var (step, _) = NurserySteps.Die(book, tray, 4, "rot", (Day, "Ilse"));
        Assert.Equal(4, step!.Trays[0].Died);
    }

    [Fact]
    public void A_mother_plant_rests_between_cuts()
    {
        var mother = new MotherPlant
        {
            Key = "m",
            Plant = "fittonia-albivenis",
            Name = "Fittonia 1",
            Bench = "apart",
            Since = Day.AddDays(-100),
            LastCut = Day.AddDays(-10),
        };
        var tray = Tray("A", Day) with { Origin = TrayOrigin.Cutting, Supplier = null, QuarantineDays = 0 };
        Assert.Contains(
            "rests until 2 Sep 2026",
            NurserySteps.Cut(mother, tray, (Day, "Ilse")).Fault,
            StringComparison.Ordinal
        );
        var (step, _) = NurserySteps.Cut(mother with { LastCut = null }, tray, (Day, "Ilse"));
        Assert.Equal(Day, step!.Mother!.LastCut);
    }
}
