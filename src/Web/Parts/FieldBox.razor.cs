using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.AspNetCore.Components.Web;

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

    /// <summary>Units.</summary>
    [Parameter]
    public UnitPreferences UnitPreferences { get; set; } = UnitPreferences.Metric;

    /// <summary>The library and the files of the bench.</summary>
    [Inject]
    public required BenchLibrary Library { get; set; }

    /// <summary>Name of the control of a path.</summary>
    /// <param name="path">A path of the design.</param>
    public static string IdOf(string path) =>
        "f-" + path.Replace('.', '-').Replace('[', '-').Replace("]", "", StringComparison.Ordinal);

    private IEnumerable<string> Files => Library.Files;

    private string Id => IdOf(Field.Path);

    private string FormClass => Field.Form.ToString().ToLowerInvariant();

    private string Text => FieldEdit.TextOf(Work.Document, Field);

    private string[] Lines => Text.Split('\n');

    private string EntryKey => Text.Length > 0 ? Library.Catalog.Find(Text)?.Key ?? Text : "";

    private string Bad => fault is null ? "false" : "true";

    private string? FaultId => fault is null ? null : $"{Id}-fault";

    private string? Hint =>
        Field.Form == FieldForm.Readings ? "up to three readings"
        : Field.Key?.Name == "temperature" ? "21 °C or 19–24 °C"
        : null;

    private bool CanStep => Field.Form is FieldForm.Quantity or FieldForm.Whole;

    private IEnumerable<CatalogEntry> Entries =>
        Library
            .Catalog.Entries.Where(e => Field.Key!.Kinds.Contains(e.Kind) || e.Key == EntryKey)
            .OrderBy(EntryWords.Of, StringComparer.OrdinalIgnoreCase);

    /// <summary>Up and down step the number, as on the drawing.</summary>
    private Task KeyAsync(KeyboardEventArgs key) =>
        CanStep && key.Key is "ArrowUp" or "ArrowDown" && CanStep
            ? StepAsync((key.Key == "ArrowUp" ? 1 : -1) * (key.ShiftKey ? 10 : 1))
            : Task.CompletedTask;

    private Task StepAsync(int steps)
    {
        var from = Text.Length > 0 ? Text : FieldUnits.WithUnit("0", "", Field.Key!, UnitPreferences);
        return FieldUnits.Stepped(from, Field.Key!, steps) is { } next ? SetAsync(next) : Task.CompletedTask;
    }

    private Task CheckAsync(string word, bool isOn) =>
        SetAsync(string.Join('\n', Field.Key!.Words.Where(w => w == word ? isOn : Lines.Contains(w))));

    /// <summary>A file that is chosen here is kept at the bench and named by the field.</summary>
    private async Task BringAsync(InputFileChangeEventArgs chosen)
    {
        var file = chosen.File;
        if (file.Size > BenchLibrary.LargestFile)
        {
            fault =
                $"{FileNames.Short(file.Name)} is too large; expected at most "
                + $"{BenchLibrary.LargestFile / 1024 / 1024} MB.";
            return;
        }

        using var bytes = new MemoryStream();
        await using (var stream = file.OpenReadStream(BenchLibrary.LargestFile))
        {
            await stream.CopyToAsync(bytes);
        }

        fault = await Library.AddFileAsync(file.Name, bytes.ToArray());
        if (fault is null)
        {
            await SetAsync(FileNames.Plain(file.Name));
        }
    }

    private async Task SetAsync(string? value)
    {
        var text = (value ?? "").Trim();
        if (text == Text)
        {
            (typed, fault) = (null, null);
            return;
        }

        var shown =
            Field.Form == FieldForm.Choice ? FormWords.Choice(Field.Key, text)
            : Field.Form == FieldForm.Entry && Library.Catalog.Find(text) is { } entry
                ? EntryWords.Common(entry)
            : text.Replace('\n', ' ');
        var faults = await Work.ChangeAsync(
            d => FieldEdit.Set(d, Field, text, UnitPreferences),
            text.Length == 0 ? $"{Field.Label}: left out" : $"{Field.Label}: {shown}"
        );
        (typed, fault) = faults.IsEmpty ? (null, null) : (text, FaultWords.Of(faults[0]));
    }
}
