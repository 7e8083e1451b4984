using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Lists;
using Litterfall.Workshop.Mixing;

namespace Litterfall.App.Trade;

/// <summary>The result of <c>mix</c>: one JSON document, or a card for people.</summary>
internal static class MixText
{
    /// <summary>One JSON document.</summary>
    public static string Json(MixPlan plan, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            Learned(json, "shrinkPercent", plan.Case.Shrink, 100.0);
            if (plan.Case.WetMiss.Count > 0)
            {
                Learned(json, "wetMissPercent", plan.Case.WetMiss, 1.0);
            }

            json.WriteNumber("finishedLiters", plan.MixedLiters);
            json.WriteNumber("looseLiters", plan.LooseLiters);
            json.WriteStartArray("parts");
            Shares(json, plan.Shares, false);
            json.WriteEndArray();
            Number(json, "dryKg", plan.Water.DryKg);
            Number(json, "waterPresentLiters", plan.Water.PresentKg);
            Number(json, "waterWantedLiters", plan.Water.WantedKg);
            Number(json, "addWaterLiters", plan.Water.AddLiters);
            Number(json, "finishedKg", plan.Water.FinishedKg);
            Number(json, "finishedKgPerLiter", plan.Water.FinishedKg / plan.MixedLiters);
            json.WriteNumber("batchCount", plan.BatchCount);
            json.WriteStartArray("batches");
            foreach (var batch in plan.Batches)
            {
                Write(json, batch);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Learned(Utf8JsonWriter json, string key, LearnedShare share, double scale)
    {
        json.WriteNumber(key, scale * share.Mean);
        json.WriteNumber(key + "Low", scale * share.Low);
        json.WriteNumber(key + "High", scale * share.High);
    }

    private static void Write(Utf8JsonWriter json, MixBatch batch)
    {
        json.WriteStartObject();
        json.WriteNumber("count", batch.Count);
        json.WriteNumber("looseLiters", batch.LooseLiters);
        json.WriteNumber("mixedLiters", batch.MixedLiters);
        Number(json, "addWaterLiters", batch.WaterLiters);
        Number(json, "kg", batch.Kg);
        json.WriteStartArray("parts");
        Shares(json, batch.Shares, true);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Shares(Utf8JsonWriter json, Seq<MixShare> shares, bool isBatch)
    {
        foreach (var share in shares)
        {
            json.WriteStartObject();
            json.WriteString("name", share.Part.Name);
            json.WriteNumber("liters", share.Liters);
            if (isBatch)
            {
                json.WriteNumber("jugLiters", share.JugLiters);
                json.WriteNumber("errorPercent", share.ErrorPercent);
            }

            Number(json, "kg", share.Kg);
            json.WriteStartArray("lots");
            foreach (var lot in share.Part.Lots)
            {
                json.WriteStringValue(lot);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
    }

    /// <summary>A card for people.</summary>
    public static string Card(MixPlan plan)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"{plan.MixedLiters:0.0} L of mix from {plan.LooseLiters:0.0} L loose; mixing loses "
        );
        text.Append(Shrink(plan.Case.Shrink)).Append('\n');
        foreach (var batch in plan.Batches)
        {
            var batches = batch.Count == 1 ? "1 batch:" : $"{batch.Count} batches, each";
            text.Append(
                CultureInfo.InvariantCulture,
                $"\n{batches} {batch.LooseLiters:0.0} L loose in the tub, {batch.MixedLiters:0.0} L mixed"
            );
            text.Append(batch.Kg is { } kg ? FormattableString.Invariant($", {kg:0.0} kg\n") : "\n");
            text.Append(Table(batch));
        }

        return text.Append('\n').Append(WaterWords(plan)).ToString();
    }

    private static string Shrink(LearnedShare shrink)
    {
        var mean = FormattableString.Invariant($"{100.0 * shrink.Mean:0.#} %");
        return shrink.High <= shrink.Low
            ? mean + " as given"
            : FormattableString.Invariant($"{mean} ({100.0 * shrink.Low:0.#}–{100.0 * shrink.High:0.#} %), ")
                + (
                    shrink.Count == 0 ? "nothing measured yet"
                    : shrink.Count == 1 ? "learned from 1 batch"
                    : $"learned from {shrink.Count} batches"
                );
    }

    private static string Table(MixBatch batch)
    {
        var table = new TextTable("", "liters", "kg", "");
        foreach (var share in batch.Shares)
        {
            var off =
                Math.Abs(share.ErrorPercent) < 0.05
                    ? ""
                    : FormattableString.Invariant($"{share.ErrorPercent:+0.0;-0.0} % off by the jug");
            table.Add(
                share.Part.Name,
                Text(share.JugLiters, "0.##"),
                share.Kg is { } kg ? Text(kg, "0.00") : "–",
                off + (share.Part.Lots.Count > 0 ? $"  lot {string.Join(", ", share.Part.Lots)}" : "")
            );
        }

        if (batch.WaterLiters is { } water)
        {
            table.Add("water", Text(water, "0.0#"), Text(water, "0.00"), "");
        }

        return table.ToString();
    }

    private static string WaterWords(MixPlan plan)
    {
        var water = plan.Water;
        if (water.WantedKg is not { } wanted)
        {
            return "No water is dosed.\n";
        }

        return water.AddLiters is { } add
            ? FormattableString.Invariant(
                $"Water: the mix holds {wanted:0.0} L, {water.PresentKg:0.0} L of it in "
            ) + FormattableString.Invariant($"the components already; add {add:0.0} L in all.\n")
            : FormattableString.Invariant($"Water: the mix holds {wanted:0.0} L in all. Subtract what the ")
                + "components hold already; weigh and dry a liter of each to know.\n";
    }

    private static void Number(Utf8JsonWriter json, string key, double? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(key, value);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static string Text(double number, string format) =>
        number.ToString(format, CultureInfo.InvariantCulture);
}
