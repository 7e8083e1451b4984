using System.Collections.Immutable;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;

namespace Litterfall.Workshop.Quoting;

/// <summary>One line of an order, ready to be priced.</summary>
/// <param name="Item">The line, as it is offered in this option.</param>
/// <param name="Numbers">Numbers of the frozen version; null for loose goods.</param>
public sealed record PricedItem(OrderItem Item, DesignNumbers? Numbers);

/// <summary>One of the choices a customer shall have.</summary>
/// <param name="Name">Name, such as "Planted".</param>
public sealed record OptionWish(string Name)
{
    /// <summary>What is different; written by the program where it is left empty.</summary>
    public string Changes { get; init; } = "";

    /// <summary>What animals and customer gain; written by the program where it is left empty.</summary>
    public string Gains { get; init; } = "";

    /// <summary>What is delivered.</summary>
    public ImmutableArray<PricedItem> Items { get; init; } = [];

    /// <summary>True where the animals of the designs are sold with them.</summary>
    public bool HasAnimals { get; init; }

    /// <summary>Visits after delivery that are in the price.</summary>
    public int Visits { get; init; }

    /// <summary>Price as the shop shows it, with or without tax; null for that of the margin.</summary>
    public decimal? Price { get; init; }

    /// <summary>Margin, percent; null for that of the shop.</summary>
    public decimal? Margin { get; init; }

    /// <summary>Packaging, net; null for that of the shop.</summary>
    public decimal? Packaging { get; init; }

    /// <summary>Shipping, net; null for that of the shop.</summary>
    public decimal? Shipping { get; init; }
}
