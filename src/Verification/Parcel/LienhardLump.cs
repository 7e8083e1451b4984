using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// Closed forms of one lump in air that jumps, climbs and swings, as in Lienhard and Lienhard, A Heat
/// Transfer Textbook, chapters 1 and 5 (recalled): behind a ramp it lags by slope times time
/// constant; behind a sine it swings 1/√(1 + ω²τ²) as far, arctan(ωτ)/ω later.
/// </summary>
public static class LienhardLump
{
    private const double Hour = 3600.0;
    private const double Capacity = 2093.0;
    private const double Conductance = 0.46;
    private const double Tau = Capacity / Conductance;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Lienhard and Lienhard, lump behind its surroundings",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Temperatures.</returns>
    public static IEnumerable<VerificationCase> Cases() => Ramps().Concat(Pulse()).Concat(Sine());

    private static PosedParcel Posed(TimeCurve ambient) =>
        new()
        {
            Conductance = Conductance,
            Capacity = Capacity,
            StartC = 20.0,
            Ambient = ambient,
        };

    private static IEnumerable<VerificationCase> Ramps()
    {
        const double PerSecond = -0.5 / Hour;
        var ramp = Posed(new TimeCurve([0.0, 40.0 * Hour], [20.0, 0.0]));
        double[] hours = [0.01, 0.5, 3.0, 12.0, 40.0];
        foreach (double h in hours)
        {
            double t = h * Hour;
            double expected = 20.0 + (PerSecond * (t - Tau + (Tau * Math.Exp(-t / Tau))));
            yield return Source.Case(
                $"air falls by half a kelvin an hour, after {h} h",
                "°C",
                (expected, 1e-11),
                "Rounding.",
                () => ramp.CelsiusAt(h)
            );
        }
    }

    // A step of 10 K up at hour 1 and down at hour 2; what is left decays.
    private static IEnumerable<VerificationCase> Pulse()
    {
        var pulse = Posed(TimeCurve.Sum(PosedParcel.Still(20.0), TimeCurve.Block(10.0, Hour, 2.0 * Hour)));
        double peak = 20.0 + (10.0 * (1.0 - Math.Exp(-Hour / Tau)));
        yield return Source.Case($"air 10 K up for an hour, peak", "°C", (peak, 1e-11), "Rounding.", () =>
            pulse.Run(6.0, []).WarmestCelsius
        );
        yield return Source.Case(
            $"air 10 K up for an hour, an hour later",
            "°C",
            (20.0 + ((peak - 20.0) * Math.Exp(-Hour / Tau)), 1e-11),
            "Rounding.",
            () => pulse.CelsiusAt(3.0)
        );
    }

    private static IEnumerable<VerificationCase> Sine()
    {
        const double Omega = 2.0 * Math.PI / (24.0 * Hour);
        double[] times = [.. Enumerable.Range(0, (240 * 60) + 1).Select(i => i * 60.0)];
        var swing = Posed(new TimeCurve(times, [.. times.Select(t => 20.0 + (8.0 * Math.Sin(Omega * t)))]));
        double share = 1.0 / Math.Sqrt(1.0 + (Omega * Tau * Omega * Tau));
        double lag = Math.Atan(Omega * Tau);
        double[] hours = [220.0, 229.0, 240.0];
        foreach (double h in hours)
        {
            yield return Source.Case(
                $"air swings by 8 K in a day, after {h} h",
                "°C",
                (20.0 + (8.0 * share * Math.Sin((Omega * h * Hour) - lag)), 2e-5),
                "Chords of a minute lie (ω · 60 s)²/12 below the sine: 1.3e-5 K.",
                () => swing.CelsiusAt(h)
            );
        }
    }
}
