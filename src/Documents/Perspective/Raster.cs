using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>A corner as it is seen: place in the picture, nearness, color.</summary>
internal readonly record struct Seen(float X, float Y, float Nearness, uint Color);

/// <summary>
/// Rows of a picture: the nearest color of each point counts. Triangles cover the points whose middle lies in
/// them; a film mixes with what lies behind it.
/// </summary>
internal sealed class Raster
{
    private readonly float[] near;

    /// <summary>Rows of one color.</summary>
    /// <param name="width">Points in a row.</param>
    /// <param name="first">First row.</param>
    /// <param name="rows">Number of rows.</param>
    /// <param name="paper">Color of a row, 0xAABBGGRR.</param>
    public Raster(int width, int first, int rows, Func<int, uint> paper)
    {
        (Width, First, Rows) = (width, first, rows);
        near = new float[width * rows];
        Colors = new uint[width * rows];
        for (var y = 0; y < rows; y++)
        {
            Colors.AsSpan(y * width, width).Fill(paper(first + y));
        }
    }

    /// <summary>Points in a row.</summary>
    public int Width { get; }

    /// <summary>First row.</summary>
    public int First { get; }

    /// <summary>Number of rows.</summary>
    public int Rows { get; }

    /// <summary>Colors, row by row.</summary>
    public uint[] Colors { get; }

    /// <summary>A triangle that hides what is behind it.</summary>
    public void Solid(in Seen a, in Seen b, in Seen c) => Fill(a, b, c, 1);

    /// <summary>A triangle that lets through what is behind it.</summary>
    /// <param name="a">A corner.</param>
    /// <param name="b">A corner.</param>
    /// <param name="c">A corner.</param>
    /// <param name="lift">How much nearer it counts than it is: 1 for not at all.</param>
    public void Film(in Seen a, in Seen b, in Seen c, float lift = 1) => Fill(a, b, c, -lift);

    /// <summary>A thin line.</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">The other.</param>
    /// <param name="width">Its width in points.</param>
    /// <param name="lift">How much nearer it counts than it is.</param>
    public void Line(in Seen a, in Seen b, float width, float lift)
    {
        var along = new Vector2(b.X - a.X, b.Y - a.Y);
        var length = along.Length();
        if (a.Nearness <= 0 || b.Nearness <= 0 || length < 1e-3f)
        {
            return;
        }

        var half = width / 2;
        var side = new Vector2(-along.Y, along.X) * (half / length);
        var end = along * (0.4f * half / length);
        var (p, q, r, s) = (
            a with
            {
                X = a.X + side.X - end.X,
                Y = a.Y + side.Y - end.Y,
            },
            b with
            {
                X = b.X + side.X + end.X,
                Y = b.Y + side.Y + end.Y,
            },
            b with
            {
                X = b.X - side.X + end.X,
                Y = b.Y - side.Y + end.Y,
            },
            a with
            {
                X = a.X - side.X - end.X,
                Y = a.Y - side.Y - end.Y,
            }
        );
        Film(p, q, r, lift);
        Film(p, r, s, lift);
    }

    /// <summary>Twice the area of a triangle: positive where it turns left as it is seen.</summary>
    public static float Turn(in Seen a, in Seen b, in Seen c) =>
        ((b.X - a.X) * (a.Y - c.Y)) - ((a.Y - b.Y) * (c.X - a.X));

    private void Fill(in Seen a, in Seen b, in Seen c, float mode)
    {
        var area = ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
        if (MathF.Abs(area) < 1e-6f || a.Nearness <= 0 || b.Nearness <= 0 || c.Nearness <= 0)
        {
            return;
        }

        var top = Math.Max(First, (int)MathF.Ceiling(MathF.Min(a.Y, MathF.Min(b.Y, c.Y)) - 0.5f));
        var bottom = Math.Min(First + Rows - 1, (int)MathF.Floor(MathF.Max(a.Y, MathF.Max(b.Y, c.Y)) - 0.5f));
        var left = Math.Max(0, (int)MathF.Ceiling(MathF.Min(a.X, MathF.Min(b.X, c.X)) - 0.5f));
        var right = Math.Min(Width - 1, (int)MathF.Floor(MathF.Max(a.X, MathF.Max(b.X, c.X)) - 0.5f));
        if (top > bottom || left > right)
        {
            return;
        }

        var one = 1 / area;
        var isPlain = a.Color == b.Color && b.Color == c.Color;
        var (stepB, stepC) = ((c.Y - a.Y) * one, -(b.Y - a.Y) * one);
        for (var y = top; y <= bottom; y++)
        {
            var (px, py) = (left + 0.5f - a.X, y + 0.5f - a.Y);
            var wb = ((px * (c.Y - a.Y)) - (py * (c.X - a.X))) * one;
            var wc = ((py * (b.X - a.X)) - (px * (b.Y - a.Y))) * one;
            var row = (y - First) * Width;
            for (var x = left; x <= right; x++, wb += stepB, wc += stepC)
            {
                if (wb < 0 || wc < 0 || wb + wc > 1)
                {
                    continue;
                }

                var nearness =
                    a.Nearness + (wb * (b.Nearness - a.Nearness)) + (wc * (c.Nearness - a.Nearness));
                var at = row + x;
                if (mode > 0)
                {
                    if (nearness > near[at])
                    {
                        near[at] = nearness;
                        Colors[at] = isPlain ? a.Color : Mixed(a.Color, b.Color, c.Color, wb, wc);
                    }
                }
                else if (nearness * -mode >= near[at])
                {
                    Colors[at] = Over(
                        isPlain ? a.Color : Mixed(a.Color, b.Color, c.Color, wb, wc),
                        Colors[at]
                    );
                }
            }
        }
    }

    private static uint Mixed(uint a, uint b, uint c, float wb, float wc)
    {
        uint Part(int shift)
        {
            var (pa, pb, pc) = (
                (int)((a >> shift) & 255),
                (int)((b >> shift) & 255),
                (int)((c >> shift) & 255)
            );
            return (uint)Math.Clamp((int)(pa + (wb * (pb - pa)) + (wc * (pc - pa)) + 0.5f), 0, 255) << shift;
        }

        return Part(0) | Part(8) | Part(16) | Part(24);
    }

    private static uint Over(uint color, uint behind)
    {
        var alpha = color >> 24;
        uint Part(int shift)
        {
            var (front, back) = ((color >> shift) & 255, (behind >> shift) & 255);
            return ((((front * alpha) + (back * (255 - alpha)) + 127) / 255) & 255) << shift;
        }

        return Part(0) | Part(8) | Part(16) | 0xFF000000;
    }
}
