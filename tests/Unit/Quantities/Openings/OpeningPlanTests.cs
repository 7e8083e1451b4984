using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Quantities.Openings;

/// <summary>
/// What closes an opening fills it once: the check adds rectangles by itself, from the printed sizes. Own
/// worked examples by hand beside each.
/// </summary>
public sealed class OpeningPlanTests
{
    private static readonly int Boxes = LongRun.IsAsked ? 20_000 : 1_000;

    private static readonly Lazy<List<(string Text, CheckedDesign Design)>> Designs = new(() =>
        [
            .. Enumerable
                .Range(0, Boxes)
                .Select(RandomBoxes.Text)
                .Select(text => (text, Posed.Text(text, SampleFiles.Catalog).Design)),
        ]
    );

    [Fact]
    public void Cells_fill_each_opening_once_in_a_thousand_boxes()
    {
        var vents = 0;
        foreach (var (text, design) in Designs.Value)
        {
            var box = BoxGeometry.Of(design);
            foreach (var plan in OpeningPlans.All(design, box))
            {
                Fills(plan, text);
                vents += plan.Cells.Sum(c => c.Openings.Length);
            }

            var placed = OpeningPlans
                .All(design, box)
                .SelectMany(p => p.Cells)
                .SelectMany(c => c.Openings)
                .Select(o => o.Vent.Index);
            var outside = OpeningPlans.All(design, box).SelectMany(p => p.Outside).Select(v => v.Index);
            // A vent is built once, or told to be impossible.
            Assert.Empty(placed.Intersect(outside));
            Assert.Equal(placed.Count(), placed.Distinct().Count());
        }

        Assert.InRange(vents, Boxes / 3, 4 * Boxes);
    }

    [Fact]
    public void Cut_lids_are_the_opening_less_their_play()
    {
        foreach (var (text, design) in Designs.Value)
        {
            var box = BoxGeometry.Of(design);
            if (design.Design.Lid is not { } lid)
            {
                continue;
            }

            var parts = LidParts.Of(design, box).ToDictionary(p => p.Part, StringComparer.Ordinal);
            var plan = LidPlan.Of(design, box)!;
            var (play, over) = (lid.Gap?.Si ?? 0.002, lid.Overlap?.Si ?? 0.0);
            foreach (var cell in plan.Cells)
            {
                var part = parts[cell.Name];
                bool left = cell.Left.Si < 1e-9,
                    right = cell.Left.Si + cell.Length.Si > plan.Length.Si - 1e-9;
                double At(bool outer) => lid.Overlap is not null && outer ? over : -play;
                Assert.Equal(cell.Length.Si + At(left) + At(right), part.Length.Si, 1e-9);
                foreach (var cut in part.CutOuts)
                {
                    Assert.InRange(cut.FromLeft.Si, 0, part.Length.Si - cut.Length.Si + 1e-9);
                    Assert.InRange(cut.FromBottom.Si, 0, part.Width.Si - cut.Width.Si + 1e-9);
                }
            }
        }
    }

    /// <summary>
    /// Inside 590 × 440 mm, a strip of 30 mm, a vent of 500 × 40 mm: its strip is 40 + 2 · 15 = 70 mm, the
    /// pane 440 − 30 − 70 − 2 · 2 = 336 by 590 − 4 = 586 mm; the opening begins (590 − 500)/2 − 2 = 43 mm
    /// from the left end of its strip and 15 mm from its front edge.
    /// </summary>
    [Fact]
    public void A_vent_makes_the_pane_shorter()
    {
        var result = Posed.Run(
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }",
            "{ soil: { recipe: ready-rainforest, depth: 4 cm } }",
            "lid: { material: glass, thickness: 4 mm, strip: 30 mm, latched: true, rests: ledges }\n"
                + "vents: [ { length: 50 cm, width: 4 cm, side: top, mesh: steel-gauze-0.5 } ]"
        );
        Assert.Equal(586, result.Number("cuts[lid].lengthMm"), 1e-6);
        Assert.Equal(336, result.Number("cuts[lid].widthMm"), 1e-6);
        Assert.Equal(70, result.Number("cuts[vent-strip].widthMm"), 1e-6);
        var cut = Assert.Single(result.Numbers.Cuts.First(c => c.Part == "vent-strip").CutOuts);
        Assert.Equal(0.043, cut.FromLeft.Si, 1e-9);
        Assert.Equal(0.015, cut.FromBottom.Si, 1e-9);
        // Two strips of 15 mm carry what lies on 70: three edges held, its front edge hangs.
        Assert.Contains(result.Numbers.Panes, p => p.Pane == "vent-strip");
        // Ledges of 15 mm: 440 long at the sides, 590 − 2 · 15 = 560 between them.
        Assert.Equal(440, result.Number("cuts[ledge-side].lengthMm"), 1e-6);
        Assert.Equal(560, result.Number("cuts[ledge-long].lengthMm"), 1e-6);
    }

    /// <summary>6 mm of the pane lie on the rim: a notch of 10 mm for a cable is cut 16 mm deep.</summary>
    [Fact]
    public void A_notch_reaches_through_the_overlap()
    {
        var result = Posed.Run(
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }",
            "{ soil: { recipe: ready-rainforest, depth: 4 cm } }",
            "lid: { material: glass, thickness: 4 mm, overlap: 6 mm }\n"
                + "passages: [ { for: cable, hole: 10 mm, through: 6 mm, sealed: true } ]"
        );
        var notch = Assert.Single(result.Numbers.Cuts.First(c => c.Part == "lid").CutOuts);
        Assert.Equal(0.016, notch.Width.Si, 1e-9);
        // The pane is 440 + 2 · 6 = 452 mm deep; the notch begins 436 mm from its front edge.
        Assert.Equal(0.436, notch.FromBottom.Si, 1e-9);
    }

    /// <summary>
    /// A cut box of 600 × 450 × 450 mm, 5 mm: the back pane is 600 × (450 − 5 − 1.5) = 443.5 mm. A vent of
    /// 400 × 30 mm, its middle 380 mm over the base: lower edge 365 − 1.5 = 363.5, so the lower pane is 363.5
    /// high, the upper 443.5 − 393.5 = 50; beside it (590 − 400)/2 + 5 = 100 by 30 − 2 · 1.5 = 27 mm.
    /// </summary>
    [Fact]
    public void A_vent_parts_a_wall()
    {
        var result = Posed.Run(
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm }, panes: cut }",
            "{ soil: { recipe: ready-rainforest, depth: 4 cm } }",
            "vents: [ { length: 40 cm, width: 3 cm, height: 38 cm, side: back, mesh: steel-gauze-0.5 } ]"
        );
        Assert.Equal(363.5, result.Number("cuts[pane-back].widthMm"), 1e-6);
        Assert.Equal(50, result.Number("cuts[pane-back-2].widthMm"), 1e-6);
        Assert.Equal(100, result.Number("cuts[pane-back-beside-vent].lengthMm"), 1e-6);
        Assert.Equal(27, result.Number("cuts[pane-back-beside-vent].widthMm"), 1e-6);
    }

    /// <summary>
    /// Sill 170 mm, a vent 20 mm high right above it, a bar of 30 mm, a header of 40 mm; 600 mm box with a
    /// base of 8: inside 592. Doors: 592 − 170 − 20 − 30 − 40 = 332 mm of opening, 5 less for the tracks.
    /// </summary>
    [Fact]
    public void Doors_stand_between_bar_and_header()
    {
        var result = Posed.Run(
            "{ outside: { length: 120 cm, depth: 60 cm, height: 60 cm }, glass: { walls: 6 mm, base: 8 mm }, "
                + "opening: front, sill: 17 cm, panes: cut, doors: { kind: sliding, thickness: 4 mm } }",
            "{ soil: { recipe: ready-rainforest, depth: 4 cm } }",
            "vents: [ { length: 100 cm, width: 2 cm, height: 18 cm, side: front, mesh: steel-gauze-0.5 } ]"
        );
        Assert.Equal(327, result.Number("cuts[door].widthMm"), 1e-6);
        Assert.Equal(168.5, result.Number("cuts[pane-front-sill].widthMm"), 1e-6);
        Assert.Equal(30, result.Number("cuts[pane-front-bar].widthMm"), 1e-6);
        Assert.Equal(40, result.Number("cuts[pane-front-header].widthMm"), 1e-6);
        // Without a lid the top is a pane glued between the walls: 1188 − 3 by 588 − 3 mm.
        Assert.Equal(1185, result.Number("cuts[pane-top].lengthMm"), 1e-6);
        Assert.Equal(585, result.Number("cuts[pane-top].widthMm"), 1e-6);
    }

    private static void Fills(OpeningPlan plan, string text)
    {
        double area = 0;
        for (var i = 0; i < plan.Cells.Length; i++)
        {
            var one = plan.Cells[i];
            Assert.True(one.Length.Si > 0 && one.Width.Si > 0, text);
            Assert.True(one.Left.Si >= -1e-9 && one.Low.Si >= -1e-9, text);
            Assert.True(one.Left.Si + one.Length.Si <= plan.Length.Si + 1e-9, text);
            Assert.True(one.Low.Si + one.Width.Si <= plan.Width.Si + 1e-9, text);
            area += one.Length.Si * one.Width.Si;
            foreach (var other in plan.Cells.Skip(i + 1))
            {
                var x =
                    Math.Min(one.Left.Si + one.Length.Si, other.Left.Si + other.Length.Si)
                    - Math.Max(one.Left.Si, other.Left.Si);
                var y =
                    Math.Min(one.Low.Si + one.Width.Si, other.Low.Si + other.Width.Si)
                    - Math.Max(one.Low.Si, other.Low.Si);
                Assert.False(x > 1e-9 && y > 1e-9, $"{one.Name} and {other.Name} overlap:\n{text}");
            }

            foreach (var hole in one.Openings)
            {
                Assert.True(hole.Left.Si >= one.Left.Si - 1e-9, text);
                Assert.True(hole.Left.Si + hole.Length.Si <= one.Left.Si + one.Length.Si + 1e-9, text);
                Assert.True(hole.Low.Si >= one.Low.Si - 1e-9, text);
                Assert.True(hole.Low.Si + hole.Width.Si <= one.Low.Si + one.Width.Si + 1e-9, text);
            }
        }

        Assert.True(Math.Abs(area - (plan.Length.Si * plan.Width.Si)) < 1e-9, $"{plan.Side}: {area}\n{text}");
    }
}
