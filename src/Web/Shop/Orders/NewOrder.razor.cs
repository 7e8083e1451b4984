using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>An enquiry: who asks, for what, for when.</summary>
public sealed partial class NewOrder
{
    private const int MostFound = 24;
    private readonly OrderForm form = new();
    private List<Customer> customers = [];
    private List<Good> goods = [];
    private IReadOnlyList<ListedDesign> designs = [];
    private string find = "";
    private string good = "";
    private string? fault;

    /// <summary>A design to begin with.</summary>
    [SupplyParameterFromQuery(Name = "design")]
    public Guid? Design { get; set; }

    /// <summary>A customer to begin with.</summary>
    [SupplyParameterFromQuery(Name = "customer")]
    public string? Customer { get; set; }

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    private IEnumerable<ListedDesign> Found =>
        designs.Where(d => d.Name.Contains(find.Trim(), StringComparison.OrdinalIgnoreCase)).Take(MostFound);

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        customers =
        [
            .. (await OrderBook.AllAsync<Customer>(Store)).OrderBy(
                c => c.Name,
                StringComparer.OrdinalIgnoreCase
            ),
        ];
        goods =
        [
            .. (await OrderBook.AllAsync<Good>(Store)).OrderBy(g => g.Name, StringComparer.OrdinalIgnoreCase),
        ];
        designs = await Store.DesignsAsync();
        form.Customer.Key = customers.Any(c => c.Key == Customer) ? Customer! : "";
        if (designs.FirstOrDefault(d => d.Id == Design) is { } first)
        {
            Add(first);
        }
    }

    private void Add(ListedDesign design)
    {
        if (form.Items.FirstOrDefault(i => i.Design?.Id == design.Id) is { } there)
        {
            there.Amount++;
            return;
        }

        form.Items.Add(new ItemForm { Design = design });
    }

    private void AddGood()
    {
        form.Items.Add(new ItemForm { Good = goods.First(g => g.Key == good) });
        good = "";
    }

    private async Task SaveAsync()
    {
        fault = form.Refusal(Today);
        if (fault is not null)
        {
            return;
        }

        var number = 0;
        fault = await Attempt.AtAsync(async () =>
        {
            var who = await OrderBook.WhoAsync(Store);
            var change = new ShopChange(who);
            var key = form.Customer.Key;
            if (key.Length == 0)
            {
                key = form.Customer.FreeKey(customers.Select(c => c.Key).ToHashSet(StringComparer.Ordinal));
                change.Keep(key, 0, form.Customer.As(key), "new customer");
            }

            var act = new OrderAct(Clock.GetUtcNow().UtcDateTime, who, "Asked for.");
            change.KeepNumbered<Order>(n => form.As(n, key, act), "enquiry");
            number = (await Store.WriteAsync(change)).Records[^1];
        });
        if (fault is null)
        {
            Go.NavigateTo($"/orders/{OrderBook.Key(number)}");
        }
    }
}
