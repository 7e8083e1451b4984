using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Orders in a few words, for cards, lists and heads.</summary>
public static class OrderShow
{
    /// <summary>"2 × Attic tank, fine bark".</summary>
    public static string Things(Order order) =>
        order.Items.Count == 0 ? "nothing chosen yet" : string.Join(", ", order.Items.Select(Thing));

    /// <summary>"2 × Attic tank".</summary>
    public static string Thing(OrderItem item) =>
        item.Amount == 1
            ? item.Name
            : $"{item.Amount.ToString("0.##", CultureInfo.InvariantCulture)} × {item.Name}";

    /// <summary>How it is ordered.</summary>
    public static string Kind(OrderItemKind kind) =>
        kind switch
        {
            OrderItemKind.Build => "built and planted here",
            OrderItemKind.Kit => "boxed kit",
            _ => "loose goods",
        };

    /// <summary>"461.77 EUR"; empty before a price is agreed.</summary>
    public static string Price(Order order, string currency) =>
        order.Gross is { } gross ? Money(gross, currency) : "";

    /// <summary>"461.77 EUR".</summary>
    public static string Money(decimal amount, string currency) => $"{OrderText.Money(amount)} {currency}";

    /// <summary>"25.9 %".</summary>
    public static string Percent(decimal? percent) =>
        percent is { } known
            ? Math.Round(known, 1, MidpointRounding.AwayFromZero)
                .ToString("0.0", CultureInfo.InvariantCulture) + " %"
            : "–";

    /// <summary>"2 h 20 min".</summary>
    public static string Time(double minutes)
    {
        var all = (int)Math.Round(minutes, MidpointRounding.AwayFromZero);
        return all < 60 ? FormattableString.Invariant($"{all} min")
            : all % 60 == 0 ? FormattableString.Invariant($"{all / 60} h")
            : FormattableString.Invariant($"{all / 60} h {all % 60} min");
    }

    /// <summary>"16 Oct 2026 14:05", in the time of the workshop.</summary>
    public static string When(DateTime at) =>
        at.ToLocalTime().ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The picture of a version; null for loose goods.</summary>
    public static string? Picture(OrderItem item) =>
        item.Design is { } design
            ? FormattableString.Invariant($"/order-picture/{design}/{item.Version}.svg")
            : null;

    /// <summary>The order's first picture; null where it has none.</summary>
    public static string? Picture(Order order) =>
        order.Items.Select(Picture).FirstOrDefault(p => p is not null);

    /// <summary>How much a blocker matters: shape first, color second.</summary>
    public static Severity Weight(Blocker blocker) =>
        blocker.Kind switch
        {
            BlockKind.Harm => Severity.Stop,
            BlockKind.NoQuote or BlockKind.NoDay => Severity.Note,
            _ => Severity.Caution,
        };

    /// <summary>Address of an issued paper.</summary>
    public static string Address(Invoice paper) =>
        FormattableString.Invariant($"/issued/{paper.Kind.ToString().ToLowerInvariant()}/{paper.Number}.pdf");

    /// <summary>What a paper is, in words.</summary>
    public static string Paper(IssuedKind kind) =>
        kind switch
        {
            IssuedKind.Invoice => "Invoice",
            IssuedKind.Credit => "Credit",
            IssuedKind.Delivery => "Delivery note",
            _ => "Quote",
        };
}
