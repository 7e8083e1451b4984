using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Pricing;

namespace Litterfall.Workshop.Quoting;

/// <summary>An option with its price and all that it rests on.</summary>
/// <param name="Option">As it goes into a quote.</param>
/// <param name="Sheet">The price, before it is rounded.</param>
/// <param name="Missing">Goods without a price, by name; the price holds nothing for them.</param>
/// <param name="Moves">Which numbers move the margin most, in sentences.</param>
public sealed record PricedOption(
    QuoteOption Option,
    CostSheet Sheet,
    Seq<QuotedGood> Missing,
    Seq<string> Moves
);
