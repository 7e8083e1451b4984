using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>A cup as it is typed.</summary>
public sealed class CupDraft
{
    private readonly TransportCup? kept;
    private readonly UnitPreferences units;

    /// <summary>Begins with a cup; null for a new one.</summary>
    public CupDraft(TransportCup? cup, UnitPreferences units)
    {
        (kept, this.units) = (cup, units);
        var millimeter = units.For(Unit.Millimeter);
        Name = new("Name", cup?.Name ?? "");
        Milliliters = TypedText.ForNumber("Volume, mL", cup is null ? null : 1000 * cup.Liters);
        Width = TypedMeasure.Begin("Inside width", cup?.DiameterMeters, millimeter);
        Height = TypedMeasure.Begin("Height with lid", cup?.HeightMeters, millimeter);
        Holes = TypedText.ForNumber("Pin holes", cup?.Holes ?? 8);
        Hole = TypedMeasure.Begin("Width of a hole", cup?.HoleMeters ?? 0.001, millimeter);
        Good = new("Good in stock", cup?.Good ?? "");
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>Volume.</summary>
    public TypedText Milliliters { get; }

    /// <summary>Inside width.</summary>
    public TypedText Width { get; }

    /// <summary>Height.</summary>
    public TypedText Height { get; }

    /// <summary>Pin holes.</summary>
    public TypedText Holes { get; }

    /// <summary>Width of a hole.</summary>
    public TypedText Hole { get; }

    /// <summary>Good in stock.</summary>
    public TypedText Good { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields => [Name, Milliliters, Width, Height, Holes, Hole, Good];

    /// <summary>The cup; its fields say what is wrong with them.</summary>
    public TransportCup Read()
    {
        var name = Name.Required();
        var unit = units.For(Unit.Millimeter);
        return new()
        {
            Key = kept?.Key ?? OwnKey.From(name),
            Name = name,
            Liters = Milliliters.Number(10, 20000) / 1000,
            DiameterMeters = TypedMeasure.Read(Width, QuantityKinds.Length, unit, (0.02, 0.5)),
            HeightMeters = TypedMeasure.Read(Height, QuantityKinds.Length, unit, (0.02, 0.5)),
            Holes = Holes.Whole(0, 200),
            HoleMeters = TypedMeasure.Read(Hole, QuantityKinds.Length, unit, (0.0003, 0.01)),
            LidMeters = kept?.LidMeters ?? 0.0005,
            Good = Good.Free(),
        };
    }
}
