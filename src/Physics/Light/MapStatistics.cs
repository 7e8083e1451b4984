namespace Litterfall.Physics.Light;

/// <summary>How even a map is.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="Least">Smallest.</param>
/// <param name="Most">Largest.</param>
/// <param name="Variation">Standard deviation of the population over the mean.</param>
/// <param name="Tenth">Percentile 10, linear between ranks.</param>
/// <param name="Half">Percentile 50.</param>
/// <param name="NineTenths">Percentile 90.</param>
public sealed record MapStatistics(
    double Mean,
    double Least,
    double Most,
    double Variation,
    double Tenth,
    double Half,
    double NineTenths
)
{
    /// <summary>Statistics of values.</summary>
    /// <param name="values">One or more.</param>
    public static MapStatistics Of(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        double sum = 0.0;
        foreach (double v in values)
        {
            sum += v;
        }

        double mean = sum / sorted.Length;
        double squares = 0.0;
        foreach (double v in values)
        {
            squares += (v - mean) * (v - mean);
        }

        return new MapStatistics(
            mean,
            sorted[0],
            sorted[^1],
            mean > 0.0 ? Math.Sqrt(squares / sorted.Length) / mean : 0.0,
            Percentile(sorted, 0.1),
            Percentile(sorted, 0.5),
            Percentile(sorted, 0.9)
        );
    }

    private static double Percentile(double[] sorted, double share)
    {
        double at = share * (sorted.Length - 1);
        int low = (int)at;
        int high = Math.Min(low + 1, sorted.Length - 1);
        return sorted[low] + ((at - low) * (sorted[high] - sorted[low]));
    }
}
