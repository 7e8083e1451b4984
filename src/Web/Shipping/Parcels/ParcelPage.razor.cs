using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Units;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Schedule;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>A parcel: which day, why, how it is packed; then what happened to it, unchangeable.</summary>
public sealed partial class ParcelPage : ComponentBase
{
    private readonly CancellationTokenSource closing = new();
    private DispatchView? view;
    private Kept<Parcel>? kept;
    private ParcelDraft? draft;
    private WeekVerdict? week;
    private DayVerdict? shown;
    private DayVerdict? now;
    private PackingPlan? plan;
    private IReadOnlyList<AnimalPaper> papers = [];
    private IReadOnlyList<EvidenceEntry> links = [];
    private Claim? claim;
    private UnitPreferences units = UnitPreferences.Metric;
    private string? refusal;
    private string? labelRefusal;
    private string check = "";
    private string? told;
    private bool isGood = true;
    private bool isBusy;
    private PlanView? plans;
    private IDisposable? watch;

    /// <summary>Number of the parcel.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <summary>Day that is shown first, as 2026-12-01; null for the first that works.</summary>
    [SupplyParameterFromQuery(Name = "day")]
    public DateOnly? AskedDay { get; set; }

    private bool IsWaiting => kept!.Value.State is ParcelState.Planned or ParcelState.Cleared;

    private IReadOnlyList<string> HoldMessage =>
        DispatchDesk.HoldMessage(view!, kept!.Value, week!, shown!, units.For(Unit.Celsius).Symbol == "F");

    private string NextWords =>
        week switch
        {
            { NextDayOnceDone: { } day } when Day(day) is { } open =>
                $"First day that works, {OpenTasks.Once(open)}: {ShipWords.Day(day)}.",
            { NextDay: null } => "No day of this week works; each day says why below.",
            { NextDay: { } day, NextPlainDay: { } plain } when plain != day =>
                $"First day that works: {ShipWords.Day(day)}. First day without packs or depot: "
                    + $"{ShipWords.Day(plain)}.",
            { NextDay: { } day, NextPlainDay: null } =>
                $"First day that works: {ShipWords.Day(day)}. No day this week goes without packs or depot.",
            { NextDay: { } day } => $"First day that works: {ShipWords.Day(day)}.",
            _ => "",
        };

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        units = await Preferences.LoadAsync();
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        closing.Cancel();
        closing.Dispose();
        watch?.Dispose();
    }

    private async Task LoadAsync()
    {
        try
        {
            view = await Desk.LoadAsync(closing.Token);
            kept = view.Find(Number);
            if (kept is null)
            {
                return;
            }

            draft ??= new(kept.Value, view.Rules, view.Catalog);
            links = await Desk.LinksAsync(Number, closing.Token);
            check = await Desk.CheckAsync(Number, links, closing.Token);
            claim = await Desk.ClaimAsync(Number, closing.Token);
            labelRefusal = await Desk.ClearedAsync(Number, false, closing.Token) is { } cleared
                ? DispatchDesk.LabelRefusal(view, cleared)
                : "No label: the parcel is not cleared.";
            papers = DispatchDesk.Papers(view, kept.Value);
            plans = await Plans.LoadAsync(closing.Token);
            StateHasChanged();
            if (IsWaiting)
            {
                week = (await Desk.JudgeAsync(view, [kept], closing.Token))[kept.Key];
                if (
                    kept.Value.State == ParcelState.Cleared
                    && await Desk.FrozenDayAsync(links, closing.Token) is { } frozen
                )
                {
                    // What was cleared is shown as it was frozen, not as it would be judged now.
                    now = week.Days.FirstOrDefault(d => d.Day == frozen.Day.Day);
                    (shown, week, plan) = (frozen.Day, frozen.Week, frozen.Plan);
                }
                else
                {
                    var next = week.NextDay ?? week.NextDayOnceDone;
                    Show(shown?.Day ?? AskedDay ?? kept.Value.ShipDay ?? kept.Value.WishedDay ?? next);
                }
            }

            StateHasChanged();
        }
        catch (OperationCanceledException)
        {
            // The page was left.
        }
    }

    private DayVerdict? Day(DateOnly? day) => week!.Days.FirstOrDefault(d => d.Day == day);

    private void Show(DateOnly? day)
    {
        shown = Day(day) ?? (week!.Days.Count > 0 ? week.Days[0] : null);
        (plan, refusal) = shown is null
            ? (null, null)
            : (
                DispatchDesk.Plan(view!, kept!.Value, shown, week!),
                DispatchDesk.ClearingRefusal(view!, kept.Value, shown)
            );
    }

    private async Task TickAsync((string Key, bool IsThere) paper)
    {
        isBusy = true;
        var fault = await Desk.TickAsync(kept!, paper.Key, paper.IsThere);
        isBusy = false;
        await DoneAsync(fault is null ? ("Noted.", true) : (fault, false));
    }

    /// <summary>True where the plan lets the order leave on a day on which the parcel may not go.</summary>
    private bool CanMovePlan =>
        kept!.Value.Order is { } order
        && plans?.Plan.Find(order) is { } planned
        && week?.NextDay is { } next
        && planned.Days.Ship < next
        && planned.Days.Ship >= view!.Today;

    private async Task MovePlanAsync()
    {
        isBusy = true;
        var (order, next) = (kept!.Value.Order!.Value, week!.NextDay!.Value);
        var why = $"the parcel may leave on {ShipWords.Day(next)} at the earliest";
        var fault = await Plans.ReplanAsync(
            why,
            known =>
                known with
                {
                    Holds =
                    [
                        .. known.Holds.Where(h => h.Order != order || h.Stage != StageKey.Pack),
                        new PlanHold(order, StageKey.Pack, next, why),
                    ],
                },
            closing.Token
        );
        isBusy = false;
        await DoneAsync(fault is null ? ("The order is planned anew.", true) : (fault, false));
    }

    private async Task ChangeAsync()
    {
        var (read, fault) = draft!.Read();
        fault ??= await Desk.ChangeAsync(kept!, read!);
        await DoneAsync(fault is null ? ("Saved, and judged again.", true) : (fault, false));
    }

    private async Task ClearAsync()
    {
        isBusy = true;
        var fault = await Desk.ClearAsync(kept!, shown!);
        isBusy = false;
        await DoneAsync(
            fault is null
                ? ($"Cleared for {ShipWords.Day(shown!.Day)}; its evidence is frozen.", true)
                : (fault, false)
        );
    }

    private async Task DoneAsync((string Words, bool IsGood) done)
    {
        (told, isGood) = done;
        if (isGood)
        {
            draft = null;
        }

        await LoadAsync();
    }
}
