using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Shop.Orders;

/// <summary>A customer as typed; known ones are chosen by their key.</summary>
public sealed class CustomerForm
{
    private const int Longest = 200;

    /// <summary>Key of a known customer; empty for a new one.</summary>
    public string Key { get; set; } = "";

    /// <summary>Name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Address, one line each.</summary>
    public string Address { get; set; } = "";

    /// <summary>Mail address.</summary>
    public string Mail { get; set; } = "";

    /// <summary>Telephone.</summary>
    public string Phone { get; set; } = "";

    /// <summary>True for shops that buy to sell.</summary>
    public bool IsWholesale { get; set; }

    /// <summary>What to remember.</summary>
    public string Notes { get; set; } = "";

    /// <summary>Fills in a known customer.</summary>
    public void Show(Customer customer)
    {
        (Key, Name, Mail, Phone) = (customer.Key, customer.Name, customer.Mail, customer.Phone);
        (IsWholesale, Notes) = (customer.IsWholesale, customer.Notes);
        Address = string.Join('\n', customer.Address);
    }

    /// <summary>Why it cannot be kept, in one sentence; null where it can.</summary>
    public string? Refusal =>
        string.IsNullOrWhiteSpace(Name) ? "Enter the name of the customer."
        : Name.Length > Longest ? "The name is too long (1 to 200 characters)."
        : Mail.Length > 0 && !Mail.Contains('@', StringComparison.Ordinal)
            ? "The mail address has no @. Leave it empty if there is none."
        : null;

    /// <summary>The customer under a key.</summary>
    public Customer As(string key) =>
        new()
        {
            Key = key,
            Name = Name.Trim(),
            Address =
            [
                .. Address.Split(
                    '\n',
                    StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
                ),
            ],
            Mail = Mail.Trim(),
            Phone = Phone.Trim(),
            IsWholesale = IsWholesale,
            Notes = Notes.Trim(),
        };

    /// <summary>A free key like the name: letters, digits and hyphens.</summary>
    /// <param name="taken">Keys there are.</param>
    public string FreeKey(IReadOnlySet<string> taken)
    {
        var word = OwnKey.From(Name);
        var key = word;
        for (var i = 2; taken.Contains(key); i++)
        {
            key = FormattableString.Invariant($"{word}-{i}");
        }

        return key;
    }
}

/// <summary>A line of an order as it is chosen.</summary>
public sealed class ItemForm
{
    /// <summary>The design; null for loose goods.</summary>
    public ListedDesign? Design { get; init; }

    /// <summary>The good; null for designs.</summary>
    public Good? Good { get; init; }

    /// <summary>True for a kit.</summary>
    public bool IsKit { get; set; }

    /// <summary>Boxes, or amount of the good; null while it does not read.</summary>
    public double? Amount { get; set; } = 1;

    /// <summary>As the customer knows it.</summary>
    public string Name => Design?.Name ?? Good!.Name;

    /// <summary>Why it cannot be ordered, in one sentence; null where it can.</summary>
    public string? Refusal =>
        Amount is not > 0 || !double.IsFinite(Amount.Value) ? $"Enter how many of {Name} are ordered."
        : (Design is not null || Good!.Unit == StockUnit.Pieces) && Amount.Value % 1 != 0
            ? $"{Name} is counted in whole pieces."
        : null;

    /// <summary>The line of the order.</summary>
    public OrderItem Item =>
        new()
        {
            Kind =
                Design is null ? OrderItemKind.Loose
                : IsKit ? OrderItemKind.Kit
                : OrderItemKind.Build,
            Name = Name,
            Design = Design?.Id,
            Version = Design?.Version ?? 0,
            Good = Good?.Key,
            Amount = Amount!.Value,
        };
}

/// <summary>A new order as it is typed.</summary>
public sealed class OrderForm
{
    /// <summary>The customer.</summary>
    public CustomerForm Customer { get; } = new();

    /// <summary>What is ordered.</summary>
    public List<ItemForm> Items { get; } = [];

    /// <summary>Day it is wanted for; null for none.</summary>
    public DateOnly? Promised { get; set; }

    /// <summary>What to remember.</summary>
    public string Notes { get; set; } = "";

    /// <summary>Why it cannot be kept, in one sentence; null where it can.</summary>
    /// <param name="today">Today.</param>
    public string? Refusal(DateOnly today) =>
        (Customer.Key.Length == 0 ? Customer.Refusal : null)
        ?? Items.Select(i => i.Refusal).FirstOrDefault(r => r is not null)
        ?? (Promised is { } day ? PromisedDay.Refusal(day, today, null) : null);

    /// <summary>The order under its number.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="customer">Key of the customer.</param>
    /// <param name="act">Who takes it in, and when.</param>
    public Order As(int number, string customer, OrderAct act) =>
        new()
        {
            Number = number,
            Customer = customer,
            Items = [.. Items.Select(i => i.Item)],
            State = OrderState.Enquiry,
            Promised = Promised,
            Notes = Notes.Trim(),
            History = [new OrderEvent(act.At, act.Who, OrderState.Enquiry, act.Note)],
        };
}
