using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;

namespace Litterfall.Forecasting.Climate;

/// <summary>The climate of the box as part of the report.</summary>
public static class ClimateReport
{
    private const string NoClimate = "the climate needs a floor with a soil whose water curve is known";
    private const string Held = "the headspace is held, so it has no band";
    private const string NeverFogs = "the panes fog in no room that people live in";
    private const string Computed = "computed hour by hour; told only where the headspace is held";

    /// <summary>The part of the report.</summary>
    public static ReportNode Write(ClimateFigures? climate)
    {
        if (climate is null)
        {
            return new ReportAbsent(NoClimate);
        }

        List<(string, ReportNode)> rows = [("assumes", new ReportText(Assumes(climate)))];
        Add(rows, "airCMin", climate.AirMin, Unit.Celsius);
        Add(rows, "airCMean", climate.AirMean, Unit.Celsius);
        Add(rows, "airCMax", climate.AirMax, Unit.Celsius);
        Add(rows, "humidityPercentMin", climate.HumidityMin, Unit.Percent);
        Add(rows, "humidityPercentMean", climate.HumidityMean, Unit.Percent);
        Add(rows, "humidityPercentMax", climate.HumidityMax, Unit.Percent);
        Add(rows, "airChangesPerHourMean", climate.AirChanges, Unit.PerHour);
        rows.Add(("evaporatedMlPerDay", Maybe(climate.Evaporated, Unit.Milliliter, Held)));
        rows.Add(("vapourDeficitKPaMax", new ReportNumber(climate.DeficitMax, Unit.Kilopascal)));
        rows.Add(("dewMarginKMin", new ReportNumber(climate.DewMargin, Unit.Kelvin)));
        rows.Add(("fogHoursPerDay", Fog(climate)));
        rows.Add(("wetHoursPerDay", Panes(climate.Wet)));
        AddFog(rows, climate);
        rows.Add(
            (
                "leafWetHoursPerDay",
                Maybe(climate.LeafWet, Unit.Hour, "there are no leaves, or the air is held")
            )
        );
        rows.Add(("paneInsideC", Maybe(climate.PaneInside, Unit.Celsius, Computed)));
        rows.Add(("dewPointC", Maybe(climate.DewPoint, Unit.Celsius, Computed)));
        rows.Add(("clearsBelowHumidityPercent", Maybe(climate.ClearsBelowHumidity, Unit.Percent, Computed)));
        var noRoom = climate.ClearsBelowHumidity is null ? Computed : NeverFogs;
        rows.Add(("clearsAboveRoomC", Maybe(climate.ClearsAboveRoom, Unit.Celsius, noRoom)));
        rows.Add(("seasons", Seasons(climate)));
        rows.Add(("ledgerErrorGrams", Maybe(climate.LedgerError, Unit.Gram, Held)));
        return ReportObject.Of([.. rows]);
    }

    /// <summary>When the worst pane fogs: weekends, weekdays, and minutes of each hour of the day.</summary>
    private static void AddFog(List<(string, ReportNode)> rows, ClimateFigures climate)
    {
        ReportNode Number(string name, double si, Unit unit) =>
            new ReportNumber(
                SimulatedFigure.From(
                    $"dew on the worst pane {name}",
                    si,
                    unit,
                    $"coupled run from planting, {HeadspacePolicy.Settled}",
                    climate.AirMean.Value.Inputs
                ),
                unit
            );
        var days = climate.Computed?.Days;
        rows.Add(
            (
                "fogHoursWeekend",
                days is null
                    ? new ReportAbsent(Held)
                    : Number("a day at weekends", Unit.Hour.ToSiValue(days.FogByDay.Weekend), Unit.Hour)
            )
        );
        rows.Add(
            (
                "fogHoursWeekday",
                days is null
                    ? new ReportAbsent(Held)
                    : Number("a day on weekdays", Unit.Hour.ToSiValue(days.FogByDay.Weekday), Unit.Hour)
            )
        );
        rows.Add(
            (
                "fogMinutesByHour",
                new ReportList([
                    .. (days?.FogByHour ?? []).Select(
                        (share, hour) =>
                            Number(
                                FormattableString.Invariant($"from {hour:00}:00 on"),
                                Unit.Hour.ToSiValue(share),
                                Unit.Minute
                            )
                    ),
                ])
            )
        );
    }

    private static string Assumes(ClimateFigures climate) =>
        climate.Computed is null
            ? string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"the headspace is held by the design; panes by two films of "
                    + $"{climate.PaneFilm?.Value:0.###} m² K/W"
            )
            : $"computed from planting on, {HeadspacePolicy.Settled}, "
                + "one temperature and humidity for the whole box";

    private static void Add(List<(string, ReportNode)> rows, string key, Banded number, Unit unit)
    {
        rows.Add((key, new ReportNumber(number.Value, unit)));
        rows.Add((key + "Low", Maybe(number.Low, unit, Held)));
        rows.Add((key + "High", Maybe(number.High, unit, Held)));
    }

    /// <summary>Each pane with its band beside it; no band where the air is held.</summary>
    private static ReportNode Fog(ClimateFigures climate)
    {
        List<(string, ReportNode)> rows = [];
        for (var i = 0; i < climate.Fog.Length; i++)
        {
            var band = climate.FogBand.IsEmpty ? null : climate.FogBand[i].Hours;
            Add(
                rows,
                climate.Fog[i].Pane,
                new Banded(climate.Fog[i].Hours, band?.Low, band?.High),
                Unit.Hour
            );
        }

        return ReportObject.Of([.. rows]);
    }

    private static ReportNode Panes(ImmutableArray<(string Pane, Figure Hours)> panes) =>
        ReportObject.Of([.. panes.Select(p => (p.Pane, (ReportNode)new ReportNumber(p.Hours, Unit.Hour)))]);

    private static ReportList Seasons(ClimateFigures climate) =>
        new([
            .. (climate.Computed?.Seasons ?? [])
                .Skip(1)
                .Select(s =>
                    (ReportNode)
                        ReportObject.Of(
                            ("season", new ReportText(s.Name)),
                            (
                                "airCMin",
                                Of(
                                    climate,
                                    s,
                                    "lowest air temperature",
                                    Unit.Celsius,
                                    s.Days.Celsius.Least + 273.15
                                )
                            ),
                            (
                                "airCMean",
                                Of(
                                    climate,
                                    s,
                                    "mean air temperature",
                                    Unit.Celsius,
                                    s.Days.Celsius.Mean + 273.15
                                )
                            ),
                            (
                                "airCMax",
                                Of(
                                    climate,
                                    s,
                                    "highest air temperature",
                                    Unit.Celsius,
                                    s.Days.Celsius.Most + 273.15
                                )
                            ),
                            (
                                "humidityPercentMin",
                                Of(climate, s, "lowest humidity", Unit.Percent, s.Days.Humidity.Least)
                            ),
                            (
                                "humidityPercentMean",
                                Of(climate, s, "mean humidity", Unit.Percent, s.Days.Humidity.Mean)
                            ),
                            (
                                "ventedMlPerDay",
                                Of(climate, s, "water vented a day", Unit.Milliliter, s.Days.Vented / 1000)
                            ),
                            (
                                "fogHoursPerDay",
                                Of(climate, s, "dew on the worst pane a day", Unit.Hour, s.WorstFog * 3600)
                            )
                        )
                ),
        ]);

    private static ReportNumber Of(
        ClimateFigures climate,
        ClimateSeason season,
        string name,
        Unit unit,
        double si
    ) =>
        new(
            SimulatedFigure.From(
                $"{name} {season.Name}",
                si,
                unit,
                $"coupled run {season.Name}, its {HeadspacePolicy.ShortSettled}",
                climate.AirMean.Value.Inputs
            ),
            unit
        );

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
