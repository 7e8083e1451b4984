using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Verification.Cases;

namespace Litterfall.App.Pages;

/// <summary>The generated page of all published cases and of what the library still only recalls.</summary>
public static class VerificationPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Write(IReadOnlyCollection<VerificationResult> results, TradeCatalog catalog)
    {
        var text = new StringBuilder();
        text.Append("# Verification\n\nGenerated; `litterfall verify` prints the same cases.\n\n");
        Counts(text, results, catalog);
        foreach (var subject in results.GroupBy(r => r.Case.Subject))
        {
            text.Append(CultureInfo.InvariantCulture, $"## {subject.Key}\n\n");
            foreach (var source in subject.GroupBy(r => r.Case.Source))
            {
                Source(text, source.Key, [.. source]);
            }
        }

        return text.ToString();
    }

    private static void Counts(
        StringBuilder text,
        IReadOnlyCollection<VerificationResult> results,
        TradeCatalog catalog
    )
    {
        foreach (var count in ClassCount.Of(results))
        {
            text.Append("- ").Append(count.Line()).Append('\n');
        }

        text.Append("\nA printed number counts as read where it was read in its publication or as another ")
            .Append("program or page quotes it; `recalled` is from memory. A case disagrees openly until it ")
            .Append("is fixed (`tests/Verification/known-shortfalls.json`); a source is in error only where ")
            .Append("a second solution of the repository sides with us.\n\n");
        text.Append("Values in the library and coefficients of the models by provenance:\n\n")
            .Append("| kind | read | recomputed | own choice | common practice | recalled |\n")
            .Append("|---|---|---|---|---|---|\n");
        foreach (var kind in catalog.Entries.GroupBy(e => e.Kind))
        {
            Row(text, kind.Key.Word(), [.. kind.SelectMany(e => e.Values).Select(v => v.Origin.Provenance)]);
        }

        foreach (var model in ModelCoefficients.Cited.GroupBy(Model, StringComparer.Ordinal))
        {
            Row(text, $"coefficients, {model.Key}", [.. model.Select(c => c.Figure.Origin.Provenance)]);
        }

        text.Append('\n');
        Coefficients(text);
    }

    private static string Model(Coefficient one) => one.Key.Split('.')[0];

    private static void Row(StringBuilder text, string kind, Provenance[] values)
    {
        Provenance[] columns =
        [
            Provenance.Read,
            Provenance.Recomputed,
            Provenance.OwnChoice,
            Provenance.CommonPractice,
            Provenance.Recalled,
        ];
        text.Append(CultureInfo.InvariantCulture, $"| {kind} |");
        foreach (var column in columns)
        {
            text.Append(CultureInfo.InvariantCulture, $" {values.Count(v => v == column)} |");
        }

        text.Append('\n');
    }

    /// <summary>Every coefficient with its range and its source.</summary>
    private static void Coefficients(StringBuilder text)
    {
        text.Append("## Coefficients of the models\n\n")
            .Append("| key | what | value | from | to | unit | provenance | source | place |\n")
            .Append("|---|---|---|---|---|---|---|---|---|\n");
        foreach (var one in ModelCoefficients.Cited)
        {
            var origin = one.Figure.Origin;
            text.Append(CultureInfo.InvariantCulture, $"| {one.Key} | {Cell(one.Figure.Name!)} | ")
                .Append(CultureInfo.InvariantCulture, $"{Number(one.Number)} | ")
                .Append(one.Range is { } low ? Number(low.Low) : "")
                .Append(" | ")
                .Append(one.Range is { } high ? Number(high.High) : "")
                .Append(CultureInfo.InvariantCulture, $" | {one.Unit.Symbol} | {origin.Provenance.Word()} | ")
                .Append(CultureInfo.InvariantCulture, $"{origin.Source} | {Cell(origin.Place)} |\n");
        }

        text.Append('\n');
    }

    private static void Source(
        StringBuilder text,
        string source,
        IReadOnlyCollection<VerificationResult> results
    )
    {
        text.Append(CultureInfo.InvariantCulture, $"### {source}\n\n");
        text.Append(
                "| quantity | unit | expected | got | tolerance and its reason | class | evidence "
                    + "| provenance | outcome |\n"
            )
            .Append("|---|---|---|---|---|---|---|---|---|\n");
        foreach (var result in results)
        {
            var c = result.Case;
            text.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(c.Quantity)} | {c.Unit} | {Number(c.Expected)} | "
                )
                .Append(CultureInfo.InvariantCulture, $"{Number(result.Got)} | {Number(c.Tolerance)}; ")
                .Append(CultureInfo.InvariantCulture, $"{Cell(c.Reason + Spread(c))} | ")
                .Append(CultureInfo.InvariantCulture, $"{c.Class.Words()} | {c.Evidence.Word()} | ")
                .Append(CultureInfo.InvariantCulture, $"{c.Provenance.Word()} | ")
                .Append(OutcomeText(result))
                .Append(" |\n");
        }

        foreach (
            var note in results.Select(r => r.Case.KnownDisagreement).Where(n => n is not null).Distinct()
        )
        {
            text.Append(CultureInfo.InvariantCulture, $"\nKnown disagreement: {note}\n");
        }

        text.Append('\n');
    }

    private static string Spread(VerificationCase one) =>
        one.Spread is null ? "" : " Spread of the source: " + one.Spread;

    private static string OutcomeText(VerificationResult result) =>
        result.Outcome switch
        {
            Outcome.Agrees => "agrees",
            Outcome.SourceInError => $"source in error or coarse: {result.Case.Second!.Name} sides with us",
            _ => "**disagrees**",
        };

    private static string Number(double value) => value.ToString("G5", CultureInfo.InvariantCulture);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
