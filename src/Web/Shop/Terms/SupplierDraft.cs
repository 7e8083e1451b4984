using Litterfall.Domain.Trade;

namespace Litterfall.Web.Shop.Terms;

/// <summary>A supplier as it is typed.</summary>
/// <param name="supplier">The supplier; null for a new one.</param>
/// <param name="currency">Currency of the workshop.</param>
public sealed class SupplierDraft(Supplier? supplier, string currency)
{
    private readonly TypedText name = new("Name", supplier?.Name ?? "");
    private readonly TypedText code = new("Currency", supplier?.Currency ?? currency);
    private readonly TypedText delivery = TypedText.ForMoney("Delivery", supplier?.Delivery);
    private readonly TypedText free = TypedText.ForMoney(
        "Free from",
        supplier?.FreeFrom,
        "Empty where it never is."
    );
    private readonly TypedText least = TypedText.ForMoney("Smallest order", supplier?.MinimumOrder);
    private readonly TypedText lead = TypedText.ForNumber("Working days until it comes", supplier?.LeadDays);
    private readonly TypedText notes = new("Notes", supplier?.Notes ?? "") { IsLong = true };

    /// <summary>Fields in order.</summary>
    public IReadOnlyList<TypedText> Fields => [name, code, delivery, free, least, lead, notes];

    /// <summary>The supplier as typed; null where a field has a fault.</summary>
    public Supplier? Read()
    {
        var typed = new Supplier
        {
            Key = supplier?.Key ?? OwnKey.From(name.Required()),
            Name = name.Required(),
            Currency = code.Required().ToUpperInvariant(),
            Delivery = delivery.Money(),
            FreeFrom = free.MoneyOrNone(),
            MinimumOrder = least.Money(),
            LeadDays = lead.Whole(0, 365),
            Notes = notes.Free(),
        };
        if (
            code.Fault is null
            && (typed.Currency.Length != 3 || !typed.Currency.All(char.IsAsciiLetterUpper))
        )
        {
            code.Refuse("Enter the three letters of a currency, such as EUR.");
        }

        return Fields.All(f => f.Fault is null) ? typed : null;
    }
}
