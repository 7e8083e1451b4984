namespace Litterfall.Physics.Light;

/// <summary>
/// Configuration factors of a Lambertian surface: illuminance at a point over exitance of the surface.
/// </summary>
/// <remarks>
/// Siegel and Howell, Thermal Radiation Heat Transfer, catalog of configuration factors; polygon: Lambert
/// 1760
/// (all recalled, each checked against quadrature).
/// </remarks>
public static class RectangleFactor
{
    private const double Nothing = 1e-12;

    /// <summary>
    /// Receiver parallel to a rectangle and facing it, under one corner:
    /// F = (1/2π)[(a/A) atan(b/A) + (b/B) atan(a/B)], A² = a² + h², B² = b² + h².
    /// </summary>
    /// <param name="a">One side, m; its sign is kept.</param>
    /// <param name="b">Other side, m; its sign is kept.</param>
    /// <param name="h">Distance of the planes, m, above 0.</param>
    public static double ParallelCorner(double a, double b, double h)
    {
        double x = Math.Sqrt((a * a) + (h * h));
        double y = Math.Sqrt((b * b) + (h * h));
        return ((a / x * Math.Atan(b / x)) + (b / y * Math.Atan(a / y))) / (2.0 * Math.PI);
    }

    /// <summary>Parallel rectangle between two corners, relative to the foot of the receiver.</summary>
    /// <param name="low">Corner with the lower values, m.</param>
    /// <param name="high">Corner with the higher values, m.</param>
    /// <param name="h">Distance of the planes, m, above 0.</param>
    public static double Parallel((double A, double B) low, (double A, double B) high, double h) =>
        ParallelCorner(high.A, high.B, h)
        - ParallelCorner(low.A, high.B, h)
        - ParallelCorner(high.A, low.B, h)
        + ParallelCorner(low.A, low.B, h);

    /// <summary>
    /// Rectangle on a plane at right angles to the receiver's, its part before the receiver's face from c0 to
    /// c1:
    /// F = (1/2π)[atan(b/d) − (d/√(c²+d²)) atan(b/√(c²+d²))], summed with sign.
    /// </summary>
    /// <param name="c">From and to along the receiver's normal, m; what lies behind is cut off.</param>
    /// <param name="b">From and to along the other direction of the rectangle, m.</param>
    /// <param name="d">Distance of the receiver from the plane of the rectangle, m, above 0.</param>
    public static double Perpendicular((double From, double To) c, (double From, double To) b, double d)
    {
        double from = Math.Max(c.From, 0.0);
        if (c.To <= from)
        {
            return 0.0;
        }

        double near = Math.Sqrt((from * from) + (d * d));
        double far = Math.Sqrt((c.To * c.To) + (d * d));
        return (
                d
                * (
                    ((Math.Atan(b.To / near) - Math.Atan(b.From / near)) / near)
                    - ((Math.Atan(b.To / far) - Math.Atan(b.From / far)) / far)
                )
            ) / (2.0 * Math.PI);
    }

    /// <summary>Polygon, cut at the receiver's horizon: half of |Σ γ (u·n)| over π.</summary>
    /// <param name="corners">Corners in order, relative to the receiver, m; four at most are used.</param>
    /// <param name="normal">Direction the receiver faces, length 1.</param>
    public static double Polygon(ReadOnlySpan<Point3> corners, Point3 normal)
    {
        Span<Point3> kept = stackalloc Point3[(2 * corners.Length) + 2];
        int count = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            var a = corners[i];
            var b = corners[(i + 1) % corners.Length];
            double ha = a.Dot(normal);
            double hb = b.Dot(normal);
            if (ha >= 0.0)
            {
                kept[count++] = a;
            }

            if (ha >= 0.0 != hb >= 0.0)
            {
                kept[count++] = a + (ha / (ha - hb) * (b - a));
            }
        }

        double sum = 0.0;
        for (int i = 0; i < count; i++)
        {
            var a = kept[i];
            var b = kept[(i + 1) % count];
            var cross = a.Cross(b);
            double sine = cross.Length;
            if (sine > Nothing * a.Length * b.Length)
            {
                sum += Math.Atan2(sine, a.Dot(b)) / sine * cross.Dot(normal);
            }
        }

        return Math.Abs(sum) / (2.0 * Math.PI);
    }
}
