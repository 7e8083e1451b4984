using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling.Cases;

/// <summary>
/// What limits which order, in words. Each order is planned once more in what the others leave, with more and
/// more of one resource: what lets it be better is what it waits for.
/// </summary>
internal static class CaseWords
{
    private static readonly (int[] Resources, string Words)[] Limits =
    [
        ([CaseModel.Quarantine], "the places in quarantine are taken"),
        ([CaseModel.Bench], "the places on the bench are taken"),
        ([CaseModel.Hours], "the hours of work are taken"),
        (
            [CaseModel.Quarantine, CaseModel.Bench],
            "the places in quarantine and on the bench are taken"
        ),
        ([CaseModel.Quarantine, CaseModel.Hours], "places in quarantine and hours of work are taken"),
        ([CaseModel.Bench, CaseModel.Hours], "places on the bench and hours of work are taken"),
        (
            [CaseModel.Quarantine, CaseModel.Bench, CaseModel.Hours],
            "places and hours of work are taken"
        ),
    ];

    /// <summary>One sentence for each order that something limits.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="problem">The case as jobs.</param>
    /// <param name="starts">The plan.</param>
    public static IEnumerable<string> Blocking(ShopCase asked, JobProblem problem, int[][] starts)
    {
        var load = new DayLoad(problem);
        for (var i = 0; i < starts.Length; i++)
        {
            load.Put(i, starts[i]);
        }

        for (var i = 0; i < starts.Length; i++)
        {
            load.Take(i, starts[i]);
            var own = Sentence(asked, problem, i, (starts[i], load.Left));
            load.Put(i, starts[i]);
            if (own is not null)
            {
                yield return own;
            }
        }
    }

    private static string? Sentence(
        ShopCase asked,
        JobProblem problem,
        int index,
        (int[] Starts, int[][] Left) planned
    )
    {
        var order = asked.Orders[index];
        var name = CaseModel.Name(order);
        var days = CaseModel.Days(asked, order, planned.Starts);
        var alone = CasePlanner.Alone(asked, problem, index)!;
        var late = days.Tardy == 0 ? "" : FormattableString.Invariant($" and is {Count(days.Tardy)} late");
        if (days.Tardy > 0 && days.Tardy == alone.Tardy)
        {
            return FormattableString.Invariant($"{name}: due on day {order.Due}, before its own time is over: ")
                + FormattableString.Invariant($"plants on day {alone.QuarantineStart}, {Count(order.QuarantineDays)} ")
                + FormattableString.Invariant($"of quarantine, {Count(order.GrowInDays)} of grow-in and the way; ")
                + FormattableString.Invariant($"the earliest honest date is day {alone.Arrive}");
        }

        if (Waits(problem, index, planned) is not { } words)
        {
            return null;
        }

        return FormattableString.Invariant($"{name}: {words}, so that it arrives on day {days.Arrive}{late}")
            + (
                days.Tardy > 0
                    ? FormattableString.Invariant($"; alone it could be there on day {alone.Arrive}")
                    : ""
            );
    }

    /// <summary>What the order waits for; null for nothing.</summary>
    private static string? Waits(JobProblem problem, int index, (int[] Starts, int[][] Left) planned)
    {
        var job = problem.Jobs[index];
        var pricing = new JobPricing(job, problem.Horizon);
        var cost = DayLoad.Cost(job, planned.Starts);
        if (pricing.Price(null, problem.Capacity) >= cost)
        {
            return null;
        }

        foreach (var (resources, words) in Limits)
        {
            int[][] more = [.. planned.Left.Select((l, r) => resources.Contains(r) ? problem.Capacity[r] : l)];
            if (pricing.Price(null, more) < cost)
            {
                return words + " by others";
            }
        }

        return null;
    }

    private static string Count(int days) =>
        days == 1 ? "1 day" : FormattableString.Invariant($"{days} days");
}
