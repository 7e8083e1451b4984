using System.Collections.Immutable;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>All goods: how much there is, what it cost, what runs out and what spoils.</summary>
public sealed partial class StockPage
{
    private const string All = "all";
    private const string Low = "low";
    private const string Soon = "soon";
    private const string Barred = "barred";
    private const int Ahead = 14;
    private readonly HashSet<string> open = new(StringComparer.Ordinal);
    private StockView view = StockView.Empty;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private List<StockRow> rows = [];
    private HashSet<string> low = [];
    private HashSet<string> soon = [];
    private HashSet<string> barred = [];
    private ImmutableArray<BookLine> unassigned = [];
    private List<(Good Good, MassBalance Balance)> uneven = [];
    private string find = "";
    private string show = "";
    private string chosen = "";
    private StockWish wish;
    private bool isWriting;
    private bool isLoaded;
    private IDisposable? watch;

    private string Sum =>
        !isLoaded
            ? "Loading…"
            : $"{Count(rows.Count(r => r.Lots.Count > 0), "good", "goods")} on hand, worth "
                + StockWords.Money(rows.Sum(r => r.Value), view.Currency);

    private List<StockRow> Rows =>
        [
            .. rows.Where(r =>
                show switch
                {
                    Low => low.Contains(r.Good.Key),
                    Soon => soon.Contains(r.Good.Key),
                    Barred => barred.Contains(r.Good.Key),
                    All => true,
                    _ => find.Length > 0 || r.Lots.Count > 0 || r.IsLow,
                } && IsFound(r)
            ),
        ];

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        preferences = await SavedPreferences.LoadAsync();
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Shelf.LoadAsync();
        var today = Shelf.Today;
        rows =
        [
            .. view
                .AllGoods.Select(g => StockRow.From(view, g, today))
                .Where(r => r.Lots.Count > 0 || r.Good.Kind != GoodKind.Tank),
        ];
        low = [.. StockWatch.Below(view.Book, view.Goods.Values, today).Select(l => l.Good.Key)];
        soon = [.. StockWatch.Expiring(view.Book, today, Ahead).Select(l => l.Lot.Good)];
        barred =
        [
            .. view.Book.Lots.Where(l => l.HasSome && l.Bar(today) is not null).Select(l => l.Lot.Good),
        ];
        unassigned = MassBalance.Unassigned(view.Book);
        uneven =
        [
            .. view.AllGoods.Select(g => (g, MassBalance.ForGood(view.Book, g))).Where(b => !b.Item2.IsEven),
        ];
        isLoaded = true;
        StateHasChanged();
    }

    private void Write(StockWish first)
    {
        (wish, isWriting) = (first, true);
        chosen = open.Count == 1 ? open.First() : "";
    }

    private void Toggle(string good)
    {
        if (!open.Remove(good))
        {
            open.Add(good);
        }
    }

    private bool IsFound(StockRow row) =>
        find.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(word =>
                Has(row.Good.Name, word)
                || Has(row.Good.Place, word)
                || row.Lots.Any(l =>
                    Has(l.Lot.Id, word)
                    || Has(l.Place, word)
                    || Has(l.Lot.SupplierLot ?? "", word)
                    || (
                        l.Lot.Supplier is { } s
                        && view.Suppliers.TryGetValue(s, out var from)
                        && Has(from.Name, word)
                    )
                )
            );

    private static bool Has(string text, string word) =>
        text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private string Amount(double amount, Good good) => StockWords.Amount(amount, good.Unit, preferences);

    private string LotFacts(LotAccount lot) =>
        string.Join(
            ", ",
            new[]
            {
                $"since {StockWords.Day(lot.Lot.Since)}",
                lot.Lot.Expires is { } last ? $"good until {StockWords.Day(last)}" : "",
                lot.Lot.Line is { } line ? $"line {line}" : "",
                view.PlaceOf(lot),
            }.Where(t => t.Length > 0)
        );

    private string BalanceWords(Good good, MassBalance balance)
    {
        var missing = Amount(Math.Abs(balance.Missing), good);
        var share = StockWords.Number(100 * Math.Abs(balance.MissingShare));
        return balance.Missing > 0
            ? $"{missing} of {Amount(balance.In, good)} are missing ({share} %)"
            : $"{missing} more than came in ({share} %)";
    }

    private static string Count(int count, string one, string many) =>
        count == 1 ? $"1 {one}" : FormattableString.Invariant($"{count} {many}");
}
