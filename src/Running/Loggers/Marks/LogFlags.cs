using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Marks;

/// <summary>Marks of readings as spans.</summary>
public static class LogFlags
{
    private static readonly LogMarks[] Kinds =
    [
        LogMarks.Stuck,
        LogMarks.Saturated,
        LogMarks.OutOfRange,
        LogMarks.Drift,
        LogMarks.ClockStep,
    ];

    /// <summary>Spans of each mark.</summary>
    /// <param name="ticks">Times, UTC ticks.</param>
    /// <param name="marks">Marks, as many.</param>
    /// <param name="channel">Name of the channel.</param>
    public static IEnumerable<LogFlag> Find(long[] ticks, LogMarks[] marks, string channel)
    {
        foreach (var kind in Kinds)
        {
            var from = -1;
            for (var i = 0; i <= marks.Length; i++)
            {
                if (i < marks.Length && (marks[i] & kind) != LogMarks.None)
                {
                    from = from < 0 ? i : from;
                }
                else if (from >= 0)
                {
                    yield return new(
                        kind,
                        channel,
                        new DateTime(ticks[from], DateTimeKind.Utc),
                        new DateTime(ticks[i - 1], DateTimeKind.Utc)
                    );
                    from = -1;
                }
            }
        }
    }
}
