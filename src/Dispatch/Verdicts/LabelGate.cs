using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>
/// Lets a label out only for a day on which the parcel may leave, on that day, and with a verdict that knows
/// the newest forecast. There is no other way to a label, and none on a Friday or at the weekend.
/// </summary>
public static class LabelGate
{
    /// <summary>Why there is no label, in one sentence; empty where there is one.</summary>
    /// <param name="verdict">Verdict of the day.</param>
    /// <param name="today">The day at the workshop.</param>
    /// <param name="now">Now, UTC.</param>
    /// <param name="newestForecast">When the newest forecast of its places was taken, UTC; null for none.
    /// </param>
    public static string Refusal(DayVerdict verdict, DateOnly today, DateTime now, DateTime? newestForecast)
    {
        if (IsBarred(today) || IsBarred(verdict.Day))
        {
            var day = IsBarred(today) ? today : verdict.Day;
            return $"No label for live goods on a {CalendarWords.Weekday(day.DayOfWeek)}: "
                + "the parcel would lie over the weekend.";
        }

        if (!verdict.MayShip)
        {
            var reason = verdict.Reasons.FirstOrDefault(r => r.Verdict >= ShipVerdict.Hold);
            return $"No label: {VerdictWords.Verdict(verdict.Verdict)} on {CalendarWords.Day(verdict.Day)}. "
                + (reason is null ? "It was not judged." : $"{reason.Text} {reason.Cure}".TrimEnd());
        }

        if (verdict.Day != today)
        {
            return $"No label: this verdict is for {CalendarWords.Day(verdict.Day)}, and today is "
                + $"{CalendarWords.Day(today)}. Judge it again on the day it leaves.";
        }

        return Stale(verdict, now, newestForecast);
    }

    private static string Stale(DayVerdict verdict, DateTime now, DateTime? newest)
    {
        if (verdict.ForecastTakenAt is not { } taken || verdict.JudgedAt is not { } judged)
        {
            return "No label: the verdict does not say which forecast it knew. Judge it again.";
        }

        if (newest > judged)
        {
            return "No label: a newer forecast came in after the verdict. Judge it again.";
        }

        return (now - taken).TotalHours > DispatchDefaults.LongestForecastAgeHours
            ? "No label: the forecast behind the verdict is too old by now. Take it again and judge anew."
            : "";
    }

    private static bool IsBarred(DateOnly day) =>
        day.DayOfWeek is DayOfWeek.Friday or DayOfWeek.Saturday or DayOfWeek.Sunday;
}
