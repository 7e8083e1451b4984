namespace Litterfall.Physics.Light;

/// <summary>
/// A rectangle along the axes that throws light back evenly: part of a diffuse face or of a block.
/// </summary>
/// <param name="Axis">Axis of its normal: 0 x, 1 y, 2 z.</param>
/// <param name="Sign">+1 where it faces along the axis, −1 against it.</param>
/// <param name="Low">Corner with the lowest coordinates, m.</param>
/// <param name="High">Corner with the highest, m; equal on the axis.</param>
/// <param name="Reflectance">Share thrown back, 0 to 1.</param>
internal readonly record struct Patch(int Axis, double Sign, Point3 Low, Point3 High, double Reflectance)
{
    private const double Near = 1e-9;

    public Point3 Middle => 0.5 * (Low + High);

    public Point3 Normal =>
        Axis switch
        {
            0 => new Point3(Sign, 0.0, 0.0),
            1 => new Point3(0.0, Sign, 0.0),
            _ => new Point3(0.0, 0.0, Sign),
        };

    public Receiver Receiver => new(Middle, Normal);

    public double Area =>
        Axis switch
        {
            0 => (High.Y - Low.Y) * (High.Z - Low.Z),
            1 => (High.X - Low.X) * (High.Z - Low.Z),
            _ => (High.X - Low.X) * (High.Y - Low.Y),
        };

    /// <summary>Configuration factor at a receiver, nothing between; 0 from behind.</summary>
    public double Factor(Receiver receiver)
    {
        var from = Low - receiver.At;
        var to = High - receiver.At;
        double offset = from.Along(Axis);
        double distance = -offset * Sign;
        if (distance <= Near)
        {
            return 0.0;
        }

        var n = receiver.Normal;
        double along = n.Along(Axis);
        int u = Axis == 0 ? 1 : 0;
        int v = Axis == 2 ? 1 : 2;
        if (Math.Abs(along) > 1.0 - Near)
        {
            // Parallel; it must face us.
            return along * Sign < 0.0
                ? RectangleFactor.Parallel(
                    (from.Along(u), from.Along(v)),
                    (to.Along(u), to.Along(v)),
                    distance
                )
                : 0.0;
        }

        if (Math.Abs(n.Along(u)) > 1.0 - Near)
        {
            return Upright(n.Along(u), (from.Along(u), to.Along(u)), (from.Along(v), to.Along(v)), distance);
        }

        if (Math.Abs(n.Along(v)) > 1.0 - Near)
        {
            return Upright(n.Along(v), (from.Along(v), to.Along(v)), (from.Along(u), to.Along(u)), distance);
        }

        Span<Point3> corners =
        [
            Corner(from, to, u, v, (false, false)),
            Corner(from, to, u, v, (true, false)),
            Corner(from, to, u, v, (true, true)),
            Corner(from, to, u, v, (false, true)),
        ];
        return RectangleFactor.Polygon(corners, n);
    }

    private static double Upright(
        double normal,
        (double From, double To) c,
        (double From, double To) b,
        double distance
    ) => RectangleFactor.Perpendicular(normal > 0.0 ? c : (-c.To, -c.From), b, distance);

    private static Point3 Corner(Point3 from, Point3 to, int u, int v, (bool U, bool V) high) =>
        new(
            (u == 0 && high.U) || (v == 0 && high.V) ? to.X : from.X,
            (u == 1 && high.U) || (v == 1 && high.V) ? to.Y : from.Y,
            (u == 2 && high.U) || (v == 2 && high.V) ? to.Z : from.Z
        );
}
