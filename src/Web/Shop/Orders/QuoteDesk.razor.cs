using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Prices options side by side, and issues them as a quote or a change order.</summary>
public sealed partial class QuoteDesk
{
    private const int MostOptions = 4;
    private List<OptionForm> forms = [];
    private List<PricedOption> options = [];
    private Dictionary<Guid, int> heads = [];
    private OrderChange? change;
    private Order? priced;
    private DateOnly? promised;
    private string note = "";
    private string? fault;
    private string? caution;
    private bool fromStock;
    private bool hasNewer;

    /// <summary>The store.</summary>
    [Inject]
    public required BenchStore Store { get; set; }

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private bool IsOffered =>
        Work.Order.State is OrderState.Enquiry or OrderState.Quoted || Work.Order.IsOpen;

    private List<QuotedGood> Missing =>
        [.. options.SelectMany(o => o.Missing).DistinctBy(g => g.Good).OrderBy(g => g.Name)];

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(priced, Work.Order))
        {
            return;
        }

        heads = (await Store.DesignsAsync()).ToDictionary(d => d.Id, d => d.Version);
        hasNewer = Work.Order.Items.Any(i =>
            i.Design is { } design && heads.TryGetValue(design, out var head) && head != i.Version
        );
        var isFirst = priced is null || priced.IsOpen != Work.Order.IsOpen;
        priced = Work.Order;
        if (isFirst)
        {
            forms =
                Work.Order.IsOpen && Work.Option is { } taken
                    ? [Again(taken)]
                    : OptionForm.Usual(Work.Order.Items.Any(i => i.Design is not null));
        }

        promised ??= Work.Order.Promised;
        await PriceAsync();
    }

    /// <summary>A change order begins with what was agreed, on the designs as they are now.</summary>
    private OptionForm Again(QuoteOption taken) =>
        new()
        {
            Name = taken.Name,
            Kind = OptionKind.AsOrdered,
            IsCurrent = hasNewer,
            HasAnimals = taken.HasAnimals,
            Visits = taken.Visits > 0 ? taken.Visits.ToString(CultureInfo.InvariantCulture) : "",
            Changes = "Changed after acceptance.",
        };

    private async Task PriceAsync()
    {
        (options, change, fault) = ([], null, null);
        if (!IsOffered || Work.Order.Items.Count == 0)
        {
            return;
        }

        var basis = Work.Basis(fromStock);
        var made = new List<PricedOption>();
        foreach (var form in forms)
        {
            fault = form.Refusal;
            if (fault is not null)
            {
                return;
            }

            var (items, trouble) = await Work.PricedAsync(
                form.IsCurrent ? Work.Order.Items.Select(Current) : Work.Order.Items
            );
            var wish = form.As(items);
            fault = trouble ?? QuoteMaker.Refusal(basis, wish);
            if (fault is not null)
            {
                return;
            }

            made.Add(QuoteMaker.Price(basis, wish));
        }

        options = made;
        if (Work.Option is { } agreed && Work.Order.IsOpen)
        {
            change = OrderChange.Between((agreed, Work.Order.Promised), (made[0].Option, promised));
        }
    }

    private OrderItem Current(OrderItem item) =>
        item.Design is { } design && heads.TryGetValue(design, out var head) && head != item.Version
            ? item with
            {
                Version = head,
                Harm = null,
            }
            : item;

    private Task StockAsync(ChangeEventArgs chosen)
    {
        fromStock = chosen.Value is true;
        return PriceAsync();
    }

    private Task AddAsync()
    {
        forms.Add(
            new()
            {
                Name = FormattableString.Invariant($"Option {forms.Count + 1}"),
                Kind = OptionKind.AsOrdered,
            }
        );
        return PriceAsync();
    }

    private Task RemoveAsync(OptionForm form)
    {
        forms.Remove(form);
        return PriceAsync();
    }

    private async Task CautionAsync()
    {
        caution =
            promised is { } day && await Work.EarliestAsync() is { } earliest
                ? PromisedDay.Refusal(day, Work.Today, earliest) ?? PromisedDay.Caution(day, earliest)
                : null;
        await PriceAsync();
    }

    private async Task SendAsync()
    {
        var head = Work.Head(note.Trim()) with
        {
            Promised = promised,
            Replaces = Work.Quotes.Count > 0 ? Work.Quotes[0] : null,
        };
        var all = options.ConvertAll(o => o.Option);
        var refusal = promised is { } day
            ? PromisedDay.Refusal(day, Work.Today, await Work.EarliestAsync())
            : null;
        refusal ??= OrderQuotes.Refusal(Work.Order, head, all);
        if (refusal is not null)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var words = change is not null
            ? $"Change offered: {change.Words}"
            : $"Quote sent: {string.Join(", ", all.Select(o => $"{o.Name} {OrderText.Money(o.Gross)}"))}.";
        var order = OrderQuotes.Sent(Work.Order, head, await Work.ActAsync(words));
        await OnDone.InvokeAsync(
            await Work.KeepAsync(order, words, c =>
                c.Issue(order.Number, n => OrderQuotes.Make(n, order, head, all))
            )
        );
    }
}
