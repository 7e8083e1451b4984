namespace Litterfall.UnitTests.Web.Shipping;

/// <summary>A clock that stands where a test puts it.</summary>
internal sealed class BenchClock : TimeProvider
{
    /// <summary>Now, UTC.</summary>
    public DateTimeOffset Now { get; set; }

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => Now;
}
