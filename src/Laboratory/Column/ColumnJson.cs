using System.Collections.Immutable;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The result of <c>lab column</c> as one JSON document.</summary>
public static class ColumnJson
{
    public static string Write(ColumnOutcome outcome) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("times");
            foreach (var hour in outcome.Hours)
            {
                Hour(json, outcome.DepthCm, hour);
            }

            json.WriteEndArray();
            json.WriteNumber("balanceErrorCm", LabUnits.Cm(outcome.Result.BalanceErrorMeters));
            json.WriteNumber("steps", outcome.Result.Steps);
            json.WriteNumber("iterations", outcome.Result.Iterations);
            json.WriteNumber("cutSteps", outcome.Result.FailedSteps);
            json.WriteNumber("frozenSteps", outcome.Result.FrozenSteps);
            json.WriteNumber("elapsedMs", outcome.Milliseconds);
            json.WriteEndObject();
        });

    private static void Hour(Utf8JsonWriter json, ImmutableArray<double> depthCm, ColumnHour hour)
    {
        json.WriteStartObject();
        json.WriteNumber("hour", hour.Hour);
        Numbers(json, "depthCm", depthCm);
        Numbers(json, "headCm", hour.HeadCm);
        Numbers(json, "waterContent", hour.WaterContent);
        Totals(json, hour.Totals);
        json.WriteNumber("pondCm", hour.PondCm);
        if (hour.LevelCm is { } level)
        {
            json.WriteNumber("levelCm", level);
        }
        else
        {
            json.WriteNull("levelCm");
        }

        json.WriteEndObject();
    }

    private static void Totals(Utf8JsonWriter json, ColumnTotals totals)
    {
        json.WriteNumber("inCm", LabUnits.Cm(totals.InMeters));
        json.WriteNumber("outCm", LabUnits.Cm(totals.OutMeters));
        json.WriteNumber("evaporatedCm", LabUnits.Cm(totals.EvaporatedMeters));
        json.WriteNumber("transpiredCm", LabUnits.Cm(totals.TranspiredMeters));
        json.WriteNumber("storageChangeCm", LabUnits.Cm(totals.StorageChangeMeters));
    }

    private static void Numbers(Utf8JsonWriter json, string key, ImmutableArray<double> numbers)
    {
        json.WriteStartArray(key);
        foreach (double number in numbers)
        {
            json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }
}
