using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
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
        var failed = results.Count(r => !r.Agrees);
        text.Append(CultureInfo.InvariantCulture, $"{results.Count} cases, {results.Count - failed} agree, ")
            .Append(CultureInfo.InvariantCulture, $"{failed} do not (marked **no**; reasons in ")
            .Append("`tests/Verification/known-shortfalls.json`).\n\n");
        text.Append("Values in the library by provenance:\n\n| kind | read | recomputed | common practice | ")
            .Append("recalled |\n|---|---|---|---|---|\n");
        foreach (var kind in catalog.Entries.GroupBy(e => e.Kind))
        {
            var values = kind.SelectMany(e => e.Values).ToArray();
            int Of(Provenance p) => values.Count(v => v.Origin.Provenance == p);
            text.Append(CultureInfo.InvariantCulture, $"| {kind.Key.Word()} | {Of(Provenance.Read)} | ")
                .Append(CultureInfo.InvariantCulture, $"{Of(Provenance.Recomputed)} | ")
                .Append(CultureInfo.InvariantCulture, $"{Of(Provenance.CommonPractice)} | ")
                .Append(CultureInfo.InvariantCulture, $"{Of(Provenance.Recalled)} |\n");
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
                "| quantity | unit | expected | got | tolerance and its reason | evidence | provenance "
                    + "| agrees |\n"
            )
            .Append("|---|---|---|---|---|---|---|---|\n");
        foreach (var result in results)
        {
            var c = result.Case;
            text.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(c.Quantity)} | {c.Unit} | {Number(c.Expected)} | "
                )
                .Append(CultureInfo.InvariantCulture, $"{Number(result.Got)} | {Number(c.Tolerance)}; ")
                .Append(CultureInfo.InvariantCulture, $"{Cell(c.Reason)} | {c.Evidence.Word()} | ")
                .Append(CultureInfo.InvariantCulture, $"{c.Provenance.Word()} | ")
                .Append(result.Agrees ? "yes" : "**no**")
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

    private static string Number(double value) => value.ToString("G5", CultureInfo.InvariantCulture);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
