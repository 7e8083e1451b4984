using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Soil;

/// <summary>What crossed the ends of the columns in a step, m over the whole area.</summary>
internal record struct StepFluxes(double In, double Out, double Evaporated, double Transpired, double RunOff);

/// <summary>
/// The equations of one implicit step, dV/dt = −div q in mixed form: residual and Jacobian at an iterate.
/// The flux of an element is q = K̄·(1 − Δh/Δz), K̄ = (Φb − Φa)/Δh the Kirchhoff mean, where its lower node b
/// is wetter. Where b is drier gravity takes K̄ too as far as the Jacobian stays an M-matrix, and the upper
/// node's K beyond (own blend; the rest after Szymkiewicz 2009, recalled). All agree where Δh = 0, and water
/// at rest stays at rest.
/// </summary>
internal sealed class ColumnEquations
{
    private const double SmallHead = 1e-4;
    private const double SameHead = 1e-4;
    private const double SmallFall = 1e-7;
    private const double LastTrace = 1e-5;
    private readonly SoilColumns columns;
    private readonly ColumnArrays arrays;
    private readonly SurfaceTerms surface;
    private readonly LowerBoundaryTerms foot;
    private readonly FeddesHeads[] stress;
    private readonly double[] elementMeters;
    private readonly double[] perElement;
    private readonly int[] elementTable;
    private readonly CurveTable[] tables;
    private readonly double[] rootShare;
    private readonly int[] rootNodes;
    private readonly int[] rootZones;
    private readonly double[] areaShare;
    private readonly double gravity;
    private readonly double[] frozenConductivity;
    private readonly bool[] isSteep;
    private StepFluxes fluxes;

    public ColumnEquations(SoilColumns columns, ColumnBoundaries boundaries, ColumnArrays arrays)
    {
        this.columns = columns;
        this.arrays = arrays;
        surface = new SurfaceTerms(boundaries.Top);
        foot = new LowerBoundaryTerms(boundaries.Foot, columns);
        var geometry = columns.Geometry;
        elementMeters = geometry.ElementMeters;
        perElement = geometry.PerElement;
        elementTable = geometry.ElementTable;
        tables = geometry.Tables;
        isSteep = geometry.IsSteepElement;
        rootShare = geometry.RootShare;
        areaShare = geometry.AreaShare;
        frozenConductivity = new double[elementMeters.Length];
        gravity = columns.HasGravity ? 1.0 : 0.0;
        stress = geometry.Stress;
        rootNodes = geometry.RootNodes;
        rootZones = geometry.RootZones;
    }

    /// <summary>Fluxes of the last assembly.</summary>
    public StepFluxes Fluxes => fluxes;

    /// <summary>Water of the shared foot node with its sump, m over the whole area.</summary>
    public double LowerWater { get; private set; }

    /// <summary>The same at the start of the step, less what the last step missed.</summary>
    public double OldLowerWater { get; set; }

    /// <summary>What the equation of the foot misses, m.</summary>
    public double LowerResidual { get; private set; }

    /// <summary>Slope of that equation with the head of the foot.</summary>
    public double LowerDiagonal { get; private set; }

    /// <summary>What the store below the foot holds, m.</summary>
    public double StoreMeters { get; set; }

    private int LowestNode => (columns.Nodes - 1) * columns.Zones;

    /// <summary>Sets the heads that the boundaries fix.</summary>
    public void Fix()
    {
        if (surface.FixedHead is { } top)
        {
            arrays.Head.AsSpan(0, columns.Zones).Fill(top);
        }

        if (foot.FixedHead is { } low)
        {
            arrays.Head.AsSpan(LowestNode).Fill(low);
        }
    }

    /// <summary>
    /// Freezes each element's conductivity at its mean at the present heads, or lets it go again. With frozen
    /// conductivities (Casulli and Zanolli 2010, recalled) only the storage is nonlinear: less accurate in
    /// time, balanced all the same, and solvable where the full equations are not.
    /// </summary>
    public void Freeze(bool frozen)
    {
        IsFrozen = frozen;
        if (frozen)
        {
            LookUp();
            for (int e = 0; e < frozenConductivity.Length; e++)
            {
                frozenConductivity[e] = 0.5 * (arrays.Top[e].Conductivity + arrays.Foot[e].Conductivity);
            }
        }
    }

    /// <summary>True while the conductivities of the start of the step are kept.</summary>
    public bool IsFrozen { get; private set; }

    /// <summary>
    /// True while gravity follows the upper node everywhere: of first order, and easier to solve.
    /// </summary>
    public bool IsCareful { get; set; }

    /// <summary>True where the heads are those of the last assembly, so that nothing is looked up.</summary>
    public bool IsKnown { get; set; }

    /// <summary>True for a node whose head is given.</summary>
    public bool IsFixed(int i) =>
        (i < columns.Zones && surface.FixedHead is not null)
        || (i >= LowestNode && foot.FixedHead is not null);

    /// <summary>Water of every node at the heads of the iterate, with its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Store()
    {
        if (IsKnown)
        {
            IsKnown = false;
            StoreFoot();
            return;
        }

        int zones = columns.Zones;
        LookUp();
        var (water, capacity) = (arrays.Water, arrays.Capacity);
        Array.Clear(water);
        Array.Clear(capacity);
        for (int e = 0; e < elementMeters.Length; e++)
        {
            double half = 0.5 * elementMeters[e];
            ref readonly var top = ref arrays.Top[e];
            ref readonly var low = ref arrays.Foot[e];
            water[e] += half * top.WaterContent;
            capacity[e] += half * top.Capacity;
            water[e + zones] += half * low.WaterContent;
            capacity[e + zones] += half * low.Capacity;
        }

        for (int zone = 0; surface.HasPond && zone < zones; zone++)
        {
            var pond = surface.Pond(arrays.Head[zone]);
            water[zone] += pond.Value;
            capacity[zone] += pond.Slope;
        }

        StoreFoot();
    }

    /// <summary>Residual and Jacobian of a step.</summary>
    /// <param name="forcing">What holds during the step.</param>
    /// <param name="seconds">Its length, s.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Assemble(in SurfaceForcing forcing, double seconds)
    {
        Store();
        var (residual, diagonal) = (arrays.Residual, arrays.Diagonal);
        for (int i = 0; i < residual.Length; i++)
        {
            residual[i] = arrays.Water[i] - arrays.OldWater[i];
            diagonal[i] = Math.Max(arrays.Capacity[i], arrays.LeastCapacity[i]);
        }

        residual.AsSpan(LowestNode).Clear();
        diagonal.AsSpan(LowestNode).Clear();
        fluxes = default;
        Flow(seconds);
        if (forcing.TranspirationMetersPerSecond != 0.0)
        {
            TakeUp(forcing.TranspirationMetersPerSecond * seconds);
        }

        Surface(forcing, seconds);
        Foot(seconds);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void LookUp()
    {
        int zones = columns.Zones;
        var (head, top, low) = (arrays.Head, arrays.Top, arrays.Foot);
        for (int e = 0; e < elementTable.Length; e++)
        {
            int table = elementTable[e];
            if (e >= zones && elementTable[e - zones] == table)
            {
                top[e] = low[e - zones];
            }
            else
            {
                tables[table].At(head[e], out top[e]);
            }

            tables[table].At(head[e + zones], out low[e]);
        }
    }

    private void StoreFoot()
    {
        double water = 0.0;
        double capacity = 0.0;
        for (int zone = 0; zone < columns.Zones; zone++)
        {
            water += areaShare[zone] * arrays.Water[LowestNode + zone];
            capacity +=
                areaShare[zone]
                * Math.Max(arrays.Capacity[LowestNode + zone], arrays.LeastCapacity[LowestNode + zone]);
        }

        double head = arrays.Head[LowestNode];
        LowerWater = water + (foot.SumpShare * Math.Max(0.0, head));
        LowerDiagonal = capacity + (head > 0.0 ? foot.SumpShare : 0.0);
        LowerResidual = LowerWater - OldLowerWater;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Flow(double seconds)
    {
        int zones = columns.Zones;
        var (head, residual, diagonal) = (arrays.Head, arrays.Residual, arrays.Diagonal);
        for (int e = 0; e < elementMeters.Length; e++)
        {
            double perMeter = perElement[e];
            ref readonly var a = ref arrays.Top[e];
            ref readonly var b = ref arrays.Foot[e];
            double d = head[e + zones] - head[e];
            double q;
            double slopeA;
            double slopeB;
            if (IsFrozen)
            {
                q = frozenConductivity[e] * (gravity - (d * perMeter));
                slopeA = frozenConductivity[e] * perMeter;
                slopeB = -slopeA;
            }
            else if (d < 0.0)
            {
                var carried =
                    IsCareful || isSteep[e]
                        ? (Value: a.Conductivity, SlopeA: a.ConductivitySlope, SlopeB: 0.0)
                        : Carried(a, b, -d, perMeter);
                q = ((a.FluxPotential - b.FluxPotential) * perMeter) + (gravity * carried.Value);
                slopeA = (a.Conductivity * perMeter) + (gravity * carried.SlopeA);
                slopeB = (gravity * carried.SlopeB) - (b.Conductivity * perMeter);
            }
            else
            {
                double drive = gravity - (d * perMeter);
                bool same = d < SameHead * (SmallHead + Math.Abs(head[e]));
                double per = same ? 0.0 : 1.0 / d;
                double mean = same
                    ? 0.5 * (a.Conductivity + b.Conductivity)
                    : (b.FluxPotential - a.FluxPotential) * per;
                double meanA = same ? 0.5 * a.ConductivitySlope : (mean - a.Conductivity) * per;
                double meanB = same ? 0.5 * b.ConductivitySlope : (b.Conductivity - mean) * per;
                q = mean * drive;
                slopeA = (mean * perMeter) + (drive * meanA);
                slopeB = (drive * meanB) - (mean * perMeter);
            }

            residual[e] += seconds * q;
            diagonal[e] += seconds * slopeA;
            arrays.Upper[e] = seconds * slopeB;
            arrays.Lower[e] = -seconds * slopeA;
            residual[e + zones] -= seconds * q;
            diagonal[e + zones] -= seconds * slopeB;
        }
    }

    /// <summary>
    /// The conductivity that gravity finds in an element whose upper node is wetter: the Kirchhoff mean, of
    /// second order, as far as the Jacobian stays an M-matrix, and that of the upper node beyond.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double Value, double SlopeA, double SlopeB) Carried(
        in CurvePoint a,
        in CurvePoint b,
        double fall,
        double perMeter
    )
    {
        double perFall = 1.0 / fall;
        double mean = (a.FluxPotential - b.FluxPotential) * perFall;
        double above = mean - b.Conductivity;
        double least = b.Conductivity * fall * perMeter;
        double less = a.Conductivity - mean;
        if (fall < SmallFall || above <= 0.0 || less <= 0.0)
        {
            return (a.Conductivity, a.ConductivitySlope, 0.0);
        }

        double meanA = less * perFall;
        double meanB = above * perFall;
        if (least >= above)
        {
            return (mean, meanA, meanB);
        }

        double perAbove = 1.0 / above;
        double share = least * perAbove;
        double shareA = share * (perFall - (meanA * perAbove));
        double shareB =
            (
                (b.ConductivitySlope * fall * perMeter)
                - (b.Conductivity * perMeter)
                - (share * (meanB - b.ConductivitySlope))
            ) * perAbove;
        return (
            a.Conductivity - (share * less),
            a.ConductivitySlope - (shareA * less) - (share * (a.ConductivitySlope - meanA)),
            -(shareB * less) + (share * meanB)
        );
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void TakeUp(double demandMeters)
    {
        var head = IsFrozen ? arrays.OldHead : arrays.Head;
        for (int k = 0; k < rootNodes.Length; k++)
        {
            int i = rootNodes[k];
            int zone = rootZones[k];

            // Uptake falls again where it is too wet: frozen too, or the step would not be convex.
            var (share, slope) = stress[zone].At(head[i]);
            slope = IsFrozen ? 0.0 : slope;
            double amount = demandMeters * rootShare[i];
            var there = Available(i);
            arrays.Residual[i] += amount * share * there.Value;
            arrays.Diagonal[i] += amount * ((slope * there.Value) + (share * there.Slope));
            fluxes.Transpired += areaShare[zone] * amount * share * there.Value;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Surface(in SurfaceForcing forcing, double seconds)
    {
        for (int zone = 0; zone < columns.Zones; zone++)
        {
            if (surface.FixedHead is not null)
            {
                // What enters is whatever the fixed head makes the top node take.
                fluxes.In += areaShare[zone] * arrays.Residual[zone];
                arrays.Residual[zone] = 0.0;
                arrays.Diagonal[zone] = 1.0;
                arrays.Upper[zone] = 0.0;
                continue;
            }

            double head = arrays.Head[zone];
            var there = Available(zone);
            var evaporation = surface.Evaporation(head);
            var runOff = surface.RunOff(head);
            double rain = seconds * forcing.RainMetersPerSecond;
            double demand = seconds * forcing.EvaporationMetersPerSecond;
            double taken = rain < 0.0 ? rain * there.Value : rain;
            double left = taken - (seconds * runOff.Value);
            double evaporated = demand * evaporation.Value * there.Value;
            arrays.Residual[zone] -= left - evaporated;
            arrays.Diagonal[zone] +=
                (seconds * runOff.Slope)
                + (demand * ((evaporation.Slope * there.Value) + (evaporation.Value * there.Slope)))
                - (Math.Min(rain, 0.0) * there.Slope);
            fluxes.In += areaShare[zone] * left;
            fluxes.RunOff += areaShare[zone] * seconds * runOff.Value;
            fluxes.Evaporated += areaShare[zone] * evaporated;
        }
    }

    /// <summary>
    /// Share of what is asked of a node that it can give: all, but for the last trace above the residual
    /// water content, which fades it to nothing.
    /// </summary>
    private Term Available(int i)
    {
        double trace = LastTrace * arrays.Width[i];
        double above = arrays.Water[i] - arrays.ResidualWater[i];
        return above >= trace ? new(1.0, 0.0)
            : above <= 0.0 ? default
            : new(above / trace, Math.Max(arrays.Capacity[i], 0.0) / trace);
    }

    private void Foot(double seconds)
    {
        for (int zone = 0; zone < columns.Zones; zone++)
        {
            LowerResidual += areaShare[zone] * arrays.Residual[LowestNode + zone];
            LowerDiagonal += areaShare[zone] * arrays.Diagonal[LowestNode + zone];
        }

        if (foot.FixedHead is not null)
        {
            fluxes.Out = -LowerResidual;
            LowerResidual = 0.0;
            LowerDiagonal = 1.0;
            return;
        }

        var leaves = foot.Out(arrays.Head[LowestNode], seconds, StoreMeters);
        if (foot.DrainsFreely)
        {
            for (int zone = 0; zone < columns.Zones; zone++)
            {
                ref readonly var low = ref arrays.Foot[LowestNode - columns.Zones + zone];
                leaves = new(
                    leaves.Value + (areaShare[zone] * seconds * low.Conductivity),
                    leaves.Slope + (areaShare[zone] * seconds * low.ConductivitySlope)
                );
            }
        }

        LowerResidual += leaves.Value;
        LowerDiagonal += leaves.Slope;
        fluxes.Out = leaves.Value;
    }

    /// <summary>True when the foot has a store, whose filling is booked after each step.</summary>
    public bool HasStore => foot.HasStore;
}
