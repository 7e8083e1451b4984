using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Physics.Coupling;
using Litterfall.Physics.Crew;

namespace Litterfall.App.Forecasts;

/// <summary>A forecast as one JSON document: series of equal length, ledgers, events.</summary>
internal static class ForecastJson
{
    private const int Digits = 10;

    /// <summary>The document.</summary>
    public static string Write(
        CheckedDesign design,
        DesignForecast forecast,
        bool usesOwnDate,
        double milliseconds
    ) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartObject("design");
            json.WriteString("name", design.Design.Name);
            json.WriteString("hash", DesignHash.Of(design.Document.Text));
            json.WriteEndObject();
            json.WriteString("from", forecast.Wish.First.ToString("yyyy-MM-dd", null));
            json.WriteNumber("days", forecast.Wish.Days);
            Notes(json, design, usesOwnDate);
            Series(json, forecast);
            Life(json, new DesignNumbers(design).Upto(Reach.WholeWithoutBands).Life);
            Ledgers(json, forecast.Result);
            Events(json, forecast);
            Ensemble(json, forecast);
            json.WriteNumber("elapsedMs", Math.Round(milliseconds, 3));
            json.WriteEndObject();
        });

    private static void Notes(Utf8JsonWriter json, CheckedDesign design, bool usesOwnDate)
    {
        json.WriteStartArray("notes");
        foreach (var note in ForecastNotes.Of(design, usesOwnDate))
        {
            json.WriteStringValue(note);
        }

        json.WriteEndArray();
    }

    private static void Series(Utf8JsonWriter json, DesignForecast forecast)
    {
        var held = forecast.Run.Setup.Held is not null;
        json.WriteStartObject("series");
        Numbers(json, "hour", forecast, h => h.Hour);
        Banded(json, "levelMm", forecast, h => h.LevelMeters * 1000);
        Banded(json, "airC", forecast, h => h.AirCelsius);
        Banded(json, "humidityPercent", forecast, h => h.Humidity * 100);
        Numbers(json, "roomC", forecast, h => h.RoomCelsius);
        Numbers(json, "soilPpfd", forecast, h => h.Hour <= 0 ? 0 : forecast.Light.At(h.Hour));
        Numbers(json, "lightHours", forecast, h => h.Hour <= 0 ? 0 : forecast.Light.LitAt(h.Hour));
        Numbers(json, "vapourDeficitKPa", forecast, h => h.DeficitPascals / 1000);
        Numbers(json, "airChangesPerHour", forecast, h => h.AirChanges);
        Numbers(json, "mistedMl", forecast, h => h.MistedKilograms * 1000);
        Banded(json, "ventedMl", forecast, h => h.VentedKilograms * 1000);
        Numbers(json, "evaporatedMl", forecast, h => h.EvaporatedKilograms * 1000);
        Numbers(json, "condensedMl", forecast, h => h.CondensedKilograms * 1000);
        Numbers(json, "drainedMl", forecast, h => h.DrainedKilograms * 1000);
        Numbers(json, "litterMm", forecast, h => h.LitterMeters * 1000);
        if (!held)
        {
            Numbers(json, "groundC", forecast, h => h.GroundCelsius);
            Panes(json, "fogByPane", forecast, (h, place) => h.Fogged[place]);
            Panes(json, "wetByPane", forecast, (h, place) => h.Wet[place]);
            Panes(json, "dewMarginKByPane", forecast, (h, place) => h.DewMarginKelvin[place]);
            if (forecast.Run.Surfaces.Leaves is { } leaves)
            {
                Numbers(json, "leafWetShare", forecast, h => h.Wet[leaves]);
            }
        }

        HeldFogAndBasins(json, forecast);
        json.WriteStartArray("depthMm");
        foreach (var depth in forecast.DepthMeters)
        {
            json.WriteNumberValue(Rounded(depth * 1000));
        }

        json.WriteEndArray();
        json.WriteStartArray("soilWaterContent");
        foreach (var hour in forecast.Result.Hours)
        {
            json.WriteStartArray();
            foreach (var theta in hour.WaterContent)
            {
                json.WriteNumberValue(Rounded(theta));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void HeldFogAndBasins(Utf8JsonWriter json, DesignForecast forecast)
    {
        if (forecast.HeldFog is { } fogs)
        {
            Panes(json, "fogByPane", forecast, (h, _) => fogs(h.RoomCelsius) ? 1 : 0);
        }

        if (forecast.Run.Surfaces.OpenWater is not null)
        {
            Numbers(json, "toppedUpMl", forecast, h => h.ToppedUpKilograms * 1000);
            Numbers(json, "basinEvaporatedMl", forecast, h => h.OpenWaterKilograms * 1000);
        }
    }

    /// <summary>Crew and leaves at the end of each day from planting; null without a crew.</summary>
    private static void Life(Utf8JsonWriter json, LifeFigures? life)
    {
        if (life is null)
        {
            json.WriteNull("crew");
            return;
        }

        json.WriteStartObject("crew");
        Days(json, "springtails", life, d => d.Mobile.Where((_, i) => life.IsSpringtail[i]).Sum());
        Days(json, "isopods", life, d => d.Mobile.Where((_, i) => !life.IsSpringtail[i]).Sum());
        Days(json, "litterGrams", life, d => d.LitterGrams);
        Days(json, "springtailsEaten", life, d => d.EatenPerDay);
        Days(json, "smallFlies", life, d => d.FliesPerDay);
        Days(json, "mineralNitrogenGrams", life, d => d.MineralGrams);
        json.WriteEndObject();
    }

    private static void Days(Utf8JsonWriter json, string key, LifeFigures life, Func<FloorLifeDay, double> of)
    {
        json.WriteStartArray(key);
        foreach (var day in life.Days)
        {
            json.WriteNumberValue(Rounded(of(day)));
        }

        json.WriteEndArray();
    }

    private static void Ledgers(Utf8JsonWriter json, SimulationResult result)
    {
        var water = result.Water;
        json.WriteStartObject("ledgers");
        json.WriteStartObject("waterGrams");
        foreach (
            var (key, kilograms) in new[]
            {
                ("misted", water.Misted),
                ("fogged", water.Fogged),
                ("toppedUp", water.ToppedUp),
                ("vented", water.Vented),
                ("drained", water.Drained),
                ("runOff", water.RunOff),
                ("floorGained", water.Floor),
                ("basinsGained", water.Basins),
                ("litterGained", water.Litter),
                ("filmsGained", water.Films),
                ("leavesGained", water.Leaves),
                ("airGained", water.Air),
                ("onItsWay", water.Pending),
                ("owedByGroundAndRoots", -water.Owed),
                ("dripped", water.Dripped),
                ("error", water.BalanceError),
            }
        )
        {
            json.WriteNumber(key, kilograms * 1000);
        }

        json.WriteNumber("airError", result.AirBalanceErrorKilograms * 1000);
        json.WriteEndObject();
        json.WriteStartObject("heatJoules");
        json.WriteNumber("sources", result.Heat.Sources);
        json.WriteNumber("ventedIn", result.Heat.Vented);
        json.WriteNumber("throughPanesIn", result.Heat.Outside);
        json.WriteNumber("mistIn", result.Heat.Mist);
        json.WriteNumber("liquidTurnedToVapour", result.Heat.Liquid);
        json.WriteNumber("stored", result.Heat.Stored);
        json.WriteNumber("error", result.Heat.BalanceErrorJoules);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Events(Utf8JsonWriter json, DesignForecast forecast)
    {
        json.WriteStartArray("events");
        foreach (var one in forecast.Result.Events)
        {
            json.WriteStartObject();
            json.WriteNumber("hour", Rounded(one.Hour));
            json.WriteString(
                "date",
                forecast.Wish.First.AddDays((int)Math.Floor(one.Hour / 24)).ToString("yyyy-MM-dd", null)
            );
            json.WriteString("kind", one.Kind);
            json.WriteNumber("ml", Rounded(one.Kilograms * 1000));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Ensemble(Utf8JsonWriter json, DesignForecast forecast)
    {
        json.WriteStartObject("ensemble");
        json.WriteNumber("members", forecast.Members.Length);
        json.WriteNumber("seed", forecast.Wish.Seed);
        json.WriteStartArray("varied");
        foreach (var input in ClimateEnsemble.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("input", input.Name);
            json.WriteNumber("low", Rounded(input.Low));
            json.WriteNumber("high", Rounded(input.High));
            json.WriteString("as", input.IsFactor ? "factor" : "added");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Banded(
        Utf8JsonWriter json,
        string key,
        DesignForecast forecast,
        Func<SimulationHour, double> of
    )
    {
        Numbers(json, key, forecast, of);
        var band = forecast.Band(of);
        json.WriteStartArray(key + "Low");
        foreach (var (low, _) in band)
        {
            json.WriteNumberValue(Rounded(low));
        }

        json.WriteEndArray();
        json.WriteStartArray(key + "High");
        foreach (var (_, high) in band)
        {
            json.WriteNumberValue(Rounded(high));
        }

        json.WriteEndArray();
    }

    private static void Panes(
        Utf8JsonWriter json,
        string key,
        DesignForecast forecast,
        Func<SimulationHour, int, double> of
    )
    {
        json.WriteStartObject(key);
        foreach (var (pane, place) in forecast.Run.Surfaces.Panes)
        {
            Numbers(json, pane, forecast, h => of(h, place));
        }

        json.WriteEndObject();
    }

    private static void Numbers(
        Utf8JsonWriter json,
        string key,
        DesignForecast forecast,
        Func<SimulationHour, double> of
    )
    {
        json.WriteStartArray(key);
        foreach (var hour in forecast.Result.Hours)
        {
            json.WriteNumberValue(Rounded(of(hour)));
        }

        json.WriteEndArray();
    }

    private static double Rounded(double value) =>
        value == 0 || !double.IsFinite(value)
            ? 0
            : Math.Round(value, Math.Clamp(Digits - (int)Math.Ceiling(Math.Log10(Math.Abs(value))), 0, 15));
}
