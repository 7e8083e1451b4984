using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Tracing;

namespace Litterfall.Documents.Json;

/// <summary>Writes reports, derivations and faults as JSON.</summary>
public static class ReportJson
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
    };

    /// <summary>A report.</summary>
    public static string Write(ReportNode node) => Text(json => Node(json, node));

    /// <summary>Where a number comes from: its equation, and its inputs down to given values.</summary>
    /// <param name="key">Key of the number.</param>
    /// <param name="node">The number, or why there is none.</param>
    /// <param name="titles">Titles of sources.</param>
    /// <param name="weights">What it rests on by weight; null where it is not simulated.</param>
    public static string Why(
        string key,
        ReportNode node,
        IReadOnlyDictionary<string, string> titles,
        Sensitivity? weights = null
    ) =>
        Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("key", key);
            if (node is ReportNumber number)
            {
                json.WriteNumber("value", number.Number);
                json.WriteString("unit", number.Unit.Symbol);
                Derivation(json, number.Figure, titles, []);
                Weights(json, weights);
            }
            else
            {
                json.WriteNull("value");
                json.WriteString("reason", ((ReportAbsent)node).Reason);
            }

            json.WriteEndObject();
        });

    private static void Weights(Utf8JsonWriter json, Sensitivity? weights)
    {
        if (weights is null)
        {
            return;
        }

        json.WriteString("provenanceByWeight", weights.Provenance.Word());
        json.WriteStartArray("sensitivity");
        foreach (var row in weights.Rows)
        {
            json.WriteStartObject();
            json.WriteString("name", row.Input.Name);
            json.WriteNumber("low", Rounded(row.Low));
            json.WriteNumber("high", Rounded(row.High));
            json.WriteString("unit", row.Input.Unit!.Symbol);
            Optional(json, "resultLow", row.ResultLow);
            Optional(json, "resultHigh", row.ResultHigh);
            json.WriteNumber("sharePercent", Rounded(row.SharePercent));
            json.WriteString("provenance", row.Input.Trust.Word());
            json.WriteString("source", row.Input.Origin.Source);
            json.WriteString("place", row.Input.Origin.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("sensitivityRestPercent", Rounded(weights.RestPercent));
        json.WriteNumber("inputsTried", weights.Tried);
    }

    private static void Optional(Utf8JsonWriter json, string key, double? number)
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

    private static double Rounded(double number) =>
        double.Parse(number.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The errors document of the exits 2 and 3.</summary>
    public static string Errors(IEnumerable<TextFault> faults) =>
        Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("errors");
            foreach (var fault in faults)
            {
                json.WriteStartObject();
                json.WriteString("file", fault.File);
                json.WriteNumber("line", fault.Line);
                json.WriteNumber("column", fault.Column);
                json.WriteString("message", fault.Message);
                json.WriteString("expected", fault.Expected);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    /// <summary>Any document written by the caller.</summary>
    public static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Derivation(
        Utf8JsonWriter json,
        Figure figure,
        IReadOnlyDictionary<string, string> titles,
        HashSet<string> shown
    )
    {
        json.WriteString("name", figure.Name);
        if (shown.Count > 0)
        {
            json.WriteNumber("value", new ReportNumber(figure, figure.Unit!).Number);
            json.WriteString("unit", figure.Unit!.Symbol);
        }

        json.WriteString("equation", figure.IsGiven ? "given" : figure.Equation);
        json.WriteString("source", figure.Origin.Source);
        json.WriteString("sourceTitle", titles.GetValueOrDefault(figure.Origin.Source));
        json.WriteString("place", figure.Origin.Place);
        json.WriteString("provenance", figure.Trust.Word());
        json.WriteString("remark", figure.Remark);
        var isNew = shown.Add(figure.Identity);
        if (!isNew && !figure.IsGiven)
        {
            json.WriteBoolean("inputsShownAbove", true);
        }

        json.WriteStartArray("inputs");
        foreach (var input in isNew ? figure.Inputs : [])
        {
            json.WriteStartObject();
            Derivation(json, input, titles, shown);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Node(Utf8JsonWriter json, ReportNode node)
    {
        switch (node)
        {
            case ReportObject branch:
                json.WriteStartObject();
                foreach (var (key, value) in branch.Members)
                {
                    json.WritePropertyName(key);
                    Node(json, value);
                }

                json.WriteEndObject();
                break;
            case ReportList list:
                json.WriteStartArray();
                foreach (var item in list.Items)
                {
                    Node(json, item);
                }

                json.WriteEndArray();
                break;
            case ReportNumber number:
                json.WriteNumberValue(number.Number);
                break;
            case ReportText text:
                json.WriteStringValue(text.Text);
                break;
            case ReportFlag flag:
                json.WriteBooleanValue(flag.Value);
                break;
            default:
                json.WriteNullValue();
                break;
        }
    }
}
