using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Trade;

namespace Litterfall.Web.Shop.Terms;

/// <summary>The terms of the workshop as they are typed.</summary>
public sealed class TermsDraft
{
    private readonly ShopTerms basis;
    private readonly TypedText name;
    private readonly TypedText address;
    private readonly TypedText terms;
    private readonly TypedText currency;
    private readonly Dictionary<string, TypedText> numbers;

    /// <summary>Begins with what is kept.</summary>
    /// <param name="basis">What is kept.</param>
    public TermsDraft(ShopTerms basis)
    {
        this.basis = basis;
        name = new("Name of the workshop", basis.Name);
        address = new("Address, one line each", string.Join('\n', basis.Address)) { IsLong = true };
        terms = new("What a customer agrees to, a paragraph each", string.Join('\n', basis.Terms))
        {
            IsLong = true,
        };
        currency = new("Currency", basis.Currency) { Help = "Three letters, such as EUR or USD." };
        numbers = Numbers(basis);
        IsTaxIncluded = basis.ShowsTaxIncluded;
        Rounding = basis.Rounding;
        IsReplacedAgain = basis.IsReplacedAgain;
        FeeOn = basis.FeeOn;
        Groups =
        [
            ("Letterhead", [name, address, terms]),
            ("Money", [currency, At("tax"), At("deposit"), At("days"), At("pay")]),
            (
                "Price",
                [At("retail"), At("wholesale"), At("fee"), At("fixedfee"), At("packaging"), At("shipping")]
            ),
            ("Cost", [At("wage"), At("overhead"), At("overheadhour"), At("waste"), At("month"), At("loss")]),
            ("Mixing", [At("tub"), At("fill"), At("lift"), At("jug")]),
            ("Numbers on papers", [At("order"), At("quote"), At("invoice"), At("credit"), At("delivery")]),
        ];
    }

    /// <summary>Fields by group.</summary>
    public ImmutableArray<(string Name, ImmutableArray<TypedText> Fields)> Groups { get; }

    /// <summary>Prices are shown with tax.</summary>
    public bool IsTaxIncluded { get; set; }

    /// <summary>How prices are rounded.</summary>
    public SumRounding Rounding { get; set; }

    /// <summary>A replacement is guaranteed again.</summary>
    public bool IsReplacedAgain { get; set; }

    /// <summary>What the payment fee is taken of.</summary>
    public PaymentFeeOn FeeOn { get; set; }

    /// <summary>The terms as typed; null where a field has a fault.</summary>
    public ShopTerms? Read()
    {
        var typed = basis with
        {
            Name = name.Required(),
            Address = [.. address.Lines()],
            Terms = [.. terms.Lines()],
            Currency = Code(),
            TaxPercent = At("tax").Money(100),
            ShowsTaxIncluded = IsTaxIncluded,
            Rounding = Rounding,
            DepositPercent = At("deposit").Money(100),
            QuoteDays = At("days").Whole(1, 365),
            PayDays = At("pay").Whole(0, 365),
            Wage = At("wage").Money(10_000),
            OverheadPercent = At("overhead").Money(1000),
            OverheadPerHour = At("overheadhour").Money(10_000),
            WastePercent = At("waste").Money(100),
            RetailMargin = At("retail").Money(99),
            WholesaleMargin = At("wholesale").Money(99),
            FeePercent = At("fee").Money(99),
            FeeFixed = At("fixedfee").Money(),
            FeeOn = FeeOn,
            LossPercent = At("loss").Money(99),
            IsReplacedAgain = IsReplacedAgain,
            Packaging = At("packaging").Money(),
            Shipping = At("shipping").Money(),
            FixedPerMonth = At("month").Money(),
            TubLiters = At("tub").Number(1, 2000),
            TubFillPercent = At("fill").Number(10, 100),
            LiftKilograms = At("lift").Number(1, 100),
            JugLiters = At("jug").Number(0.05, 50),
            OrderPrefix = At("order").Free(),
            QuotePrefix = At("quote").Free(),
            InvoicePrefix = At("invoice").Free(),
            CreditPrefix = At("credit").Free(),
            DeliveryPrefix = At("delivery").Free(),
        };
        RefuseMargins(typed);
        return Groups.SelectMany(g => g.Fields).All(f => f.Fault is null) ? typed : null;
    }

    private TypedText At(string key) => numbers[key];

    private string Code()
    {
        var code = currency.Required().ToUpperInvariant();
        if (code.Length != 3 || !code.All(char.IsAsciiLetterUpper))
        {
            currency.Refuse("Enter the three letters of a currency, such as EUR.");
        }

        return code;
    }

    /// <summary>Margin and fee together leave nothing for the cost from 100 % on.</summary>
    private void RefuseMargins(ShopTerms typed)
    {
        var fee = typed.FeePercent * (FeeOn == PaymentFeeOn.Gross ? 1 + typed.TaxPercent / 100 : 1);
        foreach (
            var (field, margin) in new[]
            {
                (At("retail"), typed.RetailMargin),
                (At("wholesale"), typed.WholesaleMargin),
            }
        )
        {
            if (field.Fault is null && margin + fee >= 100)
            {
                field.Refuse(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Margin and payment fee come to {margin + fee:0.##} %; nothing is left for the cost."
                    )
                );
            }
        }
    }

    private static Dictionary<string, TypedText> Numbers(ShopTerms t) =>
        new(StringComparer.Ordinal)
        {
            ["tax"] = TypedText.ForMoney("Tax, %", t.TaxPercent),
            ["deposit"] = TypedText.ForMoney("Deposit at acceptance, %", t.DepositPercent),
            ["days"] = TypedText.ForNumber("A quote holds, days", t.QuoteDays),
            ["pay"] = TypedText.ForNumber("To be paid within, days", t.PayDays),
            ["retail"] = TypedText.ForMoney(
                "Margin, retail, %",
                t.RetailMargin,
                "Share of the net price, not a mark-up on the cost."
            ),
            ["wholesale"] = TypedText.ForMoney("Margin, wholesale, %", t.WholesaleMargin),
            ["fee"] = TypedText.ForMoney("Payment fee, %", t.FeePercent),
            ["fixedfee"] = TypedText.ForMoney("Payment fee, each", t.FeeFixed),
            ["packaging"] = TypedText.ForMoney("Packaging of one order", t.Packaging),
            ["shipping"] = TypedText.ForMoney("Shipping of one order", t.Shipping),
            ["wage"] = TypedText.ForMoney("Wage of an hour", t.Wage, "With what comes on top of it."),
            ["overhead"] = TypedText.ForMoney("Overhead, %", t.OverheadPercent, "Of materials and labor."),
            ["overheadhour"] = TypedText.ForMoney("Overhead of an hour", t.OverheadPerHour),
            ["waste"] = TypedText.ForMoney(
                "Waste of goods, %",
                t.WastePercent,
                "Beyond what parts lists count."
            ),
            ["month"] = TypedText.ForMoney("Fixed cost of a month", t.FixedPerMonth, "For the break-even."),
            ["loss"] = TypedText.ForMoney(
                "Live parcels replaced, %",
                t.LossPercent,
                "Before your own history counts."
            ),
            ["tub"] = TypedText.ForNumber("Mixing tub, liters", t.TubLiters),
            ["fill"] = TypedText.ForNumber("Filled to, %", t.TubFillPercent),
            ["lift"] = TypedText.ForNumber("One person lifts, kg", t.LiftKilograms),
            ["jug"] = TypedText.ForNumber("Measuring jug, liters", t.JugLiters),
            ["order"] = new("Before order numbers", t.OrderPrefix),
            ["quote"] = new("Before quote numbers", t.QuotePrefix),
            ["invoice"] = new("Before invoice numbers", t.InvoicePrefix),
            ["credit"] = new("Before credit numbers", t.CreditPrefix),
            ["delivery"] = new("Before delivery numbers", t.DeliveryPrefix),
        };
}
