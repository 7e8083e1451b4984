using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Litterfall.Web.Pages;

/// <summary>All documents of a design: pages to look at, to print, and files for tools.</summary>
public sealed partial class Papers
{
    private const string Cuts = "cut/";
    private const string Drawings = "drawings/";
    private readonly CancellationTokenSource leaving = new();
    private CancellationTokenSource asking = new();
    private PaperSet? set;
    private ImmutableArray<(PaperFile File, int Page)> pages = [];
    private ImmutableArray<DrawnFile> cuts = [];
    private ImmutableArray<DrawnFile> drawings = [];
    private ImmutableArray<ListedFile> lists = [];
    private UnitPreferences preferences = UnitPreferences.Metric;
    private ElementReference dialog;
    private string? name;
    private string sheet = "a4";
    private bool slips;
    private bool isNone;
    private bool isMissing;
    private int done;
    private int of;
    private int? shown;

    /// <summary>The design.</summary>
    [Parameter]
    public Guid Id { get; set; }

    private string Enlarged =>
        shown is { } s && s < pages.Length
            ? $"{pages[s].File.Title}, page {pages[s].Page} of {pages[s].File.Pages.Length}"
            : "a page";

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        preferences = await SavedPreferences.LoadAsync();
        name = (await Store.DesignAsync(Id))?.Name;
        isMissing = name is null;
        sheet = preferences.Chosen("length") == Unit.InchUnit.Symbol ? "letter" : "a4";
        _ = AskAsync(sheet, slips);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
        asking.Dispose();
    }

    /// <summary>Asks for the documents; what was asked for before and is not there is let go of.</summary>
    private async Task AskAsync(string size, bool withSources)
    {
        await asking.CancelAsync();
        asking.Dispose();
        asking = CancellationTokenSource.CreateLinkedTokenSource(leaving.Token);
        (sheet, slips, set, done, of) = (size, withSources, null, 0, 0);
        var token = asking.Token;
        try
        {
            var made = await Sources.Shelf.SetAsync(Id, (size, withSources), Sources, new Told(this), token);
            isNone = made is null;
            if (made is not null)
            {
                Take(made);
            }

            await InvokeAsync(StateHasChanged);
        }
        catch (OperationCanceledException)
        {
            // Another size, or the page was left.
        }
    }

    private void Take(PaperSet made)
    {
        set = made;
        pages =
        [
            .. made.Files.SelectMany(f => Enumerable.Range(1, f.Pages.Length).Select(page => (f, page))),
        ];
        cuts = DrawnFile.Of(made.Files, Cuts);
        drawings = DrawnFile.Of(made.Files, Drawings);
        lists = ListedFile.Of(made.Files);
    }

    private string Url(string path) =>
        $"/design/{Id}/{path}{(path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}sheet={sheet}"
        + $"&slips={(slips ? "true" : "false")}&mark={set?.Mark}";

    private static string Path(string name) => string.Join('/', name.Split('/').Select(Uri.EscapeDataString));

    private string Picture(PaperFile file, int page, int width) =>
        Url(
            string.Create(
                CultureInfo.InvariantCulture,
                $"page/{page}.png?name={Uri.EscapeDataString(file.Name)}&width={width}"
            )
        );

    private static int Height(PaperFile file, int page, int width) =>
        (int)Math.Round(width * file.Pages[page - 1].Height / file.Pages[page - 1].Width);

    private string Shown(double si, Unit unit)
    {
        var told = preferences.For(unit);
        return UnitPreferences.Digits(told.FromSi(si)) + UnitPreferences.Symbol(told);
    }

    private static string Count(int count, string word) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {word}{(count == 1 ? "" : "s")}");

    private async Task EnlargeAsync(int page)
    {
        shown = page;
        StateHasChanged();
        await Js.InvokeVoidAsync("litterfall.open", dialog);
    }

    private async Task CloseAsync()
    {
        shown = null;
        await Js.InvokeVoidAsync("litterfall.close", dialog);
    }

    private Task KeyAsync(KeyboardEventArgs key)
    {
        if (shown is { } s)
        {
            shown = key.Key switch
            {
                "ArrowRight" or "PageDown" => Math.Min(s + 1, pages.Length - 1),
                "ArrowLeft" or "PageUp" => Math.Max(s - 1, 0),
                "Home" => 0,
                "End" => pages.Length - 1,
                _ => s,
            };
        }

        return Task.CompletedTask;
    }

    private sealed class Told(Papers page) : IProgress<(int Done, int Of)>
    {
        public void Report((int Done, int Of) value)
        {
            (page.done, page.of) = value;
            _ = page.InvokeAsync(page.StateHasChanged);
        }
    }
}
