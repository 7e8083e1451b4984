using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Judging.Starting;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shop.Orders;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Pages;

/// <summary>The list of designs, and one field to begin a new one.</summary>
public sealed partial class Home
{
    private const int MostFiles = 20;
    private const string Question = "What are you building?";
    private IReadOnlyList<ListedDesign> designs = [];
    private ImmutableArray<AnimalEntry> animals = [];
    private ImmutableArray<(BenchExample Example, string Svg)> drawn = [];
    private string size = "";
    private string animal = "";
    private string find = "";
    private string sort = "changed";
    private string? fault;
    private string? importFault;
    private string? told;
    private string? trying;
    private ListedDesign? last;
    private int archived;
    private bool isLoaded;
    private bool listens;
    private IDisposable? watch;
    private IDisposable? watchOrders;
    private readonly CancellationTokenSource leaving = new();

    /// <summary>"archive" for the archive; designs otherwise.</summary>
    [SupplyParameterFromQuery(Name = "list")]
    public string? List { get; set; }

    private bool IsArchive => List == "archive";

    private bool IsEmpty => isLoaded && !IsArchive && designs.Count == 0 && archived == 0;

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    private List<ListedDesign> Shown
    {
        get
        {
            var words = find.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var found = designs.Where(d =>
                words.All(w => Told(d).Contains(w, StringComparison.OrdinalIgnoreCase))
            );
            return
            [
                .. sort switch
                {
                    "due" => found.OrderBy(d => d.Order.Due ?? DateOnly.MaxValue),
                    "name" => found.OrderBy(d => d.Name, StringComparer.OrdinalIgnoreCase),
                    _ => found,
                },
            ];
        }
    }

    private static string Told(ListedDesign d) =>
        $"{d.Name}\n{d.Order.Customer}\n{d.Order.Status}\n{d.Verdict}";

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        await Library.LoadAsync();
        animals =
        [
            .. Library
                .Catalog.Of<AnimalEntry>()
                .OrderBy(e => EntryWords.Of(e), StringComparer.OrdinalIgnoreCase),
        ];
        drawn =
        [
            .. Options
                .Examples.Take(6)
                .Select(e => (e, Small.Svg(e.Name, e.Text) is { } svg ? Inked.Of(svg) : "")),
        ];
        watch = Store.Watch((_, _) => _ = InvokeAsync(AgainAsync));
        watchOrders = Store.WatchShop(() => _ = InvokeAsync(AgainAsync));
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => ReadAsync();

    private async Task ReadAsync()
    {
        designs = await OrderedDesigns.ReadAsync(Store, IsArchive, leaving.Token);
        archived = await Store.ArchivedAsync(leaving.Token);
        isLoaded = true;
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

    private async Task MakeAsync()
    {
        var edges = size.Trim();
        var who = animal.Length > 0 ? $", {EntryWords.Common(Library.Catalog.Find(animal)!)}" : "";
        var name = string.Create(CultureInfo.InvariantCulture, $"Tank {designs.Count + archived + 1}{who}");
        var text = Starter.Write(
            new StarterWish(null, edges, null, animal.Length > 0 ? animal : null),
            Library.Catalog,
            name
        );
        if (text.Value is null || !text.IsGood)
        {
            fault =
                $"{text.Faults[0].Message}. Type length x depth x height with a unit, such as 60 x 45 x 60 "
                + $"cm or 24 x 18 x 24 in. {TankSize.Words}";
            return;
        }

        if (TankSize.Refusal(DesignReader.Read(name, text.Value).Value!) is { } refusal)
        {
            fault = refusal;
            return;
        }

        fault = null;
        trying = "laying it out";
        var document = DesignEdits
            .Set(
                DesignReader.Read(name, text.Value).Value!,
                "planted",
                Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            )
            .Value!;
        var stored = await Store.AddAsync(name, document.Text, $"begun from {edges}");
        await BuildAsync(stored, document);
    }

    /// <summary>Lays a bare tank out, and goes to its desk.</summary>
    private async Task BuildAsync(StoredDesign stored, DesignDocument document)
    {
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
                    (stored.Name, made.Document.Text, $"first build: {string.Join("; ", made.Reasons)}")
                );
            }

            Go.NavigateTo($"/design/{stored.Id}");
        }
        catch (OperationCanceledException)
        {
            // The page was left; the bare box is in the list.
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        watchOrders?.Dispose();
        leaving.Cancel();
        leaving.Dispose();
    }

    private async Task AgainAsync()
    {
        try
        {
            await ReadAsync();
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

    private async Task ArchiveAsync(ListedDesign design)
    {
        await Store.ArchiveAsync(design.Id, !IsArchive);
        (last, told) = (
            design,
            IsArchive
                ? $"{design.Name} is back among the designs."
                : $"{design.Name} is in the archive; nothing is deleted."
        );
        await ReadAsync();
    }

    private async Task RestoreAsync(ListedDesign design)
    {
        await Store.ArchiveAsync(design.Id, false);
        (last, told) = (null, $"{design.Name} is back among the designs.");
        await ReadAsync();
    }

    /// <summary>Files that a design names first, then the design.</summary>
    private async Task ImportAsync(InputFileChangeEventArgs chosen)
    {
        importFault = null;
        if (chosen.FileCount > MostFiles)
        {
            importFault = $"{chosen.FileCount} files were chosen; expected at most {MostFiles} at a time.";
            return;
        }

        (string Name, byte[] Bytes)? design = null;
        foreach (var file in chosen.GetMultipleFiles(MostFiles))
        {
            var isDesign = Path.GetExtension(file.Name).ToLowerInvariant() is ".yaml" or ".yml";
            var most = isDesign ? DesignReader.LargestFile : BenchLibrary.LargestFile;
            if (file.Size > most)
            {
                importFault =
                    $"{FileNames.Short(file.Name)} is too large; expected at most {most / 1024} kB.";
                return;
            }

            if (Uploads.Refusal(file.Size) is { } tooMuch)
            {
                importFault = tooMuch;
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
                importFault = trouble;
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
            importFault = $"{first.File}, line {first.Line}: {first.Message}; expected {first.Expected}.";
            return;
        }

        var stored = await Store.AddAsync(document.Design.Name, document.Text, $"brought from {file}");
        Go.NavigateTo($"/design/{stored.Id}");
    }
}
