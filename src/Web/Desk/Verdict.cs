using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>The verdict on a design in one sentence.</summary>
public static class Verdict
{
    private const double Seldom = 365;

    /// <summary>"Holds; drain every 24–30 days; animals from 12 March 2026."</summary>
    /// <param name="result">The result.</param>
    /// <param name="taste">Units.</param>
    public static string Of(DesignResult result, Taste taste)
    {
        var stops = result.Findings.Count(f => f.Severity == Severity.Stop);
        var cautions = result.Findings.Count(f => f.Severity == Severity.Caution);
        var parts = new List<string>
        {
            stops > 0 ? $"Not to be built so: {Count(stops, "stop")}"
            : cautions > 0 ? $"Holds, with {Count(cautions, "caution")}"
            : "Holds",
        };
        if (Number(result, "water.drainEveryDays") is { } often && often.Figure.Value > Seldom)
        {
            parts.Add("drain less than once a year");
        }
        else if (Number(result, "water.drainEveryDays") is { } every)
        {
            parts.Add(
                Number(result, "water.drainEveryDaysLow") is { } low
                && Number(result, "water.drainEveryDaysHigh") is { } high
                    ? $"drain every {taste.Show(low.Figure, high.Figure, low.Unit)}"
                    : $"drain every {taste.Show(every.Figure, every.Unit)}"
            );
        }

        if (
            result.Numbers.Design.Design.Animals.Count > 0
            && TankPlan.Of(result.Numbers, result.Findings).Animals is { Held: null } day
        )
        {
            parts.Add(FormattableString.Invariant($"animals from {day.Earliest:d MMMM yyyy}"));
        }

        return string.Join("; ", parts) + ".";
    }

    private static ReportNumber? Number(DesignResult result, string key) =>
        ReportPath.Find(result.Report, key) as ReportNumber;

    private static string Count(int count, string word) => count == 1 ? $"1 {word}" : $"{count} {word}s";
}
