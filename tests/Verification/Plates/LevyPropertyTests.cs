using Litterfall.Physics.Plates;
using Litterfall.Verification.Plates;
using Xunit;

namespace Litterfall.Tests.Verification.Plates;

/// <summary>Properties the exact solution has, whatever its values.</summary>
public sealed class LevyPropertyTests
{
    private static readonly PlatePane Free = TestPanes.Glass(0.6, 0.5, 0.004, PlateEdge.TopFree);
    private static readonly PlatePane Held = TestPanes.Glass(0.6, 0.5, 0.004, PlateEdge.TopHeld);

    [Theory]
    [InlineData(0.07, 0.11)]
    [InlineData(0.21, 0.45)]
    public void Left_and_right_mirror(double x, double y)
    {
        PressureKnot[] load = PlateLoad.Water(0.3);
        PlateMoments left = LevyPlate.At(Free, load, x, y);
        PlateMoments right = LevyPlate.At(Free, load, Free.WidthMeters - x, y);
        Close(left.AcrossNewtons, right.AcrossNewtons);
        Close(left.UpNewtons, right.UpNewtons);
        Close(left.TwistNewtons, -right.TwistNewtons);
        Close(left.DeflectionMeters, right.DeflectionMeters);
    }

    [Fact]
    public void Turning_a_pane_held_all_round_changes_nothing()
    {
        PlatePane turned = Held with { WidthMeters = Held.HeightMeters, HeightMeters = Held.WidthMeters };
        PlateResult one = LevyPlate.Solve(Held, PlateLoad.Uniform(100.0, Held.HeightMeters));
        PlateResult other = LevyPlate.Solve(turned, PlateLoad.Uniform(100.0, turned.HeightMeters));
        Assert.Equal(1.0, one.LargestStressPascals / other.LargestStressPascals, 1e-4);
        Assert.Equal(1.0, one.LargestDeflectionMeters / other.LargestDeflectionMeters, 1e-4);
    }

    [Fact]
    public void Water_upward_and_downward_add_to_uniform()
    {
        PressureKnot[] falling = [new(0.0, 1000.0), new(0.5, 0.0)];
        PressureKnot[] rising = [new(0.0, 0.0), new(0.5, 1000.0)];
        PlateMoments a = LevyPlate.At(Free, falling, 0.2, 0.35);
        PlateMoments b = LevyPlate.At(Free, rising, 0.2, 0.35);
        PlateMoments sum = LevyPlate.At(Free, PlateLoad.Uniform(1000.0, 0.5), 0.2, 0.35);
        Close(sum.AcrossNewtons, a.AcrossNewtons + b.AcrossNewtons);
        Close(sum.UpNewtons, a.UpNewtons + b.UpNewtons);
        Close(sum.TwistNewtons, a.TwistNewtons + b.TwistNewtons);
        Close(sum.DeflectionMeters, a.DeflectionMeters + b.DeflectionMeters);
    }

    // The middle of a pane held all round cannot tell a triangle of load from half of it spread evenly.
    [Fact]
    public void The_middle_feels_half_of_a_triangle()
    {
        PlateMoments triangle = LevyPlate.At(Held, [new(0.0, 1000.0), new(0.5, 0.0)], 0.3, 0.25);
        PlateMoments uniform = LevyPlate.At(Held, PlateLoad.Uniform(500.0, 0.5), 0.3, 0.25);
        Close(uniform.AcrossNewtons, triangle.AcrossNewtons);
        Close(uniform.DeflectionMeters, triangle.DeflectionMeters);
    }

    [Fact]
    public void A_knot_that_changes_nothing_changes_nothing()
    {
        PressureKnot[] plain = [new(0.0, 1000.0), new(0.4, 0.0)];
        PressureKnot[] split =
        [
            new(0.0, 1000.0),
            new(0.1, 750.0),
            new(0.1, 750.0),
            new(0.4, 0.0),
            new(0.5, 0.0),
        ];
        PlateResult a = LevyPlate.Solve(Free, plain);
        PlateResult b = LevyPlate.Solve(Free, split);
        Close(a.LargestStressPascals, b.LargestStressPascals);
        Close(a.LargestDeflectionMeters, b.LargestDeflectionMeters);
    }

    // Two knots a hair apart are a jump: the answer must not lose digits over it.
    [Fact]
    public void A_steep_ramp_is_a_jump()
    {
        PressureKnot[] jump = [new(0.0, 1000.0), new(0.2, 1000.0), new(0.2, 0.0), new(0.5, 0.0)];
        PressureKnot[] ramp = [new(0.0, 1000.0), new(0.2, 1000.0), new(0.2 + 1e-9, 0.0), new(0.5, 0.0)];
        Assert.Equal(
            LevyPlate.Solve(Free, jump).LargestStressPascals,
            LevyPlate.Solve(Free, ramp).LargestStressPascals,
            1.0
        );
    }

    // Linear theory: σ ~ p, σ ~ 1/t², w ~ 1/t³; all lengths doubled under the same pressure: σ same, w
    // doubled.
    [Fact]
    public void Stress_and_deflection_scale()
    {
        PlateResult one = LevyPlate.Solve(Free, PlateLoad.Uniform(100.0, 0.5));
        PlateResult loaded = LevyPlate.Solve(Free, PlateLoad.Uniform(300.0, 0.5));
        PlateResult thick = LevyPlate.Solve(
            Free with
            {
                ThicknessMeters = 0.008,
            },
            PlateLoad.Uniform(100.0, 0.5)
        );
        PlateResult big = LevyPlate.Solve(
            TestPanes.Glass(1.2, 1.0, 0.008, PlateEdge.TopFree),
            PlateLoad.Uniform(100.0, 1.0)
        );
        Close(3.0 * one.LargestStressPascals, loaded.LargestStressPascals);
        Close(one.LargestStressPascals / 4.0, thick.LargestStressPascals);
        Close(one.LargestDeflectionMeters / 8.0, thick.LargestDeflectionMeters);
        Close(one.LargestStressPascals, big.LargestStressPascals);
        Close(2.0 * one.LargestDeflectionMeters, big.LargestDeflectionMeters);
    }

    [Fact]
    public void Edges_meet_their_conditions()
    {
        PressureKnot[] load = PlateLoad.Of(new WetSoil(0.2, 0.06, 1200.0));
        double scale = LevyPlate.At(Free, load, 0.3, 0.2).LargestPrincipalNewtons;
        Assert.Equal(0.0, LevyPlate.At(Free, load, 0.3, 0.0).DeflectionMeters, 1e-12);
        Assert.Equal(0.0, LevyPlate.At(Free, load, 0.3, 0.0).UpNewtons / scale, 1e-9);
        Assert.Equal(0.0, LevyPlate.At(Free, load, 0.0, 0.3).DeflectionMeters, 1e-12);
        Assert.Equal(0.0, LevyPlate.At(Free, load, 0.3, 0.5).UpNewtons / scale, 1e-9);
        Assert.True(LevyPlate.At(Free, load, 0.3, 0.5).DeflectionMeters > 0.0);
    }

    [Fact]
    public void Depth_and_thickness_answers_give_the_allowable_stress_back()
    {
        double allowable = 5.8e6;
        double depth = LevyPlate.LargestWaterDepth(Free, allowable);
        PlateResult atDepth = LevyPlate.Solve(Free, PlateLoad.Water(depth));
        Assert.InRange(atDepth.LargestStressPascals / allowable, 0.998, 1.0);
        PressureKnot[] full = PlateLoad.Water(0.5);
        double stress = LevyPlate.Solve(Free, full).LargestStressPascals;
        PlatePane thick = Free with
        {
            ThicknessMeters = LevyPlate.ThicknessNeeded(Free.ThicknessMeters, stress, allowable),
        };
        Assert.Equal(1.0, LevyPlate.Solve(thick, full).LargestStressPascals / allowable, 1e-9);
        Assert.Equal(0.5, LevyPlate.LargestWaterDepth(Free with { ThicknessMeters = 0.02 }, allowable));
    }

    [Fact]
    public void Impossible_panes_and_loads_are_refused()
    {
        PressureKnot[] load = PlateLoad.Water(0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LevyPlate.Solve(Free with { ThicknessMeters = 0.0 }, load)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LevyPlate.Solve(Free with { PoissonRatio = 0.5 }, load)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LevyPlate.Solve(Free with { WidthMeters = double.NaN }, load)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => LevyPlate.Solve(Free, [new(0.0, 1.0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LevyPlate.Solve(Free, PlateLoad.Water(0.6)));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LevyPlate.Solve(Free, [new(0.3, 1.0), new(0.1, 1.0)])
        );
    }

    private static void Close(double expected, double got) =>
        Assert.Equal(expected, got, 1e-9 * Math.Max(1e-9, Math.Abs(expected)));
}
