using Litterfall.Domain.Cutting;
using Litterfall.Domain.Schedule;
using Litterfall.Workshop.CuttingRoom;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>What is to be cut, by material; plans in the making and made.</summary>
public sealed partial class TablePage
{
    private const int DaysShown = 7;
    private CuttingView? view;
    private List<CutMaterial> here = [];
    private List<CutMaterial> away = [];
    private List<DayTask> coming = [];
    private string? told;
    private bool isGood = true;
    private int shown = 12;
    private IDisposable? watch;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        Runs.Changed += Show;
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Runs.Changed -= Show;
        watch?.Dispose();
    }

    private void Show() => _ = InvokeAsync(StateHasChanged);

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        here = [.. view.Materials.Where(m => m.Rules.IsCutHere && (m.Count > 0 || m.Planned > 0))];
        away = [.. view.Materials.Where(m => !m.Rules.IsCutHere && m.Count > 0)];
        coming = [.. view.Coming(DaysShown)];
        StateHasChanged();
    }

    private async Task DoneAsync(string? fault)
    {
        (told, isGood) = (fault, fault is null);
        await LoadAsync();
    }

    private async Task CutHereAsync(CutMaterial material) =>
        await DoneAsync(
            UsualRules.IsToughened(view!.Facts.Catalog.Find(material.Good.Key))
                ? "Toughened glass shatters when it is scored. Order it cut to size before it is toughened."
                : await Desk.KeepRulesAsync(
                    view,
                    material.Rules with
                    {
                        Good = material.Good.Key,
                        IsCutHere = true,
                    }
                )
        );

    private string Whom(CutMaterial material) =>
        string.Join(
            ", ",
            material
                .Parts.Select(p => p.Order is { } order ? view!.Stock.OrderName(order) : "stock")
                .Distinct(StringComparer.Ordinal)
        );

    private string Orders(CuttingJob job) =>
        string.Join(
            ", ",
            job.Pieces.Select(p => p.Order is { } order ? view!.Stock.OrderName(order) : "stock")
                .Distinct(StringComparer.Ordinal)
        );
}
