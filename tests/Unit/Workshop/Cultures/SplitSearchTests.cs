using System.Collections.Immutable;
using Litterfall.Workshop.Cultures;

namespace Litterfall.UnitTests.Workshop.Cultures;

/// <summary>
/// When mothers are split so that cups are ready, held against day classes written once more.
/// </summary>
public sealed class SplitSearchTests
{
    private static readonly DateOnly From = new(2026, 6, 19);
    private static readonly DateOnly Due = new(2026, 8, 14);

    private static SplitCase Case(int mothers, double animals, double celsius) =>
        new()
        {
            Kind = CultureModelTests.Kind("folsomia-candida"),
            Mothers =
            [
                new(
                    "A",
                    "A",
                    mothers,
                    CultureRun.Start(CultureModelTests.Kind("folsomia-candida"), animals, false, 0.5, celsius)
                ),
            ],
            Celsius = _ => celsius,
            From = From,
        };

    private static SplitPlan Plan(SplitCase asked, CupOrder order) =>
        SplitSearch.Find(asked, [order], TestContext.Current.CancellationToken).Single();

    /// <summary>
    /// Twelve cups to seed on 14 Aug, shelf at 21 °C, three mothers: 12 ÷ 0.85 are 15 started, 5 of each
    /// mother, and three days of rest. Led by day classes of our own below, the plan holds 250 animals in
    /// each on 11 Aug, and a split a day later does not keep the day.
    /// </summary>
    [Theory]
    [InlineData(250)]
    [InlineData(400)]
    public void Twelve_cups_from_three_mothers(double animals)
    {
        var plan = Plan(Case(3, 600, 21), new CupOrder("kits", Due, 12, animals, 0.24));
        Assert.True(plan.IsPossible);
        Assert.Equal(15, plan.Started);
        var step = Assert.Single(plan.Steps);
        Assert.Equal((15, 3, false), (step.Cups, step.Mothers, step.IsForMothers));
        var split = step.Day.DayNumber - From.DayNumber;
        var last = Due.DayNumber - From.DayNumber - 3;
        Assert.True(Walking(600, split, last) >= animals - 0.5);
        if (split < last)
        {
            Assert.True(Walking(600, split + 1, last) < animals + 0.5);
        }
    }

    /// <summary>Animals in one of five shares of half a mother, so many days after the first.</summary>
    private static double Walking(double start, int split, int day)
    {
        var mother = new DayClasses(start, 2500);
        mother.Lead(split);
        var cup = mother.Share(0.5 / 5, 2500 * 0.24 / 0.5);
        cup.Lead(day - split);
        return cup.Walking;
    }

    /// <summary>
    /// A day that is too near is refused with the nearest ways; each way is tried: so many mothers do and one
    /// fewer does not, so many cups can be had, and on the earliest day all of them.
    /// </summary>
    [Fact]
    public void A_day_that_is_too_near_is_told_with_the_nearest_plans()
    {
        var asked = Case(1, 700, 21);
        var order = new CupOrder("kits", From.AddDays(6), 12, 250, 0.24);
        var plan = Plan(asked, order);
        Assert.Equal(SplitBar.TooFewMothers, plan.Bar);
        Assert.False(plan.IsPossible);
        Assert.True(Plan(asked, order with { Due = plan.Earliest!.Value }).IsPossible);
        Assert.False(Plan(asked, order with { Due = plan.Earliest.Value.AddDays(-1) }).IsPossible);
        Assert.True(Plan(Case(1 + plan.MothersMore!.Value, 700, 21), order).IsPossible);
        Assert.False(Plan(Case(plan.MothersMore.Value, 700, 21), order).IsPossible);
        Assert.Equal(12, plan.CupsPossible + plan.CupsToBuy);
        if (plan.CupsPossible > 0)
        {
            Assert.True(Plan(asked, order with { Cups = plan.CupsPossible }).IsPossible);
        }

        Assert.Contains(
            "not possible with these mothers",
            CultureWords.Outcome(plan, asked.Kind, 21),
            StringComparison.Ordinal
        );
    }

    /// <summary>Fountain and Hopkin 2005: no egg hatches from 28 °C on.</summary>
    [Fact]
    public void A_shelf_that_is_too_warm_is_the_cause() =>
        Assert.Equal(
            SplitBar.Temperature,
            Plan(Case(3, 2000, 28.5), new CupOrder("", Due, 12, 250, 0.24)).Bar
        );

    [Fact]
    public void A_cup_that_never_holds_so_many_is_the_cause() =>
        Assert.Equal(SplitBar.CupTooSmall, Plan(Case(3, 2000, 21), new CupOrder("", Due, 12, 800, 0.12)).Bar);

    [Fact]
    public void No_mother_is_the_cause() =>
        Assert.Equal(
            SplitBar.NoMother,
            Plan(Case(3, 2000, 21) with { Mothers = [] }, new CupOrder("", Due, 1, 100, 0.24)).Bar
        );

    /// <summary>What the first order takes, the second does not find.</summary>
    [Fact]
    public void Orders_are_served_by_their_days()
    {
        ImmutableArray<CupOrder> orders =
        [
            new("second", Due.AddDays(1), 12, 250, 0.24),
            new("first", Due, 12, 250, 0.24),
        ];
        var plans = SplitSearch.Find(Case(3, 600, 21), orders, TestContext.Current.CancellationToken);
        Assert.Equal(["first", "second"], plans.Select(p => p.Order.Name));
        var alone = Plan(Case(3, 600, 21), orders[0]);
        Assert.True(alone.IsPossible);
        Assert.True(!plans[1].IsPossible || plans[1].Steps[^1].AnimalsEach < alone.Steps[^1].AnimalsEach);
    }

    /// <summary>
    /// The day classes at 21 °C written once more, as an array: eggs for 8 days, laying from day 29 on, 900
    /// eggs in a life of 240 e^(−k 6) days, hatching 0.85, survival 0.8, no more than the cup holds (rates
    /// after Fountain and Hopkin 2005
    /// and Choi et al. 2002, as in the library).
    /// </summary>
    private sealed class DayClasses
    {
        private const int EggDays = 8;
        private const int All = 29;
        private const double Survival = 0.85 * 0.8;
        private static readonly double Life =
            (240 * Math.Exp(-Math.Log(240.0 / 111) / 9 * 6)) - (257 / (21 - 8.6));
        private static readonly double Eggs = 900 / Life;
        private static readonly double Adult = 1 - (1 / Life);
        private static readonly double Live = Math.Pow(Survival, 1.0 / (All - 1));
        private readonly double[] at = new double[All + 1];
        private readonly double most;

        public DayClasses(double walking, double plateau)
            : this(plateau)
        {
            // Settled by running long without a limit, then scaled.
            at[All] = 1;
            for (var day = 0; day < 1500; day++)
            {
                Step();
                Scale(1 / at.Sum());
            }

            Scale(walking / Walking);
        }

        private DayClasses(double plateau) => most = plateau;

        public double Walking => at.Skip(EggDays + 1).Sum();

        public void Lead(int days)
        {
            for (var day = 0; day < days; day++)
            {
                Step();
                var share = Math.Min(1, most / Walking);
                for (var i = EggDays + 1; i <= All; i++)
                {
                    at[i] *= share;
                }
            }
        }

        public DayClasses Share(double share, double plateau)
        {
            var part = new DayClasses(plateau);
            for (var i = 1; i <= All; i++)
            {
                part.at[i] = share * at[i];
            }

            return part;
        }

        private void Step()
        {
            var laid = at[All] * Eggs;
            at[All] = (at[All] * Adult) + (at[All - 1] * Live);
            for (var i = All - 1; i > 1; i--)
            {
                at[i] = at[i - 1] * Live;
            }

            at[1] = laid;
        }

        private void Scale(double by)
        {
            for (var i = 1; i <= All; i++)
            {
                at[i] *= by;
            }
        }
    }
}
