using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Pages;

/// <summary>All entries of the library, by kind and found by any of their names.</summary>
public sealed partial class LibraryPage
{
    private const string Own = "yours";
    private string find = "";
    private string kind = "";
    private int count;
    private List<Row> rows = [];
    private List<(string Word, string Name)> kinds = [];
    private string? fileTold;
    private bool fileGood;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        await Library.LoadAsync();
        kinds =
        [
            .. Library
                .Catalog.Entries.Select(e => e.Kind)
                .Distinct()
                .Select(k => (k.Word(), LibraryWords.Kind(k)))
                .OrderBy(k => k.Item2, StringComparer.Ordinal),
        ];
        Find("", "");
    }

    private void Find(string? text, string? of)
    {
        (find, kind) = (text ?? "", of ?? "");
        var found = Library
            .Catalog.Entries.Where(e =>
                (kind.Length == 0 || (kind == Own ? Library.IsOwn(e.Key) : e.Kind.Word() == kind))
                && EntryWords.Matches(e, find)
            )
            .ToList();
        count = found.Count;
        rows =
        [
            .. found
                .GroupBy(e => LibraryWords.Kind(e.Kind))
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .SelectMany(g =>
                    g.OrderBy(e => EntryWords.Of(e), StringComparer.OrdinalIgnoreCase)
                        .Select(e => new Row(g.Key, e))
                        .Prepend(new Row($"{g.Key} ({g.Count()})", null))
                ),
        ];
    }

    private static int Read(CatalogEntry e) =>
        e.Values.Count(v =>
            v.Origin.Provenance is Provenance.Read or Provenance.Measured or Provenance.Digitized
        );

    private async Task FileAsync(InputFileChangeEventArgs chosen)
    {
        var (file, name) = (chosen.File, FileNames.Short(chosen.File.Name));
        if (file.Size > BenchLibrary.LargestFile)
        {
            (fileGood, fileTold) = (false, $"{name} is too large; expected at most 8 MB.");
            return;
        }

        var trouble = Uploads.Refusal(file.Size);
        var unsaved = trouble is not null
            ? null
            : await Attempt.AtAsync(async () =>
            {
                using var stream = file.OpenReadStream(BenchLibrary.LargestFile);
                using var bytes = new MemoryStream();
                await stream.CopyToAsync(bytes);
                trouble = await Library.AddFileAsync(file.Name, bytes.ToArray());
            });
        trouble ??= unsaved;
        (fileGood, fileTold) = (
            trouble is null,
            trouble ?? $"Saved. A lamp or room can choose {name} by this name."
        );
    }

    private sealed record Row(string Group, CatalogEntry? Entry);
}
