using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>
/// A rectangle cut to patches in rows and columns. The factors of all its patches at a receiver share what
/// belongs
/// to their corners: each arc tangent is taken once, not for the four patches around it.
/// </summary>
internal sealed class PatchFace
{
    private const double Near = 1e-9;
    private readonly Patch whole;
    private readonly double[] us;
    private readonly double[] vs;

    /// <summary>A face cut to about even pieces no longer than a length.</summary>
    /// <param name="whole">The face.</param>
    /// <param name="longestMeters">The length, m.</param>
    public PatchFace(Patch whole, double longestMeters)
    {
        this.whole = whole;
        var size = whole.High - whole.Low;
        us = Lines(whole.Low.Along(U), size.Along(U), longestMeters);
        vs = Lines(whole.Low.Along(V), size.Along(V), longestMeters);
        Patches =
        [
            .. from u in Enumerable.Range(0, us.Length - 1)
            from v in Enumerable.Range(0, vs.Length - 1)
            select whole with
            {
                Low = Corner(us[u], vs[v], whole.Low),
                High = Corner(us[u + 1], vs[v + 1], whole.High),
            },
        ];
    }

    /// <summary>Its patches, column by column.</summary>
    public ImmutableArray<Patch> Patches { get; }

    /// <summary>Numbers that <see cref="Factors"/> needs to work with.</summary>
    public int ScratchLength => (us.Length * vs.Length) + us.Length + vs.Length;

    private int U => whole.Axis == 0 ? 1 : 0;

    private int V => whole.Axis == 2 ? 1 : 2;

    /// <summary>Configuration factors of its patches at a receiver, nothing between; 0 from behind.</summary>
    /// <param name="receiver">The receiver.</param>
    /// <param name="into">Takes one factor for each patch.</param>
    /// <param name="scratch">At least <see cref="ScratchLength"/> numbers.</param>
    public void Factors(Receiver receiver, Span<double> into, Span<double> scratch)
    {
        double distance = -(whole.Low.Along(whole.Axis) - receiver.At.Along(whole.Axis)) * whole.Sign;
        if (distance <= Near)
        {
            into.Clear();
            return;
        }

        double along = receiver.Normal.Along(whole.Axis);
        if (Math.Abs(along) > 1.0 - Near)
        {
            if (along * whole.Sign < 0.0)
            {
                Parallel(receiver.At, distance, into, scratch);
            }
            else
            {
                into.Clear();
            }
        }
        else if (Math.Abs(receiver.Normal.Along(U)) > 1.0 - Near)
        {
            bool isForward = receiver.Normal.Along(U) > 0.0;
            Upright(
                (us, receiver.At.Along(U), isForward),
                (vs, receiver.At.Along(V)),
                distance,
                into,
                scratch
            );
        }
        else if (Math.Abs(receiver.Normal.Along(V)) > 1.0 - Near)
        {
            bool isForward = receiver.Normal.Along(V) > 0.0;
            Upright(
                (vs, receiver.At.Along(V), isForward),
                (us, receiver.At.Along(U)),
                distance,
                into,
                scratch
            );
        }
        else
        {
            for (int i = 0; i < Patches.Length; i++)
            {
                into[i] = Patches[i].Factor(receiver);
            }
        }
    }

    private void Parallel(Point3 at, double h, Span<double> into, Span<double> scratch)
    {
        int rows = vs.Length;
        var corners = scratch[..(us.Length * rows)];
        var bs = scratch.Slice(corners.Length, rows);
        for (int v = 0; v < rows; v++)
        {
            bs[v] = vs[v] - at.Along(V);
        }

        for (int u = 0; u < us.Length; u++)
        {
            double a = us[u] - at.Along(U);
            for (int v = 0; v < rows; v++)
            {
                corners[(u * rows) + v] = RectangleFactor.ParallelCorner(a, bs[v], h);
            }
        }

        for (int u = 0; u < us.Length - 1; u++)
        {
            var low = corners.Slice(u * rows, rows);
            var high = corners.Slice((u + 1) * rows, rows);
            for (int v = 0; v < rows - 1; v++)
            {
                into[(u * (rows - 1)) + v] = high[v + 1] - low[v + 1] - high[v] + low[v];
            }
        }
    }

    /// <summary>
    /// At right angles: c along the receiver's normal, what lies behind it cut off, and b along the other
    /// direction; see <see cref="RectangleFactor.Perpendicular"/>.
    /// </summary>
    private void Upright(
        (double[] Lines, double At, bool IsForward) c,
        (double[] Lines, double At) b,
        double d,
        Span<double> into,
        Span<double> scratch
    )
    {
        bool isColumn = ReferenceEquals(c.Lines, us);
        var (along, across) = (c.Lines.Length, b.Lines.Length);
        var arcs = scratch[..(along * across)];
        var roots = scratch.Slice(arcs.Length, along);
        for (int i = 0; i < along; i++)
        {
            double line = c.IsForward ? c.Lines[i] - c.At : -(c.Lines[i] - c.At);
            double before = Math.Max(line, 0.0);
            double root = Math.Sqrt((before * before) + (d * d));
            roots[i] = line > 0.0 ? root : -root;
            for (int k = 0; k < across; k++)
            {
                arcs[(i * across) + k] = Math.Atan((b.Lines[k] - b.At) / root);
            }
        }

        for (int i = 0; i < along - 1; i++)
        {
            var (near, far) = c.IsForward ? (i, i + 1) : (i + 1, i);
            for (int k = 0; k < across - 1; k++)
            {
                int patch = isColumn ? (i * (across - 1)) + k : (k * (along - 1)) + i;
                into[patch] =
                    roots[far] <= 0.0
                        ? 0.0
                        : d
                            * (
                                Rise(arcs, (near * across) + k, Math.Abs(roots[near]))
                                - Rise(arcs, (far * across) + k, roots[far])
                            )
                            / (2.0 * Math.PI);
            }
        }
    }

    private static double Rise(ReadOnlySpan<double> arcs, int from, double root) =>
        (arcs[from + 1] - arcs[from]) / root;

    private static double[] Lines(double low, double size, double longest)
    {
        int pieces = Math.Max(1, (int)Math.Ceiling((size / longest) - 1e-9));
        return [.. Enumerable.Range(0, pieces + 1).Select(i => low + (size * i / pieces))];
    }

    private Point3 Corner(double u, double v, Point3 plane) =>
        whole.Axis switch
        {
            0 => new Point3(plane.X, u, v),
            1 => new Point3(u, plane.Y, v),
            _ => new Point3(u, v, plane.Z),
        };
}
