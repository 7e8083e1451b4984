using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting.Life;
using Litterfall.Instructions.Care;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Workshop.Scheduling;

/// <summary>What is known of an order when it is planned.</summary>
/// <param name="Order">The order.</param>
/// <param name="Items">Its lines with the numbers of their designs.</param>
/// <param name="Awaited">Goods that are not here yet.</param>
public sealed record OrderFacts(Order Order, Seq<PricedItem> Items, Seq<ShortGood> Awaited);

/// <summary>
/// Reads what an order needs from its designs, the labor of the shop, its goods and what was done.
/// </summary>
/// <param name="Terms">Labor and names of orders.</param>
/// <param name="Kinds">Kind of each good by key.</param>
/// <param name="Plan">The plan that is kept.</param>
/// <param name="Today">Today.</param>
public sealed record OrderReading(
    ShopTerms Terms,
    IReadOnlyDictionary<string, GoodKind> Kinds,
    ShopPlan Plan,
    DateOnly Today
)
{
    /// <summary>Share of the planned minutes from which a stage counts as done. Own choice.</summary>
    private const double DoneShare = 0.8;

    /// <summary>
    /// Days after planting up to which bought cultures may still be seeded: they have the rest of grow-in.
    /// Own
    /// choice.
    /// </summary>
    private const int SeededLater = 14;

    /// <summary>What an order needs.</summary>
    /// <param name="facts">What is known of it.</param>
    public OrderNeed Read(OrderFacts facts)
    {
        var order = facts.Order;
        var builds = facts
            .Items.Where(i => i.Item.Kind == OrderItemKind.Build && i.Numbers is not null)
            .ToList();
        var planted = builds.Where(i => i.Numbers!.Design.Design.Plants.Count > 0).ToList();
        var tanks = Boxes(builds);
        var work = Work(facts.Items, tanks > 0);
        var lacksCultures = facts.Awaited.Any(g => Kind(g) == GoodKind.Culture && g.Arrives is null);
        var need = new OrderNeed
        {
            Order = order.Number,
            Name = FormattableString.Invariant($"{Terms.OrderPrefix}{order.Number}"),
            Promised = order.Promised,
            IsShipped = order.IsByParcel ?? builds.Count == 0,
            Tanks = tanks,
            Planted = Boxes(planted),
            CureDays = Longest(builds, i => Cure(i)),
            QuarantineDays = planted.Count > 0 ? GrowIn.WholeDays(CareIntervals.PlantQuarantine) : 0,
            GrowInDays = planted.Count > 0 ? GrowIn.WholeDays(CareIntervals.GrowIn) : 0,
            CultureDays = lacksCultures ? GrowIn.WholeDays(CareIntervals.Cultures) : 0,
            AnimalDays =
                planted.Count > 0
                    ? Longest(planted, i =>
                        GrowIn.Ends(i.Numbers!.Sealants, Today).DayNumber - Today.DayNumber
                    )
                    : null,
            Work = work,
            Waits = [.. Waits(facts, tanks > 0)],
            Kept = Plan.Find(order.Number)?.Days,
        };
        var marks = Plan.Done.Where(d => d.Order == order.Number).ToList();
        // What is done of a stage that is not finished takes no time any more.
        return need with
        {
            Done = [.. Done(order, need, marks)],
            Work = [.. work.Where(w => Finished(order, marks, w) is null)],
        };
    }

    private static int Boxes(IEnumerable<PricedItem> items) =>
        (int)Math.Ceiling(items.Sum(i => i.Item.Amount) - 1e-9);

    private static int Longest(IEnumerable<PricedItem> items, Func<PricedItem, int> days) =>
        items.Select(days).DefaultIfEmpty().Max();

    private static int Cure(PricedItem item) =>
        item.Numbers!.Sealants.CureBeforePlanting is { } cure ? GrowIn.WholeDays(cure) : 0;

    private Seq<StageWork> Work(Seq<PricedItem> items, bool isBuilt)
    {
        LaborCounts Counts(OrderItemKind kind) =>
            items
                .Where(i => i.Numbers is not null && i.Item.Kind == kind)
                .Select(i => LaborCounts.Read(i.Numbers!, kind, i.Item.Amount))
                .Aggregate(default(LaborCounts), (a, b) => a + b);
        var minutes = LaborPlan
            .Minutes(Terms.Labor, Counts(OrderItemKind.Kit), Counts(OrderItemKind.Build), 0)
            .ToDictionary(m => m.Stage, m => m.Minutes, StringComparer.Ordinal);
        return
        [
            .. Terms
                .Labor.Where(s => s.For != LaborFor.Visits && minutes.ContainsKey(s.Key))
                .Select(s => new StageWork(s.Key, s.Name, minutes[s.Key], OrderNeed.Sort(s, isBuilt))),
        ];
    }

    private IEnumerable<StageWait> Waits(OrderFacts facts, bool isBuilt)
    {
        foreach (var good in facts.Awaited.Where(g => g.Arrives is not null))
        {
            var stage = Kind(good) switch
            {
                GoodKind.Sheet => StageKey.Cut,
                GoodKind.Plant when isBuilt => StageKey.Plants,
                GoodKind.Packaging or GoodKind.Animal or GoodKind.Equipment => StageKey.Pack,
                _ => isBuilt ? StageKey.Plant : StageKey.Pack,
            };
            var day = good.Arrives!.Value;
            var isSeeded = isBuilt && Kind(good) == GoodKind.Culture;
            yield return new(
                stage,
                isSeeded ? day.AddDays(-SeededLater) : day,
                $"{good.Good.Name} comes on {PlanWords.Day(day)}"
            );
        }

        foreach (var hold in Plan.Holds.Where(h => h.Order == facts.Order.Number))
        {
            yield return new(hold.Stage, hold.From, hold.Why);
        }
    }

    private GoodKind? Kind(ShortGood good) =>
        Kinds.TryGetValue(good.Good.Good, out var kind) ? kind
        : good.IsSheet ? GoodKind.Sheet
        : null;

    /// <summary>
    /// Stages that were done: marked on the list of a day, or by the hours that were written.
    /// </summary>
    private IEnumerable<StageDone> Done(Order order, OrderNeed need, List<DoneTask> marks)
    {
        // Plants that came before a new quarantine began do not count.
        var again = Plan.Holds.FirstOrDefault(h => h.Order == order.Number && h.Stage == StageKey.Plants);
        foreach (var key in new[] { StageKey.Plants, StageKey.Leak })
        {
            if (
                marks.FindLast(m => m.Key == FormattableString.Invariant($"order-{order.Number}-{key}"))
                    is { } mark
                && (key == StageKey.Leak || again is null || mark.Day >= again.From)
            )
            {
                yield return new(key, mark.Day);
            }
        }

        foreach (var stage in need.Work.GroupBy(w => w.Stage, StringComparer.Ordinal))
        {
            var days = stage.Select(w => Finished(order, marks, w)).ToList();
            if (days.TrueForAll(d => d is not null))
            {
                yield return new(stage.Key, days.Max()!.Value);
            }
        }

        if (order.State == OrderState.Ready && need.Tanks > 0)
        {
            // Somebody said that it is ready: it has grown in.
            yield return new(StageKey.Plant, Today.AddDays(-need.GrowInDays - 1));
        }
    }

    private static DateOnly? Finished(Order order, List<DoneTask> marks, StageWork work)
    {
        var worked = order.Worked.Where(w => w.Stage == work.Key).ToList();
        var mark = marks.Where(m => m.Stage == work.Key).Select(m => (DateOnly?)m.Day).Max();
        return mark is not null ? mark
            : worked.Sum(w => w.Minutes) >= DoneShare * work.Minutes ? worked.Max(w => w.Day)
            : null;
    }
}
