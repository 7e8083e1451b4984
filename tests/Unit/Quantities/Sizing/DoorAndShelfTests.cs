using Litterfall.Domain.Findings;
using Litterfall.Physics.Plates;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Quantities.Sizing;

/// <summary>Doors and shelves as they are held, against closed forms and tables of plates.</summary>
public sealed class DoorAndShelfTests
{
    private const string Floor = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    private static PosedDesign Front(string doors, string more = "") =>
        Posed.Run(
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm }, "
                + $"opening: front, sill: 10 cm, doors: {doors} }}",
            Floor,
            more
        );

    private static PosedDesign Shelf(string shelf) =>
        Posed.Run(
            "{ inside: { length: 600 mm, depth: 450 mm, height: 45 cm }, glass: { walls: 5 mm } }",
            Floor,
            $"shelves: [ {shelf} ]"
        );

    /// <summary>
    /// Inside 590 × 445 mm (45 cm less 5 mm of base), sill 100 mm. Two sliding panes: (590 + 25) / 2 = 307.5
    /// by 345 − 5 = 340 mm, 5 mm of 2500 kg/m³: 1.3069 kg. Hinged: (590 − 3 · 2) / 2 = 292 by 341 mm. Lifted
    /// out: 586 by 341 mm.
    /// </summary>
    [Theory]
    [InlineData("{ kind: sliding }", 2, 307.5, 340.0)]
    [InlineData("{ kind: sliding, count: 3, overlap: 20 mm, play: 4 mm }", 3, 210.0, 341.0)]
    [InlineData("{ kind: hinged }", 2, 292.0, 341.0)]
    [InlineData("{ kind: hinged, count: 1, gap: 3 mm }", 1, 584.0, 339.0)]
    [InlineData("{ kind: lift-out }", 1, 586.0, 341.0)]
    public void Panes_follow_from_the_opening(string doors, double count, double width, double height)
    {
        var result = Front(doors);
        Assert.Equal(count, result.Number("cuts[door].count"), 1e-9);
        Assert.Equal(width, result.Number("cuts[door].lengthMm"), 1e-6);
        Assert.Equal(height, result.Number("cuts[door].widthMm"), 1e-6);
        double each = width * height * 5 * 2500e-9;
        Assert.Equal(each, result.Number("cuts[door].massKg"), 1e-9);
        Assert.Equal(count * each, result.Number("weights.doorsKg"), 1e-9);
        // The front above the sill, 590 × 345 × 5 mm, is no longer a pane of the box.
        double front = 590 * 345 * 5 * 2500e-9;
        double whole = ((600.0 * 450 * 450) - (590.0 * 440 * 445)) * 2500e-9;
        // Without a lid its top is a pane glued between the walls, 590 × 440 × 5 mm.
        double top = 590 * 440 * 5 * 2500e-9;
        Assert.Equal(whole - front + top, result.Number("weights.boxKg"), 1e-6);
    }

    [Fact]
    public void Without_a_kind_nothing_is_cut_or_weighed()
    {
        var result = Front("{ count: 2, gap: 1 mm }");
        Assert.Null(result.Numbers.Doors);
        Assert.DoesNotContain(result.Numbers.Cuts, c => c.Part == "door");
        Assert.DoesNotContain(result.Numbers.Panes, p => p.Pane == "door");
        Assert.Null(result.Numbers.Weights.Doors);
    }

    /// <summary>
    /// A sliding door 100 mm wide over 340 mm is nearly a beam: pushed over 50 mm in its middle by 100 N it
    /// has M = F (L/4 − s/8), and gives F (8 L³ − 4 L s² + s³) / (384 E I) with I = b t³/12; glass of 6 mm is
    /// taken as 5.8. A plate is a little more stressed under the hand than the mean over its width.
    /// </summary>
    [Fact]
    public void A_narrow_sliding_door_is_a_beam()
    {
        // 6 panes of (590 + 5 · 2) / 6 = 100 mm.
        var result = Front("{ kind: sliding, count: 6, overlap: 2 mm, thickness: 6 mm }");
        Assert.Equal(100, result.Number("glass[door].widthMm"), 1e-6);
        double t = 0.0058;
        double beam = 6 * 100 * ((0.34 / 4) - (0.05 / 8)) / (0.1 * t * t) / 1e6;
        double stress = result.Number("glass[door].stressMPa");
        Assert.InRange(stress, beam, 1.12 * beam);
        double inertia = 0.1 * t * t * t / 12;
        double give =
            100
            * ((8 * Math.Pow(0.34, 3)) - (4 * 0.34 * 0.05 * 0.05) + Math.Pow(0.05, 3))
            / (384 * 70e9 * inertia)
            * 1e3;
        Assert.Equal(give, result.Number("glass[door].sagMm"), 0.03 * give);
        Assert.Equal(340.0 / 65, result.Number("glass[door].sagLimitMm"), 1e-6);
        Assert.Equal(21, result.Number("glass[door].allowableMPa"), 1e-9);
    }

    /// <summary>
    /// Glass of 2 mm is far too thin: about 2.5² of the stress of 5 mm, 9 MPa by the plate of this size; the
    /// limit of a short push is 21 MPa, and 21 · 5.8 / 7.2 at a cut edge.
    /// </summary>
    [Fact]
    public void A_thin_door_stops()
    {
        var thin = Assert.Single(Front("{ kind: sliding, thickness: 2 mm }").FindingsOf("glass-too-thin"));
        Assert.Equal(Severity.Stop, thin.Severity);
        Assert.Contains("door", thin.Text, StringComparison.Ordinal);
        Assert.Contains("glazier", thin.Text, StringComparison.Ordinal);
        Assert.Equal("box.doors.thickness", thin.Where);
        Assert.Empty(Front("{ kind: sliding }").FindingsOf("glass-too-thin"));
    }

    /// <summary>
    /// Glass of 6 mm, taken as 5.8, 597 mm long (600 less 1.5 mm of joint at each end) and 200 mm deep with
    /// 2 kg: q = 2500 g · 0.0058 + 2 g / (0.597 · 0.2); 0.75 q L²/t² and 5 q L⁴/(32 E t³) by hand.
    /// </summary>
    [Fact]
    public void A_shelf_on_its_ends_is_a_beam()
    {
        var result = Shelf("{ depth: 200 mm, thickness: 6 mm, load: 2 kg }");
        double l = 0.597;
        double t = 0.0058;
        double q = 9.80665 * ((2500 * t) + (2 / (l * 0.2)));
        Assert.Equal(0.75 * q * l * l / (t * t) / 1e6, result.Number("glass[shelf].stressMPa"), 1e-6);
        Assert.Equal(
            5 * q * Math.Pow(l, 4) / (32 * 70e9 * t * t * t) * 1e3,
            result.Number("glass[shelf].sagMm"),
            1e-6
        );
        Assert.Equal(l * 0.2 * 0.006 * 2500, result.Number("weights.shelvesKg"), 1e-9);
        Assert.Equal(597, result.Number("cuts[shelf].lengthMm"), 1e-6);
        Assert.Equal(5.8, result.Number("glass[shelf].allowableMPa"), 1e-9);
    }

    /// <summary>
    /// 400 × 400 mm on three edges, acrylic: 0.01286 q a⁴/D at the middle of the free edge, 0.112 q a² of
    /// moment (Timoshenko and Woinowsky-Krieger, one edge free, ν = 0.3, from memory). The free edge bends as
    /// a beam, so the sag goes by E: 0.01286 · 12 (1 − 0.3²) q a⁴/(E t³), whatever ν.
    /// </summary>
    [Fact]
    public void A_plastic_shelf_on_three_edges_creeps()
    {
        var result = Shelf(
            "{ length: 400 mm, depth: 400 mm, thickness: 6 mm, load: 1 kg, held: three-edges, material: "
                + "acrylic-sheet }"
        );
        double t = 0.0058;
        double q = 9.80665 * ((1190 * t) + (1 / 0.16));
        double stiffness = 1.3e9 * t * t * t / (12 * (1 - (0.3 * 0.3)));
        double sag = 0.01286 * q * Math.Pow(0.4, 4) / stiffness * 1e3;
        Assert.Equal(sag, result.Number("glass[shelf].sagMm"), 0.03 * sag);
        double stress = 6 * 0.112 * q * 0.16 / (t * t) / 1e6;
        Assert.Equal(stress, result.Number("glass[shelf].stressMPa"), 0.06 * stress);
    }

    /// <summary>Each shelf has its own row, and the heavily loaded one its finding.</summary>
    [Fact]
    public void Two_shelves_have_two_rows()
    {
        var result = Shelf(
            "{ depth: 15 cm, thickness: 6 mm, load: 1 kg }, { depth: 15 cm, thickness: 3 mm, load: 30 kg, "
                + "held: corners }"
        );
        Assert.Equal(["shelf", "shelf-2"], result.Numbers.Panes.Select(p => p.Pane).TakeLast(2));
        var broken = Assert.Single(result.FindingsOf("glass-too-thin"));
        Assert.Equal("shelves[1].thickness", broken.Where);
    }

    /// <summary>
    /// A square that is pushed all over is a plate under a uniform load. Two edges held, ν = 0.3: 0.0150 q
    /// a⁴/D and 0.1318 q a² at the middle of a free edge (Timoshenko and Woinowsky-Krieger, two edges free,
    /// from memory, within 1 %).
    /// </summary>
    [Fact]
    public void A_square_on_two_edges_pushed_all_over()
    {
        var pane = new PlatePane(1.0, 1.0, 0.01, 1e9, 0.3, PlateEdge.TopFree);
        var (stress, sag) = PushedPlate.Solve(pane, PushedHold.Ends, new HandPush(1.0, 1.0, 0.5));
        Assert.Equal(0.0150, sag * pane.StiffnessNewtonMeters, 0.01 * 0.0150);
        Assert.Equal(0.1318, stress * 1e-4 / 6.0, 0.01 * 0.1318);
    }

    /// <summary>The same on three edges by Lévy's series, and on corners by another Ritz program.</summary>
    [Fact]
    public void A_square_pushed_all_over_agrees_with_the_other_solvers()
    {
        var pane = new PlatePane(1.0, 1.0, 0.01, 70e9, 0.22, PlateEdge.TopFree);
        var push = new HandPush(1.0, 1.0, 0.5);
        var three = PushedPlate.Solve(pane, PushedHold.EndsAndBottom, push);
        var levy = LevyPlate.Solve(pane, PlateLoad.Uniform(1.0, 1.0));
        Assert.Equal(levy.LargestStressPascals, three.StressPascals, 2e-3 * levy.LargestStressPascals);
        Assert.Equal(levy.LargestDeflectionMeters, three.SagMeters, 1e-3 * levy.LargestDeflectionMeters);
        var corners = PushedPlate.Solve(pane, PushedHold.Corners, push);
        var (stress, sag) = CornerPlate.Solve(pane, 1.0);
        Assert.Equal(stress, corners.StressPascals, 5e-3 * stress);
        Assert.Equal(sag, corners.SagMeters, 2e-3 * sag);
    }

    /// <summary>A strip of 1 m, 50 mm wide, is a beam wherever it is pushed: M = F (L/4 − s/8).</summary>
    [Theory]
    [InlineData(PushedHold.Ends, 0.5)]
    [InlineData(PushedHold.Ends, 1.0)]
    [InlineData(PushedHold.Corners, 0.5)]
    public void A_strip_pushed_in_its_middle_is_a_beam(PushedHold hold, double height)
    {
        var pane = new PlatePane(1.0, 0.05, 0.004, 70e9, 0.22, PlateEdge.TopFree);
        var (stress, sag) = PushedPlate.Solve(pane, hold, new HandPush(10.0, 0.05, height));
        double beam = 6 * 10 * (0.25 - (0.05 / 8)) / (0.05 * 16e-6);
        Assert.Equal(beam, stress, 0.015 * beam);
        double give = 10 / (48 * 70e9 * 0.05 * 64e-9 / 12);
        Assert.Equal(give, sag, 0.005 * give);
    }
}
