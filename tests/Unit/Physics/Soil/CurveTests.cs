using CsCheck;
using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Hydraulic curves against calculus and their own definitions.</summary>
public sealed class CurveTests
{
    private static readonly Gen<(VanGenuchten Curve, double Head)> Anywhere =
        from alpha in Spread.Decades(0.5, 500.0)
        from n in Spread.Between(1.1, 4.0)
        from l in Spread.Between(-2.0, 1.0)
        from entry in Spread.Between(0.0, 0.02)
        from beyond in Spread.Decades(1e-3, 1e3)
        select (VanGenuchten.Single((0.08, 0.85), alpha, n, 1e-4, l, entry), -entry - beyond);

    /// <summary>
    /// θ is flat at both ends, so the head comes back only as well as θ tells heads apart: the water content
    /// of the head must be the one asked for.
    /// </summary>
    [Fact]
    public void The_head_of_a_water_content_holds_that_water_content() =>
        Anywhere.Sample(
            pair =>
            {
                double theta = pair.Curve.WaterContent(pair.Head);
                Assert.Equal(theta, pair.Curve.WaterContent(pair.Curve.HeadMeters(theta)), 1e-11);
            },
            iter: 500
        );

    [Fact]
    public void The_head_of_a_water_content_stays_within_what_is_considered()
    {
        var curve = VanGenuchten.Single((0.1, 0.8), 15.0, 1.5, 1e-4);
        Assert.Equal(0.0, curve.HeadMeters(0.8));
        Assert.Equal(0.0, curve.HeadMeters(0.9));
        Assert.Equal(HydraulicCurve.DriestHeadMeters, curve.HeadMeters(0.1));
        Assert.Equal(HydraulicCurve.DriestHeadMeters, curve.HeadMeters(0.0));
    }

    /// <summary>
    /// Central difference over 1e-4 of the head: its own error is below 1e-6 of the slope.
    /// </summary>
    [Fact]
    public void Capacity_is_the_slope_of_the_water_content() =>
        Anywhere.Sample(
            pair =>
            {
                double step = 1e-4 * Math.Min(-pair.Head, -pair.Head - pair.Curve.Parameters.AirEntryMeters);
                double rise =
                    pair.Curve.WaterContent(pair.Head + step) - pair.Curve.WaterContent(pair.Head - step);
                double slope = rise / (2.0 * step);
                double roundOff = 1e-15 / step;
                Assert.Equal(slope, pair.Curve.CapacityPerMeter(pair.Head), (1e-6 * slope) + roundOff);
            },
            iter: 500
        );

    [Fact]
    public void A_drier_head_holds_less_and_conducts_less() =>
        Anywhere.Sample(
            pair =>
            {
                var (curve, head) = pair;
                Assert.InRange(curve.WaterContent(1.1 * head), 0.08, curve.WaterContent(head));
                Assert.InRange(
                    curve.ConductivityMetersPerSecond(1.1 * head),
                    0.0,
                    curve.ConductivityMetersPerSecond(head) * (1.0 + 1e-12)
                );
                Assert.InRange(curve.ConductivityMetersPerSecond(head), 0.0, 1e-4);
            },
            iter: 500
        );

    /// <summary>
    /// Cubics over 1/64 of an octave: θ within 1e-5 of itself, as the table says of itself.
    /// </summary>
    [Fact]
    public void The_table_holds_the_water_content_of_the_curve() =>
        Anywhere.Sample(
            pair =>
            {
                double theta = pair.Curve.WaterContent(pair.Head);
                Assert.Equal(theta, CurveTable.Of(pair.Curve).WaterContent(pair.Head), 1e-5 * theta);
            },
            iter: 300
        );

    /// <summary>
    /// K of the table is the slope of a cubic through Φ: off by at most √3/216 of the cube of the interval,
    /// 1/64 of the head, times K''' (Birkhoff and Priver 1967, recalled). For K falling as |h|^−p that is
    /// 3.06e-8·p(p + 1)(p + 2) of K at the wet end of the interval, itself (1 + 1/64)^p of K here; a
    /// tenth more for Simpson's rule.
    /// </summary>
    [Fact]
    public void The_table_conducts_as_the_curve() =>
        Anywhere.Sample(
            pair =>
            {
                CurveTable.Of(pair.Curve).At(pair.Head, out var point);
                double k = pair.Curve.ConductivityMetersPerSecond(pair.Head);
                double n = pair.Curve.Parameters.Modes[0].N;
                double p = (Math.Abs(pair.Curve.Parameters.L) * (n - 1.0)) + (2.0 * n);
                double bound = 1.1 * 3.06e-8 * p * (p + 1.0) * (p + 2.0) * Math.Pow(65.0 / 64.0, p);
                Assert.Equal(k, point.Conductivity, (bound * k) + 1e-30);
            },
            iter: 300
        );

    /// <summary>At h ≥ 0: θs, Ks, no capacity, and Φ rises by Ks for each meter.</summary>
    [Fact]
    public void Above_zero_the_table_is_saturated()
    {
        var table = CurveTable.Of(VanGenuchten.Single((0.1, 0.8), 15.0, 1.5, 2e-4));
        table.At(0.0, out var still);
        table.At(0.5, out var under);
        Assert.Equal(0.8, under.WaterContent);
        Assert.Equal(0.0, under.Capacity);
        Assert.Equal(2e-4, under.Conductivity);
        Assert.Equal(1e-4, under.FluxPotential - still.FluxPotential, 1e-18);
    }

    /// <summary>Φ of K = Ks·e^(αh) is K/α.</summary>
    [Theory]
    [InlineData(-0.05)]
    [InlineData(-0.2)]
    [InlineData(-1.0)]
    public void The_flux_potential_of_an_exponential_soil_is_its_conductivity_over_alpha(double head)
    {
        var table = CurveTable.Of(new Gardner(0.06, 0.4, 10.0, 3e-6));
        table.At(head, out var point);
        double expected = 3e-6 * Math.Exp(10.0 * head) / 10.0;
        Assert.Equal(expected, point.FluxPotential, 1e-5 * expected);
    }

    [Theory]
    [InlineData(0.5, 0.4, 1.5, 1e-4, 0.0)]
    [InlineData(-0.1, 0.4, 1.5, 1e-4, 0.0)]
    [InlineData(0.1, 1.1, 1.5, 1e-4, 0.0)]
    [InlineData(0.1, 0.4, 1.0, 1e-4, 0.0)]
    [InlineData(0.1, 0.4, 1.5, 0.0, 0.0)]
    [InlineData(0.1, 0.4, 1.5, 1e-4, -0.01)]
    [InlineData(0.1, 0.4, double.NaN, 1e-4, 0.0)]
    public void Parameters_that_are_not_physical_are_refused(
        double residual,
        double saturated,
        double n,
        double ks,
        double entry
    ) =>
        Assert.Throws<ArgumentException>(() =>
            VanGenuchten.Single((residual, saturated), 10.0, n, ks, 0.5, entry)
        );
}
