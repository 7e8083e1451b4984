using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Light;

/// <summary>A line of the opening: its seen stretches, cut wherever something bends.</summary>
internal ref partial struct LampView
{
    /// <summary>
    /// Integral along middle + t × half, t within −1 to 1, per length; level lines only.
    /// </summary>
    private readonly double Stretch(double from, double to, Point3 half, Point3 middle, int order)
    {
        var n = receiver.Normal;
        ShadowOutline.Keep(
            (n.X * middle.X) + (n.Y * middle.Y) + (n.Z * rise),
            (n.X * half.X) + (n.Y * half.Y),
            ref from,
            ref to
        );
        if (!(from < to))
        {
            return 0.0;
        }

        double length = half.Length;
        var breaks = new BreakList(stackalloc double[256], from, to);
        double foot = -middle.Dot(half) / (length * length);
        double distance = (middle + (foot * half)).Length / length;
        breaks.AddAround(foot, distance);
        AddLidBreaks(ref breaks, half, middle);
        AddLeafBreaks(ref breaks, half, middle);
        Span<double> hidden = stackalloc double[2 * shadowCount];
        int hiddenCount = 0;
        for (int i = 0; i < shadowCount; i++)
        {
            var (a, b) = (from, to);
            shadows[i].Clip(middle.X, middle.Y, half.X, half.Y, ref a, ref b);
            if (a < b)
            {
                breaks.Add(a);
                breaks.Add(b);
                hidden[hiddenCount++] = a;
                hidden[hiddenCount++] = b;
            }
        }

        var rule = GaussLegendre.Of(order);
        var places = breaks.Places;
        double sum = 0.0;
        for (int k = 0; k + 1 < places.Length; k++)
        {
            double span = places[k + 1] - places[k];
            if (IsIn(hidden[..hiddenCount], 0.5 * (places[k] + places[k + 1])))
            {
                continue;
            }

            for (int i = 0; i < order; i++)
            {
                double t = places[k] + (rule.Points[i] * span);
                var way = middle + (t * half);
                sum += rule.Weights[i] * span * length * Ray(new Point3(way.X, way.Y, rise));
            }
        }

        return sum;
    }

    private readonly void AddLidBreaks(ref BreakList breaks, Point3 half, Point3 middle)
    {
        if (!meetsLid)
        {
            return;
        }

        foreach (var part in scene.Lid)
        {
            if (half.X != 0.0)
            {
                breaks.Add((((part.Left - receiver.At.X) / lidShare) - middle.X) / half.X);
                breaks.Add((((part.Right - receiver.At.X) / lidShare) - middle.X) / half.X);
            }

            if (half.Y != 0.0)
            {
                breaks.Add((((part.Front - receiver.At.Y) / lidShare) - middle.Y) / half.Y);
                breaks.Add((((part.Back - receiver.At.Y) / lidShare) - middle.Y) / half.Y);
            }
        }
    }

    private readonly void AddLeafBreaks(ref BreakList breaks, Point3 half, Point3 middle)
    {
        foreach (var canopy in leaves.AsSpan(0, leafCount))
        {
            var (a, b) = (breaks.Places[0], breaks.Places[^1]);
            ShadowOutline
                .Of(canopy.Extent, receiver.At, rise)
                ?.Clip(middle.X, middle.Y, half.X, half.Y, ref a, ref b);
            if (a < b)
            {
                breaks.Add(a);
                breaks.Add(b);
            }
        }
    }

    private static bool IsIn(ReadOnlySpan<double> pairs, double at)
    {
        for (int i = 0; i < pairs.Length; i += 2)
        {
            if (at > pairs[i] && at < pairs[i + 1])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Weight of a stretch, three Gauss points.</summary>
    private readonly double Piece(Point3 start, Point3 along, double from, double to)
    {
        const double outer = 0.1127016653792583;
        double span = to - from;
        return span
            * (
                (4.0 / 9.0 * Weight(start, along, from + (0.5 * span)))
                + (
                    5.0
                    / 18.0
                    * (
                        Weight(start, along, from + (outer * span))
                        + Weight(start, along, to - (outer * span))
                    )
                )
            );
    }

    private readonly double Weight(Point3 start, Point3 along, double t)
    {
        double x = start.X + (t * along.X);
        double y = start.Y + (t * along.Y);
        if (path.Order > 0 || leafCount > 0)
        {
            return Ray(new Point3(x, y, rise));
        }

        double square = (x * x) + (y * y) + (rise * rise);
        return 1.0 / (square * square);
    }
}
