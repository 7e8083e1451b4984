namespace Litterfall.Physics.Parcel;

/// <summary>Round holes through which gases pass by diffusion alone.</summary>
/// <remarks>
/// Brown, H. T. and Escombe, F. 1900, Static diffusion of gases and liquids, Philosophical Transactions of
/// the Royal Society B 193:223-291 (beginning read): what passes a hole goes by its width, not its area, for
/// the gas must also come together before it and spread behind it. Each end acts as π d/8 more of length,
/// both as π d/4. For holes apart by some widths and still air on both sides: wind, shaking and pressure
/// swings of a flight pass more, holes that something covers pass less.
/// </remarks>
/// <param name="Count">Holes.</param>
/// <param name="DiameterMeters">Width of each, m.</param>
/// <param name="LengthMeters">Thickness of the wall, m.</param>
public readonly record struct VentHoles(int Count, double DiameterMeters, double LengthMeters)
{
    /// <summary>Volume a second at a difference of 1 in the share of a gas, m³/s.</summary>
    /// <param name="diffusivity">Diffusivity of the gas in air, m²/s.</param>
    public double Conductance(double diffusivity)
    {
        double area = Math.PI * DiameterMeters * DiameterMeters / 4.0;
        double length = LengthMeters + (Math.PI * DiameterMeters / 4.0);
        return Count > 0 ? Count * diffusivity * area / length : 0.0;
    }
}
