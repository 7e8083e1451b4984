using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>Scores each cause by the runs that it supposes against the readings.</summary>
public static class RunClues
{
    // A run that fits however well proves no cause that practice calls rare (own choice).
    private const double MostLog = 4.0;

    private sealed record Share(Supposed How, double Weight, double MillilitersPerDay = 0.0);

    /// <summary>The clue of all readings; null where there are none.</summary>
    public static Clue? From(TrialRuns runs, TrialSet trials, Fit fit, FloorState floor)
    {
        if (!fit.HasReadings)
        {
            return null;
        }

        var perMillimeter = floor.MillilitersPerMillimeter ?? 1000.0;
        var logs = new Dictionary<Cause, double>();
        var texts = ImmutableDictionary.CreateBuilder<Cause, string>();
        foreach (var row in FaultMatrix.Rows)
        {
            var shares = Shares(row.Cause, runs, trials, floor);
            var each = shares
                .Select(s =>
                    (
                        Share: s,
                        Log: Math.Log(s.Weight)
                            + fit.LogLikelihood(trials.Find(s.How), s.MillilitersPerDay / perMillimeter)
                    )
                )
                .ToArray();
            var best = each.MaxBy(e => e.Log);
            logs[row.Cause] = best.Log + Math.Log(each.Sum(e => Math.Exp(e.Log - best.Log)));
            texts[row.Cause] = Sentence(best.Share, trials, fit, perMillimeter);
        }

        var usual = Mean(logs);
        var factors = logs.ToImmutableDictionary(
            l => l.Key,
            l => Math.Exp(Math.Clamp(l.Value - usual, -MostLog, MostLog))
        );
        return new Clue("Readings against the computed runs", factors) { Texts = texts.ToImmutable() };
    }

    /// <summary>Logarithm of the likelihood on the whole, causes weighted as usual.</summary>
    private static double Mean(Dictionary<Cause, double> logs)
    {
        var most = logs.Values.Max();
        var all = FaultMatrix.Rows.Sum(r => r.Weight);
        return most + Math.Log(FaultMatrix.Rows.Sum(r => r.Weight / all * Math.Exp(logs[r.Cause] - most)));
    }

    /// <summary>How a tank with a cause may run; own choice.</summary>
    private static Share[] Shares(Cause cause, TrialRuns runs, TrialSet trials, FloorState floor)
    {
        var end = trials.AsSet.LevelMillimeters(24.0 * trials.Days);
        var floods = floor.BarrierMillimeters > 0 && end >= floor.BarrierMillimeters - 10;
        return cause switch
        {
            Cause.OverMisting => floods
                ? [new(Supposed.AsSet, 0.7), new(Supposed.MoreMist, 0.3)]
                : [new(Supposed.AsSet, 0.2), new(Supposed.MoreMist, 0.4), new(Supposed.MuchMoreMist, 0.4)],
            Cause.VentsShut => runs.IsShut
                ? [new(Supposed.AsSet, 1)]
                : [new(Supposed.LessAir, 0.5), new(Supposed.HardlyAir, 0.5)],
            Cause.WaterComesIn =>
            [
                new(Supposed.AsSet, 0.3, 60),
                new(Supposed.AsSet, 0.4, 200),
                new(Supposed.AsSet, 0.3, 500),
            ],
            Cause.TankLeaks =>
            [
                new(Supposed.AsSet, 0.3, -40),
                new(Supposed.AsSet, 0.4, -120),
                new(Supposed.AsSet, 0.3, -300),
            ],
            Cause.DryAir =>
            [
                new(Supposed.AsSet, 0.4),
                new(Supposed.MoreAir, 0.4),
                new(Supposed.HalfMist, 0.2),
            ],
            Cause.MistFails => [new(Supposed.NoMist, 0.7), new(Supposed.HalfMist, 0.3)],
            Cause.TooHot => [new(Supposed.AsSet, 0.4), new(Supposed.WarmRoom, 0.6)],
            Cause.TooCold => [new(Supposed.AsSet, 0.4), new(Supposed.CoolRoom, 0.6)],
            Cause.ColdGlass => [new(Supposed.AsSet, 0.7), new(Supposed.CoolRoom, 0.3)],
            Cause.CrewDried => [new(Supposed.AsSet, 0.6), new(Supposed.MoreAir, 0.4)],
            Cause.StillAir => [new(Supposed.AsSet, 0.5), new(Supposed.LessAir, 0.5)],
            Cause.SomethingElse =>
            [
                new(Supposed.AsSet, 0.5),
                new(Supposed.MoreMist, 0.1),
                new(Supposed.LessAir, 0.1),
                new(Supposed.MoreAir, 0.1),
                new(Supposed.WarmRoom, 0.1),
                new(Supposed.CoolRoom, 0.1),
            ],
            _ => [new(Supposed.AsSet, 1)],
        };
    }

    private static string Sentence(Share share, TrialSet trials, Fit fit, double perMillimeter)
    {
        var culture = CultureInfo.InvariantCulture;
        var how = share.MillilitersPerDay switch
        {
            > 0 => string.Create(culture, $"with {share.MillilitersPerDay:0} mL a day coming in besides"),
            < 0 => string.Create(culture, $"with {-share.MillilitersPerDay:0} mL a day leaking out"),
            _ => Words(share.How),
        };
        var run = trials.Find(share.How);
        if (fit.LastLevel is { Amount: { } read } last)
        {
            var hour = trials.HoursAt(last.At);
            var level = Math.Max(
                0,
                run.LevelMillimeters(hour) + (share.MillilitersPerDay / perMillimeter * hour / 24)
            );
            return string.Create(
                culture,
                $"Computed {how}, the level on {last.At:MMM d} is {level:0} mm; {read:0} mm was read"
            );
        }

        var hours = run.LastDays(3).ToArray();
        return string.Create(
            culture,
            $"Computed {how}, the air is at {hours.Average(h => h.AirMean):0.#} °C and "
                + $"{100 * hours.Average(h => h.HumidityMean):0} %"
        );
    }

    private static string Words(Supposed how) =>
        how switch
        {
            Supposed.MoreMist => "with half as much mist again",
            Supposed.MuchMoreMist => "with two and a half times the mist",
            Supposed.LessAir => "with a third of the air",
            Supposed.HardlyAir => "with hardly any air",
            Supposed.MoreAir => "with three times the air",
            Supposed.HalfMist => "with half of the mist",
            Supposed.NoMist => "without mist",
            Supposed.WarmRoom => "with the room 5 °C (9 °F) warmer",
            Supposed.CoolRoom => "with the room 5 °C (9 °F) cooler",
            _ => "as it is set",
        };
}
