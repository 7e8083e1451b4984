using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>A customer: how to reach them, and what they ordered.</summary>
public sealed partial class CustomerPage
{
    private const string New = "new";
    private readonly CustomerForm form = new();
    private List<Order> orders = [];
    private string title = "Customer";
    private string? fault;
    private string? told;
    private bool isMissing;
    private int version;

    /// <summary>Key of the customer; "new" for a new one.</summary>
    [Parameter]
    public string Key { get; set; } = "";

    private bool IsNew => Key == New;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (IsNew)
        {
            title = "New customer";
            return;
        }

        var kept = await Store.RecordAsync<Customer>(Key);
        isMissing = kept is null;
        if (kept is null)
        {
            return;
        }

        form.Show(kept.Value);
        (version, title) = (kept.Version, kept.Value.Name);
        orders =
        [
            .. (await OrderBook.AllAsync<Order>(Store))
                .Where(o => o.Customer == Key)
                .OrderByDescending(o => o.Number),
        ];
    }

    private async Task SaveAsync()
    {
        (told, fault) = (null, form.Refusal);
        if (fault is not null)
        {
            return;
        }

        var key = Key;
        fault = await Attempt.AtAsync(async () =>
        {
            if (IsNew)
            {
                var taken = (await OrderBook.AllAsync<Customer>(Store)).Select(c => c.Key).Append(New);
                key = form.FreeKey(taken.ToHashSet(StringComparer.Ordinal));
            }

            var change = new ShopChange(await OrderBook.WhoAsync(Store));
            await Store.WriteAsync(
                change.Keep(key, IsNew ? 0 : version, form.As(key), IsNew ? "new customer" : "changed")
            );
        });
        if (fault is not null)
        {
            return;
        }

        if (IsNew)
        {
            Go.NavigateTo($"/customers/{key}");
            return;
        }

        await OnParametersSetAsync();
        told = "Saved. Papers that were sent keep the old address.";
    }
}
