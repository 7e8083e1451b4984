using Litterfall.Domain.Sums;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Quoting;

/// <summary>Rules of money from the shop's terms.</summary>
public static class SumRules
{
    /// <summary>The rule of a rounding.</summary>
    public static RoundingRule From(SumRounding rounding) =>
        rounding switch
        {
            SumRounding.FiveCents => RoundingRule.FiveCents,
            SumRounding.Whole => RoundingRule.Whole,
            _ => RoundingRule.Cent,
        };

    /// <summary>A price as the shop shows it, with tax.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="shown">The price as it is shown.</param>
    public static decimal Gross(ShopTerms terms, decimal shown) =>
        terms.ShowsTaxIncluded ? shown : shown + RoundingRule.Cent.Round(shown * terms.TaxPercent / 100m);

    /// <summary>The deposit of an option, with tax, rounded as prices are.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="gross">Price with tax.</param>
    public static decimal Deposit(ShopTerms terms, decimal gross) =>
        Math.Min(gross, From(terms.Rounding).Round(gross * terms.DepositPercent / 100m));
}
