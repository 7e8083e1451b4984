using System.Collections.Immutable;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Demo;

/// <summary>The invented workshop of the demo: its people, customers, suppliers and terms.</summary>
public static class DemoShop
{
    /// <summary>Who builds and looks after the animals.</summary>
    public const string Builder = "Ilse";

    /// <summary>Who cuts, ships and keeps the books.</summary>
    public const string Bookkeeper = "Tobin";

    /// <summary>Supplier of bulk goods.</summary>
    internal const string Bulk = "hollow-reed";

    /// <summary>Supplier of glass, equipment and plants.</summary>
    internal const string Wares = "tarn-thimble";

    /// <summary>Day on which the scenario stands: a Thursday.</summary>
    internal static readonly DateOnly Scene = new(2026, 9, 3);

    /// <summary>Days by which the scenario is moved: its Thursday is the last one up to a day.</summary>
    /// <param name="today">Day the demo is filled.</param>
    internal static int Shift(DateOnly today) =>
        (int)Math.Floor((today.DayNumber - Scene.DayNumber) / 7.0) * 7;

    /// <summary>Terms of the workshop.</summary>
    public static ShopTerms Terms { get; } =
        new()
        {
            Name = "Lantern Ditch Workshop",
            Address = ["Ilse Marrowby & Tobin Achterveld", "The barn, Upper Sallow"],
            Currency = "EUR",
            TaxPercent = 19,
            DepositPercent = 30,
            QuoteDays = 30,
            Wage = 24,
            OverheadPercent = 14,
            WastePercent = 6,
            RetailMargin = 38,
            WholesaleMargin = 20,
            FeePercent = 2.9m,
            FeeFixed = 0.30m,
            LossPercent = 5,
            IsReplacedAgain = true,
            Packaging = 6.80m,
            Shipping = 19.90m,
            FixedPerMonth = 1450,
            OrderPrefix = "LD-",
            Terms =
            [
                "The price holds until the day named above and for the sizes that were measured together.",
                "Plants and animals come when the tank has grown in; nobody can promise that day.",
                "Photographs of what arrived dead or broken within 24 hours: we replace it or pay it back.",
            ],
            Labor =
            [
                new("plan", "plan and order", LaborPer.Order, 35),
                new("cut", "cut mesh, lids, backgrounds", LaborPer.Cut, 7),
                new("mix", "mix soil", LaborPer.Liter, 1.1),
                new("build", "drainage, barrier, soil, wood", LaborPer.Box, 55),
                new("background", "glue and cure the background", LaborPer.BackgroundSquareMeter, 60),
                new("plant", "plant and dress", LaborPer.Plant, 5),
                new("pack", "clean, pack, papers", LaborPer.Box, 20),
            ],
        };

    /// <summary>Suppliers.</summary>
    public static ImmutableArray<Supplier> Suppliers { get; } =
    [
        new()
        {
            Key = Bulk,
            Name = "Hollow Reed Bulk Goods",
            Currency = "EUR",
            Delivery = 6.90m,
            FreeFrom = 75,
            MinimumOrder = 25,
            LeadDays = 3,
            Notes = "Delivers Tuesday and Friday; pallets only before noon.",
        },
        new()
        {
            Key = Wares,
            Name = "Tarn & Thimble Supply",
            Currency = "EUR",
            Delivery = 12.50m,
            FreeFrom = 120,
            MinimumOrder = 40,
            LeadDays = 5,
            Notes = "Glass needs 12 working days; plants come on Wednesday.",
        },
    ];

    /// <summary>Customers.</summary>
    public static ImmutableArray<Customer> Customers { get; } =
    [
        new()
        {
            Key = "voss",
            Name = "Pernille Voss",
            Address = ["Flat 3, Millrace Row", "Upper Sallow"],
            Notes = "Dry room in the heating season.",
        },
        new()
        {
            Key = "marl-street",
            Name = "Marl Street Dental",
            Address = ["Waiting room, Marl Street 8"],
            Notes = "Heating off at weekends.",
        },
        new()
        {
            Key = "quernmoor",
            Name = "Quernmoor Museum",
            Address = ["Foyer", "Quernmoor"],
            Notes = "Install on a closing day; visit every six weeks.",
        },
        new()
        {
            Key = "pelloway",
            Name = "Pelloway Pet Supplies",
            Address = ["Goods entrance, Pelloway"],
            IsWholesale = true,
            Notes = "Pays late; never below 20 % margin.",
        },
        new()
        {
            Key = "underbank",
            Name = "Rafe Underbank",
            Address = ["Attic, Underbank House"],
            Notes = "Attic at 31 °C in July: no animals until it is cooled.",
        },
        new()
        {
            Key = "fair",
            Name = "Callers and fairs",
            Notes = "Sales without a name.",
        },
    ];
}
