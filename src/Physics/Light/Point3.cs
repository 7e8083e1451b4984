namespace Litterfall.Physics.Light;

/// <summary>
/// A point or direction in the box, m: x along the front from the left, y from front to back, z up.
/// </summary>
/// <param name="X">Along the front, m.</param>
/// <param name="Y">Front to back, m.</param>
/// <param name="Z">Up, m.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Straight up.</summary>
    public static readonly Point3 Up = new(0.0, 0.0, 1.0);

    /// <summary>Length, m.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Coordinate along an axis: 0 x, 1 y, 2 z, m.</summary>
    internal double Along(int axis) =>
        axis switch
        {
            0 => X,
            1 => Y,
            _ => Z,
        };

    /// <summary>Sum.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Multiple.</summary>
    public static Point3 operator *(double s, Point3 a) => new(s * a.X, s * a.Y, s * a.Z);

    /// <summary>Inner product.</summary>
    public double Dot(Point3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Outer product.</summary>
    public Point3 Cross(Point3 other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The same direction with length 1; a point of length 0 stays.</summary>
    public Point3 Unit()
    {
        double length = Length;
        return length > 0.0 ? (1.0 / length) * this : this;
    }
}

/// <summary>A box along the axes, m.</summary>
/// <param name="From">Corner with the lowest coordinates.</param>
/// <param name="To">Corner with the highest.</param>
public readonly record struct Box3(Point3 From, Point3 To)
{
    /// <summary>True where a point lies inside, not on the skin.</summary>
    public bool Contains(Point3 p) =>
        p.X > From.X && p.X < To.X && p.Y > From.Y && p.Y < To.Y && p.Z > From.Z && p.Z < To.Z;

    /// <summary>
    /// Part of a straight way from <paramref name="start"/> to start + <paramref name="way"/> that lies
    /// inside,
    /// as shares of the way; empty where the second is not above the first.
    /// </summary>
    public (double In, double Out) Along(Point3 start, Point3 way)
    {
        double enter = 0.0;
        double leave = 1.0;
        Slab(start.X, way.X, (From.X, To.X), ref enter, ref leave);
        Slab(start.Y, way.Y, (From.Y, To.Y), ref enter, ref leave);
        Slab(start.Z, way.Z, (From.Z, To.Z), ref enter, ref leave);
        return (enter, leave);
    }

    private static void Slab(
        double start,
        double way,
        (double Low, double High) slab,
        ref double enter,
        ref double leave
    )
    {
        if (way == 0.0)
        {
            if (start <= slab.Low || start >= slab.High)
            {
                leave = -1.0;
            }

            return;
        }

        double inverse = 1.0 / way;
        double a = (slab.Low - start) * inverse;
        double b = (slab.High - start) * inverse;
        enter = Math.Max(enter, Math.Min(a, b));
        leave = Math.Min(leave, Math.Max(a, b));
    }
}
