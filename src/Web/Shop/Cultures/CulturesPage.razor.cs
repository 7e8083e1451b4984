using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Trade;
using Litterfall.Quantities.Measures;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>All cultures on their shelves, what orders and animals need of them, and what to start.</summary>
public sealed partial class CulturesPage
{
    private CultureView? view;
    private string? told;
    private bool isGood = true;
    private List<(DateOnly Day, int Cups, string Name)> starts = [];
    private IDisposable? watch;

    private IEnumerable<string> Species =>
        view!.Book.Standing.Select(c => c.Species).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Sources =>
        CulturePractice
            .All.Concat(FlyPractice.All)
            .Concat(RationTable.All)
            .Select(f =>
                $"{NumberText.Capital(f.Name ?? "")}: {NumberText.Of(f)} – "
                + $"{f.Origin.Provenance.Spoken()} ({f.Origin.Place})"
            );

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        var (book, until) = (view.Book, view.Book.Today.AddDays(FlyForecast.Ahead));
        starts =
        [
            .. book
                .Flies.SelectMany(f =>
                    f.Starts(book.Today, until, CultureTasks.FlyDays).Select(s => (s.Day, s.Cups, Called(f)))
                )
                .OrderBy(s => s.Day),
        ];
        StateHasChanged();
    }

    private async Task WrittenAsync((bool IsGood, string Told) outcome)
    {
        (isGood, told) = outcome;
        if (isGood)
        {
            await LoadAsync();
        }
    }

    private static string Called(FlyForecast fly) => fly.Kind.Entry.Called?.Text ?? fly.Kind.Entry.Name;

    private static (double At, string Label)? Eaten(FlyForecast fly) =>
        fly.Days.Average(d => d.Needed) is > 0 and var eaten ? (eaten, "eaten") : null;

    private string FlyWords(FlyForecast fly)
    {
        var warm = view!.Book.Celsius(
            view.Book.Standing.FirstOrDefault(c => c.Species == fly.Kind.Entry.Key),
            view.Book.Today
        );
        var eaten = fly.Days.Average(d => d.Needed);
        var lead = fly.LeadDays is { } days
            ? $"set up {NumberText.Count(days, "day", "days")} ahead ("
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"{fly.Kind.Lead(warm):0.0} days at {warm:0.#} °C, laying and hardening counted)"
                )
            : "the shelf is too cold for them";
        return eaten <= 0
            ? "No animals are entered that eat them."
            : $"The animals eat about {CultureWords.About(eaten)} a day: "
                + $"{NumberText.Count(fly.CupsPerWeek, "cup", "cups")} a week, in two sets, {lead}.";
    }

    /// <summary>
    /// Where the plan is told of the first day with enough cups; null where the day is kept.
    /// </summary>
    private string? Slip(ShortNeed row)
    {
        if (row.Plan.IsPossible || row.Plan.Earliest is not { } day)
        {
            return null;
        }

        var order = row.Cover.Need.Order;
        var cups = NumberText.Count(row.Cover.Missing, "cup", "cups");
        var stage = order.Items.Any(i => i.Kind == OrderItemKind.Build) ? StageKey.Plant : StageKey.Pack;
        var why = Uri.EscapeDataString(
            $"{cups} of {view!.Book.NameOf(row.Cover.Need.Species)} must grow first"
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"/week?slip={order.Number}&stage={stage}&from={day:yyyy-MM-dd}&why={why}#slip"
        );
    }

    private string Remedy(ShortNeed row) =>
        CultureWords.Outcome(
            row.Plan,
            view!.Book.Kind(row.Cover.Need.Species)!,
            view.Book.Celsius(null, view.Book.Today)
        );

    private IEnumerable<string> OddsWords(string species)
    {
        var book = view!.Book;
        var (groups, risk) = book.Odds(species);
        var cups = groups.Sum(g => g.Length);
        var lines = groups.Length;
        yield return $"{NumberText.Count(cups, "usable culture", "usable cultures")} of "
            + $"{NumberText.Count(lines, "separate line", "separate lines")}; chance that all are lost "
            + Percent(risk.None)
            + ", that half are lost "
            + Percent(risk.Below((cups + 1) / 2));
        if (lines == 1 && cups > 1)
        {
            yield return "All came from one mother: mites in one can take them all. Get a second line.";
        }

        foreach (var small in groups.Where(g => g.Length < (int)CulturePractice.Backup.Si))
        {
            var few = NumberText.Count(small.Length, "culture", "cultures");
            yield return $"Line {small[0].Line} has only {few}: split " + "it before you take from it.";
        }

        if (
            book.Kind(species) is { } kind
            && book.Standing.FirstOrDefault(c => c.Species == species) is { } one
        )
        {
            var warm = book.Celsius(one, book.Today);
            var growing = Percent(kind.WeeklyShare(warm, false));
            yield return $"At {CultureWords.Celsius(warm)} {growing} can be taken "
                + $"each week while they grow, {Percent(kind.WeeklyShare(warm, true))} of full cups."
                + Wanted(species, kind, one, warm);
        }
    }

    /// <summary>Cups to keep for what open orders ask for, spread over the weeks until the last.</summary>
    private string Wanted(string species, CultureKind kind, Culture one, double celsius)
    {
        var book = view!.Book;
        var needs = book.Needs.Where(n => n.Species == species).ToList();
        if (needs.Count == 0)
        {
            return "";
        }

        var weeks = Math.Max(1, (needs.Max(n => n.Day.DayNumber) - book.Today.DayNumber) / 7.0);
        var animals = needs.Sum(n => n.Cups * n.Animals) / weeks;
        return kind.Needed(animals, one.Liters, celsius) is { } cups
            ? $" Open orders ask for about {CultureWords.About(animals)} a week: the harvest of "
                + $"{NumberText.Count(cups, "such cup", "such cups")}."
            : "";
    }

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %");
}
