using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>What is ordered, each design with its frozen version and picture.</summary>
public sealed partial class OrderItems
{
    private IReadOnlyList<ListedDesign> designs = [];
    private Dictionary<Guid, int> heads = [];
    private ItemForm? adding;
    private string chosen = "";

    /// <summary>The store.</summary>
    [Inject]
    public required BenchStore Store { get; set; }

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private bool IsOpenToChange => Work.Order.State is OrderState.Enquiry or OrderState.Quoted;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        designs = await Store.DesignsAsync();
        heads = designs.ToDictionary(d => d.Id, d => d.Version);
    }

    private void Choose(string key)
    {
        chosen = key;
        adding =
            designs.FirstOrDefault(d => d.Id.ToString() == key) is { } design
                ? new ItemForm { Design = design }
            : Work.Supply.Goods.FirstOrDefault(g => g.Key == key) is { } good ? new ItemForm { Good = good }
            : null;
    }

    private async Task AddAsync()
    {
        if (adding!.Refusal is { } refusal)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var item = adding.Item;
        var fault = await KeepAsync([.. Work.Order.Items, item], $"{OrderShow.Thing(item)} added.");
        if (fault is null)
        {
            (adding, chosen) = (null, "");
        }
    }

    private Task ReplaceAsync(OrderItem item, OrderItem? with) =>
        KeepAsync(
            [
                .. Work.Order.Items.SelectMany(i =>
                    ReferenceEquals(i, item) ? (with is null ? [] : new[] { with }) : [i]
                ),
            ],
            with is null ? $"{item.Name} removed." : $"{item.Name} changed."
        );

    private async Task<string?> KeepAsync(OrderItem[] items, string words)
    {
        var order = OrderSteps.Told(Work.Order with { Items = [.. items] }, await Work.ActAsync(words));
        var fault = await Work.KeepAsync(order, words);
        await OnDone.InvokeAsync(fault);
        return fault;
    }
}
