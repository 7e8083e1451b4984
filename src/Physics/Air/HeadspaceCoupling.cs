namespace Litterfall.Physics.Air;

/// <summary>
/// The 3 × 3 system of air, vapor and radiant node that is left of a headspace once its surfaces are
/// eliminated.
/// </summary>
internal struct HeadspaceCoupling
{
    public double AirAir;
    public double AirVapor;
    public double AirRight;
    public double VaporAir;
    public double VaporVapor;
    public double VaporRight;
    private double airRadiant;
    private double vaporRadiant;
    private double radiantAir;
    private double radiantVapor;
    private double radiantRadiant;
    private double radiantRight;

    /// <summary>
    /// Adds a surface whose change is (right + hA·a + g·r + latent·byVapor·v) over its slope.
    /// </summary>
    /// <param name="one">The surface.</param>
    /// <param name="overAir">Surface over air, K.</param>
    /// <param name="belowRadiant">Radiant node over surface, K.</param>
    public void Add(in SurfaceWork one, double overAir, double belowRadiant)
    {
        double carried = one.Flux < 0.0 ? -one.Flux * MoistAir.VaporHeatCapacity : 0.0;
        double toAir = one.Convection + carried;
        double per = one.PerSlope;
        double perAir = one.Convection * per;
        double perVapor = one.Latent * one.FluxByVapor * per;
        double perRadiant = one.Radiant * per;
        double alone = one.Right * per;
        AirAir += toAir * (1.0 - perAir);
        AirVapor -= toAir * perVapor;
        airRadiant -= toAir * perRadiant;
        AirRight += toAir * (overAir + alone);
        VaporVapor += one.FluxByVapor - (one.FluxByKelvin * perVapor);
        VaporAir -= one.FluxByKelvin * perAir;
        vaporRadiant -= one.FluxByKelvin * perRadiant;
        VaporRight += (one.FluxByKelvin * alone) - one.Flux;
        radiantRadiant += one.Radiant * (1.0 - perRadiant);
        radiantAir -= one.Radiant * perAir;
        radiantVapor -= one.Radiant * perVapor;
        radiantRight += one.Radiant * (alone - belowRadiant);
    }

    /// <summary>Changes of air, K, vapor, kg/kg, and radiant node, K.</summary>
    public readonly (double Air, double Vapor, double Radiant) Solve()
    {
        double a11 = AirAir;
        double a12 = AirVapor;
        double a21 = VaporAir;
        double a22 = VaporVapor;
        double b1 = AirRight;
        double b2 = VaporRight;
        if (radiantRadiant > 0.0)
        {
            double p = airRadiant / radiantRadiant;
            double q = vaporRadiant / radiantRadiant;
            a11 -= p * radiantAir;
            a12 -= p * radiantVapor;
            b1 -= p * radiantRight;
            a21 -= q * radiantAir;
            a22 -= q * radiantVapor;
            b2 -= q * radiantRight;
        }

        double determinant = (a11 * a22) - (a12 * a21);
        double air = ((b1 * a22) - (a12 * b2)) / determinant;
        double vapor = ((a11 * b2) - (b1 * a21)) / determinant;
        return (air, vapor, Radiant(air, vapor));
    }

    /// <summary>
    /// The same where the air is held at saturation: what the balance of vapor has left over condenses in
    /// the air and warms it.
    /// </summary>
    /// <param name="over">w at saturation over w, and how it grows with the air, 1/K.</param>
    /// <param name="latent">Heat that a kilogram gives to the air, J/kg.</param>
    /// <returns>The changes, and what condenses, kg/s.</returns>
    public readonly (double Air, double Vapor, double Radiant, double Settling) SolveSaturated(
        (double Ratio, double PerKelvin) over,
        double latent
    )
    {
        var held = this;
        held.AirAir += latent * VaporAir;
        held.AirVapor += latent * VaporVapor;
        held.airRadiant += latent * vaporRadiant;
        held.AirRight += latent * VaporRight;
        held.VaporAir = -over.PerKelvin;
        held.VaporVapor = 1.0;
        held.vaporRadiant = 0.0;
        held.VaporRight = over.Ratio;
        var (air, vapor, radiant) = held.Solve();
        double settling = VaporRight - (VaporAir * air) - (VaporVapor * vapor) - (vaporRadiant * radiant);
        return (air, vapor, radiant, settling);
    }

    private readonly double Radiant(double air, double vapor) =>
        radiantRadiant > 0.0
            ? (radiantRight - (radiantAir * air) - (radiantVapor * vapor)) / radiantRadiant
            : 0.0;
}
