using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;

namespace Litterfall.Workshop.Pricing;

/// <summary>Hours of work at one wage.</summary>
/// <param name="Hours">Hours on the bench.</param>
/// <param name="WagePerHour">Wage with on-costs, currency units an hour.</param>
public sealed record LaborLine(decimal Hours, decimal WagePerHour);

/// <summary>What the seller answers for when live goods do not arrive alive.</summary>
/// <param name="ChancePercent">Chance that a shipment must be replaced, percent.</param>
/// <param name="IsReplacedAgain">True when a lost replacement is replaced too, and so on.</param>
/// <param name="ReplacementCost">
/// Cost of one replacement, currency units; null means live goods, packaging and shipping once more.
/// </param>
public sealed record LossPromise(decimal ChancePercent, bool IsReplacedAgain, decimal? ReplacementCost);

/// <summary>What a payment or a market place takes.</summary>
/// <param name="Percent">Percent of the price.</param>
/// <param name="Fixed">For each payment, currency units.</param>
/// <param name="IsOnGross">True when the percent counts on the price with tax.</param>
public sealed record FeeRule(decimal Percent, decimal Fixed, bool IsOnGross);

/// <summary>
/// What one piece costs to make and how it is to be priced. All amounts are in units of one currency and
/// none is negative.
/// </summary>
public sealed record CostCase
{
    /// <summary>Currency of all amounts, three letters; null where nothing depends on it.</summary>
    public string? Currency { get; init; }

    /// <summary>Goods that go into it, before waste.</summary>
    public decimal Materials { get; init; }

    /// <summary>Goods lost besides, percent of <see cref="Materials"/>.</summary>
    public decimal WastePercent { get; init; }

    /// <summary>Work by wage.</summary>
    public Seq<LaborLine> Labor { get; init; } = [];

    /// <summary>Rent, power, tools and the like for each hour of work.</summary>
    public decimal OverheadPerHour { get; init; }

    /// <summary>The same as a share of materials with waste and labor, percent.</summary>
    public decimal OverheadPercent { get; init; }

    /// <summary>Use of machines.</summary>
    public decimal Machine { get; init; }

    /// <summary>Plants and animals at the price of replacing them.</summary>
    public decimal Live { get; init; }

    /// <summary>Box, padding, packs of heat or cold.</summary>
    public decimal Packaging { get; init; }

    /// <summary>Carriage.</summary>
    public decimal Shipping { get; init; }

    /// <summary>The promise of replacement; null for none.</summary>
    public LossPromise? Loss { get; init; }

    /// <summary>The payment fee; null for none.</summary>
    public FeeRule? Fee { get; init; }

    /// <summary>
    /// Wanted profit, percent of the price without tax; null where only a charge is judged.
    /// </summary>
    public decimal? MarginPercent { get; init; }

    /// <summary>Rate of tax, percent.</summary>
    public decimal TaxPercent { get; init; }

    /// <summary>True when the prices shown to customers hold the tax.</summary>
    public bool PricesIncludeTax { get; init; } = true;

    /// <summary>Step of the price that is shown.</summary>
    public RoundingRule Rounding { get; init; } = RoundingRule.Cent;

    /// <summary>A price with tax whose margin is asked; null to look for the price of the margin.</summary>
    public decimal? Charge { get; init; }

    /// <summary>Costs of a period that do not depend on the number of pieces; null for not asked.</summary>
    public decimal? FixedCosts { get; init; }

    /// <summary>All hours of work.</summary>
    public decimal Hours => Labor.Sum(l => l.Hours);

    /// <summary>Share of tax on the price without it.</summary>
    public decimal TaxShare => TaxPercent / 100m;

    /// <summary>The rule of tax and rounding.</summary>
    public TaxRule Tax => new(TaxPercent, PricesIncludeTax, Rounding);

    /// <summary>Share of the price without tax that the fee takes, its fixed part aside.</summary>
    public decimal FeeShare => Fee is null ? 0m : Fee.Percent / 100m * (Fee.IsOnGross ? 1m + TaxShare : 1m);

    /// <summary>Fixed part of the fee, currency units.</summary>
    public decimal FeeFixed => Fee?.Fixed ?? 0m;

    /// <summary>True when margin and fee leave something of the price for the costs.</summary>
    public bool LeavesRoom => 1m - ((MarginPercent ?? 0m) / 100m) - FeeShare > 0m;
}
