using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Litterfall.Web.Pages;

/// <summary>The design desk.</summary>
public sealed partial class DesignDesk
{
    private const string FirstMark = "first build: ";
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

    /// <summary>The design.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>On a phone what follows is a sheet that is pulled up; its handle tells the verdict.</summary>
    private string PullWords =>
        work?.Look is { Whole: { } whole, WholeIsOld: false } ? Verdict.Of(whole, taste) : "Computing…";

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

        work?.Dispose();
        taste = await Tastes.LoadAsync();
        work = await DeskWork.OpenAsync(Store, Library, Id, () => _ = InvokeAsync(StateHasChanged));
        missing = work is null;
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
    }

    /// <summary>Back and forth by the keys of the page.</summary>
    /// <param name="forth">True for redo.</param>
    [JSInvokable]
    public Task Step(bool forth) => forth ? RedoAsync() : UndoAsync();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
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

    private Task UndoAsync() => work?.UndoAsync() ?? Task.CompletedTask;

    private Task RedoAsync() => work?.RedoAsync() ?? Task.CompletedTask;

    private Task SettleAsync(bool ours) => work!.SettleAsync(ours);

    private void Select(string? part)
    {
        selected = part;
        StateHasChanged();
    }
}
