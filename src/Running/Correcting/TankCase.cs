using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Running.Correcting;

/// <summary>A tank that was run in one way from a day on.</summary>
/// <param name="From">Day at whose 00:00 it starts.</param>
/// <param name="Setup">The design as it was run then.</param>
public sealed record RunAs(DateOnly From, BoxSetup Setup);

/// <summary>What is known of a tank: how it was run, what was read, and what was poured in.</summary>
public sealed record TankCase
{
    private const int LongestDays = 400;
    private const int LeadDays = 14;

    /// <summary>How it was run, by days; the first starts it.</summary>
    public required ImmutableArray<RunAs> Spans { get; init; }

    /// <summary>Readings in the order of time, by the clock of its room.</summary>
    public required ImmutableArray<TankReading> Readings { get; init; }

    /// <summary>Poured in by hand: amounts less than 0, kg.</summary>
    public ImmutableArray<HandDraw> Poured { get; init; } = [];

    /// <summary>Level at the start where it does not start with its planting, m.</summary>
    public double? StartLevelMeters { get; init; }

    /// <summary>How often air and floor exchange water in its runs.</summary>
    public SimulationPace Pace { get; init; } = Brisk;

    /// <summary>
    /// Six hours between exchanges, and a settled day of the air for up to five: tenths of a millimeter of
    /// level in two months, for a fifth of the work.
    /// </summary>
    public static readonly SimulationPace Brisk = new(6, 5);

    /// <summary>Day 0.</summary>
    public DateOnly First => Spans[0].From;

    /// <summary>The design as it is run last.</summary>
    public CheckedDesign Design => Spans[^1].Setup.Design;

    /// <summary>
    /// A tank that was run as its design says. Where its readings begin long after its planting, it starts
    /// two weeks before the first of them, or with the first level where there is one.
    /// </summary>
    /// <param name="setup">Its design.</param>
    /// <param name="readings">Readings.</param>
    /// <param name="from">Day 0; its planting if left out.</param>
    public static TankCase From(BoxSetup setup, ImmutableArray<TankReading> readings, DateOnly? from = null)
    {
        var planted = from ?? BoxRun.FirstDay(setup.Design);
        var sorted = readings.OrderBy(r => r.At).ToImmutableArray();
        var first = sorted.IsEmpty ? planted : DateOnly.FromDateTime(sorted[0].At);
        if (
            sorted.IsEmpty
            || DateOnly.FromDateTime(sorted[^1].At).DayNumber - planted.DayNumber <= LongestDays
        )
        {
            return new() { Spans = [new(planted, setup)], Readings = sorted };
        }

        var level = sorted.FirstOrDefault(r => r.Kind == ReadingKind.Level);
        var start = level is null ? first.AddDays(-LeadDays) : DateOnly.FromDateTime(level.At);
        return new()
        {
            Spans = [new(start, setup)],
            Readings = [.. sorted.Where(r => DateOnly.FromDateTime(r.At) >= start)],
            StartLevelMeters = level is { Amount: { } mm }
                ? mm / 1000
                : setup.Design.Design.Start?.Level.Si ?? 0,
        };
    }

    /// <summary>Level at which someone draws it off, mm over the base; null where nobody does.</summary>
    public double? DrainMillimeters =>
        Spans[^1].Setup.Floor
            is { IsDrainedByHand: true, HighestLevelMeters: < double.PositiveInfinity and var at }
            ? 1000 * at
            : null;

    /// <summary>Hours from the start to a time, a full hour as a rule.</summary>
    internal double HourOf(DateTime at) => (at - First.ToDateTime(TimeOnly.MinValue)).TotalHours;

    /// <summary>The last hour that a reading tells of; 0 without.</summary>
    internal int LastHour =>
        Readings.IsEmpty ? 0 : Math.Max(0, (int)Math.Ceiling(HourOf(Readings[^1].At) - 1e-6));

    /// <summary>The tank's life with changed inputs.</summary>
    /// <param name="change">What is changed.</param>
    /// <param name="jug">Factor on the amounts drawn off, as far as a jug may be off.</param>
    public TankHistory History(ClimateChange change, double jug = 1) =>
        new()
        {
            Spans = [.. Spans.Select(s => new TankSpan(s.From, s.Setup, change))],
            ByHand =
            [
                .. Readings
                    .Where(r => r is { Kind: ReadingKind.Drained, Amount: > 0 })
                    .Select(r => new HandDraw(r.At, jug * r.Amount!.Value / 1000)),
                .. Poured,
            ],
            Watched = First.ToDateTime(TimeOnly.MinValue).AddHours(LastHour),
            StartLevelMeters = StartLevelMeters,
            Pace = Pace,
        };
}
