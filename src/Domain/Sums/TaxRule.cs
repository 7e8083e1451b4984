using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Sums;

/// <summary>Where tax is rounded.</summary>
public enum TaxRounding
{
    /// <summary>Once for each line; the lines then add up.</summary>
    ByLine,

    /// <summary>Once for the sum of all lines of one rate.</summary>
    ByTotal,
}

/// <summary>Sums of a bill, currency units.</summary>
/// <param name="Net">Without tax.</param>
/// <param name="Tax">The tax.</param>
public readonly record struct TaxedSum(decimal Net, decimal Tax)
{
    /// <summary>With tax.</summary>
    public decimal Gross => Net + Tax;
}

/// <summary>Tax of one rate on prices that hold it or do not.</summary>
/// <param name="Percent">The rate, percent of the price without tax.</param>
/// <param name="IsIncluded">True when the prices shown hold the tax.</param>
/// <param name="Rounding">To which step prices and tax are rounded.</param>
public sealed record TaxRule(decimal Percent, bool IsIncluded, RoundingRule Rounding)
{
    /// <summary>The rate as a share.</summary>
    public decimal Share => Percent / 100m;

    /// <summary>
    /// What one price is charged at. The price shown is rounded to the step of the rule, the tax to the cent:
    /// with tax included the price with tax is rounded and the tax taken out of it, else the price without
    /// tax is rounded and the tax put on top.
    /// </summary>
    /// <param name="net">Price without tax, not rounded.</param>
    public TaxedSum Charge(decimal net) =>
        IsIncluded ? Taken(Rounding.Round(net * (1m + Share))) : Added(Rounding.Round(net));

    /// <summary>The sum of lines; each holds a price as it is shown, that is with or without tax.</summary>
    /// <param name="lines">Prices as shown, already rounded.</param>
    /// <param name="rounding">Where tax is rounded.</param>
    public TaxedSum Sum(Seq<decimal> lines, TaxRounding rounding)
    {
        if (rounding == TaxRounding.ByTotal)
        {
            return Shown(lines.Sum());
        }

        var each = lines.Select(Shown).ToList();
        return new(each.Sum(l => l.Net), each.Sum(l => l.Tax));
    }

    private TaxedSum Shown(decimal price) => IsIncluded ? Taken(price) : Added(price);

    private TaxedSum Taken(decimal gross)
    {
        var tax = RoundingRule.Cent.Round(gross - (gross / (1m + Share)));
        return new(gross - tax, tax);
    }

    private TaxedSum Added(decimal net) => new(net, RoundingRule.Cent.Round(net * Share));
}
