namespace Litterfall.Physics.Light;

/// <summary>Rays of a lamp, spread evenly over its opening and over its flux.</summary>
internal sealed class RaySource
{
    private const int Steps = 512;
    private readonly Luminaire lamp;
    private readonly double[] below = new double[Steps + 1];
    private readonly double[] around = new double[Steps + 1];

    public RaySource(Luminaire lamp)
    {
        this.lamp = lamp;
        if (lamp.Table is not { } table)
        {
            return;
        }

        for (int i = 0; i <= Steps; i++)
        {
            double angle = 180.0 * i / Steps;
            below[i] = table.ShareBelow(angle);
            around[i] = Mean(table, angle);
        }
    }

    /// <summary>A ray: where from, its direction and its weight; weights are 1 on average.</summary>
    public (Point3 At, Point3 Way, double Weight) Ray(int index)
    {
        // Steps of the generalized golden ratio in four dimensions: x⁵ = x + 1.
        const double root = 1.1673039782614187;
        double u = Fraction(index / root);
        double v = Fraction(index / (root * root));
        double p = Fraction(index / (root * root * root));
        double q = Fraction(index / (root * root * root * root));
        var (way, weight) = lamp.Table is { } table ? OfTable(table, u, v) : (OfShape(u, v), 1.0);
        return (Start(p, q), way, weight);
    }

    private static double Fraction(double x) => x + 0.5 - Math.Floor(x + 0.5);

    private Point3 Start(double p, double q)
    {
        var c = lamp.Center;
        switch (lamp.Shape)
        {
            case LuminousShape.Rectangle:
                return new Point3(
                    c.X + (((2.0 * p) - 1.0) * lamp.Half.X),
                    c.Y + (((2.0 * q) - 1.0) * lamp.Half.Y),
                    c.Z
                );
            case LuminousShape.Disc:
                double r = lamp.Half.X * Math.Sqrt(p);
                double angle = 2.0 * Math.PI * q;
                return new Point3(c.X + (r * Math.Cos(angle)), c.Y + (r * Math.Sin(angle)), c.Z);
            case LuminousShape.Line:
                return c + (((2.0 * p) - 1.0) * lamp.HalfLine);
            default:
                return c;
        }
    }

    private Point3 OfShape(double u, double v)
    {
        double angle = 2.0 * Math.PI * v;
        switch (lamp.Shape)
        {
            case LuminousShape.Point:
                return Sphere((2.0 * u) - 1.0, angle, Point3.Up);
            case LuminousShape.Line:
                return Sphere(Math.Cos(TubeAngle(u)), angle, lamp.HalfLine.Unit());
            default:
                return Sphere(
                    Math.Pow(1.0 - u, 1.0 / (lamp.Exponent + 1.0)),
                    angle,
                    new Point3(0.0, 0.0, -1.0)
                );
        }
    }

    /// <summary>Angle from the axis of a diffuse tube: (ψ − sinψ cosψ)/π = u, by Newton.</summary>
    private static double TubeAngle(double u)
    {
        double angle = Math.PI * u;
        for (int i = 0; i < 30; i++)
        {
            double slope = 2.0 * Math.Sin(angle) * Math.Sin(angle);
            double miss = angle - (Math.Sin(angle) * Math.Cos(angle)) - (Math.PI * u);
            angle = Math.Clamp(angle - (miss / Math.Max(slope, 1e-3)), 0.0, Math.PI);
        }

        return angle;
    }

    private (Point3 Way, double Weight) OfTable(CandelaTable table, double u, double v)
    {
        int at = Array.BinarySearch(below, u);
        int high = Math.Clamp(at >= 0 ? at : ~at, 1, Steps);
        double span = below[high] - below[high - 1];
        double share = span > 0.0 ? (u - below[high - 1]) / span : 0.5;
        double vertical = 180.0 * (high - 1 + share) / Steps;
        double horizontal = 360.0 * v;
        double mean = around[high - 1] + (share * (around[high] - around[high - 1]));
        double weight = mean > 0.0 ? table.At(vertical, horizontal) / mean : 0.0;
        double turn = (horizontal + lamp.TurnDegrees) * Math.PI / 180.0;
        double down = vertical * Math.PI / 180.0;
        var way = new Point3(
            Math.Sin(down) * Math.Cos(turn),
            Math.Sin(down) * Math.Sin(turn),
            -Math.Cos(down)
        );
        return (way, weight);
    }

    private static double Mean(CandelaTable table, double vertical)
    {
        const int parts = 180;
        double sum = 0.0;
        for (int i = 0; i < parts; i++)
        {
            sum += table.At(vertical, 360.0 * (i + 0.5) / parts);
        }

        return sum / parts;
    }

    /// <summary>A direction at a cosine from an axis and an angle about it.</summary>
    private static Point3 Sphere(double cosine, double angle, Point3 axis)
    {
        double sine = Math.Sqrt(Math.Max(0.0, 1.0 - (cosine * cosine)));
        var other = Math.Abs(axis.X) < 0.9 ? new Point3(1.0, 0.0, 0.0) : new Point3(0.0, 1.0, 0.0);
        var u = axis.Cross(other).Unit();
        var v = axis.Cross(u);
        return (cosine * axis) + (sine * Math.Cos(angle) * u) + (sine * Math.Sin(angle) * v);
    }
}
