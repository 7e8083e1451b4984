using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>
/// A mix from its components: volume, densities, water curve, conductivity. For loose, unaged growing media;
/// most published mixes lie within 5 % of linear mixing with filled voids (Blok and others, Acta
/// Horticulturae 819, abstract read). Settling, swelling and aging are left out. Not for
/// sand and loam: their grains pack by size, and their curves hold for soil that lies, not for heaps.
/// </summary>
public static class MixEstimate
{
    /// <summary>Density of organic solids, kg/m³ (EN 13041; recalled).</summary>
    public const double OrganicSolidsKilogramsPerCubicMeter = 1550.0;

    /// <summary>Density of mineral solids, kg/m³ (EN 13041; recalled).</summary>
    public const double MineralSolidsKilogramsPerCubicMeter = 2650.0;

    /// <summary>
    /// A component counts as coarse when it has lost more than half of the water it can give at this head.
    /// Most of its pores are then wider than 1 mm (0.297 cm² over the suction, Jurin), as between particles
    /// of 3 mm and more. Own choice. The knee of the curve would not do: with n near 1.4 it lies at the
    /// widest pores, so that fiber and vermiculite would pass for coarse.
    /// </summary>
    public const double CoarseHeadMeters = -0.03;

    /// <summary>Heads at which Mualem's l is fitted, m: −3, −10, −50 and −100 cm.</summary>
    public static readonly ImmutableArray<double> ConductivityHeadsMeters = [-0.03, -0.1, -0.5, -1.0];

    private const double LeastL = -2.0;
    private const double MostL = 9.0;

    /// <summary>
    /// Mixed volume where fines sift into the voids of the coarse part until these are full (threshold of
    /// Spomer 1974, recalled): V = Vc if Vf ≤ e·Vc, else Vc·(1 − e) + Vf.
    /// </summary>
    /// <param name="coarseCubicMeters">Loose volume of the coarse part Vc, m³.</param>
    /// <param name="finesCubicMeters">Loose volume of the fines Vf, m³.</param>
    /// <param name="coarseVoidShare">Void between the coarse particles e, 0 to 1.</param>
    /// <returns>Volume, m³.</returns>
    public static double IdealVolumeCubicMeters(
        double coarseCubicMeters,
        double finesCubicMeters,
        double coarseVoidShare
    ) =>
        finesCubicMeters <= coarseVoidShare * coarseCubicMeters
            ? coarseCubicMeters
            : (coarseCubicMeters * (1.0 - coarseVoidShare)) + finesCubicMeters;

    /// <summary>
    /// Mixed volume of a real mix, between loose volumes added and the ideal: (1 − η)(Vc + Vf) + η·V.
    /// </summary>
    /// <param name="coarseCubicMeters">Loose volume of the coarse part, m³.</param>
    /// <param name="finesCubicMeters">Loose volume of the fines, m³.</param>
    /// <param name="law">e and η.</param>
    /// <returns>Volume, m³.</returns>
    public static double MixedVolumeCubicMeters(
        double coarseCubicMeters,
        double finesCubicMeters,
        MixingLaw law
    ) =>
        ((1.0 - law.Filling) * (coarseCubicMeters + finesCubicMeters))
        + (law.Filling * IdealVolumeCubicMeters(coarseCubicMeters, finesCubicMeters, law.CoarseVoidShare));

    /// <summary>
    /// Mixed volume of any number of components: the loose volumes times the yield where it is known;
    /// otherwise those half drained at <see cref="CoarseHeadMeters"/> are added up as the coarse part, the
    /// others as the fines.
    /// </summary>
    /// <param name="parts">The components.</param>
    /// <param name="law">Yield, e and η.</param>
    /// <returns>Volume, m³.</returns>
    public static double MixedVolumeCubicMeters(ImmutableArray<MixPart> parts, MixingLaw law)
    {
        double loose = parts.Sum(p => p.VolumeCubicMeters);
        double coarse = parts.Where(IsCoarse).Sum(p => p.VolumeCubicMeters);
        return law.MixingYield is { } yield
            ? loose * yield
            : MixedVolumeCubicMeters(coarse, loose - coarse, law);
    }

    /// <summary>Density of the solids, 1/(F_organic/1550 + F_ash/2650), kg/m³ (EN 13041; recalled).</summary>
    /// <param name="ashShare">Share of the dry mass that does not burn, 0 to 1.</param>
    public static double ParticleDensityKilogramsPerCubicMeter(double ashShare) =>
        1.0
        / (
            ((1.0 - ashShare) / OrganicSolidsKilogramsPerCubicMeter)
            + (ashShare / MineralSolidsKilogramsPerCubicMeter)
        );

    /// <summary>
    /// Water content when saturated: porosity less entrapped air, but no more than the components hold
    /// when saturated alone, each in its own loose volume with its solids and closed pores shut out:
    /// θs = min(1 − ρ/ρs − air, 1 − Σ Vᵢ(1 − θsᵢ)/V). The second bound acts on closed pores, which densities
    /// do not show (expanded clay, perlite).
    /// </summary>
    /// <param name="parts">The components.</param>
    /// <param name="volumeCubicMeters">Mixed volume, m³.</param>
    /// <param name="entrappedAir">Entrapped air, m³/m³.</param>
    /// <returns>θs, m³/m³.</returns>
    public static double SaturatedWaterContent(
        ImmutableArray<MixPart> parts,
        double volumeCubicMeters,
        double entrappedAir
    )
    {
        double solids = parts.Sum(p => Mass(p) / ParticleDensityKilogramsPerCubicMeter(p.AshShare));
        double shut = parts.Sum(p => p.VolumeCubicMeters * (1.0 - p.Curve.SaturatedWaterContent));
        return 1.0 - Math.Max((solids / volumeCubicMeters) + entrappedAir, shut / volumeCubicMeters);
    }

    /// <summary>Conductivity of a random mix, ln K = Σ vᵢ ln Kᵢ with loose volume shares, m/s.</summary>
    /// <param name="parts">The components.</param>
    /// <param name="headMeters">Pressure head, m; K of every part must not vanish there.</param>
    public static double ConductivityMetersPerSecond(ImmutableArray<MixPart> parts, double headMeters) =>
        Math.Exp(
            parts.Sum(p => p.VolumeCubicMeters * Math.Log(p.Curve.ConductivityMetersPerSecond(headMeters)))
                / parts.Sum(p => p.VolumeCubicMeters)
        );

    /// <summary>
    /// The mix. Its conductivity when saturated is the random mix's, within a factor of 3 at best; Mualem's l
    /// is fitted to ln K of the random mix at <see cref="ConductivityHeadsMeters"/>, since retention alone
    /// does not tell K of such media (Price and others 2008, SSSAJ 72:487, abstract read). l is kept between
    /// −2 and 9, about the range of published peat and moss.
    /// </summary>
    /// <param name="parts">The components, at least one; K of none may vanish at −100 cm.</param>
    /// <param name="law">What mixing does.</param>
    /// <returns>
    /// Curve, misfits, volume and densities; null when the mix has no room for what its components keep at
    /// <see cref="MixRetention.RoomHeadMeters"/>.
    /// </returns>
    /// <exception cref="ArgumentException">There is no component or a value is out of its range.</exception>
    public static MixedSoil? Of(ImmutableArray<MixPart> parts, MixingLaw law)
    {
        if ((Fault(parts) ?? Fault(law)) is { } fault)
        {
            throw new ArgumentException(fault, nameof(parts));
        }

        double volume = MixedVolumeCubicMeters(parts, law);
        double mass = parts.Sum(Mass);
        double ash = parts.Sum(p => p.AshShare * Mass(p)) / mass;
        var target = MixRetention.Of(parts, volume, SaturatedWaterContent(parts, volume, law.EntrappedAir));
        if (target is null)
        {
            return null;
        }

        var (curve, misfit) = target.Refit();
        var (conducting, decades) = WithConductivity(curve, parts);
        return new MixedSoil(
            conducting,
            misfit,
            decades,
            volume,
            mass / volume,
            ParticleDensityKilogramsPerCubicMeter(ash)
        );
    }

    /// <summary>Least squares in ln K for l alone: ln K − ln K(l = 0) = l ln Se, a line through 0.</summary>
    private static (VanGenuchtenParameters Curve, double Decades) WithConductivity(
        VanGenuchtenParameters retention,
        ImmutableArray<MixPart> parts
    )
    {
        var flat = retention with { KsMetersPerSecond = ConductivityMetersPerSecond(parts, 0.0), L = 0.0 };
        var shape = new VanGenuchten(flat);
        var points = ConductivityHeadsMeters
            .Select(h =>
                (
                    Saturation: Math.Log((shape.WaterContent(h) - flat.ThetaR) / (flat.ThetaS - flat.ThetaR)),
                    Gap: Math.Log(
                        ConductivityMetersPerSecond(parts, h) / shape.ConductivityMetersPerSecond(h)
                    )
                )
            )
            .ToArray();
        double best = points.Sum(p => p.Saturation * p.Gap) / points.Sum(p => p.Saturation * p.Saturation);
        double l = Math.Clamp(best, LeastL, MostL);
        double squares = points.Average(p => Math.Pow(p.Gap - (l * p.Saturation), 2.0));
        return (flat with { L = l }, Math.Sqrt(squares) / Math.Log(10.0));
    }

    private static bool IsCoarse(MixPart part) =>
        part.Curve.WaterContent(CoarseHeadMeters)
        < 0.5 * (part.Curve.SaturatedWaterContent + part.Curve.ResidualWaterContent);

    private static double Mass(MixPart part) =>
        part.VolumeCubicMeters * part.DryDensityKilogramsPerCubicMeter;

    private static string? Fault(ImmutableArray<MixPart> parts) =>
        parts.IsDefaultOrEmpty ? "there is no component"
        : parts.Any(p => !(p.VolumeCubicMeters > 0.0)) ? "a component has no volume"
        : parts.Any(p => !(p.DryDensityKilogramsPerCubicMeter > 0.0)) ? "a component has no mass"
        : parts.Any(p => !(p.AshShare is >= 0.0 and <= 1.0)) ? "a share of ash is not between 0 and 1"
        : null;

    private static string? Fault(MixingLaw law) =>
        law.CoarseVoidShare is not (>= 0.0 and < 1.0) ? "the void of the coarse part is not between 0 and 1"
        : law.Filling is not (>= 0.0 and <= 1.0) ? "the filling of voids is not between 0 and 1"
        : law.EntrappedAir is not (>= 0.0 and < 1.0) ? "the entrapped air is not between 0 and 1"
        : law.MixingYield is not (null or > 0.0) ? "the mixing yield is not above 0"
        : null;
}
