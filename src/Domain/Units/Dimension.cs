namespace Litterfall.Domain.Units;

/// <summary>Exponents of meter, kilogram, second, kelvin, lumen, money and ampere.</summary>
public readonly record struct Dimension(
    sbyte Length,
    sbyte Mass,
    sbyte Time,
    sbyte Temperature,
    sbyte Light,
    sbyte Money,
    sbyte Current = 0
)
{
    /// <summary>A pure number.</summary>
    public static readonly Dimension None;

    /// <summary>Dimension of a product.</summary>
    public static Dimension operator *(Dimension a, Dimension b) =>
        new(
            (sbyte)(a.Length + b.Length),
            (sbyte)(a.Mass + b.Mass),
            (sbyte)(a.Time + b.Time),
            (sbyte)(a.Temperature + b.Temperature),
            (sbyte)(a.Light + b.Light),
            (sbyte)(a.Money + b.Money),
            (sbyte)(a.Current + b.Current)
        );

    /// <summary>Dimension of a quotient.</summary>
    public static Dimension operator /(Dimension a, Dimension b) =>
        new(
            (sbyte)(a.Length - b.Length),
            (sbyte)(a.Mass - b.Mass),
            (sbyte)(a.Time - b.Time),
            (sbyte)(a.Temperature - b.Temperature),
            (sbyte)(a.Light - b.Light),
            (sbyte)(a.Money - b.Money),
            (sbyte)(a.Current - b.Current)
        );
}
