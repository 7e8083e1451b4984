using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Web.Shop.Terms;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Offcuts to scale, and what is left of rolls.</summary>
public sealed partial class RackPage
{
    /// <summary>Pixels of the longest edge on the rack.</summary>
    private const double Longest = 150;
    private const double MostEdge = 10_000;
    private readonly TypedText thickness = TypedText.ForNumber("Thickness, mm", null, "Empty for mesh.");
    private readonly TypedText length = TypedText.ForNumber("Length, mm", null);
    private readonly TypedText width = TypedText.ForNumber("Width, mm", null);
    private CuttingView? view;
    private List<LotAccount> all = [];
    private List<RollLeft> rolls = [];
    private HashSet<string> taken = [];
    private double scale = 1;
    private string good = "";
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        all = [.. view.Rack.OrderBy(Name, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Lot.Since)];
        rolls = [.. RollLeft.Read(view.Facts, view.Stock.AllGoods)];
        taken =
        [
            .. view
                .Jobs.Where(j => j.Value.State == CuttingJobState.Planned)
                .SelectMany(j => j.Value.Sources)
                .Select(s => s.Lot)
                .OfType<string>(),
        ];
        var edge = all.SelectMany(l => new[] { l.Lot.LengthMillimeters ?? 0, l.Lot.WidthMillimeters ?? 0 })
            .DefaultIfEmpty(1)
            .Max();
        scale = edge > 0 ? Longest / edge : 1;
        StateHasChanged();
    }

    private string Name(LotAccount lot) =>
        lot.Lot.ThicknessMillimeters is { } mm
            ? string.Create(CultureInfo.InvariantCulture, $"{view!.Stock.GoodOf(lot).Name}, {mm:0.#} mm")
            : view!.Stock.GoodOf(lot).Name;

    /// <summary>All offcuts at one scale: what is larger looks larger.</summary>
    private string Picture(LotAccount lot)
    {
        var wide = Math.Max(4, (lot.Lot.LengthMillimeters ?? 0) * scale);
        var high = Math.Max(4, (lot.Lot.WidthMillimeters ?? 0) * scale);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<svg width='{wide + 4:0}' height='{high + 4:0}' viewBox='-2 -2 {wide + 4:0.#} {high + 4:0.#}' "
                + $"role='img' aria-label='to scale'><rect width='{wide:0.#}' height='{high:0.#}'/></svg>"
        );
    }

    private async Task ScrapAsync(LotAccount lot) =>
        await DoneAsync(await Desk.ScrapAsync(lot), $"{lot.Lot.Id} is thrown away.");

    private async Task AddAsync()
    {
        var offcut = new Lot
        {
            Id = "",
            Good = good,
            Since = Desk.Today,
            Amount = 0,
            LengthMillimeters = length.Number(1, MostEdge),
            WidthMillimeters = width.Number(1, MostEdge),
            ThicknessMillimeters = thickness.NumberOrNone(0.1, 100),
        };
        var isWrong = new[] { length, width, thickness }.Any(f => f.Fault is not null);
        var fault =
            good.Length == 0 ? "Choose the material."
            : isWrong ? "Put the marked fields right first; nothing was added."
            : null;
        await DoneAsync(
            fault ?? await Desk.AddOffcutAsync(view!, offcut),
            "It is on the rack. Print its label."
        );
    }

    private async Task DoneAsync(string? fault, string done)
    {
        (told, isGood) = (fault ?? done, fault is null);
        await LoadAsync();
    }
}
