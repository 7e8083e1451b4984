using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Marks;

/// <summary>Readings of one channel while they are looked at; marks are added as they are found.</summary>
/// <param name="Quantity">What is measured.</param>
/// <param name="Ticks">Times, UTC ticks, rising.</param>
/// <param name="Values">Values, no number where there is none.</param>
/// <param name="Marks">Marks, filled in.</param>
public sealed record Channel(LogQuantity Quantity, long[] Ticks, double[] Values, LogMarks[] Marks)
{
    /// <summary>Puts a mark on readings.</summary>
    /// <param name="from">First reading.</param>
    /// <param name="to">One after the last.</param>
    /// <param name="mark">The mark.</param>
    public void Mark(int from, int to, LogMarks mark)
    {
        for (var i = from; i < to; i++)
        {
            Marks[i] |= mark;
        }
    }
}
