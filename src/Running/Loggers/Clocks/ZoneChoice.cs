using System.Globalization;
using NodaTime;

namespace Litterfall.Running.Loggers.Clocks;

/// <summary>Finds the zone that a text, a setting or the clock changes of a file mean.</summary>
public static class ZoneChoice
{
    /// <summary>
    /// Zones that are tried where a file shows a clock change and says nothing; the first that fits is
    /// said as a guess.
    /// </summary>
    private static readonly string[] Tried =
    [
        "Europe/Berlin",
        "Europe/London",
        "Europe/Helsinki",
        "America/New_York",
        "Australia/Sydney",
        "Pacific/Auckland",
        "America/Santiago",
        "Australia/Lord_Howe",
    ];

    /// <summary>Names of all zones, for a list to choose from.</summary>
    public static IReadOnlyList<string> Names() =>
        [
            .. DateTimeZoneProviders
                .Tzdb.Ids.Where(i => i.Contains('/', StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The zone of a name such as "Europe/Berlin", "UTC" or "UTC+01:00"; null for none.</summary>
    public static DateTimeZone? Find(string name)
    {
        var text = name.Trim();
        if (text.Length == 0)
        {
            return null;
        }

        return Fixed(text)
            ?? DateTimeZoneProviders.Tzdb.GetZoneOrNull(text)
            ?? DateTimeZoneProviders
                .Tzdb.Ids.Where(i => string.Equals(i, text, StringComparison.OrdinalIgnoreCase))
                .Select(i => DateTimeZoneProviders.Tzdb[i])
                .FirstOrDefault();
    }

    /// <summary>A zone without changes.</summary>
    public static DateTimeZone FromMinutes(int minutes) =>
        DateTimeZone.ForOffset(Offset.FromSeconds(minutes * 60));

    /// <summary>How a fixed offset is written.</summary>
    public static string Shown(int minutes) =>
        minutes == 0
            ? "UTC"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"UTC{(minutes < 0 ? '-' : '+')}{Math.Abs(minutes) / 60:00}:{Math.Abs(minutes) % 60:00}"
            );

    /// <summary>The offset that a text names: "UTC+1", "GMT-05:00", "+0100"; null for none.</summary>
    public static int? Minutes(ReadOnlySpan<char> text)
    {
        var plain = text.Trim();
        if (
            plain.Equals("UTC", StringComparison.OrdinalIgnoreCase)
            || plain.Equals("GMT", StringComparison.OrdinalIgnoreCase)
            || plain is "Z"
        )
        {
            return 0;
        }

        if (
            plain.StartsWith("UTC", StringComparison.OrdinalIgnoreCase)
            || plain.StartsWith("GMT", StringComparison.OrdinalIgnoreCase)
        )
        {
            plain = plain[3..].TrimStart();
        }

        if (plain.Length < 2 || plain[0] is not ('+' or '-' or '−'))
        {
            return null;
        }

        var sign = plain[0] == '+' ? 1 : -1;
        var digits = plain[1..].ToString().Replace(":", "", StringComparison.Ordinal);
        if (
            digits.Length is 0 or > 4
            || !int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        )
        {
            return null;
        }

        var minutes = digits.Length <= 2 ? number * 60 : (number / 100 * 60) + (number % 100);
        return minutes <= 14 * 60 ? sign * minutes : null;
    }

    /// <summary>
    /// The zone whose clock changes are those of the rows: a jump of the times where the readings go on.
    /// Null where none fits.
    /// </summary>
    public static string? FromChanges(long[] local, long interval)
    {
        var jumps = new List<(long From, long To)>();
        for (var i = 1; i < local.Length && jumps.Count < 20; i++)
        {
            var step = local[i] - local[i - 1];
            var extra = Math.Abs(step - interval);
            if (extra == TimeSpan.TicksPerHour || extra == TimeSpan.TicksPerHour / 2)
            {
                jumps.Add((local[i - 1], local[i]));
            }
        }

        return jumps.Count is 0 or >= 20 ? null : Array.Find(Tried, z => Fits(z, jumps, interval));
    }

    private static bool Fits(string name, List<(long From, long To)> jumps, long interval)
    {
        var zone = DateTimeZoneProviders.Tzdb[name];
        var isFound = false;
        foreach (var (from, to) in jumps)
        {
            var near = Instant.FromDateTimeUtc(new DateTime(from, DateTimeKind.Utc));
            var day = Duration.FromDays(2);
            foreach (
                var part in zone.GetZoneIntervals(near - day, near + day)
                    .Where(p => p.HasStart && p.Start > near - day)
            )
            {
                var at = part.Start.ToDateTimeUtc().Ticks;
                var before = zone.GetUtcOffset(part.Start - Duration.FromTicks(1)).Ticks;
                var wall = at + before;
                isFound |=
                    from < wall
                    && from + interval >= wall
                    && to - from - interval == part.WallOffset.Ticks - before;
            }
        }

        return isFound;
    }

    private static DateTimeZone? Fixed(string text) =>
        Minutes(text) is { } minutes ? FromMinutes(minutes) : null;
}
