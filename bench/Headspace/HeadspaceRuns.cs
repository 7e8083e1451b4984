using BenchmarkDotNet.Attributes;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Air;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Bench.Headspace;

/// <summary>
/// The lumped cube beside its peer, and whole designs as a forecast and a slider ask for them, warm.
/// </summary>
[MemoryDiagnoser]
[InProcess]
[WarmupCount(5)]
[IterationCount(9)]
public class HeadspaceRuns
{
    private const string Sample = "samples/ld-202-waiting-room.viv.yaml";
    private CheckedDesign design = null!;
    private BoxRun run = null!;

    /// <summary>Reads the design.</summary>
    [GlobalSetup]
    public void Read()
    {
        design = Shop.Design(Path.Combine(Root(), Sample), null).Value!;
        run = Run(design);
    }

    /// <summary>Tolerance at which the cube's errors are no larger than the peer's, K.</summary>
    public static double Tolerance { get; set; } = HeadspaceControl.Forecast.ErrorKelvin;

    /// <summary>The cube, 30 days, at the peer's error.</summary>
    [Benchmark(Baseline = true)]
    public double CubeAtEqualError() => Cube(By(Tolerance));

    /// <summary>The cube, 30 days, in steps of a minute.</summary>
    [Benchmark]
    public double CubeByMinutes() => Cube(HeadspaceControl.Even(60.0));

    /// <summary>The cube, 30 days, in the steps of a forecast.</summary>
    [Benchmark]
    public double CubeAsForecast() => Cube(HeadspaceControl.Forecast);

    /// <summary>Air and floor of a whole design, 30 days.</summary>
    [Benchmark]
    public int Design30Days() => run.Through(30).Hours.Length;

    /// <summary>The same, a year.</summary>
    [Benchmark]
    public int Design365Days() => run.Through(365).Hours.Length;

    /// <summary>Sixteen members through 90 days, on all cores.</summary>
    [Benchmark]
    public int Ensemble() =>
        DesignForecast.Of(design, new ForecastWish(BoxRun.FirstDay(design), 90, 16, 1))!.Members.Length;

    /// <summary>One value typed anew, the design checked, 30 days run.</summary>
    [Benchmark]
    public int ChangedValue()
    {
        var changed = design.Document.WithValue("misting.times[0].for", "21 s").Value!;
        return Run(DesignChecker.Check(changed, design.Catalog).Value!).Through(30).Hours.Length;
    }

    private static BoxRun Run(CheckedDesign design) =>
        BoxRun.From(new BoxSetup(design), BoxRun.FirstDay(design))!;

    /// <summary>Steps by a tolerance, anew after a switching and on through full hours.</summary>
    /// <param name="kelvin">Tolerance, K.</param>
    public static HeadspaceControl By(double kelvin) =>
        HeadspaceControl.Forecast with
        {
            ErrorKelvin = kelvin,
        };

    /// <summary>4 air changes, lamp from 8 to 20 h, 60 g of mist at 9 and at 17 h.</summary>
    /// <param name="control">How time is cut.</param>
    /// <param name="hours">Takes air, °C, and film, kg, at full hours.</param>
    /// <returns>Air at the end, °C.</returns>
    public static double Cube(HeadspaceControl control, List<(double Air, double Film)>? hours = null)
    {
        var model = Model();
        var state = model.Even(21.0, 0.7);
        hours?.Add((state.AirCelsius, 0.0));
        double[] switches = [8.0, 9.0, 9.0 + (1.0 / 60.0), 17.0, 17.0 + (1.0 / 60.0), 20.0, 24.0];
        double[] ends =
        [
            .. switches.Concat(Enumerable.Range(1, 24).Select(h => (double)h)).Distinct().Order(),
        ];
        double next = control.FirstStepSeconds;
        for (int day = 0; day < 30; day++)
        {
            double from = 0.0;
            foreach (double end in ends)
            {
                var span = model.Advance(
                    state,
                    Drive(0.5 * (from + end)),
                    ((24.0 * day) + end) * 3600.0,
                    control with
                    {
                        FirstStepSeconds = next,
                    }
                );
                state = span.State;
                bool isSwitched = Array.IndexOf(switches, end) >= 0 || double.IsInfinity(control.ErrorKelvin);
                next = isSwitched ? control.FirstStepSeconds : span.NextStepSeconds;
                from = end;
                if (end == Math.Floor(end))
                {
                    hours?.Add((state.AirCelsius, state.FilmKilograms[0]));
                }
            }
        }

        return state.AirCelsius;
    }

    private static HeadspaceModel Model()
    {
        const double Glass = 1.0125;
        const double Soil = 0.2025;
        const double DryAir = 0.107888186;
        return new HeadspaceModel(
            new HeadspaceShape
            {
                DryAirKilograms = DryAir,
                Surfaces =
                [
                    new HeadspaceSurface
                    {
                        Name = "glass",
                        AreaSquareMeters = Glass,
                        CapacityJoulesPerKelvin = [9112.5],
                        OutwardWattsPerKelvin = [8.0 * Glass],
                        RadiantWattsPerKelvin = 10.0 * Soil,
                        Film = new FilmRule(0.005 * Glass, 0.050 * Glass, 600.0, 1),
                        MistShare = 0.3,
                    },
                    new HeadspaceSurface
                    {
                        Name = "soil",
                        AreaSquareMeters = Soil,
                        CapacityJoulesPerKelvin = [30_375.0],
                        OutwardWattsPerKelvin = [2.0 * Soil],
                        RadiantWattsPerKelvin = 10.0 * Soil,
                        HasSupply = true,
                        MistShare = 0.7,
                    },
                ],
            },
            new GivenLaws([3.0, 3.0], [1.0 / 360.0, 1.0 / 360.0], 4.0 / 3600.0 * DryAir)
        );
    }

    private static HeadspaceDrive Drive(double hour) =>
        new()
        {
            Room = seconds => new RoomPoint(
                21.0 + (2.0 * Math.Sin(2.0 * Math.PI * ((seconds / 3600.0) - 9.0) / 24.0)),
                0.0078
            ),
            AirWatts = hour is > 8.0 and < 20.0 ? 1.0 : 0.0,
            SurfaceWatts = hour is > 8.0 and < 20.0 ? [3.0, 6.0] : [0.0, 0.0],
            MistKilogramsPerSecond = hour is (> 9.0 and < 9.02) or (> 17.0 and < 17.02) ? 0.001 : 0.0,
            MistCelsius = 20.0,
        };

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Litterfall.slnx")))
        {
            folder = Path.GetDirectoryName(folder)
                ?? throw new InvalidOperationException("run it inside the checkout");
        }

        return folder;
    }
}
