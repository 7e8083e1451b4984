using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Surface and foot of a column, each against a sum done by hand.</summary>
public sealed class BoundaryTests
{
    private const double Depth = 0.1;
    private static readonly TopBoundary.Air Open = new(-100.0, 0.5);
    private static readonly LowerBoundary.Closed Shut = new();

    /// <summary>
    /// Full pores under a pond of 1 cm: 1 cm of rain makes it 2 cm, and every head rises by 1 cm.
    /// </summary>
    [Fact]
    public void Rain_on_full_pores_ponds()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(0.01 / Columns.Hour, 0.0, 0.0);
        var result = Columns.Run(columns, Open, Shut, columns.AtRest(Depth + 0.01), Columns.Hour, rain);
        Assert.Equal(0.02, result.State.HeadMeters[0], 1e-6);
        Assert.Equal(Depth + 0.02, result.State.HeadMeters[^1], 1e-6);
        Assert.Equal(0.01, result.Totals.InMeters, 1e-9);
    }

    /// <summary>
    /// Full pores, a pond of 1 cm at most 2 cm deep, 3 cm of rain: 2 cm run off, within 1 mm.
    /// </summary>
    [Fact]
    public void What_the_pond_does_not_hold_runs_off()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(0.03 / Columns.Hour, 0.0, 0.0);
        var top = new TopBoundary.Air(-100.0, 0.02);
        var result = Columns.Run(columns, top, Shut, columns.AtRest(Depth + 0.01), Columns.Hour, rain);
        Assert.Equal(0.02, result.Totals.RunOffMeters, 1.1e-3);
        Assert.Equal(0.02, result.State.HeadMeters[0], 1.1e-3);
        Assert.Equal(0.03, result.Totals.RunOffMeters + result.Totals.InMeters, 1e-9);
    }

    [Fact]
    public void A_wet_surface_gives_the_air_all_it_asks_for()
    {
        var columns = Columns.OfMix(Depth);
        var air = new SurfaceForcing(0.0, 0.005 / Columns.Day, 0.0);
        var result = Columns.Run(columns, Open, Shut, columns.AtRest(Depth + 0.02), Columns.Day, air);
        Assert.Equal(0.005, result.Totals.EvaporatedMeters, 1e-9);
        Assert.Equal(0.015, result.State.HeadMeters[0], 1e-6);
    }

    /// <summary>
    /// A thin layer without supply dries until its surface is as dry as the air lets it: then all of it is at
    /// that head, and what it lost is the difference of the water contents.
    /// </summary>
    [Fact]
    public void A_surface_gets_no_drier_than_the_air_lets_it()
    {
        var columns = Columns.OfMix(0.02);
        var air = new SurfaceForcing(0.0, 0.005 / Columns.Day, 0.0);
        var top = new TopBoundary.Air(-10.0, 0.0);
        var result = Columns.Run(columns, top, Shut, columns.AtRest(0.0), 200.0 * Columns.Day, air);
        // The equations are solved to 1e-7 of water content: the head may pass by as little.
        Assert.InRange(result.State.HeadMeters[0], -10.0 - 1e-6, -9.5);
        double left = 0.02 * Columns.Mix.WaterContent(-10.0);
        Assert.Equal(left, columns.StorageMeters(result.State), 1e-4);
    }

    /// <summary>Unit gradient everywhere: at h with K(h) = q nothing changes and q leaves below.</summary>
    [Fact]
    public void Free_drainage_lets_a_steady_flux_through()
    {
        var columns = Columns.OfMix(Depth);
        double flux = Columns.Mix.ConductivityMetersPerSecond(-0.05);
        var result = Columns.Run(
            columns,
            new TopBoundary.FixedFlux(),
            new LowerBoundary.FreeDrainage(),
            columns.From((_, _) => -0.05),
            Columns.Hour,
            new SurfaceForcing(flux, 0.0, 0.0)
        );
        Assert.All(result.State.HeadMeters, h => Assert.Equal(-0.05, h, 1e-5));
        Assert.Equal(flux * Columns.Hour, result.Totals.OutMeters, 1e-4 * flux * Columns.Hour);
    }

    /// <summary>
    /// In the steady state all rain leaves by the outlet: its excess head is rain/conductance.
    /// </summary>
    [Fact]
    public void An_outlet_stands_at_its_height_plus_rain_over_conductance()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(2e-6, 0.0, 0.0);
        var result = Columns.Run(
            columns,
            Open,
            new LowerBoundary.Closed(0.03, 1e-3),
            columns.AtRest(0.03),
            10.0 * Columns.Day,
            rain
        );
        Assert.Equal(0.032, result.State.HeadMeters[^1], 1e-6);
    }

    /// <summary>
    /// Full pores, a pond, and free water beside over half the area: 3 mm raise all by 3/1.5 mm.
    /// </summary>
    [Fact]
    public void A_sump_takes_its_share()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(0.003 / Columns.Day, 0.0, 0.0);
        var result = Columns.Run(
            columns,
            Open,
            new LowerBoundary.Closed(double.PositiveInfinity, 0.0, 0.5),
            columns.AtRest(Depth + 0.01),
            Columns.Day,
            rain
        );
        Assert.Equal(Depth + 0.012, result.State.HeadMeters[^1], 1e-5);
    }

    /// <summary>Under suction nothing leaves a seepage face; rain on a dry column stays in it.</summary>
    [Fact]
    public void A_seepage_face_holds_back_under_suction()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(0.002 / Columns.Hour, 0.0, 0.0);
        var result = Columns.Run(
            columns,
            Open,
            new LowerBoundary.SeepageFace(),
            columns.From((_, _) => -1.0),
            Columns.Hour,
            rain
        );
        Assert.Equal(0.0, result.Totals.OutMeters);
        Assert.True(result.State.HeadMeters[^1] < 0.0);
    }

    /// <summary>
    /// Drained for long, a column over a seepage face is at rest over its own foot: h = −height.
    /// </summary>
    [Fact]
    public void A_seepage_face_drains_to_rest()
    {
        var columns = Columns.OfMix(Depth);
        var result = Columns.Run(
            columns,
            Open,
            new LowerBoundary.SeepageFace(),
            columns.AtRest(Depth),
            20.0 * Columns.Day
        );
        Assert.Equal(-Depth, result.State.HeadMeters[0], 1e-4);
        Assert.Equal(0.0, result.State.HeadMeters[^1], 1e-4);
    }

    /// <summary>
    /// Room 0.02 · 0.25 = 5 mm: of 2 cm of rain on full pores 5 mm go down, the rest stands.
    /// </summary>
    [Fact]
    public void A_store_below_fills_and_then_closes()
    {
        var columns = Columns.OfMix(Depth);
        var rain = new SurfaceForcing(0.02 / Columns.Hour, 0.0, 0.0);
        var result = Columns.Run(
            columns,
            Open,
            new LowerBoundary.Store(0.02, 0.25),
            columns.AtRest(Depth + 0.005),
            Columns.Hour,
            rain
        );
        Assert.Equal(0.005, result.State.StoreMeters, 1e-9);
        Assert.Equal(0.005, result.Totals.OutMeters, 1e-9);
        Assert.Equal(0.02, result.State.HeadMeters[0], 1e-5);
    }

    /// <summary>
    /// Feddes: none too wet, half on the way, all in between, half at the middle of wilting, none.
    /// </summary>
    [Theory]
    [InlineData(-0.005, 0.0)]
    [InlineData(-0.03, 0.5)]
    [InlineData(-1.0, 1.0)]
    [InlineData(-41.5, 0.5)]
    [InlineData(-90.0, 0.0)]
    public void Roots_take_a_share_that_depends_on_the_head(double head, double share) =>
        Assert.Equal(share, new FeddesHeads(-0.01, -0.05, -3.0, -80.0).At(head).Share, 1e-12);

    /// <summary>
    /// All of the root zone between −5 and −300 cm: 1 mm asked for in a day is 1 mm taken.
    /// </summary>
    [Fact]
    public void Roots_in_moist_soil_take_all_they_want()
    {
        var roots = new RootZone(0.0, 0.05, new FeddesHeads(-0.01, -0.05, -3.0, -80.0));
        var columns = Columns.OfMix(Depth, roots);
        var air = new SurfaceForcing(0.0, 0.0, 0.001 / Columns.Day);
        var result = Columns.Run(columns, Open, Shut, columns.From((_, _) => -0.5), Columns.Day, air);
        Assert.Equal(0.001, result.Totals.TranspiredMeters, 1e-9);
        Assert.Equal(-0.001, result.Totals.StorageChangeMeters, 1e-7);
    }
}
