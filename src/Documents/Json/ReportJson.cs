using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;

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
    public static string Why(string key, ReportNode node, IReadOnlyDictionary<string, string> titles) =>
        Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("key", key);
            if (node is ReportNumber number)
            {
                json.WriteNumber("value", number.Number);
                json.WriteString("unit", number.Unit.Symbol);
                Derivation(json, number.Figure, titles, []);
            }
            else
            {
                json.WriteNull("value");
                json.WriteString("reason", ((ReportAbsent)node).Reason);
            }

            json.WriteEndObject();
        });

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
