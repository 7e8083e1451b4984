using CsCheck;
using Litterfall.Physics.Air;
using Xunit;

namespace Litterfall.UnitTests.Physics.Air;

/// <summary>
/// What holds for any headspace: water and heat that came are water and heat that went or stayed.
/// </summary>
public sealed class HeadspaceModelTests
{
    private static readonly Gen<(HeadspaceModel Model, HeadspaceDrive Drive, HeadspaceState Start)> Boxes =
        Gen.Select(
            Gen.Double[0.5, 12.0],
            Gen.Double[1e-4, 0.02],
            Gen.Double[0.0, 40.0],
            Gen.Double[0.0, 5e-4],
            Gen.Select(
                Gen.Double[5.0, 32.0],
                Gen.Double[0.1, 1.0],
                Gen.Double[5.0, 35.0],
                Gen.Double[0.1, 0.95]
            ),
            Gen.Double[0.0, 30.0],
            (convection, flow, watts, mist, air, fog) => Box(convection, flow, (watts, mist, fog * 1e-6), air)
        );

    [Fact]
    public void Vapor_and_heat_close_and_nothing_leaves_its_range() =>
        Boxes.Sample(
            box =>
            {
                var span = box.Model.Advance(
                    box.Start,
                    box.Drive,
                    6.0 * 3600.0,
                    HeadspaceControl.Forecast,
                    TestContext.Current.CancellationToken
                );
                var totals = span.Totals;
                double heat = totals.Heat.BalanceErrorJoules;
                double turned =
                    Math.Abs(totals.Heat.Sources)
                    + Math.Abs(totals.Heat.Outside)
                    + Math.Abs(totals.Heat.Vented)
                    + Math.Abs(totals.Heat.Stored)
                    + 1.0;
                return span.StoppedEarly is null
                    && Math.Abs(totals.BalanceErrorKilograms) < 1e-12
                    && Math.Abs(heat) < 1e-5 * turned
                    && span.State.FilmKilograms.All(f => f >= 0.0)
                    && span.State.HumidityRatio > 0.0
                    && totals.Humidity.Least > 0.0
                    && totals.Humidity.Most <= 1.0 + 1e-9;
            },
            iter: 300
        );

    /// <summary>
    /// Leaves, panes and ground under the laws of a real box, in long even steps that no error cuts: still
    /// no film, vapor or humidity leaves its range, and the books close.
    /// </summary>
    [Fact]
    public void Long_steps_of_real_boxes_keep_their_range() =>
        Gen.Select(
                Gen.Double[60.0, 3600.0],
                Gen.Double[0.0, 5e-4],
                Gen.Double[0.0, 60.0],
                Gen.Double[1e-5, 0.02],
                Gen.Select(
                    Gen.Double[5.0, 35.0],
                    Gen.Double[0.02, 1.0],
                    Gen.Double[5.0, 35.0],
                    Gen.Double[0.02, 1.0]
                ),
                Gen.Double[0.0, 30.0]
            )
            .Sample(
                (step, mist, watts, opening, air, fog) =>
                {
                    var (model, drive, start) = Real(opening, (watts, mist, fog * 1e-6), air);
                    var span = model.Advance(
                        start,
                        drive,
                        6.0 * 3600.0,
                        HeadspaceControl.Even(step),
                        TestContext.Current.CancellationToken
                    );
                    var totals = span.Totals;
                    double misted = totals.Surfaces.Sum(s => s.MistedKilograms);
                    return span.StoppedEarly is null
                        && Math.Abs(totals.BalanceErrorKilograms) < 1e-12
                        && Math.Abs(misted - (0.8 * mist * 6.0 * 3600.0)) < 1e-9
                        && span.State.FilmKilograms.All(f => f >= 0.0)
                        && span.State.HumidityRatio > 0.0
                        && totals.Humidity.Least > 0.0
                        && totals.Humidity.Most <= 1.0 + 1e-9;
                },
                iter: 300
            );

    /// <summary>
    /// A film gains what condenses and is misted, and loses what dries and drips: nothing else.
    /// </summary>
    [Fact]
    public void Films_keep_their_own_books() =>
        Boxes.Sample(
            box =>
            {
                var span = box.Model.Advance(
                    box.Start,
                    box.Drive,
                    3600.0,
                    HeadspaceControl.Forecast,
                    TestContext.Current.CancellationToken
                );
                var pane = span.Totals.Surfaces[0];
                double gained =
                    pane.CondensedKilograms
                    + pane.MistedKilograms
                    - pane.DriedKilograms
                    - pane.DrippedKilograms;
                return Math.Abs(gained - span.State.FilmKilograms[0]) < 1e-10;
            },
            iter: 300
        );

    /// <summary>Two halves of a span are the span.</summary>
    [Fact]
    public void Spans_can_be_cut()
    {
        var (model, drive, start) = Box(3.0, 0.001, (10.0, 1e-4, 0.0), (21.0, 0.5, 20.0, 0.5));
        var cancel = TestContext.Current.CancellationToken;
        var even = HeadspaceControl.Even(30.0);
        var whole = model.Advance(start, drive, 3600.0, even, cancel).State;
        var half = model.Advance(start, drive, 1800.0, even, cancel).State;
        var both = model.Advance(half, drive, 3600.0, even, cancel).State;
        Assert.Equal(whole.AirCelsius, both.AirCelsius, 1e-9);
        Assert.Equal(whole.HumidityRatio, both.HumidityRatio, 1e-12);
    }

    /// <summary>
    /// Dew of one span stands in the next: a pane that nothing mists has its whole film as dew, and a
    /// morning counted by the hour has the fog of the morning.
    /// </summary>
    [Fact]
    public void Dew_stays_from_span_to_span()
    {
        var (model, drive, start) = Box(3.0, 5e-4, (0.0, 0.0, 0.0), (24.0, 0.95, 10.0, 0.5));
        var cancel = TestContext.Current.CancellationToken;
        var even = HeadspaceControl.Even(30.0);
        double whole = model
            .Advance(start, drive, 6.0 * 3600.0, even, cancel)
            .Totals.Surfaces[0]
            .FoggedSeconds;
        double hours = 0.0;
        for (int hour = 1; hour <= 6; hour++)
        {
            var span = model.Advance(start, drive, 3600.0 * hour, even, cancel);
            hours += span.Totals.Surfaces[0].FoggedSeconds;
            start = span.State;
            Assert.Equal(start.FilmKilograms[0], start.DewKilograms[0], 1e-9);
        }

        Assert.InRange(whole, 3600.0, 6.0 * 3600.0);
        Assert.Equal(whole, hours, 1.0);
    }

    [Fact]
    public void Nothing_moves_a_box_at_rest()
    {
        var (model, drive, start) = Box(3.0, 0.001, (0.0, 0.0, 0.0), (21.0, 1.0, 21.0, 1.0));
        var end = model.Advance(
            start,
            drive,
            86_400.0,
            HeadspaceControl.Forecast,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(21.0, end.State.AirCelsius, 1e-4);
        Assert.Equal(1.0, MoistAir.RelativeHumidity(end.State.AirCelsius, end.State.HumidityRatio), 1e-5);
    }

    private static (HeadspaceModel, HeadspaceDrive, HeadspaceState) Box(
        double convection,
        double flow,
        (double Watts, double Mist, double Fog) sources,
        (double Celsius, double Humidity, double Room, double RoomHumidity) air
    )
    {
        var model = new HeadspaceModel(
            new HeadspaceShape
            {
                DryAirKilograms = 0.1,
                Surfaces =
                [
                    Surface("pane", 9000.0, new FilmRule(0.005, 0.04, 300.0, 1), false),
                    Surface("ground", 30_000.0, null, true),
                ],
                SettlesOn = 1,
            },
            new GivenLaws([convection, convection], [convection * 9e-4, convection * 9e-4], flow)
        );
        double ratio = MoistAir.HumidityRatio(air.Room, air.RoomHumidity, MoistAir.StandardPascals);
        var drive = new HeadspaceDrive
        {
            Room = _ => new RoomPoint(air.Room, ratio),
            SurfaceWatts = [0.3 * sources.Watts, 0.7 * sources.Watts],
            MistKilogramsPerSecond = sources.Mist,
            MistCelsius = 20.0,
            FogKilogramsPerSecond = sources.Fog,
        };
        return (model, drive, model.Even(air.Celsius, air.Humidity));
    }

    private static (HeadspaceModel, HeadspaceDrive, HeadspaceState) Real(
        double opening,
        (double Watts, double Mist, double Fog) sources,
        (double Celsius, double Humidity, double Room, double RoomHumidity) air
    )
    {
        var leaves = Surface("leaves", 300.0, new FilmRule(0.02, 0.04, 300.0, 1), true) with
        {
            MistShare = 0.1,
            OutwardWattsPerKelvin = [0.0],
        };
        var model = new HeadspaceModel(
            new HeadspaceShape
            {
                DryAirKilograms = 0.1,
                Surfaces =
                [
                    Surface("pane", 9000.0, new FilmRule(0.005, 0.04, 300.0, 1), false) with
                    {
                        MistShare = 0.2,
                    },
                    Surface("ground", 30_000.0, null, true) with
                    {
                        MistShare = 0.5,
                    },
                    leaves,
                ],
                SettlesOn = 1,
            },
            new BoxLaws(
                [
                    new SurfacePlace(SurfaceRole.Wall, 0.45),
                    new SurfacePlace(SurfaceRole.Floor, 0.45),
                    new SurfacePlace(SurfaceRole.Wall, 0.05),
                ],
                (inside, outside, _) => opening * Math.Sqrt(1e-4 + Math.Abs(outside - inside)),
                0.09,
                (1.0, 1.0)
            )
        );
        double ratio = MoistAir.HumidityRatio(air.Room, air.RoomHumidity, MoistAir.StandardPascals);
        var drive = new HeadspaceDrive
        {
            Room = _ => new RoomPoint(air.Room, ratio),
            SurfaceWatts = [0.2 * sources.Watts, 0.6 * sources.Watts, 0.2 * sources.Watts],
            MistKilogramsPerSecond = sources.Mist,
            MistCelsius = 20.0,
            FogKilogramsPerSecond = sources.Fog,
            Supply = [WaterSupply.Free, new WaterSupply(0.999, 50.0), new WaterSupply(1.0, 900.0)],
        };
        return (model, drive, model.Even(air.Celsius, air.Humidity));
    }

    private static HeadspaceSurface Surface(string name, double heat, FilmRule? film, bool isWet) =>
        new()
        {
            Name = name,
            AreaSquareMeters = isWet ? 0.2 : 1.0,
            CapacityJoulesPerKelvin = [heat],
            OutwardWattsPerKelvin = [isWet ? 0.4 : 8.0],
            RadiantWattsPerKelvin = 2.0,
            Film = film,
            HasSupply = isWet,
            MistShare = isWet ? 0.7 : 0.3,
        };
}
