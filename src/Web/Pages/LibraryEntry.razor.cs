using Litterfall.Documents.Papers;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Pages;

/// <summary>One entry of the library, and the workshop's own copy of it.</summary>
public sealed partial class LibraryEntry
{
    private const int MostNames = 4;
    private CatalogEntry? entry;
    private OwnForm form = new();
    private UnitPreferences preferences = UnitPreferences.Metric;
    private string own = "";
    private string? told;
    private bool good;
    private bool isAsked;
    private bool isLoaded;
    private (string Key, string Json)? undo;
    private List<string> users = [];

    /// <summary>Key of the entry.</summary>
    [Parameter]
    public required string Key { get; set; }

    /// <summary>Which designs name the entry.</summary>
    private string Use =>
        users.Count switch
        {
            0 => "No design uses it.",
            1 => $"1 design uses it: {users[0]}.",
            _ => $"{users.Count} designs use it: {string.Join(", ", users.Take(MostNames))}"
                + (users.Count > MostNames ? " and others." : "."),
        };

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await Library.LoadAsync();
        preferences = await SavedPreferences.LoadAsync();
        (told, undo, isAsked, isLoaded) = (null, null, false, true);
        Take();
    }

    private void Take()
    {
        entry = Library.Catalog.Find(Key);
        own = entry is null ? "" : OwnEntry.Json(entry);
        form = entry is null ? new() : new() { Name = entry.Name };
    }

    private string Shown(CatalogValue value)
    {
        if (value.Text is { } text)
        {
            return text;
        }

        if (value.Unit is not { } unit)
        {
            return UnitPreferences.Digits(value.Number ?? 0, 5);
        }

        var shown = preferences.For(unit);
        string Number(double number, int digits) =>
            UnitPreferences.Digits(
                shown == unit ? number : shown.FromSi(unit.ToSiValue(number)),
                shown == unit ? digits : 3
            );
        var band =
            value.Low is { } low && value.High is { } high ? $" ({Number(low, 3)}–{Number(high, 3)})" : "";
        return Number(value.Number ?? 0, 5) + UnitPreferences.Symbol(shown) + band;
    }

    private async Task SaveFormAsync()
    {
        if (form.Read(entry!.Name, out var values) is { } fault)
        {
            (good, told) = (false, fault);
            return;
        }

        var key = form.IsNew ? Library.FreeKey(PaperJob.FileWord(form.Name)) : entry.Key;
        await SaveTextAsync(
            OwnEntry.Json(entry, (key, form.Name.Trim()), values),
            $" Saved as {form.Name.Trim()}."
        );
    }

    private Task SaveAsync() => SaveTextAsync(own, " Saved.");

    private async Task SaveTextAsync(string json, string words)
    {
        string? faults = null;
        var unsaved = await Attempt.AtAsync(async () =>
            faults = await OwnEntry.AddAsync(Library, json, "own entry")
        );
        faults ??= unsaved;
        (good, told, undo) = (
            faults is null,
            faults ?? $"{words.Trim()} It counts from now on, on every desk.",
            null
        );
        if (good)
        {
            Take();
        }
    }

    private async Task AskAsync()
    {
        users = await Library.UsersAsync(Key);
        isAsked = true;
    }

    private async Task DeleteAsync()
    {
        var before = await Library.OwnTextAsync(Key);
        string? faults = null;
        var unsaved = await Attempt.AtAsync(async () => faults = await Library.RemoveAsync(Key));
        faults ??= unsaved;
        (good, told, isAsked) = (faults is null, faults ?? "Deleted.", false);
        undo = faults is null && before is not null ? (Key, before) : null;
        Take();
    }

    private async Task UndoAsync()
    {
        if (undo is { } back)
        {
            await SaveTextAsync(back.Json, "It is back.");
        }
    }
}
