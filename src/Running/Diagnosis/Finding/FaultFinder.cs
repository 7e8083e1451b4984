using System.Collections.Immutable;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>A cause, how likely it is, and what speaks for and against it.</summary>
/// <param name="Row">The cause.</param>
/// <param name="Probability">Chance that it is the main cause, 0 to 1.</param>
public sealed record RankedCause(CauseRow Row, double Probability)
{
    /// <summary>What speaks for it, the strongest first.</summary>
    public ImmutableArray<string> For { get; init; } = [];

    /// <summary>What speaks against it, the strongest first.</summary>
    public ImmutableArray<string> Against { get; init; } = [];

    /// <summary>What to do; null where nobody worked it out.</summary>
    public FixPlan? Fix { get; init; }
}

/// <summary>A result of the next check, and what would then be thought.</summary>
/// <param name="Result">In words.</param>
/// <param name="Then">In words.</param>
public sealed record CheckOutcome(string Result, string Then);

/// <summary>What is thought of a tank.</summary>
public sealed record FaultAnswer
{
    /// <summary>Causes, the likeliest first; they sum to one.</summary>
    public required ImmutableArray<RankedCause> Causes { get; init; }

    /// <summary>What to measure next; empty where nothing would tell more.</summary>
    public string Next { get; init; } = "";

    /// <summary>What its results would mean.</summary>
    public ImmutableArray<CheckOutcome> Outcomes { get; init; } = [];

    /// <summary>What makes it worse beside the main cause, and by what that is known.</summary>
    public ImmutableArray<string> Besides { get; init; } = [];

    /// <summary>What was no evidence, and why.</summary>
    public ImmutableArray<string> Ignored { get; init; } = [];
}

/// <summary>
/// Weighs symptoms, facts, design and readings: the practitioner's matrix first, times what each clue is
/// worth
/// under a cause, times how well the engine's run under that cause agrees with the readings. One cause is the
/// main one; the chances are those of it.
/// </summary>
public static class FaultFinder
{
    private const int MostFixes = 5;

    /// <summary>Finds the causes.</summary>
    /// <param name="of">The case.</param>
    /// <param name="cancel">Cancels between runs.</param>
    public static FaultAnswer Find(FaultCase of, CancellationToken cancel = default)
    {
        var runs = new TrialRuns(of, cancel);
        var trials = runs.Run();
        var air = AirSeen.From(of, of.Design.Design.Misting?.Times.Select(t => t.At) ?? []);
        var floor = trials is null ? null : FloorState.From(runs, trials);
        var clues = FactClues.From(of.Facts).Concat(DesignClues.From(of, runs.Reported)).ToList();
        Clue? run = null;
        if (trials is not null && floor is not null)
        {
            var isMisted = of.Design.Design.Misting is { Times.Count: > 0 };
            var isTold = of.Facts.Any(f => f.Fact is TankFact.Hottest or TankFact.HeatWave);
            clues.AddRange(WaterClues.From(of, runs, trials, floor));
            clues.AddRange(AirClues.From(air, trials, isMisted, isTold));
            run = RunClues.From(runs, trials, new Fit(of, trials, air), floor);
        }

        var isRead =
            trials is not null
            && floor is { BarrierMillimeters: > 0 }
            && new Fit(of, trials, air).LastLevel is not null;
        var weighed = new Weighing(of, clues, run, isRead);
        var chances = weighed.Chances();
        var fixes = new Fixes(of, runs, trials, floor);
        var ranked = chances
            .OrderByDescending(c => c.Value)
            .ThenBy(c => c.Key)
            .Select(
                (c, place) =>
                    weighed.Reasons(FaultMatrix.RowOf(c.Key), c.Value) with
                    {
                        Fix = place < MostFixes ? fixes.Plan(c.Key) : null,
                    }
            )
            .ToImmutableArray();
        return Next(of, chances, floor) with
        {
            Causes = ranked,
            Besides = weighed.Besides(ranked[0].Row.Cause),
            Ignored = Ignored(of, air),
        };
    }

    private static ImmutableArray<string> Ignored(FaultCase of, AirSeen air) =>
        [
            .. air.Ignored,
            .. of.Unknown.Select(u => $"\"{u}\": these words name no symptom that is known here."),
        ];

    /// <summary>The check that leaves the least doubt for its work.</summary>
    private static FaultAnswer Next(FaultCase of, Dictionary<Cause, double> chances, FloorState? floor)
    {
        var rise = floor is { BarrierMillimeters: > 0, MillilitersPerMillimeter: { } per }
            ? floor.Gain / per
            : (double?)null;
        var misting = of.Design.Design.Misting;
        var nozzle = misting is { Times.Count: > 0 } ? misting.Each.Si * 60e6 : (double?)null;
        var now = chances.MaxBy(c => c.Value).Key;
        var best = NextChecks
            .All(rise, nozzle)
            .Where(c => !of.Facts.Any(f => c.Answers.Contains(f.Fact)))
            .Select(c => (Check: c, Gain: Gain(chances, c) * Practice(c, now) / (1.0 + (c.Minutes / 120.0))))
            .MaxBy(c => c.Gain);
        return new FaultAnswer
        {
            Causes = [],
            Next = best.Check.What,
            Outcomes = [.. best.Check.Results.Select(r => new CheckOutcome(r.Result, Then(chances, r, now)))],
        };
    }

    /// <summary>The trade's deciding test of a cause also tells how much its cure must change: it comes first
    /// wherever it tells anything.</summary>
    private static double Practice(NextCheck check, Cause now) => check.Decides.Contains(now) ? 5.0 : 1.0;

    private static string Then(Dictionary<Cause, double> chances, CheckResult result, Cause now)
    {
        var after = After(chances, result).OrderByDescending(c => c.Value).ToArray();
        var (first, second) = (after[0], after[1]);
        string Told(KeyValuePair<Cause, double> c) =>
            $"{FaultMatrix.RowOf(c.Key).Title.ToLowerInvariant()} ({Percent(c.Value)})";
        return first.Key == now
            ? $"it stays with {Told(first)}, before {Told(second)}"
            : $"it is rather {Told(first)}; {Told(after.First(a => a.Key == now))} falls back";
    }

    private static string Percent(double chance) =>
        chance >= 0.99 ? "over 99 %"
        : chance < 0.01 ? "under 1 %"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{100 * chance:0} %");

    private static Dictionary<Cause, double> After(Dictionary<Cause, double> chances, CheckResult result)
    {
        var all = chances.Sum(c => c.Value * result.Chance(c.Key));
        return chances.ToDictionary(c => c.Key, c => c.Value * result.Chance(c.Key) / all);
    }

    /// <summary>Doubt that a check takes away on the mean, in nats (Shannon 1948, recalled).</summary>
    private static double Gain(Dictionary<Cause, double> chances, NextCheck check) =>
        Doubt(chances)
        - check.Results.Sum(r => chances.Sum(c => c.Value * r.Chance(c.Key)) * Doubt(After(chances, r)));

    private static double Doubt(Dictionary<Cause, double> chances) =>
        -chances.Values.Sum(p => p > 0 ? p * Math.Log(p) : 0.0);
}
