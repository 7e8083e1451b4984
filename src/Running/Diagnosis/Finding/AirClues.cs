using System.Globalization;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>Clues of a logger in the tank, and of the air as the engine computes it.</summary>
public static class AirClues
{
    // No egg of Folsomia candida hatches above 28 C (Hopkin 2005, recalled); frogs are kept below it.
    private const double HotCelsius = 28.0;
    private const double ColdCelsius = 16.0;
    private const double FewRises = 3;

    /// <summary>Clues of a case.</summary>
    /// <param name="air">What was measured.</param>
    /// <param name="trials">The runs.</param>
    /// <param name="isMisted">True where a misting system runs by the design.</param>
    /// <param name="isTold">True where somebody told the extremes of the temperature.</param>
    public static IEnumerable<Clue> From(AirSeen air, TrialSet trials, bool isMisted, bool isTold)
    {
        if (isMisted && air.MistRises.Length >= FewRises)
        {
            yield return Mist(air);
        }

        if (air.HighCelsius is { } high)
        {
            yield return Hot(high);
        }
        else if (!isTold)
        {
            var computed = trials.AsSet.LastDays(3).Max(h => h.AirCelsius);
            yield return computed >= HotCelsius
                ? Clue.Create(Degrees("Computed, the air reaches", computed), (Cause.TooHot, 3.0))
                : Clue.Create(Degrees("Computed, the air stays below", computed + 0.5), (Cause.TooHot, 0.6));
        }

        if (air.LowCelsius is { } low)
        {
            yield return Cold(low);
        }

        if (air.MeanHumidity is { } damp)
        {
            yield return Damp(damp);
        }
    }

    private static Clue Mist(AirSeen air)
    {
        var seen = air.MistRises.Count(r => r >= 2.0);
        var text = $"The logger sees humidity rise after {seen} of {air.MistRises.Length} mistings";
        return seen * 4 < air.MistRises.Length
            ? Clue.Create(text, (Cause.MistFails, 10.0), (Cause.DryAir, 0.5), (Cause.OverMisting, 0.2))
            : Clue.Create(text, (Cause.MistFails, 0.15));
    }

    private static Clue Hot(double high) =>
        high >= HotCelsius
            ? Clue.Create(Degrees("The logger shows up to", high), (Cause.TooHot, 8.0), (Cause.TooCold, 0.2))
            : Clue.Create(
                Degrees("The logger stays below", high + 0.05),
                (Cause.TooHot, high < 27 ? 0.1 : 0.5)
            );

    private static Clue Cold(double low) =>
        low <= ColdCelsius
            ? Clue.Create(Degrees("The logger shows down to", low), (Cause.TooCold, 6.0), (Cause.TooHot, 0.6))
            : Clue.Create(
                Degrees("The logger stays above", low - 0.05),
                (Cause.TooCold, low > 18 ? 0.1 : 0.5)
            );

    private static Clue Damp(double damp)
    {
        var text = string.Create(CultureInfo.InvariantCulture, $"Mean humidity is {damp:0} %");
        return damp < 65
            ? Clue.Create(
                text,
                (Cause.DryAir, 3.0),
                (Cause.MistFails, 2.5),
                (Cause.CrewDried, 2.0),
                (Cause.VentsShut, 0.1),
                (Cause.OverMisting, 0.3)
            )
            : Clue.Create(
                text,
                (Cause.DryAir, damp > 75 ? 0.2 : 0.6),
                (Cause.MistFails, damp > 75 ? 0.4 : 0.8)
            );
    }

    private static string Degrees(string text, double celsius) =>
        string.Create(CultureInfo.InvariantCulture, $"{text} {celsius:0.#} °C ({(1.8 * celsius) + 32:0} °F)");
}
