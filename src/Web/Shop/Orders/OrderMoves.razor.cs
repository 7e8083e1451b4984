using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Moves an order on, promises its day, writes what it waits for.</summary>
public sealed partial class OrderMoves
{
    private string note = "";
    private string? caution;

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    /// <summary>Quotes and their acceptance have their own places.</summary>
    private List<OrderState> Steps =>
        [
            .. OrderSteps
                .After(Work.Order.State)
                .Where(s =>
                    s != OrderState.Quoted
                    && !(s == OrderState.Accepted && Work.Order.State == OrderState.Quoted)
                ),
        ];

    private async Task GoAsync(OrderState to)
    {
        if (OrderSteps.Refusal(Work.Order, to, note) is { } refusal)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var order = OrderSteps.Go(Work.Order, to, await Work.ActAsync(note.Trim()));
        var fault = await Work.KeepAsync(order, OrderSteps.Name(to));
        note = fault is null ? "" : note;
        await OnDone.InvokeAsync(fault);
    }

    private async Task PromiseAsync(ChangeEventArgs typed)
    {
        caution = null;
        var text = typed.Value?.ToString() ?? "";
        DateOnly? day = DateOnly.TryParseExact(
            text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var read
        )
            ? read
            : null;
        var earliest = await Work.EarliestAsync();
        if (day is { } wanted && PromisedDay.Refusal(wanted, Work.Today, earliest) is { } refusal)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        caution = day is { } then && earliest is not null ? PromisedDay.Caution(then, earliest) : null;
        var words = day is { } told ? $"Promised for {OrderText.Day(told)}." : "No day is promised any more.";
        await OnDone.InvokeAsync(
            await Work.KeepAsync(
                OrderSteps.Told(Work.Order with { Promised = day }, await Work.ActAsync(words)),
                words
            )
        );
    }

    private async Task BlockAsync(ChangeEventArgs typed)
    {
        var text = (typed.Value?.ToString() ?? "").Trim();
        var words = text.Length > 0 ? $"Waits: {text}" : "Waits for nothing any more.";
        await OnDone.InvokeAsync(
            await Work.KeepAsync(
                OrderSteps.Told(Work.Order with { Blocked = text }, await Work.ActAsync(words)),
                words
            )
        );
    }

    private async Task TermsAsync(ChangeEventArgs typed)
    {
        var text = (typed.Value?.ToString() ?? "").Trim();
        var words = text.Length > 0 ? $"Agreed besides: {text}" : "Nothing is agreed beside our terms.";
        await OnDone.InvokeAsync(
            await Work.KeepAsync(
                OrderSteps.Told(Work.Order with { Terms = text }, await Work.ActAsync(words)),
                words
            )
        );
    }

    private async Task NoteAsync(ChangeEventArgs typed) =>
        await OnDone.InvokeAsync(
            await Work.KeepAsync(Work.Order with { Notes = (typed.Value?.ToString() ?? "").Trim() }, "notes")
        );
}
