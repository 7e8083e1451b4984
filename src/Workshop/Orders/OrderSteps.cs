using System.Globalization;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>Who does something to an order, and when.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Who">Who.</param>
/// <param name="Note">In words.</param>
public readonly record struct OrderAct(DateTime At, string Who, string Note);

/// <summary>Which state of an order may follow which, from the first message to the last payment.</summary>
public static class OrderSteps
{
    /// <summary>The states an order may go to by hand, the usual one first.</summary>
    /// <param name="state">Its state.</param>
    public static IReadOnlyList<OrderState> After(OrderState state) =>
        state switch
        {
            OrderState.Enquiry => [OrderState.Quoted, OrderState.Lost],
            OrderState.Quoted => [OrderState.Accepted, OrderState.Quoted, OrderState.Lost],
            OrderState.Accepted => [OrderState.InWork, OrderState.Lost],
            OrderState.InWork => [OrderState.Ready, OrderState.Accepted, OrderState.Lost],
            OrderState.Ready => [OrderState.Delivered, OrderState.InWork, OrderState.Lost],
            OrderState.Delivered => [OrderState.Closed],
            OrderState.Lost => [OrderState.Enquiry],
            _ => [],
        };

    /// <summary>Why an order cannot go to a state, in one sentence; null where it can.</summary>
    /// <param name="order">The order.</param>
    /// <param name="to">The state.</param>
    /// <param name="note">What is said about it; a lost order needs its reason.</param>
    public static string? Refusal(Order order, OrderState to, string note = "") =>
        !After(order.State).Contains(to) ? Unordered(order, to)
        : to == OrderState.Lost && string.IsNullOrWhiteSpace(note)
            ? "Say in a few words why the order was lost: the reasons add up to what to change."
        : to is OrderState.InWork or OrderState.Ready or OrderState.Delivered && Harmful(order) is { } item
            ? $"{item.Name} would harm its animals: {item.Harm} Fix the design and send a change order first."
        : to is OrderState.InWork or OrderState.Ready or OrderState.Delivered && Unseen(order) is { } unseen
            ? $"{unseen.Name} is not checked yet for what would harm its animals. Its order does that in a "
                + "minute; try again then."
        : to == OrderState.Closed && Left(order) is > 0 and { } left
            ? $"{Money(left)} of {Called(order)} is still to be paid. Record the payment first."
        : null;

    /// <summary>The order in another state.</summary>
    /// <param name="order">The order.</param>
    /// <param name="to">The state; one that <see cref="Refusal"/> lets pass.</param>
    /// <param name="act">Who, when, and what is said about it.</param>
    public static Order Go(Order order, OrderState to, OrderAct act) =>
        order with
        {
            State = to,
            History = [.. order.History, new OrderEvent(act.At, act.Who, to, act.Note)],
        };

    /// <summary>The order with something told in its history, in the state it is in.</summary>
    public static Order Told(Order order, OrderAct act) => Go(order, order.State, act);

    /// <summary>The state as people call it.</summary>
    public static string Name(OrderState state) => state == OrderState.InWork ? "In work" : state.ToString();

    /// <summary>What the button says that brings an order into a state.</summary>
    /// <param name="from">The state it is in.</param>
    /// <param name="to">The state.</param>
    public static string Verb(OrderState from, OrderState to) =>
        to switch
        {
            OrderState.InWork when from == OrderState.Ready => "Take back into work",
            OrderState.InWork => "Start work",
            OrderState.Ready => "Mark ready",
            OrderState.Delivered => "Record delivery",
            OrderState.Closed => "Close",
            OrderState.Lost => "Record as lost",
            OrderState.Accepted when from == OrderState.InWork => "Stop work",
            OrderState.Enquiry => "Open again",
            _ => Name(to),
        };

    private static string Unordered(Order order, OrderState to)
    {
        var name = Called(order);
        return (order.State, to) switch
        {
            (var state, _) when state == to => $"{name} is {Name(to).ToLowerInvariant()} already.",
            (OrderState.Closed, _) =>
                $"{name} is closed. Take its invoice back with a credit, or make a new order.",
            (OrderState.Lost, _) => $"{name} is lost. Open it again first.",
            (OrderState.Delivered, OrderState.Lost) =>
                $"{name} was delivered. Take its invoice back with a credit instead.",
            (OrderState.Enquiry, OrderState.Accepted) =>
                $"{name} has no quote yet. Send a quote, then record which option the customer took.",
            (OrderState.Enquiry or OrderState.Quoted, _) =>
                $"{name} is not accepted yet. Record which option the customer took first.",
            (_, OrderState.Quoted) =>
                $"{name} is accepted already. What changes now goes into a change order.",
            (OrderState.Accepted, OrderState.Ready or OrderState.Delivered) =>
                $"{name} is not in work yet. Start the work first.",
            (OrderState.InWork, OrderState.Delivered) => $"{name} is not ready yet. Mark it ready first.",
            (_, OrderState.Closed) => $"{name} is not delivered yet. Record the delivery first.",
            _ => $"{name} cannot go from {Name(order.State)} to {Name(to)}.",
        };
    }

    private static OrderItem? Harmful(Order order) =>
        order.Items.FirstOrDefault(i => !string.IsNullOrEmpty(i.Harm));

    /// <summary>Goods have no design that could be looked at.</summary>
    private static OrderItem? Unseen(Order order) =>
        order.Items.FirstOrDefault(i => i is { Design: not null, Harm: null });

    private static decimal Left(Order order) => (order.Gross ?? 0) - order.Paid;

    private static string Called(Order order) =>
        string.Create(CultureInfo.InvariantCulture, $"Order {order.Number}");

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
