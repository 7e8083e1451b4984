using CsCheck;
using Litterfall.Physics.Parcel;
using Xunit;

namespace Litterfall.UnitTests.Physics.Parcel;

/// <summary>
/// Parcels that a hand can solve (derivation beside each), and what holds for any parcel. Printed examples
/// and a second solution stand in src/Verification/Parcel.
/// </summary>
public sealed class ParcelModelTests
{
    private const double Hour = 3600.0;
    private const double Capacity = 2000.0;
    private const double Conductance = 0.5;
    private const double Tau = Capacity / Conductance;

    /// <summary>10 + 12 e^(−t/τ) is 16 at t = τ ln 2.</summary>
    [Fact]
    public void A_level_is_crossed_to_the_last_digits()
    {
        LevelExposure[] levels = [new(16.0), new(30.0)];
        Model().Run(Drive([0.0], [10.0], 22.0, 10.0), new ParcelReport { Levels = levels });
        Assert.Equal(Tau * Math.Log(2.0), levels[0].FirstBelow, 1e-9);
        Assert.Equal(levels[0].FirstBelow, levels[0].SecondsAbove, 1e-9);
        Assert.Equal((10.0 * Hour) - levels[0].SecondsAbove, levels[0].SecondsBelow, 1e-9);
        Assert.Equal(0.0, levels[0].FirstAbove);
        Assert.Equal(double.PositiveInfinity, levels[1].FirstAbove);
    }

    /// <summary>Air that climbs from the melting point: UA b t²/2 = m L, t = √(2 m L/(UA b)).</summary>
    [Fact]
    public void Melting_under_a_climbing_air_is_a_parabola()
    {
        const double PerSecond = 1.0 / Hour;
        const double Joules = 0.2 * 150_000.0;
        double melted = Math.Sqrt(2.0 * Joules / (Conductance * PerSecond));
        LevelExposure[] levels = [new(20.0)];
        var liquid = new double[2];
        Model(new PhaseStore(0.2, 20.0, 150_000.0, 0.0))
            .Run(
                Drive([0.0, 100.0 * Hour], [20.0, 120.0], 20.0, 100.0),
                new ParcelReport
                {
                    EverySeconds = 0.5 * melted,
                    Liquid = liquid,
                    Levels = levels,
                }
            );
        Assert.Equal(melted, levels[0].FirstAbove, 1e-8);
        Assert.Equal([0.0, 0.25], liquid, new Within(1e-12));
    }

    /// <summary>
    /// Air that falls through the melting point and climbs back as far: what froze melts again, and the least
    /// is 1 − UA b t²/2 ÷ m L at the turn.
    /// </summary>
    [Fact]
    public void What_freezes_melts_again()
    {
        double[] times = [0.0, 4.0 * Hour, 8.0 * Hour];
        var liquid = new double[9];
        Model(new PhaseStore(0.5, 20.0, 200_000.0, 1.0))
            .Run(
                Drive(times, [20.0, 12.0, 28.0], 20.0, 8.0),
                new ParcelReport { EverySeconds = Hour, Liquid = liquid }
            );
        // Falling by 2 K/h for 4 h, then rising by 4 K/h: back at 20 °C after 6 h.
        double least = 1.0 - (0.5 * 8.0 * 6.0 * Hour * Conductance / 100_000.0);
        Assert.Equal(least, liquid[6], 1e-12);
        Assert.True(liquid.All(l => l >= least - 1e-12));
        Assert.Equal(least + (0.5 * 8.0 * 2.0 * Hour * Conductance / 100_000.0), liquid[8], 1e-12);
    }

    /// <summary>Contents a kelvin too warm melt C · 1 K ÷ (m L) of a frozen pack.</summary>
    [Theory]
    [InlineData(21.0, 0.0, 20.0, 0.02)]
    [InlineData(19.0, 1.0, 20.0, 0.98)]
    [InlineData(90.0, 0.0, 40.0, 1.0)]
    [InlineData(-60.0, 1.0, -10.0, 0.0)]
    [InlineData(20.0, 0.4, 20.0, 0.4)]
    public void Packs_off_their_temperature_are_settled(
        double start,
        double liquid,
        double celsius,
        double then
    )
    {
        var outcome = Started(start, new PhaseStore(0.5, 20.0, 200_000.0, liquid), out double[] shares);
        Assert.Equal(celsius, outcome.StartCelsius, 1e-12);
        Assert.Equal(then, shares[0], 1e-12);
        Assert.Equal(start != 20.0, outcome.IsSettled);
    }

    /// <summary>Ice beside melted packs of 21 °C in contents of 22 °C.</summary>
    [Fact]
    public void Packs_of_two_melting_points_settle_with_each_other()
    {
        PhaseStore[] packs = [new(0.1, 0.0, 334_000.0, 0.5), new(0.5, 21.0, 200_000.0, 1.0)];
        var shares = new double[2];
        var outcome = new ParcelModel(Capacity, packs).Run(
            Drive([0.0], [21.0], 22.0, 1e-9),
            new ParcelReport { EverySeconds = Hour, PackLiquid = shares }
        );
        // 16,700 J melt the ice: 2000 J come from the contents, 14,700 J from the other pack.
        Assert.Equal(21.0, outcome.StartCelsius, 1e-12);
        Assert.Equal([1.0, 1.0 - 0.147], shares, new Within(1e-12));
    }

    /// <summary>Each takes by what it has left: half of it makes 0.2 and 0.8 to 0.6 and 0.9.</summary>
    [Fact]
    public void Packs_of_one_melting_point_melt_in_step()
    {
        PhaseStore[] packs = [new(0.1, 20.0, 200_000.0, 0.2), new(0.1, 20.0, 200_000.0, 0.8)];
        var shares = new double[4];
        double hours = 10_000.0 / (Conductance * 10.0) / Hour;
        new ParcelModel(Capacity, packs).Run(
            Drive([0.0], [30.0], 20.0, hours),
            new ParcelReport { EverySeconds = hours * Hour, PackLiquid = shares }
        );
        Assert.Equal([0.2, 0.8, 0.6, 0.9], shares, new Within(1e-12));
    }

    [Fact]
    public void Several_packs_of_one_melting_point_are_one_of_their_heat() =>
        Gen.Select(Gen.Double[0.0, 1.0], Gen.Double[0.05, 0.5], Gen.Double[-5.0, 40.0])
            .Sample(
                (liquid, kilograms, air) =>
                {
                    PhaseStore[] three =
                    [
                        new(kilograms, 21.0, 190_000.0, liquid),
                        new(0.5 * kilograms, 21.0, 190_000.0, liquid),
                        new(0.5 * kilograms, 21.0, 190_000.0, liquid),
                    ];
                    var drive = Drive([0.0, 20.0 * Hour], [air, 20.0], 21.0, 30.0);
                    var one = Model(new PhaseStore(2.0 * kilograms, 21.0, 190_000.0, liquid))
                        .Run(drive, default);
                    var many = new ParcelModel(Capacity, three).Run(drive, default);
                    Assert.Equal(one.EndCelsius, many.EndCelsius, 1e-9);
                    Assert.Equal(one.LatentJoules, many.LatentJoules, 1e-6);
                },
                iter: 200
            );

    /// <summary>2 W in a carton without loss: 2 · 3600/2000 = 3.6 K an hour.</summary>
    [Fact]
    public void A_carton_without_loss_keeps_all_heat()
    {
        var drive = new ParcelDrive
        {
            AmbientSeconds = [0.0],
            AmbientCelsius = [-20.0],
            HeatSeconds = [0.0, Hour, Hour],
            HeatWatts = [2.0, 2.0, 0.0],
            Conductance = 0.0,
            StartCelsius = 10.0,
            EndSeconds = 5.0 * Hour,
        };
        var outcome = Model().Run(drive, default);
        Assert.Equal(13.6, outcome.EndCelsius, 1e-12);
        Assert.Equal(0.0, outcome.WallJoules);
        Assert.Equal(7200.0, outcome.HeatJoules, 1e-9);
    }

    /// <summary>
    /// Behind air that falls from 30 °C by a kelvin an hour, contents of 22 °C turn where they meet it.
    /// </summary>
    [Fact]
    public void The_warmest_is_where_the_contents_meet_the_air()
    {
        var outcome = Model().Run(Drive([0.0, 40.0 * Hour], [30.0, -10.0], 22.0, 40.0), default);
        Assert.Equal(30.0 - (outcome.WarmestSeconds / Hour), outcome.WarmestCelsius, 1e-10);
        Assert.Equal(outcome.EndCelsius, outcome.ColdestCelsius, 1e-12);
        Assert.Equal(40.0 * Hour, outcome.ColdestSeconds);
    }

    [Theory]
    [InlineData(3.0, 4)]
    [InlineData(2.5, 4)]
    [InlineData(0.25, 2)]
    public void A_part_of_an_hour_has_a_row_of_its_own(double hours, int rows)
    {
        var celsius = new double[rows];
        Assert.Equal(rows, ParcelReport.Rows(hours * Hour, Hour));
        var outcome = Model()
            .Run(
                Drive([0.0], [10.0], 22.0, hours),
                new ParcelReport { EverySeconds = Hour, Celsius = celsius }
            );
        Assert.Equal(22.0, celsius[0]);
        Assert.Equal(outcome.EndCelsius, celsius[^1]);
    }

    [Fact]
    public void Twice_the_latent_heat_is_twice_the_pack()
    {
        var drive = Drive([0.0], [5.0], 22.0, 30.0);
        var doubled = new ParcelDrive
        {
            AmbientSeconds = drive.AmbientSeconds,
            AmbientCelsius = drive.AmbientCelsius,
            Conductance = drive.Conductance,
            StartCelsius = drive.StartCelsius,
            EndSeconds = drive.EndSeconds,
            LatentFactor = 2.0,
        };
        LevelExposure[] one = [new(18.0)];
        LevelExposure[] two = [new(18.0)];
        Model(new PhaseStore(0.5, 21.0, 190_000.0, 1.0)).Run(doubled, new ParcelReport { Levels = one });
        Model(new PhaseStore(1.0, 21.0, 190_000.0, 1.0)).Run(drive, new ParcelReport { Levels = two });
        Assert.Equal(two[0].FirstBelow, one[0].FirstBelow, 1e-8);
    }

    [Fact]
    public void A_run_allocates_nothing()
    {
        var model = Model(new PhaseStore(0.5, 21.0, 190_000.0, 1.0));
        double[] times = [.. Enumerable.Range(0, 73).Select(h => h * Hour)];
        double[] air = [.. times.Select(t => 15.0 + (10.0 * Math.Sin(t / 13_000.0)))];
        var celsius = new double[73];
        LevelExposure[] levels = [new(17.0), new(26.0)];
        var report = new ParcelReport
        {
            EverySeconds = Hour,
            Celsius = celsius,
            Levels = levels,
        };
        model.Run(Drive(times, air, 22.0, 72.0), report);
        long before = GC.GetAllocatedBytesForCurrentThread();
        model.Run(Drive(times, air, 22.0, 72.0), report);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void A_model_without_heat_capacity_or_with_too_many_packs_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ParcelModel(0.0, []));
        var packs = new PhaseStore[ParcelModel.MostPacks + 1];
        Assert.Throws<ArgumentOutOfRangeException>(() => new ParcelModel(1.0, packs));
    }

    private static ParcelModel Model(params ReadOnlySpan<PhaseStore> packs) => new(Capacity, packs);

    private static ParcelOutcome Started(double start, PhaseStore pack, out double[] shares)
    {
        shares = new double[1];
        return Model(pack)
            .Run(
                Drive([0.0], [start], start, 1e-9),
                new ParcelReport { EverySeconds = Hour, PackLiquid = shares }
            );
    }

    private static ParcelDrive Drive(double[] times, double[] air, double start, double hours) =>
        new()
        {
            AmbientSeconds = times,
            AmbientCelsius = air,
            Conductance = Conductance,
            StartCelsius = start,
            EndSeconds = hours * Hour,
        };

    private sealed class Within(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
