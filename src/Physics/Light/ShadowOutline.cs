namespace Litterfall.Physics.Light;

/// <summary>
/// Shadow of a box along the axes, thrown from a point onto a level plane; coordinates relative to the point.
/// The two level faces of the box throw rectangles that are copies of each other about the point, so the
/// shadow is their common bounding rectangle cut by the wedge in which the box is seen: six edges at most,
/// exact.
/// </summary>
internal readonly struct ShadowOutline
{
    private const double NearestShare = 1e-9;
    private readonly double lowX;
    private readonly double highX;
    private readonly double lowY;
    private readonly double highY;
    private readonly double rightX;
    private readonly double rightY;
    private readonly double leftX;
    private readonly double leftY;
    private readonly bool hasWedge;
    private readonly double near;
    private readonly double far;

    private ShadowOutline(
        (double Low, double High) x,
        (double Low, double High) y,
        (double Near, double Far) scale
    )
    {
        (near, far) = scale;
        lowX = x.Low * (x.Low > 0.0 ? near : far);
        highX = x.High * (x.High > 0.0 ? far : near);
        lowY = y.Low * (y.Low > 0.0 ? near : far);
        highY = y.High * (y.High > 0.0 ? far : near);
        hasWedge = true;
        if (x.Low >= 0.0)
        {
            (rightX, rightY) = (y.Low >= 0.0 ? x.High : x.Low, y.Low);
            (leftX, leftY) = (y.High <= 0.0 ? x.High : x.Low, y.High);
        }
        else if (x.High <= 0.0)
        {
            (rightX, rightY) = (y.High <= 0.0 ? x.Low : x.High, y.High);
            (leftX, leftY) = (y.Low >= 0.0 ? x.Low : x.High, y.Low);
        }
        else if (y.Low >= 0.0)
        {
            (rightX, rightY, leftX, leftY) = (x.High, y.Low, x.Low, y.Low);
        }
        else if (y.High <= 0.0)
        {
            (rightX, rightY, leftX, leftY) = (x.Low, y.High, x.High, y.High);
        }
        else
        {
            hasWedge = false;
        }
    }

    /// <summary>The shadow; null where the box is not between point and plane.</summary>
    /// <param name="box">The box.</param>
    /// <param name="from">The point.</param>
    /// <param name="rise">Height of the plane over the point, not 0.</param>
    public static ShadowOutline? Of(in Box3 box, Point3 from, double rise)
    {
        double a = (box.From.Z - from.Z) / rise;
        double b = (box.To.Z - from.Z) / rise;
        double low = Math.Max(Math.Min(a, b), NearestShare);
        double high = Math.Min(Math.Max(a, b), 1.0);
        return low >= high
            ? null
            : new ShadowOutline(
                (box.From.X - from.X, box.To.X - from.X),
                (box.From.Y - from.Y, box.To.Y - from.Y),
                (1.0 / high, 1.0 / low)
            );
    }

    /// <summary>True where it may touch a rectangle.</summary>
    public bool Touches(double x0, double x1, double y0, double y1) =>
        lowX < x1 && highX > x0 && lowY < y1 && highY > y0;

    /// <summary>Heights y at which its outline bends.</summary>
    public void AddBends(ref BreakList breaks, double y0, double y1, double x0, double x1)
    {
        breaks.Add(lowY);
        breaks.Add(highY);
        if (!hasWedge)
        {
            return;
        }

        // The corners of both rectangles, and where the wedge enters and leaves the strip.
        breaks.Add(rightY * near);
        breaks.Add(rightY * far);
        breaks.Add(leftY * near);
        breaks.Add(leftY * far);
        AddCrossing(ref breaks, rightX, rightY, x0);
        AddCrossing(ref breaks, rightX, rightY, x1);
        AddCrossing(ref breaks, leftX, leftY, x0);
        AddCrossing(ref breaks, leftX, leftY, x1);
    }

    /// <summary>
    /// Shortens a stretch of a line to what lies in the shadow; empty where from is not below to.
    /// </summary>
    public void Clip(double x, double y, double alongX, double alongY, ref double from, ref double to)
    {
        Keep(x - lowX, alongX, ref from, ref to);
        Keep(highX - x, -alongX, ref from, ref to);
        Keep(y - lowY, alongY, ref from, ref to);
        Keep(highY - y, -alongY, ref from, ref to);
        if (hasWedge)
        {
            Keep((rightX * y) - (rightY * x), (rightX * alongY) - (rightY * alongX), ref from, ref to);
            Keep((leftY * x) - (leftX * y), (leftY * alongX) - (leftX * alongY), ref from, ref to);
        }
    }

    /// <summary>Keeps where value + slope t is not below 0.</summary>
    public static void Keep(double value, double slope, ref double from, ref double to)
    {
        if (slope > 0.0)
        {
            from = Math.Max(from, -value / slope);
        }
        else if (slope < 0.0)
        {
            to = Math.Min(to, -value / slope);
        }
        else if (value < 0.0)
        {
            to = double.NegativeInfinity;
        }
    }

    private static void AddCrossing(ref BreakList breaks, double x, double y, double at)
    {
        if (x != 0.0 && at / x > 0.0)
        {
            breaks.Add(y / x * at);
        }
    }
}

/// <summary>Places at which an integrand bends, in a stretch; kept apart and in order.</summary>
internal ref struct BreakList
{
    private readonly Span<double> places;
    private readonly double from;
    private readonly double to;
    private readonly double apart;
    private int count;

    public BreakList(Span<double> room, double from, double to)
    {
        places = room;
        (this.from, this.to) = (from, to);
        apart = 1e-7 * (to - from);
        places[0] = from;
        places[1] = to;
        count = 2;
    }

    /// <summary>The places, from start to end.</summary>
    public readonly ReadOnlySpan<double> Places => places[..count];

    /// <summary>Adds a place; outside the stretch, next to another or without room nothing happens.</summary>
    public void Add(double place)
    {
        if (!(place > from + apart) || !(place < to - apart) || count == places.Length)
        {
            return;
        }

        int at = count - 1;
        while (places[at] > place)
        {
            at--;
        }

        if (place - places[at] < apart || places[at + 1] - place < apart)
        {
            return;
        }

        places[(at + 1)..count].CopyTo(places[(at + 2)..]);
        places[at + 1] = place;
        count++;
    }

    /// <summary>Adds places around a foot point at a distance, wider and wider apart.</summary>
    public void AddAround(double foot, double distance)
    {
        double reach = Math.Max(to - foot, foot - from);
        Add(foot);
        for (double step = Math.Max(distance, 1e-4 * (to - from)); step < reach; step *= 2.5)
        {
            Add(foot - step);
            Add(foot + step);
        }
    }
}
