using System.Globalization;
using System.Text;
using Litterfall.Judging;
using Litterfall.Judging.Rules;

namespace Litterfall.App.Pages;

/// <summary>The generated page of all rules: one section per subject, one line per rule.</summary>
public static class FindingsPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Write()
    {
        var text = new StringBuilder();
        text.Append("# Findings\n\n")
            .Append("Generated from the rules. A finding is a note, a caution or a stop. It says what was ")
            .Append(
                "measured, the limit, the source and what would\nmake it disappear. A stop that protects "
            )
            .Append("only the build and rests on a recalled value or on common practice is shown as\na ")
            .Append("caution.\n");
        foreach (var subject in RuleBook.All.GroupBy(Subject, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## {subject.Key}\n\n")
                .Append("| slug | protects | trips when |\n|---|---|---|\n");
            foreach (var rule in subject)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| `{rule.Slug}` | {rule.Protects.ToString().ToLowerInvariant()} | {rule.TripsWhen} |\n"
                );
            }
        }

        return text.ToString();
    }

    /// <summary>The folder a rule stands in, which is the last part of its namespace.</summary>
    private static string Subject(Rule rule) => rule.Judge.Method.DeclaringType!.Namespace!.Split('.')[^1];
}
