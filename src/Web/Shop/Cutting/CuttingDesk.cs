using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Orders;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>
/// The cutting table of this bench: what is wanted, plans, the rack, and how they are written.
/// </summary>
public sealed class CuttingDesk(
    BenchStore store,
    BenchLibrary library,
    StockShelf shelf,
    OrderNumbers numbers
)
{
    private const string CutStage = "cut";
    private const double UsualMinutes = 7;

    /// <summary>Today.</summary>
    public DateOnly Today => shelf.Today;

    /// <summary>Everything the pages show.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<CuttingView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var stock = await shelf.LoadAsync(cancel);
        var rules = await store.RecordsAsync<CuttingRules>(cancel);
        var jobs = await store.RecordsAsync<CuttingJob>(cancel);
        var panels = await store.RecordsAsync<LoosePanel>(cancel);
        var (wanted, unread) = await WantedAsync(stock, panels, cancel);
        var facts = new TableFacts
        {
            Wanted = wanted,
            Book = stock.Book,
            Supply = await OrderBook.SupplyAsync(store, cancel),
            Catalog = library.Catalog,
            Rules = [.. rules.Select(r => r.Value)],
            Jobs = [.. jobs.Select(j => j.Value)],
            Currency = stock.Currency,
            Today = shelf.Today,
        };
        return new(
            stock,
            facts,
            CutMaterial.LayAll(facts),
            [.. jobs.OrderByDescending(j => j.Value.Number)],
            [.. panels.OrderBy(p => p.Value.Number)]
        )
        {
            Rules = [.. rules],
            Unread = unread,
        };
    }

    /// <summary>Keeps a plan under the next number; the number, or why not.</summary>
    /// <param name="make">Makes it from its number, day and author.</param>
    public async Task<(int Number, string? Fault)> KeepAsync(Func<int, (DateOnly, string), CuttingJob> make)
    {
        var who = await shelf.WhoAsync();
        var number = 0;
        var fault = await Attempt.AtAsync(async () =>
        {
            var written = await store.WriteAsync(
                new ShopChange(who).KeepNumbered(n => make(n, (shelf.Today, who)), "planned")
            );
            number = written.Records[0];
        });
        return (number, fault);
    }

    /// <summary>Writes a plan as cut: stock, offcuts and hours in one step; null, or why not.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="kept">The plan.</param>
    /// <param name="minutes">Minutes it took.</param>
    public async Task<string?> CutAsync(CuttingView view, Kept<CuttingJob> kept, double minutes)
    {
        var who = await shelf.WhoAsync();
        var job = kept.Value;
        var (booking, fault) = CutBooking.Make(
            job,
            await shelf.BookAsync(),
            view.Stock.GoodOf(job.Good),
            view.Facts.RulesOf(job.Good),
            (shelf.Today, who),
            minutes
        );
        return booking is null
            ? fault
            : await WriteAsync(kept, booking, who, "cut", (order, share) =>
                order with
                {
                    Worked = [.. order.Worked, new WorkedTime(CutStage, share, shelf.Today, who)],
                }
            );
    }

    /// <summary>Takes a cut plan back by lines that reverse its own; null, or why not.</summary>
    /// <param name="kept">The plan.</param>
    public async Task<string?> TakeBackAsync(Kept<CuttingJob> kept)
    {
        var who = await shelf.WhoAsync();
        var (booking, fault) = CutBooking.TakeBack(kept.Value, await shelf.BookAsync(), (shelf.Today, who));
        return booking is null
            ? fault
            : await WriteAsync(kept, booking, who, "taken back", (order, share) =>
                Unworked(order, share, kept.Value)
            );
    }

    /// <summary>Gives a plan up, or one of parts that were cut by hand; null, or why not.</summary>
    /// <param name="kept">The plan.</param>
    public async Task<string?> DropAsync(Kept<CuttingJob> kept) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(
                kept.Key,
                kept.Version,
                kept.Value with
                {
                    State = CuttingJobState.Dropped,
                },
                "given up"
            )
        );

    /// <summary>Keeps the shop's own rules of a good; null, or why not.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="rules">The rules.</param>
    public async Task<string?> KeepRulesAsync(CuttingView view, CuttingRules rules) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(
                rules.Good,
                view.Rules.FirstOrDefault(r => r.Key == rules.Good)?.Version ?? 0,
                rules,
                "cutting"
            )
        );

    /// <summary>Adds panels beside the designs; null, or why not.</summary>
    /// <param name="panel">The panels; their number is given here.</param>
    public async Task<string?> AddPanelAsync(LoosePanel panel) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).KeepNumbered(n => panel with { Number = n }, "wanted")
        );

    /// <summary>Takes panels off the table; null, or why not.</summary>
    /// <param name="panel">The panels.</param>
    public async Task<string?> RemovePanelAsync(Kept<LoosePanel> panel) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).TakeBack<LoosePanel>(
                panel.Key,
                panel.Version,
                "not wanted"
            )
        );

    /// <summary>Puts an offcut on the rack by hand; null, or why not.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="offcut">Good, edges and thickness; number and amount are given here.</param>
    public async Task<string?> AddOffcutAsync(CuttingView view, Lot offcut)
    {
        var good = view.Stock.GoodOf(offcut.Good);
        var lot = HandOffcut.Make(
            offcut,
            good,
            view.Facts,
            LotNumber.Next(good, view.Stock.Book.Lots.Select(a => a.Lot.Id))
        );
        return await shelf.WriteAsync(
            new StockStep([lot], [Line(lot.Id, MovementKind.Made, lot.Amount, await shelf.WhoAsync())])
        );
    }

    /// <summary>Throws an offcut away; null, or why not.</summary>
    /// <param name="lot">The offcut.</param>
    public async Task<string?> ScrapAsync(LotAccount lot) =>
        await shelf.WriteAsync(
            new StockStep([], [Line(lot.Lot.Id, MovementKind.Scrapped, lot.OnHand, await shelf.WhoAsync())])
        );

    /// <summary>Minutes that one part takes, as the workshop's figures have it.</summary>
    /// <param name="view">What was shown.</param>
    public static double MinutesPerPart(CuttingView view) =>
        view.Stock.Terms?.Labor.FirstOrDefault(s => s.Key == CutStage)?.Minutes ?? UsualMinutes;

    private Movement Line(string lot, MovementKind kind, double amount, string who) =>
        new()
        {
            Lot = lot,
            Kind = kind,
            Amount = amount,
            Day = shelf.Today,
            Who = who,
        };

    private async Task<(ImmutableArray<WantedPart> Wanted, ImmutableArray<string> Unread)> WantedAsync(
        StockView stock,
        IEnumerable<Kept<LoosePanel>> panels,
        CancellationToken cancel
    )
    {
        var wanted = ImmutableArray.CreateBuilder<WantedPart>();
        var unread = ImmutableArray.CreateBuilder<string>();
        var open = stock.Orders.Where(o => o.State is OrderState.Accepted or OrderState.InWork).ToList();
        foreach (var order in open)
        {
            foreach (var item in order.Items.Where(i => i.Design is not null))
            {
                if (await numbers.FindAsync(item, cancel) is { } shape)
                {
                    wanted.AddRange(WantedPart.FromDesign(order, item, shape, null));
                }
                else
                {
                    unread.Add($"{stock.OrderName(order.Number)} {item.Name}");
                }
            }
        }

        wanted.AddRange(
            panels.Select(p => WantedPart.FromPanel(p.Value, open.Find(o => o.Number == p.Value.Order)))
        );
        return (wanted.ToImmutable(), unread.ToImmutable());
    }

    private async Task<string?> WriteAsync(
        Kept<CuttingJob> kept,
        CutBooking booking,
        string who,
        string note,
        Func<Order, double, Order> hours
    )
    {
        var change = new ShopChange(who).Keep(kept.Key, kept.Version, booking.Job, note);
        foreach (var lot in booking.Step.Lots)
        {
            change.Add(lot);
        }

        foreach (var line in booking.Step.Lines)
        {
            change.Add(line);
        }

        var shares = booking.Job.Minutes.Count > 0 ? booking.Job.Minutes : kept.Value.Minutes;
        foreach (var share in shares)
        {
            if (await store.OrderAsync(share.Order) is { } order)
            {
                change.Keep(
                    OrderBook.Key(share.Order),
                    order.Version,
                    hours(order.Value, share.Minutes),
                    string.Create(CultureInfo.InvariantCulture, $"cutting plan {kept.Value.Number} {note}")
                );
            }
        }

        return await shelf.WriteAsync(change);
    }

    private static Order Unworked(Order order, double minutes, CuttingJob job)
    {
        var gone = new WorkedTime(CutStage, minutes, job.CutOn ?? job.Day, job.CutBy);
        var at = order.Worked.ToList().IndexOf(gone);
        return at < 0 ? order : order with { Worked = [.. order.Worked.Where((_, i) => i != at)] };
    }
}
