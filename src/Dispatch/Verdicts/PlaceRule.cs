using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Whether carrier and regions are known at all.</summary>
internal static class PlaceRule
{
    /// <summary>What is missing.</summary>
    public static IEnumerable<ShipReason> Reasons(WeekTask task, DeliveryRegion? home, DeliveryRegion? away)
    {
        if (task.Parcel.Contents.Count == 0)
        {
            yield return Hold("empty", "Nothing alive is entered for this parcel.", "Enter what goes in it.");
        }

        if (task.Carrier is null)
        {
            yield return Hold(
                "no-carrier",
                "No carrier is chosen whose terms are entered.",
                "Choose a carrier, and enter its days, hours and rules."
            );
        }

        foreach (var (region, words) in new[] { (home, "the workshop"), (away, "the destination") })
        {
            if (region is null)
            {
                yield return Hold(
                    "no-region",
                    $"The region of {words} is not entered, so its holidays are not known.",
                    $"Enter the region of {words}."
                );
            }
            else if (PlaceClock.Find(region.Zone) is null)
            {
                yield return Hold(
                    "region-zone",
                    $"The region {region.Name} names the unknown time zone “{region.Zone}”.",
                    "Choose its time zone."
                );
            }
            else if (HolidayLibrary.Refusal(region.Country, region.Part) is { Length: > 0 } refusal)
            {
                yield return Hold("region-country", refusal, $"Correct the country of {region.Name}.");
            }
        }
    }

    /// <summary>A day that is over, or whose hand-over is.</summary>
    public static ShipReason? Over(WeekTask task, DateOnly day)
    {
        var zone = task.Region(task.Rules.HomeRegion)?.Zone ?? "";
        if (PlaceClock.Find(zone) is not { } clock || task.Carrier is not { } carrier)
        {
            return null;
        }

        var last = clock.Utc(day, carrier.HandOverHour);
        return task.Now <= last
            ? null
            : new ShipReason
            {
                Slug = "too-late",
                Rule = ShipRule.Calendar,
                Verdict = ShipVerdict.Never,
                Text =
                    $"The last hand-over of {CalendarWords.Day(day)} was at "
                    + $"{CalendarWords.Hour(carrier.HandOverHour)}.",
                Cure = "Choose a later day.",
            };
    }

    private static ShipReason Hold(string slug, string text, string cure) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Knowledge,
            Verdict = ShipVerdict.Hold,
            Text = text,
            Cure = cure,
            IsProtective = true,
        };
}
