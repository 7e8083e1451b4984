using System.Globalization;
using Litterfall.Domain.Nursery;
using Litterfall.Quantities.Measures;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>One tray: what it is, what is done with it, what was done.</summary>
public sealed partial class TrayPage
{
    private const double Strongest = 15;
    private NurseryView? view;
    private PlantTray? tray;
    private QuarantineClock? clock;
    private string? told;
    private bool isGood = true;
    private string found = "";
    private string dead = "";
    private string cause = "";
    private string label = "";
    private IDisposable? watch;

    /// <summary>Number of the tray.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    private string? Dip =>
        Strength is { } percent
            ? NurseryWords.Told(NurseryBook.Dip(percent), view!.Book.IsHardy(tray!.Plant))
            : null;

    private double? Strength =>
        StockWords.Plain(label) is > 0 and <= Strongest and var percent ? percent : null;

    private string PotWords =>
        view!.Book.Stand(tray!).PotOn is { } day ? $"expected rooted on {NumberText.Day(day)}" : "";

    private IEnumerable<(string Name, string Value)> Facts
    {
        get
        {
            var (it, stand) = (tray!, view!.Book.Stand(tray!));
            yield return (it.Supplier is null ? "Cut or divided" : "Came", NumberText.Day(it.Since));
            if (it.Supplier is { } supplier)
            {
                yield return ("From", view.SupplierName(supplier));
            }

            if (it.Mother is { } mother)
            {
                yield return ("Mother plant", mother);
            }

            yield return ("Plants at first", NumberText.Integer(it.Plants));
            yield return ("Plants left", NumberText.Integer(stand.Left));
            yield return ("Bench", view.Book.Bench(it.Bench)?.Name ?? "none");
            yield return ("Usable from", NumberText.Day(stand.UsableFrom));
            yield return (
                "Usable then",
                string.Create(CultureInfo.InvariantCulture, $"{stand.Low:0}–{stand.Left}")
            );
        }
    }

    private IEnumerable<(DateOnly Day, string What)> Past =>
        tray!
            .Inspections.Select(i =>
                (i.Day, $"inspected: {(i.Found.Length > 0 ? i.Found : "nothing found")} ({i.Who})")
            )
            .Concat(tray.Dips.Select(d => (d.Day, $"dipped ({d.Who})")))
            .Concat(
                tray.Deaths.Select(d =>
                    (d.Day, $"{NumberText.Count(d.Plants, "plant", "plants")} died: {d.Why} ({d.Who})")
                )
            )
            .Concat(tray.Potted is { } potted ? [(potted, "potted")] : [])
            .Concat(tray.Released is { } released ? [(released, "released from quarantine")] : [])
            .OrderByDescending(p => p.Item1);

    /// <inheritdoc/>
    protected override void OnInitialized() => watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync()
    {
        (told, isGood) = (null, true);
        return LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        var number = LotNumber.Read(Id, id => view.Book.Find(id) is not null).Lot;
        tray = number is null ? null : view.Book.Find(number);
        clock = tray is { IsInQuarantine: true } ? view.Book.Clock(tray.Bench) : null;
        StateHasChanged();
    }

    private async Task InspectAsync() =>
        await WriteAsync(
            NurserySteps.Inspect(view!.Book, tray!, found.Trim(), await Desk.NowAsync()),
            null,
            found.Trim().Length > 0
                ? "Saved. The clock of the whole bench starts again; treat, and look again."
                : "Inspected, nothing found."
        );

    private async Task DieAsync()
    {
        _ = int.TryParse(dead, NumberStyles.None, CultureInfo.InvariantCulture, out var count);
        var (step, fault) = NurserySteps.Die(
            view!.Book,
            tray!,
            count,
            cause.Trim().Length > 0 ? cause.Trim() : "not told",
            await Desk.NowAsync()
        );
        await WriteAsync(step, fault, "Written into the book.");
    }

    private async Task DipAsync()
    {
        var isHardy = view!.Book.IsHardy(tray!.Plant);
        var when = await Desk.NowAsync();
        await (
            Strength is { } percent
                ? KeepAsync(
                    tray with
                    {
                        Dips =
                        [
                            .. tray.Dips,
                            new(when.Day, percent, NurseryWords.Minutes(isHardy), when.Who),
                        ],
                    },
                    "Dipped. Rinse well."
                )
                : WriteAsync(null, "Type the strength on the label of the bleach, such as 5.25.", "")
        );
    }

    private async Task PotAsync() =>
        await KeepAsync(tray! with { Potted = (await Desk.NowAsync()).Day }, "Potted.");

    private Task KeepAsync(PlantTray changed, string words) =>
        WriteAsync(new([changed], new StockStep([], []), words), null, words);

    private async Task WriteAsync(NurseryStep? step, string? fault, string words)
    {
        var refused = step is null ? fault : await Desk.WriteAsync(view!, step);
        (told, isGood) = (refused ?? words, refused is null);
        if (isGood)
        {
            (found, dead, cause) = ("", "", "");
            await LoadAsync();
        }
    }
}
