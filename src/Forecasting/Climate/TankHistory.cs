using System.Collections.Immutable;
using Litterfall.Physics.Coupling;
using Litterfall.Physics.Soil;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// A stretch of a tank's life with one way of running it: its design, and what is changed in it, from a day
/// on.
/// </summary>
/// <param name="From">Day at whose 00:00 it starts.</param>
/// <param name="Setup">The design as it was run then; the floor and the panes are those of the first.</param>
/// <param name="Change">What is changed.</param>
public sealed record TankSpan(DateOnly From, BoxSetup Setup, ClimateChange Change);

/// <summary>Water that went in or out by hand.</summary>
/// <param name="At">When, by the clock of the tank's room.</param>
/// <param name="Kilograms">Drawn off, kg, or all there is; less than 0 for poured in.</param>
/// <param name="DownToMeters">Level that it was drawn down to in place of an amount, m.</param>
public sealed record HandDraw(DateTime At, double Kilograms, double? DownToMeters = null);

/// <summary>
/// A tank's life as it went: spans that each go on from the state of the one before, and what was drawn off
/// and poured in by hand. Until a day it is drained only as noted; from then on as its design says.
/// </summary>
public sealed record TankHistory
{
    private const double HourSeconds = 3600;

    /// <summary>Spans by their day; the first starts the run.</summary>
    public required ImmutableArray<TankSpan> Spans { get; init; }

    /// <summary>By hand, in any order.</summary>
    public ImmutableArray<HandDraw> ByHand { get; init; } = [];

    /// <summary>
    /// Time from which someone watches the level and draws it off when it is due. Before it water leaves by
    /// hand only as noted.
    /// </summary>
    public DateTime Watched { get; init; } = DateTime.MinValue;

    /// <summary>
    /// Level at the start over soil that has drained to it, m; null to start as the design is planted.
    /// </summary>
    public double? StartLevelMeters { get; init; }

    /// <summary>How often air and floor exchange water.</summary>
    public SimulationPace Pace { get; init; } = SimulationPace.Hourly;

    /// <summary>First day.</summary>
    public DateOnly First => Spans[0].From;

    /// <summary>
    /// Runs it. Null where a floor has no water curve, or where the floor of a span is cut otherwise than
    /// that of the one before, so that its water cannot go over.
    /// </summary>
    /// <param name="hours">Hours from 00:00 of the first day.</param>
    /// <param name="start">State to go on from, of an earlier run of the same history; null to begin.</param>
    /// <param name="cancel">Cancels.</param>
    public TankRun? Run(int hours, SimulationState? start = null, CancellationToken cancel = default)
    {
        var parts = ImmutableArray.CreateBuilder<SimulationResult>(Spans.Length);
        var state = start;
        for (var i = 0; i < Spans.Length; i++)
        {
            var from = state is null ? 0 : (int)Math.Round(state.Air.Seconds / HourSeconds);
            var until = i + 1 < Spans.Length ? Math.Min(hours, HourOf(Spans[i + 1].From)) : hours;
            if (until <= from)
            {
                continue;
            }

            if (Box(Spans[i]) is not { } run)
            {
                return null;
            }

            if (state is not null && Joined(run, state) is null)
            {
                return null;
            }

            var begun = state is null ? Begun(run) : Joined(run, state)!;
            var result = Simulation.Run(run.Setup, begun, until - from, null, cancel);
            parts.Add(result);
            state = result.State;
            if (result.StoppedEarly is not null)
            {
                break;
            }
        }

        return new TankRun(parts.ToImmutable());
    }

    private SimulationState Begun(BoxRun run)
    {
        if (StartLevelMeters is not { } level)
        {
            return run.Start;
        }

        var columns = run.Floor.Columns;
        var most = columns.LowerBoundaryMeters(0);
        return run.Start with { Water = new WaterState(columns.AtRest(Math.Clamp(level, 0, most)), 0) };
    }

    private int HourOf(DateOnly day) => 24 * (day.DayNumber - First.DayNumber);

    private BoxRun? Box(TankSpan span)
    {
        if (BoxRun.From(span.Setup, First, span.Change, Pace) is not { } run)
        {
            return null;
        }

        var origin = First.ToDateTime(TimeOnly.MinValue);
        return run with
        {
            Setup = run.Setup with
            {
                Drain = run.Setup.Drain with { FromHour = Math.Max(0, (Watched - origin).TotalHours) },
                ByHand =
                [
                    .. ByHand.Select(h => new HandWater(
                        Math.Max(0, (h.At - origin).TotalHours),
                        h.Kilograms,
                        h.DownToMeters
                    )),
                ],
            },
        };
    }

    /// <summary>
    /// The state of the span before in the box of this one. Air that has other surfaces around it begins
    /// anew: it forgets within hours.
    /// </summary>
    private static SimulationState? Joined(BoxRun run, SimulationState before)
    {
        if (run.Start.Water.Column.HeadMeters.Length != before.Water.Column.HeadMeters.Length)
        {
            return null;
        }

        return
            run.Start.Air.Celsius.Length == before.Air.Celsius.Length
            && run.Start.Air.FilmKilograms.Length == before.Air.FilmKilograms.Length
            ? before
            : before with
            {
                Air = run.Start.Air with { Seconds = before.Air.Seconds },
            };
    }
}

/// <summary>A tank's life as it was run.</summary>
/// <param name="Parts">Runs of its spans in turn; each opens with the state that it began with.</param>
public sealed record TankRun(ImmutableArray<SimulationResult> Parts)
{
    /// <summary>Hours of all spans, opening with the start.</summary>
    public ImmutableArray<SimulationHour> Hours { get; } =
    [.. Parts.SelectMany((p, i) => i == 0 ? p.Hours : p.Hours.RemoveAt(0))];

    /// <summary>Events of all spans.</summary>
    public ImmutableArray<SimulationEvent> Events { get; } = [.. Parts.SelectMany(p => p.Events)];

    /// <summary>State at the end.</summary>
    public SimulationState State => Parts[^1].State;

    /// <summary>Why the numbers did not come out; null when they did.</summary>
    public string? StoppedEarly => Parts[^1].StoppedEarly;
}
