namespace Litterfall.App.Cases;

/// <summary>
/// A value over time: each holds from its hour until the next one's; before the first it is 0.
/// </summary>
public sealed class StepValues
{
    /// <summary>Most hours there can be in a case.</summary>
    public const double LastHour = 1e6;

    private readonly double[] hours;
    private readonly double[] values;

    private StepValues(double[] hours, double[] values)
    {
        this.hours = hours;
        this.values = values;
    }

    /// <summary>0 at all times.</summary>
    public static StepValues Zero { get; } = new([], []);

    /// <summary>Hours at which it may change, rising.</summary>
    public IReadOnlyList<double> Hours => hours;

    /// <summary>Its values, one for each of <see cref="Hours"/>.</summary>
    public IReadOnlyList<double> Values => values;

    /// <summary>The value from an hour on.</summary>
    public double At(double hour)
    {
        int found = Array.BinarySearch(hours, hour);
        int last = found >= 0 ? found : ~found - 1;
        return last < 0 ? 0.0 : values[last];
    }

    /// <summary>From a number or a list of <c>[fromHour, value]</c> pairs.</summary>
    public static StepValues Read(CaseValue value, NumberRange range)
    {
        if (value.Node is CaseNumber)
        {
            return new([0.0], [value.Number(range)]);
        }

        if (value.Node is not CaseItems)
        {
            value.Refuse($"{range}, or a list of [fromHour, value] pairs");
            return Zero;
        }

        var items = value.List(1, "[fromHour, value] pairs");
        var (hours, values) = (new double[items.Count], new double[items.Count]);
        for (int i = 0; i < items.Count; i++)
        {
            (hours[i], values[i]) = Pair(items[i], range);
            if (i > 0 && hours[i] <= hours[i - 1])
            {
                items[i].Fault($"the hour of {items[i].Name} is not after the one before", "hours that rise");
                break;
            }
        }

        return new(hours, values);
    }

    private static (double Hour, double Value) Pair(CaseValue item, NumberRange range)
    {
        if (item.Node is not CaseItems { Items.Count: 2 })
        {
            item.Refuse("a pair [fromHour, value]");
            return (double.NaN, double.NaN);
        }

        var pair = item.List(2, "numbers");
        return (pair[0].Number(NumberRange.Between(0.0, LastHour)), pair[1].Number(range));
    }
}
