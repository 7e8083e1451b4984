using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Kits;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Kits;

/// <summary>Kits of an order: picked at once in walking order, bagged, checked by weight, packed.</summary>
public sealed partial class KitPage
{
    private readonly Dictionary<string, string> densities = new(StringComparer.Ordinal);
    private readonly HashSet<KitItem> ticked = [];
    private KitView? view;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private bool isLoaded;
    private bool isPartial;
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;

    /// <summary>Number of the order.</summary>
    [Parameter]
    public int Number { get; set; }

    private string Title => $"Kits of {view!.Stock.OrderName(Number)}";

    private string MassUnit => StockWords.UnitWord(StockUnit.Kilograms, preferences);

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        preferences = await SavedPreferences.LoadAsync();
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => LoadAsync();

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync(Number);
        isLoaded = true;
        StateHasChanged();
    }

    private async Task PackAsync(KitLine line)
    {
        var fault = await Desk.PackAsync(view!, line);
        isGood = fault is null;
        told = fault ?? $"{Kits(line.Pick.Kits)} packed: each is a lot with what went into it.";
        if (isGood)
        {
            ticked.Clear();
            isPartial = false;
            await LoadAsync();
        }
    }

    private void Tick(KitItem item)
    {
        if (!ticked.Remove(item))
        {
            ticked.Add(item);
        }
    }

    private static string LeftWords(KitLine line) =>
        line.Pick.Kits == 0 ? "all packed" : $"{Kits(line.Pick.Kits)} to pack";

    private static string PackWords(KitLine line) =>
        line.Pick.Kits == 1 ? "Write 1 kit as packed" : $"Write {Kits(line.Pick.Kits)} as packed";

    private static string Kits(int kits) =>
        kits == 1 ? "1 kit" : string.Create(CultureInfo.InvariantCulture, $"{kits} kits");

    private static string Place(KitPickLine pick) => pick.Good?.Place ?? "not kept in stock";

    private string AllWords(KitLine line, KitPickLine pick) =>
        pick.Good is { } good ? Amount(pick.Each * line.Pick.Kits, good)
        : pick.Item.Pieces is { } pieces ? $"{StockWords.Number(pieces * line.Pick.Kits)} ×"
        : pick.Item.Liters is { } liters ? Liters(liters * line.Pick.Kits)
        : pick.Item.Kilograms is { } mass ? Mass(mass * line.Pick.Kits)
        : "";

    private string EachWords(KitLine line, KitPickLine pick) =>
        line.Pick.Kits < 2 ? ""
        : pick.Good is { } good ? $"{Amount(pick.Each, good)} each"
        : pick.Item.Pieces is { } pieces ? $"{StockWords.Number(pieces)} each"
        : "";

    private static string BagWords(KitItem item)
    {
        var bag = BagSize.For(item.Liters!.Value);
        return bag.Count == 1
            ? $"{StockWords.Number(bag.Liters)} L"
            : FormattableString.Invariant($"{bag.Count} × {StockWords.Number(bag.Liters)} L");
    }

    private string DensityText(KitItem item) =>
        densities.TryGetValue(item.Letter, out var typed) ? typed
        : view!.KilogramsPerLiter(item) is { } known
            ? StockWords.Field(known, StockUnit.Kilograms, preferences)
        : "";

    private string WeightWords(KitItem item)
    {
        var density = densities.TryGetValue(item.Letter, out var typed)
            ? StockWords.Read(typed, StockUnit.Kilograms, preferences)
            : view!.KilogramsPerLiter(item);
        if (density is not (> 0 and var each))
        {
            return "weigh 1 L first";
        }

        var (low, high) = KitWords.Weight(item.Liters!.Value / BagSize.For(item.Liters.Value).Count, each);
        if (high < 0.1)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{1000 * low:0}–{1000 * high:0} g");
        }

        var from = StockWords.Field(low, StockUnit.Kilograms, preferences);
        return $"{from}–{Mass(high)}";
    }

    private string Amount(double amount, Good good) => StockWords.Amount(amount, good.Unit, preferences);

    private string Liters(double liters) => StockWords.Amount(liters, StockUnit.Liters, preferences);

    private string Mass(double kilograms) => StockWords.Amount(kilograms, StockUnit.Kilograms, preferences);
}
