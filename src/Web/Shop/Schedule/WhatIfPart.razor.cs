using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>Tries an order beside the plan, and tells the plan what slipped.</summary>
public sealed partial class WhatIfPart
{
    private static readonly string[] Stages =
    [
        StageKey.Plants,
        StageKey.Cut,
        StageKey.Background,
        StageKey.Plant,
        StageKey.Pack,
    ];

    private int asked;
    private DateOnly? day;
    private bool isTrying;
    private List<string> answer = [];
    private int held;
    private string stage = StageKey.Plants;
    private DateOnly? from;
    private string why = "";
    private string? fault;
    private PlanHold? filled;

    /// <summary>Plans.</summary>
    [Inject]
    public required PlanDesk Desk { get; set; }

    /// <summary>The kept plan.</summary>
    [Parameter, EditorRequired]
    public required PlanView View { get; set; }

    /// <summary>True while the plan is made anew.</summary>
    [Parameter]
    public bool IsBusy { get; set; }

    /// <summary>Something slipped.</summary>
    [Parameter]
    public EventCallback<PlanHold> OnHold { get; set; }

    /// <summary>What another page says that waits: the form is filled with it; null for nothing.</summary>
    [Parameter]
    public PlanHold? Waits { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Waits is { } waits && waits != filled)
        {
            (filled, held, from, why) = (waits, waits.Order, waits.From, waits.Why);
            stage = Stages.Contains(waits.Stage) ? waits.Stage : StageKey.Pack;
        }
    }

    private async Task TryAsync()
    {
        if (asked == 0)
        {
            answer = ["Choose an order that is not taken yet."];
            return;
        }

        if (day < View.Today)
        {
            answer = [$"{PlanWords.Day(day.Value)} is over. Choose a day to come."];
            return;
        }

        isTrying = true;
        try
        {
            answer = await Desk.TryAsync(asked, day) is { } tried
                ? [.. tried.Answer.Sentences(tried.Setting)]
                : ["There is no such order any more."];
        }
        finally
        {
            isTrying = false;
        }
    }

    private async Task HoldAsync()
    {
        fault =
            held == 0 ? "Choose the order that waits."
            : from is not { } first ? "Choose the first day on which it is possible."
            : first < View.Today ? $"{PlanWords.Day(first)} is over. Choose a day to come."
            : why.Trim().Length == 0 ? "Say in a few words why; customers are told."
            : null;
        if (fault is null)
        {
            await OnHold.InvokeAsync(new PlanHold(held, stage, from!.Value, why.Trim()));
        }
    }
}
