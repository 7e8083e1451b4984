using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// Triangles with a color at each corner, thin ink edges, and for round bodies a hull: the body turned inside
/// out and a little larger, whose far side shows as an ink line around it.
/// </summary>
/// <param name="hasSides">
/// True for bodies, whose side away from the light is darker; false for leaves and sheets.
/// </param>
internal sealed class Mesh(bool hasSides = false)
{
    private const float HullMeters = 0.0008f;
    private static readonly Vector3 Key = Vector3.Normalize(new(-0.38f, -0.46f, 0.8f));

    /// <summary>Corners: x along the front, y from front to back, z up, m inside the box.</summary>
    public List<Vector3> Points { get; } = [];

    /// <summary>Color of each.</summary>
    public List<Vector3> Colors { get; } = [];

    /// <summary>How much of each shows, for films; 1 for bodies.</summary>
    public List<float> Alphas { get; } = [];

    /// <summary>Three corners for each triangle.</summary>
    public List<int> Triangles { get; } = [];

    /// <summary>Two ends for each edge.</summary>
    public List<Vector3> Edges { get; } = [];

    /// <summary>Color and strength of each end.</summary>
    public List<Vector4> Inks { get; } = [];

    /// <summary>Corners of hulls.</summary>
    public List<Vector3> HullPoints { get; } = [];

    /// <summary>Triangles of hulls, seen from inside.</summary>
    public List<int> HullTriangles { get; } = [];

    /// <summary>A corner; its number.</summary>
    public int Point(Vector3 at, Vector3 color, float alpha = 1)
    {
        Points.Add(at);
        Colors.Add(color);
        Alphas.Add(alpha);
        return Points.Count - 1;
    }

    /// <summary>A triangle of three corners.</summary>
    public void Triangle(int a, int b, int c)
    {
        Triangles.Add(a);
        Triangles.Add(b);
        Triangles.Add(c);
    }

    /// <summary>A flat face of four corners in a row around it.</summary>
    public void Quad(Vector3 a, Vector3 b, Vector3 c, Vector3 d, Vector3 color, float alpha = 1)
    {
        var first = Point(a, color, alpha);
        Point(b, color, alpha);
        Point(c, color, alpha);
        Point(d, color, alpha);
        Triangle(first, first + 1, first + 2);
        Triangle(first, first + 2, first + 3);
    }

    /// <summary>A flat face around a middle.</summary>
    public void Fan(Vector3 middle, ReadOnlySpan<Vector3> around, Vector3 color)
    {
        var first = Point(middle, color);
        foreach (var at in around)
        {
            Point(at, color);
        }

        for (var i = 0; i < around.Length; i++)
        {
            Triangle(first, first + 1 + i, first + 1 + ((i + 1) % around.Length));
        }
    }

    /// <summary>A thin line.</summary>
    public void Edge(Vector3 a, Vector3 b, Vector3 color, float strength)
    {
        Edges.Add(a);
        Edges.Add(b);
        Inks.Add(new(color, strength));
        Inks.Add(new(color, strength));
    }

    /// <summary>Lines along points.</summary>
    public void Outline(ReadOnlySpan<Vector3> points, bool isClosed, Vector3 color, float strength)
    {
        for (var i = 1; i < points.Length; i++)
        {
            Edge(points[i - 1], points[i], color, strength);
        }

        if (isClosed && points.Length > 2)
        {
            Edge(points[^1], points[0], color, strength);
        }
    }

    /// <summary>A block between two corners, with its edges.</summary>
    public void Block(Vector3 low, Vector3 high, Vector3 color, float strength = 0.6f, Vector3? ink = null)
    {
        var c = Corners(low, high);
        foreach (var (i, j, k, l) in Faces)
        {
            Quad(c[i], c[j], c[k], c[l], color);
        }

        if (strength > 0)
        {
            Frame(c, ink ?? Hue.Ink, strength);
        }
    }

    /// <summary>The twelve edges of a block.</summary>
    public void Frame(ReadOnlySpan<Vector3> c, Vector3 color, float strength)
    {
        for (var i = 0; i < 4; i++)
        {
            Edge(c[i], c[(i + 1) % 4], color, strength);
            Edge(c[4 + i], c[4 + ((i + 1) % 4)], color, strength);
            Edge(c[i], c[4 + i], color, strength);
        }
    }

    /// <summary>The eight corners of a block: the lower four around, then the upper.</summary>
    public static Vector3[] Corners(Vector3 low, Vector3 high) =>
        [
            low,
            new(high.X, low.Y, low.Z),
            new(high.X, high.Y, low.Z),
            new(low.X, high.Y, low.Z),
            new(low.X, low.Y, high.Z),
            new(high.X, low.Y, high.Z),
            high,
            new(low.X, high.Y, high.Z),
        ];

    /// <summary>Corners of the faces of a block, turning left seen from outside.</summary>
    private static readonly (int, int, int, int)[] Faces =
    [
        (0, 3, 2, 1),
        (4, 5, 6, 7),
        (0, 1, 5, 4),
        (1, 2, 6, 5),
        (2, 3, 7, 6),
        (3, 0, 4, 7),
    ];

    /// <summary>
    /// A round body from rings of points, all turning the same way; its ink line around it.
    /// </summary>
    /// <param name="rings">Rings of as many points each.</param>
    /// <param name="colors">The color of a place on a ring: ring and point.</param>
    /// <param name="isCapped">True where the ends are closed.</param>
    public void Skin(Vector3[][] rings, Func<int, int, Vector3> colors, bool isCapped = true)
    {
        if (Vector3.Dot(Facing(rings[0]), Middle(rings[1]) - Middle(rings[0])) < 0)
        {
            rings = [.. rings.Select(r => r.AsEnumerable().Reverse().ToArray())];
        }

        var sides = rings[0].Length;
        for (var r = 0; r + 1 < rings.Length; r++)
        {
            for (var s = 0; s < sides; s++)
            {
                var t = (s + 1) % sides;
                Quad(rings[r][s], rings[r][t], rings[r + 1][t], rings[r + 1][s], colors(r, s));
            }
        }

        var hull = rings.Select(Grown).ToArray();
        for (var r = 0; r + 1 < rings.Length; r++)
        {
            for (var s = 0; s < sides; s++)
            {
                var t = (s + 1) % sides;
                Hull(hull[r][s], hull[r + 1][t], hull[r][t]);
                Hull(hull[r][s], hull[r + 1][s], hull[r + 1][t]);
            }
        }

        if (isCapped)
        {
            Cap(rings[0], colors(0, 0), true);
            Cap(rings[^1], colors(rings.Length - 2, 0), false);
        }
    }

    private static Vector3[] Grown(Vector3[] ring)
    {
        var middle = Middle(ring);
        return
        [
            .. ring.Select(p =>
            {
                var out_ = p - middle;
                var far = out_.Length();
                return far < 1e-6f ? p : p + (out_ * (HullMeters / far));
            }),
        ];
    }

    /// <summary>Which way a ring turns, as a direction along its axis.</summary>
    private static Vector3 Facing(Vector3[] ring)
    {
        var middle = Middle(ring);
        var sum = Vector3.Zero;
        for (var s = 0; s < ring.Length; s++)
        {
            sum += Vector3.Cross(ring[s] - middle, ring[(s + 1) % ring.Length] - middle);
        }

        return sum;
    }

    private void Cap(Vector3[] ring, Vector3 color, bool isFirst)
    {
        ReadOnlySpan<Vector3> around = isFirst ? ring.AsEnumerable().Reverse().ToArray() : ring;
        Fan(Middle(ring), around, color);
    }

    private static Vector3 Middle(Vector3[] ring)
    {
        var sum = Vector3.Zero;
        foreach (var p in ring)
        {
            sum += p;
        }

        return sum / ring.Length;
    }

    private void Hull(Vector3 a, Vector3 b, Vector3 c)
    {
        HullTriangles.Add(HullPoints.Count);
        HullPoints.Add(a);
        HullTriangles.Add(HullPoints.Count);
        HullPoints.Add(b);
        HullTriangles.Add(HullPoints.Count);
        HullPoints.Add(c);
    }

    /// <summary>Takes another mesh in, each point at its place, shaded by how it faces the light.</summary>
    /// <param name="other">The other.</param>
    /// <param name="place">Where a point of it goes.</param>
    public void Take(Mesh other, Func<Vector3, Vector3>? place = null)
    {
        var first = Points.Count;
        foreach (var p in other.Points)
        {
            Points.Add(place is null ? p : place(p));
        }

        var shades = other.Shades(Points, first);
        for (var i = 0; i < other.Colors.Count; i++)
        {
            Colors.Add(Hue.Times(other.Colors[i], shades[i]));
            Alphas.Add(other.Alphas[i]);
        }

        Triangles.AddRange(other.Triangles.Select(t => t + first));
        Edges.AddRange(place is null ? other.Edges : other.Edges.Select(place));
        Inks.AddRange(other.Inks);
        var hull = HullPoints.Count;
        HullPoints.AddRange(place is null ? other.HullPoints : other.HullPoints.Select(place));
        HullTriangles.AddRange(other.HullTriangles.Select(t => t + hull));
    }

    /// <summary>How light each corner is by the way its faces lie, about 1.</summary>
    private float[] Shades(List<Vector3> placed, int first)
    {
        var normals = new Vector3[Points.Count];
        for (var i = 0; i < Triangles.Count; i += 3)
        {
            var (a, b, c) = (Triangles[i], Triangles[i + 1], Triangles[i + 2]);
            var normal = Vector3.Cross(
                placed[first + b] - placed[first + a],
                placed[first + c] - placed[first + a]
            );
            normals[a] += normal;
            normals[b] += normal;
            normals[c] += normal;
        }

        var shades = new float[normals.Length];
        for (var i = 0; i < shades.Length; i++)
        {
            var length = normals[i].Length();
            var facing = length < 1e-12f ? 1 : Vector3.Dot(normals[i] / length, Key);
            shades[i] = hasSides ? 0.8f + (0.24f * facing) : 0.84f + (0.2f * MathF.Abs(facing));
        }

        return shades;
    }
}
