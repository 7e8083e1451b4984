using Litterfall.Workshop.Scheduling.Cases;

namespace Litterfall.UnitTests.Workshop.Scheduling;

/// <summary>
/// A second program that knows only the rules: which days are allowed, what is taken on each day, what a plan
/// costs. It shares nothing with the planner but the names of the inputs.
/// </summary>
internal static class CaseChecker
{
    /// <summary>What a plan costs; fails where it breaks a rule.</summary>
    public static long Cost(ShopCase asked, IReadOnlyList<(int Q, int P, int S)> plan)
    {
        var hours = new Dictionary<int, double>();
        var quarantine = new Dictionary<int, int>();
        var bench = new Dictionary<int, int>();
        long cost = 0;
        Assert.Equal(asked.Orders.Count, plan.Count);
        for (var i = 0; i < plan.Count; i++)
        {
            var order = asked.Orders[i];
            var (q, p, s) = plan[i];
            Assert.True(Works(asked, q) && q >= order.Release && q >= 0, "quarantine start");
            Assert.True(Works(asked, p) && p >= q + order.QuarantineDays, "plant day");
            Assert.True(Ships(asked, s) && s >= p + order.GrowInDays && s < asked.HorizonDays, "ship day");
            hours[p] = hours.GetValueOrDefault(p) + order.PlantHours;
            hours[s] = hours.GetValueOrDefault(s) + order.PackHours;
            for (var d = q; d < p; d++)
            {
                quarantine[d] = quarantine.GetValueOrDefault(d) + order.QuarantinePlaces;
            }

            for (var d = p; d <= s; d++)
            {
                bench[d] = bench.GetValueOrDefault(d) + order.BenchPlaces;
            }

            var late = Math.Max(0, Arrival(asked, s) - order.Due);
            cost += 100L * order.Weight * late;
            cost += (order.QuarantinePlaces * (p - q)) + (order.BenchPlaces * (s - p + 1));
        }

        Assert.All(hours.Values, h => Assert.True(h <= asked.StaffHours + 1e-9, "hours"));
        Assert.All(quarantine.Values, n => Assert.True(n <= asked.QuarantinePlaces, "quarantine places"));
        Assert.All(bench.Values, n => Assert.True(n <= asked.BenchPlaces, "bench places"));
        return cost;
    }

    /// <summary>The same, or null where a rule is broken.</summary>
    public static long? TryCost(ShopCase asked, IReadOnlyList<(int Q, int P, int S)> plan)
    {
        try
        {
            return Cost(asked, plan);
        }
        catch (Xunit.Sdk.TrueException)
        {
            return null;
        }
    }

    /// <summary>The cheapest of all plans, by trying every one.</summary>
    public static long? Cheapest(ShopCase asked)
    {
        var ways = asked.Orders.Select(o => Ways(asked, o).ToList()).ToList();
        var plans = ways.Aggregate(
            (IEnumerable<(int, int, int)[]>)[[]],
            (all, own) => all.SelectMany(a => own.Select(w => a.Append(w).ToArray()))
        );
        long? best = null;
        foreach (var plan in plans)
        {
            best = TryCost(asked, plan) is { } cost && !(cost >= best) ? cost : best;
        }

        return best;
    }

    private static IEnumerable<(int, int, int)> Ways(ShopCase asked, CaseOrder order) =>
        from q in Enumerable.Range(0, asked.HorizonDays)
        where Works(asked, q) && q >= order.Release
        from p in Enumerable.Range(q, asked.HorizonDays - q)
        where Works(asked, p) && p >= q + order.QuarantineDays
        from s in Enumerable.Range(p, asked.HorizonDays - p)
        where Ships(asked, s) && s >= p + order.GrowInDays
        select (q, p, s);

    private static bool Works(ShopCase asked, int day) => day % 7 <= 4 && !asked.Holidays.Contains(day);

    private static bool Ships(ShopCase asked, int day) => day % 7 <= 2 && !asked.Holidays.Contains(day);

    private static int Arrival(ShopCase asked, int ship)
    {
        var day = ship;
        for (var n = 0; n < asked.TransitWorkDays; n++)
        {
            do
            {
                day++;
            } while (!Works(asked, day));
        }

        return day;
    }
}
