using System.CommandLine;
using System.Globalization;
using System.Text;
using Litterfall.App.Files;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Figures;
using Litterfall.Verification;
using Litterfall.Verification.Cases;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall verify</c>.</summary>
internal static class VerifyCommand
{
    public static Command Create()
    {
        var json = Arguments.Json();
        var command = new Command("verify", "Every case: expected, got, tolerance, source, what it proves.")
        {
            json,
        };
        command.SetAction(parsed =>
        {
            var results = VerificationList.All().Select(c => c.Run()).ToArray();
            Console.Out.Write(parsed.GetValue(json) ? Json(results) + "\n" : Text(results));
            return results.Any(r => r.Outcome == Outcome.Disagrees) ? Exit.Stopped : Exit.Done;
        });
        return command;
    }

    private static string Text(IReadOnlyCollection<VerificationResult> results)
    {
        var text = new StringBuilder();
        foreach (var one in Enum.GetValues<CaseClass>())
        {
            text.Append(CultureInfo.InvariantCulture, $"== {one.Words()} ==\n\n");
            foreach (
                var source in results
                    .Where(r => r.Case.Class == one)
                    .GroupBy(r => (r.Case.Subject, r.Case.Source))
            )
            {
                text.Append(CultureInfo.InvariantCulture, $"{source.Key.Subject}: {source.Key.Source}\n");
                Table(text, source);
            }
        }

        foreach (var count in ClassCount.Of(results))
        {
            text.Append(count.Line()).Append('\n');
        }

        return text.ToString();
    }

    private static void Table(StringBuilder text, IEnumerable<VerificationResult> results)
    {
        var table = new TextTable("", "expected", "got", "tolerance", "unit", "quantity");
        var notes = new List<string>();
        foreach (var result in results)
        {
            table.Add(
                Mark(result),
                Number(result.Case.Expected),
                Number(result.Got),
                Number(result.Case.Tolerance),
                result.Case.Unit,
                result.Case.Quantity + (result.Case.IsRead ? "" : " (from memory)")
            );
            if (result.Case.Spread is { } spread)
            {
                notes.Add($"{result.Case.Quantity}: wide because the source says: {spread}");
            }

            if (result.Outcome == Outcome.SourceInError)
            {
                notes.Add($"{result.Case.Quantity}: {result.Case.Second!.Name} agrees with us");
            }
        }

        text.Append(table);
        foreach (var note in notes)
        {
            text.Append("  ").Append(note).Append('\n');
        }

        text.Append('\n');
    }

    private static string Mark(VerificationResult result) =>
        result.Outcome switch
        {
            Outcome.Agrees => "ok",
            Outcome.SourceInError => "coarse",
            _ => "DISAGREES",
        };

    private static string Number(double value) => value.ToString("G7", CultureInfo.InvariantCulture);

    private static string Json(IEnumerable<VerificationResult> results) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("cases");
            foreach (var result in results)
            {
                var c = result.Case;
                json.WriteStartObject();
                json.WriteString("source", c.Source);
                json.WriteString("subject", c.Subject);
                json.WriteString("quantity", c.Quantity);
                json.WriteString("unit", c.Unit);
                json.WriteNumber("expected", c.Expected);
                if (double.IsFinite(result.Got))
                {
                    json.WriteNumber("got", result.Got);
                }
                else
                {
                    json.WriteNull("got");
                }

                json.WriteNumber("tolerance", c.Tolerance);
                json.WriteString("reason", c.Reason);
                json.WriteString("evidence", c.Evidence.Word());
                json.WriteString("provenance", c.Provenance.Word());
                json.WriteString("class", c.Class.Key());
                json.WriteString("outcome", result.Outcome.Key());
                json.WriteString(
                    "secondSolution",
                    result.Outcome == Outcome.SourceInError ? c.Second!.Name : null
                );
                json.WriteString("spread", c.Spread);
                json.WriteString("knownDisagreement", c.KnownDisagreement);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });
}
