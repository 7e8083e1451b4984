using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>A pack as it is typed.</summary>
public sealed class PackDraft
{
    private readonly TransportPack? kept;
    private readonly UnitPreferences units;

    /// <summary>Begins with a pack; null for a new one.</summary>
    public PackDraft(TransportPack? pack, UnitPreferences units)
    {
        (kept, this.units) = (pack, units);
        Name = new("Name", pack?.Name ?? "");
        Kind = pack?.Kind ?? PackKind.PhaseChange;
        Mass = TypedMeasure.Begin("Mass", pack?.Kilograms, units.For(Unit.Gram));
        Melts = TypedMeasure.Begin(
            "Melts at",
            pack is { Kind: not PackKind.Heat } ? Unit.Celsius.ToSiValue(pack.MeltCelsius) : null,
            units.For(Unit.Celsius)
        );
        Latent = TypedText.ForNumber("Heat of melting, kJ/kg", pack?.LatentKilojoulesPerKilogram);
        Watts = TypedText.ForNumber("Warms with, W", pack?.Watts);
        Hours = TypedText.ForNumber("Warms for, hours", pack?.Hours);
        Liters = TypedText.ForNumber("Room it takes, L", pack?.Liters);
        Good = new("Good in stock", pack?.Good ?? "");
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>What it does.</summary>
    public PackKind Kind { get; set; }

    /// <summary>Mass.</summary>
    public TypedText Mass { get; }

    /// <summary>Melting point.</summary>
    public TypedText Melts { get; }

    /// <summary>Heat of melting.</summary>
    public TypedText Latent { get; }

    /// <summary>Mean heat.</summary>
    public TypedText Watts { get; }

    /// <summary>Hours of heat.</summary>
    public TypedText Hours { get; }

    /// <summary>Room it takes.</summary>
    public TypedText Liters { get; }

    /// <summary>Good in stock.</summary>
    public TypedText Good { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields =>
        Kind == PackKind.Heat
            ? [Name, Mass, Watts, Hours, Liters, Good]
            : [Name, Mass, Melts, Latent, Liters, Good];

    /// <summary>Kinds with their words.</summary>
    public static IReadOnlyList<(PackKind Kind, string Words)> Kinds { get; } =
    [
        (PackKind.PhaseChange, "phase-change pack, melts near room temperature"),
        (PackKind.Ice, "ice or gel pack, melts at 0 °C"),
        (PackKind.Heat, "heat pack, iron powder"),
    ];

    /// <summary>The pack; its fields say what is wrong with them.</summary>
    public TransportPack Read()
    {
        var name = Name.Required();
        var isHeat = Kind == PackKind.Heat;
        return new()
        {
            Key = kept?.Key ?? OwnKey.From(name),
            Name = name,
            Kind = Kind,
            Kilograms = TypedMeasure.Read(Mass, QuantityKinds.Mass, units.For(Unit.Gram), (0.005, 10)),
            MeltCelsius = isHeat
                ? 0
                : Unit.Celsius.FromSi(
                    TypedMeasure.Read(
                        Melts,
                        QuantityKinds.Temperature,
                        units.For(Unit.Celsius),
                        (Unit.Celsius.ToSiValue(-30), Unit.Celsius.ToSiValue(45))
                    )
                ),
            LatentKilojoulesPerKilogram = isHeat ? 0 : Latent.Number(20, 400),
            Watts = isHeat ? Watts.Number(0.1, 40) : 0,
            Hours = isHeat ? Hours.Number(1, 200) : 0,
            Liters = Liters.Number(0, 20),
            Good = Good.Free(),
        };
    }
}
