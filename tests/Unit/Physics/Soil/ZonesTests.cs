using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Several ground zones over one level.</summary>
public sealed class ZonesTests
{
    private static readonly VanGenuchten Coarse = VanGenuchten.Single((0.02, 0.36), 111.6, 2.7, 1e-2);
    private static readonly TopBoundary.Air Open = new(-100.0, 0.5);
    private static readonly SurfaceForcing Rain = new(0.004 / Columns.Hour, 0.0, 0.0);

    /// <summary>Three zones that are the same are one zone.</summary>
    [Fact]
    public void Zones_that_are_the_same_act_as_one()
    {
        var one = new SoilColumns([Zone(Columns.Mix, 1.0)]);
        var three = new SoilColumns([Zone(Columns.Mix, 0.5), Zone(Columns.Mix, 0.3), Zone(Columns.Mix, 0.2)]);
        var alone = Columns.Run(one, Open, new LowerBoundary.Closed(), one.AtRest(0.02), Columns.Day, Rain);
        var beside = Columns.Run(
            three,
            Open,
            new LowerBoundary.Closed(),
            three.AtRest(0.02),
            Columns.Day,
            Rain
        );
        for (int i = 0; i < beside.State.HeadMeters.Length; i++)
        {
            Assert.Equal(alone.State.HeadMeters[i / 3], beside.State.HeadMeters[i], 1e-6);
        }

        Assert.Equal(alone.Totals.InMeters, beside.Totals.InMeters, 1e-9);
    }

    /// <summary>Different soils at rest over one level stay at rest: h = level − height in each.</summary>
    [Fact]
    public void Different_zones_rest_over_one_level()
    {
        var columns = new SoilColumns([Zone(Columns.Mix, 0.6), Zone(Coarse, 0.4)]);
        var start = columns.AtRest(0.03);
        var result = Columns.Run(columns, Open, new LowerBoundary.Closed(), start, 10.0 * Columns.Day);
        for (int i = 0; i < start.HeadMeters.Length; i++)
        {
            Assert.Equal(start.HeadMeters[i], result.State.HeadMeters[i], 1e-8);
        }
    }

    /// <summary>
    /// Water that falls on both zones ends at rest over one new level, wherever it sank: the storage of that
    /// state is the old one and the rain.
    /// </summary>
    [Fact]
    public void Rain_finds_one_level_under_all_zones()
    {
        var columns = new SoilColumns([Zone(Columns.Mix, 0.6), Zone(Coarse, 0.4)]);
        var start = columns.AtRest(0.02);
        var shut = new LowerBoundary.Closed();
        var wet = Columns.Run(columns, Open, shut, start, Columns.Hour, Rain);
        var rest = Columns.Run(columns, Open, shut, wet.State, 30.0 * Columns.Day);
        double level = rest.State.HeadMeters[^1];
        Assert.True(level > 0.02);
        Assert.Equal(
            columns.StorageMeters(start) + 0.004,
            columns.StorageMeters(columns.AtRest(level)),
            1e-6
        );
        Assert.Equal(level - 0.1, rest.State.HeadMeters[0], 1e-3);
        Assert.Equal(level - 0.1, rest.State.HeadMeters[1], 1e-3);
    }

    [Fact]
    public void Zones_that_do_not_fit_together_are_refused()
    {
        var few = new SoilProfile([ColumnLayer.Even(Columns.Mix, 0.1, 10)], null, 0.5);
        Refused([]);
        Refused([Zone(Columns.Mix, 0.5), few]);
        Refused([Zone(Columns.Mix, 0.5), Zone(Columns.Mix, 0.4)]);
        Refused([new SoilProfile([new ColumnLayer(Columns.Mix, [0.01, 0.0])])]);
    }

    private static void Refused(ImmutableArray<SoilProfile> zones) =>
        Assert.Throws<ArgumentException>(() => new SoilColumns(zones));

    private static SoilProfile Zone(HydraulicCurve curve, double share) =>
        new([ColumnLayer.Even(curve, 0.1, 20)], null, share);
}
