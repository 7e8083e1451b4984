using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Regions;

/// <summary>
/// Days on which nothing is brought in a region: public holidays of its country, its own days, and those of
/// the workshop's calendar, less those on which parcels are brought all the same.
/// </summary>
public sealed class RestDays
{
    private readonly DeliveryRegion region;
    private readonly Dictionary<DateOnly, RestDay> own;
    private readonly HashSet<DateOnly> worked;
    private readonly Dictionary<DateOnly, string> holidays = [];

    /// <summary>Makes them.</summary>
    /// <param name="region">The region.</param>
    /// <param name="more">Days of the workshop's calendar on which no carrier drives.</param>
    /// <param name="span">First and last year that is asked for.</param>
    public RestDays(DeliveryRegion region, IEnumerable<RestDay> more, (int First, int Last) span)
    {
        this.region = region;
        own = region.Days.Concat(more).GroupBy(d => d.Day).ToDictionary(g => g.Key, g => g.First());
        worked = [.. region.Worked];
        for (var year = span.First; year <= span.Last; year++)
        {
            foreach (var (day, name) in HolidayLibrary.Year(region.Country, region.Part, year))
            {
                holidays[day] = name;
            }
        }
    }

    /// <summary>Name of the region.</summary>
    public string Place => region.Name;

    /// <summary>The rest of a day; null where parcels are brought.</summary>
    /// <param name="day">The day.</param>
    public RestDay? On(DateOnly day)
    {
        if (own.TryGetValue(day, out var mine))
        {
            return mine;
        }

        return holidays.TryGetValue(day, out var name) && !worked.Contains(day) ? new(day, name) : null;
    }

    /// <summary>Rest days from one day to another, both counted.</summary>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day.</param>
    public Seq<RestDay> Between(DateOnly first, DateOnly last)
    {
        var found = new List<RestDay>();
        for (var day = first; day <= last; day = day.AddDays(1))
        {
            if (On(day) is { } rest)
            {
                found.Add(rest);
            }
        }

        return [.. found];
    }
}
