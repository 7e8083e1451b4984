using System.Collections.Immutable;
using Litterfall.Dispatch.Losses;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shipping;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.Web.Shop.Orders;

/// <summary>
/// One order with all that its page shows. Each change is one step of the store on the version that was read;
/// afterwards everything is read again.
/// </summary>
public sealed class OrderWork
{
    private readonly BenchStore store;
    private readonly BenchLibrary library;
    private readonly TimeProvider clock;
    private readonly StockShelf shelf;
    private readonly Dictionary<(Guid, int), DesignNumbers?> numbers = [];
    private List<Order> orders = [];
    private int version;

    private OrderWork(BenchStore store, BenchLibrary library, TimeProvider clock, StockShelf shelf)
    {
        (this.store, this.library, this.clock, this.shelf) = (store, library, clock, shelf);
    }

    /// <summary>The order.</summary>
    public Order Order { get; private set; } = null!;

    /// <summary>Its customer.</summary>
    public Customer Customer { get; private set; } = null!;

    /// <summary>Figures of the workshop.</summary>
    public ShopTerms Terms { get; private set; } = null!;

    /// <summary>False before anybody entered the figures of the workshop.</summary>
    public bool HasTerms { get; private set; }

    /// <summary>Its quotes, the last first.</summary>
    public IReadOnlyList<Quote> Quotes { get; private set; } = [];

    /// <summary>Its invoices, credits and delivery notes, as they were issued.</summary>
    public IReadOnlyList<Invoice> Papers { get; private set; } = [];

    /// <summary>What the workshop buys from.</summary>
    public ShopSupply Supply { get; private set; } = null!;

    /// <summary>The book of stock.</summary>
    public StockPicture Stock { get; private set; } = null!;

    /// <summary>The plan of the workshop as it is kept.</summary>
    public ShopPlan Plan { get; private set; } = new();

    /// <summary>Days of the workshop.</summary>
    public ShopCalendar Calendar { get; private set; } = new();

    private Dictionary<string, GoodKind> Kinds =>
        Supply.Goods.ToDictionary(g => g.Key, g => g.Kind, StringComparer.Ordinal);

    /// <summary>What blocks it.</summary>
    public Seq<Blocker> Blockers { get; private set; } = [];

    /// <summary>Today.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>The accepted quote; null before acceptance.</summary>
    public Quote? Accepted => Quotes.FirstOrDefault(q => q.Number == Order.AcceptedQuote);

    /// <summary>The accepted option; null before acceptance.</summary>
    public QuoteOption? Option => Accepted?.Options[Order.AcceptedOption];

    /// <summary>Reads an order; null where there is none of that number.</summary>
    public static async Task<OrderWork?> OpenAsync(
        BenchStore store,
        BenchLibrary library,
        TimeProvider clock,
        StockShelf shelf,
        int number
    )
    {
        await library.LoadAsync();
        var work = new OrderWork(store, library, clock, shelf);
        return await work.ReadAsync(number) ? work : null;
    }

    /// <summary>Reads everything again.</summary>
    public Task ReadAsync() => ReadAsync(Order.Number);

    private async Task<bool> ReadAsync(int number)
    {
        if (await store.OrderAsync(number) is not { } kept)
        {
            return false;
        }

        (Order, version) = (kept.Value, kept.Version);
        Customer = (await store.RecordAsync<Customer>(Order.Customer))?.Value
            ?? new Customer { Key = Order.Customer, Name = Order.Customer };
        (Terms, HasTerms) = await OrderBook.TermsAsync(store);
        Terms = Terms with { LossPercent = await LossPercentAsync(Terms.LossPercent) };
        Quotes = await store.QuotesAsync(number);
        Papers = await store.InvoicesAsync(number);
        Supply = await OrderBook.SupplyAsync(store);
        Stock = StockPicture.Read(await shelf.BookAsync(), Today);
        orders = await OrderBook.AllAsync<Order>(store);
        var lacking = GoodShortage.Find(orders, Stock, Supply, Today);
        Plan = (await store.RecordAsync<ShopPlan>(ShopPlan.Key))?.Value ?? new ShopPlan();
        Calendar = (await store.RecordAsync<ShopCalendar>(ShopCalendar.Key))?.Value ?? new ShopCalendar();
        Blockers = OrderBlocks.Find(Order, lacking.GetValueOrDefault(number) ?? [], Today);
        return true;
    }

    /// <summary>What prices count with for losses: the shop's figure until enough parcels arrived.</summary>
    private async Task<decimal> LossPercentAsync(decimal own) =>
        Math.Round(
            LossStatistics.LossPercentFor(await ArrivalReading.AllAsync(store), own).Percent,
            2,
            MidpointRounding.AwayFromZero
        );

    /// <summary>Numbers of a version, as far as sizes and goods; null where it cannot be computed.</summary>
    public async Task<DesignNumbers?> NumbersAsync(Guid design, int of)
    {
        if (!numbers.TryGetValue((design, of), out var known))
        {
            known = numbers[(design, of)] =
                await store.DesignAsync(design, of) is { } stored
                && DesignReader.Read(stored.Name, stored.Text).Value is { } document
                && library.Check(document) is { Value: { } good, IsGood: true }
                    ? DesignNumbers.Shape(good)
                    : null;
        }

        return known;
    }

    /// <summary>Lines of the order ready to be priced; what cannot be computed is named.</summary>
    /// <param name="items">The lines.</param>
    public async Task<(ImmutableArray<PricedItem> Items, string? Fault)> PricedAsync(
        IEnumerable<OrderItem> items
    )
    {
        var priced = ImmutableArray.CreateBuilder<PricedItem>();
        foreach (var item in items)
        {
            var its = item.Design is { } design ? await NumbersAsync(design, item.Version) : null;
            if (item.Design is not null && its is null)
            {
                return (
                    [],
                    $"{item.Name} cannot be calculated as entered. Open the design and put it right first."
                );
            }

            priced.Add(new(item, its));
        }

        return (priced.ToImmutable(), null);
    }

    /// <summary>Prices as the shop pays them now.</summary>
    /// <param name="fromStock">True to count stock at what its lots cost.</param>
    public QuoteBasis Basis(bool fromStock) =>
        new(
            Terms,
            Customer,
            new PriceBook(Supply, library.Catalog, Terms.Currency) { Stock = fromStock ? Stock : null }
        );

    /// <summary>
    /// The first day the order as it stands can be handed over; null where nothing of it can be computed.
    /// </summary>
    public async Task<PromisedDay?> EarliestAsync()
    {
        var (items, _) = await PricedAsync(Order.Items);
        if (!items.Any(i => i.Numbers is not null))
        {
            return null;
        }

        var option = QuoteMaker.Price(Basis(false), new OptionWish("") { Items = items, Price = 0 }).Option;
        // As if it were taken today: what it lacks beside the orders that are open already.
        var asked = Order with
        {
            State = OrderState.Accepted,
            Goods = Order.IsOpen ? Order.Goods : option.Goods,
        };
        var all = orders.Where(o => o.Number != Order.Number).Append(asked);
        var awaited = GoodShortage.Awaited(all, Stock, Supply, Today).GetValueOrDefault(Order.Number);
        var reading = new OrderReading(Terms, Kinds, Plan, Today);
        var earliest = EarliestDays.Find(
            reading.Read(new OrderFacts(asked, [.. items], awaited ?? [])),
            Calendar,
            Today
        );
        return new(earliest.Days.Arrive, earliest.Why);
    }

    /// <summary>What workshop and customer say on a paper of today.</summary>
    public QuoteHead Head(string note = "") => new(Terms, Customer, Today) { Note = note };

    /// <summary>Who acts now, with words.</summary>
    public async Task<OrderAct> ActAsync(string note) =>
        new(clock.GetUtcNow().UtcDateTime, await OrderBook.WhoAsync(store), note);

    /// <summary>Writes the order, and with it what a step adds.</summary>
    /// <param name="order">The order as it is from now on.</param>
    /// <param name="note">What was changed.</param>
    /// <param name="besides">Papers and records of the same step.</param>
    /// <returns>Null where it was written, else why not.</returns>
    public async Task<string?> KeepAsync(Order order, string note, Action<ShopChange>? besides = null)
    {
        var fault = await Attempt.AtAsync(async () =>
        {
            var change = new ShopChange(await OrderBook.WhoAsync(store)).Keep(
                OrderBook.Key(order.Number),
                version,
                order,
                note
            );
            besides?.Invoke(change);
            await store.WriteAsync(change);
        });
        // Refused or written: what is there now is shown.
        return await Attempt.AtAsync(ReadAsync) ?? fault;
    }

    /// <summary>
    /// Looks whether a design would harm its animals: the whole check, as the desk does it. What is found is
    /// kept with the line of the order.
    /// </summary>
    /// <param name="cancel">Nobody waits any more.</param>
    public async Task JudgeAsync(CancellationToken cancel)
    {
        foreach (var item in Order.Items.Where(i => i is { Harm: null, Design: not null }).ToList())
        {
            if (await NumbersAsync(item.Design!.Value, item.Version) is not { } its)
            {
                continue;
            }

            var result = await Turns.OfMachine.RunAsync(
                WorkKind.Whole,
                () => DesignRun.Execute(its.Upto(Reach.Whole), cancel),
                cancel
            );
            var stops = result.Open.Where(f => f.Severity == Severity.Stop && f.Protects == Protects.Animal);
            var harm = string.Join(" ", stops.Select(f => f.Text));
            await KeepAsync(
                Order with
                {
                    Items = [.. Order.Items.Select(i => i == item ? i with { Harm = harm } : i)],
                },
                harm.Length > 0 ? $"{item.Name} would harm its animals" : $"{item.Name} was checked"
            );
        }
    }
}
