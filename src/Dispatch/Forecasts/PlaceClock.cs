using NodaTime;

namespace Litterfall.Dispatch.Forecasts;

/// <summary>The clock on the wall of a place: hours of its days as UTC, and back.</summary>
public sealed class PlaceClock
{
    private readonly DateTimeZone zone;

    private PlaceClock(DateTimeZone zone) => this.zone = zone;

    /// <summary>The clock of a zone of the tz database; null for an unknown name.</summary>
    /// <param name="name">Such as "Europe/Berlin".</param>
    public static PlaceClock? Find(string name) =>
        DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) is { } zone ? new(zone) : null;

    /// <summary>An hour of a day as UTC; in the hour that is left out in spring the one after it.</summary>
    /// <param name="day">The day.</param>
    /// <param name="hour">Hour on the wall, may go beyond 24.</param>
    public DateTime Utc(DateOnly day, double hour)
    {
        var local = LocalDateTime
            .FromDateTime(day.ToDateTime(TimeOnly.MinValue))
            .PlusSeconds((long)Math.Round(3600 * hour));
        return local.InZoneLeniently(zone).ToDateTimeUtc();
    }

    /// <summary>Hour on the wall at a time, 0 up to 24.</summary>
    /// <param name="utc">The time, UTC.</param>
    public double Hour(DateTime utc) =>
        Instant.FromDateTimeUtc(utc).InZone(zone).TimeOfDay.NanosecondOfDay / 3.6e12;

    /// <summary>Day on the wall at a time.</summary>
    /// <param name="utc">The time, UTC.</param>
    public DateOnly Day(DateTime utc) =>
        DateOnly.FromDateTime(Instant.FromDateTimeUtc(utc).InZone(zone).Date.ToDateTimeUnspecified());
}
