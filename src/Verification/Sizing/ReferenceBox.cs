using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Judging;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Sizing;

/// <summary>
/// Designs of a few lines, posed through the reader and the main path, against a tiny catalog.
/// </summary>
internal static class PosedDesign
{
    private const string Origin = "\"source\":\"s\",\"place\":\"p\",\"provenance\":\"recomputed\"";

    private static readonly CatalogFile[] Catalog =
    [
        new(
            "sources.json",
            "[{\"key\":\"s\",\"title\":\"test bench\",\"year\":null,\"kind\":\"own\",\"read\":\"whole\"}]"
        ),
        new(
            "entries.json",
            """
            [ {"key":"clay","kind":"aggregate","name":"clay","values":{
                "bulkDensity":{"value":350,"unit":"kg/m3",ORIGIN},
                "interparticleVoids":{"value":42,"unit":"%",ORIGIN}}},
              {"key":"ready-mix","kind":"recipe","name":"ready mix","values":{
                "bulkDensityDry":{"value":130,"unit":"kg/m3",ORIGIN}}},
              {"key":"a","kind":"soil","name":"a","values":{}},
              {"key":"b","kind":"soil","name":"b","values":{}},
              {"key":"c","kind":"soil","name":"c","values":{}},
              {"key":"d","kind":"soil","name":"d","values":{}},
              {"key":"e","kind":"soil","name":"e","values":{}},
              {"key":"five-parts","kind":"recipe","name":"five parts","values":{},
                "parts":[{"material":"a","parts":2},{"material":"b","parts":2},{"material":"c","parts":1},
                         {"material":"d","parts":1},{"material":"e","parts":1}],"partsSource":{ ORIGIN }},
              {"key":"small-frog","kind":"animal","name":"small frog","values":{
                "adultLengthHigh":{"value":18,"unit":"mm",ORIGIN},
                "taxon":{"text":"poison frog",ORIGIN},"habit":{"text":"climber",ORIGIN}}},
              {"key":"larger-frog","kind":"animal","name":"larger frog","values":{
                "adultLengthHigh":{"value":38,"unit":"mm",ORIGIN},
                "taxon":{"text":"poison frog",ORIGIN},"habit":{"text":"ground",ORIGIN}}},
              {"key":"leaves","kind":"litter","name":"leaves","values":{}},
              {"key":"float-glass","kind":"sheet","name":"glass","values":{
                "density":{"value":2500,"unit":"kg/m3",ORIGIN}}} ]
            """.Replace("ORIGIN", Origin, StringComparison.Ordinal)
        ),
    ];

    /// <summary>The number at a key of the report of a design.</summary>
    public static double Number(string text, string key)
    {
        var document = DesignReader.Read("posed", text).Value!;
        var report = DesignRun
            .Execute(DesignChecker.Check(document, CatalogReader.Read(Catalog)).Value!)
            .Report;
        return ((ReportNumber)ReportPath.Find(report, key)!).Number;
    }
}

/// <summary>
/// Own worked example: a box of 45 × 45 × 60 cm outside, 5 mm glass, drainage 5 cm, a ready mix 7 cm deep
/// that
/// settles by 15 %, 3 cm of loose leaves. Inside 44 × 44 × 59.5 cm: floor 0.1936 m²; drainage 0.1936 × 50 =
/// 9.68 L; soil 0.1936 × 70 = 13.552 L finished, ÷ 0.85 = 15.944 L; leaves 5.808 L; air 59.5 − 15 = 44.5 cm,
/// 0.1936 × 445 = 86.152 L.
/// </summary>
public static class ReferenceBox
{
    private const string Level = """
        litterfall: 1
        name: reference box
        box: { outside: { length: 45 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm, base: 5 mm } }
        floor:
          drainage: { material: clay, depth: 5 cm }
          soil: { recipe: ready-mix, depth: 7 cm, settling: 15 % }
          litter: { material: leaves, depth: 3 cm }
        """;

    private static readonly string Wedge = Level.Replace(
        "depth: 7 cm",
        "front: 4 cm, back: 10 cm",
        StringComparison.Ordinal
    );

    /// <summary>60 L finished in a floor of 0.3 × 1 m, 20 cm deep; five parts 2 : 2 : 1 : 1 : 1, yield 0.88:
    /// 60 ÷ 0.88 = 68.18 L in, of it 2/7 = 19.48 and 1/7 = 9.74 L; 60 × 0.36 = 21.6 L of water.</summary>
    private const string Batch = """
        litterfall: 1
        name: batch of 60 L
        box: { inside: { length: 1 m, depth: 0.3 m, height: 0.5 m } }
        floor: { soil: { recipe: five-parts, depth: 20 cm, settling: 0 %, mixingYield: 88 %, squeeze: 36 % } }
        """;

    /// <summary>The cases.</summary>
    /// <returns>Volumes of the reference box, and of one batch.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("inside length", "mm", 440, Level, "geometry.insideLengthMm");
        yield return Case("floor", "cm2", 1936, Level, "geometry.insideFloorCm2");
        yield return Case("drainage", "L", 9.68, Level, "quantities[drainage].finishedLitres");
        yield return Case("soil, finished", "L", 13.552, Level, "quantities[soil].finishedLitres");
        yield return Case("soil, to buy", "L", 15.9435294, Level, "quantities[soil].toBuyLitres");
        yield return Case(
            "soil of a wedge of the same mean depth",
            "L",
            13.552,
            Wedge,
            "quantities[soil].finishedLitres"
        );
        yield return Case("leaves", "L", 5.808, Level, "quantities[litter].finishedLitres");
        yield return Case("air height", "cm", 44.5, Level, "geometry.airHeightCm");
        yield return Case("headspace", "L", 86.152, Level, "geometry.headspaceLitres");
        yield return Case(
            "mass of five panes, (121.5 − 115.192) L × 2.5",
            "kg",
            15.77,
            Level,
            "weights.boxKg"
        );
        yield return Case("batch: finished", "L", 60, Batch, "quantities[soil].finishedLitres");
        yield return Case("batch: loose", "L", 68.1818182, Batch, "quantities[soil].looseLitres");
        yield return Case("batch: a double part", "L", 19.4805195, Batch, "quantities[a].looseLitres");
        yield return Case("batch: a single part", "L", 9.7402597, Batch, "quantities[e].looseLitres");
        yield return Case(
            "batch: water at squeeze wetness",
            "L",
            21.6,
            Batch,
            "quantities[soil].squeezeWaterLitres"
        );
    }

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        string design,
        string key
    ) =>
        new()
        {
            Source = "own worked example: reference box and batch",
            Subject = "Sizing",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = () => PosedDesign.Number(design, key),
            Tolerance = 1e-6,
            Reason = "Closed forms in double precision, shown to ten digits.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}

/// <summary>
/// Own worked example: inside floors of boxes sold by their outside size, (L − 2 t)(D − 2 t) by hand, and the
/// true content of one sold by a name in gallons.
/// </summary>
public static class OwnFloorAreas
{
    /// <summary>The cases.</summary>
    /// <returns>Floors in cm² as rounded by hand.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("60 × 45 cm, 5 mm: 59.0 × 44.0", 2596, "60 cm", "45 cm", "5 mm");
        yield return Case("24 × 18 in, 6 mm: 59.76 × 44.52", 2660.5, "24 in", "18 in", "6 mm");
        yield return Case("90 × 60 cm, 6 mm: 88.8 × 58.8", 5221.4, "90 cm", "60 cm", "6 mm");
        yield return Case("30 × 30 cm, 4 mm: 29.2 × 29.2", 852.6, "30 cm", "30 cm", "4 mm");
    }

    private static VerificationCase Case(
        string quantity,
        double expected,
        string length,
        string depth,
        string glass
    ) =>
        new()
        {
            Source = "own worked example: inside floors",
            Subject = "Sizing",
            Quantity = quantity,
            Unit = "cm2",
            Expected = expected,
            Got = () =>
                PosedDesign.Number(
                    $$"""
                    litterfall: 1
                    name: floor
                    box:
                      outside: { length: {{length}}, depth: {{depth}}, height: 45 cm }
                      glass: { walls: {{glass}} }
                    floor: { drainage: { material: clay, depth: 5 cm } }
                    """,
                    "geometry.insideFloorCm2"
                ),
            Tolerance = 0.06,
            Reason = "Half of the last digit written by hand.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
