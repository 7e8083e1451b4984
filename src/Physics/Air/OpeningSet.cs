using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Air;

/// <summary>An opening for air.</summary>
/// <param name="AreaSquareMeters">Gross area, m².</param>
/// <param name="HeightMeters">Height of its middle over any one level, m.</param>
/// <param name="ExtentMeters">
/// How high an upright opening is, 0 for one as thin as a line; 4 areas over perimeter of a level one, m.
/// </param>
/// <param name="IsLevel">True where it lies flat: two streams share it when the air below is lighter.</param>
/// <param name="Resistance">Viscous resistance of its mesh or slit, Δp = a v, Pa s/m; 0 without.</param>
/// <param name="Discharge">Discharge coefficient of the rest, Δp = ½ρ(v/C)².</param>
public readonly record struct AirOpening(
    double AreaSquareMeters,
    double HeightMeters,
    double ExtentMeters,
    bool IsLevel,
    double Resistance,
    double Discharge
)
{
    /// <summary>Slow end of Brundrett 1993 (recalled).</summary>
    public const double MeshFactor = 3.5;

    /// <summary>
    /// Discharge coefficient of an opening with sharp edges, 0.60 to 0.65 (CIBSE AM10, recalled).
    /// </summary>
    public const double SharpEdges = 0.6;

    private const double AirViscosity = 1.83e-5;

    /// <summary>
    /// Viscous resistance of a woven mesh, 3.5 μ/d (1 − ε²)/ε² with ε its open share: the slow end of
    /// Brundrett
    /// 1993, Journal of Fluids Engineering 115:239 (recalled), Pa s/m.
    /// </summary>
    /// <param name="apertureMeters">Clear opening between wires, m.</param>
    /// <param name="wireMeters">Thickness of the wires, m.</param>
    /// <param name="factor">The 3.5 of the formula.</param>
    public static double WovenMesh(double apertureMeters, double wireMeters, double factor = MeshFactor)
    {
        double share = apertureMeters / (apertureMeters + wireMeters);
        double open2 = share * share * share * share;
        return factor * AirViscosity / wireMeters * (1.0 - open2) / open2;
    }

    /// <summary>
    /// A slit between two plates: Q = b h³ Δp/(12 μ L), the exact flow of a thick liquid; with the kinetic
    /// term of a sharp opening on top for wide gaps.
    /// </summary>
    /// <param name="lengthMeters">Length of the slit, m.</param>
    /// <param name="gapMeters">Its width, m.</param>
    /// <param name="throughMeters">Its depth along the flow, m.</param>
    /// <param name="heightMeters">Height of its middle, m.</param>
    /// <param name="extentMeters">How high it reaches where it is upright, m.</param>
    /// <param name="discharge">Discharge coefficient of the kinetic term.</param>
    public static AirOpening Slit(
        double lengthMeters,
        double gapMeters,
        double throughMeters,
        double heightMeters,
        double extentMeters,
        double discharge = SharpEdges
    ) =>
        new(
            lengthMeters * gapMeters,
            heightMeters,
            extentMeters,
            false,
            12.0 * AirViscosity * throughMeters / (gapMeters * gapMeters),
            discharge
        );
}

/// <summary>What the exchange through openings rests on besides their shape.</summary>
public sealed record OpeningExchange
{
    /// <summary>As published, or chosen by us where nothing is.</summary>
    public static readonly OpeningExchange Usual = new();

    /// <summary>Q = 0.055 √(g Δρ D⁵/ρ) through a level opening (Epstein 1988, recalled).</summary>
    public double LevelExchange { get; init; } = 0.055;

    /// <summary>Δp = C² g Δρ D⁵/(2 A²) floods it; C of a rectangle (Cooper 1989, recalled).</summary>
    public double FloodingShape { get; init; } = 0.942;

    /// <summary>Still air before and behind an opening through which vapor diffuses, m: own choice.</summary>
    public double StillMeters { get; init; } = 0.04;

    /// <summary>
    /// Single-sided openings in gusty air pass 0.025 A U (Warren and Parkins 1985, recalled).
    /// </summary>
    public double Gusts { get; init; } = 0.025;

    /// <summary>U of draughts indoors, m/s: own choice.</summary>
    public double DraughtMetersPerSecond { get; init; } = 0.1;
}

/// <summary>
/// Air exchanged through the openings of a box by buoyancy. The speed a v + b v² = Δp is integrated over the
/// height of upright openings, and the pressure in the box is the one at which as much flows in as out (Bruce
/// 1978, recalled): stack and slot in one. A level opening with lighter air below lets two streams pass
/// besides (Epstein 1988; Cooper 1989, both
/// recalled), less as the net flow floods it; with lighter air above it does not. Diffusion and the
/// draughts of a room cross every opening besides, joined as the root of squares.
/// </summary>
public sealed class OpeningSet
{
    private const int Rounds = 60;
    private const double VaporDiffusion = 2.5e-5;
    private const double LeastGap = 1e-12;
    private const double SameEverywhere = 1e-6;
    private const int TableHalf = 128;
    private const double TableDensity = 0.1;
    private const double MiddleDensity = 1.19;
    private readonly double[] area;
    private readonly double[] height;
    private readonly double[] extent;
    private readonly double[] resistance;
    private readonly double[] kinetic;
    private readonly AirOpening[] level;
    private readonly double restless;
    private readonly OpeningExchange with;

    /// <summary>A set of openings.</summary>
    /// <param name="openings">Openings; none is a closed box.</param>
    /// <param name="exchange">What the exchange rests on; as published by default.</param>
    public OpeningSet(ImmutableArray<AirOpening> openings, OpeningExchange? exchange = null)
    {
        with = exchange ?? OpeningExchange.Usual;
        AirOpening[] open = [.. openings.Where(o => o.AreaSquareMeters > LeastGap)];
        area = [.. open.Select(o => o.AreaSquareMeters)];
        height = [.. open.Select(o => o.HeightMeters)];
        extent = [.. open.Select(o => o.IsLevel ? 0.0 : o.ExtentMeters)];
        resistance = [.. open.Select(o => o.Resistance)];
        kinetic = [.. open.Select(o => 0.5 / (o.Discharge * o.Discharge))];
        level = [.. open.Where(o => o.IsLevel)];
        restless =
            openings.Sum(o => o.AreaSquareMeters)
            * ((VaporDiffusion / with.StillMeters) + (with.Gusts * with.DraughtMetersPerSecond));
    }

    /// <summary>Air exchanged, m³/s: as much out as in.</summary>
    /// <param name="insideDensity">Density of the air inside, kg/m³.</param>
    /// <param name="outsideDensity">Density of the air outside, kg/m³.</param>
    /// <param name="fanCubicMetersPerSecond">Flow of a fan, joined as the root of squares, m³/s.</param>
    public double Exchange(double insideDensity, double outsideDensity, double fanCubicMetersPerSecond)
    {
        double buoyant = Buoyant(insideDensity, outsideDensity);
        return Math.Sqrt(
            (buoyant * buoyant) + (restless * restless) + (fanCubicMetersPerSecond * fanCubicMetersPerSecond)
        );
    }

    /// <summary>
    /// The same from a table over the difference of densities, at 1.19 kg/m³: within 1 % from −0.1 to 0.1
    /// kg/m³, where the density of the air itself changes by less.
    /// </summary>
    public OpeningFlow Tabulated()
    {
        var table = new double[(2 * TableHalf) + 1];
        for (int i = 0; i < table.Length; i++)
        {
            double root = (double)(i - TableHalf) / TableHalf;
            double lighter = root * Math.Abs(root) * TableDensity;
            table[i] = Buoyant(MiddleDensity - (0.5 * lighter), MiddleDensity + (0.5 * lighter));
        }

        return (inside, outside, fan) =>
        {
            double lighter = outside - inside;
            double root = Math.Sqrt(Math.Abs(lighter) / TableDensity);
            if (root >= 1.0)
            {
                return Exchange(inside, outside, fan);
            }

            double place = TableHalf + (lighter < 0.0 ? -root : root) * TableHalf;
            int i = Math.Min((int)place, table.Length - 2);
            double buoyant = table[i] + ((place - i) * (table[i + 1] - table[i]));
            return Math.Sqrt((buoyant * buoyant) + (restless * restless) + (fan * fan));
        };
    }

    /// <summary>Air that buoyancy alone exchanges, m³/s.</summary>
    /// <param name="insideDensity">Density of the air inside, kg/m³.</param>
    /// <param name="outsideDensity">Density of the air outside, kg/m³.</param>
    public double Buoyant(double insideDensity, double outsideDensity)
    {
        double lighter = outsideDensity - insideDensity;
        double density = 0.5 * (insideDensity + outsideDensity);
        double net = 0.0;
        double streams = 0.0;
        if (lighter != 0.0 && area.Length > 0)
        {
            double pull = lighter * Constants.StandardGravity;
            double pressure = Neutral(pull, density);
            net = Out(pressure, pull, density);
            foreach (var one in level)
            {
                streams += lighter > 0.0 ? Streams(one, pressure, pull, density) : 0.0;
            }
        }

        return net + streams;
    }

    /// <summary>
    /// Pressure in the box at level 0 at which in and out are equal, Pa, by false position.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Neutral(double pull, double density)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        for (int i = 0; i < height.Length; i++)
        {
            double half = 0.5 * Math.Abs(pull) * extent[i];
            low = Math.Min(low, (-pull * height[i]) - half);
            high = Math.Max(high, (-pull * height[i]) + half);
        }

        double below = Sum(low, pull, density);
        double above = Sum(high, pull, density);
        int side = 0;
        for (int k = 0; k < Rounds && above - below > 0.0; k++)
        {
            double at = ((low * above) - (high * below)) / (above - below);
            double sum = Sum(at, pull, density);
            if (Math.Abs(sum) <= 1e-9 * (above - below) || high - low < 1e-15)
            {
                return at;
            }

            if (sum > 0.0)
            {
                (high, above) = (at, sum);
                below = side == 1 ? 0.5 * below : below;
                side = 1;
            }
            else
            {
                (low, below) = (at, sum);
                above = side == -1 ? 0.5 * above : above;
                side = -1;
            }
        }

        return 0.5 * (low + high);
    }

    private double Sum(double pressure, double pull, double density)
    {
        double sum = 0.0;
        for (int i = 0; i < area.Length; i++)
        {
            sum += Flow(i, pressure, pull, density, false);
        }

        return sum;
    }

    private double Out(double pressure, double pull, double density)
    {
        double sum = 0.0;
        for (int i = 0; i < area.Length; i++)
        {
            sum += Flow(i, pressure, pull, density, true);
        }

        return sum;
    }

    /// <summary>Flow out of an opening, m³/s: the net of both ways, or what flows out alone.</summary>
    private double Flow(int i, double pressure, double pull, double density, bool isOutAlone)
    {
        double middle = pressure + (pull * height[i]);
        double rise = pull * extent[i];
        if (Math.Abs(rise) <= SameEverywhere * Math.Abs(middle))
        {
            double speed = Speed(middle, resistance[i], kinetic[i] * density);
            return isOutAlone && speed < 0.0 ? 0.0 : area[i] * speed;
        }

        double upper = middle + (0.5 * rise);
        double lower = middle - (0.5 * rise);
        if (isOutAlone)
        {
            (upper, lower) = (Math.Max(upper, 0.0), Math.Max(lower, 0.0));
        }

        double inertial = kinetic[i] * density;
        return area[i]
            / rise
            * (Integral(upper, resistance[i], inertial) - Integral(lower, resistance[i], inertial));
    }

    /// <summary>Integral of the speed over the pressure from 0: a v²/2 + 2 b v³/3.</summary>
    private static double Integral(double pascals, double viscous, double inertial)
    {
        double speed = Math.Abs(Speed(pascals, viscous, inertial));
        return speed * speed * ((0.5 * viscous) + (2.0 / 3.0 * inertial * speed));
    }

    /// <summary>Speed through an opening, m/s: a v + b v² = Δp, with its sign.</summary>
    private static double Speed(double pascals, double viscous, double inertial)
    {
        double drop = Math.Abs(pascals);
        double speed =
            2.0 * drop / (viscous + Math.Sqrt((viscous * viscous) + (4.0 * inertial * drop)) + 1e-12);
        return pascals < 0.0 ? -speed : speed;
    }

    /// <summary>
    /// Two streams through a level opening, each through half of it: K ρ v² + a v = Δρ g D, K =
    /// A²/(4·0.055²·D⁴);
    /// exact without mesh. They fade to nothing as the net pressure reaches that which floods the opening.
    /// </summary>
    private double Streams(AirOpening one, double pressure, double pull, double density)
    {
        double size = one.ExtentMeters > 0.0 ? one.ExtentMeters : Math.Sqrt(one.AreaSquareMeters);
        double size2 = size * size;
        double shape =
            one.AreaSquareMeters
            * one.AreaSquareMeters
            / (4.0 * with.LevelExchange * with.LevelExchange * size2 * size2);
        double speed = Speed(pull * size, one.Resistance, shape * density);
        double flooding =
            with.FloodingShape
            * with.FloodingShape
            * pull
            * size2
            * size2
            * size
            / (2.0 * one.AreaSquareMeters * one.AreaSquareMeters);
        double net = Math.Abs(pressure + (pull * one.HeightMeters));
        return 0.5 * speed * one.AreaSquareMeters * Math.Max(0.0, 1.0 - (net / flooding));
    }
}
