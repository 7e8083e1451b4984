using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Checking;
using Litterfall.Running.Correcting;

namespace Litterfall.App.Tanks;

/// <summary>A correction: one JSON document, or lines for people.</summary>
internal static class CorrectText
{
    private const int Digits = 6;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>What is to be known about the run.</summary>
    public static ImmutableArray<string> Notes(
        TankCase tank,
        TankCorrection correction,
        DateOnly planted,
        bool hasOwnDate
    )
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (hasOwnDate)
        {
            notes.Add(
                string.Create(
                    Invariant,
                    $"The design has no planting day; days count from {planted:ddd d MMM yyyy}"
                )
            );
        }

        if (correction.First != planted)
        {
            notes.Add(
                string.Create(
                    Invariant,
                    $"The readings begin long after planting, so the run starts on "
                        + $"{correction.First:ddd d MMM yyyy} with "
                        + $"{1000 * (tank.StartLevelMeters ?? 0):0} mm of water"
                )
            );
        }

        if (correction.Members < correction.Wish.Members)
        {
            notes.Add(
                string.Create(
                    Invariant,
                    $"{correction.Wish.Members - correction.Members} of {correction.Wish.Members} runs "
                        + $"did not come out and are left out"
                )
            );
        }

        return notes.ToImmutable();
    }

    /// <summary>One JSON document; hours and days count from planting.</summary>
    public static string Json(
        TankCorrection correction,
        DateOnly planted,
        ImmutableArray<string> notes,
        double milliseconds
    ) =>
        ReportJson.Text(json =>
        {
            var day = correction.First.DayNumber - planted.DayNumber;
            json.WriteStartObject();
            json.WriteString("from", Iso(planted));
            json.WriteNumber("days", day + correction.Days);
            json.WriteNumber("members", correction.Members);
            Texts(json, "notes", notes);
            Side(json, "before", correction.Before, day);
            Side(json, "after", correction.After, day);
            json.WritePropertyName("nextMeasurement");
            if (correction.Next is { } next)
            {
                json.WriteStartObject();
                json.WriteString("kind", next.Kind);
                json.WriteString("at", next.At.ToString("yyyy-MM-dd'T'HH:mm", Invariant));
                json.WriteString("why", next.Why);
                Number(json, "narrowsPercent", next.NarrowsPercent);
                json.WriteEndObject();
            }
            else
            {
                json.WriteNullValue();
            }

            Texts(json, "learned", correction.Learned);
            Texts(json, "ignored", correction.Ignored);
            json.WriteNumber("seed", correction.Wish.Seed);
            json.WriteNumber("elapsedMs", Math.Round(milliseconds, 3));
            json.WriteEndObject();
        });

    private static void Side(Utf8JsonWriter json, string name, CorrectedSide side, int day)
    {
        json.WriteStartObject(name);
        json.WriteStartArray("parameters");
        foreach (var parameter in side.Parameters)
        {
            json.WriteStartObject();
            json.WriteString("key", parameter.Key);
            json.WriteString("name", parameter.Name);
            json.WriteString("unit", parameter.Unit);
            Number(json, "mean", parameter.Mean);
            Number(json, "low", parameter.Low);
            Number(json, "high", parameter.High);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WritePropertyName("nextDrain");
        if (side.NextDrain is { } drain)
        {
            json.WriteStartObject();
            Number(json, "day", day + drain.Day);
            Number(json, "low", day + drain.Low);
            if (drain.High is { } high)
            {
                Number(json, "high", day + high);
            }
            else
            {
                json.WriteNull("high");
            }

            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        Level(json, side.Level, day);
        json.WriteEndObject();
    }

    private static void Level(Utf8JsonWriter json, LevelBand level, int day)
    {
        json.WriteStartObject("level");
        json.WriteStartArray("hour");
        for (var h = 0; h < level.Millimeters.Length; h++)
        {
            json.WriteNumberValue((24 * day) + h);
        }

        json.WriteEndArray();
        Numbers(json, "mm", level.Millimeters);
        Numbers(json, "low", level.Low);
        Numbers(json, "high", level.High);
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, string name, ImmutableArray<double> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteNumberValue(Math.Round(value, Digits));
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, Math.Round(value, Digits));

    private static void Texts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>Lines for people.</summary>
    public static string Lines(CheckedDesign design, TankCorrection correction, ImmutableArray<string> notes)
    {
        var text = new StringBuilder();
        text.Append(Invariant, $"{design.Design.Name}, {correction.Readings} ")
            .Append(correction.Readings == 1 ? "reading" : "readings")
            .Append(Invariant, $", {correction.Days} days from {correction.First:ddd d MMM yyyy}\n");
        foreach (var note in notes)
        {
            text.Append("Note: ").Append(note).Append(".\n");
        }

        text.Append('\n').Append(Parameters(correction)).Append('\n');
        text.Append("Next drain before: ").Append(Drain(correction, correction.Before)).Append('\n');
        text.Append("Next drain after:  ").Append(Drain(correction, correction.After)).Append("\n\n");
        foreach (var learned in correction.Learned)
        {
            text.Append(learned).Append('\n');
        }

        foreach (var ignored in correction.Ignored)
        {
            text.Append(ignored).Append('\n');
        }

        text.Append(
            correction.Next is { } next
                ? $"\nMeasure next: {next.Why}\n"
                : "\nNo single measurement would tighten this forecast by much.\n"
        );
        return text.ToString();
    }

    private static TextTable Parameters(TankCorrection correction)
    {
        var table = new TextTable("what nobody measured", "unit", "before", "range", "after", "range");
        foreach (var (was, now) in correction.Before.Parameters.Zip(correction.After.Parameters))
        {
            table.Add(was.Name, was.Unit, Short(was.Mean), Range(was), Short(now.Mean), Range(now));
        }

        return table;
    }

    private static string Drain(TankCorrection correction, CorrectedSide side)
    {
        if (side.NextDrain is not { } drain)
        {
            return string.Create(Invariant, $"none within {correction.Days} days");
        }

        string On(double day) =>
            correction.First.AddDays((int)Math.Floor(day)).ToString("ddd d MMM yyyy", Invariant);
        return drain.High is { } high
            ? $"{On(drain.Day)}, between {On(drain.Low)} and {On(high)} in 9 of 10 cases"
            : $"{On(drain.Day)}, from {On(drain.Low)} on in 9 of 10 cases";
    }

    private static string Range(ParameterBand band) => $"{Short(band.Low)}–{Short(band.High)}";

    private static string Short(double value) =>
        value.ToString(Math.Abs(value) >= 10 ? "0.0" : "0.00", Invariant);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", Invariant);
}
