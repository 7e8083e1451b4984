using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;

namespace Litterfall.Workshop.Pricing;

/// <summary>
/// The price of one piece and what it leaves. Margin is profit in percent of the price without tax; mark-up
/// is profit in percent of all that is spent, fee included.
/// </summary>
public sealed class CostSheet
{
    private CostSheet(CostCase asked, CostParts cost) => (Case, Cost) = (asked, cost);

    /// <summary>What was asked.</summary>
    public CostCase Case { get; }

    /// <summary>The cost.</summary>
    public CostParts Cost { get; }

    /// <summary>Price without tax, currency units, not rounded.</summary>
    public decimal Net { get; private init; }

    /// <summary>Tax on it, not rounded.</summary>
    public decimal Tax => Gross - Net;

    /// <summary>Price with tax, not rounded.</summary>
    public decimal Gross { get; private init; }

    /// <summary>The bill, to the cent.</summary>
    public TaxedSum Charged { get; private init; }

    /// <summary>Price with tax in whole cents.</summary>
    public long ChargedCents => (long)(Charged.Gross * 100m);

    /// <summary>What the charged price brings without tax, not rounded.</summary>
    public decimal NetCharged =>
        Case.PricesIncludeTax || Case.Charge is not null ? Charged.Gross / (1m + Case.TaxShare) : Charged.Net;

    /// <summary>Fee on the charged price, not rounded.</summary>
    public decimal Fee => FeeOn(NetCharged, Charged.Gross);

    /// <summary>What is left of the charged price after tax, fee and cost.</summary>
    public decimal Profit => NetCharged - Fee - Cost.Total;

    /// <summary>Profit in percent of the price without tax; null without a price.</summary>
    public decimal? MarginPercent => NetCharged > 0m ? 100m * Profit / NetCharged : null;

    /// <summary>Profit in percent of cost and fee; null where nothing is spent.</summary>
    public decimal? MarkUpPercent => Spent > 0m ? 100m * Profit / Spent : null;

    /// <summary>Price without tax that leaves nothing: below it money is lost.</summary>
    public decimal? FloorNet => NetAt(Case, Cost, 0m);

    /// <summary>
    /// What one piece at <see cref="Net"/> brings toward costs that are there anyway.
    /// </summary>
    public decimal Contribution => Net - Cost.Variable - FeeOn(Net, Gross);

    /// <summary>Pieces that pay the fixed costs; null when not asked or when no number does.</summary>
    public decimal? BreakEvenUnits =>
        Case.FixedCosts is { } costs && Contribution > 0m ? Math.Ceiling(costs / Contribution) : null;

    /// <summary>
    /// Chance of loss at which nothing is left at <see cref="Net"/>, percent; null for none.
    /// </summary>
    public decimal? BreakingChancePercent =>
        LossReserve.BreakingChancePercent(Case, Net - FeeOn(Net, Gross) - (Cost.Total - Cost.Reserve));

    /// <summary>
    /// The usual slip: the wanted margin put on top of the cost. Price without tax and the margin it really
    /// is; null without a margin or a cost.
    /// </summary>
    public (decimal Net, decimal MarginPercent)? MarkUpSlip
    {
        get
        {
            var spent = Cost.Total + Case.FeeFixed;
            if (Case.MarginPercent is not { } margin || spent <= 0m)
            {
                return null;
            }

            var net = spent * (1m + (margin / 100m));
            return (net, 100m * (1m - Case.FeeShare - (spent / net)));
        }
    }

    private decimal Spent => Cost.Total + Fee;

    /// <summary>Prices a case.</summary>
    /// <param name="asked">The case; either a charge, or a margin that leaves room.</param>
    /// <exception cref="ArgumentException">Margin and fee leave nothing for the costs.</exception>
    public static CostSheet From(CostCase asked)
    {
        if (!asked.LeavesRoom)
        {
            throw new ArgumentException("margin and fees together take the whole price", nameof(asked));
        }

        var cost = CostParts.Sum(asked);
        if (asked.Charge is { } charge)
        {
            var cents = RoundingRule.Cent.Round(charge);
            var bill = new TaxRule(asked.TaxPercent, true, RoundingRule.Cent);
            return new(asked, cost)
            {
                Gross = charge,
                Net = charge / (1m + asked.TaxShare),
                Charged = bill.Sum([cents], TaxRounding.ByTotal),
            };
        }

        var net = NetAt(asked, cost, (asked.MarginPercent ?? 0m) / 100m)!.Value;
        return new(asked, cost)
        {
            Net = net,
            Gross = net * (1m + asked.TaxShare),
            Charged = asked.Tax.Charge(net),
        };
    }

    /// <summary>
    /// How the price without tax moves when one input is a fifth lower or higher, widest first. The margin
    /// held is the wanted one, else the one that the charge leaves.
    /// </summary>
    public Seq<SensitivityRow> Sensitivity()
    {
        var margin = Case.MarginPercent / 100m ?? MarginPercent / 100m ?? 0m;
        return NetAt(Case, Cost, margin) is { } price and > 0m
            ? PriceSensitivity.Rows(Case, price, varied => NetAt(varied, CostParts.Sum(varied), margin))
            : [];
    }

    /// <summary>
    /// What the charged price without tax is spent on, in parts that add up to it to the cent; the last is
    /// the profit, negative when money is lost.
    /// </summary>
    public Seq<(string Name, decimal Amount)> Breakdown()
    {
        var spent = Cost.Named.Append(("fee", Fee)).ToList();
        var sum = RoundingRule.Cent.Round(Spent);
        var cents = Shares.Split(sum, [.. spent.Select(s => s.Item2)], RoundingRule.Cent);
        return [.. spent.Select((s, i) => (s.Item1, cents[i])), ("profit", Charged.Net - sum)];
    }

    private decimal FeeOn(decimal net, decimal gross) =>
        Case.Fee is null
            ? 0m
            : (Case.Fee.Percent / 100m * (Case.Fee.IsOnGross ? gross : net)) + Case.Fee.Fixed;

    /// <summary>(C + f0) / (1 − m − f); null where margin and fee take all.</summary>
    private static decimal? NetAt(CostCase asked, CostParts cost, decimal margin)
    {
        var room = 1m - margin - asked.FeeShare;
        return room > 0m ? (cost.Total + asked.FeeFixed) / room : null;
    }
}
