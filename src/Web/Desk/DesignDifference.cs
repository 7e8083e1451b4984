using Litterfall.Domain.Figures;
using Litterfall.Judging;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>What differs between two results, in words.</summary>
public static class DesignDifference
{
    private const double Slight = 0.02;

    private static readonly (string Key, string Words)[] Told =
    [
        ("water.gainMlPerDay", "water gained per day"),
        ("water.drainEveryDays", "time between drains"),
        ("water.leastAirAtRootsPercent", "lowest air at roots"),
        ("headspace.airCMax", "warmest air"),
        ("headspace.airCMin", "coolest air"),
        ("headspace.humidityPercentMean", "humidity"),
        ("headspace.airChangesPerHourMean", "air changes an hour"),
        ("light.soilPpfdMean", "light on the ground"),
        ("weights.plantedKg", "planted weight"),
        ("cost.goods", "cost of materials"),
    ];

    /// <summary>Findings gone and new, and numbers that moved by more than two parts in a hundred.</summary>
    /// <param name="one">The first.</param>
    /// <param name="other">The second.</param>
    /// <param name="preferences">Units.</param>
    public static IEnumerable<string> Of(DesignResult? one, DesignResult? other, UnitPreferences preferences)
    {
        if (one is null || other is null)
        {
            yield break;
        }

        foreach (
            var gone in one.Open.Where(f => other.Findings.All(o => o.Slug != f.Slug)).DistinctBy(f => f.Slug)
        )
        {
            yield return $"Solved: {FindingWords.Of(gone.Text, preferences)}";
        }

        foreach (
            var come in other.Open.Where(f => one.Findings.All(o => o.Slug != f.Slug)).DistinctBy(f => f.Slug)
        )
        {
            yield return $"New: {FindingWords.Of(come.Text, preferences)}";
        }

        foreach (var (key, words) in Told)
        {
            if (
                ReportPath.Find(one.Report, key) is ReportNumber a
                && ReportPath.Find(other.Report, key) is ReportNumber b
                && Math.Abs(a.Number - b.Number) > Slight * Math.Max(Math.Abs(a.Number), 1e-9)
            )
            {
                var (was, now) = (preferences.Show(a.Figure, a.Unit), preferences.Show(b.Figure, b.Unit));
                yield return $"{words}: {was} → {now}";
            }
        }
    }
}
