using Litterfall.Instructions.Building;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Building;

/// <summary>Depths at the corners against sums done by hand.</summary>
public sealed class CornerDepthsTests
{
    private const string Box = "{ inside: { length: 50 cm, depth: 40 cm, height: 40 cm } }";

    [Fact]
    public void A_level_floor_is_the_same_in_all_corners()
    {
        // 5 + 7 + 3 cm: tops at 5, 12 and 15 cm. Poured 7 ÷ 0.85 = 8.235 cm.
        var rows = CornerDepths.Of(Built.Box);
        Assert.Equal(["drainage", "soil", "litter"], rows.Select(r => r.Layer));
        Assert.All(rows, r => Assert.True(r.Depth.IsLevel && r.Top.IsLevel));
        Assert.Equal(0.05, rows[0].Top.FrontLeft.Si, 1e-9);
        Assert.Equal(0.12, rows[1].Top.BackRight.Si, 1e-9);
        Assert.Equal(0.15, rows[2].Top.FrontRight.Si, 1e-9);
        Assert.Equal(0.07 / 0.85, rows[1].Poured!.BackLeft.Si, 1e-9);
        Assert.Null(rows[0].Poured);
        Assert.Null(rows[2].Poured);
    }

    [Fact]
    public void A_wedge_rises_from_front_to_back_and_layers_pile_up()
    {
        // Drainage 4; soil 4 front, 8 back; moss 1 over 30 %; litter 2. By hand: tops of the soil 8 and 12,
        // of the moss 9 and 13, of the litter 11 and 15 cm.
        var rows = CornerDepths.Of(
            Posed
                .Run(
                    Box,
                    """
                    { drainage: { material: expanded-clay-8-16, depth: 4 cm },
                      soil: { recipe: ready-rainforest, front: 4 cm, back: 8 cm, settling: 20 % },
                      moss: { material: long-fibre-sphagnum, depth: 1 cm, cover: 30 % },
                      litter: { material: oak-leaves, depth: 2 cm } }
                    """
                )
                .Numbers
        );
        Corner(rows[1].Depth, 0.04, 0.04, 0.08, 0.08);
        Corner(rows[1].Top, 0.08, 0.08, 0.12, 0.12);
        // 4 ÷ (1 − 0.2) = 5 and 8 ÷ 0.8 = 10 cm.
        Corner(rows[1].Poured!, 0.05, 0.05, 0.10, 0.10);
        Corner(rows[2].Top, 0.09, 0.09, 0.13, 0.13);
        Corner(rows[3].Top, 0.11, 0.11, 0.15, 0.15);
        Assert.Equal(0.30, rows[2].Cover!.Si, 1e-9);
        Assert.Null(rows[3].Cover);
    }

    [Fact]
    public void The_left_corners_belong_to_the_first_step_and_the_right_ones_to_the_last()
    {
        // Three steps from left to right: level 6; level 3 in the middle, at no corner; 8 front to 12 back.
        var rows = CornerDepths.Of(
            Posed
                .Run(
                    Box,
                    """
                    { soil: { recipe: arid-sand-loam, settling: 10 %, zones: [ { share: 40 %, depth: 6 cm },
                      { share: 20 %, depth: 3 cm }, { share: 40 %, front: 8 cm, back: 12 cm } ] } }
                    """
                )
                .Numbers
        );
        var soil = Assert.Single(rows);
        Corner(soil.Depth, 0.06, 0.08, 0.06, 0.12);
        Corner(soil.Top, 0.06, 0.08, 0.06, 0.12);
        Corner(soil.Poured!, 0.06 / 0.9, 0.08 / 0.9, 0.06 / 0.9, 0.12 / 0.9);
        Assert.False(soil.Depth.IsLevel);
    }

    [Fact]
    public void A_raised_floor_counts_as_the_lowest_layer()
    {
        var rows = CornerDepths.Of(
            Posed
                .Run(
                    Box,
                    """
                    { drainage: { raised: 6 cm, grid: plastic-light-grid },
                      soil: { recipe: ready-rainforest, depth: 5 cm } }
                    """
                )
                .Numbers
        );
        Assert.Equal("raised floor", rows[0].Name);
        Corner(rows[1].Top, 0.11, 0.11, 0.11, 0.11);
    }

    private static void Corner(
        Corners c,
        double frontLeft,
        double frontRight,
        double backLeft,
        double backRight
    )
    {
        Assert.Equal(frontLeft, c.FrontLeft.Si, 1e-9);
        Assert.Equal(frontRight, c.FrontRight.Si, 1e-9);
        Assert.Equal(backLeft, c.BackLeft.Si, 1e-9);
        Assert.Equal(backRight, c.BackRight.Si, 1e-9);
    }
}
