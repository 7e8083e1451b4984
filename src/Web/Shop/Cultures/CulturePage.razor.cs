using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Quantities.Measures;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>One culture: what it holds, what is done with it, where it came from.</summary>
public sealed partial class CulturePage
{
    private const int MostCups = 40;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private CultureView? view;
    private Culture? culture;
    private CultureCurve? curve;
    private ImmutableArray<LineageRow> tree = [];
    private List<string> flags = [];
    private string? told;
    private bool isGood = true;
    private string counted = "";
    private CountWay way = CountWay.Sample;
    private string food = "";
    private string seen = "";
    private string taken = "";
    private string into = "";
    private string cups = "2";
    private string share = "50";
    private string size = "";
    private string to = "";
    private CultureEnd why = CultureEnd.Mites;
    private string note = "";
    private IDisposable? watch;

    /// <summary>Number of the culture.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    private string NowWords =>
        curve is null ? "Flies are not counted by day; the forecast of all cups is on the page of cultures."
        : !culture!.IsStanding ? "It has ended."
        : $"{NumberText.Capital(view!.Animals(culture))} animals walk in it today. "
            + (
                curve.WeeklyShare > 0
                    ? $"About {CultureWords.About(curve.WeeklyShare * curve.On(view.Book.Today).Animals)} "
                        + "can be taken this week."
                    : "Nothing can be taken: at this temperature they do not multiply."
            );

    private IEnumerable<(string Name, string Value)> Facts
    {
        get
        {
            var it = culture!;
            var book = view!.Book;
            yield return ("Started", NumberText.Day(it.Since));
            yield return ("Split from", it.Mother ?? "no culture of ours");
            yield return (
                "Stands on",
                it.IsStanding ? $"{view.ShelfName(it.Shelf)}, board {it.Board}, place {it.Place}" : "no shelf"
            );
            yield return ("Temperature", CultureWords.Celsius(book.Celsius(it, book.Today)));
            yield return ("Substrate", StockWords.Number(it.Liters) + " L");
            yield return ("Started with", CultureWords.About(it.StartedWith));
            if (curve is { } led && double.IsFinite(led.Plateau))
            {
                yield return ("Holds at most", $"about {CultureWords.About(led.Plateau)}{Told(it, led)}");
            }

            yield return ("Last fed", NumberText.Day(it.LastFed));
        }
    }

    private IEnumerable<(DateOnly Day, string What)> Past
    {
        get
        {
            var it = culture!;
            return it
                .Feedings.Select(f => (f.Day, $"fed{After(f.What)} ({f.Who})"))
                .Concat(
                    it.Looks.Select(l =>
                        (l.Day, $"looked: {(l.Found.Length > 0 ? l.Found : "nothing")} ({l.Who})")
                    )
                )
                .Concat(
                    it.Counts.Select(c =>
                        (c.Day, $"{CultureWords.About(c.Animals)} counted, {Word(c.Way)} ({c.Who})")
                    )
                )
                .Concat(
                    it.Harvests.Select(h =>
                        (h.Day, $"{CultureWords.About(h.Animals)} taken out{After(h.Into)} ({h.Who})")
                    )
                )
                .Concat(it.Splits.Select(s => (s.Day, $"{s.Daughter} split off ({s.Who})")))
                .OrderByDescending(p => p.Day);
        }
    }

    /// <summary>Fewest and most that the library tells for such a cup.</summary>
    private string Told(Culture it, CultureCurve led) =>
        view!.Book.Kind(it.Species)?.Entry is { CulturePlateau: { } usual, CulturePlateauBand: { } band }
            ? $" ({CultureWords.About(led.Plateau * band.Low.Si / usual.Si)}–"
                + $"{CultureWords.About(led.Plateau * band.High.Si / usual.Si)})"
            : "";

    /// <inheritdoc/>
    protected override void OnInitialized() => watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync()
    {
        (told, isGood) = (null, true);
        return LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        var number = LotNumber.Read(Id, id => view.Book.Find(id) is not null).Lot;
        culture = number is null ? null : view.Book.Find(number);
        if (culture is not null)
        {
            curve = view.Book.Kind(culture.Species) is null ? null : view.Book.Curve(culture);
            tree = Lineage.Tree(view.Book.Cultures, culture.Number);
            flags = culture.IsStanding ? [.. CultureWords.Flags(culture, view.Book)] : [];
            size = size.Length > 0 ? size : StockWords.Number(culture.Liters);
            to = to.Length > 0 ? to : culture.Shelf;
        }

        StateHasChanged();
    }

    private Task CountAsync() =>
        StockWords.Plain(counted) is not (>= 0 and < 1e7 and var animals)
            ? Refuse("Type how many animals you counted.")
            : DoAsync(
                when => culture! with { Counts = [.. culture.Counts, new(when.Day, animals, way, when.Who)] },
                "counted",
                "The count is saved; the model follows it."
            );

    private Task FeedAsync() =>
        DoAsync(
            when => culture! with { Feedings = [.. culture.Feedings, new(when.Day, food.Trim(), when.Who)] },
            "fed",
            "Fed."
        );

    private Task LookAsync() =>
        DoAsync(
            when => culture! with { Looks = [.. culture.Looks, new(when.Day, seen.Trim(), when.Who)] },
            "looked",
            seen.Trim().Length > 0 ? "Saved. Is it mites? Then hold the whole line." : "Looked at."
        );

    private async Task HarvestAsync()
    {
        var (step, fault) = CultureSteps.Harvest(
            culture!,
            (Walking, StockWords.Plain(taken) ?? 0),
            into.Trim(),
            view!.Stock.Book,
            await Desk.NowAsync()
        );
        await WriteAsync(step, fault, "Harvested.");
    }

    private async Task SplitAsync()
    {
        var isCount = int.TryParse(cups, NumberStyles.None, Invariant, out var many);
        var stands = view!.Book.Shelves.FirstOrDefault(s => s.Key == to);
        var free = stands is null ? [] : view.Free(stands).Take(many).ToImmutableArray();
        var refused =
            !isCount || many is < 1 or > MostCups ? $"Type how many new cups, 1 to {MostCups}."
            : StockWords.Plain(size) is not (> 0 and <= 100)
                ? "Type the substrate of each new cup, in liters."
            : stands is null ? "Choose the shelf."
            : free.Length < many ? $"{stands.Name} has {free.Length} free places."
            : null;
        if (refused is not null)
        {
            await Refuse(refused);
            return;
        }

        var (step, fault) = CultureSteps.Split(
            culture!,
            Walking,
            new(
                [.. CultureDesk.NextNumbers(view, culture!.Species, many)],
                (StockWords.Plain(share) ?? 0) / 100,
                StockWords.Plain(size)!.Value,
                free,
                to
            ),
            await Desk.NowAsync()
        );
        await WriteAsync(step, fault, "Split. Print the labels of the new cups.");
    }

    private async Task EndAsync() =>
        await WriteAsync(
            CultureSteps.End(culture!, (why, note.Trim()), view!.Stock.Book, await Desk.NowAsync()),
            null,
            "Discarded."
        );

    private double Walking => curve?.On(view!.Book.Today).Animals ?? culture!.StartedWith;

    private async Task DoAsync(Func<(DateOnly Day, string Who), Culture> change, string what, string words) =>
        await WriteAsync(
            new([change(await Desk.NowAsync())], new StockStep([], []), $"{culture!.Number} {what}"),
            null,
            words
        );

    private Task Refuse(string fault)
    {
        (told, isGood) = (fault, false);
        return Task.CompletedTask;
    }

    private async Task WriteAsync(CultureStep? step, string? fault, string words)
    {
        var refused = step is null ? fault : await Desk.WriteAsync(view!, step);
        (told, isGood) = (refused ?? words, refused is null);
        if (isGood)
        {
            (counted, food, seen, taken, note) = ("", "", "", "", "");
            await LoadAsync();
        }
    }

    private string TreeWords(Culture one)
    {
        var state =
            one.End is { } end ? CultureSteps.Word(end.Reason)
            : one.Held.Length > 0 ? "on hold"
            : view!.Animals(one);
        return $"line {one.Line}, {NumberText.Day(one.Since)}{After(state)}";
    }

    private static string Word(CountWay way) =>
        way switch
        {
            CountWay.All => "all of them",
            CountWay.Sample => "from a sample",
            _ => "by eye",
        };

    private static string After(string text) => text.Length > 0 ? $", {text}" : "";
}
