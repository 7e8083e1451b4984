namespace Litterfall.Physics.Light;

/// <summary>Form of what shines.</summary>
public enum LuminousShape
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A straight line: a tube.</summary>
    Line,

    /// <summary>A level rectangle.</summary>
    Rectangle,

    /// <summary>A level disc.</summary>
    Disc,
}

/// <summary>
/// A lamp. A rectangle or disc faces down; without a table it shines as cosᵐ of the angle from straight down
/// (m = 1: Lambert). A line without a table is a diffuse tube, a point shines equally all round. With a table
/// every part of
/// the opening shines as the far-field table says.
/// </summary>
public sealed record Luminaire
{
    /// <summary>Form.</summary>
    public required LuminousShape Shape { get; init; }

    /// <summary>Middle, m.</summary>
    public required Point3 Center { get; init; }

    /// <summary>Flux, lm.</summary>
    public required double Lumens { get; init; }

    /// <summary>Half of the size along x and y of a rectangle; the radius twice for a disc; m.</summary>
    public (double X, double Y) Half { get; init; }

    /// <summary>Half of the way from one end of a line to the other, m.</summary>
    public Point3 HalfLine { get; init; }

    /// <summary>m of cosᵐ.</summary>
    public double Exponent { get; init; } = 1.0;

    /// <summary>True for a line that is a flat strip facing down, not a tube.</summary>
    public bool IsStrip { get; init; }

    /// <summary>Measured intensities; null without.</summary>
    public CandelaTable? Table { get; init; }

    /// <summary>Angle of the table's 0° plane from +x, counter-clockwise from above, °.</summary>
    public double TurnDegrees { get; init; }

    /// <summary>Area of a rectangle or disc, m²; length of a line, m; 1 for a point.</summary>
    public double Measure =>
        Shape switch
        {
            LuminousShape.Rectangle => 4.0 * Half.X * Half.Y,
            LuminousShape.Disc => Math.PI * Half.X * Half.X,
            LuminousShape.Line => 2.0 * HalfLine.Length,
            _ => 1.0,
        };

    /// <summary>A level rectangle facing down.</summary>
    /// <param name="center">Middle, m.</param>
    /// <param name="size">Along x and y, m.</param>
    /// <param name="lumens">Flux, lm.</param>
    public static Luminaire Rectangle(Point3 center, (double X, double Y) size, double lumens) =>
        new()
        {
            Shape = LuminousShape.Rectangle,
            Center = center,
            Lumens = lumens,
            Half = (0.5 * size.X, 0.5 * size.Y),
        };

    /// <summary>A level disc facing down.</summary>
    /// <param name="center">Middle, m.</param>
    /// <param name="radius">Radius, m.</param>
    /// <param name="lumens">Flux, lm.</param>
    public static Luminaire Disc(Point3 center, double radius, double lumens) =>
        new()
        {
            Shape = LuminousShape.Disc,
            Center = center,
            Lumens = lumens,
            Half = (radius, radius),
        };

    /// <summary>A point that shines equally all round.</summary>
    /// <param name="at">Where, m.</param>
    /// <param name="lumens">Flux, lm.</param>
    public static Luminaire Point(Point3 at, double lumens) =>
        new()
        {
            Shape = LuminousShape.Point,
            Center = at,
            Lumens = lumens,
        };

    /// <summary>A diffuse tube.</summary>
    /// <param name="from">One end, m.</param>
    /// <param name="to">Other end, m.</param>
    /// <param name="lumens">Flux, lm.</param>
    public static Luminaire Line(Point3 from, Point3 to, double lumens) =>
        new()
        {
            Shape = LuminousShape.Line,
            Center = 0.5 * (from + to),
            HalfLine = 0.5 * (to - from),
            Lumens = lumens,
        };

    /// <summary>Exponent of a lens whose beam is a full angle wide to half of the intensity.</summary>
    /// <param name="beamDegrees">Full angle, above 0 and below 180, °.</param>
    /// <returns>m = ln 0.5 ÷ ln cos(β/2).</returns>
    public static double BeamExponent(double beamDegrees) =>
        Math.Log(0.5) / Math.Log(Math.Cos(0.5 * beamDegrees * Math.PI / 180.0));

    /// <summary>Intensity per unit of <see cref="Measure"/>: cd/m², cd/m or cd.</summary>
    /// <param name="ray">Direction of length 1, away from the lamp.</param>
    internal double Intensity(Point3 ray)
    {
        if (Table is not null)
        {
            return Table.Toward(ray, TurnDegrees) / Measure;
        }

        switch (Shape)
        {
            case LuminousShape.Point:
                return Lumens / (4.0 * Math.PI);
            case LuminousShape.Line when !IsStrip:
                double along = ray.Dot(HalfLine) / HalfLine.Length;
                return Lumens
                    / (Math.PI * Math.PI * Measure)
                    * Math.Sqrt(Math.Max(0.0, 1.0 - (along * along)));
            default:
                double down = -ray.Z;
                if (down <= 0.0)
                {
                    return 0.0;
                }

                double peak = Lumens * (Exponent + 1.0) / (2.0 * Math.PI * Measure);
                return peak * (Exponent == 1.0 ? down : Math.Pow(down, Exponent));
        }
    }
}
