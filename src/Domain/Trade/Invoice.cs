using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>What kind of paper was issued.</summary>
public enum IssuedKind
{
    /// <summary>Quote.</summary>
    Quote,

    /// <summary>Invoice.</summary>
    Invoice,

    /// <summary>Credit that takes an invoice back, whole or in part.</summary>
    Credit,

    /// <summary>Delivery note.</summary>
    Delivery,
}

/// <summary>An invoice, a credit or a delivery note; never changed once issued.</summary>
public sealed record Invoice
{
    /// <summary>What kind.</summary>
    public required IssuedKind Kind { get; init; }

    /// <summary>Running number within its kind; no number is left out or used twice.</summary>
    public required int Number { get; init; }

    /// <summary>Number as printed.</summary>
    public required string Name { get; init; }

    /// <summary>Order it is for.</summary>
    public required int Order { get; init; }

    /// <summary>Day.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Workshop as it stood then.</summary>
    public required ShopTerms Shop { get; init; }

    /// <summary>Customer as it stood then.</summary>
    public required Customer Customer { get; init; }

    /// <summary>Lines.</summary>
    public required Seq<QuoteLine> Lines { get; init; }

    /// <summary>Net, tax and gross; 0 on delivery notes.</summary>
    public decimal Net { get; init; }

    /// <summary>Tax.</summary>
    public decimal Tax { get; init; }

    /// <summary>With tax.</summary>
    public decimal Gross { get; init; }

    /// <summary>What was paid before, with tax.</summary>
    public decimal Paid { get; init; }

    /// <summary>Day by which the rest is asked for; null where nothing is.</summary>
    public DateOnly? PayBy { get; init; }

    /// <summary>What is left to pay; below 0 where too much was paid.</summary>
    public decimal Due => Gross - Paid;

    /// <summary>Name of the invoice that a credit takes back; null else.</summary>
    public string? TakesBack { get; init; }

    /// <summary>What the customer is told beside.</summary>
    public string Note { get; init; } = "";
}
