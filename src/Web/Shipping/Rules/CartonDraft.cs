using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>A carton as it is typed.</summary>
public sealed class CartonDraft
{
    private static readonly (double, double) Sides = (0.05, 1.5);
    private static readonly (double, double) Walls = (0, 0.15);
    private static readonly (double, double) Masses = (0, 20);
    private readonly Carton? kept;
    private readonly UnitPreferences units;

    /// <summary>Begins with a carton; null for a new one.</summary>
    public CartonDraft(Carton? carton, UnitPreferences units)
    {
        (kept, this.units) = (carton, units);
        var length = units.For(Unit.Centimeter);
        Name = new("Name", carton?.Name ?? "");
        Length = TypedMeasure.Begin("Inside length", carton?.LengthMeters, length);
        Width = TypedMeasure.Begin("Inside width", carton?.WidthMeters, length);
        Height = TypedMeasure.Begin("Inside height", carton?.HeightMeters, length);
        Wall = TypedMeasure.Begin("Foam", carton?.WallMeters, units.For(Unit.Millimeter), "0 for none");
        Conductivity = TypedText.ForNumber(
            "Foam conducts, W/(m K)",
            carton?.ConductivityWPerMeterKelvin ?? 0.036,
            "0.036 for white foam"
        );
        Holes = TypedText.ForNumber("Vent holes", carton?.VentHoles ?? 4);
        Hole = TypedMeasure.Begin(
            "Width of a hole",
            carton?.VentHoleMeters ?? 0.006,
            units.For(Unit.Millimeter)
        );
        Mass = TypedMeasure.Begin("Empty mass", carton?.EmptyKilograms ?? 0, units.For(Unit.Kilogram));
        Good = new("Good in stock", carton?.Good ?? "");
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>Inside length.</summary>
    public TypedText Length { get; }

    /// <summary>Inside width.</summary>
    public TypedText Width { get; }

    /// <summary>Inside height.</summary>
    public TypedText Height { get; }

    /// <summary>Thickness of the foam.</summary>
    public TypedText Wall { get; }

    /// <summary>Thermal conductivity of the foam.</summary>
    public TypedText Conductivity { get; }

    /// <summary>Vent holes.</summary>
    public TypedText Holes { get; }

    /// <summary>Width of a vent hole.</summary>
    public TypedText Hole { get; }

    /// <summary>Mass of the empty carton.</summary>
    public TypedText Mass { get; }

    /// <summary>Good in stock.</summary>
    public TypedText Good { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields =>
        [Name, Length, Width, Height, Wall, Conductivity, Holes, Hole, Mass, Good];

    /// <summary>The carton; its fields say what is wrong with them.</summary>
    public Carton Read()
    {
        var name = Name.Required();
        var length = units.For(Unit.Centimeter);
        var millimeter = units.For(Unit.Millimeter);
        return new()
        {
            Key = kept?.Key ?? OwnKey.From(name),
            Name = name,
            LengthMeters = TypedMeasure.Read(Length, QuantityKinds.Length, length, Sides),
            WidthMeters = TypedMeasure.Read(Width, QuantityKinds.Length, length, Sides),
            HeightMeters = TypedMeasure.Read(Height, QuantityKinds.Length, length, Sides),
            WallMeters = TypedMeasure.Read(Wall, QuantityKinds.Length, millimeter, Walls),
            ConductivityWPerMeterKelvin = Conductivity.Number(0.003, 1),
            FilmsSquareMeterKelvinPerW = kept?.FilmsSquareMeterKelvinPerW ?? 0.15,
            VentHoles = Holes.Whole(0, 200),
            VentHoleMeters = TypedMeasure.Read(Hole, QuantityKinds.Length, millimeter, (0.0005, 0.05)),
            EmptyKilograms = TypedMeasure.Read(Mass, QuantityKinds.Mass, units.For(Unit.Kilogram), Masses),
            Good = Good.Free(),
        };
    }

    /// <summary>What it is, in a line for its folded row.</summary>
    public string Told
    {
        get
        {
            var said = string.Join(" × ", new[] { Length.Text, Width.Text, Height.Text });
            return string.Create(CultureInfo.InvariantCulture, $"{said}, foam {Wall.Text}");
        }
    }
}
