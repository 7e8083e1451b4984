using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.Dispatch.Regions;

/// <summary>Days of a parcel that leaves on a day.</summary>
/// <param name="Leaves">The day it leaves.</param>
/// <param name="Arrives">The day it is brought.</param>
/// <param name="Late">The day it is brought where the carrier needs one working day more.</param>
public sealed record ParcelDays(DateOnly Leaves, DateOnly Arrives, DateOnly Late);

/// <summary>
/// Which days a parcel with live goods may leave on, and when it arrives: never on a Friday or at the
/// weekend, never before a holiday, on a Thursday only where Friday is certain, and never where one day of
/// delay would leave it over a weekend or a holiday.
/// </summary>
/// <param name="carrier">The carrier's terms.</param>
/// <param name="calendar">The workshop's days.</param>
/// <param name="home">Rest days of the workshop's region.</param>
/// <param name="away">Rest days of the region it goes to.</param>
public sealed class ShipDays(CarrierTerms carrier, ShopCalendar calendar, RestDays home, RestDays away)
{
    /// <summary>Days that are looked over for one that will do.</summary>
    public const int LookAhead = 62;

    /// <summary>Rest days that the workshop's calendar holds, for a region.</summary>
    /// <param name="calendar">The workshop's days.</param>
    public static IEnumerable<RestDay> RestsFrom(ShopCalendar calendar) =>
        calendar
            .Holidays.Where(h => h.IsWithoutCarrier)
            .Select(h => new RestDay(h.Day, h.Name) { EveEndsAtHour = h.CarrierEndsEveAt });

    /// <summary>Days of a parcel that leaves on a day; null where the carrier never comes.</summary>
    /// <param name="leaves">The day it leaves.</param>
    public ParcelDays? Days(DateOnly leaves)
    {
        var day = leaves;
        for (var left = Math.Max(1, carrier.TransitDays); left > 0; left--)
        {
            if (NextWork(day) is not { } next)
            {
                return null;
            }

            day = next;
        }

        return NextWork(day) is { } late ? new(leaves, day, late) : null;
    }

    /// <summary>Why a parcel may not leave on a day; none where it may.</summary>
    /// <param name="day">The day.</param>
    public Seq<ShipReason> Reasons(DateOnly day)
    {
        ImmutableArray<ShipReason> found = [.. Bars(day)];
        if (found.IsEmpty)
        {
            return [];
        }

        var cure = CureDay(day);
        return
        [
            .. found.Select(r =>
                r with
                {
                    CureDay = cure,
                    Cure = cure is { } good
                        ? $"Ship on {CalendarWords.Day(good)}."
                        : "No day of the next two months will do: look at the carrier's days and your own.",
                }
            ),
        ];
    }

    /// <summary>The first later day on which no rule of the calendar stands against it.</summary>
    /// <param name="day">The day.</param>
    public DateOnly? CureDay(DateOnly day)
    {
        for (var i = 1; i <= LookAhead; i++)
        {
            if (!Bars(day.AddDays(i)).Any())
            {
                return day.AddDays(i);
            }
        }

        return null;
    }

    private IEnumerable<ShipReason> Bars(DateOnly day)
    {
        if (Weekday(day) is { } bar)
        {
            yield return bar;
            yield break;
        }

        if (home.On(day) is { } rest)
        {
            yield return Never(
                "holiday",
                $"{CalendarWords.Day(day)} is {rest.Name}: no carrier fetches parcels."
            );
            yield break;
        }

        if (!calendar.ShipDays.Contains(day.DayOfWeek) || !calendar.IsWork(day))
        {
            yield return Shop(day);
        }

        foreach (var reason in Days(day) is { } days ? OnTheWay(days) : [NoCarrier()])
        {
            yield return reason;
        }
    }

    private static ShipReason? Weekday(DateOnly day) =>
        day.DayOfWeek is DayOfWeek.Friday or DayOfWeek.Saturday or DayOfWeek.Sunday
            ? Never(
                "never-on-this-weekday",
                $"Live goods never leave on a {CalendarWords.Weekday(day.DayOfWeek)}: "
                    + "the parcel would lie over the weekend."
            )
            : null;

    private ShipReason Shop(DateOnly day) =>
        new()
        {
            Slug = "not-a-ship-day",
            Rule = ShipRule.ShopPolicy,
            Verdict = ShipVerdict.Hold,
            Text =
                $"Your workshop ships no live goods on {CalendarWords.Day(day)}; it does on "
                + $"{string.Join(", ", calendar.ShipDays.Select(CalendarWords.Weekday))}.",
            IsProtective = true,
        };

    private static ShipReason NoCarrier() =>
        Never("no-arrival-day", "The carrier brings no parcels on any day: enter its arrival days.");

    private IEnumerable<ShipReason> OnTheWay(ParcelDays days)
    {
        if (Rest(days.Leaves.AddDays(1), days.Arrives) is { } rest)
        {
            yield return Never(
                "before-a-holiday",
                $"{CalendarWords.Day(rest.Day)} is {rest.Name}{Place(rest)}: live goods never leave "
                    + "before a holiday."
            );
        }
        else if (HasWeekend(days.Leaves, days.Arrives))
        {
            yield return Never(
                "over-the-weekend",
                $"The parcel would arrive on {CalendarWords.Day(days.Arrives)} and lie over the weekend."
            );
        }
        else if (Late(days) is { } late)
        {
            yield return late;
        }

        if (Eve(days) is { } eve)
        {
            yield return eve;
        }
    }

    /// <summary>What one day of delay would do.</summary>
    private ShipReason? Late(ParcelDays days)
    {
        var lies = days.Late.DayNumber - days.Arrives.DayNumber > 1;
        if (!lies || carrier.DayLateChance <= 0)
        {
            return null;
        }

        var rest = Rest(days.Arrives.AddDays(1), days.Late);
        var over = rest is null ? "the weekend" : rest.Name;
        if (days.Leaves.DayOfWeek == DayOfWeek.Thursday)
        {
            return Never(
                "thursday-uncertain",
                $"A Thursday will do only where arrival on Friday is certain; {Odds()} come a day late, "
                    + $"and it would lie over {over} until {CalendarWords.Day(days.Late)}."
            );
        }

        return Never(
            "late-over-rest",
            $"One day late, it would lie over {over} until {CalendarWords.Day(days.Late)}; "
                + $"{Odds()} come a day late."
        ) with
        {
            Verdict = ShipVerdict.Hold,
            Measured = 100 * carrier.DayLateChance,
            Limit = 0,
        };
    }

    private string Odds() =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * carrier.DayLateChance:0.#} % of the parcels");

    /// <summary>Before a holiday nothing moves from an hour on, here or there.</summary>
    private ShipReason? Eve(ParcelDays days)
    {
        if (
            home.On(days.Leaves.AddDays(1)) is { EveEndsAtHour: { } ends } here
            && carrier.HandOverHour > ends
        )
        {
            return Never(
                "eve-of-a-holiday",
                $"On {CalendarWords.Day(days.Leaves)} nothing leaves after {CalendarWords.Hour(ends)}: "
                    + $"{here.Name} follows."
            );
        }

        return
            away.On(days.Arrives.AddDays(1)) is { EveEndsAtHour: { } stop } there
            && carrier.DeliversUntilHour > stop
            ? Never(
                "eve-of-a-holiday",
                $"On {CalendarWords.Day(days.Arrives)} nothing is brought after "
                    + $"{CalendarWords.Hour(stop)}, as {there.Name} follows, and it may come as late as "
                    + $"{CalendarWords.Hour(carrier.DeliversUntilHour)}."
            )
            : null;
    }

    private RestDay? Rest(DateOnly first, DateOnly last) =>
        home.Between(first, last).Concat(away.Between(first, last)).OrderBy(r => r.Day).FirstOrDefault();

    private string Place(RestDay rest) => home.On(rest.Day) is null ? $" in {away.Place}" : "";

    private static bool HasWeekend(DateOnly leaves, DateOnly arrives)
    {
        for (var day = leaves.AddDays(1); day < arrives; day = day.AddDays(1))
        {
            if (day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The next day on which the carrier brings parcels; null where none comes.</summary>
    private DateOnly? NextWork(DateOnly day)
    {
        for (var i = 1; i <= LookAhead; i++)
        {
            var next = day.AddDays(i);
            if (
                carrier.ArrivalDays.Contains(next.DayOfWeek)
                && home.On(next) is null
                && away.On(next) is null
            )
            {
                return next;
            }
        }

        return null;
    }

    private static ShipReason Never(string slug, string text) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Calendar,
            Verdict = ShipVerdict.Never,
            Text = text,
            IsProtective = true,
            Source = "keeper-practice",
            SourcePlace = "live goods leave early in the week, never before a weekend or a holiday",
            Provenance = Domain.Figures.Provenance.CommonPractice,
        };
}
