using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling.Cases;

/// <summary>The best days of all orders of a case, or why there are none.</summary>
public static class CasePlanner
{
    private const int MostHorizon = 4000;

    /// <summary>Finds the days; the same case gives the same days unless it is ended early.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="wish">How it is looked for.</param>
    /// <param name="cancel">Ends the search; the best days found by then are told.</param>
    /// <returns>The plan, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">Ended before any plan was found.</exception>
    public static (CasePlan? Plan, CaseRefusal? Refusal) Find(
        ShopCase asked,
        SearchWish wish,
        CancellationToken cancel
    )
    {
        var problem = CaseModel.Create(asked);
        for (var i = 0; i < asked.Orders.Count; i++)
        {
            if (Impossible(asked, problem, i) is { } refusal)
            {
                return (null, refusal);
            }
        }

        var (plan, isCertain) = JobSolver.Find(problem, wish, cancel);
        if (plan is null && !isCertain)
        {
            cancel.ThrowIfCancellationRequested();
        }

        return plan is null
            ? (null, TooMuch(asked, isCertain, cancel))
            : (
                new CasePlan(
                    [.. CaseModel.Days(asked, plan.Starts)],
                    plan.Cost,
                    plan.Bound,
                    [.. CaseWords.Blocking(asked, problem, plan.Starts)]
                ),
                null
            );
    }

    /// <summary>Why an order cannot be done even alone; null where it can.</summary>
    private static CaseRefusal? Impossible(ShopCase asked, JobProblem problem, int index)
    {
        var order = asked.Orders[index];
        var name = CaseModel.Name(order);
        CaseRefusal? Over(string key, double need, double there, string unit, string has) =>
            need <= there
                ? null
                : new(
                    index,
                    key,
                    FormattableString.Invariant($"{name} needs {need:0.###} {unit}, {has} {there:0.###}"),
                    FormattableString.Invariant($"no more than {there:0.###}, or {need:0.###} of it")
                );
        return Over("plantHours", order.PlantHours, asked.StaffHours, "h on one day", "staff has")
            ?? Over("packHours", order.PackHours, asked.StaffHours, "h on one day", "staff has")
            ?? Over(
                "quarantinePlacesUsed",
                order.QuarantineDays == 0 ? 0 : order.QuarantinePlaces,
                asked.QuarantinePlaces,
                order.QuarantinePlaces == 1 ? "quarantine place" : "quarantine places",
                "the shop has"
            )
            ?? Over(
                "benchPlacesUsed",
                order.BenchPlaces,
                asked.BenchPlaces,
                order.BenchPlaces == 1 ? "bench place" : "bench places",
                "the shop has"
            )
            ?? TooLong(asked, problem, index);
    }

    /// <summary>An order whose stages do not end within the horizon.</summary>
    private static CaseRefusal? TooLong(ShopCase asked, JobProblem problem, int index)
    {
        if (Alone(asked, problem, index) is not null)
        {
            return null;
        }

        var name = CaseModel.Name(asked.Orders[index]);
        var longer = asked with { HorizonDays = MostHorizon, Orders = [asked.Orders[index]] };
        return Alone(longer, CaseModel.Create(longer), 0) is { } days
            ? new(
                index,
                "release",
                FormattableString.Invariant($"{name} can leave on day {days.Ship} at the earliest, and the ")
                    + FormattableString.Invariant($"horizon ends with day {asked.HorizonDays - 1}"),
                FormattableString.Invariant($"horizonDays of {days.Ship + 1} or more")
            )
            : new(
                index,
                "release",
                $"{name} finds no day to leave: no working or ship day is left for it",
                "days on which there is work and parcels leave"
            );
    }

    /// <summary>The earliest days of an order where it is alone; null where there are none.</summary>
    internal static CaseDays? Alone(ShopCase asked, JobProblem problem, int index)
    {
        var stages = problem.Jobs[index].Stages;
        if (stages[0].Days.Length == 0)
        {
            return null;
        }

        var order = asked.Orders[index];
        var both = CaseModel.Units(order.PlantHours) + CaseModel.Units(order.PackHours);
        var fitsOneDay = both <= CaseModel.Units(asked.StaffHours);
        foreach (var plant in stages[0].Days)
        {
            var ship = Array.FindIndex(stages[1].Days, d =>
                d >= plant + order.GrowInDays && (d > plant || fitsOneDay)
            );
            if (ship >= 0)
            {
                return CaseModel.Days(asked, order, [plant, stages[1].Days[ship]]);
            }
        }

        return null;
    }

    /// <summary>All orders together find no place within the horizon.</summary>
    private static CaseRefusal TooMuch(ShopCase asked, bool isCertain, CancellationToken cancel)
    {
        var message = FormattableString.Invariant(
            $"the {asked.Orders.Count} orders together do not fit into {asked.HorizonDays} days"
        );
        var longer = asked;
        while (longer.HorizonDays < MostHorizon && !cancel.IsCancellationRequested)
        {
            longer = longer with { HorizonDays = Math.Min(MostHorizon, longer.HorizonDays * 3 / 2 + 7) };
            var quick = new SearchWish
            {
                HasSolver = false,
                Tries = 1,
                IsQuick = true,
            };
            if (JobSolver.Find(CaseModel.Create(longer), quick, cancel).Plan is { } plan)
            {
                var last = CaseModel.Days(longer, plan.Starts).Max(d => d.Ship);
                return new(
                    null,
                    "horizonDays",
                    isCertain ? message : message + ", as far as was searched",
                    FormattableString.Invariant($"horizonDays of {last + 1}, with which there is a plan")
                );
            }
        }

        return new(null, "horizonDays", message, "fewer orders, or more places and hours");
    }
}
