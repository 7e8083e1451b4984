using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Tanks.Service;
using Litterfall.Workshop.Tracing;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Passport;

/// <summary>The passport of one tank: what it is, where it stands, what lives in it, its log.</summary>
public sealed partial class TankPage : ComponentBase
{
    private const int LinesShown = 20;
    private const int LotsShown = 40;
    private TankView? view;
    private Tank? tank;
    private int version;
    private UnitPreferences units = UnitPreferences.Metric;
    private ImmutableArray<AnimalCount> animals = [];
    private QuarantineClock? quarantine;
    private DateOnly? died;
    private DrainOutlook? outlook;
    private DrainState? drain;
    private TankTrace? trace;
    private List<CareEntry> photos = [];
    private List<BuiltField> built = [];
    private IReadOnlyList<ListedDesign> designs = [];
    private TankDraft draft = new();
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;
    private IDisposable? care;

    /// <summary>Number of the tank, or of its label.</summary>
    [Parameter]
    public string Code { get; set; } = "";

    private CareTelling Telling => new(units.For, view!.NameOf);

    private IEnumerable<CareEntry> Lines => view!.Care[tank!.Code].Reverse().Take(LinesShown);

    private IEnumerable<(string Name, string Value)> Facts
    {
        get
        {
            yield return ("Stands", view!.PlaceOf(tank!));
            yield return ("Runs since", NumberText.Day(tank!.Since));
            if (tank.Planted is { } planted)
            {
                yield return ("Planted", NumberText.Day(planted));
            }

            if (tank.Label.Length > 0)
            {
                yield return ("Printed number", tank.Label);
            }

            if (tank.Place.Zone.Length > 0)
            {
                yield return ("Misting zone", tank.Place.Zone);
            }

            if (outlook is not null && drain is not null)
            {
                yield return ("Level mark", Level(outlook.LimitMillimeters));
                yield return (
                    "Level today",
                    drain.LevelMillimeters > outlook.LimitMillimeters
                        ? $"over {Level(outlook.LimitMillimeters)}"
                        : $"about {Level(drain.LevelMillimeters)}"
                );
                yield return (
                    "Draw water off",
                    drain.Due is { } due ? NumberText.Day(due) : "not by forecast"
                );
            }
        }
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        care = Store.WatchCare(grown =>
        {
            if (grown == tank?.Code)
            {
                _ = InvokeAsync(LoadAsync);
            }
        });
        units = await Preferences.LoadAsync();
        designs = await Store.DesignsAsync();
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync()
    {
        (told, isGood, tank) = (null, true, null);
        return LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        care?.Dispose();
    }

    private string Page(string part) => $"/tanks/{Uri.EscapeDataString(tank!.Code)}/{part}";

    private string Level(double millimeters) => Telling.Amount(CareForm.Find(CareKind.Level), millimeters);

    private string When(CareEntry line) =>
        Desk.Local(line.At).ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    private string LotWords(TracedLot lot)
    {
        var name = view!.Stock.Book.Find(lot.Lot) is { } account ? view.Stock.GoodOf(account).Name : "";
        return lot.IsDirect ? name : $"{name}, further back";
    }

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        var kept = view.Find(Code);
        var isNew = tank?.Code != kept?.Value.Code || version != (kept?.Version ?? 0);
        (tank, version) = (kept?.Value, kept?.Version ?? 0);
        if (tank is not null)
        {
            var lines = view.Care[tank.Code].ToList();
            animals = AnimalCounts.Find(lines);
            quarantine = QuarantineClocks.Find(tank.Code, lines, view.Today);
            died = QuarantineClocks.KeptByDeath(lines, view.Today);
            photos = [.. lines.Where(l => l.Photo.Length > 0).Reverse().Take(LinesShown)];
            trace = TankTrace.Find(tank, view.Tanks.Select(t => t.Value), view.Stock.Book);
            outlook = await Forecasts.OutlookAsync(tank);
            drain = outlook is null ? null : DrainState.Find(lines, outlook, tank.Since, view.Today);
            if (isNew)
            {
                draft = TankDraft.From(tank);
                built = BuiltField.Find(await TankDraft.DocumentAsync(Store, tank));
            }
        }

        StateHasChanged();
    }

    private async Task TakeBackAsync(CareEntry line)
    {
        var back = line with
        {
            Key = Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture),
            At = Clock.GetUtcNow().UtcDateTime,
            TakesBack = line.Key,
            Who = await Desk.WhoAsync(),
        };
        var fault = await Attempt.AtAsync(() => Store.AddCareAsync([back]));
        (told, isGood) = (fault ?? $"Taken back: {Telling.Tell(line)}.", fault is null);
    }

    private async Task SaveAsync()
    {
        var (changed, fault) = draft.Read(tank, view!);
        await KeepAsync(changed, fault, "Saved.");
    }

    private Task EndAsync() =>
        KeepAsync(
            tank! with
            {
                Ended = tank.IsRunning ? view!.Today : null,
            },
            null,
            tank!.IsRunning ? "Given up. Its log stays." : "It runs again."
        );

    private async Task KeepAsync(Tank? changed, string? fault, string words)
    {
        var refused = changed is null
            ? fault
            : await Desk.WriteAsync(
                new ShopChange(await Desk.WhoAsync()).Keep(changed.Code, version, changed, "changed")
            );
        (told, isGood) = (refused ?? words, refused is null);
        await LoadAsync();
    }

    /// <summary>What differs goes into a version of its own; what others build from stays.</summary>
    private async Task BuildAsync()
    {
        var changed = built.Where(b => b.Built.Trim().Length > 0).ToList();
        var document = await TankDraft.DocumentAsync(Store, tank!);
        if (changed.Count == 0 || document is null)
        {
            (told, isGood) = ("Type at least one value as it was built.", false);
            return;
        }

        var (text, fault) = BuiltField.Apply(document, changed);
        if (text is null)
        {
            (told, isGood) = (fault, false);
            return;
        }

        var (id, number) = (tank!.Design!.Value, 0);
        var trouble = await Attempt.AtAsync(async () =>
        {
            var head = (await Store.DesignAsync(id))!;
            var basis = tank.Version > 0 ? tank.Version : head.Version;
            var saved = await Store.SaveAsync(id, basis, (head.Name, text, $"as built: {tank.Code}"));
            number = saved.Saved.Version;
            if (saved.Other is null)
            {
                await Store.GoToAsync(id, head.Version);
            }
        });
        var differences = changed.Select(b => new BuiltDifference(b.What, b.Drawn, b.Built.Trim()));
        await KeepAsync(
            trouble is null
                ? tank with
                {
                    BuiltVersion = number,
                    Differences =
                    [
                        .. tank.Differences.Where(d => changed.All(c => c.What != d.What)),
                        .. differences,
                    ],
                }
                : null,
            trouble,
            "Saved as built. Forecasts of this tank use it from now on."
        );
    }
}
