using Litterfall.Domain.Cultures;
using Litterfall.Quantities.Measures;
using Litterfall.Workshop.Cultures;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>Holds or throws away a whole line with all that was split off it.</summary>
public sealed partial class LinePart
{
    private static readonly CultureEnd[] Reasons =
    [
        CultureEnd.Mites,
        CultureEnd.Mold,
        CultureEnd.Sour,
        CultureEnd.Dried,
        CultureEnd.Heat,
    ];

    private string chosen = "";
    private CultureEnd reason = CultureEnd.Mites;
    private string note = "";

    /// <summary>The shelf as it is shown.</summary>
    [Parameter, EditorRequired]
    public required CultureView View { get; set; }

    /// <summary>Told when something was written, or why not.</summary>
    [Parameter]
    public EventCallback<(bool IsGood, string Told)> OnWritten { get; set; }

    private IEnumerable<(string Species, string Line)> Lines =>
        View.Book.Cultures.Select(c => (c.Species, c.Line)).Distinct();

    private (string Species, string Line)? Chosen =>
        chosen.Length == 0
            ? null
            : Lines.Where(l => Key(l) == chosen).Cast<(string, string)?>().FirstOrDefault();

    private static string Key((string Species, string Line) line) => $"{line.Species}|{line.Line}";

    private string Words((string Species, string Line) line)
    {
        var all = Lineage.OfLine(View.Book.Cultures, line.Species, line.Line);
        var here = all.Where(c => c.IsStanding).Select(c => c.Number).ToList();
        return here.Count == 0
            ? $"Nothing of it stands; {NumberText.Count(all.Length, "culture has", "cultures have")} "
                + "ended."
            : $"{NumberText.Count(here.Count, "culture stands", "cultures stand")}, daughters counted: "
                + $"{string.Join(", ", here)}.";
    }

    private Task HoldAsync() =>
        DoAsync((all, when) => CultureSteps.Hold(all, Told, View.Stock.Book, when), "is on hold");

    private Task DiscardAsync() =>
        DoAsync(
            (all, when) => CultureSteps.Discard(all, (reason, note.Trim()), View.Stock.Book, when),
            "is thrown away. Close the cups first, wash hands, look at the clean lines last of all"
        );

    private string Told =>
        note.Trim().Length > 0 ? $"{CultureSteps.Word(reason)}, {note.Trim()}" : CultureSteps.Word(reason);

    private async Task DoAsync(
        Func<IEnumerable<Culture>, (DateOnly, string), CultureStep> step,
        string outcome
    )
    {
        if (Chosen is not { } line)
        {
            await OnWritten.InvokeAsync((false, "Choose the line."));
            return;
        }

        var all = Lineage.OfLine(View.Book.Cultures, line.Species, line.Line);
        var refused = await Desk.WriteAsync(View, step(all, await Desk.NowAsync()));
        await OnWritten.InvokeAsync(
            refused is null ? (true, $"Line {line.Line} {outcome}.") : (false, refused)
        );
    }
}
