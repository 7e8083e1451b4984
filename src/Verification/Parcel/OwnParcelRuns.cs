using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>Cooling, warming and melting of the carton of 25 and 50 mm, worked out by hand.</summary>
/// <remarks>
/// C = 0.5 kg · 4186 = 2093 J/K, UA = 0.461690 W/K, τ = C/UA = 4533.34 s. Without a pack T = Ta + (T0 − Ta)
/// e^(−t/τ). With a pack that melts at 21 °C: time to reach it τ ln((T0 − Ta)/(21 − Ta)), then plateau m L ÷
/// (UA |Ta − 21| − Q), then the same exponential from 21 °C. A latent heat of 190 kJ/kg is recalled.
/// </remarks>
public static class OwnParcelRuns
{
    private const double Capacity = 0.5 * 4186.0;
    private const double MeltC = 21.0;
    private const double Latent = 190_000.0;
    private const double SecondsPerHour = 3600.0;
    private const double Watts = 2.56;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own worked example, runs of a parcel",
        Evidence.WorkedExample,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Temperatures, times, liquid shares.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Cold().Concat(Hot()).Concat(Heated()).Concat(Thick()).Concat(Masses());

    private static PosedParcel Posed(double wall, double startC, double ambientC, double kg, double liquid) =>
        new()
        {
            Conductance = OwnCartons.Carton(wall).Conductance,
            Capacity = Capacity,
            StartC = startC,
            Ambient = PosedParcel.Still(ambientC),
            Packs = kg > 0.0 ? [new PhaseStore(kg, MeltC, Latent, liquid)] : [],
        };

    // 5 + 17 e^(−7200/4533.34) = 8.473; 5 + 17 e^(−21600/4533.34) = 5.145; 4533.34 ln(17/13) = 1216.1 s.
    // With 0.5 kg: 4533.34 ln(17/16) = 274.8 s; 0.46169 · 16 = 7.387 W; 95000/7.387 = 12,860 s; then
    // 4533.34 ln(16/13) = 941.3 s more: 14,076 s = 3.910 h.
    private static IEnumerable<VerificationCase> Cold()
    {
        const string Case = "22 °C in air of 5 °C";
        var bare = Posed(25.0, 22.0, 5.0, 0.0, 0.0);
        var pack = Posed(25.0, 22.0, 5.0, 0.5, 1.0);
        yield return Source.Case($"{Case}, after 2 h", "°C", (8.47, 6e-3), Digits, () => bare.CelsiusAt(2.0));
        yield return Source.Case($"{Case}, after 6 h", "°C", (5.14, 6e-3), Digits, () => bare.CelsiusAt(6.0));
        yield return Source.Case($"{Case}, 18 °C passed", "min", (20.3, 0.06), Digits, () =>
            bare.Level(18.0, 6.0).FirstBelow / 60.0
        );
        yield return Source.Case(
            $"{Case} with 0.5 kg of pack, time to 21 °C",
            "s",
            (275.0, 0.6),
            Digits,
            () => pack.Level(MeltC, 6.0).SecondsAbove
        );
        yield return Source.Case(
            $"{Case} with 0.5 kg of pack, power from it",
            "W",
            (7.387, 6e-4),
            Digits,
            () => (pack.LiquidAt(1.0) - pack.LiquidAt(2.0)) * 0.5 * Latent / SecondsPerHour
        );
        yield return Source.Case(
            $"{Case} with 0.5 kg of pack, plateau",
            "s",
            (12_860.0, 6.0),
            "Four digits.",
            () => pack.Level(MeltC, 6.0).FirstBelow - pack.Level(MeltC, 6.0).SecondsAbove
        );
        yield return Source.Case($"{Case} with 0.5 kg of pack, 18 °C passed", "h", (3.91, 6e-3), Digits, () =>
            pack.Level(18.0, 6.0).FirstBelow / SecondsPerHour
        );
    }

    // 4533.34 ln(15/14) = 312.8 s to 21 °C; 95000/(0.46169 · 14) = 14,698 s; 4533.34 ln(14/8) = 2536.9 s to
    // 27 °C: 17,547 s = 4.874 h. Without: 4533.34 ln(15/8) = 2849.7 s = 47.5 min.
    private static IEnumerable<VerificationCase> Hot()
    {
        const string Case = "20 °C in air of 35 °C";
        var bare = Posed(25.0, 20.0, 35.0, 0.0, 0.0);
        var pack = Posed(25.0, 20.0, 35.0, 0.5, 0.0);
        yield return Source.Case(
            $"{Case} with 0.5 kg of frozen pack, plateau",
            "s",
            (14_698.0, 0.6),
            "Five digits.",
            () => pack.Level(MeltC, 6.0).FirstAbove - pack.Level(MeltC, 6.0).SecondsBelow
        );
        yield return Source.Case(
            $"{Case} with 0.5 kg of frozen pack, 27 °C passed",
            "h",
            (4.87, 6e-3),
            Digits,
            () => pack.Level(27.0, 6.0).FirstAbove / SecondsPerHour
        );
        yield return Source.Case($"{Case}, 27 °C passed", "min", (47.5, 0.06), Digits, () =>
            bare.Level(27.0, 6.0).FirstAbove / 60.0
        );
    }

    // 2.56/0.46169 = 5.545 K over the air. At 8 °C: C dT/dt = UA (8 + 5.545 − T), 22 to 21 °C in
    // 4533.34 ln(8.455/7.455) = 570.6 s; then 0.46169 · 13 − 2.56 = 3.442 W out of 95,000 J: 1 − 3.442 ·
    // (7200 − 570.6)/95000 = 0.760, 0.499, 0.238; frozen at 28,171 s; 13.545 + 7.455 e^(−629/4533.34)
    // = 20.03.
    private static IEnumerable<VerificationCase> Heated()
    {
        const string Case = "22 °C in air of 8 °C with 0.5 kg of pack and 2.56 W";
        var heated = Posed(25.0, 22.0, 8.0, 0.5, 1.0) with { Heat = new TimeCurve([0.0], [Watts]) };
        var bare = heated with { Packs = [] };
        yield return Source.Case($"2.56 W, steady rise over the air", "K", (5.55, 6e-3), Digits, () =>
            bare.CelsiusAt(100.0) - 8.0
        );
        (double Hours, double Liquid)[] shares = [(2.0, 0.76), (4.0, 0.50), (6.0, 0.24)];
        foreach (var (hours, liquid) in shares)
        {
            yield return Source.Case($"{Case}, liquid after {hours} h", "1", (liquid, 6e-3), Digits, () =>
                heated.LiquidAt(hours)
            );
        }

        (double Hours, double Celsius)[] ends = [(8.0, 20.0), (10.0, 14.9), (100.0, 13.5)];
        foreach (var (hours, celsius) in ends)
        {
            yield return Source.Case($"{Case}, after {hours} h", "°C", (celsius, 0.06), Digits, () =>
                heated.CelsiusAt(hours)
            );
        }
    }

    // UA 0.29864: τ = 7008.4 s; 7008.4 ln(10/9) = 738.4 s to 21 °C; 0.29864 · 9 = 2.6878 W out of 190,000 J:
    // 1 − 2.6878 (28,800 − 738)/190,000 = 0.603; 0.196; frozen at 71,428 s; 12 + 9 e^(−572/7008.4) = 20.29.
    private static IEnumerable<VerificationCase> Thick()
    {
        const string Case = "50 mm, 22 °C in air of 12 °C with 1 kg of pack";
        var pack = Posed(50.0, 22.0, 12.0, 1.0, 1.0);
        yield return Source.Case($"{Case}, liquid after 8 h", "1", (0.60, 6e-3), Digits, () =>
            pack.LiquidAt(8)
        );
        yield return Source.Case($"{Case}, liquid after 16 h", "1", (0.20, 6e-3), Digits, () =>
            pack.LiquidAt(16)
        );
        yield return Source.Case($"{Case}, after 20 h", "°C", (20.3, 0.06), Digits, () =>
            pack.CelsiusAt(20.0)
        );
    }

    // m = UA t |21 − Ta|/L: 0.46169 · 86,400 · 11/190,000 = 2.309 kg; 0.46169 · 129,600 · 21/190,000 = 6.613.
    // So a pack of that mass, melted and at 21 °C, is frozen after that time.
    private static IEnumerable<VerificationCase> Masses()
    {
        (double Wall, double AirC, double Hours, double Kg)[] rows =
        [
            (25.0, 10.0, 24.0, 2.31),
            (50.0, 10.0, 24.0, 1.49),
            (25.0, 0.0, 36.0, 6.61),
            (50.0, 0.0, 36.0, 4.28),
        ];
        foreach (var (wall, air, hours, kg) in rows)
        {
            var pack = Posed(wall, MeltC, air, kg, 1.0);
            yield return Source.Case(
                $"{wall} mm, {kg} kg of pack in air of {air} °C last",
                "h",
                (hours, 0.006 / kg * hours),
                "Half a digit of the mass.",
                () => pack.Level(MeltC, 2.0 * hours).FirstBelow / SecondsPerHour
            );
        }
    }

    private const string Digits = "Digits worked out.";
}
