using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Service;

/// <summary>Readings in the log of a tank.</summary>
public static class CareReadings
{
    /// <summary>
    /// The lines that measure something, by the clock of the tank's room, in the order of time.
    /// </summary>
    /// <param name="lines">Lines that count.</param>
    /// <param name="local">Time of the room for a time in UTC.</param>
    public static ImmutableArray<TankReading> From(
        IEnumerable<CareEntry> lines,
        Func<DateTime, DateTime> local
    ) =>
        [
            .. lines
                .Where(l =>
                    Kind(l.Kind) is not null && (l.Amount is not null || l.HumidityPercent is not null)
                )
                .Select(l => new TankReading
                {
                    At = DateTime.SpecifyKind(local(l.At), DateTimeKind.Unspecified),
                    Kind = Kind(l.Kind)!.Value,
                    Amount = l.Amount,
                    HumidityPercent = l.HumidityPercent,
                })
                .OrderBy(r => r.At),
        ];

    private static ReadingKind? Kind(CareKind kind) =>
        kind switch
        {
            CareKind.Level => ReadingKind.Level,
            CareKind.Drained => ReadingKind.Drained,
            CareKind.NozzleFlow => ReadingKind.Mist,
            CareKind.Weighed => ReadingKind.Weight,
            CareKind.Squeezed => ReadingKind.Squeeze,
            CareKind.Air => ReadingKind.Air,
            _ => null,
        };
}
