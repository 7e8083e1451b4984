using System.Globalization;
using System.Text;
using Litterfall.Documents.Text;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.App.Forecasts;

/// <summary>
/// A forecast as a maker reads it: a line a day, then what happened and where the water went.
/// </summary>
internal static class ForecastText
{
    private const int MostLines = 62;

    /// <summary>The text.</summary>
    public static string Write(CheckedDesign design, DesignForecast forecast)
    {
        var text = new StringBuilder();
        text.Append(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{design.Design.Name}, {forecast.Wish.Days} days from {forecast.Wish.First:ddd d MMM yyyy}\n"
            )
        );
        foreach (var note in ForecastNotes.Of(design, false))
        {
            text.Append("Note: ").Append(note).Append(".\n");
        }

        text.Append('\n').Append(Days(forecast)).Append('\n');
        AddEvents(text, forecast);
        AddWater(text, forecast.Result);
        AddBand(text, forecast);
        return text.ToString();
    }

    private static TextTable Days(DesignForecast forecast)
    {
        var table = new TextTable("day", "air C", "RH %", "fog h", "level mm", "misted mL", "vented mL");
        var every = 1 + (forecast.Wish.Days / MostLines);
        for (var day = 0; day < forecast.Wish.Days; day += every)
        {
            var hours = forecast.Result.Hours.Skip(1 + (24 * day)).Take(24).ToList();
            if (hours.Count == 0)
            {
                break;
            }

            table.Add(
                forecast.Wish.First.AddDays(day).ToString("ddd d MMM", CultureInfo.InvariantCulture),
                Range(hours.Min(h => h.AirRange.Least), hours.Max(h => h.AirRange.Most), "0.0"),
                Range(
                    100 * hours.Min(h => h.HumidityRange.Least),
                    100 * hours.Max(h => h.HumidityRange.Most),
                    "0"
                ),
                Text(Fog(forecast, hours), "0.0"),
                Text(hours[^1].LevelMeters * 1000, "0"),
                Text(hours.Sum(h => h.MistedKilograms) * 1000, "0"),
                Text(hours.Sum(h => h.VentedKilograms) * 1000, "0")
            );
        }

        return table;
    }

    private static double Fog(DesignForecast forecast, List<SimulationHour> hours) =>
        forecast.Run.Surfaces.Panes.Select(p => hours.Sum(h => h.Fogged[p.Place])).DefaultIfEmpty(0).Max();

    private static void AddEvents(StringBuilder text, DesignForecast forecast)
    {
        foreach (var one in forecast.Result.Events)
        {
            var day = forecast.Wish.First.AddDays((int)Math.Floor(one.Hour / 24));
            text.Append(string.Create(CultureInfo.InvariantCulture, $"{day:ddd d MMM}: {Words(one)}\n"));
        }

        if (forecast.Result.Events.Length > 0)
        {
            text.Append('\n');
        }
    }

    private static string Words(SimulationEvent one) =>
        one.Kind == "drain"
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"the level is 1 cm below the barrier; drawn off {one.Kilograms:0.0} L"
            )
            : "the water stands at the barrier";

    private static void AddWater(StringBuilder text, SimulationResult result)
    {
        var water = result.Water;
        text.Append(
            string.Create(
                CultureInfo.InvariantCulture,
                $"Water: {Brought(water)} = vented {water.Vented * 1000:0} + drained "
            )
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"{water.Drained * 1000:0} + gained by the floor {water.Floor * 1000:0}, by dead leaves "
                )
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"{water.Litter * 1000:0}, by films and living leaves "
                )
                + string.Create(CultureInfo.InvariantCulture, $"{(water.Films + water.Leaves) * 1000:0} mL; ")
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"misses by {Math.Abs(water.BalanceError) * 1000:0.0e+0} g.\n"
                )
        );
    }

    private static string Brought(WaterLedger water) =>
        water.Fogged > 0
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"misted {water.Misted * 1000:0} mL and fogged {water.Fogged * 1000:0} mL"
            )
            : string.Create(CultureInfo.InvariantCulture, $"misted {water.Misted * 1000:0} mL");

    private static void AddBand(StringBuilder text, DesignForecast forecast)
    {
        if (forecast.Members.Length == 0)
        {
            return;
        }

        var level = forecast.Band(h => h.LevelMeters * 1000)[^1];
        var humidity = forecast.Band(h => h.HumidityMean * 100);
        text.Append(
            string.Create(
                CultureInfo.InvariantCulture,
                $"Over what nobody measures ({forecast.Members.Length} runs, seed {forecast.Wish.Seed}): "
            )
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"level at the end {level.Low:0} to {level.High:0} mm, "
                )
                + string.Create(CultureInfo.InvariantCulture, $"humidity {humidity.Min(h => h.Low):0} to ")
                + string.Create(CultureInfo.InvariantCulture, $"{humidity.Max(h => h.High):0} %.\n")
        );
    }

    private static string Range(double low, double high, string format) =>
        $"{Text(low, format)} to {Text(high, format)}";

    private static string Text(double value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture);
}
