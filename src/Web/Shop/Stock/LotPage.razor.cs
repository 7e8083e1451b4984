using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Stock;

/// <summary>One lot: what it is, what happened to it, where it came from and where it went.</summary>
public sealed partial class LotPage
{
    private StockView view = StockView.Empty;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private LotAccount? lot;
    private Good good = null!;
    private string? bar;
    private Recall? recall;
    private ImmutableArray<string> ancestors = [];
    private ImmutableArray<LotAccount> descendants = [];
    private List<WayEdge> from = [];
    private List<WayEdge> into = [];
    private ImmutableHashSet<int> gone = [];
    private MassBalance balance = null!;
    private bool isLoaded;
    private bool isDeep = true;
    private string reason = "";
    private string why = "";
    private int asked;
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;

    /// <summary>Number of the lot.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    /// <summary>Line, and days from and until which it may be used.</summary>
    private static IEnumerable<(string Name, string Value)> Limits(Lot lot)
    {
        if (lot.Line is { } line)
        {
            yield return ("Line", line);
        }

        if (lot.Expires is { } last)
        {
            yield return ("Good until", StockWords.Day(last));
        }

        if (lot.QuarantinedUntil is { } free)
        {
            yield return ("Out of quarantine", StockWords.Day(free));
        }
    }

    /// <summary>Edges of sheet goods; null for what is no sheet.</summary>
    private static string? SizeWords(Lot lot) =>
        lot is { LengthMillimeters: { } length, WidthMillimeters: { } width }
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{length:0.#} × {width:0.#} mm{(lot.Form == SheetForm.Roll ? " as it came" : "")}"
            )
            : null;

    private IEnumerable<(string Name, string Value)> Facts
    {
        get
        {
            var it = lot!;
            yield return ("On hand", Amount(it.OnHand));
            yield return ("What that cost, net", StockWords.Money(it.Value, view.Currency));
            if (!it.Feeds.IsEmpty)
            {
                yield return (
                    "What went into it cost, net",
                    StockWords.Money(it.Feeds.Sum(f => f.Cost), view.Currency)
                );
            }

            yield return (it.Lot.Supplier is null ? "Made or bred" : "Came", StockWords.Day(it.Lot.Since));
            if (it.Lot.Supplier is { } key)
            {
                yield return ("From", view.Suppliers.TryGetValue(key, out var s) ? s.Name : key);
            }

            if (SizeWords(it.Lot) is { } size)
            {
                yield return ("Size", size);
            }

            if (it.Lot.SupplierLot is { } theirs)
            {
                yield return ("Their lot number", theirs);
            }

            foreach (var fact in Limits(it.Lot))
            {
                yield return fact;
            }

            if (view.PlaceOf(it) is { Length: > 0 } place)
            {
                yield return ("Place", place);
            }

            if (it.Lot.Order is { } order)
            {
                yield return ("Made for order", view.OrderName(order));
            }

            if (MassBalance.Shrinkage(it) is { } shrunk && good.Unit == StockUnit.Liters)
            {
                yield return ("Mixing took", $"{StockWords.Number(100 * shrunk)} %");
            }

            yield return ("Number on the label", LotNumber.Checked(it.Lot.Id));
            if (it.Lot.Note.Length > 0)
            {
                yield return ("Note", it.Lot.Note);
            }
        }
    }

    private string Origin =>
        lot!.Lot.Supplier is { } key
            ? view.Suppliers.TryGetValue(key, out var supplier)
                ? supplier.Name
                : key
            : "made or bred here";

    private string BalanceWords
    {
        get
        {
            var sums =
                $"In {Amount(balance.In)}; used {Amount(balance.Used)}, sold {Amount(balance.Sold)}, lost "
                + $"{Amount(balance.Wasted)}, on hand {Amount(balance.OnHand)}.";
            var missing = Amount(Math.Abs(balance.Missing));
            return balance switch
            {
                { IsEven: true } when Math.Abs(balance.Missing) <= lot!.Rounding => $"{sums} It adds up.",
                { IsEven: true } => $"{sums} It adds up within {missing}.",
                { Missing: > 0 } => $"{sums} {missing} are missing.",
                _ => $"{sums} That is {missing} too much.",
            };
        }
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        preferences = await SavedPreferences.LoadAsync();
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync()
    {
        (told, isGood, asked) = (null, true, 0);
        return LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Shelf.LoadAsync();
        isLoaded = true;
        lot = LotNumber.Read(Id, id => view.Book.Find(id) is not null).Lot is { } found
            ? view.Book.Find(found)
            : null;
        if (lot is not null)
        {
            good = view.GoodOf(lot);
            bar = lot.Bar(Shelf.Today);
            gone = lot.TakenBack;
            balance = MassBalance.ForLot(lot, good.Unit);
            recall = Recall.Trace(view.Book, lot.Lot.Id);
            descendants = [.. recall!.Into.Where(l => l.HasSome && !l.IsHeld)];
            ancestors = [.. Genealogy.Ancestors(view.Book, lot.Lot.Id)];
            from = Edges(Genealogy.EdgesInto(lot), e => e.From, lot.In);
            into = Edges(Genealogy.EdgesFrom(lot), e => e.Into, lot.In);
        }

        StateHasChanged();
    }

    private List<WayEdge> Edges(IEnumerable<LotEdge> edges, Func<LotEdge, string> key, double most)
    {
        var all = edges.OrderByDescending(e => e.Amount).ToList();
        var widest = Math.Max(most, all.Count > 0 ? all[0].Amount : 0);
        return all.ConvertAll(e =>
        {
            var order = e.IsSale ? view.OrderOf(e.Into) : null;
            var other = e.IsSale ? null : view.Book.Find(key(e));
            var unit = (view.Book.Find(e.From) is { } source ? view.GoodOf(source) : good).Unit;
            return new WayEdge(
                order is null ? key(e) : view.OrderName(order.Number),
                order is not null ? view.CustomerOf(order)
                    : other is not null ? view.GoodOf(other).Name
                    : "",
                StockWords.Amount(e.Amount, unit, preferences),
                order is not null ? FormattableString.Invariant($"/orders/{order.Number}")
                    : other is not null ? $"/stock/lot/{other.Lot.Id}"
                    : null,
                widest > 0 ? e.Amount / widest : 0
            );
        });
    }

    private async Task HoldAsync()
    {
        if (reason.Trim().Length == 0)
        {
            (told, isGood) = ("Say why, in a few words: whoever picks this lot reads it.", false);
            return;
        }

        var who = await Shelf.WhoAsync();
        IReadOnlyList<Movement> lines =
            lot!.IsHeld ? [Holds.Line(lot, MovementKind.Released, (Shelf.Today, who), reason.Trim())]
            : isDeep ? Holds.WithDescendants(view.Book, lot.Lot.Id, Shelf.Today, who, reason.Trim())
            : [Holds.Line(lot, MovementKind.Held, (Shelf.Today, who), reason.Trim())];
        var words =
            lot.IsHeld ? $"{lot.Lot.Id} may be used again."
            : lines.Count == 1 ? $"{lot.Lot.Id} is on hold."
            : FormattableString.Invariant($"{lines.Count} lots are on hold.");
        await WriteAsync(new([], [.. lines]), words);
    }

    private async Task TakeBackAsync(int line)
    {
        var (back, refusal) = Corrections.TakeBack(
            lot!,
            line,
            Shelf.Today,
            await Shelf.WhoAsync(),
            why.Trim()
        );
        if (back is null)
        {
            (told, isGood) = (refusal, false);
            return;
        }

        await WriteAsync(new([], [back]), "Taken back. The line stays in the history.");
    }

    private async Task WriteAsync(StockStep step, string words)
    {
        var fault = await Shelf.WriteAsync(step);
        (told, isGood) = (fault ?? words, fault is null);
        if (isGood)
        {
            (reason, why, asked) = ("", "", 0);
            await LoadAsync();
        }
    }

    private string Amount(double amount) => StockWords.Amount(amount, good.Unit, preferences);

    private string PickedWords(Picked picked)
    {
        var unit = view.GoodOf(picked.Lot).Unit;
        return $"{StockWords.Amount(picked.Amount, unit, preferences)} of {picked.Lot.Lot.Id} "
            + $"({view.GoodOf(picked.Lot).Name})";
    }

    private string Change(Movement line) =>
        line.Effect switch
        {
            > 0 => $"+{Amount(line.Effect)}",
            < 0 => $"−{Amount(-line.Effect)}",
            _ => "",
        };

    private string Where(Movement line)
    {
        var order = line is { Kind: MovementKind.Sold, Into: { } into } ? view.OrderOf(into) : null;
        var place =
            order is not null ? $"order {view.OrderName(order.Number)}"
            : line.Into is { } lotId ? $"into {lotId}"
            : line.Place is { Length: > 0 } to ? $"to {to}"
            : "";
        return string.Join(": ", new[] { place, line.Note }.Where(t => t.Length > 0));
    }
}
