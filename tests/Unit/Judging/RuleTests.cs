using System.Globalization;
using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging;

/// <summary>Each rule has a design that trips it and one just inside the limit.</summary>
public sealed class RuleTests
{
    private const string Glass = "glass: { walls: 5 mm, base: 5 mm }";
    private const string Cube = "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, " + Glass + " }";
    private const string Floor = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    [Theory]
    // Inside height 450 − 5 = 445 mm.
    [InlineData(
        "layers-higher-than-box",
        "{ soil: { recipe: ready-rainforest, depth: 445 mm } }",
        "{ soil: { recipe: ready-rainforest, depth: 444 mm } }"
    )]
    public void FloorRules(string slug, string trips, string inside) =>
        Check(slug, Severity.Stop, Posed.Run(Cube, trips), Posed.Run(Cube, inside));

    [Fact]
    public void SoilAboveSillCountsDrainageAndSoilAtTheFront()
    {
        const string floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, "
            + "soil: { recipe: ready-rainforest, front: 4 cm, back: 12 cm } }";
        Check(
            "soil-above-sill",
            Severity.Stop,
            Posed.Run(
                "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, "
                    + Glass
                    + ", opening: front, sill: 79 mm }",
                floor
            ),
            Posed.Run(
                "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, "
                    + Glass
                    + ", opening: front, sill: 80 mm }",
                floor
            )
        );
    }

    [Fact]
    public void InchesThatAreAlsoTheNameOfAMetricBoxAreNoted()
    {
        var named = Posed.Run(
            "{ outside: { length: 18 in, depth: 18 in, height: 24 in }, " + Glass + " }",
            Floor
        );
        var measured = Posed.Run(
            "{ outside: { length: 17 15/16 in, depth: 17 7/8 in, height: 23 7/8 in }, " + Glass + " }",
            Floor
        );
        Check("nominal-size", Severity.Note, named, measured);
        // 18 in = 457.2 mm, 24 in = 609.6 mm against 600: the farthest is named.
        Assert.Contains("600 mm", named.Finding("nominal-size")!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AGapOverTwoMillimetersStopsAndOneOfTwoDoesNot()
    {
        // Inside 440 mm: a piece of 437.9 leaves 2.1 mm, of 438 leaves 2.
        const string floor =
            "{ soil: { recipe: ready-rainforest, depth: 7 cm }, "
            + "barrier: { material: plastic-fly-screen, onHand: { length: SIZE, depth: 44 cm } } }";
        var trips = Posed.Run(Cube, floor.Replace("SIZE", "437.9 mm", StringComparison.Ordinal));
        Check(
            "barrier-gap",
            Severity.Stop,
            trips,
            Posed.Run(Cube, floor.Replace("SIZE", "438 mm", StringComparison.Ordinal))
        );
        Assert.True(trips.Stops);
        Assert.Equal(Protects.Animal, trips.Finding("barrier-gap")!.Protects);
    }

    [Fact]
    public void ALidWithoutPlayIsCautioned()
    {
        // Play at worst 2 c − 1.5 − 1: 0.4 mm for c = 1.45, 0.5 mm for c = 1.5.
        Check(
            "lid-may-not-fit",
            Severity.Caution,
            Posed.Run(Cube, Floor, "lid: { material: glass, thickness: 4 mm, gap: 1.45 mm }"),
            Posed.Run(Cube, Floor, "lid: { material: glass, thickness: 4 mm, gap: 1.5 mm }")
        );
    }

    [Fact]
    public void GlassTooThinStops()
    {
        // σ ∝ 1/t²: the thickness that is just enough is printed; test on both sides of it. Over 6 mm
        // the tolerance is 0.3 mm (EN 572-2, from memory).
        const string deep = "{ soil: { recipe: ready-rainforest, depth: 40 cm } }";
        var thin = Posed.Run(
            "{ inside: { length: 120 cm, depth: 60 cm, height: 60 cm }, glass: { walls: 3 mm } }",
            deep
        );
        var needed = thin.Number("glass[front].neededMm") + 0.3;
        Assert.True(needed > 6.3);
        var just = Posed.Run(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{{ inside: {{ length: 120 cm, depth: 60 cm, height: 60 cm }}, "
                    + $"glass: {{ walls: {needed + 0.01:0.000} mm }} }}"
            ),
            deep
        );
        Check("glass-too-thin", Severity.Stop, thin, just);
        Assert.Equal(Protects.Person, thin.Finding("glass-too-thin")!.Protects);
    }

    [Fact]
    public void ThickGlassCarriesABrimfulAndThinGlassIsNoted()
    {
        // Brim-full, upper edge free, 450 × 450 mm: 4.95 mm at 7.2 MPa, so 5.5 mm at 5.8 MPa (own tables).
        const string box =
            "{ inside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: MM mm } }";
        Check(
            "glass-not-for-water",
            Severity.Note,
            Posed.Run(box.Replace("MM", "5.5", StringComparison.Ordinal), Floor),
            Posed.Run(box.Replace("MM", "5.9", StringComparison.Ordinal), Floor)
        );
    }

    [Fact]
    public void GlassBelowTheStartingTableIsNoted()
    {
        const string box =
            "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: MM mm } }";
        Check(
            "glass-below-table",
            Severity.Note,
            Posed.Run(box.Replace("MM", "4", StringComparison.Ordinal), Floor),
            Posed.Run(box.Replace("MM", "5", StringComparison.Ordinal), Floor)
        );
    }

    [Fact]
    public void AShelfRatedBelowTheWetMassStops()
    {
        var wet = Posed.Run(Cube, Floor).Number("weights.wetKg");
        Check(
            "shelf-overloaded",
            Severity.Stop,
            Posed.Run(
                Cube,
                Floor,
                string.Create(CultureInfo.InvariantCulture, $"shelf: {{ rated: {wet - 0.01:0.000} kg }}")
            ),
            Posed.Run(
                Cube,
                Floor,
                string.Create(CultureInfo.InvariantCulture, $"shelf: {{ rated: {wet + 0.01:0.000} kg }}")
            )
        );
    }

    [Fact]
    public void LightAggregateUnderThinSoilFloats()
    {
        // Clay 5 cm: 17.5 kg/m² and the soil against 0.05 × 0.58 × 1000 = 29 kg/m² of lift: it takes 11.5
        // kg/m².
        const string floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, soil: { recipe: "
            + "ready-rainforest, depth: CM cm } }";
        var seven = Posed.Run(Cube, floor.Replace("CM", "7", StringComparison.Ordinal));
        var perCentimeter = seven.Number("float.loadKgPerM2") / 7;
        Check(
            "aggregate-floats",
            Severity.Caution,
            Posed.Run(
                Cube,
                floor.Replace(
                    "CM",
                    string.Create(CultureInfo.InvariantCulture, $"{11.4 / perCentimeter:0.000}"),
                    StringComparison.Ordinal
                )
            ),
            Posed.Run(
                Cube,
                floor.Replace(
                    "CM",
                    string.Create(CultureInfo.InvariantCulture, $"{11.6 / perCentimeter:0.000}"),
                    StringComparison.Ordinal
                )
            )
        );
    }

    [Fact]
    public void TheThinnestStepDecidesWhetherTheFloorFloats()
    {
        // 11.5 kg/m² hold the layer down (above); a step of 1 cm carries far less, one of 7 cm far more.
        const string floor =
            "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, soil: { recipe: "
            + "ready-rainforest, zones: [ { share: 90 %, depth: 9 cm }, { share: 10 %, depth: CM cm } ] } }";
        Check(
            "aggregate-floats",
            Severity.Caution,
            Posed.Run(Cube, floor.Replace("CM", "1", StringComparison.Ordinal)),
            Posed.Run(Cube, floor.Replace("CM", "7", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void GoodsWetterThanTheMixMayBeAreCautioned()
    {
        // A typed squeeze is its own limit. The ready mix holds 0.36 L/L as sold and settles by 15 %: with a
        // squeeze of 30 % it is too wet by a fifth, with 40 % it is not.
        const string floor =
            "{ soil: { recipe: ready-rainforest, depth: 7 cm, settling: 15 %, squeeze: PC % } }";
        Check(
            "mix-too-wet",
            Severity.Caution,
            Posed.Run(Cube, floor.Replace("PC", "30", StringComparison.Ordinal)),
            Posed.Run(Cube, floor.Replace("PC", "40", StringComparison.Ordinal))
        );
    }

    private static void Check(string slug, Severity severity, PosedDesign trips, PosedDesign inside)
    {
        var finding = trips.Finding(slug);
        Assert.NotNull(finding);
        Assert.Equal(severity, finding.Severity);
        Assert.NotEmpty(finding.Fix);
        Assert.Null(inside.Finding(slug));
    }
}
