using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Litterfall.Physics.Soil;

/// <summary>
/// Steps through time: each step as long as its local error allows, shorter again where Newton's method
/// fails, and never past the end of a span. What an accepted step's equations still miss is carried into
/// the next step's old water, so that misses do not add up.
/// </summary>
internal sealed class RichardsRun
{
    private const double ShortestStepSeconds = 1e-6;
    private const double Rounding = 1e-9;
    private const double Safety = 0.9;
    private const double MostShrink = 0.3;
    private const double MostGrowth = 4.0;
    private const double FailureShrink = 0.25;
    private const double DryWaterContent = 1e-4;
    private const int MostSteps = 2_000_000;
    private const int MostPatience = 63;
    private const int MostFailures = 5_000;
    private readonly SoilColumns columns;
    private readonly ColumnArrays arrays;
    private readonly ColumnEquations equations;
    private readonly NewtonStep newton;
    private readonly StepControl control;
    private readonly double startWater;
    private SurfaceForcing lastForcing;
    private double nextSeconds;
    private double time;
    private double worstBalance;
    private int steps;
    private int failed;
    private int patience;
    private int frozenSteps;
    private int keptFrozen;
    private ColumnStop? stop;
    private double? reachedSeconds;

    public RichardsRun(
        SoilColumns columns,
        ColumnBoundaries boundaries,
        ColumnState start,
        StepControl control
    )
    {
        this.columns = columns;
        this.control = control;
        arrays = new ColumnArrays(columns);
        equations = new ColumnEquations(columns, boundaries, arrays) { StoreMeters = start.StoreMeters };
        newton = new NewtonStep(columns, arrays, equations, control.ResidualTolerance);
        time = start.Seconds;
        start.HeadMeters.CopyTo(arrays.Head);
        equations.Store();
        Array.Copy(arrays.Water, arrays.OldWater, arrays.Water.Length);
        equations.OldLowerWater = equations.LowerWater;
        startWater = Stored();
        TakeOver(start.OwedMeters);
        nextSeconds = control.FirstStepSeconds;
        lastForcing = new SurfaceForcing(double.NaN, 0.0, 0.0);
        equations.Fix();
    }

    public ColumnTotals Totals { get; private set; } = new();

    /// <summary>True where a change of the forcing leaves the step as long as it was.</summary>
    public bool KeepsStep { get; init; }

    public ColumnState State() =>
        new(time, ImmutableArray.Create(arrays.Head), equations.StoreMeters) { OwedMeters = Owed() };

    private ImmutableArray<double> Owed()
    {
        var owed = new double[arrays.Owed.Length];
        for (int i = 0; i < owed.Length; i++)
        {
            owed[i] = arrays.Owed[i] + arrays.Given[i];
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(owed);
    }

    /// <summary>What an earlier run missed enters the first step as it would have there.</summary>
    private void TakeOver(ImmutableArray<double> owed)
    {
        if (owed.IsDefaultOrEmpty)
        {
            return;
        }

        owed.CopyTo(arrays.Owed);
        int footNode = (columns.Nodes - 1) * columns.Zones;
        for (int i = 0; i < footNode; i++)
        {
            arrays.OldWater[i] -= Carried(0.0, i);
        }

        equations.OldLowerWater -= Carried(0.0, footNode);
    }

    public ColumnResult Result(ImmutableArray<ColumnReport> reports) =>
        new()
        {
            State = State(),
            Totals = Totals,
            Reports = reports,
            BalanceErrorMeters = worstBalance,
            Steps = steps,
            Iterations = newton.Iterations,
            FailedSteps = failed,
            FrozenSteps = keptFrozen,
            StoppedEarly = stop,
            ReachedSeconds = reachedSeconds,
        };

    /// <summary>Runs to the end of a span.</summary>
    /// <returns>False when it ended before.</returns>
    public bool Advance(in ForcingSpan span, CancellationToken cancel)
    {
        if (!KeepsStep && !IsAlike(span.Forcing, lastForcing))
        {
            nextSeconds = control.FirstStepSeconds;
        }

        lastForcing = span.Forcing;

        while (time < span.UntilSeconds)
        {
            cancel.ThrowIfCancellationRequested();
            double left = span.UntilSeconds - time;
            double seconds =
                left <= nextSeconds * 1.000001 ? left
                : left < 2.0 * nextSeconds ? 0.5 * left
                : nextSeconds;
            if (!TryStep(span.Forcing, ref seconds))
            {
                return false;
            }

            double before = time;
            time = seconds == left ? span.UntilSeconds : time + seconds;
            if (arrays.Head[^1] >= control.StopAtLowerHeadMeters)
            {
                double rise = arrays.Head[^1] - arrays.OldHead[^1];
                double share = rise > 0.0 ? (control.StopAtLowerHeadMeters - arrays.OldHead[^1]) / rise : 1.0;
                reachedSeconds = before + (Math.Clamp(share, 0.0, 1.0) * (time - before));
                return false;
            }
        }

        return true;
    }

    /// <summary>True for forcings that differ by rounding alone.</summary>
    private static bool IsAlike(in SurfaceForcing one, in SurfaceForcing other)
    {
        double most = Math.Abs(one.RainMetersPerSecond) + Math.Abs(one.EvaporationMetersPerSecond);
        double apart =
            Math.Abs(one.RainMetersPerSecond - other.RainMetersPerSecond)
            + Math.Abs(one.EvaporationMetersPerSecond - other.EvaporationMetersPerSecond)
            + Math.Abs(one.TranspirationMetersPerSecond - other.TranspirationMetersPerSecond);
        return apart <= Rounding * (most + Math.Abs(one.TranspirationMetersPerSecond));
    }

    /// <summary>One accepted step, shortened until it comes out.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool TryStep(in SurfaceForcing forcing, ref double seconds)
    {
        Array.Copy(arrays.Head, arrays.OldHead, arrays.Head.Length);
        for (int failures = 0; ;)
        {
            bool isFrozen = (failures + (frozenSteps > 0 ? 2 : 0)) % 3 == 2;
            equations.Freeze(isFrozen);
            equations.IsCareful = failures > 0;
            if (
                isFrozen
                    ? newton.TryDescend(forcing, seconds)
                    : newton.TrySolve(forcing, seconds, damped: failures % 2 == 0)
            )
            {
                double error = LocalError(seconds);
                if (error <= 2.0 * control.ErrorTolerance || seconds <= 1e-3 * control.FirstStepSeconds)
                {
                    Accept(seconds, error);
                    Remember(isFrozen);
                    return true;
                }

                seconds *= Math.Max(MostShrink, Safety * Math.Sqrt(control.ErrorTolerance / error));
            }
            else
            {
                failures++;
                failed++;
                seconds *= FailureShrink;
            }

            if (seconds < ShortestStepSeconds || steps >= MostSteps || failed >= MostFailures)
            {
                Stop();
                return false;
            }

            Array.Copy(arrays.OldHead, arrays.Head, arrays.Head.Length);
        }
    }

    /// <summary>
    /// Where only a frozen step came out, the next ones start frozen: one, then three, then seven, as often
    /// as the full equations fail again in between.
    /// </summary>
    private void Remember(bool isFrozen)
    {
        keptFrozen += isFrozen ? 1 : 0;
        if (frozenSteps > 0)
        {
            frozenSteps--;
        }
        else
        {
            patience = isFrozen ? Math.Min((2 * patience) + 1, MostPatience) : 0;
            frozenSteps = patience;
        }
    }

    /// <summary>
    /// Half the difference between this step's change and the last step's rate, as θ. Where the forcing is
    /// another each time, the last rate is no more than a guess, and the whole change counts if it is more.
    /// </summary>
    private double LocalError(double seconds)
    {
        int last = columns.Nodes * columns.Zones;
        int from = equations.IsFixed(0) ? columns.Zones : 0;
        int to = equations.IsFixed(last - 1) ? last - columns.Zones : last;
        return 0.5 * NodeLoops.Bend(arrays, (from, to), seconds, KeepsStep ? 1.0 : 0.0);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Accept(double seconds, double error)
    {
        steps++;
        equations.IsKnown = true;
        var fluxes = equations.Fluxes;
        int footNode = (columns.Nodes - 1) * columns.Zones;
        double perSecond = 1.0 / seconds;
        for (int i = 0; i < arrays.Water.Length; i++)
        {
            arrays.Rate[i] = (arrays.Water[i] - arrays.OldWater[i]) * perSecond;
            arrays.OldWater[i] = arrays.Water[i] - (i < footNode ? Carried(arrays.Residual[i], i) : 0.0);
        }

        equations.OldLowerWater = equations.LowerWater - Carried(equations.LowerResidual, footNode);
        if (equations.HasStore)
        {
            equations.StoreMeters += fluxes.Out;
        }

        Totals = new ColumnTotals
        {
            InMeters = Totals.InMeters + fluxes.In,
            OutMeters = Totals.OutMeters + fluxes.Out,
            EvaporatedMeters = Totals.EvaporatedMeters + fluxes.Evaporated,
            TranspiredMeters = Totals.TranspiredMeters + fluxes.Transpired,
            RunOffMeters = Totals.RunOffMeters + fluxes.RunOff,
            StorageChangeMeters = Stored() - startWater,
        };
        worstBalance = Math.Max(worstBalance, Math.Abs(Totals.MassBalanceErrorMeters));
        double factor = error > 0.0 ? Safety * Math.Sqrt(control.ErrorTolerance / error) : MostGrowth;
        nextSeconds = Math.Min(
            seconds * Math.Clamp(factor, MostShrink, MostGrowth),
            control.LongestStepSeconds
        );
    }

    /// <summary>
    /// The part of a miss that the next step makes good: all of it, but no more than half of what counts as
    /// solved at a node with next to no water to give, so that it still comes out. The rest stays owed.
    /// </summary>
    private double Carried(double miss, int node)
    {
        double most = 0.5 * control.ResidualTolerance * arrays.Width[node];
        double above = arrays.Water[node] - arrays.ResidualWater[node];
        double all = miss + arrays.Owed[node];
        double carried = above > DryWaterContent * arrays.Width[node] ? all : Math.Clamp(all, -most, most);
        arrays.Owed[node] = all - carried;
        arrays.Given[node] = carried;
        return carried;
    }

    /// <summary>Water in soil, pond and sump at the iterate, m over the whole area.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Stored()
    {
        int footNode = (columns.Nodes - 1) * columns.Zones;
        double[] water = arrays.Water;
        var share = columns.AreaShare;
        double sum = equations.LowerWater;
        for (int i = 0, zone = 0; i < footNode; i++)
        {
            sum += share[zone] * water[i];
            zone = zone + 1 < share.Length ? zone + 1 : 0;
        }

        return sum;
    }

    private void Stop()
    {
        int node = newton.WorstNode;
        stop = new ColumnStop(
            time,
            columns.DepthMeters[node],
            newton.WorstBalanceError,
            steps >= MostSteps || failed >= MostFailures
                ? "the run took too many steps"
                : "the equations of the shortest step have no solution: nothing takes or gives the water"
        );
        Array.Copy(arrays.OldHead, arrays.Head, arrays.Head.Length);
    }
}
