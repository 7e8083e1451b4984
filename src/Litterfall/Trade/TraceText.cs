using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Lists;
using Litterfall.Workshop.Tracing;

namespace Litterfall.App.Trade;

/// <summary>The answer to one question about a lot.</summary>
/// <param name="Question">The question.</param>
/// <param name="Lots">The lots found; empty for a balance.</param>
/// <param name="Balance">The balance; null for other questions.</param>
internal sealed record TraceAnswer(TraceQuestion Question, Seq<string> Lots, LotBalance? Balance);

/// <summary>Answers and tells them: one JSON document, or lines for people.</summary>
internal static class TraceText
{
    /// <summary>All answers, in the order asked.</summary>
    public static List<TraceAnswer> Answer(TraceCase asked, CancellationToken cancel) =>
        [
            .. asked.Questions.Select(q =>
            {
                cancel.ThrowIfCancellationRequested();
                return q.Kind switch
                {
                    TraceKind.Forward => new TraceAnswer(q, asked.Graph.Forward(q.Lot), null),
                    TraceKind.Backward => new TraceAnswer(q, asked.Graph.Backward(q.Lot), null),
                    _ => new TraceAnswer(q, [], asked.Graph.Balance(q.Lot, q.Made)),
                };
            }),
        ];

    /// <summary>One JSON document.</summary>
    public static string Json(List<TraceAnswer> answers, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("answers");
            foreach (var answer in answers)
            {
                json.WriteStartObject();
                json.WriteString(Key(answer.Question.Kind), answer.Question.Lot);
                Write(json, answer);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, TraceAnswer answer)
    {
        if (answer.Balance is not { } balance)
        {
            json.WriteStartArray("lots");
            foreach (var lot in answer.Lots)
            {
                json.WriteStringValue(lot);
            }

            json.WriteEndArray();
            return;
        }

        Number(json, "in", balance.In);
        Number(json, "made", balance.Made);
        Number(json, "used", balance.Used);
        Number(json, "left", balance.Left);
        Number(json, "shrinkPercent", balance.ShrinkPercent);
    }

    /// <summary>Lines for people.</summary>
    public static string Lines(List<TraceAnswer> answers)
    {
        var text = new StringBuilder();
        foreach (var answer in answers)
        {
            var lot = Terminal.Clean(answer.Question.Lot);
            text.Append(text.Length > 0 ? "\n" : "");
            if (answer.Balance is { } balance)
            {
                text.Append(CultureInfo.InvariantCulture, $"{lot}: put in {Told(balance.In)}, made ")
                    .Append(
                        CultureInfo.InvariantCulture,
                        $"{Told(balance.Made)}, used {Told(balance.Used)}, "
                    )
                    .Append(CultureInfo.InvariantCulture, $"left {Told(balance.Left)}{Shrink(balance)}\n");
                continue;
            }

            var isForward = answer.Question.Kind == TraceKind.Forward;
            var what = isForward ? $"{lot} went into" : $"Into {lot} went";
            text.Append(
                answer.Lots.Count == 0
                    ? isForward
                        ? $"{lot} went into nothing else\n"
                        : $"Nothing went into {lot}\n"
                    : $"{what} {answer.Lots.Count} {(answer.Lots.Count == 1 ? "lot" : "lots")}:\n"
                        + Terminal.Wrapped(string.Join(", ", answer.Lots), "  ")
            );
        }

        return text.ToString();
    }

    private static string Shrink(LotBalance balance) =>
        balance.ShrinkPercent switch
        {
            { } loss and >= 0.0 => FormattableString.Invariant($"; mixing lost {loss:0.00} %"),
            { } gain => FormattableString.Invariant($"; making it gained {-gain:0.00} %"),
            _ => "",
        };

    private static string Told(double? amount) =>
        amount?.ToString("0.######", CultureInfo.InvariantCulture) ?? "not known";

    private static string Key(TraceKind kind) =>
        kind switch
        {
            TraceKind.Forward => "forward",
            TraceKind.Backward => "backward",
            _ => "balance",
        };

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
}
