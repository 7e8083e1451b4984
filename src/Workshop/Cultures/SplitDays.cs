using System.Collections.Immutable;

namespace Litterfall.Workshop.Cultures;

/// <summary>Mothers and cups of orders on a day of a plan.</summary>
/// <param name="Day">The day.</param>
/// <param name="Mothers">Mothers, with those that were divided off.</param>
/// <param name="MotherAnimals">Animals that walk in all of them.</param>
/// <param name="Cups">Cups that grow for orders.</param>
/// <param name="CupAnimals">Animals that walk in all of these.</param>
public sealed record SplitDay(DateOnly Day, int Mothers, double MotherAnimals, int Cups, double CupAnimals);

/// <summary>Leads mothers and new cups through plans, day by day.</summary>
public static class SplitDays
{
    /// <summary>One row for each day from the first to the last due one.</summary>
    /// <param name="asked">What the plans were made from.</param>
    /// <param name="plans">The plans, in the order they were found.</param>
    public static ImmutableArray<SplitDay> Lead(SplitCase asked, IReadOnlyCollection<SplitPlan> plans)
    {
        var done = plans.Where(p => p.IsPossible).ToList();
        var last = done.Select(p => p.Order.Due).Append(asked.From).Max();
        var rates = new DayRates(asked.Kind, asked.Celsius, asked.From, last);
        var mothers = asked.Mothers.Select(m => (m.Name, m.Count, State: m.State.Copy())).ToList();
        var cups = new List<(DateOnly Due, int Count, CultureRun State)>();
        var rows = ImmutableArray.CreateBuilder<SplitDay>();
        for (var day = asked.From; day <= last; day = day.AddDays(1))
        {
            if (day > asked.From)
            {
                mothers.ForEach(m => m.State.Day(rates.On(day)));
                cups.ForEach(c => c.State.Day(rates.On(day)));
            }

            foreach (var (plan, step) in done.SelectMany(p => p.Steps.Select(s => (p, s))))
            {
                if (step.Day == day)
                {
                    var at = mothers.FindIndex(m => m.Name == step.Mother);
                    mothers[at] = After(asked, mothers[at], step, plan, cups);
                }
            }

            rows.Add(
                new(
                    day,
                    mothers.Sum(m => m.Count),
                    mothers.Sum(m => m.Count * m.State.Walking),
                    cups.Sum(c => c.Count),
                    cups.Sum(c => c.Count * c.State.Walking)
                )
            );
            cups.RemoveAll(c => c.Due <= day);
        }

        return rows.ToImmutable();
    }

    private static (string Name, int Count, CultureRun State) After(
        SplitCase asked,
        (string Name, int Count, CultureRun State) mother,
        SplitStep step,
        SplitPlan plan,
        List<(DateOnly Due, int Count, CultureRun State)> cups
    )
    {
        var state = mother.State;
        if (step.IsForMothers)
        {
            var parts = 1 + (step.Cups / mother.Count);
            for (var i = parts; i > 1; i--)
            {
                state.Split(1.0 / i, 0);
            }

            return (mother.Name, mother.Count * parts, state);
        }

        var most = (step.Cups + mother.Count - 1) / mother.Count;
        cups.Add((plan.Order.Due, step.Cups, state.Copy().Split(asked.Share / most, plan.Order.Liters)));
        state.Split(asked.Share, plan.Order.Liters);
        return mother;
    }
}
