using System.Collections.Immutable;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>Weighs what was told, the clues and the runs.</summary>
/// <param name="of">The case.</param>
/// <param name="clues">Clues of facts, design, water and air.</param>
/// <param name="run">Clue of the runs; null without readings.</param>
/// <param name="isLevelRead">True where the level was read: then nobody needs to tell of a flood.</param>
internal sealed class Weighing(FaultCase of, IReadOnlyList<Clue> clues, Clue? run, bool isLevelRead)
{
    // Our tables are vaguer than what they describe: with these exponents stated chances come true as often
    // as
    // they say over invented tanks (bench/Faults; docs/handbook/fault-finding.md).
    private const double SymptomShare = 1.1;
    private const double ClueShare = 1.1;
    private const double RunShare = 1.1;
    private const double DeniedShare = 1.3;
    private const double MostDenied = 0.97;
    private const int MostReasons = 6;

    // A clue of this strength stands by itself, whatever the main cause is (own choice).
    private const double OwnStrength = 2.0;

    /// <summary>Chances of all causes; they sum to one.</summary>
    public Dictionary<Cause, double> Chances()
    {
        var logs = FaultMatrix.Rows.ToDictionary(
            r => r.Cause,
            r =>
                Math.Log(r.Weight)
                + (SymptomShare * Symptoms(r))
                + (ClueShare * clues.Sum(c => Math.Log(c.Factor(r.Cause))))
                + (run is null ? 0.0 : RunShare * Math.Log(run.Factor(r.Cause)))
        );
        var most = logs.Values.Max();
        var all = logs.Values.Sum(l => Math.Exp(l - most));
        return logs.ToDictionary(l => l.Key, l => Math.Exp(l.Value - most) / all);
    }

    private double Symptoms(CauseRow row) =>
        Enum.GetValues<Symptom>()
            .Where(s => !IsMeasured(s))
            .Sum(s =>
                of.Seen.Contains(s) ? Math.Log(row.Chance(s))
                // Who denies it has looked: more have a symptom than tell of it.
                : of.Denied.Contains(s) ? Math.Log(1.0 - Math.Min(MostDenied, DeniedShare * row.Chance(s)))
                : Math.Log(1.0 - row.Chance(s))
            );

    /// <summary>A cause with what speaks for and against it.</summary>
    public RankedCause Reasons(CauseRow row, double chance)
    {
        var cause = new RankedCause(row, chance);
        var all = FaultMatrix.Rows.Sum(r => r.Weight);
        double Usual(Symptom s) => FaultMatrix.Rows.Sum(r => r.Weight * r.Chance(s)) / all;
        var reasons = new List<(double Factor, string Text)>();
        foreach (var seen in of.Seen)
        {
            reasons.Add((cause.Row.Chance(seen) / Usual(seen), $"Told: {SymptomWords.Title(seen)}"));
        }

        foreach (var denied in of.Denied)
        {
            reasons.Add(
                (
                    (1 - cause.Row.Chance(denied)) / (1 - Usual(denied)),
                    $"Not so: {SymptomWords.Title(denied)}"
                )
            );
        }

        foreach (var symptom in Enum.GetValues<Symptom>().Where(s => cause.Row.Chance(s) >= 0.5))
        {
            if (!of.Seen.Contains(symptom) && !of.Denied.Contains(symptom) && !IsMeasured(symptom))
            {
                reasons.Add(
                    (1 - cause.Row.Chance(symptom), $"Usual with it, not told: {SymptomWords.Title(symptom)}")
                );
            }
        }

        reasons.AddRange(clues.Select(c => (c.Factor(cause.Row.Cause), c.Text)));
        // How the engine sees it is worth reading also where it tells this cause from few others.
        string[] witness = run is null ? [] : [run.TextFor(row.Cause)];
        var agrees = run is null || run.Factor(row.Cause) >= 0.85;
        return cause with
        {
            For =
            [
                .. reasons
                    .Where(r => r.Factor >= 1.15)
                    .OrderByDescending(r => r.Factor)
                    .Take(MostReasons)
                    .Select(r => r.Text),
                .. agrees ? witness : [],
            ],
            Against =
            [
                .. agrees ? [] : witness,
                .. reasons
                    .Where(r => r.Factor <= 0.85)
                    .OrderBy(r => r.Factor)
                    .Take(MostReasons)
                    .Select(r => r.Text),
            ],
        };
    }

    /// <summary>Causes with a strong clue of their own beside the main one.</summary>
    public ImmutableArray<string> Besides(Cause main) =>
        [
            .. FaultMatrix
                .Rows.Where(r => r.Cause != main && r.Cause != Cause.SomethingElse)
                .Where(r => of.Seen.Any(s => r.Chance(s) >= 0.2))
                .Select(r =>
                    (
                        Row: r,
                        Clue: clues.Where(c => c.Factor(r.Cause) >= OwnStrength).MaxBy(c => c.Factor(r.Cause))
                    )
                )
                .Where(r => r.Clue is not null && !IsWater(r.Row.Cause, main))
                .OrderByDescending(r => r.Clue!.Factor(r.Row.Cause))
                .Take(MostReasons)
                .Select(r => $"{r.Row.Title}: {char.ToLowerInvariant(r.Clue!.Text[0])}{r.Clue.Text[1..]}"),
        ];

    /// <summary>
    /// Clues of the level speak for every cause of too much water: they are no further cause.
    /// </summary>
    private bool IsWater(Cause cause, Cause main) =>
        FaultMatrix.Wet.Contains(cause)
        && FaultMatrix.Wet.Contains(main)
        && !(cause == Cause.VentsShut && of.Is(TankFact.VentTaped));

    private bool IsMeasured(Symptom symptom) =>
        isLevelRead
        && symptom == Symptom.Floods
        && !of.Seen.Contains(symptom)
        && !of.Denied.Contains(symptom);
}
