using System.Collections.Immutable;

namespace Litterfall.Workshop.Cultures;

/// <summary>
/// Looks for the splits after which cups are ready on their day. Two ways are tried: every mother is split
/// once, as late as it can be; or every mother is first divided on the first day, and all of these are split
/// later. Each way is led through the day classes, so a plan holds what the model holds. Lines stay apart: a
/// new cup has one mother.
/// </summary>
public static class SplitSearch
{
    private const int MostParts = 8;
    private const int MostMothers = 60;
    private const double AlmostFull = 0.9;

    /// <summary>Plans for orders, one after another by their days: what one takes, the next does not
    /// have.</summary>
    /// <param name="asked">Mothers and temperature.</param>
    /// <param name="orders">What is wanted.</param>
    /// <param name="cancel">Ends the search between two tries.</param>
    public static ImmutableArray<SplitPlan> Find(
        SplitCase asked,
        IEnumerable<CupOrder> orders,
        CancellationToken cancel
    )
    {
        var plans = ImmutableArray.CreateBuilder<SplitPlan>();
        var groups = asked.Mothers.Select(m => new SplitGroup(m)).ToImmutableArray();
        var from = asked.From;
        foreach (var order in orders.OrderBy(o => o.Due).ThenBy(o => o.Name, StringComparer.Ordinal))
        {
            var plan = One(asked with { From = from }, groups, order, cancel);
            plans.Add(plan);
            if (plan.IsPossible)
            {
                // The next order finds the mothers as this one leaves them.
                (groups, from) = After(asked with { From = from }, groups, plan);
            }
        }

        return plans.ToImmutable();
    }

    private static SplitPlan One(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        CupOrder order,
        CancellationToken cancel
    )
    {
        var started = asked.ToStart(order.Cups);
        var none = new SplitPlan { Order = order, Started = started };
        if (groups.IsEmpty)
        {
            return none with { Bar = SplitBar.NoMother };
        }

        var rates = asked.Kind.Rates(asked.Celsius(asked.From));
        if (rates.GrowthFactor() <= 1)
        {
            return none with { Bar = SplitBar.Temperature, Celsius = asked.Kind.BestCelsius() };
        }

        var full = asked.Kind.PlateauOf(order.Liters) / asked.Kind.Females;
        if (order.Animals > AlmostFull * full)
        {
            return none with { Bar = SplitBar.CupTooSmall };
        }

        return InTime(asked, groups, order, started, cancel) ?? Refused(asked, groups, none, cancel);
    }

    /// <summary>The latest way that keeps the day, with as few parts as it takes; null for none.</summary>
    private static SplitPlan? InTime(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        CupOrder order,
        int started,
        CancellationToken cancel
    )
    {
        for (var parts = 1; parts <= MostParts; parts++)
        {
            cancel.ThrowIfCancellationRequested();
            if (new SplitWay(asked, groups, order, parts, started).Latest() is { } plan)
            {
                return plan;
            }
        }

        return null;
    }

    private static DateOnly? Earliest(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        SplitPlan none,
        CancellationToken cancel
    )
    {
        DateOnly? best = null;
        for (var parts = 1; parts <= MostParts; parts++)
        {
            cancel.ThrowIfCancellationRequested();
            var ready = new SplitWay(asked, groups, none.Order, parts, none.Started).Earliest()?.Ready;
            best = best is null || ready < best ? ready : best;
        }

        return best;
    }

    private static SplitPlan Refused(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        SplitPlan none,
        CancellationToken cancel
    )
    {
        bool Keeps(SplitCase with, ImmutableArray<SplitGroup> mothers, int cups) =>
            InTime(with, mothers, none.Order, with.ToStart(cups), cancel) is not null;
        var possible = 0;
        for (var (low, high) = (0, none.Order.Cups - 1); low <= high;)
        {
            var middle = (low + high + 1) / 2;
            if (middle > 0 && Keeps(asked, groups, middle))
            {
                (possible, low) = (middle, middle + 1);
            }
            else
            {
                high = middle - 1;
            }
        }

        var warm = asked.Kind.BestCelsius();
        var now = asked.Celsius(asked.From);
        return none with
        {
            Bar = SplitBar.TooFewMothers,
            Earliest = Earliest(asked, groups, none, cancel),
            CupsPossible = possible,
            MothersMore = More(groups, mothers => Keeps(asked, mothers, none.Order.Cups)),
            Celsius =
                Math.Abs(warm - now) >= 1
                && Keeps(asked with { Celsius = _ => warm }, groups, none.Order.Cups)
                    ? warm
                    : null,
        };
    }

    /// <summary>Fewest mothers more, shared out over the groups there are, that keep the day.</summary>
    private static int? More(ImmutableArray<SplitGroup> groups, Func<ImmutableArray<SplitGroup>, bool> keeps)
    {
        ImmutableArray<SplitGroup> With(int more) =>
            [
                .. groups.Select(
                    (g, i) =>
                        g with
                        {
                            Count = g.Count + (more / groups.Length) + (i < more % groups.Length ? 1 : 0),
                        }
                ),
            ];
        if (!keeps(With(MostMothers)))
        {
            return null;
        }

        var (low, high) = (1, MostMothers);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = keeps(With(middle)) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>Mothers on the day of the last split of a plan, after it.</summary>
    private static (ImmutableArray<SplitGroup> Groups, DateOnly From) After(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        SplitPlan plan
    )
    {
        var last = plan.Steps[^1].Day;
        var way = new SplitWay(asked, groups, plan.Order, 1, plan.Started);
        return (way.Left(plan), last);
    }
}
