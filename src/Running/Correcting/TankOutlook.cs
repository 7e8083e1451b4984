using System.Globalization;

namespace Litterfall.Running.Correcting;

/// <summary>What is due at a tank.</summary>
public enum DueKind
{
    /// <summary>Draw the water off.</summary>
    Drain,

    /// <summary>Read the level, before the uncertain drain day comes.</summary>
    Look,

    /// <summary>Pour water in: the soil or the reservoir runs dry.</summary>
    Refill,
}

/// <summary>A day on which something is due.</summary>
/// <param name="Kind">What.</param>
/// <param name="On">When.</param>
/// <param name="Why">Why, in plain words.</param>
public sealed record DueDate(DueKind Kind, DateOnly On, string Why);

/// <summary>Days from planting between which something is expected, 90 of 100 times.</summary>
/// <param name="Day">The likeliest, counted from planting day 0.</param>
/// <param name="Low">The earliest.</param>
/// <param name="High">The latest; null where it may come after all days that were run.</param>
public sealed record DayBand(double Day, double Low, double? High);

/// <summary>What the forecast of a tank means for the round: what is due, and when.</summary>
public static class TankOutlook
{
    // Own choice: a date that is known to four days needs no reading before it.
    private const double KnownDays = 4;

    /// <summary>Due dates of a tank in the order of time.</summary>
    /// <param name="first">Day 0 of the forecast.</param>
    /// <param name="drain">Its next drain; null where none is due within the days that were run.</param>
    /// <param name="dry">The day on which it runs dry; null where it does not.</param>
    /// <param name="lastLook">The last day on which the level was read; null where it never was.</param>
    public static IReadOnlyList<DueDate> Due(DateOnly first, DayBand? drain, DayBand? dry, DateOnly? lastLook)
    {
        var due = new List<DueDate>();
        if (drain is not null)
        {
            var on = On(first, drain.Day);
            var earliest = On(first, drain.Low);
            if (drain.High is not { } latest || latest - drain.Low > KnownDays)
            {
                var look = lastLook is { } seen && earliest <= seen ? on : earliest;
                if (look < on)
                {
                    due.Add(
                        new(DueKind.Look, look, "Read the level: it may be time to drain from this day on.")
                    );
                }
            }

            due.Add(new(DueKind.Drain, on, Words(first, drain)));
        }

        if (dry is not null)
        {
            due.Add(
                new(
                    DueKind.Refill,
                    On(first, dry.Low),
                    "Check for dry soil: more water leaves than misting brings."
                )
            );
        }

        return [.. due.OrderBy(d => d.On).ThenBy(d => d.Kind)];
    }

    private static DateOnly On(DateOnly first, double day) => first.AddDays((int)Math.Floor(day));

    private static string Words(DateOnly first, DayBand drain) =>
        drain.High is { } high
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Drain: the water should reach its mark between {On(first, drain.Low):MMM d} and "
                    + $"{On(first, high):MMM d}."
            )
            : FormattableString.Invariant(
                $"Drain: the water should reach its mark from {On(first, drain.Low):MMM d} on."
            );
}
