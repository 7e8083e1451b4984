using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Soil;

/// <summary>
/// Newton's method for one implicit step. The linear systems are tridiagonal down each zone and meet in the
/// foot. On the dry side of a node's knee the change is applied to its water content, not to its head
/// (variable switching after Forsyth, Wu and Pruess 1995, recalled), which costs nothing and keeps dry
/// fronts from overshooting; late iterations are damped where the miss does not fall.
/// </summary>
internal sealed class NewtonStep
{
    private const int MostIterations = 60;
    private const int UndampedIterations = 6;
    private const int MostHalvings = 16;
    private const int MostDescents = 200;
    private const int MostCuts = 60;
    private const double AlreadySolved = 1e-3;

    private const double LargeChange = 0.05;
    private const double LargestGrowth = 5.0;
    private const double LargestRiseMeters = 0.1;
    private const double LargestHeadMeters = 1e4;
    private const double WettestMeters = 1e-12;
    private readonly SoilColumns columns;
    private readonly ColumnArrays arrays;
    private readonly ColumnEquations equations;
    private readonly double tolerance;

    public NewtonStep(
        SoilColumns columns,
        ColumnArrays arrays,
        ColumnEquations equations,
        double residualTolerance
    )
    {
        this.columns = columns;
        this.arrays = arrays;
        this.equations = equations;
        tolerance = residualTolerance;
    }

    /// <summary>Linear systems solved so far.</summary>
    public int Iterations { get; private set; }

    /// <summary>Largest miss of a node's water content in the last assembly, m³/m³.</summary>
    public double WorstBalanceError { get; private set; }

    /// <summary>Node of that miss.</summary>
    public int WorstNode => Worst();

    /// <summary>Solves a step from the heads in the arrays.</summary>
    /// <returns>False when it did not come out; the heads are then of no use.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool TrySolve(in SurfaceForcing forcing, double seconds, bool damped)
    {
        double lastNorm = double.PositiveInfinity;
        int halvings = 0;
        for (int iteration = 1; iteration <= MostIterations; iteration++)
        {
            equations.Assemble(forcing, seconds);
            double norm = Measure();
            if (!double.IsFinite(norm) || IsBurst())
            {
                return false;
            }

            if (
                WorstBalanceError < tolerance
                && (iteration > 1 || WorstBalanceError < tolerance * AlreadySolved)
            )
            {
                return true;
            }

            if (damped && iteration > UndampedIterations && norm >= lastNorm && halvings < MostHalvings)
            {
                Halve();
                halvings++;
                continue;
            }

            lastNorm = norm;
            halvings = 0;
            Iterations++;
            if (!SolveLinear())
            {
                return false;
            }

            Update();
        }

        return false;
    }

    /// <summary>
    /// Solves a step with frozen conductivities. Water stored and water lost then only grow with the head and
    /// the flow is symmetric, so the equations are the slope of a convex function, and Newton's direction
    /// with a search along it comes out from anywhere, where a solution exists.
    /// </summary>
    /// <returns>False when it did not come out; the heads are then of no use.</returns>
    public bool TryDescend(in SurfaceForcing forcing, double seconds)
    {
        for (int iteration = 1; iteration <= MostDescents; iteration++)
        {
            equations.Assemble(forcing, seconds);
            double norm = Measure();
            if (!double.IsFinite(norm) || IsBurst())
            {
                return false;
            }
            if (WorstBalanceError < tolerance)
            {
                return true;
            }

            Iterations++;
            if (!SolveLinear())
            {
                return false;
            }

            Update();
            for (int i = 0; i < arrays.Change.Length; i++)
            {
                arrays.Change[i] = arrays.Head[i] - arrays.LastHead[i];
            }

            SearchAlong(forcing, seconds);
        }

        return false;
    }

    /// <summary>
    /// Stops along the change where the slope has at least halved: bisection, as it only grows.
    /// </summary>
    private void SearchAlong(in SurfaceForcing forcing, double seconds)
    {
        double start = SlopeAlong();
        var (near, far, at) = (0.0, 1.0, 1.0);
        for (int cut = 0; cut < MostCuts && start < 0.0; cut++)
        {
            equations.Assemble(forcing, seconds);
            double slope = SlopeAlong();
            if (Math.Abs(slope) <= -0.5 * start || (at == 1.0 && slope < 0.0))
            {
                return;
            }

            (near, far) = slope < 0.0 ? (at, far) : (near, at);
            at = 0.5 * (near + far);
            for (int i = 0; i < arrays.Head.Length; i++)
            {
                arrays.Head[i] = arrays.LastHead[i] + (at * arrays.Change[i]);
            }
        }
    }

    /// <summary>Slope of the convex function along the change, at the last assembly.</summary>
    private double SlopeAlong()
    {
        int footNode = (columns.Nodes - 1) * columns.Zones;
        double slope = equations.LowerResidual * arrays.Change[footNode];
        for (int i = 0; i < footNode; i++)
        {
            slope += columns.AreaShare[i % columns.Zones] * arrays.Residual[i] * arrays.Change[i];
        }

        return slope;
    }

    /// <summary>True where the head passes any that a column can have: full pores with no way out.</summary>
    private bool IsBurst() => NodeLoops.Largest(arrays.Head) > LargestHeadMeters;

    /// <summary>Norm of the miss, and how large it is where it is worst.</summary>
    private double Measure()
    {
        int footNode = FootNode;
        double lowest = LowestMiss();
        var (sum, worst) = NodeLoops.Misses(arrays, footNode);
        WorstBalanceError = Math.Max(lowest, worst);
        return (lowest * lowest * arrays.Width[footNode]) + sum;
    }

    private int FootNode => (columns.Nodes - 1) * columns.Zones;

    private double LowestMiss() =>
        NodeLoops.Miss(
            equations.LowerResidual,
            equations.LowerDiagonal,
            arrays.Head[FootNode],
            arrays.PerWidth[FootNode]
        );

    /// <summary>Node of the worst miss of the last assembly, before anything was eliminated in it.</summary>
    private int Worst()
    {
        int worst = FootNode;
        double most = LowestMiss();
        for (int i = 0; i < FootNode; i++)
        {
            double miss = Math.Abs(arrays.Residual[i]) * arrays.PerWidth[i];
            (worst, most) = miss > most ? (i, miss) : (worst, most);
        }

        return worst;
    }

    private void Halve()
    {
        var (head, last) = (arrays.Head, arrays.LastHead);
        for (int i = 0; i < head.Length; i++)
        {
            head[i] = last[i] + (0.5 * (head[i] - last[i]));
        }
    }

    /// <summary>
    /// Eliminates each zone from the surface down into the shared foot, then back. The diagonal is left as
    /// one over itself: divided by once, used twice.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool SolveLinear()
    {
        int zones = columns.Zones;
        int footNode = (columns.Nodes - 1) * zones;
        var (diagonal, right, upper, lower) = (arrays.Diagonal, arrays.Right, arrays.Upper, arrays.Lower);
        var change = arrays.Change;
        Array.Copy(arrays.Residual, right, footNode);
        for (int i = 0; i < footNode; i++)
        {
            double pivot = diagonal[i];
            if (i >= zones)
            {
                double factor = lower[i - zones] * diagonal[i - zones];
                pivot -= factor * upper[i - zones];
                right[i] -= factor * right[i - zones];
            }

            diagonal[i] = 1.0 / pivot;
        }

        double footDiagonal = equations.LowerDiagonal;
        double footRight = equations.LowerResidual;
        for (int zone = 0; zone < zones && !equations.IsFixed(footNode); zone++)
        {
            int i = footNode - zones + zone;
            double factor = columns.AreaShare[zone] * lower[i] * diagonal[i];
            footDiagonal -= factor * upper[i];
            footRight -= factor * right[i];
        }

        double footChange = -footRight / footDiagonal;
        if (!double.IsFinite(footChange))
        {
            return false;
        }

        for (int zone = 0; zone < zones; zone++)
        {
            change[footNode + zone] = footChange;
        }

        for (int i = footNode - 1; i >= 0; i--)
        {
            change[i] = -(right[i] + (upper[i] * change[i + zones])) * diagonal[i];
            if (!double.IsFinite(change[i]))
            {
                return false;
            }
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Update()
    {
        int footNode = (columns.Nodes - 1) * columns.Zones;
        var (head, change, knee) = (arrays.Head, arrays.Change, arrays.Knee);
        Array.Copy(head, arrays.LastHead, head.Length);
        for (int i = 0; i < footNode; i++)
        {
            // Most changes are small ones of dry nodes, which no bound meets but the driest head.
            if (head[i] <= knee[i] && Math.Abs(change[i]) <= LargeChange * Math.Abs(head[i]))
            {
                head[i] = Math.Max(head[i] + change[i], HydraulicCurve.DriestHeadMeters);
            }
            else
            {
                Move(i);
            }
        }

        Move(footNode);
        arrays.Head.AsSpan(footNode).Fill(arrays.Head[footNode]);
    }

    private void Move(int i)
    {
        double head = arrays.Head[i];
        double change = arrays.Change[i];
        double knee = arrays.Knee[i];
        double next = head + change;
        if (head > knee)
        {
            bool isLarge = Math.Abs(change) > LargeChange * Math.Abs(head);
            bool isSteep = isLarge && arrays.IsSteep[i] && !equations.IsFrozen;
            next = Math.Max(isSteep ? ByConductivity(i, change) : next, knee);
        }
        else if (Math.Abs(change) > LargeChange * Math.Abs(head) && !equations.IsFixed(i))
        {
            next = ByWater(i, change);
        }

        double farthest = (LargestGrowth * Math.Abs(head)) + LargestRiseMeters;
        arrays.Head[i] = Math.Clamp(
            next,
            Math.Max(head - farthest, HydraulicCurve.DriestHeadMeters),
            head + farthest
        );
    }

    /// <summary>
    /// Near saturation, where the slope of K has no bound: the head at which the node conducts what Newton's
    /// change asks for. θ and Φ are smooth in K; the change stops at h = 0 on its way up and just below it on
    /// its way down, where the slopes are those of the other side.
    /// </summary>
    private double ByConductivity(int i, double change)
    {
        double head = arrays.Head[i];
        if (head >= 0.0)
        {
            return head + change >= 0.0 ? head + change : -WettestMeters;
        }

        bool isBelow = i < arrays.Top.Length;
        ref readonly var point = ref isBelow ? ref arrays.Top[i] : ref arrays.Foot[i - columns.Zones];
        var table = columns.Tables[columns.ElementTable[isBelow ? i : i - columns.Zones]];
        double target = point.Conductivity + (point.ConductivitySlope * change);
        if (target >= table.Curve.SaturatedConductivityMetersPerSecond)
        {
            return 0.0;
        }

        double knee = arrays.Knee[i];
        table.At(knee, out var driest);
        if (target <= driest.Conductivity)
        {
            return knee;
        }

        double wet = Math.Log(WettestMeters);
        double dry = Math.Log(-knee);
        double at = Math.Clamp(Math.Log(-head), wet, dry);
        for (int k = 0; k < 40; k++)
        {
            head = -Math.Exp(at);
            table.At(head, out var here);
            double miss = here.Conductivity - target;
            (wet, dry) = miss > 0.0 ? (at, dry) : (wet, at);
            double next = at - (miss / (here.ConductivitySlope * head));
            next = next > wet && next < dry ? next : 0.5 * (wet + dry);
            if (Math.Abs(next - at) < 1e-9)
            {
                return -Math.Exp(next);
            }

            at = next;
        }

        return -Math.Exp(at);
    }

    /// <summary>The head at which the node holds the water that Newton's change asks for.</summary>
    private double ByWater(int i, double change)
    {
        double slope = arrays.Capacity[i];
        double target = arrays.Water[i] + (slope * change);
        double knee = arrays.Knee[i];
        var (kneeWater, kneeSlope) = Water(i, knee);
        return target <= kneeWater
            ? Invert(i, target)
            : knee + ((target - kneeWater) / Math.Max(kneeSlope, double.Epsilon));
    }

    /// <summary>Newton in ln|h| between safe ends.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Invert(int i, double target)
    {
        double wet = Math.Log(-arrays.Knee[i]);
        double dry = Math.Log(-HydraulicCurve.DriestHeadMeters);
        double at = Math.Clamp(Math.Log(-arrays.Head[i]), wet, dry);
        for (int k = 0; k < 40; k++)
        {
            double head = -Math.Exp(at);
            var (water, slope) = Water(i, head);
            double miss = water - target;
            if (miss > 0.0)
            {
                wet = at;
            }
            else
            {
                dry = at;
            }

            double next = at - (miss / (slope * head));
            next = next > wet && next < dry ? next : 0.5 * (wet + dry);
            if (Math.Abs(next - at) < 1e-9)
            {
                return -Math.Exp(next);
            }

            at = next;
        }

        return -Math.Exp(at);
    }

    /// <summary>
    /// Water of a node's half cells and its slope; no pond, which is empty on the dry side.
    /// </summary>
    private (double Water, double Slope) Water(int i, double head)
    {
        double water = 0.0;
        double slope = 0.0;
        for (int side = 0; side < 2; side++)
        {
            int e = i - (side * columns.Zones);
            if (e >= 0 && e < columns.ElementMeters.Length)
            {
                double half = 0.5 * columns.ElementMeters[e];
                columns.Tables[columns.ElementTable[e]].At(head, out var point);
                water += half * point.WaterContent;
                slope += half * point.Capacity;
            }
        }

        return (water, slope);
    }
}
