using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Svg;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Starting;
using Litterfall.Quantities.Sizing;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Pages;

/// <summary>The list of designs, and one field to begin a new one.</summary>
public sealed partial class Home
{
    private const int MostFiles = 20;
    private static readonly (double, double) Room = (60, 48);
    private IReadOnlyList<ListedDesign> designs = [];
    private ImmutableArray<AnimalEntry> animals = [];
    private ImmutableArray<(BenchExample Example, string Svg)> drawn = [];
    private string size = "";
    private string animal = "";
    private string? fault;
    private Guid? away;
    private string? trying;
    private bool listens;
    private IDisposable? watch;
    private readonly CancellationTokenSource leaving = new();

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        await Library.LoadAsync();
        animals = [.. Library.Catalog.Of<AnimalEntry>().OrderBy(e => e.Name, StringComparer.Ordinal)];
        drawn = [.. Options.Examples.Take(6).Select(e => (e, Drawn(e)))];
        designs = await Store.DesignsAsync();
        watch = Store.Watch((_, _) => _ = InvokeAsync(AgainAsync));
    }

    /// <summary>Files are taken once the page listens for them; chosen before, they would be lost.</summary>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            listens = true;
            StateHasChanged();
        }
    }

    private string Drawn(BenchExample example)
    {
        var document = DesignReader.Read(example.Name, example.Text).Value;
        if (document is null || Library.Check(document) is not { Value: { } design, IsGood: true })
        {
            return "";
        }

        var views = new DesignViews(DesignNumbers.Shape(design), onScreen: true);
        return Inked.Of(SvgWriter.Write(views.Small(Room), example.Name));
    }

    private async Task MakeAsync()
    {
        var edges = size.Trim();
        var who = animal.Length > 0 ? $", {Common(Library.Catalog.Find(animal)!.Name)}" : "";
        var name = string.Create(CultureInfo.InvariantCulture, $"box {designs.Count + 1}{who}");
        var text = Starter.Write(
            new StarterWish(null, edges, null, animal.Length > 0 ? animal : null),
            Library.Catalog,
            name
        );
        if (text.Value is null || !text.IsGood)
        {
            fault = $"{text.Faults[0].Message}; expected {text.Faults[0].Expected}.";
            return;
        }

        fault = null;
        trying = "drawing the box";
        var today = DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
        var bare = DesignEdits.Set(
            DesignReader.Read(name, text.Value).Value!,
            "planted",
            today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        );
        var document = bare.Value!;
        var stored = await Store.AddAsync(name, document.Text, $"begun from {edges}");
        var progress = new Progress<string>(words =>
        {
            trying = words;
            _ = InvokeAsync(StateHasChanged);
        });
        try
        {
            var build = await Turns.OfMachine.RunAsync(
                WorkKind.Whole,
                () => FirstBuild.Of(document, Library.Catalog, progress, leaving.Token),
                leaving.Token
            );
            if (build is { } made)
            {
                await Store.SaveAsync(
                    stored.Id,
                    stored.Version,
                    (name, made.Document.Text, $"first build: {string.Join("; ", made.Reasons)}")
                );
            }

            Go.NavigateTo($"/design/{stored.Id}");
        }
        catch (OperationCanceledException)
        {
            // The page was left; the bare box is in the list.
        }
    }

    /// <summary>The name in brackets, where there is one.</summary>
    private static string Common(string name) =>
        name.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? name[(at + 1)..].TrimEnd(')') : name;

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        leaving.Cancel();
        leaving.Dispose();
    }

    private async Task AgainAsync()
    {
        try
        {
            designs = await Store.DesignsAsync(leaving.Token);
            StateHasChanged();
        }
        catch (Exception e) when (e is OperationCanceledException || StoreTrouble.Words(e) is not null)
        {
            // The page was left, or the next change brings the list.
        }
    }

    /// <summary>What the disk does not take is told; what was typed stays.</summary>
    private async Task TryAsync(Func<Task> step)
    {
        if (await Attempt.AtAsync(step) is { } trouble)
        {
            (fault, trying) = (trouble, null);
        }
    }

    private async Task TakeAsync(BenchExample example)
    {
        var stored = await Store.AddAsync(
            DesignReader.Read(example.Name, example.Text).Value!.Design.Name,
            example.Text,
            $"begun from the example {example.Name}"
        );
        Go.NavigateTo($"/design/{stored.Id}");
    }

    private async Task CopyAsync(Guid id)
    {
        if (await Store.DesignAsync(id) is { } from)
        {
            var stored = await Store.AddAsync(
                from.Name,
                from.Text,
                $"copied from version {from.Version} of {from.Name}"
            );
            Go.NavigateTo($"/design/{stored.Id}");
        }
    }

    private async Task PutAwayAsync(Guid id)
    {
        await Store.PutAwayAsync(id, true);
        away = id;
        designs = await Store.DesignsAsync();
    }

    private async Task BringBackAsync()
    {
        await Store.PutAwayAsync(away!.Value, false);
        away = null;
        designs = await Store.DesignsAsync();
    }

    /// <summary>Files that a design names first, then the design.</summary>
    private async Task ImportAsync(InputFileChangeEventArgs chosen)
    {
        fault = null;
        if (chosen.FileCount > MostFiles)
        {
            fault = $"{chosen.FileCount} files were chosen; expected at most {MostFiles} at a time.";
            return;
        }

        (string Name, byte[] Bytes)? design = null;
        foreach (var file in chosen.GetMultipleFiles(MostFiles))
        {
            var isDesign = Path.GetExtension(file.Name).ToLowerInvariant() is ".yaml" or ".yml";
            var most = isDesign ? DesignReader.LargestFile : BenchLibrary.LargestFile;
            if (file.Size > most)
            {
                fault = $"{FileNames.Short(file.Name)} is too large; expected at most {most / 1024} kB.";
                return;
            }

            using var stream = file.OpenReadStream(most);
            using var bytes = new MemoryStream();
            await stream.CopyToAsync(bytes);
            if (isDesign)
            {
                design = (file.Name, bytes.ToArray());
            }
            else if (await Library.AddFileAsync(file.Name, bytes.ToArray()) is { } trouble)
            {
                fault = trouble;
                return;
            }
        }

        if (design is { } one)
        {
            await BringAsync(FileNames.Short(one.Name), one.Bytes);
        }
    }

    private async Task BringAsync(string file, byte[] bytes)
    {
        var reading = DesignReader.Read(file, bytes);
        if (reading.Value is not { } document || !reading.IsGood)
        {
            var first = reading.Faults[0];
            fault = $"{first.File}, line {first.Line}: {first.Message}; expected {first.Expected}.";
            return;
        }

        var stored = await Store.AddAsync(document.Design.Name, document.Text, $"brought from {file}");
        Go.NavigateTo($"/design/{stored.Id}");
    }

    private static string Age(DateTime when)
    {
        var age = DateTime.UtcNow - when;
        return age.TotalMinutes < 1 ? "just now"
            : age.TotalHours < 1 ? $"{age.TotalMinutes:0} min ago"
            : age.TotalDays < 1 ? $"{age.TotalHours:0} h ago"
            : when.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
    }
}
