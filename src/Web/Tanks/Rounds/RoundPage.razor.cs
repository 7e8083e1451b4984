using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>Who needs what today, in walking order; a tap writes it into the log.</summary>
public sealed partial class RoundPage : ComponentBase
{
    private const int DaysShown = 28;
    private readonly Dictionary<(string, string), string> typed = [];
    private IReadOnlyList<string> advice = [];
    private RoundView? view;
    private UnitPreferences units = UnitPreferences.Metric;
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;
    private IDisposable? care;

    private ImmutableArray<RoundItem> Due => view!.Book.DueNow;

    private IEnumerable<RoundItem> Coming =>
        view!
            .Book.All.Where(i =>
                i.On(view.Book.Today) == RoundWeight.Later && i.Due <= view.Book.Today.AddDays(DaysShown)
            )
            .OrderBy(i => i.Due);

    private CareTelling Telling => new(units.For, view!.Tanks.NameOf);

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        care = Store.WatchCare(tank => _ = InvokeAsync(LoadAsync));
        units = await Preferences.LoadAsync();
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        care?.Dispose();
    }

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        advice = await Desk.AdviceAsync(view);
        StateHasChanged();
    }

    private static string Page(string tank) => $"/tanks/{Uri.EscapeDataString(tank)}";

    private Severity Weight(RoundItem item) =>
        item.IsFinding ? Severity.Stop
        : item.On(view!.Book.Today) == RoundWeight.Late ? Severity.Caution
        : Severity.Note;

    private string UnitOf(RoundItem item) => CareTelling.Symbol(Telling.Unit(CareForm.Find(item.Writes)));

    private string Expected(RoundItem item)
    {
        var form = CareForm.Find(item.Writes);
        return item.Expected is { } amount
            ? form.Say(amount, Telling.Unit(form)).ToString("0.##", CultureInfo.InvariantCulture)
            : "";
    }

    private string Typed(RoundItem item) => typed.GetValueOrDefault((item.Tank, item.Task), "");

    private void Type(RoundItem item, string? text) => typed[(item.Tank, item.Task)] = text ?? "";

    private async Task DoneAsync(RoundItem item)
    {
        var form = CareForm.Find(item.Writes);
        var amount =
            item.AsksAmount && StockWords.Plain(Typed(item)) is { } said
                ? form.Keep(said, Telling.Unit(form))
                : (double?)null;
        var refused = await Desk.DoneAsync(item, amount);
        (told, isGood) = (refused ?? $"{item.Tank}: {item.What.ToLowerInvariant()}, written.", refused is null);
        typed.Remove((item.Tank, item.Task));
        await LoadAsync();
    }
}
