using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>The box in one season.</summary>
/// <param name="Name">When, e.g. "in July".</param>
/// <param name="First">First day of its run.</param>
/// <param name="Days">What the box shows.</param>
public sealed record ClimateSeason(string Name, DateOnly First, ClimateDays Days)
{
    /// <summary>Hours of dew a day on the worst pane.</summary>
    public double WorstFog => Days.Fog.Select(f => f.Hours).DefaultIfEmpty(0).Max();
}

/// <summary>
/// The climate of a box: from planting on, in the seasons that differ, and at the least and the most of what
/// nobody measures.
/// </summary>
public sealed record BoxClimate
{
    private const int ShortDays = 10;
    private const int ShortSettleDays = 3;
    private const double SameKelvin = 0.3;
    private const double SameRatio = 2e-4;

    /// <summary>
    /// What nobody measures, at its least and most: air exchanged, convection, lamp heat.
    /// </summary>
    private static readonly ClimateChange Tight = ClimateChange.None with
    {
        AirFlow = 0.6,
        Convection = 0.8,
        LampHeat = 0.8,
    };

    private static readonly ClimateChange Loose = ClimateChange.None with
    {
        AirFlow = 1.6,
        Convection = 1.25,
        LampHeat = 1.25,
    };

    /// <summary>The box.</summary>
    public required BoxRun Run { get; init; }

    /// <summary>From planting on, after its first week.</summary>
    public required ClimateDays Days { get; init; }

    /// <summary>The same with little air exchanged and with much.</summary>
    public required (ClimateDays Tight, ClimateDays Loose) Band { get; init; }

    /// <summary>The planting season first, then those that differ.</summary>
    public required ImmutableArray<ClimateSeason> Seasons { get; init; }

    /// <summary>Miss of the water ledger over the whole run, kg.</summary>
    public required double WaterMissKilograms { get; init; }

    /// <summary>Miss of the heat ledger, share of the heat of lamps or of what passed the panes.</summary>
    public required double HeatMissShare { get; init; }

    /// <summary>
    /// The climate of a design; null where the air is held or the floor has no curve.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="withBand">With the least and the most; else both are the run itself.</param>
    /// <param name="withSeasons">With the months that differ; else the weeks after planting alone.</param>
    public static BoxClimate? Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        bool withBand,
        bool withSeasons = true
    )
    {
        if (design.Design.Headspace is not null)
        {
            return null;
        }

        var first = BoxRun.FirstDay(design);
        if (Season(design, (box, layers), first, null, HeadspacePolicy.CheckDays) is not { } main)
        {
            return null;
        }

        var tight = !withBand ? null : Season(design, (box, layers), first, Tight, ShortDays);
        var loose = !withBand ? null : Season(design, (box, layers), first, Loose, ShortDays);
        var heat = main.Result.Heat;
        var throughput = Math.Max(Math.Abs(heat.Sources), Math.Abs(heat.Outside));
        return new BoxClimate
        {
            Run = main.Run,
            Days = main.Days,
            Band = (tight?.Days ?? main.Days, loose?.Days ?? main.Days),
            Seasons =
            [
                new ClimateSeason("after planting", first, main.Days),
                .. (withSeasons ? Differing(design) : [])
                    .Select(m =>
                        Season(design, (box, layers), m.First, null, ShortDays) is { } season
                            ? new ClimateSeason(m.Name, m.First, season.Days)
                            : null
                    )
                    .OfType<ClimateSeason>(),
            ],
            WaterMissKilograms = main.Result.Water.Miss,
            HeatMissShare = throughput > 0 ? heat.MissJoules / throughput : 0,
        };
    }

    /// <summary>What ten days of a design from a date on show; null where it cannot be run.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="first">First day.</param>
    internal static ClimateDays? Shortly(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        DateOnly first
    ) => Season(design, (box, layers), first, null, ShortDays)?.Days;

    private static (BoxRun Run, Physics.SimulationResult Result, ClimateDays Days)? Season(
        CheckedDesign design,
        (BoxGeometry Box, ImmutableArray<FloorLayer> Layers) floor,
        DateOnly first,
        ClimateChange? change,
        int days
    )
    {
        if (BoxRun.Of(design, floor.Box, floor.Layers, first, change) is not { } run)
        {
            return null;
        }

        var result = run.Through(days);
        return
            ClimateDays.Of(run, result, days > ShortDays ? HeadspacePolicy.SettleDays : ShortSettleDays)
                is { } found
            && result.StoppedEarly is null
            ? (run, result, found)
            : null;
    }

    /// <summary>
    /// The months with the warmest and the coolest hour and the driest air, each from a Monday on.
    /// </summary>
    private static IEnumerable<(string Name, DateOnly First)> Differing(CheckedDesign design)
    {
        if (design.Design.Room is not { Months: not null })
        {
            return [];
        }

        var year = BoxRun.FirstDay(design).Year;
        var room = RoomClimate.Of(design, new DateOnly(year, 1, 1), ClimateChange.None);
        var middles = Enumerable
            .Range(1, 12)
            .Select(m =>
            {
                var day = new DateOnly(year, m, 15);
                var noon = room.At(((day.DayOfYear - 1) * 86400.0) + (15 * 3600));
                var night = room.At(((day.DayOfYear - 1) * 86400.0) + (3 * 3600));
                return (Month: m, Day: day, Warm: noon.Celsius, Cool: night.Celsius, noon.HumidityRatio);
            })
            .ToList();
        var planted = middles[BoxRun.FirstDay(design).Month - 1];
        var chosen = new[]
        {
            middles.MaxBy(m => Math.Round(m.Warm, 3)),
            middles.MinBy(m => Math.Round(m.Cool, 3)),
            middles.MinBy(m => Math.Round(m.HumidityRatio, 6)),
        };
        return chosen
            .Where(m =>
                Math.Abs(m.Warm - planted.Warm) > SameKelvin
                || Math.Abs(m.Cool - planted.Cool) > SameKelvin
                || Math.Abs(m.HumidityRatio - planted.HumidityRatio) > SameRatio
            )
            .DistinctBy(m => m.Month)
            .Select(m =>
            {
                var monday = m.Day.AddDays(-(((int)m.Day.DayOfWeek + 6) % 7) - ShortSettleDays);
                var name = m.Day.ToString("MMMM", System.Globalization.CultureInfo.InvariantCulture);
                return ($"in {name}", monday);
            });
    }
}
