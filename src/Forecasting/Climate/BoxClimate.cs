using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;

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
    private const int ShortDays = HeadspacePolicy.ShortDays;
    private const int ShortSettleDays = HeadspacePolicy.ShortSettleDays;
    private const double SameKelvin = 0.3;
    private const double SameRatio = 2e-4;

    /// <summary>
    /// What nobody measures, at its least and most: air exchanged, convection, lamp heat.
    /// </summary>
    private static (ClimateChange Tight, ClimateChange Loose) Ends(HeadspaceCoefficients with)
    {
        ClimateChange End(Func<Coefficient, double> of) =>
            ClimateChange.None with
            {
                AirFlow = of(with.AirFlow) / with.AirFlow.Number,
                Convection = of(with.Convection) / with.Convection.Number,
                LampHeat = of(with.LampHeat) / with.LampHeat.Number,
            };
        return (End(c => c.Range!.Value.Low), End(c => c.Range!.Value.High));
    }

    /// <summary>The box.</summary>
    public required BoxRun Run { get; init; }

    /// <summary>From planting on, after its first week.</summary>
    public required ClimateDays Days { get; init; }

    /// <summary>The same with little air exchanged and with much; the run itself without a band.</summary>
    public (ClimateDays Tight, ClimateDays Loose) Band => LazyBand?.Value ?? (Days, Days);

    /// <summary>The planting season first, then those that differ.</summary>
    public ImmutableArray<ClimateSeason> Seasons =>
        LazySeasons?.Value ?? [new ClimateSeason("after planting", Run.First, Days)];

    private Lazy<(ClimateDays Tight, ClimateDays Loose)>? LazyBand { get; init; }

    private Lazy<ImmutableArray<ClimateSeason>>? LazySeasons { get; init; }

    /// <summary>What the water balance misses over the whole run, kg.</summary>
    public required double WaterBalanceErrorKilograms { get; init; }

    /// <summary>What the heat balance misses, of the heat of lamps or of what passed the panes.</summary>
    public required double HeatBalanceErrorShare { get; init; }

    /// <summary>
    /// The climate of a design; null where the air is held or the floor has no curve. Bands and seasons are
    /// run when they are first asked for.
    /// </summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="isBrief">Over a few days, to compare many of them.</param>
    public static BoxClimate? From(BoxSetup setup, bool isBrief = false)
    {
        if (setup.Design.Design.Headspace is not null)
        {
            return null;
        }

        var first = BoxRun.FirstDay(setup.Design);
        var days = isBrief ? HeadspacePolicy.BriefDays : HeadspacePolicy.CheckDays;
        if (Season(setup, first, null, days) is not { } main)
        {
            return null;
        }

        var ends = Ends(ModelCoefficients.Of(setup.Design).Headspace);
        var heat = main.Result.Heat;
        var throughput = Math.Max(Math.Abs(heat.Sources), Math.Abs(heat.Outside));
        return new BoxClimate
        {
            Run = main.Run,
            Days = main.Days,
            LazyBand = new(() =>
                (
                    Season(setup, first, ends.Tight, ShortDays)?.Days ?? main.Days,
                    Season(setup, first, ends.Loose, ShortDays)?.Days ?? main.Days
                )
            ),
            LazySeasons = new(() =>
                [
                    new ClimateSeason("after planting", first, main.Days),
                    .. Differing(setup.Design)
                        .Select(m =>
                            Season(setup, m.First, null, ShortDays) is { } season
                                ? new ClimateSeason(m.Name, m.First, season.Days)
                                : null
                        )
                        .OfType<ClimateSeason>(),
                ]
            ),
            WaterBalanceErrorKilograms = main.Result.Water.BalanceError,
            HeatBalanceErrorShare = throughput > 0 ? heat.BalanceErrorJoules / throughput : 0,
        };
    }

    /// <summary>The same without its band.</summary>
    public BoxClimate WithoutBand() => this with { LazyBand = null };

    /// <summary>The weeks after planting alone, without band and seasons.</summary>
    public BoxClimate MonthAlone() => this with { LazyBand = null, LazySeasons = null };

    /// <summary>What ten days of a design from a date on show; null where it cannot be run.</summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="first">First day.</param>
    public static ClimateDays? Shortly(BoxSetup setup, DateOnly first) =>
        Season(setup, first, null, ShortDays)?.Days;

    private static (BoxRun Run, Physics.Coupling.SimulationResult Result, ClimateDays Days)? Season(
        BoxSetup setup,
        DateOnly first,
        ClimateChange? change,
        int days
    )
    {
        if (BoxRun.From(setup, first, change) is not { } run)
        {
            return null;
        }

        var result = run.Through(days, null, setup.Cancel);
        return ClimateDays.Of(run, result, Settle(days)) is { } found && result.StoppedEarly is null
            ? (run, result, found)
            : null;
    }

    private static int Settle(int days) =>
        days > ShortDays ? HeadspacePolicy.SettleDays
        : days < ShortDays ? HeadspacePolicy.BriefSettleDays
        : ShortSettleDays;

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
