namespace Litterfall.Physics.Parcel;

/// <summary>A curve over time: straight lines between points, constant outside; a pair is a step.</summary>
/// <param name="Seconds">Times that do not fall, s.</param>
/// <param name="Values">A value for each.</param>
public sealed record TimeCurve(double[] Seconds, double[] Values)
{
    /// <summary>Gets a curve that is 0.</summary>
    public static TimeCurve Zero { get; } = new([], []);

    /// <summary>A value that holds from one time until another, and is 0 outside.</summary>
    /// <param name="value">The value.</param>
    /// <param name="fromSeconds">Start, s.</param>
    /// <param name="toSeconds">End, s.</param>
    public static TimeCurve Block(double value, double fromSeconds, double toSeconds) =>
        new([fromSeconds, fromSeconds, toSeconds, toSeconds], [0.0, value, value, 0.0]);

    /// <summary>The sum of curves, with every bend and step of each.</summary>
    /// <param name="curves">The curves.</param>
    public static TimeCurve Sum(params ReadOnlySpan<TimeCurve> curves)
    {
        var times = new SortedSet<double>();
        foreach (var curve in curves)
        {
            times.UnionWith(curve.Seconds);
        }

        // Each time stands twice, just before and from then on, so that steps of any of them are kept.
        var seconds = new double[2 * times.Count];
        var values = new double[2 * times.Count];
        int at = 0;
        foreach (double time in times)
        {
            seconds[at] = seconds[at + 1] = time;
            foreach (var curve in curves)
            {
                values[at] += curve.Before(time);
                values[at + 1] += curve.From(time);
            }

            at += 2;
        }

        return new TimeCurve(seconds, values);
    }

    /// <summary>The value from a time on.</summary>
    /// <param name="at">The time, s.</param>
    public double From(double at) => new CurveCursor(Seconds, Values).MoveTo(at).Value;

    /// <summary>The value just before a time.</summary>
    private double Before(double at)
    {
        int next = Array.BinarySearch(Seconds, at);
        next = next < 0 ? ~next : next;
        while (next > 0 && Seconds[next - 1] == at)
        {
            next--;
        }

        if (Seconds.Length == 0)
        {
            return 0.0;
        }

        if (next == 0 || next == Seconds.Length)
        {
            return Values[next == 0 ? 0 : next - 1];
        }

        double share = (at - Seconds[next - 1]) / (Seconds[next] - Seconds[next - 1]);
        return Values[next - 1] + (share * (Values[next] - Values[next - 1]));
    }
}
