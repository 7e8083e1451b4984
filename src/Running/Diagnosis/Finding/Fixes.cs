using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>What to do against a cause, tried in the engine.</summary>
/// <param name="Changes">Each change, in words.</param>
/// <param name="LevelMillimetersAfterMonth">Level after thirty days with them, mm over the base.</param>
/// <param name="Text">What else to know.</param>
public sealed record FixPlan(ImmutableArray<string> Changes, double? LevelMillimetersAfterMonth, string Text);

/// <summary>Works out fixes and runs them for a month from the report on.</summary>
/// <param name="of">The case.</param>
/// <param name="runs">Its runs.</param>
/// <param name="trials">What they gave; null where the floor has no curve.</param>
/// <param name="floor">The floor in numbers; null with the runs.</param>
public sealed class Fixes(FaultCase of, TrialRuns runs, TrialSet? trials, FloorState? floor)
{
    private const int Month = 30;
    private const double SiphonedMillimeters = 10;
    private const double StillMillimeters = 3;

    /// <summary>
    /// Air changes an hour of a front vent that is open again (common practice, 1 to 4 an hour).
    /// </summary>
    private const double OpenChangesPerHour = 4;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>The fix of a cause.</summary>
    public FixPlan Plan(Cause cause)
    {
        var (changes, text) = FixTexts.Find(cause);
        if (trials is null || floor is null)
        {
            return new FixPlan(
                changes.IsEmpty ? ["Bring mist and ventilation into balance"] : changes,
                null,
                text
            );
        }

        return cause switch
        {
            Cause.OverMisting or Cause.VentsShut => Balanced(floor, text),
            Cause.NotDrained => Drained(floor, text),
            Cause.DryAir => Damper(text),
            _ => new FixPlan(changes, Level(Now(floor), AsRun(), IsWet(cause)), text),
        };
    }

    private static bool IsWet(Cause cause) => FaultMatrix.Wet.Contains(cause) || cause == Cause.FineMix;

    /// <summary>Level of the last reading, else as the run as set ends, mm.</summary>
    private double Now(FloorState state)
    {
        var read = of.Readings.LastOrDefault(r => r.Kind == Domain.Tanks.ReadingKind.Level)?.Amount;
        var computed = trials!.AsSet.LevelMillimeters(24.0 * trials.Days);
        return Math.Min(read ?? computed, state.BarrierMillimeters + 200);
    }

    private ClimateChange AsRun()
    {
        var change = ClimateChange.None with { IsDrained = false };
        return runs.IsTaped ? Trial.Aired(change, TrialRuns.TapedShare) : change;
    }

    private double? Level(double from, ClimateChange change, bool isSiphoned = false) =>
        runs.Ahead(isSiphoned ? Math.Min(from, SiphonedMillimeters) : from, change, Month) is { } run
            ? Math.Round(run.LevelMillimeters(24.0 * Month), 1)
            : null;

    /// <summary>Siphon, open the vents, and mist what leaves.</summary>
    private FixPlan Balanced(FloorState state, string text)
    {
        var changes = ImmutableArray.CreateBuilder<string>();
        var now = Now(state);
        if (now > SiphonedMillimeters + StillMillimeters)
        {
            var water = state.MillilitersPerMillimeter is { } per
                ? string.Create(
                    Plain,
                    $" (about {Siphoned(now, state) * per / 1000:0.0} L now; more comes as the soil drains)"
                )
                : "";
            changes.Add($"Siphon the water down to 1 cm{water}");
        }

        var (air, opened) = Opened();
        if (opened.Length > 0)
        {
            changes.Add(opened);
        }

        var start = Math.Min(now, SiphonedMillimeters);
        var (mist, level) = Steady(state, air, start);
        if (MistWords.Less(of.Design.Design.Misting, mist) is { } words)
        {
            changes.Add(words.Text);
            level = Level(start, air with { Mist = words.Factor });
        }

        return new FixPlan(changes.ToImmutable(), level, text);
    }

    /// <summary>Height of water in the drainage layer that a hose takes at once, mm.</summary>
    private static double Siphoned(double level, FloorState state) =>
        Math.Max(0.0, Math.Min(level, state.BarrierMillimeters) - SiphonedMillimeters);

    /// <summary>The air with vents as they should be, and what is done for it.</summary>
    private (ClimateChange Air, string Words) Opened()
    {
        var none = ClimateChange.None with { IsDrained = false };
        if (of.Design.Design.Headspace is { Hold: { } held })
        {
            var changes = 3600.0 * held.AirChanges.Si;
            return changes < TrialRuns.TapedChangesPerHour
                ? (
                    Trial.Aired(none, OpenChangesPerHour / Math.Max(changes, 0.01)),
                    string.Create(
                        Plain,
                        $"Open the front vent again (about {OpenChangesPerHour:0} air changes an "
                            + $"hour instead of {changes:0.#})"
                    )
                )
                : (none, "");
        }

        return of.Is(TankFact.VentTaped)
            ? (none, "Take the tape off and open the vents as designed")
            : (none, "");
    }

    /// <summary>The share of the mist with which the level stays, and the level after a month.</summary>
    private (double Mist, double? Level) Steady(FloorState state, ClimateChange air, double start)
    {
        var mist = 1.0;
        double? level = null;
        for (var attempt = 0; attempt < 4; attempt++)
        {
            level = Level(start, air with { Mist = mist });
            if (level is not { } end || end - start <= StillMillimeters || mist <= 0.05)
            {
                break;
            }

            var run = runs.Ahead(start, air with { Mist = mist }, Month)!;
            var surplus =
                1e3
                * (
                    run.Result.Hours.Sum(h => h.MistedKilograms)
                    - run.Result.Hours.Sum(h => h.VentedKilograms)
                )
                / Month;
            mist = Math.Clamp(mist - Math.Max(surplus, 5.0) / Math.Max(state.Misted, 1.0), 0.05, 1.0);
        }

        return (mist, level);
    }

    private FixPlan Drained(FloorState state, string text)
    {
        var days = state.FillDays is { } fill ? Math.Max(1, (int)Math.Floor(0.8 * fill)) : (int?)null;
        var water = state.MillilitersPerMillimeter is { } per
            ? string.Create(Plain, $" (about {Siphoned(Now(state), state) * per / 1000:0.0} L)")
            : "";
        ImmutableArray<string> changes =
        [
            $"Siphon the water down to 1 cm now{water}",
            days is { } d
                ? $"Read the level every week and siphon every {d} days"
                : "Read the level every week",
        ];
        return new FixPlan(changes, Level(SiphonedMillimeters, AsRun() with { IsDrained = true }), text);
    }

    private FixPlan Damper(string text)
    {
        var half = Trial.Aired(ClimateChange.None with { IsDrained = false }, 0.4);
        var now = Now(floor!);
        var before = trials!.LastHumidity();
        var run = runs.Ahead(now, half, Month);
        var after = run is null ? (double?)null : 100 * run.LastDays(3).Average(h => h.HumidityMean);
        var gain = after is { } damp
            ? string.Create(Plain, $" (computed: {damp:0} % instead of {before:0} % humidity)")
            : "";
        return new FixPlan(
            [$"Close some of the vents or cover the mesh, so that four tenths of the air are left{gain}"],
            run is null ? null : Math.Round(run.LevelMillimeters(24.0 * Month), 1),
            text
        );
    }
}
