using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>All orders: by the week they are promised for, or as a list.</summary>
public sealed partial class OrdersPage
{
    private OrderBoard? board;
    private ShopTerms terms = new() { Name = "" };
    private string find = "";
    private string state = "";
    private IDisposable? watch;
    private readonly CancellationTokenSource leaving = new();

    /// <summary>"list" for a list; by week otherwise.</summary>
    [SupplyParameterFromQuery(Name = "view")]
    public string? View { get; set; }

    private bool IsList => View == "list";

    private DateOnly Today => Shelf.Today;

    private IEnumerable<BoardWeek> Shown =>
        board!
            .Weeks.Select(w => w with { Cards = [.. w.Cards.Where(IsFound)] })
            .Where(w => w.Cards.Count > 0);

    private string Count =>
        Shown.Sum(w => w.Cards.Count) switch
        {
            0 when find.Length == 0 && state.Length == 0 =>
                "No order is open. Begin with New order, or with Make an order on a design.",
            0 => "No order matches.",
            1 => "1 order",
            var n => FormattableString.Invariant($"{n} orders"),
        };

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(AgainAsync));
        return ReadAsync();
    }

    /// <summary>
    /// Designs that nobody looked at yet are checked while the board is open, one after the other: what would
    /// harm an animal must not stay unseen.
    /// </summary>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ = JudgeAsync();
        }
    }

    private async Task JudgeAsync()
    {
        try
        {
            foreach (var order in await OrderBook.AllAsync<Order>(Store, leaving.Token))
            {
                if (
                    order.State < OrderState.Delivered
                    && order.Items.Any(i => i is { Harm: null, Design: not null })
                    && await OrderWork.OpenAsync(Store, Library, Clock, Shelf, order.Number) is { } work
                )
                {
                    await work.JudgeAsync(leaving.Token);
                }
            }
        }
        catch (Exception e) when (e is OperationCanceledException || StoreTrouble.Words(e) is not null)
        {
            // The page was left, or the next look at the board tries again.
        }
    }

    private async Task ReadAsync()
    {
        terms = (await OrderBook.TermsAsync(Store, leaving.Token)).Terms;
        board = await OrderBook.BoardAsync(Store, Shelf, IsWanted, leaving.Token);
    }

    private bool IsWanted(Order order) =>
        state switch
        {
            "all" => true,
            "" or "blocked" => order.State is not (OrderState.Closed or OrderState.Lost),
            _ => order.State.ToString() == state,
        };

    private bool IsFound(BoardCard card)
    {
        var text =
            $"{Name(card.Order)}\n{card.Customer}\n{Things(card.Order)}\n{card.Order.Notes}\n"
            + OrderSteps.Name(card.Order.State);
        return (state != "blocked" || card.Blockers.Count > 0)
            && find.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .All(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    private async Task StateAsync(ChangeEventArgs chosen)
    {
        state = chosen.Value?.ToString() ?? "";
        await ReadAsync();
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
            // The page was left, or the next change brings the board.
        }
    }

    private string Name(Order order) =>
        terms.OrderPrefix + order.Number.ToString(CultureInfo.InvariantCulture);

    private static string Things(Order order) => OrderShow.Things(order);

    private static string Day(Order order) => order.Promised is { } day ? OrderText.Day(day) : "";

    private string Price(Order order) => OrderShow.Price(order, terms.Currency);

    private string Week(BoardWeek week)
    {
        var now = WorkDays.Monday(Today);
        return week.Monday is not { } monday ? "Without a day"
            : monday == now ? "This week"
            : monday == now.AddDays(7) ? "Next week"
            : $"Week of {OrderText.Day(monday)}" + (monday < now ? ", over" : "");
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        leaving.Cancel();
        leaving.Dispose();
    }
}
