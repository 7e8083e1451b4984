using System.Globalization;

namespace Litterfall.Workshop.Scheduling;

/// <summary>Days as plans tell them.</summary>
public static class PlanWords
{
    /// <summary>"Tue 29 Sep 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"Tue 29 Sep".</summary>
    public static string Short(DateOnly day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>"1 day", "3 days".</summary>
    public static string Days(int count) =>
        count == 1 ? "1 day" : FormattableString.Invariant($"{count} days");

    /// <summary>"cut", "build and plant".</summary>
    public static string Stage(string stage) =>
        stage switch
        {
            StageKey.Cut => "prepare and cut",
            StageKey.Leak => "leak test",
            StageKey.Background => "background",
            StageKey.Plants => "plants come",
            StageKey.Plant => "build and plant",
            _ => "pack and hand over",
        };
}
