using CsCheck;
using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>
/// What must hold of every column, however odd: conservation and bounds, from first principles.
/// </summary>
public sealed class EvenColumnsTests
{
    private static readonly int Many = LongRun.Cases(400, 3000);
    private static readonly int Some = LongRun.Cases(200, 500);

    // A search over hundreds of designs should seldom meet one that does not come out.
    private const int OneIn = 200;
    private const double MostBalanceErrorMeters = 1e-6;
    private const double RoundOff = 1e-9;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    // Fixed, so that every run of the tests sees the same columns.
    private const string Seed = "0N0XIzNsQ0O2";

    /// <summary>Open to the air everything has a way out, so nearly every run must reach its end.</summary>
    [Fact]
    public void Under_open_air_columns_run_to_the_end_and_keep_their_water() =>
        Assert.InRange(Check(EvenColumns.Under(EvenColumns.Air), Many), 0, Many / OneIn);

    /// <summary>A given head takes and gives whatever it must.</summary>
    [Fact]
    public void Under_a_given_head_columns_run_to_the_end_and_keep_their_water() =>
        Assert.InRange(Check(EvenColumns.Under(EvenColumns.Head), Some), 0, Some / OneIn);

    /// <summary>
    /// A given flux into full pores over a closed floor has no answer: such a run may stop, saying when,
    /// where and why.
    /// </summary>
    [Fact]
    public void Under_a_given_flux_columns_keep_their_water_or_say_why_not() =>
        Check(EvenColumns.Under(EvenColumns.Flux), Some);

    /// <returns>Number of runs that stopped early.</returns>
    private static int Check(Gen<EvenColumn> gen, int count)
    {
        int stopped = 0;
        Parallel.ForEach(gen.Array[count].Single(_ => true, Seed).Select((one, i) => (one, i)), pair =>
        {
            var (one, i) = pair;
            using var patience = new CancellationTokenSource(Patience);
            var result = Richards.Run(
                one.Columns,
                one.Boundaries,
                one.Start,
                one.Spans,
                one.Control,
                patience.Token
            );
            if (Fault(one, result) is { } fault)
            {
                Assert.Fail($"column {i}: {fault}");
            }

            if (result.StoppedEarly is not null)
            {
                Interlocked.Increment(ref stopped);
            }
        });
        return stopped;
    }

    private static string? Fault(EvenColumn one, ColumnResult result) =>
        Numbers(result)
        ?? Stop(one, result)
        ?? (
            result.BalanceErrorMeters < MostBalanceErrorMeters
                ? null
                : $"the balance misses {result.BalanceErrorMeters} m"
        )
        ?? WaterContents(one.Columns, result.State)
        ?? Fluxes(one, result);

    private static string? Numbers(ColumnResult result)
    {
        var totals = result.Totals;
        double[] all =
        [
            .. result.State.HeadMeters,
            result.State.StoreMeters,
            totals.InMeters,
            totals.OutMeters,
            totals.EvaporatedMeters,
            totals.TranspiredMeters,
            totals.RunOffMeters,
            totals.StorageChangeMeters,
        ];
        return all.All(double.IsFinite) ? null : "a number is not finite";
    }

    private static string? Stop(EvenColumn one, ColumnResult result)
    {
        double end = one.Spans[^1].UntilSeconds;
        if (result.StoppedEarly is not { } stop)
        {
            return result.State.Seconds == end ? null : $"ended at {result.State.Seconds} s, not at {end} s";
        }

        bool isPlace = stop.DepthMeters >= 0.0 && stop.DepthMeters <= Deepest(one.Columns);
        return
            stop.Seconds >= 0.0
            && stop.Seconds < end
            && isPlace
            && !double.IsNaN(stop.Residual)
            && !string.IsNullOrWhiteSpace(stop.Reason)
            ? null
            : $"stopped early without a place or a reason: {stop}";
    }

    private static double Deepest(SoilColumns columns) =>
        Enumerable.Range(0, columns.Zones).Max(columns.LowerBoundaryMeters);

    private static string? WaterContents(SoilColumns columns, ColumnState state)
    {
        for (int i = 0; i < columns.ElementTable.Length; i++)
        {
            var table = columns.Tables[columns.ElementTable[i]];
            var (least, most) = (table.Curve.ResidualWaterContent, table.Curve.SaturatedWaterContent);
            foreach (int node in (int[])[i, i + columns.Zones])
            {
                double theta = table.WaterContent(state.HeadMeters[node]);
                if (!(theta >= least - RoundOff && theta <= most + RoundOff))
                {
                    return $"water content {theta} outside {least} to {most}";
                }
            }
        }

        return null;
    }

    /// <summary>Rain goes in or runs off; air and roots never get more than they ask for.</summary>
    private static string? Fluxes(EvenColumn one, ColumnResult result)
    {
        if (one.Boundaries.Top is not TopBoundary.Air)
        {
            return null;
        }

        var asked = Asked(one, result.State.Seconds);
        var totals = result.Totals;
        double share = 1e-9 * (1.0 + asked.RainMetersPerSecond);
        return Math.Abs(totals.InMeters + totals.RunOffMeters - asked.RainMetersPerSecond) > share
                ? $"{asked.RainMetersPerSecond} m of rain, {totals.InMeters} in, {totals.RunOffMeters} off"
            : !Lies(totals.EvaporatedMeters, asked.EvaporationMetersPerSecond) ? "evaporation out of bounds"
            : !Lies(totals.TranspiredMeters, asked.TranspirationMetersPerSecond) ? "uptake out of bounds"
            : totals.RunOffMeters < 0.0 ? "run-off below 0"
            : null;
    }

    private static bool Lies(double taken, double asked) => taken >= 0.0 && taken <= asked + RoundOff;

    /// <summary>The forcing summed to a time, m.</summary>
    private static SurfaceForcing Asked(EvenColumn one, double seconds)
    {
        double from = 0.0;
        var sum = new SurfaceForcing(0.0, 0.0, 0.0);
        foreach (var span in one.Spans)
        {
            double length = Math.Max(0.0, Math.Min(span.UntilSeconds, seconds) - from);
            sum = new SurfaceForcing(
                sum.RainMetersPerSecond + (length * span.Forcing.RainMetersPerSecond),
                sum.EvaporationMetersPerSecond + (length * span.Forcing.EvaporationMetersPerSecond),
                sum.TranspirationMetersPerSecond + (length * span.Forcing.TranspirationMetersPerSecond)
            );
            from = span.UntilSeconds;
        }

        return sum;
    }
}
