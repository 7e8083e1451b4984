using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Demo;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shipping;
using Litterfall.Workshop.Demo;

namespace Litterfall.Web.Shop;

/// <summary>Puts the invented workshop into an empty bench: designs, prices, stock, orders.</summary>
public sealed class DemoBench(
    BenchStore store,
    BenchLibrary library,
    BenchOptions options,
    TimeProvider clock
)
{
    private const int FirstOrder = 201;
    private const int LastOrder = 205;

    /// <summary>Fills the bench where it holds no design.</summary>
    /// <param name="cancel">Cancels between steps.</param>
    public async Task FillAsync(CancellationToken cancel = default)
    {
        if ((await store.DesignsAsync(cancel)).Count > 0)
        {
            return;
        }

        var running = new List<StoredDesign>();
        foreach (var tank in options.Running)
        {
            running.Add(await store.AddAsync(tank.Name, tank.Text, "from the demo workshop", cancel));
        }

        var designs = ImmutableArray.CreateBuilder<DemoDesign>();
        foreach (var example in options.Examples.Reverse())
        {
            var kept = await store.AddAsync(example.Name, example.Text, "from the demo workshop", cancel);
            if (Order(example) is { } order && Numbers(kept) is { } numbers)
            {
                designs.Add(new DemoDesign(order, kept.Id, kept.Version, kept.Name, numbers));
            }
        }

        if (designs.Count == LastOrder - FirstOrder + 1)
        {
            var today = DateOnly.FromDateTime(clock.GetLocalNow().Date);
            var supply = new DemoSupply(options.Catalog, designs.ToImmutable())
            {
                Tanks = new(Design(running, "breeding"), Design(running, "T-17")),
            };
            var book = DemoBook.Create(supply, today);
            await store.WriteAsync(Parcels(Change(book), new(today, clock.GetUtcNow().UtcDateTime)), cancel);
            await Tanks.Loggers.DemoLoggers.FillAsync(store, cancel);
            await library.LoadPricesAgainAsync();
        }
    }

    /// <summary>"LD-201: …" is the design of order 201.</summary>
    private static int? Order(BenchExample example)
    {
        var digits = new string([
            .. example.Name.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(char.IsAsciiDigit),
        ]);
        return
            example.Name.StartsWith("LD-", StringComparison.Ordinal)
            && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number is >= FirstOrder and <= LastOrder
            ? number
            : null;
    }

    private static KeptDesign? Design(IEnumerable<StoredDesign> running, string begin) =>
        running.FirstOrDefault(d => d.Name.StartsWith(begin, StringComparison.Ordinal)) is { } found
            ? new(found.Id, found.Version)
            : null;

    private DesignNumbers? Numbers(StoredDesign design) =>
        DesignReader.Read(design.Name, design.Text).Value is { } document
        && library.Check(document) is { IsGood: true, Value: { } good }
            ? DesignNumbers.Shape(good)
            : null;

    private static ShopChange Change(DemoBook book)
    {
        var change = new ShopChange(DemoShop.Bookkeeper).Keep(ShopTerms.Key, 0, DemoShop.Terms, "demo");
        change.Keep(ShopCalendar.Key, 0, book.Calendar, "demo").Keep(ShopPlan.Key, 0, book.Plan, "demo");
        Each(DemoShop.Suppliers, s => change.Keep(s.Key, 0, s, "demo"));
        Each(DemoShop.Customers, c => change.Keep(c.Key, 0, c, "demo"));
        Each(book.Goods, g => change.Keep(g.Key, 0, g, "demo"));
        Each(book.Offers, o => change.Keep(o.Key, 0, o, "demo"));
        Each(book.Orders, o => change.Keep(o.Number.ToString(CultureInfo.InvariantCulture), 0, o, "demo"));
        Each(book.Batches, b => change.Keep(b.Lot, 0, b, "demo"));
        Each(book.Jobs, j => change.Keep(j.Number.ToString(CultureInfo.InvariantCulture), 0, j, "demo"));
        Each(book.Shelves, s => change.Keep(s.Key, 0, s, "demo"));
        Each(book.Cultures, c => change.Keep(c.Number, 0, c, "demo"));
        Each(book.Fed, f => change.Keep(f.Key, 0, f, "demo"));
        Each(book.Benches, b => change.Keep(b.Key, 0, b, "demo"));
        Each(book.Trays, t => change.Keep(t.Number, 0, t, "demo"));
        Each(book.Mothers, m => change.Keep(m.Key, 0, m, "demo"));
        Each(book.Rooms, r => change.Keep(r.Key, 0, r, "demo"));
        Each(book.Tanks, t => change.Keep(t.Code, 0, t, "demo"));
        Each(book.Permits, p => change.Keep(p.Key, 0, p, "demo"));
        Each(book.Contracts, c => change.Keep(c.Number.ToString(CultureInfo.InvariantCulture), 0, c, "demo"));
        Each(book.Care, line => change.Add(line));
        Each(book.Lots, lot => change.Add(lot));
        Each(book.Lines, line => change.Add(line));
        Each(book.Quotes, q => change.Issue(q.Order, _ => q));
        Each(book.Papers, p => change.Issue(p.Kind, p.Order, _ => p));
        return change;
    }

    private static ShopChange Parcels(ShopChange change, DemoParcels demo)
    {
        string Key(int number) => number.ToString(CultureInfo.InvariantCulture);
        change.Keep(DispatchRules.Key, 0, demo.Rules, "demo");
        Each(demo.Goods, g => change.Keep(g.Key, 0, g, "demo"));
        Each(demo.Lots, lot => change
                .Add(lot)
                .Add(
                    new Movement
                    {
                        Lot = lot.Id,
                        Kind = MovementKind.Received,
                        Amount = lot.Amount,
                        Day = lot.Since,
                        Who = DemoShop.Bookkeeper,
                    }
                ));
        Each(demo.Forecasts, f => change.Keep(DispatchDesk.KeyOf(f.Node, f.Place), 0, f, "demo"));
        Each(demo.Waiting.Concat(demo.Gone), p => change.Keep(Key(p.Number), 0, p, "demo"));
        Each(demo.Arrivals, a => change.Keep(Key(a.Parcel), 0, a, "demo"));
        Each(demo.Evidence(TradeJson.Write), e => change.Keep(DispatchDesk.KeyOf(e), 0, e, "demo"));
        return change;
    }

    private static void Each<T>(IEnumerable<T> all, Action<T> put)
    {
        foreach (var one in all)
        {
            put(one);
        }
    }
}
