using System.Globalization;
using Litterfall.Forecasting.Water;
using Litterfall.Quantities.Sizing;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>The water of the floor in numbers.</summary>
public sealed record FloorState
{
    /// <summary>Foot of the soil over the base, mm; 0 without a drainage layer.</summary>
    public required double BarrierMillimeters { get; init; }

    /// <summary>Water for each mm of level in the drainage layer, mL; null without one.</summary>
    public required double? MillilitersPerMillimeter { get; init; }

    /// <summary>Days from an empty layer to the barrier as set; null where it never fills.</summary>
    public double? FillDays { get; init; }

    /// <summary>mL misted a day as set.</summary>
    public double Misted { get; init; }

    /// <summary>mL the air takes a day as set.</summary>
    public double Vented { get; init; }

    /// <summary>mL the air takes a day with vents as open as usual.</summary>
    public double VentedOpen { get; init; }

    /// <summary>Reads a case and its runs.</summary>
    public static FloorState From(TrialRuns runs, TrialSet trials)
    {
        var setup = runs.Setup;
        var drainage = setup.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        var barrier = drainage is null ? 0.0 : 1000.0 * drainage.Depth.Si;
        var per = WaterBalance.Of(setup.Design, setup.Headspace, setup.Layers).PerLevel?.Si * 1e3;
        var (misted, vented) = (trials.MistedPerDay, trials.VentedPerDay());
        return new FloorState
        {
            BarrierMillimeters = barrier,
            MillilitersPerMillimeter = per,
            FillDays = per is { } p && misted - vented > 1.0 ? barrier * p / (misted - vented) : null,
            Misted = misted,
            Vented = vented,
            VentedOpen = trials.VentedPerDay(Supposed.MoreAir),
        };
    }

    /// <summary>mL gained a day as set.</summary>
    public double Gain => Misted - Vented;
}

/// <summary>Clues of the water balance and of the level.</summary>
public static class WaterClues
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;
    private static readonly Cause[] Dry = [Cause.DryAir, Cause.MistFails, Cause.CrewDried, Cause.TankLeaks];

    /// <summary>Clues of a case.</summary>
    public static IEnumerable<Clue> From(FaultCase of, TrialRuns runs, TrialSet trials, FloorState floor)
    {
        foreach (var clue in Balance(of, runs, floor))
        {
            yield return clue;
        }

        if (
            floor.BarrierMillimeters > 0
            && new Fit(of, trials, new AirSeen()).LastLevel is { Amount: { } level } last
        )
        {
            yield return Level(level, DateOnly.FromDateTime(last.At), floor.BarrierMillimeters);
        }

        if (floor.BarrierMillimeters is > 0 and < 30)
        {
            yield return Clue.Create(
                string.Create(Plain, $"The drainage layer is only {floor.BarrierMillimeters:0} mm deep"),
                (Cause.ThinDrainage, 5.0)
            );
        }
        else if (floor.BarrierMillimeters >= 40)
        {
            yield return Clue.Create(
                string.Create(Plain, $"The drainage layer is {floor.BarrierMillimeters:0} mm deep"),
                (Cause.ThinDrainage, 0.35)
            );
        }
    }

    private static Clue Level(double level, DateOnly day, double barrier)
    {
        var on = day.ToString("MMM d", Plain);
        var over = level - barrier;
        if (over >= -5)
        {
            return Clue.Create(
                    over >= 0
                        ? string.Create(Plain, $"On {on} the water stood {over:0} mm above the barrier")
                        : string.Create(Plain, $"On {on} the water stood just below the barrier"),
                    (Cause.FineMix, 1.5)
                )
                .With(6.0, FaultMatrix.Wet)
                .With(0.05, Dry);
        }

        return over <= -15
            ? Clue.Create(
                    string.Create(Plain, $"On {on} the water stood {-over:0} mm below the barrier"),
                    (Cause.FineMix, 1.3)
                )
                .With(0.15, FaultMatrix.Wet)
            : Clue.Create(string.Create(Plain, $"On {on} the water stood near the barrier"))
                .With(1.5, FaultMatrix.Wet);
    }

    private static IEnumerable<Clue> Balance(FaultCase of, TrialRuns runs, FloorState floor)
    {
        var sum = string.Create(
            Plain,
            $"Misting adds {floor.Misted:0} mL a day, ventilation removes {floor.Vented:0}"
        );
        if (floor.Misted < 5.0)
        {
            yield return Clue.Create(
                "Nothing is misted, by the design",
                (Cause.OverMisting, 0.1),
                (Cause.DryAir, 2.0)
            );
            yield break;
        }

        var ratio = floor.Misted / Math.Max(floor.Vented, 5.0);
        if (ratio > 1.3)
        {
            // With open vents the same mist would still stay, or it would not: that tells mist from vents.
            var stays = floor.Misted > 1.3 * floor.VentedOpen;
            yield return Clue.Create(
                sum
                    + (
                        stays
                            ? "; even with three times the air more would stay than leave"
                            : "; with three times the air it would leave"
                    ),
                (Cause.OverMisting, stays ? Math.Min(5.0, ratio) : 2.0),
                (Cause.VentsShut, stays ? 1.2 : 3.0),
                (Cause.NotDrained, 1.5),
                (Cause.ThinDrainage, 1.5),
                (Cause.DryAir, 0.3)
            );
            yield return Filling(of, runs, floor);
        }
        else if (ratio < 0.9)
        {
            yield return Clue.Create(
                sum,
                (Cause.DryAir, 2.5),
                (Cause.CrewDried, 1.5),
                (Cause.OverMisting, 0.2),
                (Cause.NotDrained, 0.1),
                (Cause.ThinDrainage, 0.15)
            );
        }
        else
        {
            yield return Clue.Create(
                $"{sum}: about even",
                (Cause.OverMisting, 0.5),
                (Cause.NotDrained, 0.4),
                (Cause.ThinDrainage, 0.4)
            );
        }
    }

    private static Clue Filling(FaultCase of, TrialRuns runs, FloorState floor)
    {
        var isDrained = of.Facts.Any(f => f.Fact == TankFact.LastDrain);
        var days = runs.Reported.DayNumber - (of.Day(TankFact.LastDrain)?.DayNumber ?? runs.First.DayNumber);
        if (floor.FillDays is not { } fill)
        {
            return Clue.Create("There is no drainage layer that could fill");
        }

        var text = string.Create(Plain, $"As set, the drainage fills in about {fill:0} days");
        return fill switch
        {
            < 14 => Clue.Create(text, (Cause.OverMisting, 2.0), (Cause.NotDrained, 0.5)),
            > 21 when isDrained && days > 1.2 * fill => Clue.Create(
                $"{text}, and it was last drained {days} days ago",
                (Cause.NotDrained, 4.0),
                (Cause.OverMisting, 0.6)
            ),
            > 30 => Clue.Create(text, (Cause.NotDrained, 2.0), (Cause.OverMisting, 0.5)),
            _ => Clue.Create(text, (Cause.NotDrained, 1.2)),
        };
    }
}
