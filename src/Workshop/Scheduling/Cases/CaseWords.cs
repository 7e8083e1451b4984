using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling.Cases;

/// <summary>What limits which order, in words.</summary>
internal static class CaseWords
{
    private static readonly string[] Names = ["hours of work", "places in quarantine", "places on the bench"];

    /// <summary>One sentence for each order that something limits.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="problem">The case as jobs.</param>
    /// <param name="starts">The plan.</param>
    public static IEnumerable<string> Blocking(ShopCase asked, JobProblem problem, int[][] starts)
    {
        var index = 0;
        foreach (var limits in JobLimits.Find(problem, starts))
        {
            var days = CaseModel.Days(asked, asked.Orders[index], starts[index]);
            if (Sentence(days, CasePlanner.Alone(asked, problem, index)!, limits) is { } sentence)
            {
                yield return sentence;
            }

            index++;
        }
    }

    private static string? Sentence(CaseDays days, CaseDays alone, int[] limits)
    {
        var order = days.Order;
        var name = CaseModel.Name(order);
        if (days.Tardy > 0 && days.Tardy == alone.Tardy)
        {
            return FormattableString.Invariant(
                    $"{name}: due on day {order.Due}, before its own time is over: "
                )
                + FormattableString.Invariant($"plants on day {alone.QuarantineStart}, ")
                + $"{PlanWords.Days(order.QuarantineDays)} of quarantine, "
                + $"{PlanWords.Days(order.GrowInDays)} of grow-in and the way; "
                + FormattableString.Invariant($"the earliest honest date is day {alone.Arrive}");
        }

        if (limits.Length == 0)
        {
            return null;
        }

        var words = string.Join(" and ", limits.OrderDescending().Select(r => Names[r]));
        return FormattableString.Invariant($"{name}: {words} are taken by others, so that it arrives on ")
            + FormattableString.Invariant($"day {days.Arrive}")
            + (
                days.Tardy > 0
                    ? $" and is {PlanWords.Days(days.Tardy)} late"
                        + FormattableString.Invariant($"; alone it could be there on day {alone.Arrive}")
                    : ""
            );
    }
}
