using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Outline of a leaf.</summary>
internal enum LeafShape
{
    /// <summary>Long, of one width, with a point.</summary>
    Strap,

    /// <summary>Long, widest in the middle.</summary>
    Lance,

    /// <summary>An egg.</summary>
    Oval,

    /// <summary>A circle.</summary>
    Round,

    /// <summary>Widest near its stalk, with a point.</summary>
    Heart,

    /// <summary>A heart with lobes behind its stalk.</summary>
    Arrow,

    /// <summary>Narrow from foot to point.</summary>
    Blade,
}

/// <summary>A leaf before it is placed.</summary>
/// <param name="Shape">Its outline.</param>
/// <param name="Length">Foot to point, m.</param>
/// <param name="Width">Where it is widest, m.</param>
internal readonly record struct LeafForm(LeafShape Shape, float Length, float Width)
{
    /// <summary>How far it bends down from foot to point, radians.</summary>
    public float Droop { get; init; } = 0.4f;

    /// <summary>How far its halves are raised, share of half the width.</summary>
    public float Fold { get; init; } = 0.25f;

    /// <summary>Its color.</summary>
    public Vector3 Color { get; init; } = Hue.Of("green");

    /// <summary>Color of a stripe along its middle; null without.</summary>
    public Vector3? Mark { get; init; }

    /// <summary>Width of that stripe, share of the leaf.</summary>
    public float MarkShare { get; init; } = 0.35f;

    /// <summary>Pieces along its length.</summary>
    public int Pieces { get; init; } = 5;

    /// <summary>Strength of its outline.</summary>
    public float Edge { get; init; } = 0.8f;

    /// <summary>How much lighter its point is than its foot.</summary>
    public float Tip { get; init; } = 0.16f;
}

/// <summary>Draws leaves, stalks and fronds.</summary>
internal static class Leaves
{
    /// <summary>A leaf from its foot.</summary>
    /// <param name="mesh">Takes it.</param>
    /// <param name="foot">Where it begins.</param>
    /// <param name="way">Where it grows to.</param>
    /// <param name="leaf">The leaf.</param>
    /// <param name="up">Its upper side; straight up where left out.</param>
    public static void Add(Mesh mesh, Vector3 foot, Vector3 way, LeafForm leaf, Vector3? up = null)
    {
        var spine = Spine(foot, way, leaf.Length, leaf.Droop, leaf.Pieces);
        var above = up ?? Vector3.UnitZ;
        var n = leaf.Pieces;
        var left = new Vector3[n + 1];
        var right = new Vector3[n + 1];
        for (var i = 0; i <= n; i++)
        {
            var t = i / (float)n;
            var along = Vector3.Normalize(spine[Math.Min(n, i + 1)] - spine[Math.Max(0, i - 1)]);
            var side = Side(along, above);
            var half = 0.5f * leaf.Width * Width(leaf.Shape, t);
            var raised = Vector3.Cross(side, along) * (half * leaf.Fold);
            var back = leaf.Shape == LeafShape.Arrow && i == 0 ? along * (-0.28f * leaf.Length) : default;
            left[i] = spine[i] - (side * half) + raised + back;
            right[i] = spine[i] + (side * half) + raised + back;
        }

        Halves(mesh, (spine, left, right), leaf);
        var ink = Hue.Times(leaf.Color, 0.3f);
        mesh.Outline(left, false, ink, leaf.Edge);
        mesh.Outline(right, false, ink, leaf.Edge);
        mesh.Outline(spine, false, ink, leaf.Edge * 0.4f);
    }

    /// <summary>A stalk as a flat ribbon, with two edges.</summary>
    public static void Stalk(Mesh mesh, ReadOnlySpan<Vector3> points, float width, Vector3 color)
    {
        for (var i = 1; i < points.Length; i++)
        {
            var along = Vector3.Normalize(points[i] - points[i - 1] + new Vector3(0, 0, 1e-6f));
            var side = Side(along, new(0.3f, -1, 0.2f)) * (width / 2);
            mesh.Quad(points[i - 1] - side, points[i - 1] + side, points[i] + side, points[i] - side, color);
            mesh.Edge(points[i - 1] - side, points[i] - side, Hue.Times(color, 0.4f), 0.5f);
        }
    }

    /// <summary>Points of a line that begins one way and bends down.</summary>
    public static Vector3[] Spine(Vector3 foot, Vector3 way, float length, float droop, int pieces)
    {
        var points = new Vector3[pieces + 1];
        points[0] = foot;
        var along = Vector3.Normalize(way);
        var flat = new Vector3(along.X, along.Y, 0);
        flat = flat.LengthSquared() < 1e-6f ? Vector3.UnitX : Vector3.Normalize(flat);
        var rise = MathF.Atan2(along.Z, MathF.Sqrt((along.X * along.X) + (along.Y * along.Y)));
        for (var i = 1; i <= pieces; i++)
        {
            var angle = rise - (droop * (i - 0.5f) / pieces);
            var (sin, cos) = MathF.SinCos(angle);
            points[i] = points[i - 1] + (((flat * cos) + new Vector3(0, 0, sin)) * (length / pieces));
        }

        return points;
    }

    /// <summary>A frond with leaflets on both sides.</summary>
    /// <param name="mesh">Takes it.</param>
    /// <param name="spine">Its rib.</param>
    /// <param name="leaflet">A leaflet in the middle of it; those near foot and point are smaller.</param>
    /// <param name="pairs">How many pairs.</param>
    /// <param name="bare">Share of the rib without leaflets at its foot.</param>
    public static void Frond(Mesh mesh, Vector3[] spine, LeafForm leaflet, int pairs, float bare)
    {
        var ink = Hue.Times(leaflet.Color, 0.38f);
        Stalk(mesh, spine, leaflet.Length * 0.05f, Hue.Times(leaflet.Color, 0.7f));
        for (var k = 0; k < pairs; k++)
        {
            var t = bare + ((1 - bare) * (k + 0.5f) / pairs);
            var (at, along) = On(spine, t);
            var side = Side(along, Vector3.UnitZ);
            var far = leaflet.Length * MathF.Pow(MathF.Sin(MathF.PI * (0.12f + (0.84f * t))), 0.7f);
            var color = Hue.Times(leaflet.Color, 0.88f + (0.2f * t));
            foreach (var way in new[] { -1f, 1f })
            {
                var out_ = Vector3.Normalize(
                    (side * way) + (along * 0.35f) - (Vector3.UnitZ * leaflet.Droop)
                );
                var tip = at + (out_ * far);
                var half = along * (leaflet.Width * 0.5f * (0.5f + (0.5f * far / leaflet.Length)));
                var middle = at + (out_ * (far * (leaflet.Shape == LeafShape.Round ? 0.62f : 0.4f)));
                var wide = leaflet.Shape == LeafShape.Round ? 1.5f : 1f;
                mesh.Quad(
                    at,
                    middle - (half * wide),
                    tip,
                    middle + (half * wide),
                    Hue.Times(color, way < 0 ? 1 : 0.93f)
                );
                if (leaflet.Edge > 0)
                {
                    mesh.Edge(at, middle + (half * wide), ink, leaflet.Edge);
                    mesh.Edge(middle + (half * wide), tip, ink, leaflet.Edge);
                    mesh.Edge(tip, middle - (half * wide), ink, leaflet.Edge);
                }
            }
        }
    }

    /// <summary>A place on a line and its direction there.</summary>
    public static (Vector3 At, Vector3 Along) On(ReadOnlySpan<Vector3> points, float share)
    {
        var at = Math.Clamp(share, 0, 1) * (points.Length - 1);
        var i = Math.Min((int)at, points.Length - 2);
        return (
            Vector3.Lerp(points[i], points[i + 1], at - i),
            Vector3.Normalize(points[i + 1] - points[i] + new Vector3(0, 0, 1e-7f))
        );
    }

    /// <summary>To the right of a direction, level where it can be.</summary>
    public static Vector3 Side(Vector3 along, Vector3 up)
    {
        var side = Vector3.Cross(along, up);
        return side.LengthSquared() < 1e-8f
            ? Vector3.Normalize(Vector3.Cross(along, new(0.31f, 0.95f, 0)))
            : Vector3.Normalize(side);
    }

    private static void Halves(
        Mesh mesh,
        (Vector3[] Spine, Vector3[] Left, Vector3[] Right) at,
        in LeafForm leaf
    )
    {
        var k = leaf.Mark is null ? 0 : leaf.MarkShare;
        for (var half = 0; half < 2; half++)
        {
            var rim = half == 0 ? at.Left : at.Right;
            var plain = Hue.Times(leaf.Color, half == 0 ? 1.03f : 0.93f);
            Strip(mesh, at.Spine, rim, (k, 1), (plain, leaf.Tip));
            if (leaf.Mark is { } mark)
            {
                Strip(mesh, at.Spine, rim, (0, k), (Hue.Times(mark, half == 0 ? 1 : 0.95f), 0));
            }
        }
    }

    /// <summary>A part of one half between two shares of the way from the rib to the rim.</summary>
    private static void Strip(
        Mesh mesh,
        Vector3[] spine,
        Vector3[] rim,
        (float From, float To) part,
        (Vector3 Color, float Tip) tint
    )
    {
        var first = mesh.Points.Count;
        for (var i = 0; i < spine.Length; i++)
        {
            var color = Hue.Times(tint.Color, 1 - tint.Tip + (2 * tint.Tip * i / (spine.Length - 1)));
            mesh.Point(Vector3.Lerp(spine[i], rim[i], part.From), color);
            mesh.Point(Vector3.Lerp(spine[i], rim[i], part.To), color);
        }

        for (var i = 0; i + 1 < spine.Length; i++)
        {
            var a = first + (2 * i);
            mesh.Triangle(a, a + 1, a + 3);
            mesh.Triangle(a, a + 3, a + 2);
        }
    }

    /// <summary>Width at a share of the length, share of the widest.</summary>
    private static float Width(LeafShape shape, float t) =>
        shape switch
        {
            LeafShape.Strap => Even(t) * (t > 0.7f ? 1 - (0.97f * (t - 0.7f) / 0.3f) : 1),
            LeafShape.Lance => Bulge(t, 1, 0.9f),
            LeafShape.Oval => Bulge(t, 0.85f, 0.65f),
            LeafShape.Round => MathF.Sqrt(MathF.Max(0, 1 - (((2 * t) - 1) * ((2 * t) - 1)))),
            LeafShape.Heart => t < 0.02f ? 0.55f : Bulge((t * 0.94f) + 0.06f, 0.52f, 0.8f),
            LeafShape.Arrow => t < 0.02f ? 0.62f : Bulge((t * 0.9f) + 0.1f, 0.5f, 0.95f),
            _ => MathF.Pow(1 - t, 0.6f) * (0.75f + (0.25f * MathF.Min(1, t * 6))),
        };

    private static float Even(float t) => 0.72f + (0.28f * MathF.Sin(MathF.PI * MathF.Min(t * 1.1f, 1)));

    private static float Bulge(float t, float early, float full) =>
        MathF.Pow(MathF.Max(0, MathF.Sin(MathF.PI * MathF.Pow(MathF.Min(t, 1), early))), full);
}
