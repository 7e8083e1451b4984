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
        var command = new Command("verify", "Every published case: expected, got, tolerance, source.")
        {
            json,
        };
        command.SetAction(parsed =>
        {
            var results = VerificationList.All().Select(c => c.Run()).ToArray();
            Console.Out.Write(parsed.GetValue(json) ? Json(results) + "\n" : Text(results));
            return results.All(r => r.Agrees) ? Exit.Done : Exit.Stopped;
        });
        return command;
    }

    private static string Text(IReadOnlyCollection<VerificationResult> results)
    {
        var text = new StringBuilder();
        foreach (var source in results.GroupBy(r => (r.Case.Subject, r.Case.Source)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{source.Key.Subject}: {source.Key.Source}\n");
            var table = new TextTable("", "expected", "got", "tolerance", "unit", "quantity");
            foreach (var result in source)
            {
                table.Add(
                    result.Agrees ? "ok" : "FAILS",
                    Number(result.Case.Expected),
                    Number(result.Got),
                    Number(result.Case.Tolerance),
                    result.Case.Unit,
                    result.Case.Quantity
                );
            }

            text.Append(table).Append('\n');
        }

        var failed = results.Count(r => !r.Agrees);
        text.Append(
            CultureInfo.InvariantCulture,
            $"{results.Count} cases, {results.Count - failed} agree, {failed} fail\n"
        );
        return text.ToString();
    }

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
                json.WriteBoolean("agrees", result.Agrees);
                json.WriteString("knownDisagreement", c.KnownDisagreement);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });
}
