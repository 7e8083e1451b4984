using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Web.Shop.Orders;

/// <summary>How the designs of an option are sold.</summary>
public enum OptionKind
{
    /// <summary>As a boxed kit.</summary>
    Kit,

    /// <summary>Built and planted here.</summary>
    Planted,

    /// <summary>Each as it is ordered.</summary>
    AsOrdered,
}

/// <summary>An option as it is typed; numbers that do not read are told.</summary>
public sealed class OptionForm
{
    /// <summary>Name for the customer.</summary>
    public string Name { get; set; } = "";

    /// <summary>How the designs are sold.</summary>
    public OptionKind Kind { get; set; }

    /// <summary>True with the animals.</summary>
    public bool HasAnimals { get; set; }

    /// <summary>True with the designs as they are now, not as they were frozen.</summary>
    public bool IsCurrent { get; set; }

    /// <summary>Visits in the price.</summary>
    public string Visits { get; set; } = "";

    /// <summary>Own price, as the shop shows prices; empty for that of the margin.</summary>
    public string Price { get; set; } = "";

    /// <summary>Own margin, percent; empty for that of the shop.</summary>
    public string Margin { get; set; } = "";

    /// <summary>Packaging; empty for that of the shop.</summary>
    public string Packaging { get; set; } = "";

    /// <summary>Shipping; empty for that of the shop.</summary>
    public string Shipping { get; set; } = "";

    /// <summary>What is different, in own words; empty for ours.</summary>
    public string Changes { get; set; } = "";

    /// <summary>What is gained, in own words; empty for ours.</summary>
    public string Gains { get; set; } = "";

    /// <summary>The first number that does not read, in one sentence; null where all do.</summary>
    public string? Refusal =>
        string.IsNullOrWhiteSpace(Name)
            ? "Give each option a name."
            : Numbers
                .Where(n => n.Text.Trim().Length > 0 && !(Read(n.Text) >= 0))
                .Select(n =>
                    $"{Name}: {n.What} reads “{n.Text}”; enter a number of 0 or more, such as 12.50."
                )
                .FirstOrDefault()
                ?? (
                    Read(Visits) is { } visits && (visits % 1 != 0 || visits > 100)
                        ? $"{Name}: visits are whole, 100 at most."
                    : Read(Margin) >= 100 ? $"{Name}: a margin of 100 % or more leaves nothing for the cost."
                    : null
                );

    private (string What, string Text)[] Numbers =>
        [
            ("visits", Visits),
            ("own price", Price),
            ("margin", Margin),
            ("packaging", Packaging),
            ("shipping", Shipping),
        ];

    /// <summary>The wish.</summary>
    /// <param name="items">What is ordered, ready to be priced.</param>
    public OptionWish As(ImmutableArray<PricedItem> items) =>
        new(Name.Trim())
        {
            Items =
            [
                .. items.Select(i =>
                    i.Item.Kind == OrderItemKind.Loose || Kind == OptionKind.AsOrdered
                        ? i
                        : i with
                        {
                            Item = i.Item with
                            {
                                Kind = Kind == OptionKind.Kit ? OrderItemKind.Kit : OrderItemKind.Build,
                            },
                        }
                ),
            ],
            HasAnimals = HasAnimals,
            Visits = (int)(Read(Visits) ?? 0),
            Price = Read(Price),
            Margin = Read(Margin),
            Packaging = Read(Packaging),
            Shipping = Read(Shipping),
            Changes = Changes.Trim(),
            Gains = Gains.Trim(),
        };

    /// <summary>A typed number; decimal point or comma.</summary>
    public static decimal? Read(string text) =>
        decimal.TryParse(
            text.Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    /// <summary>The usual three; a kit that was asked for comes first either way.</summary>
    public static List<OptionForm> Usual(bool hasDesigns) =>
        hasDesigns
            ?
            [
                new() { Name = "Kit", Kind = OptionKind.Kit },
                new()
                {
                    Name = "Planted",
                    Kind = OptionKind.Planted,
                    HasAnimals = true,
                },
                new()
                {
                    Name = "Planted, with visits",
                    Kind = OptionKind.Planted,
                    HasAnimals = true,
                    Visits = "4",
                },
            ]
            : [new() { Name = "As ordered", Kind = OptionKind.AsOrdered }];
}
