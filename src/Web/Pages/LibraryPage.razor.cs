using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Pages;

/// <summary>The library, one entry of it, and own entries.</summary>
public sealed partial class LibraryPage
{
    private CatalogEntry? entry;
    private OwnForm form = new();
    private string find = "";
    private string kind = "";
    private string own = "";
    private string? told;
    private bool good;
    private string? fileTold;
    private bool fileGood;

    /// <summary>Key of one entry; null for all.</summary>
    [Parameter]
    public string? Key { get; set; }

    private List<CatalogEntry> found =>
        [
            .. Library
                .Catalog.Entries.Where(e => (kind.Length == 0 || e.Kind.Word() == kind) && Fits(e))
                .OrderBy(e => e.Name, StringComparer.Ordinal),
        ];

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await Library.LoadAsync();
        Take();
        told = null;
    }

    private void Take()
    {
        entry = Key is null ? null : Library.Catalog.Find(Key);
        own = entry is null ? "" : OwnEntry.Json(entry);
        form = entry is null ? new() : new() { Key = entry.Key, Name = entry.Name };
    }

    private bool Fits(CatalogEntry e) =>
        find.Length == 0
        || e.Name.Contains(find, StringComparison.OrdinalIgnoreCase)
        || e.Key.Contains(find, StringComparison.OrdinalIgnoreCase)
        || e.Synonyms.Any(s => s.Contains(find, StringComparison.OrdinalIgnoreCase));

    private async Task SaveFormAsync()
    {
        if (form.Read(out var values) is { } fault)
        {
            (good, told) = (false, fault);
            return;
        }

        await SaveTextAsync(OwnEntry.Json(entry!, (form.Key.Trim(), form.Name.Trim()), values));
    }

    private async Task FileAsync(InputFileChangeEventArgs chosen)
    {
        var (file, name) = (chosen.File, FileNames.Short(chosen.File.Name));
        if (file.Size > BenchLibrary.LargestFile)
        {
            (fileGood, fileTold) = (false, $"{name} is too large; expected at most 8 MB.");
            return;
        }

        string? trouble = null;
        var unsaved = await Attempt.AtAsync(async () =>
        {
            using var stream = file.OpenReadStream(BenchLibrary.LargestFile);
            using var bytes = new MemoryStream();
            await stream.CopyToAsync(bytes);
            trouble = await Library.AddFileAsync(file.Name, bytes.ToArray());
        });
        trouble ??= unsaved;
        (fileGood, fileTold) = (
            trouble is null,
            trouble ?? $"{name} is kept; a lamp or room names it by this name."
        );
    }

    private Task SaveAsync() => SaveTextAsync(own);

    private async Task SaveTextAsync(string json)
    {
        string? faults = null;
        var unsaved = await Attempt.AtAsync(async () =>
            faults = await OwnEntry.AddAsync(Library, json, "own entry")
        );
        faults ??= unsaved;
        (good, told) = (faults is null, faults ?? "Saved: it counts from now on, on every desk.");
        if (good)
        {
            Take();
        }
    }

    /// <summary>"envelopeDensity" as "envelope density".</summary>
    private static string Plain(string name)
    {
        var words = new System.Text.StringBuilder();
        for (var i = 0; i < name.Length; i++)
        {
            var begins =
                i > 0
                && (
                    (char.IsUpper(name[i]) && !char.IsUpper(name[i - 1]) && !char.IsDigit(name[i - 1]))
                    || (char.IsDigit(name[i]) && char.IsLower(name[i - 1]))
                );
            words
                .Append(begins ? " " : "")
                .Append(
                    begins && i + 1 < name.Length && char.IsLower(name[i + 1])
                        ? char.ToLowerInvariant(name[i])
                        : name[i]
                );
        }

        return words.ToString();
    }

    private static string Word(Provenance provenance) =>
        provenance switch
        {
            Provenance.Recalled => "recalled, not yet read",
            Provenance.CommonPractice => "common practice, no source",
            Provenance.OwnChoice => "own choice",
            _ => provenance.ToString().ToLowerInvariant(),
        };
}
