using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Shop.Cutting;
using Litterfall.Documents.Svg;
using Litterfall.Domain.Cutting;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.CuttingRoom;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>One plan: its sheets to scale, cut after cut, and what becomes of it.</summary>
public sealed partial class PlanPage
{
    /// <summary>Narrow, so that the figures of the drawing stay large on a phone.</summary>
    private static readonly (double, double) Room = (82, 110);

    private CuttingView? view;
    private Kept<CuttingJob>? kept;
    private JobTotals? totals;
    private ImmutableArray<CutSheetText> sheets = [];
    private string? stale;
    private string? told;
    private bool isGood = true;
    private string minutes = "";
    private int sheet;
    private int step;
    private IDisposable? watch;

    /// <summary>Number of the plan.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <summary>Number of the part whose label was scanned; 0 for none.</summary>
    [Parameter]
    public int Piece { get; set; }

    private string StepWords =>
        step == 0
            ? "Put the lower left corner of the sheet to you; all measures run from there."
            : Capital(sheets[sheet].Cuts[step - 1].Words);

    /// <inheritdoc/>
    protected override void OnInitialized() => watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await LoadAsync();
        if (kept is { Value: { } job })
        {
            minutes = StockWords.Number(job.Pieces.Count * CuttingDesk.MinutesPerPart(view!));
            Turn(PlacedPiece.Read(job).FirstOrDefault(p => p.Piece.Number == Piece)?.Sheet ?? 0);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        kept = view.Find(Number);
        if (kept is { Value: { } job })
        {
            totals = JobTotals.Read(job);
            sheets = new CuttingPapers(view, job, "").Sheets();
            stale = view.Stale(job);
        }

        StateHasChanged();
    }

    private void Turn(int to) => (sheet, step) = (to, 0);

    private string Picture()
    {
        var text = sheets[sheet];
        var title = string.Create(
            CultureInfo.InvariantCulture,
            $"sheet {text.Sheet} to scale, {text.Length:0.#} by {text.Width:0.#} mm, "
                + $"{CuttingWords.Count(text.Parts.Count, "part")}"
        );
        return SvgWriter
            .Write(CutSheetView.Screen(text, Room, step), title)
            .Replace("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n", "", StringComparison.Ordinal);
    }

    private async Task CutAsync()
    {
        if (StockWords.Plain(minutes) is not { } took)
        {
            (told, isGood) = ("Enter the minutes as a number, such as 45.", false);
            return;
        }

        await DoneAsync(
            await Desk.CutAsync(view!, kept!, took),
            "Written: sheets are out of stock, offcuts are on the rack. Print the labels."
        );
    }

    private async Task TakeBackAsync() =>
        await DoneAsync(
            await Desk.TakeBackAsync(kept!),
            "Taken back: stock and hours are as before the cutting."
        );

    private async Task DropAsync() =>
        await DoneAsync(await Desk.DropAsync(kept!), "Given up. Its parts are on the table again.");

    private async Task DoneAsync(string? fault, string done)
    {
        (told, isGood) = (fault ?? done, fault is null);
        await LoadAsync();
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
