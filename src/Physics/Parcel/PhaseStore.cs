namespace Litterfall.Physics.Parcel;

/// <summary>A pack that melts and freezes at one temperature; only its latent heat counts.</summary>
/// <remarks>
/// Its own heat capacity belongs to the contents. Real fillings melt over a kelvin or two and may cool
/// below their melting point before they freeze; neither is in it.
/// </remarks>
/// <param name="Kilograms">Mass of the filling, kg.</param>
/// <param name="MeltCelsius">Melting point, °C.</param>
/// <param name="LatentJoulesPerKilogram">Latent heat, J/kg.</param>
/// <param name="StartLiquid">Liquid share at the start, 0 to 1.</param>
public readonly record struct PhaseStore(
    double Kilograms,
    double MeltCelsius,
    double LatentJoulesPerKilogram,
    double StartLiquid
)
{
    /// <summary>Gets the heat from all frozen to all liquid, J.</summary>
    public double LatentJoules => Kilograms * LatentJoulesPerKilogram;
}
