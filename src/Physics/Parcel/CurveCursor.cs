namespace Litterfall.Physics.Parcel;

/// <summary>Walks along a curve of straight lines, constant outside, with steps.</summary>
internal ref struct CurveCursor(ReadOnlySpan<double> seconds, ReadOnlySpan<double> values)
{
    private readonly ReadOnlySpan<double> times = seconds;
    private readonly ReadOnlySpan<double> heights = values;
    private int next;

    /// <summary>Gets the time at which the line bends or jumps next; infinite after the last.</summary>
    public readonly double NextSeconds => next < times.Length ? times[next] : double.PositiveInfinity;

    /// <summary>Moves to a time that does not lie before the last one.</summary>
    /// <returns>Value and change a second from there to the next bend.</returns>
    public (double Value, double Slope) MoveTo(double at)
    {
        while (next < times.Length && times[next] <= at)
        {
            next++;
        }

        if (times.IsEmpty)
        {
            return (0.0, 0.0);
        }

        if (next == 0 || next == times.Length)
        {
            return (heights[next == 0 ? 0 : next - 1], 0.0);
        }

        double slope = (heights[next] - heights[next - 1]) / (times[next] - times[next - 1]);
        return (heights[next - 1] + (slope * (at - times[next - 1])), slope);
    }
}
