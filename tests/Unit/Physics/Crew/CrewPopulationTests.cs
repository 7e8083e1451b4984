using System.Collections.Immutable;
using CsCheck;
using Litterfall.Physics.Crew;
using Xunit;

namespace Litterfall.UnitTests.Physics.Crew;

/// <summary>
/// Day cohorts against a matrix of day classes written out here, and what holds for any floor.
/// </summary>
public sealed class CrewPopulationTests
{
    private static readonly Gen<LifeTable> Tables = Gen.Select(
        Gen.Int[1, 20],
        Gen.Int[1, 60],
        Gen.Double[0.0, 8.0],
        Gen.Double[0.01, 0.9],
        Gen.Double[0.5, 0.999],
        (egg, young, laid, live, stay) => new LifeTable(egg, young, laid, live, stay)
    );

    [Fact]
    public void Whole_days_are_the_matrix_of_day_classes() =>
        Gen.Select(Tables, Gen.Double[0.0, 0.3], Gen.Double[5.0, 500.0])
            .Sample(
                (table, removal, half) =>
                {
                    var matrix = new Matrix(table, 40.0, 12.0, 25.0);
                    var cohorts = new CrewPopulation(table, 40.0, 12.0, 25.0);
                    for (int day = 0; day < 120; day++)
                    {
                        double laying = 1.0 / (1.0 + (matrix.Mobile / half));
                        matrix.Step(laying, removal);
                        cohorts.Step(table, laying, removal);
                        Assert.Equal(matrix.Mobile, cohorts.Mobile, 1e-7 * (1.0 + matrix.Mobile));
                        Assert.Equal(matrix.Eggs, cohorts.Eggs, 1e-7 * (1.0 + matrix.Eggs));
                    }
                },
                iter: 60
            );

    /// <summary>
    /// The matrix as it stands in a book: classes of one day, the last for adults of any age.
    /// </summary>
    private sealed class Matrix
    {
        private readonly LifeTable table;
        private readonly int eggs;
        private double[] classes;

        public Matrix(LifeTable table, double adults, double hatched, double laid)
        {
            this.table = table;
            eggs = (int)table.EggDays;
            classes = new double[eggs + (int)table.JuvenileDays];
            classes[^1] += adults;
            classes[eggs] += hatched;
            classes[0] += laid;
        }

        public double Eggs => classes.Take(eggs).Sum();

        public double Mobile => classes.Skip(eggs).Sum();

        public void Step(double laying, double removal)
        {
            int last = classes.Length - 1;
            double live = Math.Pow(table.SurvivalToAdult, 1.0 / last);
            double[] next = new double[classes.Length];
            for (int k = 0; k < last; k++)
            {
                next[k + 1] = live * classes[k];
            }

            next[last] += table.AdultSurvivalPerDay * classes[last];
            next[0] += table.EggsPerDay * laying * classes[last];
            for (int k = eggs; k <= last; k++)
            {
                next[k] *= 1.0 - removal;
            }

            classes = next;
        }
    }

    [Fact]
    public void What_can_be_taken_without_end_leaves_the_growth_at_one() =>
        Tables.Sample(
            table =>
            {
                double share = table.SustainableRemoval();
                if (share > 0.0)
                {
                    Assert.Equal(1.0, table.GrowthFactor(share), 1e-8);
                }
            },
            iter: 300
        );

    /// <summary>
    /// Ageing by the temperature of every day: half a run at each of two gives the days of both.
    /// </summary>
    [Fact]
    public void Changing_warmth_ages_by_every_day()
    {
        var slow = new LifeTable(20.0, 40.0, 0.0, 1.0, 1.0);
        var fast = new LifeTable(10.0, 20.0, 0.0, 1.0, 1.0);
        var population = new CrewPopulation(slow, 0.0, 0.0, 100.0);
        for (int day = 0; day < 30; day++)
        {
            population.Step(slow, 1.0);
        }

        int more = 0;
        while (population.Adults < 50.0)
        {
            population.Step(fast, 1.0);
            more++;
        }

        Assert.InRange(more, 13, 16);
        Assert.Equal(100.0, population.Mobile + population.Eggs, 1e-9);
    }

    /// <summary>Litter and nitrogen close, whatever the ground does.</summary>
    [Fact]
    public void Ledgers_close() =>
        Gen.Select(
                Gen.Double[-20.0, 80.0].Array[30],
                Gen.Double[-40.0, -0.5].Array[30],
                Gen.Double[0.2, 1.0].Array[30],
                Gen.Double[0.0, 300.0],
                Gen.Int[0, 90]
            )
            .Sample(
                (warm, damp, wet, litter, every) =>
                {
                    var setup = Floor() with { LitterGrams = litter, TopUpEvery = every, EatersFrom = 40 };
                    ImmutableArray<GroundDay> ground =
                    [
                        .. warm.Select((c, i) => new GroundDay(c, damp[i], wet[i], 0.6 * (1.0 - wet[i]))),
                    ];
                    var (days, ledger) = FloorLife.Run(setup, ground, 700);
                    Assert.Equal(0.0, ledger.LitterMiss, 1e-9);
                    Assert.Equal(0.0, ledger.NitrogenMiss, 1e-9);
                    Assert.Equal(0.0, ledger.DroppingsMiss, 1e-9);
                    Assert.All(days, d => Assert.True(d.LitterGrams >= 0.0 && d.Mobile.All(m => m >= 0.0)));
                },
                iter: 40
            );

    [Fact]
    public void More_frogs_leave_fewer_springtails_and_need_more_flies()
    {
        ImmutableArray<GroundDay> ground = [new GroundDay(22.0, -4.0, 0.5, 0.3)];
        FloorLifeDay After(double frogs) =>
            FloorLife
                .Run(
                    Floor() with
                    {
                        EatersFrom = 60,
                        Eaters = [new CrewEater(frogs, 1.2, 1.5, 0.5)],
                    },
                    ground,
                    365
                )
                .Days[^1];
        Assert.True(After(2.0).Mobile[0] > After(10.0).Mobile[0]);
        Assert.True(After(2.0).FliesPerDay < After(10.0).FliesPerDay);
    }

    /// <summary>
    /// Where growth pauses nothing ages and no young die of growing up; drowned eggs are gone, animals by
    /// their
    /// share.
    /// </summary>
    [Fact]
    public void A_pause_keeps_the_young_and_water_takes_eggs()
    {
        var rates = new LifeTable(10.0, 20.0, 0.0, 0.5, 1.0);
        var population = new CrewPopulation(rates, 10.0, 20.0, 40.0);
        population.Step(rates, new CrewDay { Growth = 0.0 });
        Assert.Equal(40.0, population.Eggs, 1e-9);
        Assert.Equal(20.0, population.Juveniles, 1e-9);
        population.Step(
            rates,
            new CrewDay
            {
                Growth = 0.0,
                EggsDrowned = 0.5,
                AnimalsDrowned = 0.1,
            }
        );
        Assert.Equal(20.0, population.Eggs, 1e-9);
        Assert.Equal(18.0, population.Juveniles, 1e-9);
        Assert.Equal(9.0, population.Adults, 1e-9);
        population.Step(rates, new CrewDay { Growth = 0.0, AdultsTaken = 1.0 });
        Assert.Equal(18.0, population.Juveniles, 1e-9);
        Assert.Equal(0.0, population.Adults, 1e-9);
    }

    /// <summary>
    /// Own worked example: half the eggs and a tenth of the animals where no pore holds air.
    /// </summary>
    [Theory]
    [InlineData(0.0, 0.5, 0.1)]
    [InlineData(0.05, 0.25, 0.05)]
    [InlineData(0.1, 0.0, 0.0)]
    [InlineData(0.4, 0.0, 0.0)]
    public void Eggs_drown_below_a_tenth_of_air(double air, double eggs, double animals)
    {
        var (e, a) = GroundDamp.Usual.Drown(air);
        Assert.Equal(eggs, e, 1e-12);
        Assert.Equal(animals, a, 1e-12);
    }

    /// <summary>
    /// Prey over eater by mass: young springtails of 0.043 mg are food for half a gram, hardly for 6 g; a
    /// pill
    /// bug of 100 mg is for no frog of half a gram.
    /// </summary>
    [Fact]
    public void Large_frogs_leave_small_prey()
    {
        Assert.Equal(1.0, FrogNeeds.Usual.Sees(0.043, 0.5), 1e-12);
        Assert.Equal(0.0, FrogNeeds.Usual.Sees(0.043, 6.0), 1e-12);
        // ln(1.869e-5 ÷ 1e-5) ÷ ln 4 = 0.4512.
        Assert.Equal(0.4512, FrogNeeds.Usual.Sees(0.043, 2.3), 1e-3);
        Assert.Equal(1.0, FrogNeeds.Usual.Sees(1.2, 2.3), 1e-12);
        Assert.Equal(0.0, FrogNeeds.Usual.Sees(100.0, 0.5), 1e-12);
    }

    /// <summary>
    /// Two frogs of 4.5 g at 24 °C drop 4.83 mg a day (own worked example of a frog's budget); 134 adult
    /// dwarf
    /// isopods of 1.2 mg eat as much at 0.03 a day.
    /// </summary>
    [Fact]
    public void Isopods_eat_the_droppings_of_two_frogs()
    {
        var isopod = new IsopodLife
        {
            ThresholdCelsius = 11.0,
            EggKelvinDays = 180.0,
            JuvenileKelvinDays = 975.0,
            BroodKelvinDays = 360.0,
            Brood = 5.9,
            FemaleShare = 1.0,
            Survival = (0.975, 0.5),
            AdultDays = 250.0,
            Heat = (30.0, 35.0),
        };
        var setup = Floor() with
        {
            Crew = [new CrewStock(isopod, new CrewBody(1.2, 0.3, 3.9, 0.0, 0.03), 134.0, 1500.0)],
            Eaters = [new CrewEater(2.0, 4.5, 1.5, 0.0)],
            EatersFrom = 0,
        };
        var day = FloorLife.Run(setup, [new GroundDay(24.0, -4.0, 0.5, 0.3)], 1, Stop).Days[0];
        Assert.Equal(4.83e-3, day.DroppingsPerDay, 1e-5);
        Assert.Equal(4.83e-3, day.DroppingsEatable, 1e-5);
    }

    /// <summary>Added springtails are there the same day, and again after their interval.</summary>
    [Fact]
    public void Seeding_again_adds_springtails()
    {
        var setup = Floor() with { LitterGrams = 0.0 };
        ImmutableArray<GroundDay> ground = [new GroundDay(22.0, -4.0, 0.5, 0.3)];
        var plain = FloorLife.Run(setup, ground, 40, Stop).Days;
        var more = FloorLife
            .Run(setup with { Reseed = new CrewReseed(10, 20, 100.0) }, ground, 40, Stop)
            .Days;
        Assert.Equal(plain[9].Mobile[0], more[9].Mobile[0], 1e-12);
        Assert.InRange(more[10].Mobile[0] - plain[10].Mobile[0], 90.0, 100.0);
        Assert.True(more[30].Mobile[0] - more[29].Mobile[0] > 80.0);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static FloorLifeSetup Floor() =>
        new()
        {
            SquareMeters = 0.2,
            Crew =
            [
                new CrewStock(
                    new TropicalSpringtail
                    {
                        ThresholdCelsius = 10.0,
                        EggKelvinDays = 90.0,
                        JuvenileKelvinDays = 270.0,
                        EggsPerDay = 5.0,
                        Hatch = 0.85,
                        HatchBestTo = 30.0,
                        HatchStopsAt = 33.0,
                        Survival = 0.8,
                        AdultDays = 90.0,
                    },
                    new CrewBody(0.13, 0.043, 7.08, 0.3, 0.0),
                    400.0,
                    double.PositiveInfinity
                ),
            ],
            LitterGrams = 100.0,
            DecayPerYear = 1.2,
            LitterNitrogen = 0.008,
            Eaters = [new CrewEater(3.0, 1.2, 1.5, 0.5)],
            PlantGramsPerDay = 0.002,
        };
}
