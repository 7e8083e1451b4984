using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>How sums are rounded.</summary>
public enum SumRounding
{
    /// <summary>To the cent.</summary>
    Cent,

    /// <summary>To five cents.</summary>
    FiveCents,

    /// <summary>To whole units of the currency.</summary>
    Whole,
}

/// <summary>What a payment costs, and of what.</summary>
public enum PaymentFeeOn
{
    /// <summary>Of the price before tax.</summary>
    Net,

    /// <summary>Of the price with tax.</summary>
    Gross,
}

/// <summary>What working minutes of a stage grow with.</summary>
public enum LaborPer
{
    /// <summary>Once for an order.</summary>
    Order,

    /// <summary>For each box.</summary>
    Box,

    /// <summary>For each pane or part that is cut here.</summary>
    Cut,

    /// <summary>For each plant.</summary>
    Plant,

    /// <summary>For each liter of soil.</summary>
    Liter,

    /// <summary>For each square meter of background.</summary>
    BackgroundSquareMeter,
}

/// <summary>Working minutes of one stage.</summary>
/// <param name="Key">Own key.</param>
/// <param name="Name">As people call it: "plant and dress".</param>
/// <param name="Per">What the minutes grow with.</param>
/// <param name="Minutes">Minutes for one of that.</param>
public sealed record LaborStage(string Key, string Name, LaborPer Per, double Minutes)
{
    /// <summary>What kind of order has the stage.</summary>
    public LaborFor For { get; init; }
}

/// <summary>What kind of order a stage of work belongs to.</summary>
public enum LaborFor
{
    /// <summary>Every order.</summary>
    All,

    /// <summary>Boxed kits alone.</summary>
    Kits,

    /// <summary>Tanks that are built and planted here alone.</summary>
    Builds,

    /// <summary>Visits after delivery; the minutes count for each visit.</summary>
    Visits,
}

/// <summary>What stands on papers above and below, and the figures of every price.</summary>
public sealed record ShopTerms
{
    /// <summary>Key under which the one record is kept.</summary>
    public const string Key = "terms";

    /// <summary>Name of the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>Address, one line each.</summary>
    public Seq<string> Address { get; init; } = [];

    /// <summary>Name of the file of its sign; null for none.</summary>
    public string? Logo { get; init; }

    /// <summary>ISO 4217 code.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>Tax, percent; 0 for none.</summary>
    public decimal TaxPercent { get; init; }

    /// <summary>True where prices are shown with tax.</summary>
    public bool ShowsTaxIncluded { get; init; } = true;

    /// <summary>How prices are rounded.</summary>
    public SumRounding Rounding { get; init; }

    /// <summary>Deposit at acceptance, percent.</summary>
    public decimal DepositPercent { get; init; }

    /// <summary>Days a quote holds.</summary>
    public int QuoteDays { get; init; } = 30;

    /// <summary>Wage of an hour with what comes on top.</summary>
    public decimal Wage { get; init; }

    /// <summary>Overhead, percent of materials and labor.</summary>
    public decimal OverheadPercent { get; init; }

    /// <summary>Overhead of an hour of work.</summary>
    public decimal OverheadPerHour { get; init; }

    /// <summary>Waste of bulk goods, percent, beyond what lists of parts count already.</summary>
    public decimal WastePercent { get; init; }

    /// <summary>Margin on the net price, retail, percent.</summary>
    public decimal RetailMargin { get; init; }

    /// <summary>Margin on the net price, wholesale, percent.</summary>
    public decimal WholesaleMargin { get; init; }

    /// <summary>Share of a payment that it costs, percent.</summary>
    public decimal FeePercent { get; init; }

    /// <summary>What each payment costs besides.</summary>
    public decimal FeeFixed { get; init; }

    /// <summary>What the share is taken of.</summary>
    public PaymentFeeOn FeeOn { get; init; } = PaymentFeeOn.Gross;

    /// <summary>Chance that a live parcel must be replaced, percent, before own history counts.</summary>
    public decimal LossPercent { get; init; } = 5;

    /// <summary>True where a replacement is guaranteed again.</summary>
    public bool IsReplacedAgain { get; init; }

    /// <summary>Box, cups and filling of one order.</summary>
    public decimal Packaging { get; init; }

    /// <summary>Carrier or own trip for one order.</summary>
    public decimal Shipping { get; init; }

    /// <summary>Fixed cost of a month, for the break-even.</summary>
    public decimal FixedPerMonth { get; init; }

    /// <summary>Letters before the numbers of quotes, invoices and delivery notes.</summary>
    public string QuotePrefix { get; init; } = "Q-";

    /// <summary>Letters before the numbers of invoices.</summary>
    public string InvoicePrefix { get; init; } = "I-";

    /// <summary>Letters before the numbers of credits.</summary>
    public string CreditPrefix { get; init; } = "C-";

    /// <summary>Days in which an invoice is to be paid; 0 for at once.</summary>
    public int PayDays { get; init; } = 14;

    /// <summary>Letters before the numbers of delivery notes.</summary>
    public string DeliveryPrefix { get; init; } = "D-";

    /// <summary>Letters before the numbers of orders.</summary>
    public string OrderPrefix { get; init; } = "";

    /// <summary>What a customer agrees to, a paragraph each.</summary>
    public Seq<string> Terms { get; init; } = [];

    /// <summary>Working minutes by stage.</summary>
    public Seq<LaborStage> Labor { get; init; } = [];

    /// <summary>Soil tub, liters; the level it is filled to is <see cref="TubFillPercent"/>.</summary>
    public double TubLiters { get; init; } = 60;

    /// <summary>How far a tub is filled, percent.</summary>
    public double TubFillPercent { get; init; } = 80;

    /// <summary>Most that one person lifts, kg.</summary>
    public double LiftKilograms { get; init; } = 20;

    /// <summary>Measuring jug, liters.</summary>
    public double JugLiters { get; init; } = 0.5;
}
