using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Limits of the headspace that a hand can solve: one pane, a tracer, a wet box of one temperature, a source
/// without surfaces, a closed box, and the exchange of water with the room.
/// </summary>
public static class OwnBoxLimits
{
    private const double Exact = 1e-6;
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, limits of the headspace",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // box °C, %; g/day per air change an hour and 100 L, room 21 °C 50 %
    private static readonly (double Celsius, double Percent, double Grams)[] Vented =
    [
        (21, 90, 17.8),
        (23, 80, 17.9),
        (23, 90, 22.9),
        (25, 70, 17.2),
        (25, 85, 25.6),
        (25, 95, 31.2),
        (28, 85, 34.5),
    ];

    // box °C, %; share by which it is lighter than a room of 21 °C, 50 %
    private static readonly (double Celsius, double Percent, double Lighter)[] Buoyant =
    [
        (21, 95, 0.00420),
        (20, 95, 0.00027),
        (19.5, 99, -0.00135),
        (19, 99, -0.00333),
        (23, 85, 0.01102),
        (25, 85, 0.01878),
        (25, 60, 0.01585),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Closed forms.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Steps().Concat(WetBox()).Concat(Sources()).Concat(Room());

    private static IEnumerable<VerificationCase> Steps()
    {
        const string Reason = "Extrapolated from two steps.";
        foreach (
            var (seconds, share) in ((double, double)[])
                [(60, 0.101175), (300, 0.413354), (600, 0.655846), (1800, 0.959238)]
        )
        {
            yield return Source.Case(
                $"pane of 5 mm between films of 8 W/(m² K), share of a step after {seconds} s",
                "1",
                (share, Exact),
                Reason,
                () => LumpedBox.Limit(Pane(seconds, 1.0), Pane(seconds, 0.5))
            );
        }

        foreach (
            var (perHour, minutes, left) in ((double, double, double)[])
                [
                    (1, 10, 0.846482),
                    (1, 30, 0.606531),
                    (1, 60, 0.367879),
                    (1, 120, 0.135335),
                    (5, 10, 0.434598),
                    (5, 30, 0.082085),
                    (5, 60, 0.006738),
                    (5, 120, 4.54e-5),
                ]
        )
        {
            yield return Source.Case(
                $"tracer left after {minutes} min of {perHour} air changes an hour",
                "1",
                (left, Exact),
                Reason,
                () => LumpedBox.Limit(Tracer(perHour, minutes, 1.0), Tracer(perHour, minutes, 0.5))
            );
        }
    }

    private static double Pane(double seconds, double step)
    {
        var pane = LumpedBox.Light(8.0, false) with { CapacityJoulesPerKelvin = [9000.0] };
        var model = LumpedBox.UnderAir(pane, 8.0, 0.0);
        var start = model.Even(20.0, 0.5) with { AirCelsius = 21.0 };
        var end = model.Advance(start, LumpedBox.Room(21.0, 0.005), seconds, HeadspaceControl.Even(step));
        return end.State.Celsius[0] - 20.0;
    }

    private static double Tracer(double perHour, double minutes, double step)
    {
        const double Ratio = 0.007;
        var model = LumpedBox.Alone(1.0, perHour / 3600.0);
        var start = model.Even(21.0, 0.9);
        var end = model.Advance(
            start,
            LumpedBox.Room(21.0, Ratio),
            60.0 * minutes,
            HeadspaceControl.Even(step)
        );
        return (end.State.HumidityRatio - Ratio) / (start.HumidityRatio - Ratio);
    }

    private static IEnumerable<VerificationCase> WetBox()
    {
        const string Reason = "Worked with vapor densities; a fixed mass of dry air stores 2 % more.";
        double[] times = [60, 120, 300, 600, 1800];
        foreach (
            var (perHour, humidities) in ((double, double[])[])
                [
                    (0, [0.641734, 0.743291, 0.905562, 0.982163, 0.999977]),
                    (5, [0.636304, 0.726161, 0.850194, 0.893798, 0.899999]),
                ]
        )
        {
            for (int i = 0; i < times.Length; i++)
            {
                double seconds = times[i];
                yield return Source.Case(
                    $"wet box of 23 °C with {perHour} air changes an hour, humidity after {seconds} s",
                    "1",
                    (humidities[i], 5e-3),
                    Reason,
                    () => Wet(perHour, seconds)
                );
            }
        }

        yield return Source.Case(
            $"wet box of 23 °C with 1 air change an hour, humidity at last",
            "1",
            (0.97619048, 1e-3),
            Reason,
            () => Wet(1.0, 36_000.0)
        );
    }

    private static double Wet(double perHour, double seconds)
    {
        const double Celsius = 23.0;
        double ratio = MoistAir.HumidityRatio(Celsius, 0.5, MoistAir.StandardPascals);
        double mass = 0.091125 / MoistAir.SpecificVolume(Celsius, ratio);
        var wet = LumpedBox.Light(0.0, true) with
        {
            AreaSquareMeters = 0.2025,
            CapacityJoulesPerKelvin = [LumpedBox.Endless],
        };
        var model = new HeadspaceModel(
            new HeadspaceShape { DryAirKilograms = mass, Surfaces = [wet] },
            new GivenLaws([1e6], [2.5e-3], perHour / 3600.0 * mass)
        );
        var end = model.Advance(
            model.Even(Celsius, 0.5),
            LumpedBox.Room(Celsius, ratio),
            seconds,
            HeadspaceControl.Even(0.25)
        );
        return MoistAir.RelativeHumidity(end.State.AirCelsius, end.State.HumidityRatio);
    }

    private static IEnumerable<VerificationCase> Sources()
    {
        const double Ratio = 0.0078;
        double flow = LumpedBox.DryAir / 3600.0;
        yield return Source.Case(
            $"source of 0.5 g/h into one air change an hour, w over the room",
            "kg/kg",
            (0.00463444, Exact),
            "A source over a flow.",
            () => Fogged(0.5, Ratio, flow).State.HumidityRatio - Ratio
        );
        yield return Source.Case(
            $"source of 5 g/h into one air change an hour: humidity",
            "1",
            (1.0, 0.011),
            "It would be far above saturation: the air takes no more than it holds.",
            () =>
            {
                var end = Fogged(5.0, Ratio, flow).State;
                return MoistAir.RelativeHumidity(end.AirCelsius, end.HumidityRatio);
            }
        );
        foreach (bool isAir in (bool[])[true, false])
        {
            yield return Source.Case(
                isAir
                    ? $"closed wet box after sixty days: air"
                    : (FormattableString)$"closed wet box after sixty days: humidity",
                isAir ? "°C" : "1",
                isAir ? (21.0, 1e-6) : (0.99993, 1e-5),
                "Rest: the room's temperature, and the humidity over water at −1 m.",
                () => Closed(isAir)
            );
        }
    }

    private static HeadspaceSpan Fogged(double gramsPerHour, double ratio, double flow)
    {
        var model = LumpedBox.Alone(LumpedBox.DryAir, flow);
        var drive = LumpedBox.Room(23.0, ratio) with
        {
            FogKilogramsPerSecond = gramsPerHour / 3.6e6,
            MistCelsius = 23.0,
        };
        return model.Advance(model.Even(23.0, 0.5), drive, 72_000.0, HeadspaceControl.Even(20.0));
    }

    private static double Closed(bool isAir)
    {
        var model = LumpedBox.Cube(0.0);
        var drive = LumpedBox.Room(21.0, 0.0078) with
        {
            Supply = [WaterSupply.Free, new WaterSupply(0.9999287, 0.0)],
        };
        var end = model
            .Advance(model.Even(21.0, 0.7), drive, 1440.0 * 3600.0, HeadspaceControl.Even(600.0))
            .State;
        return isAir ? end.AirCelsius : MoistAir.RelativeHumidity(end.AirCelsius, end.HumidityRatio);
    }

    private static IEnumerable<VerificationCase> Room()
    {
        double room = MoistAir.HumidityRatio(21.0, 0.5, MoistAir.StandardPascals);
        foreach (var (celsius, percent, grams) in Vented)
        {
            yield return Source.Case(
                $"vented by one air change an hour of 100 L at {celsius} °C, {percent} %",
                "g/day",
                (grams, 0.06),
                "Three digits.",
                () =>
                {
                    double w = MoistAir.HumidityRatio(celsius, percent / 100.0, MoistAir.StandardPascals);
                    double mass = 0.1 / MoistAir.SpecificVolume(celsius, w);
                    var model = LumpedBox.Alone(LumpedBox.Endless, mass / 3600.0);
                    var span = LumpedBox.Settle(
                        model,
                        model.Even(celsius, percent / 100.0),
                        LumpedBox.Room(21.0, room),
                        24.0
                    );
                    return 1000.0 * span.Totals.VentedKilograms;
                }
            );
        }

        foreach (var (celsius, percent, lighter) in Buoyant)
        {
            yield return Source.Case(
                $"share by which air of {celsius} °C, {percent} % is lighter than of 21 °C, 50 %",
                "1",
                (lighter, 1e-5),
                "Five decimals.",
                () =>
                    1.0
                    - (
                        MoistAir.Density(
                            celsius,
                            MoistAir.HumidityRatio(celsius, percent / 100.0, MoistAir.StandardPascals)
                        ) / MoistAir.Density(21.0, room)
                    )
            );
        }
    }
}
