using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Web.Desk;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;
using Litterfall.Web.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Litterfall.Web.Pages;

/// <summary>The design desk.</summary>
public sealed partial class DesignDesk
{
    private const string FirstMark = "first build: ";
    private static readonly TimeSpan SeatPause = TimeSpan.FromSeconds(3);
    private DeskWork? work;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private DotNetObjectReference<DesignDesk>? self;
    private string view = "section";
    private string? selected;
    private string? asked;
    private int hour = 36;
    private bool missing;
    private bool isDrawerOpen;
    private bool isHolding;
    private string? askedField;
    private (string Path, bool IsTaken)? focusNext;
    private PartForm? picking;
    private ImmutableArray<PartForm> known = [];
    private Dictionary<string, string> names = [];
    private object? partsOf;
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

    private string VerdictWords =>
        work!.Look.Faults.Length > 0 ? "This design can't be calculated as entered: see what is missing"
        : work.Look.Whole is not { } whole ? "Calculating…"
        : Verdict.Of(whole, preferences) + (work.Look.WholeIsOld ? " (recalculating…)" : "");

    private string VerdictClass =>
        work!.Look.Whole is not { } whole || work.Look.WholeIsOld || work.Look.Faults.Length > 0 ? "old"
        : whole.Stops ? "stop"
        : whole.Open.Any(f => f.Severity == Severity.Caution) ? "caution"
        : "well";

    /// <summary>All parts of the design, with what each is called.</summary>
    private ImmutableArray<PartForm> Parts
    {
        get
        {
            if (!ReferenceEquals(partsOf, work!.Document))
            {
                partsOf = work.Document;
                known = FormBook.Of(work.Document);
                names = PartNames.Of(work.Document, known, Library.Catalog);
            }

            return known;
        }
    }

    /// <summary>Shape first, color second.</summary>
    private Severity? VerdictMark =>
        VerdictClass switch
        {
            "stop" => Severity.Stop,
            "caution" => Severity.Caution,
            _ => null,
        };

    private PartForm? Chosen => selected is null ? null : Parts.FirstOrDefault(p => p.Key == selected);

    /// <summary>Why the first build looks so, as long as nothing was changed.</summary>
    private string[]? FirstReasons => work is { Version: 2 } ? first : null;

    private string Usual => preferences.Chosen("length") ?? "cm";

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
        preferences = await SavedPreferences.LoadAsync();
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

        if (focusNext is var (field, isTaken))
        {
            focusNext = null;
            await Js.InvokeVoidAsync("litterfall.toField", FieldBox.IdOf(field), isTaken);
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
    public Task Show(string part) => GoAsync(part);

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

    /// <summary>To a part or a field of it, by its path; null for the whole tank.</summary>
    private Task GoAsync(string? path) => TurnTo(path, isTaken: true);

    /// <summary>The card of what a hand or a key took on the drawing, which keeps the focus.</summary>
    private Task ShowAsync(string? path) => TurnTo(path, isTaken: false);

    private Task TurnTo(string? path, bool isTaken)
    {
        (isDrawerOpen, picking, askedField) = (false, null, null);
        var part = path is null ? null : FormBook.Find(work!.Document, path);
        selected = part?.Key;
        isHolding = part is not null;
        if (part is { IsThere: true } && path != part.Key)
        {
            askedField = path;
            focusNext = (path!, isTaken);
        }

        StateHasChanged();
        return Task.CompletedTask;
    }

    /// <summary>The verdict opens what is behind it: on a narrow screen as a sheet.</summary>
    private async Task ShowAllAsync()
    {
        var wasOpen = selected is null && isHolding;
        await GoAsync(null);
        isHolding = !wasOpen;
    }

    private Task CloseAsync() => GoAsync(null);

    /// <summary>A part is added as it usually begins, or chosen from the library first.</summary>
    private async Task AddAsync(PartForm part)
    {
        isDrawerOpen = false;
        if (part.Kinds.Length > 0)
        {
            (picking, isHolding) = (part, true);
            return;
        }

        await AddedAsync(part, part.Begin!);
    }

    private Task ChosenAsync(string entry) => PlacedAsync(picking!, entry, null);

    /// <summary>An entry is dropped on the drawing, m from the left and from the front.</summary>
    private Task DroppedAsync((string List, string Entry, double X, double Y) drop) =>
        Parts.FirstOrDefault(p => p.Key == drop.List) is { } part
            ? PlacedAsync(part, drop.Entry, (drop.X, drop.Y))
            : Task.CompletedTask;

    private Task PlacedAsync(PartForm part, string entry, (double X, double Y)? at)
    {
        var begin = part.Begin!.Replace(FormBegin.Chosen, entry, StringComparison.Ordinal);
        var isPlaced = part.Key is "plants" or "hardscape" && work!.Look.Shape is not null;
        var place =
            !isPlaced ? null
            : at is var (x, y)
                ? $"{{ x: {TypedLength.Write(x, "", Usual)}, y: {TypedLength.Write(y, "", Usual)} }}"
            : Specimens.FreePlace(work!.Look.Shape!, Usual);
        return AddedAsync(part, place is null ? begin : $"{begin.TrimEnd('}', ' ')}, at: {place} }}");
    }

    private async Task AddedAsync(PartForm part, string begin)
    {
        var faults = await work!.ChangeAsync(
            d => part.IsList ? DesignEdits.Add(d, part.Key, begin) : DesignEdits.SetPart(d, part.Key, begin),
            $"added {part.Name.ToLowerInvariant()}"
        );
        told = faults.IsEmpty ? null : FaultWords.Of(faults[0]);
        if (faults.IsEmpty)
        {
            await GoAsync(part.IsList ? Specimens.LastOf(work.Document, part.Key) : part.Key);
        }
    }

    private string NameOf(PartForm part) => names.GetValueOrDefault(part.Key, part.Name);

    private static string Bool(bool value) => value ? "true" : "false";
}
