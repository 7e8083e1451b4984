using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Physics.Numerics;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Worked examples of textbooks, read in public transcriptions of their numbers: point sources over a plane,
/// and the view factor of two rectangles.
/// </summary>
public static class TextbookLamps
{
    private static readonly CaseSource Chakrabarti = new(
        "Light",
        "Chakrabarti, Soni, Gupta and Bhatnagar, Power System Engineering, 2nd edition",
        Evidence.PrintedText,
        Provenance.Read
    );

    private static readonly CaseSource Som = new(
        "Light",
        "Som, Introduction to Heat Transfer",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Illuminances and a view factor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Digits = "The printed digits.";
        yield return Chakrabarti.Case(
            $"example 4.2 (p. 753): 100 cp 2 m away, straight on",
            "lx",
            (25.0, 0.025),
            Digits,
            () => Point(100.0, 2.0, 0.0)
        );
        yield return Chakrabarti.Case(
            $"example 4.2: the same on a plane tilted 45°",
            "lx",
            (17.678, 0.02),
            Digits,
            () => Point(100.0, 2.0, 45.0)
        );
        yield return Chakrabarti.Case(
            $"example 4.3 (p. 753): 200 cp 6 m up, at the center",
            "lx",
            (5.56, 0.006),
            Digits,
            () => Point(200.0, 6.0, 0.0)
        );
        yield return Som.Case(
            $"chapter 11, example 6: rectangles of 1.5 × 3 m, 3 m apart",
            "1",
            (0.11, 0.01),
            "Read off a graph.",
            () => Rectangles(1.5, 3.0, 3.0)
        );
    }

    private static double Point(double candela, double meters, double degrees)
    {
        double angle = degrees * Math.PI / 180.0;
        var lamp = Luminaire.Point(new Point3(2.0, 2.0, meters), candela * 4.0 * Math.PI);
        return PanelScene.At(
            PanelScene.Box(PanelScene.None),
            lamp,
            new Receiver(new Point3(2.0, 2.0, 0.0), new Point3(Math.Sin(angle), 0.0, Math.Cos(angle)))
        );
    }

    /// <summary>Mean of the factor of a point over a rectangle of the same size under it.</summary>
    private static double Rectangles(double length, double width, double apart)
    {
        var rule = GaussLegendre.Of(12);
        double sum = 0.0;
        for (int i = 0; i < rule.Points.Length; i++)
        {
            for (int j = 0; j < rule.Points.Length; j++)
            {
                double x = length * rule.Points[i];
                double y = width * rule.Points[j];
                sum +=
                    rule.Weights[i]
                    * rule.Weights[j]
                    * RectangleFactor.Parallel((-x, -y), (length - x, width - y), apart);
            }
        }

        return sum;
    }
}
