using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Running.Correcting;

/// <summary>What is compared.</summary>
public enum SightKind
{
    /// <summary>Level, mm.</summary>
    Level,

    /// <summary>Drawn off, mL.</summary>
    Drained,

    /// <summary>A nozzle, mL a minute.</summary>
    Mist,

    /// <summary>Weight, kg.</summary>
    Weight,

    /// <summary>Air, °C.</summary>
    Celsius,

    /// <summary>Humidity, %.</summary>
    Humidity,

    /// <summary>Water in the mix, m³/m³.</summary>
    Squeeze,
}

/// <summary>One number that a run can be compared with.</summary>
/// <param name="Kind">What.</param>
/// <param name="At">When, by the clock of the room.</param>
/// <param name="Hour">The hour of the run that it is compared with.</param>
/// <param name="Value">The number.</param>
/// <param name="Spread">Its standard error.</param>
public sealed record ReadingSight(SightKind Kind, DateTime At, int Hour, double Value, double Spread);

/// <summary>What a member assumes beside its change of the model.</summary>
/// <param name="Change">Its change of the model.</param>
/// <param name="Jug">Factor on amounts drawn off.</param>
/// <param name="TareKilograms">What the tank weighs over its water.</param>
public sealed record MemberInputs(ClimateChange Change, double Jug, double TareKilograms);

/// <summary>Readings of a tank as numbers that a run can be compared with.</summary>
public sealed class ReadingSights
{
    private readonly TankCase tank;
    private readonly ImmutableArray<int> soilNodes;
    private readonly double nozzle;

    /// <summary>The sights of a tank.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="plain">A run of its design that was made ready: where its soil lies.</param>
    public ReadingSights(TankCase tank, BoxRun plain)
    {
        this.tank = tank;
        var design = tank.Design.Design;
        nozzle = design.Misting is { } m ? Unit.MilliliterPerMinute.FromSi(m.Each.Si) : 0;
        var columns = plain.Floor.Columns;
        var (top, soil) = (plain.Floor.MossMeters[0], plain.Floor.SoilMeters[0]);
        soilNodes =
        [
            .. Enumerable
                .Range(0, columns.Nodes)
                .Where(n =>
                    columns.DepthMeters[n * columns.Zones] is var d && d >= top && d <= top + (0.7 * soil)
                ),
        ];
        All = [.. Collected()];
    }

    /// <summary>All that count.</summary>
    public ImmutableArray<ReadingSight> All { get; }

    /// <summary>What is no evidence, and why, in plain words.</summary>
    public ImmutableArray<string> Ignored { get; private set; } = [];

    private IEnumerable<ReadingSight> Collected()
    {
        var air = tank.Readings.Count(r => r is { Kind: ReadingKind.Air });
        var shared = Math.Sqrt(Math.Max(1, air / CorrectionPolicy.AirReadings.Value));
        var weighings = tank.Readings.Count(r => r.Kind == ReadingKind.Weight);
        var ignored = new List<string>();
        if (weighings == 1)
        {
            ignored.Add("One weighing alone says nothing about the water: weigh the tank again in a week.");
        }

        var drainedAt = -1;
        var sights = new List<ReadingSight>();
        foreach (var reading in tank.Readings)
        {
            var hour = Math.Max(0, (int)Math.Ceiling(tank.HourOf(reading.At) - 1e-6));
            drainedAt = reading.Kind == ReadingKind.Drained ? hour : drainedAt;
            var after = hour == drainedAt && reading.Kind != ReadingKind.Drained ? hour + 1 : hour;
            sights.AddRange(Of(reading, after, shared, ignored));
        }

        Ignored = [.. ignored];
        return sights;
    }

    private IEnumerable<ReadingSight> Of(TankReading reading, int hour, double shared, List<string> ignored)
    {
        ReadingSight One(SightKind kind, double value, double spread) =>
            new(kind, reading.At, hour, value, spread);
        switch (reading)
        {
            case { Kind: ReadingKind.Level, Amount: { } mm }:
                yield return One(SightKind.Level, mm, CorrectionPolicy.Level.Value);
                break;
            case { Kind: ReadingKind.Drained, Amount: > 0 and var ml }:
                var jug = Math.Max(CorrectionPolicy.LeastJug.Value, CorrectionPolicy.Jug.Value * ml);
                yield return One(SightKind.Drained, ml, jug);
                break;
            case { Kind: ReadingKind.Mist, Amount: { } flow } when nozzle > 0:
                yield return One(SightKind.Mist, flow, CorrectionPolicy.Nozzle.Value * nozzle);
                break;
            case { Kind: ReadingKind.Weight, Amount: { } kg }:
                yield return One(SightKind.Weight, kg, CorrectionPolicy.Weight.Value);
                break;
            case { Kind: ReadingKind.Squeeze, Amount: { } drops }:
                yield return One(SightKind.Squeeze, Water(drops), CorrectionPolicy.Squeeze.Value);
                break;
            case { Kind: ReadingKind.Air }:
                foreach (var sight in Air(reading, One, shared, ignored))
                {
                    yield return sight;
                }

                break;
            default:
                break;
        }
    }

    private IEnumerable<ReadingSight> Air(
        TankReading reading,
        Func<SightKind, double, double, ReadingSight> one,
        double shared,
        List<string> ignored
    )
    {
        if (tank.Design.Design.Headspace is not null)
        {
            const string held = "The design holds its air constant, so readings of the air change nothing.";
            if (!ignored.Contains(held))
            {
                ignored.Add(held);
            }

            yield break;
        }

        if (reading.Amount is { } celsius)
        {
            yield return one(SightKind.Celsius, celsius, CorrectionPolicy.Air.Value * shared);
        }

        if (reading.HumidityPercent is not { } percent)
        {
            yield break;
        }

        if (percent < CorrectionPolicy.Saturated.Value)
        {
            yield return one(SightKind.Humidity, percent, CorrectionPolicy.Humidity.Value * shared);
            yield break;
        }

        const string wet = "Humidity of 99 % and more is no evidence: a wet sensor shows it too.";
        if (!ignored.Contains(wet))
        {
            ignored.Add(wet);
        }
    }

    /// <summary>Water content for drops out of a fist.</summary>
    private double Water(double drops)
    {
        var ready = CorrectionPolicy.ReadyDrops.Value;
        return ReadyWater + (CorrectionPolicy.PerDrops.Value * Math.Log((1 + drops) / (1 + ready)));
    }

    private double ReadyWater =>
        tank.Spans[0].Setup.Layers.FirstOrDefault(l => l.SqueezeWater is not null && l.Finished.Si > 0)
            is { SqueezeWater: { } water } soil
            ? water.Si / soil.Finished.Si
            : UsualWater;

    // A dose of 0.36 of the volume gives a few drops (own worked example of a soil batch).
    private const double UsualWater = 0.36;

    /// <summary>What a run says for each reading.</summary>
    /// <param name="run">The run.</param>
    /// <param name="member">What it assumes.</param>
    public double[] Predict(TankRun run, MemberInputs member)
    {
        var content = All.Any(s => s.Kind == SightKind.Weight) ? Contents(run) : [];
        return
        [
            .. All.Select(sight =>
            {
                var hour = run.Hours[Math.Min(sight.Hour, run.Hours.Length - 1)];
                return sight.Kind switch
                {
                    SightKind.Level => 1000 * hour.LevelMeters,
                    SightKind.Drained => Drawn(run, sight, member),
                    SightKind.Mist => nozzle * member.Change.Mist,
                    SightKind.Weight => content[Math.Min(sight.Hour, content.Length - 1)]
                        + member.TareKilograms,
                    SightKind.Celsius => hour.AirMean,
                    SightKind.Humidity => 100 * hour.HumidityMean,
                    _ => soilNodes.Average(n => hour.WaterContent[n]),
                };
            }),
        ];
    }

    /// <summary>Amount noted, or the share of it that was there to draw.</summary>
    private static double Drawn(TankRun run, ReadingSight sight, MemberInputs member)
    {
        var drawn = run
            .Events.Where(e => e.Kind == "drawn" && Math.Abs(e.Hour - sight.Hour) < 0.5)
            .Sum(e => e.Kilograms);
        return Math.Min(sight.Value, 1000 * drawn / member.Jug);
    }

    /// <summary>Water gained since the start, hour by hour, kg.</summary>
    public static double[] Contents(TankRun run)
    {
        var content = new double[run.Hours.Length];
        for (var h = 1; h < content.Length; h++)
        {
            var hour = run.Hours[h];
            content[h] =
                content[h - 1]
                + hour.MistedKilograms
                + hour.ToppedUpKilograms
                - hour.VentedKilograms
                - hour.DrainedKilograms;
        }

        return content;
    }
}
