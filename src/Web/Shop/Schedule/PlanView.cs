using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>The kept plan with what pages show beside it; nothing of it is computed anew.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="PlanVersion">Its version; 0 where none is kept.</param>
/// <param name="Calendar">Days of the workshop.</param>
/// <param name="CalendarVersion">Its version; 0 where none is kept.</param>
/// <param name="Today">Today.</param>
public sealed record PlanView(
    ShopPlan Plan,
    int PlanVersion,
    ShopCalendar Calendar,
    int CalendarVersion,
    DateOnly Today
)
{
    /// <summary>Figures of the workshop.</summary>
    public required ShopTerms Terms { get; init; }

    /// <summary>All orders.</summary>
    public required IReadOnlyList<Order> Orders { get; init; }

    /// <summary>Names of customers by key.</summary>
    public required IReadOnlyDictionary<string, Customer> Customers { get; init; }

    /// <summary>"LD-201".</summary>
    public string Name(int order) => FormattableString.Invariant($"{Terms.OrderPrefix}{order}");

    /// <summary>The customer of an order, as people call it; empty where nobody knows.</summary>
    public string Customer(int order) =>
        Orders.FirstOrDefault(o => o.Number == order) is { } found
        && Customers.TryGetValue(found.Customer, out var customer)
            ? customer.Name
            : "";

    /// <summary>Whether a task was done.</summary>
    public DoneTask? Done(string key) => Plan.Done.LastOrDefault(d => d.Key == key);

    /// <summary>Who works here; nobody where nobody is entered.</summary>
    public IEnumerable<string> People => Calendar.Workers.Select(w => w.Name);
}
