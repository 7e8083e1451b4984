using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;
using Litterfall.Running.Correcting;

namespace Litterfall.UnitTests.Running.Correcting;

/// <summary>How well a correction did on one tank whose truth is known.</summary>
internal sealed record SyntheticScore
{
    /// <summary>Level at the last reading: miss of the mean, mm.</summary>
    public required double LevelMiss { get; init; }

    /// <summary>Miss of the same without readings, mm.</summary>
    public required double LevelMissBefore { get; init; }

    /// <summary>What the level rises in a day of the true run, mm.</summary>
    public required double DayGain { get; init; }

    /// <summary>
    /// Whether the bands held the true level at the last reading, and one and two weeks later.
    /// </summary>
    public required ImmutableArray<bool> LevelHeld { get; init; }

    /// <summary>Whether the band of the next drain held the true day.</summary>
    public required bool DrainHeld { get; init; }

    /// <summary>Miss of the next drain, days; null where none comes or none was told.</summary>
    public required double? DrainMiss { get; init; }

    /// <summary>The same without readings.</summary>
    public required double? DrainMissBefore { get; init; }

    /// <summary>Whether the band of each input held the truth.</summary>
    public required ImmutableArray<bool> InputHeld { get; init; }

    /// <summary>Width of the band of the next drain, days, before and after.</summary>
    public required (double Before, double After) Width { get; init; }
}

/// <summary>
/// A tank whose true inputs are drawn from what is known before any reading, whose life is run hour by hour,
/// and of which noisy readings are taken.
/// </summary>
internal sealed class SyntheticTank
{
    private const int AfterDays = 60;
    private readonly Random random;
    private readonly BoxSetup setup;
    private readonly ClimateChange truth;
    private readonly double[] standard;
    private readonly ImmutableArray<UncertainInput> inputs;

    public SyntheticTank(BoxSetup setup, int seed)
    {
        this.setup = setup;
        random = new Random(seed);
        inputs = UncertainInputs.From(setup.Design, setup.Floor!.Columns.DrainageMeters > 0);
        standard = [.. inputs.Select(_ => Normal())];
        truth = ClimateChange.None;
        for (var i = 0; i < inputs.Length; i++)
        {
            truth = inputs[i].Put(truth, inputs[i].Value(standard[i]));
        }
    }

    /// <summary>Errors of readings as the policy states them.</summary>
    public double LevelNoise { get; init; } = CorrectionPolicy.Level.Value;

    /// <summary>Days on which the level is read at nine in the morning.</summary>
    public required int[] LookDays { get; init; }

    /// <summary>True to draw all water off and measure it right after the last but one reading.</summary>
    public bool IsDrainedBetween { get; init; }

    /// <summary>True to measure a nozzle, and the air, beside the last reading.</summary>
    public bool HasMore { get; init; }

    /// <summary>Readings and their score.</summary>
    public SyntheticScore Score(CorrectionWish wish)
    {
        var first = BoxRun.FirstDay(setup.Design);
        var midnight = first.ToDateTime(TimeOnly.MinValue);
        var last = (24 * LookDays[^1]) + 9;
        var drainAt = IsDrainedBetween ? (24 * LookDays[^2]) + 10 : -1;
        var history = new TankHistory
        {
            Spans = [new(first, setup, truth)],
            ByHand = drainAt > 0 ? [new(midnight.AddHours(drainAt), 0, 0)] : [],
            Watched = midnight.AddHours(last),
        };
        var days = LookDays[^1] + 1 + AfterDays;
        var run = history.Run(24 * days)!;
        var readings = Readings(run, midnight, drainAt);
        var corrected = Corrector.Run(TankCase.From(setup, readings), wish with { Days = days })!;
        return Scored(run, corrected, last);
    }

    private List<TankReading> Levels(TankRun run, DateTime midnight) =>
        [
            .. LookDays.Select(day => new TankReading
            {
                At = midnight.AddHours((24 * day) + 9),
                Kind = ReadingKind.Level,
                Amount = Math.Max(
                    0,
                    (1000 * run.Hours[(24 * day) + 9].LevelMeters) + (LevelNoise * Normal())
                ),
            }),
        ];

    private ImmutableArray<TankReading> Readings(TankRun run, DateTime midnight, int drainAt)
    {
        var readings = Levels(run, midnight);
        if (run.Events.FirstOrDefault(e => e.Kind == "drawn") is { Kilograms: > 0.05 } drawn)
        {
            readings.Add(
                new()
                {
                    At = midnight.AddHours(drainAt),
                    Kind = ReadingKind.Drained,
                    Amount = 1000 * drawn.Kilograms * (1 + (CorrectionPolicy.Jug.Value * Normal())),
                }
            );
        }

        var last = (24 * LookDays[^1]) + 9;
        if (HasMore && setup.Design.Design.Misting is { } misting)
        {
            var flow = misting.Each.Si * 6e7;
            readings.Add(
                new()
                {
                    At = midnight.AddHours(last),
                    Kind = ReadingKind.Mist,
                    Amount = flow * (truth.Mist + (CorrectionPolicy.Nozzle.Value * Normal())),
                }
            );
            readings.Add(
                new()
                {
                    At = midnight.AddHours(last),
                    Kind = ReadingKind.Air,
                    Amount = run.Hours[last].AirMean + (CorrectionPolicy.Air.Value * Normal()),
                    HumidityPercent = Math.Clamp(
                        (100 * run.Hours[last].HumidityMean) + (CorrectionPolicy.Humidity.Value * Normal()),
                        0,
                        100
                    ),
                }
            );
        }

        return [.. readings];
    }

    private SyntheticScore Scored(TankRun run, TankCorrection corrected, int last)
    {
        double True(int hour) => 1000 * run.Hours[hour].LevelMeters;
        bool Held(int hour) =>
            True(hour) >= corrected.After.Level.Low[hour] - Rounding
            && True(hour) <= corrected.After.Level.High[hour] + Rounding;
        var drain = run.Events.FirstOrDefault(e => e.Kind == "drain" && e.Hour >= last) is { Kind: "drain" } d
            ? d.Hour / 24
            : double.PositiveInfinity;
        var (before, after) = (corrected.Before.NextDrain, corrected.After.NextDrain);
        double? Miss(DayBand? band) =>
            band is not null && double.IsFinite(drain) ? Math.Abs(band.Day - drain) : null;
        double Wide(DayBand? band) => (band?.High ?? corrected.Days) - (band?.Low ?? 0);
        return new()
        {
            LevelMiss = Math.Abs(True(last) - corrected.After.Level.Millimeters[last]),
            LevelMissBefore = Math.Abs(True(last) - corrected.Before.Level.Millimeters[last]),
            DayGain = Math.Abs(True(last) - True(last - 72)) / 3,
            LevelHeld = [Held(last), Held(last + (7 * 24)), Held(last + (14 * 24))],
            DrainHeld = after is null
                ? double.IsInfinity(drain)
                : drain >= after.Low - QuarterDay
                    && drain <= (after.High ?? double.PositiveInfinity) + QuarterDay,
            DrainMiss = Miss(after),
            DrainMissBefore = Miss(before),
            InputHeld =
            [
                .. inputs.Select(
                    (input, i) =>
                    {
                        var value = input.Scale * input.Value(standard[i]);
                        var band = corrected.After.Parameters[i];
                        return value >= band.Low && value <= band.High;
                    }
                ),
            ],
            Width = (Wide(before), Wide(after)),
        };
    }

    // A level of nothing lies in a band of nothing; a drain falls into the quarter day of an exchange.
    private const double Rounding = 0.05;
    private const double QuarterDay = 0.25;

    /// <summary>A standard normal number (Box and Muller 1958).</summary>
    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
