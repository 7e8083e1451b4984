using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Trees;

namespace Litterfall.App.Shipping;

/// <summary>Fields of a case that several parts read.</summary>
internal static class ShipFields
{
    /// <summary>Temperatures that are let in, °C: what is no weather becomes a hold, not a fault.</summary>
    public static readonly NumberRange Air = NumberRange.Within(500);

    private const string ADay = "a day such as 2026-08-14";
    private const string ATime = "a time such as 2026-08-14T18:00:00Z";
    private static readonly string[] Names = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];

    /// <summary>A day that must be there.</summary>
    public static DateOnly Day(TreeForm form, string key) =>
        form.Text(key) is { } text ? Day(form, key, text) ?? default : default;

    /// <summary>A day that may be left out.</summary>
    public static DateOnly? OptionalDay(TreeForm form, string key) =>
        form.OptionalText(key) is { } text ? Day(form, key, text) : null;

    /// <summary>A time with its offset that may be left out, UTC.</summary>
    public static DateTime? OptionalTime(TreeForm form, string key)
    {
        if (form.OptionalText(key) is not { } text)
        {
            return null;
        }

        if (
            DateTimeOffset.TryParse(
                text,
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal,
                out var time
            ) && time.Year is >= 1970 and <= 2200
        )
        {
            return time.UtcDateTime;
        }

        form.Refuse(key, $"{TreeNode.Shown(text)} is no time", ATime);
        return null;
    }

    /// <summary>Days of the week as "Mon"; none where they are left out.</summary>
    public static ImmutableArray<DayOfWeek> Weekdays(TreeForm form, string key)
    {
        var days = ImmutableArray.CreateBuilder<DayOfWeek>();
        foreach (var text in form.OptionalTexts(key, Names.Length))
        {
            if (Array.IndexOf(Names, text) is var at and >= 0)
            {
                days.Add((DayOfWeek)at);
            }
            else
            {
                form.Refuse(key, $"{TreeNode.Shown(text)} is no day of the week", string.Join(", ", Names));
            }
        }

        return days.ToImmutable();
    }

    private static DateOnly? Day(TreeForm form, string key, string text)
    {
        if (
            DateOnly.TryParseExact(
                text,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            ) && day.Year is >= 1970 and <= 2200
        )
        {
            return day;
        }

        form.Refuse(key, $"{TreeNode.Shown(text)} is no day", ADay);
        return null;
    }
}
