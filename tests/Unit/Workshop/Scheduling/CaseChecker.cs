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
        Assert.Null(Fault(asked, plan));
        return plan.Zip(asked.Orders, (days, order) =>
                (100L * order.Weight * Math.Max(0, Arrival(asked, days.S) - order.Due))
                + (order.QuarantinePlaces * (days.P - days.Q))
                + (order.BenchPlaces * (days.S - days.P + 1))
            )
            .Sum();
    }

    /// <summary>The rule that a plan breaks; null for none.</summary>
    public static string? Fault(ShopCase asked, IReadOnlyList<(int Q, int P, int S)> plan)
    {
        if (asked.Orders.Count != plan.Count)
        {
            return "orders";
        }

        for (var i = 0; i < plan.Count; i++)
        {
            var order = asked.Orders[i];
            var (q, p, s) = plan[i];
            if (!Works(asked, q) || q < order.Release || q < 0)
            {
                return "quarantine start";
            }

            if (!Works(asked, p) || p < q + order.QuarantineDays)
            {
                return "plant day";
            }

            if (!Ships(asked, s) || s < p + order.GrowInDays || s >= asked.HorizonDays)
            {
                return "ship day";
            }
        }

        for (var day = 0; day < asked.HorizonDays; day++)
        {
            double hours = 0;
            var (quarantine, bench) = (0, 0);
            for (var i = 0; i < plan.Count; i++)
            {
                var order = asked.Orders[i];
                var (q, p, s) = plan[i];
                hours += (p == day ? order.PlantHours : 0) + (s == day ? order.PackHours : 0);
                quarantine += q <= day && day < p ? order.QuarantinePlaces : 0;
                bench += p <= day && day <= s ? order.BenchPlaces : 0;
            }

            if (
                hours > asked.StaffHours + 1e-9
                || quarantine > asked.QuarantinePlaces
                || bench > asked.BenchPlaces
            )
            {
                return FormattableString.Invariant($"day {day}: {hours} h, {quarantine}, {bench} places");
            }
        }

        return null;
    }

    /// <summary>The cheapest of all plans, by trying every one.</summary>
    public static long? Cheapest(ShopCase asked)
    {
        var ways = asked.Orders.Select(o => Ways(asked, o).ToList()).ToList();
        var plans = ways.Aggregate(
            (IEnumerable<(int, int, int)[]>)
                [
                    [],
                ],
            (all, own) => all.SelectMany(a => own.Select(w => a.Append(w).ToArray()))
        );
        long? best = null;
        foreach (var plan in plans)
        {
            if (Fault(asked, plan) is null && Cost(asked, plan) is var cost && !(cost >= best))
            {
                best = cost;
            }
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
