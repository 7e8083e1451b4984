using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Documents.Text;

/// <summary>The air of the box as a maker reads it on a terminal.</summary>
internal static class AirText
{
    /// <summary>Nothing where the climate cannot be computed.</summary>
    public static void Write(StringBuilder text, ClimateFigures? climate)
    {
        if (climate is null)
        {
            return;
        }

        var table = new TextTable("", "", "");
        table.Add(
            "air",
            Range(climate.AirMin, climate.AirMax, Unit.Celsius, "0.#"),
            $"°C, {Of(climate.AirMean, Unit.Celsius, "0.#")} on average"
        );
        table.Add(
            "humidity",
            Range(climate.HumidityMin, climate.HumidityMax, Unit.Percent, "0"),
            $"%, {Of(climate.HumidityMean, Unit.Percent, "0")} on average"
        );
        table.Add(
            "air changes",
            Of(climate.AirChanges, Unit.PerHour, "0.#"),
            "per hour" + Between(climate.AirChanges, Unit.PerHour, "0.#")
        );
        if (climate.LeafWet is { } wet)
        {
            table.Add("leaves wet", Text(Unit.Hour.FromSi(wet.Si), "0.#"), "hours a day");
        }

        foreach (var (pane, hours) in climate.Fog)
        {
            if (Unit.Hour.FromSi(hours.Si) >= 0.05)
            {
                table.Add($"dew, {pane} pane", Text(Unit.Hour.FromSi(hours.Si), "0.#"), "hours a day");
            }
        }

        foreach (var season in (climate.Computed?.Seasons ?? []).Skip(1))
        {
            table.Add(season.Name, Air(season.Days), Rest(season));
        }

        text.Append(
                climate.Computed is null
                    ? "Air of the box, as the design holds it\n"
                    : "Air of the box, one temperature for all of it, days 8 to 30 from planting\n"
            )
            .Append(table)
            .Append('\n');
    }

    private static string Air(ClimateDays days) =>
        $"{Text(days.Celsius.Least, "0.#")} to {Text(days.Celsius.Most, "0.#")}";

    private static string Rest(ClimateSeason season) =>
        $"°C, humidity {Text(100 * season.Days.Humidity.Least, "0")} to "
        + $"{Text(100 * season.Days.Humidity.Most, "0")} %, {Text(1000 * season.Days.Vented, "0")} "
        + $"mL lost through vents a day, "
        + $"dew {Text(season.WorstFog, "0.#")} h";

    private static string Range(Banded low, Banded high, Unit unit, string form) =>
        $"{Of(low, unit, form)} to {Of(high, unit, form)}";

    private static string Between(Banded number, Unit unit, string form) =>
        number is { Low: { } low, High: { } high }
            ? $"; {Text(unit.FromSi(low.Si), form)} to {Text(unit.FromSi(high.Si), form)} (model "
                + $"uncertainty)"
            : "";

    private static string Of(Banded number, Unit unit, string form) =>
        Text(unit.FromSi(number.Value.Si), form);

    private static string Text(double value, string form) =>
        value.ToString(form, CultureInfo.InvariantCulture);
}
