using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Photometry;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// A made-up bar as a file of LM-63-2002 (point, type C, quadrant, multiplier 0.5, ballast 0.9): intensities,
/// flux by the exact
/// integral of the table, and light of the bar in its place, by two other programs.
/// </summary>
public static class OwnLampFile
{
    private const string Bar = """
        IESNA:LM-63-2002
        [TEST] SYNTH-0001
        [TESTLAB] none, synthetic table for software tests
        [ISSUEDATE] 01-JAN-2026
        [MANUFAC] none
        [LUMCAT] synthetic bar
        [LUMINAIRE] synthetic 0.40 m bar, two-plane asymmetric table, not a product
        [MORE] continuation line of the LUMINAIRE keyword
        [_ABSOLUTE] candela values are absolute
        TILT=NONE
        1 -1 0.5 10 5 1 2 0 0 0
        0.9 1.0 18.0
        0 10 20 30 40 50 60 70 80 90
        0, 22.5, 45,
        67.5 90
        1000 970 890 770 620 460 300 160 60 0
        1000 975 905 795 655 500 335 185 70 0
        1000 985 930 840 715 560 390 225 90 0
        1000 992 955 885 775 625 450 270 110 0
        1000 995 965 905 805 660 485 300 125 0
        """;

    private static readonly CaseSource Source = new(
        "Light",
        "Own worked example, LM-63 bar",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    private static readonly Lazy<LampFile> File = new(() =>
        LampFile.Read("bar.ies", Encoding.ASCII.GetBytes(Bar)).Value!
    );

    private static readonly Lazy<CandelaTable> Table = new(() =>
        CandelaTable.Of(
            File.Value.VerticalDegrees.AsSpan(),
            File.Value.HorizontalDegrees.AsSpan(),
            File.Value.Candela.AsSpan()
        )
    );

    /// <summary>The cases.</summary>
    /// <returns>Candela, lumens, lux.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Bilinear table; digits printed.";
        (double Down, double Around, double Candela)[] rows =
        [
            (0.0, 0.0, 450.0),
            (45.0, 0.0, 243.0),
            (45.0, 90.0, 329.625),
            (35.0, 30.0, 334.125),
            (35.0, 330.0, 334.125),
            (35.0, 150.0, 334.125),
            (35.0, 210.0, 334.125),
            (95.0, 0.0, 0.0),
        ];
        foreach (var (down, around, candela) in rows)
        {
            yield return Source.Case(
                $"intensity {down}° from straight down at {around}°",
                "cd",
                (candela, 1e-4 + (1e-6 * candela)),
                Reason,
                () => Table.Value.Toward(Way(down, around), 0.0)
            );
        }

        yield return Source.Case(
            $"flux, exact integral",
            "lm",
            CaseSource.Within(1e-5, 1215.3185),
            "Exact integral of a table straight in both angles.",
            () => Table.Value.Lumens
        );
        foreach (var one in Placed())
        {
            yield return one;
        }
    }

    private static Point3 Way(double down, double around)
    {
        var (sin, cos) = Math.SinCos(down * Math.PI / 180.0);
        var (s, c) = Math.SinCos(around * Math.PI / 180.0);
        return new Point3(sin * c, sin * s, -cos);
    }

    private static IEnumerable<VerificationCase> Placed()
    {
        (double X, double Y, double Straight, double Turned)[] rows =
        [
            (0.30, 0.225, 1800.0, 1800.0),
            (0.15, 0.225, 1449.5083, 1542.0336),
            (0.30, 0.05, 1463.7866, 1355.6441),
            (0.05, 0.05, 897.3396, 944.2399),
        ];
        foreach (var (x, y, straight, turned) in rows)
        {
            foreach (var (degrees, lux) in new[] { (0.0, straight), (90.0, turned) })
            {
                yield return Source.Case(
                    $"bar at (0.30, 0.225, 0.50) turned {degrees}°, floor ({x}, {y})",
                    "lx",
                    CaseSource.Within(1e-5, lux),
                    "Digits printed.",
                    () => PanelScene.Level(PanelScene.Box(PanelScene.None), Lamp(degrees), x, y)
                );
            }
        }

        yield return Source.Case(
            $"bar at (0.30, 0.225, 0.50), back wall (0.30, z 0.25)",
            "lx",
            CaseSource.Within(1e-5, 2065.4877),
            "Digits printed.",
            () =>
                PanelScene.At(
                    PanelScene.Box(PanelScene.None),
                    Lamp(0.0),
                    new Receiver(new Point3(0.30, 0.45, 0.25), new Point3(0.0, -1.0, 0.0))
                )
        );
    }

    private static Luminaire Lamp(double degrees) =>
        PlacedLamp.Measured(File.Value, new Point3(0.30, 0.225, 0.50), degrees)[0];
}
