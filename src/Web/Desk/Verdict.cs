using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>The verdict on a design in one line.</summary>
public static class Verdict
{
    private const double Seldom = 365;

    /// <summary>"Ready to build, 2 cautions. Drain every 24–30 days. Animals from 12 March 2026."</summary>
    /// <param name="result">The result.</param>
    /// <param name="preferences">Units.</param>
    public static string Of(DesignResult result, UnitPreferences preferences)
    {
        var parts = new List<string> { Head(result) };
        if (Number(result, "water.drainEveryDays") is { } often && often.Figure.Value > Seldom)
        {
            parts.Add("Drain less than once a year");
        }
        else if (Number(result, "water.drainEveryDays") is { } every)
        {
            parts.Add(
                Number(result, "water.drainEveryDaysLow") is { } low
                && Number(result, "water.drainEveryDaysHigh") is { } high
                    ? $"Drain every {preferences.Show(low.Figure, high.Figure, low.Unit)}"
                    : $"Drain every {preferences.Show(every.Figure, every.Unit)}"
            );
        }

        if (
            result.Numbers.Design.Design.Animals.Count > 0
            && TankPlan.Of(result.Numbers, result.Findings).Animals is { Held: null } day
        )
        {
            parts.Add(FormattableString.Invariant($"Animals from {day.Earliest:d MMMM yyyy}"));
        }

        return string.Join(". ", parts) + ".";
    }

    /// <summary>"Don't build yet: 1 problem to fix"; what is accepted is told, and counted apart.</summary>
    private static string Head(DesignResult result)
    {
        var stops = result.Open.Count(f => f.Severity == Severity.Stop);
        var cautions = result.Open.Count(f => f.Severity == Severity.Caution);
        var accepted = result.Findings.Length - result.Open.Count();
        var head =
            stops > 0 ? $"Don't build yet: {Count(stops, "problem")} to fix"
            : cautions > 0 ? $"Ready to build, {Count(cautions, "caution")}"
            : "Ready to build";
        return accepted > 0 ? FormattableString.Invariant($"{head}, {accepted} accepted") : head;
    }

    private static ReportNumber? Number(DesignResult result, string key) =>
        ReportPath.Find(result.Report, key) as ReportNumber;

    private static string Count(int count, string word) => count == 1 ? $"1 {word}" : $"{count} {word}s";
}
