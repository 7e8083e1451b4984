using System.Globalization;
using System.Text;
using Litterfall.Documents.Text;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The result of <c>lab column</c> for people: the ledger, and the last profile.</summary>
public static class ColumnText
{
    private const int Rows = 20;

    public static string Write(ColumnOutcome outcome)
    {
        var ledger = new TextTable(
            "hour",
            "in",
            "out",
            "evaporated",
            "transpired",
            "change",
            "pond",
            "level"
        );
        foreach (var hour in outcome.Hours)
        {
            var totals = hour.Totals;
            ledger.Add(
                hour.Hour.ToString("0.###", CultureInfo.InvariantCulture),
                Cm(LabUnits.Cm(totals.InMeters)),
                Cm(LabUnits.Cm(totals.OutMeters)),
                Cm(LabUnits.Cm(totals.EvaporatedMeters)),
                Cm(LabUnits.Cm(totals.TranspiredMeters)),
                Cm(LabUnits.Cm(totals.StorageChangeMeters)),
                Cm(hour.PondCm),
                hour.LevelCm is { } level ? Cm(level) : "–"
            );
        }

        var text = new StringBuilder("water in cm since hour 0\n").Append(ledger);
        if (outcome.Hours.LastOrDefault() is { } last)
        {
            text.Append(CultureInfo.InvariantCulture, $"\nhour {last.Hour:0.###}\n")
                .Append(Profile(outcome, last));
        }

        return text.Append(
                CultureInfo.InvariantCulture,
                $"\nbalance error {LabUnits.Cm(outcome.Result.BalanceErrorMeters):0.0e+0} cm, "
            )
            .Append(
                CultureInfo.InvariantCulture,
                $"{outcome.Result.Steps} steps, {outcome.Result.Iterations} iterations, "
            )
            .Append(CultureInfo.InvariantCulture, $"{outcome.Milliseconds:0} ms\n")
            .Append(Trouble(outcome.Result))
            .ToString();
    }

    /// <summary>Steps that did not come out at once; frozen ones lag, so they are told apart.</summary>
    private static string Trouble(ColumnResult result)
    {
        string cut = string.Create(
            CultureInfo.InvariantCulture,
            $"{result.FailedSteps} steps did not come out and were cut\n"
        );
        string frozen = string.Create(
            CultureInfo.InvariantCulture,
            $"{result.FrozenSteps} steps came out only with the conductivities of their start, and lag\n"
        );
        return (result.FailedSteps > 0 ? cut : "") + (result.FrozenSteps > 0 ? frozen : "");
    }

    /// <summary>About twenty depths, evenly chosen; all of them are in the JSON.</summary>
    private static TextTable Profile(ColumnOutcome outcome, ColumnHour hour)
    {
        var table = new TextTable("depth cm", "head cm", "water content");
        double next = 0.0;
        double foot = outcome.DepthCm[^1];
        for (int i = 0; i < outcome.DepthCm.Length; i++)
        {
            if (outcome.DepthCm[i] >= next - 1e-9 || i == outcome.DepthCm.Length - 1)
            {
                table.Add(Cm(outcome.DepthCm[i]), Cm(hour.HeadCm[i]), Cm(hour.WaterContent[i]));
                next += foot / Rows;
            }
        }

        return table;
    }

    private static string Cm(double value) => value.ToString("0.0000", CultureInfo.InvariantCulture);
}
