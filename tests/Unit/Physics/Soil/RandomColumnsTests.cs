using System.Collections.Concurrent;
using CsCheck;
using Litterfall.Physics.Soil;
using Xunit;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>
/// Whatever the column and the weather, a run ends, stays finite and within the pores, and its books close;
/// where it gives up it says when, where, by how much and why. What must hold follows from conservation of
/// water and from θr ≤ θ ≤ θs, not from earlier runs.
/// </summary>
public sealed class RandomColumnsTests
{
    private static readonly int PublishedRuns = LongRun.Cases(1000, 4000);
    private static readonly int OpenRuns = LongRun.Cases(500, 2000);
    private static readonly int HeldRuns = LongRun.Cases(200, 600);
    private const double LargestBalanceErrorMeters = 1e-6;

    // Our own bound for "seldom"; a few hundred columns are too few to tell.
    private const int OneStopIn = 500;

    // Newton's method may take 60 systems a step, and no more steps may be given up than come out.
    private const int MostSystemsPerStep = 60;

    // No bound on speed: only what tells a run that never ends from a slow machine.
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(5);

    [Fact]
    public void Columns_of_published_soils_close_their_books_and_seldom_stop() =>
        Assert.InRange(Stops(RandomColumns.OfPublishedSoils, PublishedRuns), 0, PublishedRuns / OneStopIn);

    [Fact]
    public void Columns_of_any_soils_close_their_books_and_seldom_stop() =>
        Assert.InRange(Stops(RandomColumns.Open, OpenRuns), 0, OpenRuns / OneStopIn);

    [Fact]
    public void Columns_with_a_held_surface_close_their_books() =>
        EachOf(RandomColumns.Held, HeldRuns, one => Holds(one));

    private static int Stops(Gen<ColumnCase> columns, int runs)
    {
        int stopped = 0;
        EachOf(columns, runs, one =>
        {
            if (Holds(one))
            {
                Interlocked.Increment(ref stopped);
            }
        });
        return stopped;
    }

    /// <summary>The same columns every time: a gate must not depend on luck.</summary>
    private static void EachOf(Gen<ColumnCase> columns, int runs, Action<ColumnCase> check)
    {
        var random = new PCG(1, 1);
        var cases = Enumerable.Range(0, runs).Select(one => columns.Generate(random, null, out Size _));
        Parallel.ForEach(Partitioner.Create(cases, EnumerablePartitionerOptions.NoBuffering), one =>
        {
            try
            {
                check(one);
            }
            catch (Xunit.Sdk.XunitException wrong)
            {
                Assert.Fail($"{wrong.Message}\n{one}");
            }
        });
    }

    /// <summary>Checks a run.</summary>
    /// <returns>True when it stopped early.</returns>
    private static bool Holds(ColumnCase one)
    {
        using var hang = new CancellationTokenSource(Hang);
        var result = one.Run(hang.Token);
        Assert.All(result.State.HeadMeters, head => Assert.True(double.IsFinite(head)));
        Assert.All(result.Reports, r => WithinPores(one.Columns, r.State));
        WithinPores(one.Columns, result.State);
        Assert.InRange(
            result.Iterations,
            0,
            MostSystemsPerStep * ((2 * (result.Steps + result.FailedSteps)) + 1)
        );
        if (result.StoppedEarly is { } stop)
        {
            Says(one, stop);
            return true;
        }

        Assert.Equal(one.Spans.Length, result.Reports.Length);
        Assert.Equal(one.Spans[^1].UntilSeconds, result.State.Seconds);
        Assert.InRange(Math.Abs(result.Totals.MassBalanceErrorMeters), 0.0, LargestBalanceErrorMeters);
        Assert.InRange(result.BalanceErrorMeters, 0.0, LargestBalanceErrorMeters);
        return false;
    }

    private static void WithinPores(SoilColumns columns, ColumnState state)
    {
        for (int e = 0; e < columns.ElementMeters.Length; e++)
        {
            var table = columns.Tables[columns.ElementTable[e]];
            foreach (double head in new[] { state.HeadMeters[e], state.HeadMeters[e + columns.Zones] })
            {
                Assert.InRange(
                    table.WaterContent(head),
                    table.Curve.ResidualWaterContent - 1e-12,
                    table.Curve.SaturatedWaterContent + 1e-12
                );
            }
        }
    }

    private static void Says(ColumnCase one, ColumnStop stop)
    {
        Assert.InRange(stop.Seconds, 0.0, one.Spans[^1].UntilSeconds);
        double foot = Enumerable.Range(0, one.Columns.Zones).Max(one.Columns.LowerBoundaryMeters);
        Assert.InRange(stop.DepthMeters, 0.0, foot);
        Assert.False(string.IsNullOrWhiteSpace(stop.Reason));
        Assert.False(double.IsNaN(stop.Residual));
        Assert.NotEqual(0.0, stop.Residual);
    }
}
