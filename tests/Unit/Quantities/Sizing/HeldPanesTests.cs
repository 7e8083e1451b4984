using Litterfall.Domain.Findings;
using Litterfall.Physics.Plates;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Quantities.Sizing;

/// <summary>Lids as they are held, against closed forms and plates worked out elsewhere.</summary>
public sealed class HeldPanesTests
{
    private const string Floor = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    private static PosedDesign Lid(string inside, string lid) =>
        Posed.Run($"{{ inside: {inside}, glass: {{ walls: 12 mm }} }}", Floor, $"lid: {lid}");

    /// <summary>
    /// An opening of 1600 × 500 mm, a lid of 1576 × 426 × 3 mm, its back edge over a loose strip: worked out
    /// apart, about 4.5 MPa and 9 mm of sag; on four edges it would be 1.7 MPa.
    /// </summary>
    [Fact]
    public void A_lid_hangs_over_its_loose_strip()
    {
        var result = Lid(
            "{ length: 1600 mm, depth: 500 mm, height: 45 cm }",
            "{ material: glass, thickness: 3 mm, gap: 12 mm, strip: 50 mm }"
        );
        Assert.Equal(1576, result.Number("glass[lid].widthMm"), 1e-6);
        Assert.Equal(426, result.Number("glass[lid].heightMm"), 1e-6);
        Assert.Equal(4.5, result.Number("glass[lid].stressMPa"), 0.2);
        Assert.Equal(9, result.Number("glass[lid].sagMm"), 0.5);
        var finding = Assert.Single(result.FindingsOf("lid-sags"), f => f.Text.Contains("the lid,"));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("less", finding.Text, StringComparison.Ordinal);
    }

    /// <summary>Glass of 1200 mm between two edges: 0.75 q L²/t² and 5 q L⁴/(32 E t³) by hand.</summary>
    [Fact]
    public void Two_edges_are_a_beam()
    {
        var result = Lid(
            "{ length: 1200 mm, depth: 400 mm, height: 45 cm }",
            "{ material: glass, thickness: 6 mm, overlap: 10 mm, held: sides }"
        );
        double q = 2500 * 9.80665 * 0.006 + 20;
        Assert.Equal(0.75 * q * 1.2 * 1.2 / 36e-6 / 1e6, result.Number("glass[lid].stressMPa"), 1e-6);
        Assert.Equal(
            5 * q * Math.Pow(1.2, 4) / (32 * 70e9 * 216e-9) * 1e3,
            result.Number("glass[lid].sagMm"),
            1e-6
        );
    }

    /// <summary>Acrylic of 4 mm over 400 mm: sag with 1.3 GPa of years, q = 1190 · g · t + 20 Pa.</summary>
    [Fact]
    public void A_plastic_lid_sags_with_the_modulus_that_is_left()
    {
        var result = Lid(
            "{ length: 600 mm, depth: 400 mm, height: 45 cm }",
            "{ material: acrylic-sheet, thickness: 4 mm, overlap: 10 mm, held: front-and-back }"
        );
        double q = 1190 * 9.80665 * 0.004 + 20;
        Assert.Equal(
            5 * q * Math.Pow(0.4, 4) / (32 * 1.3e9 * 64e-9) * 1e3,
            result.Number("glass[lid].sagMm"),
            1e-6
        );
    }

    /// <summary>A bar halves the way that sags: a sixteenth of the sag between two edges.</summary>
    [Fact]
    public void A_bar_under_the_middle_halves_the_span()
    {
        const string size = "{ length: 1200 mm, depth: 400 mm, height: 45 cm }";
        double bare = Lid(size, "{ material: glass, thickness: 6 mm, overlap: 10 mm, held: sides }")
            .Number("glass[lid].sagMm");
        double braced = Lid(
                size,
                "{ material: glass, thickness: 6 mm, overlap: 10 mm, held: sides, braced: true }"
            )
            .Number("glass[lid].sagMm");
        Assert.Equal(bare / 16, braced, 1e-9);
    }

    /// <summary>
    /// A narrow pane on its corners is a beam: 0.75 q L²/t² and 5 q L⁴/(32 E t³); across a square the moments
    /// of the middle line add up to q a³/8.
    /// </summary>
    [Fact]
    public void A_narrow_pane_on_its_corners_is_a_beam()
    {
        var pane = new PlatePane(1.0, 0.02, 0.004, 70e9, 0.22, PlateEdge.TopFree);
        var (stress, sag) = CornerPlate.Solve(pane, 100.0);
        Assert.Equal(0.75 * 100.0 / 16e-6, stress, 0.01 * 0.75 * 100.0 / 16e-6);
        double beam = 5 * 100.0 / (32 * 70e9 * 64e-9);
        Assert.Equal(beam, sag, 0.01 * beam);
    }

    /// <summary>
    /// A square on its corners, ν = 0.3: w = 0.0255 q a⁴/D at the middle, 0.15 q a² at the middle of a side
    /// (Timoshenko and Woinowsky-Krieger, plates on columns; from memory, within 5 %).
    /// </summary>
    [Fact]
    public void A_square_on_its_corners()
    {
        var pane = new PlatePane(1.0, 1.0, 0.01, 1e9, 0.3, PlateEdge.TopFree);
        var (stress, sag) = CornerPlate.Solve(pane, 1.0);
        Assert.Equal(0.0255, sag * pane.StiffnessNewtonMeters, 0.05 * 0.0255);
        Assert.Equal(0.1527, stress * 1e-4 / 6.0, 0.05 * 0.1527);
    }
}
