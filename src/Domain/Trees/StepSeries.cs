using System.Collections.Immutable;

namespace Litterfall.Domain.Trees;

/// <summary>
/// A value over time that holds from its hour until the next; before the first hour it is 0.
/// </summary>
/// <param name="Hours">Hours of the changes, rising, 0 or more.</param>
/// <param name="Values">Value from each of them on.</param>
public sealed record StepSeries(ImmutableArray<double> Hours, ImmutableArray<double> Values)
{
    /// <summary>Always 0.</summary>
    public static readonly StepSeries Zero = new([], []);

    /// <summary>True when it is never other than 0.</summary>
    public bool IsZero => Values.All(v => v == 0.0);

    /// <summary>The same value from the start on.</summary>
    public static StepSeries Constant(double value) => new([0.0], [value]);

    /// <summary>The value just after an hour.</summary>
    public double At(double hour)
    {
        int i = Hours.BinarySearch(hour);
        i = i < 0 ? ~i - 1 : i;
        return i < 0 ? 0.0 : Values[i];
    }
}
