using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>A field with its unit as typed; what does not read stays in it with the reason beside.</summary>
public sealed partial class FieldBox
{
    private string? typed;
    private string? fault;

    /// <summary>The field.</summary>
    [Parameter, EditorRequired]
    public required PartField Field { get; set; }

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>The library.</summary>
    [Parameter, EditorRequired]
    public required TradeCatalog Catalog { get; set; }

    /// <summary>The files of the bench.</summary>
    [Inject]
    public required BenchLibrary Library { get; set; }

    private IEnumerable<string> Files => Library.Files;

    private string Id =>
        "f-" + Field.Path.Replace('.', '-').Replace('[', '-').Replace("]", "", StringComparison.Ordinal);

    private string Text => TypedLength.TextAt(Work.Document, Field.Path).Trim('[', ']', ' ');

    private string Key => Text.Length > 0 ? Catalog.Find(Text)?.Key ?? Text : "";

    private string Bad => fault is null ? "false" : "true";

    private string? FaultId => fault is null ? null : $"{Id}-fault";

    private IEnumerable<CatalogEntry> Entries =>
        Catalog
            .Entries.Where(e => Field.Of.Contains(e.Kind.Word()) || e.Key == Key)
            .OrderBy(e => e.Name, StringComparer.Ordinal);

    private async Task SetAsync(string? value)
    {
        var text = (value ?? "").Trim();
        if (text == Text)
        {
            (typed, fault) = (null, null);
            return;
        }

        var faults = await Work.ChangeAsync(
            d => text.Length == 0 ? DesignEdits.Remove(d, Field.Path) : Edited(d, text),
            $"{Field.Label} {(text.Length == 0 ? "left out" : text)}"
        );
        (typed, fault) = faults.IsEmpty
            ? (null, null)
            : (text, $"{faults[0].Message}; expected {faults[0].Expected}.");
    }

    /// <summary>A place is written whole: with one of its edges alone it would not read.</summary>
    private Reading<DesignDocument> Edited(DesignDocument document, string text)
    {
        var at = Field.Path.IndexOf(".at.", StringComparison.Ordinal);
        if (
            at < 0
            || document.Spans.Keys.Any(k => k.StartsWith(Field.Path[..(at + 4)], StringComparison.Ordinal))
        )
        {
            return DesignEdits.Set(document, Field.Path, text);
        }

        var place = DesignEdits.SetPart(document, Field.Path[..(at + 3)], "{ x: 10 cm, y: 10 cm }");
        return place.Value is { } with && place.IsGood ? DesignEdits.Set(with, Field.Path, text) : place;
    }
}
