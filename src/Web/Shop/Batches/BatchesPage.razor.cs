using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;

namespace Litterfall.Web.Shop.Batches;

/// <summary>What open orders need of each mix, how it is made, and what was made.</summary>
public sealed partial class BatchesPage
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private BatchView? view;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private List<RecipeEntry> needed = [];
    private string chosen = "";
    private string asked = "";
    private string weight = "";
    private string sampleWet = "";
    private string sampleDry = "";
    private string? told;
    private int shown = 12;
    private IDisposable? watch;

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
        view = await Desk.LoadAsync();
        needed = [.. view.Recipes.Where(r => view.Needs.Any(n => n.Recipe == r.Key))];
        StateHasChanged();
    }

    private void Ask(Kept<SoilBatch> batch)
    {
        asked = batch.Value.Lot;
        weight = batch.Value.OutKilograms is { } kg ? StockWords.Number(kg) : "";
        (sampleWet, sampleDry) = ("", "");
    }

    private async Task MeasureAsync(Kept<SoilBatch> batch)
    {
        var (dry, fault) = BatchPart.Dry(sampleWet, sampleDry);
        if (fault is not null)
        {
            told = fault;
            return;
        }

        var kilograms = StockWords.Read(weight, StockUnit.Kilograms, preferences);
        if (kilograms is not > 0 && dry is null)
        {
            told = "Type the weight of all of it, or a sample before and after drying.";
            return;
        }

        told = await Desk.MeasureAsync(
            batch,
            batch.Value with
            {
                OutKilograms = kilograms ?? batch.Value.OutKilograms,
                DryShare = dry ?? batch.Value.DryShare,
            }
        );
        asked = "";
        await LoadAsync();
    }

    private string Liters(double liters) => StockWords.Amount(liters, StockUnit.Liters, preferences);

    private string Mass(double kilograms) => StockWords.Amount(kilograms, StockUnit.Kilograms, preferences);

    private static string Yield(SoilBatch batch) =>
        batch.OutLiters is { } came && batch.Parts.Sum(p => p.Liters) is > 0 and var put
            ? string.Create(Culture, $"{100 * came / put:0} %")
            : "";

    private static string Wet(SoilBatch batch) =>
        BatchLearning.WetPercent(batch) is { } wet ? string.Create(Culture, $"{wet:0} %") : "";
}
