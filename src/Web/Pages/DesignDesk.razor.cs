using Litterfall.Domain.DesignFile;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Litterfall.Web.Pages;

/// <summary>The design desk.</summary>
public sealed partial class DesignDesk
{
    private const string FirstMark = "first build: ";
    private static readonly TimeSpan SeatPause = TimeSpan.FromSeconds(3);
    private DeskWork? work;
    private Taste taste = Taste.Metric;
    private DotNetObjectReference<DesignDesk>? self;
    private string view = "section";
    private string? selected;
    private string? asked;
    private int hour = 36;
    private bool missing;
    private bool isPulled;
    private string[]? first;
    private bool isFull;
    private bool isLeft;
    private IDisposable? seat;
    private string? told;
    private string? keptText;
    private string? keptHere;

    /// <summary>The design.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>On a phone what follows is a sheet that is pulled up; its handle tells the verdict.</summary>
    private string PullWords =>
        work?.Look is { Whole: { } whole, WholeIsOld: false } ? Verdict.Of(whole, taste)
        : work?.Look.Faults.Length > 0 ? "Cannot be calculated as entered"
        : "Calculating…";

    /// <summary>Why the first build looks so, as long as nothing was changed.</summary>
    private string[]? FirstReasons => work is { Version: 2 } ? first : null;

    private string Usual => taste.Chosen("length") ?? "cm";

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (work?.Id == Id)
        {
            return;
        }

        seat ??= Room.Sit();
        isFull = seat is null;
        if (isFull)
        {
            _ = SitLaterAsync();
            return;
        }

        work?.Dispose();
        taste = await Tastes.LoadAsync();
        work = await DeskWork.OpenAsync(Store, Library, Id, () => _ = InvokeAsync(StateHasChanged));
        missing = work is null;
        Leave();
        Presence.Away += Pause;
        Presence.Back += Resume;
        keptText = work is null ? null : await KeptAsync();
        first =
            work is { Version: 2 }
            && (await Store.VersionsAsync(Id)).FirstOrDefault(v => v.Number == 2)?.Note is { } note
            && note.StartsWith(FirstMark, StringComparison.Ordinal)
                ? note[FirstMark.Length..].Split("; ")
                : null;
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            self = DotNetObjectReference.Create(this);
            await Js.InvokeVoidAsync("litterfall.keys", self);
        }

        await KeepAsync();
    }

    /// <summary>Back and forth by the keys of the page.</summary>
    /// <param name="forth">True for redo.</param>
    [JSInvokable]
    public Task Step(bool forth) => forth ? RedoAsync() : UndoAsync();

    /// <summary>True once everything that came in before is saved.</summary>
    [JSInvokable]
    public Task<bool> IsSaved() => work?.IsSavedAsync() ?? Task.FromResult(true);

    /// <summary>Shows the fields of a part, in which something was being typed.</summary>
    /// <param name="part">Its key.</param>
    [JSInvokable]
    public void Show(string part) => Select(part);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        isLeft = true;
        Leave();
        seat?.Dispose();
        work?.Dispose();
        try
        {
            await Js.InvokeVoidAsync("litterfall.keys", null);
        }
        catch (JSDisconnectedException)
        {
            // The page is gone already.
        }

        self?.Dispose();
    }

    private Task UndoAsync() => TryAsync(() => work?.UndoAsync() ?? Task.CompletedTask);

    private Task RedoAsync() => TryAsync(() => work?.RedoAsync() ?? Task.CompletedTask);

    private Task SettleAsync(bool ours) => TryAsync(() => work!.SettleAsync(ours));

    private Task SaveNowAsync() => work!.IsSavedAsync();

    private async Task TryAsync(Func<Task> step)
    {
        told = await Attempt.AtAsync(step);
        StateHasChanged();
    }

    /// <summary>Nobody looks while the line is down: nothing is computed until it is back.</summary>
    private void Pause(object? sender, EventArgs e) => work?.Pause();

    private void Resume(object? sender, EventArgs e) => work?.Resume();

    private void Leave()
    {
        Presence.Away -= Pause;
        Presence.Back -= Resume;
    }

    /// <summary>Waits for a desk that becomes free.</summary>
    private async Task SitLaterAsync()
    {
        await Task.Delay(SeatPause);
        if (!isLeft)
        {
            await InvokeAsync(async () =>
            {
                await OnParametersSetAsync();
                StateHasChanged();
            });
        }
    }

    /// <summary>What is not saved is kept in the browser as well, until it is.</summary>
    private async Task KeepAsync()
    {
        var now = work is { Unsaved: not null } ? work.Document.Text : null;
        if (work is not null && now != keptHere)
        {
            keptHere = now;
            await Js.InvokeVoidAsync("litterfall.keep", Id, now);
        }
    }

    /// <summary>
    /// A change that this browser kept; null where there is none, or where it was saved since.
    /// </summary>
    private async Task<string?> KeptAsync()
    {
        if (await Js.InvokeAsync<IJSStreamReference?>("litterfall.keptText", Id) is not { } kept)
        {
            return null;
        }

        await using var stream = await kept.OpenReadStreamAsync(DesignReader.LargestFile);
        using var reader = new StreamReader(stream);
        var text = await reader.ReadToEndAsync();
        return string.IsNullOrWhiteSpace(text) || text == work!.Document.Text ? null : text;
    }

    private async Task TakeUpAsync()
    {
        var faults = await work!.ChangeAsync(
            d => DesignReader.Read(d.File, keptText!),
            "kept in the browser while it could not be saved"
        );
        told = faults.IsEmpty ? null : $"{faults[0].Message}; expected {faults[0].Expected}.";
        if (faults.IsEmpty && work.Unsaved is null)
        {
            await LetGoAsync();
        }
    }

    private async Task LetGoAsync()
    {
        keptText = null;
        await Js.InvokeVoidAsync("litterfall.keep", Id, null);
    }

    private void Select(string? part)
    {
        selected = part;
        StateHasChanged();
    }
}
