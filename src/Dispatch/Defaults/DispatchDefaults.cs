using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Defaults;

/// <summary>
/// Cartons, packs and cups that stand in until the shop enters its own: usual kinds without a maker. Sizes
/// are own choices near what is sold; foam 0.036 W/(m K), films 0.15 m² K/W and 190 kJ/kg for a filling that
/// melts at 21 °C are from memory (fillings are sold from 170 to 210); 2.56 W over 40 h is the heat of 50 g
/// of iron that rusts. Weigh, measure and validate your own with a logger.
/// </summary>
public static class DispatchDefaults
{
    /// <summary>
    /// Longest age of a forecast when a parcel is judged, h: the error that the rules name is that of a
    /// forecast of the day; an older one is taken anew, which costs a minute. Own choice.
    /// </summary>
    public const double LongestForecastAgeHours = 36;

    /// <summary>Melts in the middle of what most frogs like.</summary>
    private const double PhaseChangeCelsius = 21;

    private const double PhaseChangeLatent = 190;

    /// <summary>Water: 333.6 kJ/kg, rounded.</summary>
    private const double IceLatent = 334;

    /// <summary>Cartons, the smallest first.</summary>
    public static ImmutableArray<Carton> Cartons { get; } =
    [
        Carton("carton-small", "small carton, 25 mm foam", (0.30, 0.20, 0.20), 0.025, 0.35),
        Carton("carton-medium", "medium carton, 30 mm foam", (0.36, 0.28, 0.24), 0.030, 0.7),
        Carton("carton-thick", "medium carton, 50 mm foam", (0.36, 0.28, 0.24), 0.050, 1.0),
        Carton("carton-large", "large carton, 40 mm foam", (0.46, 0.36, 0.30), 0.040, 1.3),
    ];

    /// <summary>Packs.</summary>
    public static ImmutableArray<TransportPack> Packs { get; } =
    [
        PhaseChange("phase-change-250", "phase-change pack 21 °C, 250 g", 0.25),
        PhaseChange("phase-change-500", "phase-change pack 21 °C, 500 g", 0.5),
        Heat("heat-40", "heat pack, 40 h", 40, 2.56),
        Heat("heat-72", "heat pack, 72 h", 72, 2.0),
        new()
        {
            Key = "ice-500",
            Name = "ice pack, 500 g",
            Kind = PackKind.Ice,
            Kilograms = 0.5,
            LatentKilojoulesPerKilogram = IceLatent,
            Liters = 0.6,
        },
    ];

    /// <summary>Cups with lids, the smallest first.</summary>
    public static ImmutableArray<TransportCup> Cups { get; } =
    [
        Cup("cup-120", "cup 120 mL", 0.12, 0.062, 0.048),
        Cup("cup-240", "cup 240 mL", 0.24, 0.089, 0.050),
        Cup("cup-475", "cup 475 mL", 0.475, 0.117, 0.060),
        Cup("cup-950", "wide cup 950 mL", 0.95, 0.150, 0.068),
        Cup("tub-2000", "tub 2 L", 2, 0.200, 0.090),
        Cup("tub-5000", "tub 5 L", 5, 0.260, 0.120),
    ];

    /// <summary>A service overnight; whether it takes animals is still to be asked.</summary>
    public static CarrierTerms Carrier { get; } = new() { Key = "overnight", Name = "overnight service" };

    /// <summary>The shop's rules with these goods wherever it has none of its own.</summary>
    /// <param name="rules">The shop's rules.</param>
    public static DispatchRules Fill(DispatchRules rules) =>
        rules with
        {
            Cartons = rules.Cartons.Count > 0 ? rules.Cartons : [.. Cartons],
            Packs = rules.Packs.Count > 0 ? rules.Packs : [.. Packs],
            Cups = rules.Cups.Count > 0 ? rules.Cups : [.. Cups],
            Carriers = rules.Carriers.Count > 0 ? rules.Carriers : [Carrier],
        };

    private static Carton Carton(
        string key,
        string name,
        (double Length, double Width, double Height) inside,
        double wall,
        double kilograms
    ) =>
        new()
        {
            Key = key,
            Name = name,
            LengthMeters = inside.Length,
            WidthMeters = inside.Width,
            HeightMeters = inside.Height,
            WallMeters = wall,
            VentHoles = 4,
            EmptyKilograms = kilograms,
        };

    private static TransportPack PhaseChange(string key, string name, double kilograms) =>
        new()
        {
            Key = key,
            Name = name,
            Kind = PackKind.PhaseChange,
            Kilograms = kilograms,
            MeltCelsius = PhaseChangeCelsius,
            LatentKilojoulesPerKilogram = PhaseChangeLatent,
            Liters = 1.25 * kilograms,
        };

    private static TransportPack Heat(string key, string name, double hours, double watts) =>
        new()
        {
            Key = key,
            Name = name,
            Kind = PackKind.Heat,
            Kilograms = 0.12,
            Hours = hours,
            Watts = watts,
            Liters = 0.15,
        };

    private static TransportCup Cup(string key, string name, double liters, double width, double height) =>
        new()
        {
            Key = key,
            Name = name,
            Liters = liters,
            DiameterMeters = width,
            HeightMeters = height,
        };
}
