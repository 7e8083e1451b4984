using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;

namespace Litterfall.Dispatch.Tasks;

/// <summary>What is done for parcels on which day.</summary>
public static class ParcelTasks
{
    // Own choices: a carton with cups and packs, and three places looked up; hours worked tell better.
    private const double PackMinutes = 25;
    private const double ForecastMinutes = 10;
    private const string Page = "/dispatch";

    /// <summary>
    /// Tasks of a span of days: the forecast before the shipping week, packing and hand-over of what is
    /// cleared, a look at what arrives, and answers to open claims.
    /// </summary>
    /// <param name="parcels">All parcels.</param>
    /// <param name="claims">All claims.</param>
    /// <param name="rules">The shop's rules.</param>
    /// <param name="span">First and last day, both included.</param>
    /// <param name="name">How a parcel is called: calendars are read by many and name no customer.</param>
    public static IEnumerable<DayTask> Find(
        IReadOnlyList<Parcel> parcels,
        IReadOnlyList<Claim> claims,
        DispatchRules rules,
        (DateOnly First, DateOnly Last) span,
        Func<Parcel, string> name
    )
    {
        bool Within(DateOnly day) => day >= span.First && day <= span.Last;
        var waiting = parcels.Count(p => p.State == ParcelState.Planned);
        var sunday = span.First.AddDays((7 - (int)span.First.DayOfWeek) % 7);
        if (waiting > 0 && Within(sunday))
        {
            yield return new()
            {
                Key = string.Create(CultureInfo.InvariantCulture, $"dispatch-forecast-{sunday:yyyyMMdd}"),
                Day = sunday,
                Kind = TaskKind.Order,
                Title = "Take the forecasts of the shipping week",
                Detail = waiting == 1 ? "1 parcel waits" : $"{waiting} parcels wait",
                Minutes = ForecastMinutes,
                Page = $"{Page}/forecasts",
            };
        }

        foreach (var parcel in parcels)
        {
            if (parcel.State == ParcelState.Cleared && parcel.ShipDay is { } day && Within(day))
            {
                yield return Leave(parcel, day, rules, name(parcel));
            }

            if (parcel.State == ParcelState.HandedOver && parcel.ShipDay is { } gone)
            {
                var asked = gone.AddDays(1) < span.First ? span.First : gone.AddDays(1);
                if (Within(asked))
                {
                    yield return For(parcel, "arrived", asked, $"Ask how {name(parcel)} arrived");
                }
            }
        }

        foreach (var claim in claims.Where(c => c.Outcome == ClaimOutcome.Open))
        {
            var due = DateOnly.FromDateTime(claim.SaidAt).AddDays(rules.AnswerDays);
            var on = due < span.First ? span.First : due;
            if (Within(on) && parcels.FirstOrDefault(p => p.Number == claim.Parcel) is { } parcel)
            {
                yield return For(parcel, "claim", on, $"Answer the claim of {name(parcel)}");
            }
        }
    }

    private static DayTask Leave(Parcel parcel, DateOnly day, DispatchRules rules, string called)
    {
        var hour = rules.Carriers.FirstOrDefault(c => c.Key == parcel.Carrier)?.HandOverHour;
        return For(parcel, "leave", day, $"Pack and hand over {called}") with
        {
            Detail = hour is { } by
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"by {(int)by}:{(int)Math.Round(60 * (by % 1)):00}"
                )
                : "",
            Minutes = PackMinutes,
        };
    }

    /// <summary>A parcel with its recipient.</summary>
    /// <param name="parcel">The parcel.</param>
    public static string Named(Parcel parcel) => $"{Numbered(parcel)} to {parcel.Recipient}";

    /// <summary>A parcel by its number alone.</summary>
    /// <param name="parcel">The parcel.</param>
    public static string Numbered(Parcel parcel) =>
        string.Create(CultureInfo.InvariantCulture, $"parcel {parcel.Number}");

    private static DayTask For(Parcel parcel, string what, DateOnly day, string title) =>
        new()
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"parcel-{parcel.Number}-{what}"),
            Day = day,
            Kind = TaskKind.Order,
            Title = title,
            Order = parcel.Order,
            Page = string.Create(CultureInfo.InvariantCulture, $"{Page}/{parcel.Number}"),
            IsFirm = true,
        };
}
