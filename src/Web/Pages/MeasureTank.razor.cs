using System.Collections.Immutable;
using System.Text.Json;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Units;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Measuring;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;

namespace Litterfall.Web.Pages;

/// <summary>Reads a tank that stands there, page by page, and makes a design of it.</summary>
public sealed partial class MeasureTank
{
    private const int MostPhotos = 6;

    // Own choice: a tape is read to a millimeter or two, and good tanks are square to about three.
    private const double WideSpread = 0.005;

    private static readonly ImmutableArray<string> Titles =
    [
        "Measure a tank you have",
        "Size",
        "Glass",
        "Opening, lid and vents",
        "Layers",
        "Water",
        "Animals",
        "Plants",
        "Room",
        "All of it",
    ];

    private static readonly string[] Ordinals = ["first", "second", "third"];

    private TankDraft draft = new();
    private IReadOnlyList<CatalogEntry> animals = [];
    private IReadOnlyList<CatalogEntry> plants = [];
    private string? fault;
    private bool isReady;

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    private string Degrees => draft.Unit == Unit.InchUnit.Symbol ? "F" : "C";

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        await Library.LoadAsync();
        animals = Named<AnimalEntry>();
        plants = Named<PlantEntry>();
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        draft.Unit = (await SavedPreferences.LoadAsync()).Chosen("length") ?? draft.Unit;
        if (await Js.InvokeAsync<string?>("litterfall.draft", "tank") is { Length: > 0 } kept)
        {
            draft = Read(kept) ?? draft;
        }

        isReady = true;
        StateHasChanged();
    }

    /// <summary>A draft of this or an older program; null where it does not read.</summary>
    private static TankDraft? Read(string kept)
    {
        try
        {
            var read = JsonSerializer.Deserialize<TankDraft>(kept);
            return
                read is { Step: >= 1 }
                && read.Step <= Titles.Length
                && new[] { read.Length, read.Depth, read.Height }.All(e =>
                    e is { Length: TankDraft.Readings }
                )
                ? read
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private IReadOnlyList<CatalogEntry> Named<T>()
        where T : CatalogEntry =>
        [.. Library.Catalog.Of<T>().OrderBy(e => EntryWords.Of(e), StringComparer.OrdinalIgnoreCase)];

    private static string Text(ChangeEventArgs e) => e.Value?.ToString() ?? "";

    private Task Set(Action set)
    {
        set();
        return KeepAsync();
    }

    /// <summary>Keeps what was read in the browser.</summary>
    private async Task KeepAsync() =>
        await Js.InvokeVoidAsync("litterfall.draft", "tank", JsonSerializer.Serialize(draft));

    private async Task PhotoAsync(InputFileChangeEventArgs chosen)
    {
        if (draft.Photos.Count >= MostPhotos)
        {
            fault = $"{MostPhotos} photos are enough; remove one first.";
            return;
        }

        (string? Name, string? Trouble) taken = default;
        var file = chosen.File;
        fault = await Attempt.AtAsync(async () =>
            taken = await Photos.TakeAsync(file.Size, () => file.OpenReadStream(Photos.LargestFile))
        );
        fault ??= taken.Trouble;
        if (taken.Name is { } name)
        {
            await Set(() => draft.Photos.Add(name));
        }
    }

    private async Task BackAsync()
    {
        fault = null;
        await Set(() => draft.Step--);
    }

    private async Task NextAsync()
    {
        fault = Missing();
        if (fault is not null)
        {
            return;
        }

        if (draft.Step < Titles.Length)
        {
            await Set(() => draft.Step++);
            await Js.InvokeVoidAsync("litterfall.toTop");
            return;
        }

        await CreateAsync();
    }

    private async Task AgainAsync()
    {
        draft = new() { Unit = draft.Unit };
        fault = null;
        await KeepAsync();
    }

    private async Task CreateAsync()
    {
        var name =
            draft.Name.Trim().Length > 0
                ? draft.Name.Trim()
                : FormattableString.Invariant($"Tank of {Today:d MMMM}");
        var text = TankText.Of(draft, name, Today);
        var reading = DesignReader.Read(name, text);
        if (reading.Value is not { } document || !reading.IsGood)
        {
            fault = $"This can't be made into a design yet: {reading.Faults[0].Message}.";
            return;
        }

        if (TankSize.Refusal(document) is { } refusal)
        {
            fault = refusal;
            return;
        }

        if (Library.Check(document) is { IsGood: false } checkedFor)
        {
            fault =
                $"This can't be made into a design yet: {checkedFor.Faults[0].Message}; expected "
                + $"{checkedFor.Faults[0].Expected}.";
            return;
        }

        fault = await Attempt.AtAsync(async () =>
        {
            var stored = await Store.AddAsync(name, text, "measured on the tank");
            await Js.InvokeVoidAsync("litterfall.draft", "tank", null);
            Go.NavigateTo($"/design/{stored.Id}");
        });
    }

    /// <summary>What the page at hand still needs, in a sentence; null where it may be left.</summary>
    private string? Missing() =>
        draft.Step switch
        {
            2 => Unread<Length>([.. draft.Length, .. draft.Depth, .. draft.Height])
                ?? (
                    new[] { draft.Length, draft.Depth, draft.Height }.Any(e =>
                        e.All(string.IsNullOrWhiteSpace)
                    )
                        ? "Each edge needs one reading at least."
                        : null
                ),
            3 => Unread<Length>([draft.Walls, draft.Base])
                ?? (
                    draft.IsOutside && string.IsNullOrWhiteSpace(draft.Walls)
                        ? "The outside alone does not tell the inside: the thickness of the walls is needed."
                        : null
                ),
            4 => Unread<Length>([
                draft.Sill,
                draft.LidThickness,
                .. draft.Vents.SelectMany(v => new[] { v.Length, v.Width }),
            ]) ?? Unread<Share>([draft.LidOpen], "%"),
            5 => Unread<Length>([draft.Drainage, draft.SoilFront, draft.SoilBack, draft.Leaves]),
            6 => Unread<Length>([draft.Level]),
            9 => Unread<Temperature>([draft.RoomTemperature], Degrees)
                ?? Unread<Share>([draft.RoomHumidity], "%"),
            _ => null,
        };

    private string? Unread<T>(IEnumerable<string> readings, string? unit = null)
        where T : struct, IQuantity<T> =>
        readings.Any(r => TypedReading.Fault<T>(r, unit ?? draft.Unit) is not null)
            ? "One of the readings does not read yet; it tells what it expects."
            : null;
}
