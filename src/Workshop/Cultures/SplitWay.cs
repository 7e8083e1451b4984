using System.Collections.Immutable;
using Litterfall.Physics.Crew;

namespace Litterfall.Workshop.Cultures;

/// <summary>Equal mothers while a way is tried.</summary>
/// <param name="Name">As people call them.</param>
/// <param name="Line">Their line.</param>
/// <param name="Count">How many.</param>
/// <param name="State">One of them.</param>
internal sealed record SplitGroup(string Name, string Line, int Count, CultureRun State)
{
    public SplitGroup(MotherCups mothers)
        : this(mothers.Name, mothers.Line, mothers.Count, mothers.State) { }
}

/// <summary>
/// One way to split: every mother is divided into so many parts on the first day, or not at all, and all
/// mothers are split into the new cups on one later day.
/// </summary>
internal sealed class SplitWay
{
    private readonly SplitCase asked;
    private readonly ImmutableArray<SplitGroup> before;
    private readonly ImmutableArray<SplitGroup> groups;
    private readonly CupOrder order;
    private readonly int parts;
    private readonly int started;
    private readonly DayRates rates;
    private readonly List<ImmutableArray<CultureRun>> states = [];

    public SplitWay(
        SplitCase asked,
        ImmutableArray<SplitGroup> groups,
        CupOrder order,
        int parts,
        int started
    )
    {
        (this.asked, before, this.order, this.parts, this.started) = (asked, groups, order, parts, started);
        this.groups = parts == 1 ? groups : [.. groups.Select(g => Divided(g, parts))];
        rates = new(asked.Kind, asked.Celsius, asked.From, asked.From.AddDays(asked.Horizon + 1));
        states.Add([.. this.groups.Select(g => g.State.Copy())]);
    }

    private int DaysToDue =>
        Math.Min(order.Due.DayNumber - asked.From.DayNumber - asked.Conditioning, asked.Horizon - 1);

    /// <summary>The latest day of the split with which the cups are ready; null where none is.</summary>
    public SplitPlan? Latest()
    {
        for (var day = DaysToDue; day >= 0; day--)
        {
            if (Try(day, DaysToDue) is { Ready: { } ready } way && ready <= order.Due)
            {
                return Plan(way.Steps, ready);
            }
        }

        return null;
    }

    /// <summary>The split after which the cups are ready first; null where none is in sight.</summary>
    public SplitPlan? Earliest()
    {
        (DateOnly Ready, ImmutableArray<SplitStep> Steps)? best = null;
        var last = asked.Horizon;
        // A day more or less is nothing to an animal that takes months to breed.
        var pace = Math.Max(1, (int)Math.Min(rates.On(asked.From).Days, asked.Horizon) / 30);
        for (var day = 0; day <= last; day += pace)
        {
            if (
                Try(day, asked.Horizon) is { Ready: { } ready } way
                && (best is null || ready < best.Value.Ready)
            )
            {
                best = (ready, way.Steps);
                last = ready.DayNumber - asked.From.DayNumber - asked.Conditioning - 1;
            }
        }

        return best is { } found ? Plan(found.Steps, found.Ready) : null;
    }

    /// <summary>Mothers after the last split of a plan; those that a first split made are mothers
    /// too.</summary>
    /// <param name="plan">The plan.</param>
    public ImmutableArray<SplitGroup> Left(SplitPlan plan)
    {
        var way = plan.Steps.FirstOrDefault(s => s.IsForMothers) is { } first
            ? new SplitWay(asked, before, order, 1 + (first.Cups / first.Mothers), started)
            : this;
        var day = plan.Steps[^1].Day.DayNumber - asked.From.DayNumber;
        return
        [
            .. way.groups.Select(
                (g, i) =>
                {
                    var state = way.On(day)[i].Copy();
                    if (plan.Steps.Any(s => !s.IsForMothers && s.Mother == g.Name))
                    {
                        state.Split(asked.Share, order.Liters);
                    }

                    return g with
                    {
                        State = state,
                    };
                }
            ),
        ];
    }

    private SplitPlan Plan(ImmutableArray<SplitStep> steps, DateOnly ready) =>
        new()
        {
            Order = order,
            Started = started,
            Steps =
                parts == 1
                    ? steps
                    :
                    [
                        .. before.Select(
                            (g, i) =>
                                new SplitStep(
                                    asked.From,
                                    g.Name,
                                    g.Line,
                                    g.Count,
                                    g.Count * (parts - 1),
                                    groups[i].State.Walking,
                                    true
                                )
                        ),
                        .. steps,
                    ],
            Ready = ready,
        };

    private static SplitGroup Divided(SplitGroup group, int parts)
    {
        var part = group.State.Copy();
        // Every part stands in a cup like that of the mother; what is left in her is a part too.
        for (var i = parts; i > 1; i--)
        {
            part.Split(1.0 / i, 0);
        }

        return group with
        {
            Count = group.Count * parts,
            State = part,
        };
    }

    /// <summary>Mothers so many days after the first, before a split.</summary>
    private ImmutableArray<CultureRun> On(int day)
    {
        while (states.Count <= day)
        {
            var today = rates.On(asked.From.AddDays(states.Count));
            states.Add([.. states[^1].Select(s => Later(s, today))]);
        }

        return states[day];
    }

    private static CultureRun Later(CultureRun state, LifeTable rates)
    {
        var next = state.Copy();
        next.Day(rates);
        return next;
    }

    private (DateOnly? Ready, ImmutableArray<SplitStep> Steps) Try(int day, int last)
    {
        var mothers = On(day);
        var cups = Shares(mothers);
        var split = asked.From.AddDays(day);
        var steps = ImmutableArray.CreateBuilder<SplitStep>();
        DateOnly? ready = split;
        for (var i = 0; i < groups.Length && ready is not null; i++)
        {
            if (cups[i] == 0)
            {
                continue;
            }

            // The mother of the group that gives most cups gives the smallest shares.
            var most = (cups[i] + groups[i].Count - 1) / groups[i].Count;
            var cup = mothers[i].Copy().Split(asked.Share / most, order.Liters);
            var begun = cup.Walking;
            var full = Full(cup, day, last);
            ready =
                full is { } at && at > ready ? at
                : full is null ? null
                : ready;
            var given = Math.Min(groups[i].Count, cups[i]);
            steps.Add(new(split, groups[i].Name, groups[i].Line, given, cups[i], begun, false));
        }

        return (ready?.AddDays(asked.Conditioning), steps.ToImmutable());
    }

    /// <summary>Cups of each group: the next one always comes from where most is left.</summary>
    private int[] Shares(ImmutableArray<CultureRun> mothers)
    {
        var cups = new int[groups.Length];
        for (var left = started; left > 0; left--)
        {
            var best = 0;
            for (var i = 1; i < groups.Length; i++)
            {
                if (Next(i) > Next(best))
                {
                    best = i;
                }
            }

            cups[best]++;
        }

        return cups;

        double Next(int i) => mothers[i].Walking / ((cups[i] / groups[i].Count) + 1);
    }

    /// <summary>
    /// Day from which on a new cup holds enough, to the end of its rest at the least; null where it does not
    /// up to a day. What hatches at first may be more than lives on, so a first day with enough is not it.
    /// </summary>
    private DateOnly? Full(CultureRun cup, int day, int last)
    {
        int? since = null;
        for (var on = day; on <= last; on++)
        {
            since = cup.Walking < order.Animals ? null : since ?? on;
            if (since is { } held && on >= held + asked.Conditioning && last == asked.Horizon)
            {
                break;
            }

            cup.Day(rates.On(asked.From.AddDays(on + 1)));
        }

        return since is { } found ? asked.From.AddDays(found) : null;
    }
}
