using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Mixes against arithmetic by hand and against curves known beforehand.</summary>
public sealed class MixEstimateTests
{
    private const double Cm = 0.01;
    private const double CmPerHour = 0.01 / 3600.0;
    private static readonly VanGenuchten bark = Curve(
        0.08,
        0.79,
        1500,
        (0.727, 0.63, 2.8),
        (0.273, 0.0165, 1.217)
    );
    private static readonly VanGenuchten chunks = Curve(
        0.08,
        0.78,
        3600,
        (0.77, 1.26, 2.8),
        (0.23, 0.0231, 1.2)
    );
    private static readonly VanGenuchten peat = Curve(0.097, 0.94, 60, (1.0, 0.124, 1.538));
    private static readonly VanGenuchten loam = Curve(0.078, 0.43, 1.04, (1.0, 0.036, 1.56));

    [Fact]
    public void FinesFillTheVoidsAndTheRestAddsUp()
    {
        // Vc = Vf = 10 L, e 0.45, η 0.4: 5.5 + 10 = 15.5; 0.6·20 + 0.4·15.5 = 18.2.
        Assert.Equal(15.5, MixEstimate.IdealVolumeCubicMeters(10, 10, 0.45), 1e-12);
        Assert.Equal(18.2, MixEstimate.MixedVolumeCubicMeters(10, 10, new MixingLaw()), 1e-12);
        // Just enough fines for the voids: both branches give the coarse volume.
        Assert.Equal(10, MixEstimate.IdealVolumeCubicMeters(10, 4.5, 0.45), 1e-12);
        Assert.Equal(10, MixEstimate.IdealVolumeCubicMeters(10, 4.5 + 1e-13, 0.45), 1e-12);
        Assert.Equal(10, MixEstimate.IdealVolumeCubicMeters(10, 2, 0.45), 1e-12);
    }

    [Fact]
    public void ManyPartsAreAddedUpAsCoarseAndFine()
    {
        ImmutableArray<MixPart> parts =
        [
            new(4, bark, 200, 0),
            new(3, peat, 90, 0),
            new(6, bark, 190, 0),
            new(7, peat, 110, 0),
        ];
        Assert.Equal(18.2, MixEstimate.MixedVolumeCubicMeters(parts, new MixingLaw()), 1e-12);
        Assert.Equal(
            17.6,
            MixEstimate.MixedVolumeCubicMeters(parts, new MixingLaw { MixingYield = 0.88 }),
            1e-12
        );
    }

    [Fact]
    public void HalfAshLiesBetween() =>
        // 2·1550·2650/(1550 + 2650) by hand.
        Assert.Equal(1955.952, MixEstimate.ParticleDensityKilogramsPerCubicMeter(0.5), 5e-4);

    [Fact]
    public void PoresAreWhatSolidsAirAndClosedPoresLeave()
    {
        // 155 kg/m³ of organic matter are 0.1 of solids; 0.04 of air stays in: 0.86.
        Assert.Equal(0.86, MixEstimate.SaturatedWaterContent([new(2, peat, 155, 0)], 2, 0.04), 1e-12);
        // The same solids in loam that holds 0.43: 0.43. At 0.95 of the volume 1 − 0.57/0.95 = 0.40.
        Assert.Equal(0.43, MixEstimate.SaturatedWaterContent([new(2, loam, 155, 0)], 2, 0.04), 1e-12);
        Assert.Equal(0.40, MixEstimate.SaturatedWaterContent([new(2, loam, 155, 0)], 1.9, 0.04), 1e-12);
    }

    [Fact]
    public void WaterOfThePartsIsKept()
    {
        // By hand: bark holds 0.28893, 0.25573, 0.24122 and peat 0.71834, 0.40646, 0.31299 at -10, -50 and
        // -100 cm; halves over 0.91 of the loose volume: 0.55344, 0.36384, 0.30451.
        var mix = MixEstimate.Of([new(5, bark, 200, 0), new(5, peat, 90, 0)], new MixingLaw())!;
        Assert.Equal(9.1, mix.VolumeCubicMeters, 1e-12);
        Assert.Equal(159.341, mix.DryDensityKilogramsPerCubicMeter, 5e-4);
        var curve = new VanGenuchten(mix.Parameters);
        Assert.Equal(0.55344, curve.WaterContent(-10 * Cm), 0.01);
        Assert.Equal(0.36384, curve.WaterContent(-50 * Cm), 0.01);
        Assert.Equal(0.30451, curve.WaterContent(-100 * Cm), 0.01);
        Assert.Equal(2.8, mix.Parameters.Modes[0].N);
        // √(1500·60) cm/h by hand.
        Assert.Equal(300, mix.Parameters.KsMetersPerSecond / CmPerHour, 1e-6);
    }

    [Fact]
    public void ConductivityFollowsTheGeometricMean()
    {
        // Bark 6 to 12 mm, two parts, and coarse peat, one part; K = (Kb² Kp)^(1/3) from van Genuchten-Mualem
        // in 30-digit arithmetic outside the project, cm/h.
        ImmutableArray<MixPart> parts = [new(2, chunks, 190, 0), new(1, peat, 90, 0)];
        (double Cm, double K)[] mean =
        [
            (-3, 1.6137184),
            (-10, 0.042496565),
            (-50, 1.4686955e-3),
            (-100, 2.8027196e-4),
        ];
        var mix = MixEstimate.Of(parts, new MixingLaw())!;
        var curve = new VanGenuchten(mix.Parameters);
        double squares = 0.0;
        foreach (var (cm, k) in mean)
        {
            Assert.Equal(k, MixEstimate.ConductivityMetersPerSecond(parts, cm * Cm) / CmPerHour, 1e-6 * k);
            squares += Math.Pow(Math.Log10(curve.ConductivityMetersPerSecond(cm * Cm) / CmPerHour / k), 2);
        }

        Assert.Equal(Math.Sqrt(squares / 4), mix.RmsMisfitDecades, 1e-6);
        // K itself is known within a factor of 3; the curve must not add more than that.
        Assert.InRange(mix.RmsMisfitDecades, 0.0, Math.Log10(3));
        // (3600² · 60)^(1/3) by hand.
        Assert.Equal(919.57132, mix.Parameters.KsMetersPerSecond / CmPerHour, 1e-5);
    }

    [Fact]
    public void FinesAreToldByWhatTheyLoseAtThreeCentimeters()
    {
        // (1 + (0.981·3)^1.412)^(−0.2918) = 0.605 of its water is left in fiber, 0.298 in bark of 6 to 12 mm,
        // 0.481 in bark of 3 to 6 mm: fiber fills voids, both barks are coarse. 10 + 10 L as above.
        var fiber = Curve(0.102, 0.95, 400, (1.0, 0.981, 1.412));
        ImmutableArray<MixPart> parts = [new(5, chunks, 190, 0), new(5, bark, 200, 0), new(10, fiber, 70, 0)];
        Assert.Equal(18.2, MixEstimate.MixedVolumeCubicMeters(parts, new MixingLaw()), 1e-12);
    }

    [Fact]
    public void LawsOutsideTheirRangeAreFaults()
    {
        ImmutableArray<MixPart> parts = [new(1, peat, 90, 0)];
        Assert.Throws<ArgumentException>(() => MixEstimate.Of(parts, new MixingLaw { MixingYield = 0 }));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of(parts, new MixingLaw { Filling = 1.1 }));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of(parts, new MixingLaw { CoarseVoidShare = 1 }));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of(parts, new MixingLaw { EntrappedAir = -0.1 }));
    }

    [Fact]
    public void AMaterialMixedWithItselfIsItself()
    {
        var mix = MixEstimate.Of(
            [new(3, bark, 200, 0), new(4, bark, 200, 0)],
            new MixingLaw { EntrappedAir = 0 }
        )!;
        var same = new VanGenuchten(mix.Parameters);
        foreach (double cm in (double[])[-0.5, -1, -2, -3, -7, -20, -70, -500, -3000, -15000])
        {
            Assert.Equal(bark.WaterContent(cm * Cm), same.WaterContent(cm * Cm), 1e-3);
        }

        Assert.Equal(1500, mix.Parameters.KsMetersPerSecond / CmPerHour, 1e-6);
        Assert.InRange(mix.RmsMisfit, 0.0, 1e-3);
        Assert.Equal(0.5, mix.Parameters.L, 0.02);
    }

    [Fact]
    public void NoRoomIsNoEstimateAndNoPartsAreAFault()
    {
        // Loam at 0.6 of its volume: 1 − 0.57/0.6 = 0.05 of pores for 0.4 of water.
        Assert.Null(MixEstimate.Of([new(1, loam, 1250, 1)], new MixingLaw { MixingYield = 0.6 }));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of([], new MixingLaw()));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of([new(0, loam, 1250, 1)], new MixingLaw()));
        Assert.Throws<ArgumentException>(() => MixEstimate.Of([new(1, loam, 1250, 1.5)], new MixingLaw()));
    }

    private static VanGenuchten Curve(
        double dry,
        double full,
        double ks,
        params (double Weight, double Alpha, double N)[] modes
    ) =>
        new(
            new VanGenuchtenParameters
            {
                ThetaR = dry,
                ThetaS = full,
                Modes = [.. modes.Select(m => new PoreMode(m.Weight, m.Alpha / Cm, m.N))],
                KsMetersPerSecond = ks * CmPerHour,
            }
        );
}
