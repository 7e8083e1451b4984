using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>One line of a price as the customer reads it.</summary>
/// <param name="Text">What it is for.</param>
/// <param name="Amount">How many.</param>
/// <param name="Net">Net price of all.</param>
public sealed record QuoteLine(string Text, double Amount, decimal Net);

/// <summary>What an offer costs the workshop; not printed for customers.</summary>
/// <param name="Materials">Goods, waste in.</param>
/// <param name="Labor">Work.</param>
/// <param name="Overhead">Overhead.</param>
/// <param name="Live">Plants, animals and cultures.</param>
/// <param name="Packaging">Packaging.</param>
/// <param name="Shipping">Shipping.</param>
/// <param name="Reserve">Reserve for replacements.</param>
/// <param name="Fee">Fee of the payment at the charged price.</param>
public sealed record CostParts(
    decimal Materials,
    decimal Labor,
    decimal Overhead,
    decimal Live,
    decimal Packaging,
    decimal Shipping,
    decimal Reserve,
    decimal Fee
)
{
    /// <summary>All but the fee.</summary>
    public decimal Total => Materials + Labor + Overhead + Live + Packaging + Shipping + Reserve;
}

/// <summary>A good that an option takes, as it was counted and priced on the day.</summary>
/// <param name="Good">Key of the good.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Amount">How much goes in.</param>
/// <param name="Cost">What it costs, net, not rounded; null where the workshop has no price.</param>
public sealed record QuotedGood(string Good, string Name, StockUnit Unit, double Amount, decimal? Cost)
{
    /// <summary>Where its price is from, or why there is none.</summary>
    public string Note { get; init; } = "";

    /// <summary>True for what lives.</summary>
    public bool IsLive { get; init; }
}

/// <summary>One of the choices a customer has.</summary>
public sealed record QuoteOption
{
    /// <summary>Name, such as "kit" or "planted".</summary>
    public required string Name { get; init; }

    /// <summary>What is different, in a sentence or two.</summary>
    public string Changes { get; init; } = "";

    /// <summary>What animals and customer gain.</summary>
    public string Gains { get; init; } = "";

    /// <summary>What it holds.</summary>
    public required Seq<QuoteLine> Lines { get; init; }

    /// <summary>Price before tax, rounded.</summary>
    public required decimal Net { get; init; }

    /// <summary>Tax.</summary>
    public required decimal Tax { get; init; }

    /// <summary>Price with tax.</summary>
    public required decimal Gross { get; init; }

    /// <summary>What it costs the workshop.</summary>
    public required CostParts Cost { get; init; }

    /// <summary>Working minutes it takes, by key of the stage.</summary>
    public Seq<WorkedMinutes> Minutes { get; init; } = [];

    /// <summary>Visits after delivery that are in the price.</summary>
    public int Visits { get; init; }

    /// <summary>True where the animals of the designs are sold with them.</summary>
    public bool HasAnimals { get; init; }

    /// <summary>What is built and delivered, each design with its frozen version.</summary>
    public Seq<OrderItem> Items { get; init; } = [];

    /// <summary>Goods that go into it; not printed for customers.</summary>
    public Seq<QuotedGood> Goods { get; init; } = [];
}

/// <summary>Working minutes of one stage.</summary>
/// <param name="Stage">Key of the stage.</param>
/// <param name="Minutes">Minutes.</param>
public sealed record WorkedMinutes(string Stage, double Minutes);

/// <summary>What was offered to a customer; once sent it is never changed, only replaced.</summary>
public sealed record Quote
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Number as printed.</summary>
    public required string Name { get; init; }

    /// <summary>Order it is for.</summary>
    public required int Order { get; init; }

    /// <summary>Number of the quote it replaces; null for the first.</summary>
    public int? Replaces { get; init; }

    /// <summary>Day it was made.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Last day it holds.</summary>
    public required DateOnly ValidUntil { get; init; }

    /// <summary>Day promised for delivery; null where nothing is promised.</summary>
    public DateOnly? Promised { get; init; }

    /// <summary>Workshop as it stood then.</summary>
    public required ShopTerms Shop { get; init; }

    /// <summary>Customer as it stood then.</summary>
    public required Customer Customer { get; init; }

    /// <summary>Choices.</summary>
    public required Seq<QuoteOption> Options { get; init; }

    /// <summary>Design that is pictured; null for none.</summary>
    public Guid? Design { get; init; }

    /// <summary>Version that is pictured.</summary>
    public int Version { get; init; }

    /// <summary>What the customer is told beside.</summary>
    public string Note { get; init; } = "";
}
