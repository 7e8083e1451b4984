using Litterfall.App.Files;
using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.UnitTests.Dispatch.Packing;

/// <summary>A small shop of our own: cups, packs, cartons, two carriers, two states.</summary>
internal static class PackingExamples
{
    public static readonly TradeCatalog Catalog = Shop.Embedded();

    public static readonly DateOnly Tuesday = new(2026, 11, 24);

    public static readonly Carton Small = Box("small", "small carton", (0.22, 0.18, 0.12), 0.025, 0);
    public static readonly Carton Middle = Box("middle", "middle carton", (0.30, 0.20, 0.20), 0.025, 4);
    public static readonly Carton Big = Box("big", "big carton", (0.40, 0.30, 0.30), 0.04, 6);

    public static readonly TransportPack Wax = new()
    {
        Key = "wax",
        Name = "phase-change pack, 21 °C",
        Kind = PackKind.PhaseChange,
        Kilograms = 0.5,
        Liters = 0.56,
        MeltCelsius = 21,
        LatentKilojoulesPerKilogram = 190,
    };

    public static readonly TransportPack Ice = Wax with
    {
        Key = "ice",
        Name = "ice pack",
        Kind = PackKind.Ice,
        MeltCelsius = 0,
        LatentKilojoulesPerKilogram = 334,
    };

    public static readonly TransportPack Heat = new()
    {
        Key = "heat",
        Name = "heat pack, 40 h",
        Kind = PackKind.Heat,
        Kilograms = 0.12,
        Liters = 0.16,
        Hours = 40,
        Watts = 2.5,
    };

    public static readonly CarrierTerms Carrier = new()
    {
        Key = "overnight",
        Name = "Overnight",
        TakesAnimals = true,
        RulesReadOn = new(2026, 10, 1),
        GuaranteedFromCelsius = -6,
        GuaranteedToCelsius = 33,
    };

    public static readonly DispatchRules Rules = new()
    {
        Cups =
        [
            Cup("tiny", "120 mL cup", 0.12, 0.07, 0.045),
            Cup("flat", "240 mL cup", 0.24, 0.117, 0.044),
            Cup("tall", "475 mL cup", 0.475, 0.117, 0.076),
            Cup("wide", "950 mL tub", 0.95, 0.15, 0.075),
        ],
        Packs = [Wax, Ice, Heat],
        Cartons = [Big, Small, Middle],
        Carriers = [Carrier],
        Regions =
        [
            new DeliveryRegion
            {
                Key = "home",
                Name = "Home",
                Country = "DE",
            },
            new DeliveryRegion
            {
                Key = "near",
                Name = "Near",
                Country = "DE",
            },
            new DeliveryRegion
            {
                Key = "abroad",
                Name = "Abroad",
                Country = "CH",
            },
            new DeliveryRegion { Key = "anywhere", Name = "Anywhere" },
        ],
        EmergencyPhone = "+00 555 0101",
    };

    public static Parcel Parcel(params LiveContent[] contents) =>
        new()
        {
            Number = 12,
            Recipient = "Pernille Voss",
            Contents = [.. contents],
            Region = "near",
            Carrier = "overnight",
            State = ParcelState.Cleared,
            ShipDay = Tuesday,
        };

    public static PackingCase Case(Carton carton, Parcel parcel, params PackUse[] packs) =>
        new()
        {
            Parcel = parcel,
            Catalog = Catalog,
            Rules = Rules,
            Carton = carton,
            Packs = [.. packs],
            BandLowCelsius = 17,
            BandHighCelsius = 26,
        };

    public static PackingPlan Plan(Carton carton, int count, params PackUse[] packs) =>
        PackingPlanner.Plan(Case(carton, Parcel(new LiveContent("epipedobates-anthonyi", count)), packs));

    private static Carton Box(
        string key,
        string name,
        (double Length, double Width, double Height) inside,
        double wall,
        int holes
    ) =>
        new()
        {
            Key = key,
            Name = name,
            LengthMeters = inside.Length,
            WidthMeters = inside.Width,
            HeightMeters = inside.Height,
            WallMeters = wall,
            VentHoles = holes,
            EmptyKilograms = 0.4,
        };

    private static TransportCup Cup(string key, string name, double liters, double wide, double high) =>
        new()
        {
            Key = key,
            Name = name,
            Liters = liters,
            DiameterMeters = wide,
            HeightMeters = high,
            Good = $"cup-{key}",
        };
}
