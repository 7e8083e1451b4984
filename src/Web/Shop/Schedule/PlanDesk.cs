using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Orders;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>The plan of this bench: read for pages, made anew when something changed, ticked off.</summary>
public sealed class PlanDesk(BenchStore store, StockShelf shelf, OrderNumbers numbers)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(6);

    /// <summary>The plan as it is kept; reads records only.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<PlanView> LoadAsync(CancellationToken cancel = default)
    {
        var plan = await store.RecordAsync<ShopPlan>(ShopPlan.Key, cancel);
        var calendar = await store.RecordAsync<ShopCalendar>(ShopCalendar.Key, cancel);
        var customers = await OrderBook.AllAsync<Customer>(store, cancel);
        return new(
            plan?.Value ?? new ShopPlan(),
            plan?.Version ?? 0,
            calendar?.Value ?? new ShopCalendar(),
            calendar?.Version ?? 0,
            shelf.Today
        )
        {
            Terms = (await OrderBook.TermsAsync(store, cancel)).Terms,
            Orders = await OrderBook.AllAsync<Order>(store, cancel),
            Customers = customers.ToDictionary(c => c.Key, StringComparer.Ordinal),
        };
    }

    /// <summary>Plans all accepted orders anew and keeps the plan.</summary>
    /// <param name="why">What made it necessary, in words.</param>
    /// <param name="change">What is changed in the kept plan before; null for nothing.</param>
    /// <param name="cancel">Nobody waits any more.</param>
    /// <returns>Null where it is kept, else why not.</returns>
    public async Task<string?> ReplanAsync(
        string why,
        Func<ShopPlan, ShopPlan>? change = null,
        CancellationToken cancel = default
    )
    {
        var view = await LoadAsync(cancel);
        var kept = change is null ? view.Plan : change(view.Plan);
        var needs = await NeedsAsync(view, kept, null, cancel);
        var setting = new PlanSetting(view.Calendar, view.Today);
        var plans = await SolveAsync(ended => ShopPlanner.Find(needs, setting, ended), cancel);
        var next = PlanUpdate.Next(kept, plans, setting, why);
        var step = new ShopChange(await shelf.WhoAsync(cancel)).Keep(
            ShopPlan.Key,
            view.PlanVersion,
            next,
            why
        );
        return await shelf.WriteAsync(step)
            ?? plans.Orders.Where(p => p.Days is null).Select(p => p.Blocker).FirstOrDefault();
    }

    /// <summary>
    /// What would happen if an order were taken for a day; null where there is no such order.
    /// </summary>
    /// <param name="number">Number of the order.</param>
    /// <param name="day">The day; null for the earliest one.</param>
    /// <param name="cancel">Nobody waits any more.</param>
    public async Task<(WhatIf Answer, PlanSetting Setting)?> TryAsync(
        int number,
        DateOnly? day,
        CancellationToken cancel = default
    )
    {
        var view = await LoadAsync(cancel);
        if (view.Orders.FirstOrDefault(o => o.Number == number) is not { } order)
        {
            return null;
        }

        var asked = order with { State = OrderState.Accepted, Promised = day };
        var needs = await NeedsAsync(view, view.Plan, asked, cancel);
        var need = needs.First(n => n.Order == number) with { Kept = null };
        var others = needs.Where(n => n.Order != number).ToList();
        var setting = new PlanSetting(view.Calendar, view.Today);
        return (await SolveAsync(ended => WhatIf.Try(need, others, setting, ended), cancel), setting);
    }

    /// <summary>Marks a task as done and writes its hours, in one step.</summary>
    /// <param name="task">The task.</param>
    /// <param name="minutes">Minutes it took; 0 where nobody counted.</param>
    /// <param name="who">Who did it; empty for who writes.</param>
    public async Task<string?> DoneAsync(DayTask task, double minutes, string who)
    {
        var view = await LoadAsync();
        if (view.Done(task.Key) is { } before)
        {
            return $"{before.Who} has ticked this off already.";
        }

        var name = who.Length > 0 ? who : await shelf.WhoAsync();
        var done = new DoneTask(task.Key, view.Today, name, minutes)
        {
            Order = task.Order,
            Stage = task.Stage,
        };
        var step = await StepAsync(
            view.Plan with
            {
                Done = [.. view.Plan.Done, done],
            },
            view.PlanVersion,
            $"done: {task.Title}"
        );
        return await HoursAsync(step, done, order =>
            order with
            {
                Worked = [.. order.Worked, new WorkedTime(task.Stage!, minutes, view.Today, name)],
            }
        );
    }

    /// <summary>Takes a mark back, and the hours with it.</summary>
    /// <param name="key">Key of the task.</param>
    public async Task<string?> UndoAsync(string key)
    {
        var view = await LoadAsync();
        if (view.Done(key) is not { } done)
        {
            return null;
        }

        var step = await StepAsync(
            view.Plan with
            {
                Done = [.. view.Plan.Done.Where(d => d != done)],
            },
            view.PlanVersion,
            "a mark was taken back"
        );
        return await HoursAsync(step, done, order =>
        {
            var written = new WorkedTime(done.Stage!, done.Minutes, done.Day, done.Who);
            var at = order.Worked.ToList().LastIndexOf(written);
            return order with { Worked = [.. order.Worked.Where((_, i) => i != at)] };
        });
    }

    /// <summary>Notes that a customer was told.</summary>
    /// <param name="move">The day that was moved.</param>
    public async Task<string?> ToldAsync(PlanMove move)
    {
        var view = await LoadAsync();
        Seq<PlanMove> moves = [.. view.Plan.Moves.Select(m => m == move ? m with { IsTold = true } : m)];
        return await shelf.WriteAsync(
            await StepAsync(view.Plan with { Moves = moves }, view.PlanVersion, "a customer was told")
        );
    }

    /// <summary>Keeps the calendar.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="version">Version it was changed from.</param>
    public async Task<string?> KeepAsync(ShopCalendar calendar, int version) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(ShopCalendar.Key, version, calendar, "calendar")
        );

    private async Task<ShopChange> StepAsync(ShopPlan plan, int version, string note) =>
        new ShopChange(await shelf.WhoAsync()).Keep(ShopPlan.Key, version, plan, note);

    /// <summary>Writes a step, and with it the hours of an order where the task has some.</summary>
    private async Task<string?> HoursAsync(ShopChange step, DoneTask done, Func<Order, Order> change)
    {
        if (
            done is { Order: { } number, Stage: not null, Minutes: > 0 }
            && await store.OrderAsync(number) is { } order
        )
        {
            step.Keep(OrderBook.Key(number), order.Version, change(order.Value), "hours of the plan");
        }

        return await shelf.WriteAsync(step);
    }

    /// <summary>What all open orders need, and one more that is asked for.</summary>
    private async Task<List<OrderNeed>> NeedsAsync(
        PlanView view,
        ShopPlan kept,
        Order? asked,
        CancellationToken cancel
    )
    {
        var orders = view.Orders.Where(o => o.IsOpen && o.Number != asked?.Number).ToList();
        if (asked is not null)
        {
            orders.Add(await WithGoodsAsync(view, asked, cancel));
        }

        var supply = await OrderBook.SupplyAsync(store, cancel);
        var stock = StockPicture.Read(await shelf.BookAsync(cancel), view.Today);
        var awaited = GoodShortage.Awaited(orders, stock, supply, view.Today);
        var kinds = supply.Goods.ToDictionary(g => g.Key, g => g.Kind, StringComparer.Ordinal);
        var reading = new OrderReading(view.Terms, kinds, kept, view.Today);
        var needs = new List<OrderNeed>();
        foreach (var order in orders)
        {
            var items = new List<PricedItem>();
            foreach (var item in order.Items)
            {
                items.Add(new(item, await numbers.FindAsync(item, cancel)));
            }

            needs.Add(
                reading.Read(new OrderFacts(order, [.. items], awaited.GetValueOrDefault(order.Number) ?? []))
            );
        }

        return needs;
    }

    /// <summary>An order that is not accepted takes the goods of its last quote.</summary>
    private async Task<Order> WithGoodsAsync(PlanView view, Order asked, CancellationToken cancel)
    {
        if (view.Orders.First(o => o.Number == asked.Number).IsOpen)
        {
            return asked;
        }

        var quotes = await store.QuotesAsync(asked.Number, cancel);
        return quotes.Count > 0 && quotes[0].Options is { Count: > 0 } options
            ? asked with
            {
                Goods = options[^1].Goods,
            }
            : asked;
    }

    private static async Task<T> SolveAsync<T>(Func<CancellationToken, T> solve, CancellationToken cancel)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        ended.CancelAfter(Longest);
        return await Turns.OfMachine.RunAsync(WorkKind.Whole, () => solve(ended.Token), cancel);
    }
}
