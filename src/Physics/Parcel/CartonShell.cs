namespace Litterfall.Physics.Parcel;

/// <summary>An insulated carton as one resistance between its contents and the air outside.</summary>
/// <remarks>
/// UA = A ÷ (w/k + R): wall and films in series over the geometric mean of inside and outside surface. The
/// mean is exact for a thick hollow sphere and a fair middle for a box with edges and corners; lids that
/// gape, tape and the ground under the carton are not in it.
/// </remarks>
/// <param name="LengthMeters">Inside length, m.</param>
/// <param name="WidthMeters">Inside width, m.</param>
/// <param name="HeightMeters">Inside height, m.</param>
/// <param name="WallMeters">Thickness of the insulation, m.</param>
/// <param name="WallConductivity">Conductivity of the insulation, W/(m K).</param>
/// <param name="FilmResistance">Air films on both sides and the card outside, m² K/W.</param>
public readonly record struct CartonShell(
    double LengthMeters,
    double WidthMeters,
    double HeightMeters,
    double WallMeters,
    double WallConductivity,
    double FilmResistance
)
{
    /// <summary>Gets the room inside, m³.</summary>
    public double InsideVolume => LengthMeters * WidthMeters * HeightMeters;

    /// <summary>Gets the inside surface, m².</summary>
    public double InsideArea => Surface(LengthMeters, WidthMeters, HeightMeters);

    /// <summary>Gets the outside surface of the insulation, m².</summary>
    public double OutsideArea =>
        Surface(
            LengthMeters + (2.0 * WallMeters),
            WidthMeters + (2.0 * WallMeters),
            HeightMeters + (2.0 * WallMeters)
        );

    /// <summary>Gets the surface that conducts: the geometric mean of both, m².</summary>
    public double Area => Math.Sqrt(InsideArea * OutsideArea);

    /// <summary>Gets the resistance of the insulation alone, m² K/W.</summary>
    public double WallResistance => WallMeters / WallConductivity;

    /// <summary>Gets the transmittance of wall and films, W/(m² K).</summary>
    public double Transmittance => 1.0 / (WallResistance + FilmResistance);

    /// <summary>Gets the conductance of the whole carton, W/K.</summary>
    public double Conductance => Area * Transmittance;

    private static double Surface(double a, double b, double c) => 2.0 * ((a * b) + (b * c) + (c * a));
}
