using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>Which state follows which: own rules, checked against a list written beside.</summary>
public sealed class OrderStepsTests
{
    private static readonly (OrderState From, OrderState To)[] Allowed =
    [
        (OrderState.Enquiry, OrderState.Quoted),
        (OrderState.Enquiry, OrderState.Lost),
        (OrderState.Quoted, OrderState.Quoted),
        (OrderState.Quoted, OrderState.Accepted),
        (OrderState.Quoted, OrderState.Lost),
        (OrderState.Accepted, OrderState.InWork),
        (OrderState.Accepted, OrderState.Lost),
        (OrderState.InWork, OrderState.Accepted),
        (OrderState.InWork, OrderState.Ready),
        (OrderState.InWork, OrderState.Lost),
        (OrderState.Ready, OrderState.InWork),
        (OrderState.Ready, OrderState.Delivered),
        (OrderState.Ready, OrderState.Lost),
        (OrderState.Delivered, OrderState.Closed),
        (OrderState.Lost, OrderState.Enquiry),
    ];

    [Fact]
    public void Each_pair_of_states_is_allowed_or_refused_in_one_sentence()
    {
        foreach (var from in Enum.GetValues<OrderState>())
        {
            foreach (var to in Enum.GetValues<OrderState>())
            {
                var refusal = OrderSteps.Refusal(
                    OrderExamples.Enquiry() with
                    {
                        State = from,
                    },
                    to,
                    "too dear"
                );
                if (Allowed.Contains((from, to)))
                {
                    Assert.Null(refusal);
                }
                else
                {
                    Assert.NotNull(refusal);
                    Assert.StartsWith("Order 7 ", refusal, StringComparison.Ordinal);
                    Assert.EndsWith(".", refusal, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public void A_lost_order_needs_its_reason_and_keeps_it_in_its_history()
    {
        var order = OrderExamples.Enquiry();
        Assert.NotNull(OrderSteps.Refusal(order, OrderState.Lost, "  "));
        var lost = OrderSteps.Go(
            order,
            OrderState.Lost,
            OrderExamples.Act with
            {
                Note = "bought elsewhere",
            }
        );
        Assert.Equal(OrderState.Lost, lost.State);
        Assert.Equal(("Ilse", "bought elsewhere"), (lost.History[^1].Who, lost.History[^1].Note));
        Assert.Equal(OrderState.Lost, lost.History[^1].State);
    }

    [Fact]
    public void What_would_harm_an_animal_is_neither_begun_nor_handed_over()
    {
        var order = OrderExamples.Accepted(7, OrderExamples.Today.AddDays(30)) with
        {
            Items =
            [
                new OrderItem
                {
                    Kind = OrderItemKind.Build,
                    Name = "attic tank",
                    Amount = 1,
                    Harm = "In July it is 31 °C by day.",
                },
            ],
        };
        var refusal = OrderSteps.Refusal(order, OrderState.InWork);
        Assert.Contains("attic tank would harm its animals", refusal, StringComparison.Ordinal);
        Assert.NotNull(OrderSteps.Refusal(order with { State = OrderState.Ready }, OrderState.Delivered));
        Assert.Null(OrderSteps.Refusal(order, OrderState.Lost, "no cooling"));
        var unseen = order with { Items = [order.Items[0] with { Harm = null, Design = Guid.Empty }] };
        Assert.Contains(
            "not checked yet",
            OrderSteps.Refusal(unseen, OrderState.InWork),
            StringComparison.Ordinal
        );
        var seen = order with { Items = [unseen.Items[0] with { Harm = "" }] };
        Assert.Null(OrderSteps.Refusal(seen, OrderState.InWork));
    }

    [Fact]
    public void An_order_is_closed_when_it_is_paid()
    {
        var order = OrderExamples.Accepted(7, OrderExamples.Today) with { State = OrderState.Delivered };
        Assert.Contains("119.00", OrderSteps.Refusal(order, OrderState.Closed), StringComparison.Ordinal);
        var paid = order with { Payments = [new Payment(OrderExamples.Today, 119, "", "Tobin")] };
        Assert.Null(OrderSteps.Refusal(paid, OrderState.Closed));
    }
}
