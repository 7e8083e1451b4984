using System.Globalization;
using CsCheck;
using Litterfall.UnitTests.Judging;
using Xunit;

namespace Litterfall.UnitTests.Quantities.Sizing;

/// <summary>Layer volumes against closed forms and against counting random points.</summary>
public sealed class VolumeTests
{
    [Fact]
    public void AStackOfAllFormsHasTheVolumeOfItsPoints()
    {
        // Inside 80 × 40 cm; background 3 cm at the back and 2 cm on the left; steps over 40 % and 60 % of
        // the
        // length, the second a wedge; both measured between the backgrounds.
        var result = Posed.Run(
            "{ inside: { length: 80 cm, depth: 40 cm, height: 50 cm } }",
            """
            { drainage: { material: expanded-clay-8-16, depth: 4 cm },
              soil: { recipe: ready-rainforest, zones: [ { share: 40 %, depth: 6 cm },
                { share: 60 %, front: 5 cm, back: 11 cm } ] } }
            """,
            "background: { material: cork-tile, thickness: 2 cm, sides: [left] }"
        );
        var random = new Random(4021);
        const int points = 2_000_000;
        var drainage = 0;
        var soil = 0;
        for (var i = 0; i < points; i++)
        {
            var (x, y, z) = (random.NextDouble() * 0.8, random.NextDouble() * 0.4, random.NextDouble() * 0.2);
            if (x < 0.02)
            {
                continue;
            }

            var along = (x - 0.02) / 0.78;
            var top = 0.04 + (along < 0.4 ? 0.06 : 0.05 + 0.06 * y / 0.4);
            drainage += z < 0.04 ? 1 : 0;
            soil += z >= 0.04 && z < top ? 1 : 0;
        }

        const double litersPerPoint = 0.8 * 0.4 * 0.2 * 1000 / points;
        // Standard error of a share p of n points is √(p(1 − p)/n): 0.03 % of 64 L; four of them are allowed.
        Assert.Equal(drainage * litersPerPoint, result.Number("quantities[drainage].finishedLitres"), 0.09);
        Assert.Equal(soil * litersPerPoint, result.Number("quantities[soil].finishedLitres"), 0.09);
    }

    [Fact]
    public void WedgeHardscapeAndCoverFollowClosedForms()
    {
        // Floor 50 × 40 cm = 20 dm². Wedge 4 to 8 cm: 12 L. A 2 L stone on the base, half buried, takes 1 L
        // in the
        // ratio of depths 4 : 6, so 0.4 L from the 8 L of drainage and 0.6 L from the soil.
        var result = Posed.Run(
            "{ inside: { length: 50 cm, depth: 40 cm, height: 40 cm } }",
            """
            { drainage: { material: expanded-clay-8-16, depth: 4 cm },
              soil: { recipe: ready-rainforest, front: 4 cm, back: 8 cm },
              moss: { material: long-fibre-sphagnum, depth: 2 cm, cover: 30 % } }
            """,
            "hardscape: [ { material: slate, volume: 2 L, buried: 50 %, seat: base } ]"
        );
        Assert.Equal(7.6, result.Number("quantities[drainage].finishedLitres"), 1e-9);
        Assert.Equal(11.4, result.Number("quantities[soil].finishedLitres"), 1e-9);
        Assert.Equal(1.2, result.Number("quantities[moss].finishedLitres"), 1e-9);
        // Air: 20 dm² × 4 dm = 80 L, less 7.6 + 11.4 + 1.2 and the 2 L stone.
        Assert.Equal(57.8, result.Number("geometry.headspaceLitres"), 1e-9);
    }

    [Fact]
    public void TheSmallestOfThreeMeasurementsCounts()
    {
        var result = Posed.Run(
            "{ inside: { length: [440.5 mm, 439 mm, 441 mm], depth: 44 cm, height: 40 cm } }",
            "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
            "lid: { material: glass, thickness: 4 mm, gap: 2 mm }"
        );
        Assert.Equal(439, result.Number("geometry.insideLengthMm"), 1e-9);
        Assert.Equal(435, result.Number("cuts[lid].lengthMm"), 1e-9);
    }

    [Fact]
    public void LitersScaleWithTheCubeOfTheBox() =>
        Gen.Double[0.5, 3]
            .Sample(
                scale =>
                {
                    double Liters(double s) =>
                        Posed
                            .Run(
                                string.Create(
                                    CultureInfo.InvariantCulture,
                                    $"{{ inside: {{ length: {400 * s:0.0000} mm, depth: {300 * s:0.0000} mm, "
                                        + $"height: {500 * s:0.0000} mm }} }}"
                                ),
                                string.Create(
                                    CultureInfo.InvariantCulture,
                                    $"{{ soil: {{ recipe: ready-rainforest, "
                                        + $"front: {40 * s:0.0000} mm, back: {90 * s:0.0000} mm }} }}"
                                )
                            )
                            .Number("quantities[soil].finishedLitres");
                    Assert.Equal(Liters(1) * scale * scale * scale, Liters(scale), 1e-4);
                },
                iter: 20,
                seed: "0N0XIzNsQ0O2"
            );

    [Fact]
    public void CutSizesCarryTheirClearances()
    {
        // Inside 590 × 440 mm. Flat barrier − 2; upturn of 15: + 30; lid gap 2: − 4; strip of 30 mm off the
        // depth.
        const string box =
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";
        const string lid = "lid: { material: glass, thickness: 4 mm, gap: 2 mm, strip: 30 mm }";
        var flat = Posed.Run(
            box,
            "{ soil: { recipe: ready-rainforest, depth: 5 cm }, barrier: { material: plastic-fly-screen } }",
            lid
        );
        var turned = Posed.Run(
            box,
            "{ soil: { recipe: ready-rainforest, depth: 5 cm }, barrier: { material: "
                + "plastic-fly-screen, upturn: 15 mm } }",
            lid
        );
        Assert.Equal(588, flat.Number("cuts[barrier].lengthMm"), 1e-9);
        Assert.Equal(438, flat.Number("cuts[barrier].widthMm"), 1e-9);
        Assert.Equal(620, turned.Number("cuts[barrier].lengthMm"), 1e-9);
        Assert.Equal(470, turned.Number("cuts[barrier].widthMm"), 1e-9);
        Assert.Equal(586, flat.Number("cuts[lid].lengthMm"), 1e-9);
        Assert.Equal(406, flat.Number("cuts[lid].widthMm"), 1e-9);
    }

    [Fact]
    public void WeightsFollowFromVolumesAndDensities()
    {
        // The workshop's own sum for a filled box of 45 × 45 × 60 cm, 5 mm: glass of five panes 15.8 and clay
        // 9.68 L × 0.35 = 3.39 kg; each part is checked against the product, not the total.
        var result = Posed.Run(
            "{ outside: { length: 45 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm, base: 5 mm } }",
            "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, soil: { recipe: "
                + "ready-rainforest, depth: 7 cm } }"
        );
        Assert.Equal(15.77, result.Number("weights.boxKg"), 1e-6);
        Assert.Equal(3.388, result.Number("quantities[drainage].massKg"), 1e-6);
        Assert.Equal(9.68 * 0.42, result.Number("geometry.reservoirFullLitres"), 1e-9);
        // Wet over the footprint of 0.45 × 0.45 m.
        Assert.Equal(
            result.Number("weights.wetKg") * 9.80665 / 0.2025 / 1000,
            result.Number("shelf.pressureKPa"),
            1e-6
        );
    }

    [Fact]
    public void ThePlantDipFollowsTheLabel()
    {
        // 5 % by volume of a 5.25 % product: 0.2625 % sodium hypochlorite, 2500 mg/L as chlorine; 10 L take
        // 500 mL.
        var result = Posed.Run(
            "{ inside: { length: 44 cm, depth: 44 cm, height: 40 cm } }",
            "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
            "hygiene: { bleach: 5.25 % }"
        );
        Assert.Equal(500, result.Number("dip.productMl"), 1e-9);
        Assert.Equal(0.2625, result.Number("dip.strengthPercent"), 1e-9);
        Assert.Equal(2500, result.Number("dip.chlorineMgPerLitre"), 0.5);
        Assert.Equal(0.2625 / 0.12, result.Number("dip.overChytridDose"), 1e-6);
    }

    [Fact]
    public void ABackgroundThatEndsAboveTheBaseLeavesTheFloorBelowIt()
    {
        // Floor 50 × 40 cm, panel 4 cm thick at the back (2 dm²) from 5 cm up, walls 40 cm high. Drainage 5
        // cm on
        // the whole 20 dm²: 10 L. Soil 6 cm on 18 dm²: 10.8 L. Air: 80 L − 2 dm² × 3.5 dm − 20.8 = 52.2 L.
        var result = Posed.Run(
            "{ inside: { length: 50 cm, depth: 40 cm, height: 40 cm } }",
            "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, soil: { recipe: "
                + "ready-rainforest, depth: 6 cm } }",
            "background: { material: cork-tile, thickness: 4 cm, from: 5 cm }"
        );
        Assert.Equal(10, result.Number("quantities[drainage].finishedLitres"), 1e-9);
        Assert.Equal(10.8, result.Number("quantities[soil].finishedLitres"), 1e-9);
        Assert.Equal(52.2, result.Number("geometry.headspaceLitres"), 1e-9);
    }

    [Fact]
    public void TheBandOfAMixFollowsSettlingAndYield()
    {
        // Floor 50 × 40 cm, 10 cm deep: 20 L. Settling 10 to 20 %, yield 80 to 92 % (bands of the library):
        // least 20 ÷ 0.9 ÷ 0.92 = 24.155, most 20 ÷ 0.8 ÷ 0.8 = 31.25, middle 20 ÷ 0.85 ÷ 0.88 = 26.738 L.
        const string box = "{ inside: { length: 50 cm, depth: 40 cm, height: 40 cm } }";
        var open = Posed.Run(box, "{ soil: { recipe: standard-rainforest, depth: 10 cm } }");
        Assert.Equal(24.154589, open.Number("quantities[soil].toBuyLitresLow"), 1e-5);
        Assert.Equal(26.737968, open.Number("quantities[soil].toBuyLitres"), 1e-5);
        Assert.Equal(31.25, open.Number("quantities[soil].toBuyLitresHigh"), 1e-9);
        var measured = Posed.Run(
            box,
            "{ soil: { recipe: standard-rainforest, depth: 10 cm, settling: 12 %, mixingYield: 90 % } }"
        );
        Assert.IsType<Litterfall.Domain.Figures.ReportAbsent>(
            Litterfall.Domain.Figures.ReportPath.Find(measured.Report, "quantities[soil].toBuyLitresLow")
        );
    }
}
