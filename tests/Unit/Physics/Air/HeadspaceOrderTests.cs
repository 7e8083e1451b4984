using Litterfall.Physics.Air;
using Xunit;

namespace Litterfall.UnitTests.Physics.Air;

/// <summary>
/// How the errors of a headspace fall with its steps and with its tolerance. The reference is a second
/// integrator with a right-hand side of its own, the classical Runge-Kutta method of order 4 (explicit) in
/// steps of two seconds, less than a tenth of the shortest time scale.
/// </summary>
public sealed class HeadspaceOrderTests
{
    private const double Day = 86_400.0;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Errors_of_even_steps_fall_with_their_square(bool isReal)
    {
        var box = new CubeByRungeKutta(isReal ? CubeByRungeKutta.Real() : CubeByRungeKutta.Given(8.0));
        double[] exact = box.Air(Day, isMisted: false);
        double coarse = Worst(exact, box, HeadspaceControl.Even(240.0), isMisted: false);
        double fine = Worst(exact, box, HeadspaceControl.Even(30.0), isMisted: false);
        double order = Math.Log2(coarse / fine) / 3.0;

        // Over three halvings, so that a corner of the coefficients that falls on a step counts a third.
        Assert.InRange(order, 1.8, 2.4);
        Assert.True(fine < 1e-4, $"{fine} K");
    }

    [Fact]
    public void Errors_fall_with_the_tolerance_through_mist_lamp_and_drying()
    {
        var box = new CubeByRungeKutta(CubeByRungeKutta.Given(4.0));
        double[] exact = box.Air(Day, isMisted: true);
        double[] errors =
        [
            .. new[] { 1e-2, 1e-3, 1e-4, 1e-5 }.Select(t =>
                Worst(exact, box, new HeadspaceControl(10.0, 3600.0, t), isMisted: true)
            ),
        ];
        for (int i = 1; i < errors.Length; i++)
        {
            // A method of order 2 that is cut by its error goes with the 2/3 power: 4.6; corners take some.
            Assert.True(errors[i] < 0.6 * errors[i - 1], string.Join(", ", errors));
        }

        Assert.True(errors[0] < 5e-3 && errors[^1] < 1e-4, string.Join(", ", errors));
    }

    /// <summary>
    /// What a forecast's steps make of the same day.
    /// </summary>
    [Fact]
    public void Steps_of_a_forecast_are_within_five_thousandths_of_a_kelvin()
    {
        var box = new CubeByRungeKutta(CubeByRungeKutta.Given(4.0));
        Assert.True(Worst(box.Air(Day, true), box, HeadspaceControl.Forecast, true) < 5e-3);
    }

    private static double Worst(double[] exact, CubeByRungeKutta box, HeadspaceControl control, bool isMisted)
    {
        var state = box.Model.Even(21.0, 0.7);
        double worst = 0.0;
        for (int hour = 0; hour < exact.Length - 1; hour++)
        {
            bool isMist = isMisted && (hour is 9 or 17);
            foreach (double end in isMist ? (double[])[60.0, 3600.0] : [3600.0])
            {
                var drive = CubeByRungeKutta.Drive(hour, isMist && end < 3600.0);
                state = box
                    .Model.Advance(
                        state,
                        drive,
                        (hour * 3600.0) + end,
                        control,
                        TestContext.Current.CancellationToken
                    )
                    .State;
            }

            worst = Math.Max(worst, Math.Abs(state.AirCelsius - exact[hour + 1]));
        }

        return worst;
    }

    /// <summary>The cube of 45 cm as a model and as differential equations of its own.</summary>
    private sealed class CubeByRungeKutta(ExchangeLaws laws)
    {
        private const double DryAir = 0.107888186;
        private const double Glass = 1.0125;
        private const double Soil = 0.2025;
        private const double GlassHeat = 9112.5;
        private const double SoilHeat = 30_375.0;
        private const double WetGlass = 0.005 * Glass;
        private const double Step = 2.0;

        public HeadspaceModel Model { get; } =
            new(
                new HeadspaceShape
                {
                    DryAirKilograms = DryAir,
                    Surfaces =
                    [
                        new HeadspaceSurface
                        {
                            Name = "glass",
                            AreaSquareMeters = Glass,
                            CapacityJoulesPerKelvin = [GlassHeat],
                            OutwardWattsPerKelvin = [8.0 * Glass],
                            RadiantWattsPerKelvin = 10.0 * Soil,
                            Film = new FilmRule(WetGlass, 0.050 * Glass, 600.0, 1),
                            MistShare = 0.3,
                        },
                        new HeadspaceSurface
                        {
                            Name = "soil",
                            AreaSquareMeters = Soil,
                            CapacityJoulesPerKelvin = [SoilHeat],
                            OutwardWattsPerKelvin = [2.0 * Soil],
                            RadiantWattsPerKelvin = 10.0 * Soil,
                            HasSupply = true,
                            MistShare = 0.7,
                        },
                    ],
                },
                laws
            );

        public static GivenLaws Given(double changesPerHour) =>
            new([3.0, 3.0], [1.0 / 360.0, 1.0 / 360.0], changesPerHour / 3600.0 * DryAir);

        /// <summary>Convection and openings of a real box.</summary>
        public static BoxLaws Real() =>
            new(
                [new SurfacePlace(SurfaceRole.Wall, 0.45), new SurfacePlace(SurfaceRole.Wall, 0.45)],
                (inside, outside, _) => 2e-4 * Math.Sqrt(0.01 + (10.0 * Math.Abs(outside - inside))),
                0.091125,
                (1.0, 1.0)
            );

        public static HeadspaceDrive Drive(int hour, bool isMisting)
        {
            bool isLit = hour % 24 is >= 8 and < 20;
            return new HeadspaceDrive
            {
                Room = seconds => new RoomPoint(
                    21.0 + (2.0 * Math.Sin(2.0 * Math.PI * ((seconds / 3600.0) - 9.0) / 24.0)),
                    0.0078
                ),
                AirWatts = isLit ? 1.0 : 0.0,
                SurfaceWatts = isLit ? [3.0, 6.0] : [0.0, 0.0],
                MistKilogramsPerSecond = isMisting ? 0.001 : 0.0,
                MistCelsius = 20.0,
            };
        }

        /// <summary>Air at full hours, °C.</summary>
        public double[] Air(double seconds, bool isMisted)
        {
            double[] y = [21.0, MoistAir.HumidityRatio(21.0, 0.7, MoistAir.StandardPascals), 21.0, 21.0, 0.0];
            var hours = new List<double> { y[0] };
            for (int n = 0; n < seconds / Step; n++)
            {
                int hour = (int)(n * Step / 3600.0);
                bool isMist = isMisted && (hour is 9 or 17);
                var drive = Drive(hour, isMist && n * Step < (hour * 3600.0) + 60.0);
                double t = n * Step;
                double[] a = Rates(t, y, drive);
                double[] b = Rates(t + (0.5 * Step), Moved(y, a, 0.5 * Step), drive);
                double[] c = Rates(t + (0.5 * Step), Moved(y, b, 0.5 * Step), drive);
                double[] d = Rates(t + Step, Moved(y, c, Step), drive);
                y = [.. y.Select((v, i) => v + (Step / 6.0 * (a[i] + (2.0 * (b[i] + c[i])) + d[i])))];
                if ((n + 1) * Step % 3600.0 == 0.0)
                {
                    hours.Add(y[0]);
                }
            }

            return [.. hours];
        }

        private static double[] Moved(double[] y, double[] rates, double seconds) =>
            [.. y.Select((v, i) => v + (seconds * rates[i]))];

        private double[] Rates(double t, double[] y, HeadspaceDrive drive)
        {
            var (air, w, glass, soil, film) = (y[0], y[1], y[2], y[3], y[4]);
            var room = drive.Room(t);
            bool isWet = film > 0.0;
            double onGlass = isWet ? Saturated(glass) : w;
            double h1 = laws.Convection(0, new SurfaceAir(glass, onGlass, air, w), drive);
            double h2 = laws.Convection(1, new SurfaceAir(soil, Saturated(soil), air, w), drive);
            double flow = laws.AirFlow(new RoomPoint(air, w), room, drive);
            double p = 101_325.0 * w / (0.621945 + w);
            double e =
                Soil
                * laws.MassTransfer(1, h2)
                * (Pressure(soil) - p)
                / (461.524 * ((0.5 * (soil + air)) + 273.15));
            double f =
                Glass
                * laws.MassTransfer(0, h1)
                * (p - Pressure(glass))
                / (461.524 * ((0.5 * (glass + air)) + 273.15));
            f *= f < 0.0 ? 1.0 - Math.Exp(-Math.Max(film, 0.0) / WetGlass) : 1.0;
            double drip = Math.Max(0.0, film - (0.050 * Glass)) / 600.0;
            double mist = drive.MistKilogramsPerSecond;
            double[] watts = [.. drive.SurfaceWatts];
            double heat =
                (flow * (1006.0 + (1860.0 * room.HumidityRatio)) * (room.Celsius - air))
                + (h1 * Glass * (glass - air))
                + (h2 * Soil * (soil - air))
                + drive.AirWatts
                + (e > 0.0 ? 1860.0 * e * (soil - air) : 0.0)
                - (f < 0.0 ? 1860.0 * f * (glass - air) : 0.0);
            double intoGlass =
                (h1 * Glass * (air - glass))
                + (5.0 * Soil * (soil - glass))
                + (8.0 * Glass * (room.Celsius - glass))
                + watts[0]
                + (f * (2_501_000.0 + (1860.0 * (f > 0.0 ? air : glass)) - (4186.0 * glass)))
                + (0.3 * mist * 4186.0 * (20.0 - glass));
            double intoSoil =
                (h2 * Soil * (air - soil))
                + (5.0 * Soil * (glass - soil))
                + (2.0 * Soil * (room.Celsius - soil))
                + watts[1]
                - (e * (2_501_000.0 + (1860.0 * (e > 0.0 ? soil : air)) - (4186.0 * soil)))
                + (0.7 * mist * 4186.0 * (20.0 - soil));
            return
            [
                heat / (DryAir * (1006.0 + (1860.0 * w))),
                ((flow * (room.HumidityRatio - w)) + e - f) / DryAir,
                intoGlass / GlassHeat,
                intoSoil / SoilHeat,
                f - drip + (0.3 * mist),
            ];
        }

        private static double Pressure(double celsius) =>
            Math.Exp(HylandWexler1983.LogSaturation(celsius + 273.15));

        private static double Saturated(double celsius) =>
            0.621945 * Pressure(celsius) / (101_325.0 - Pressure(celsius));
    }
}
