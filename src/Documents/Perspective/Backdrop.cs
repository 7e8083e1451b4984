using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>Cork, fiber or foam on the walls.</summary>
internal sealed class Backdrop(Scene scene)
{
    private const float Off = 0.0005f;
    private readonly Terrain terrain = scene.Terrain;

    /// <summary>Draws all covered walls.</summary>
    public void Draw(Mesh mesh)
    {
        if (scene.Design.Background is not { } background)
        {
            return;
        }

        var key = background.Material;
        var foot = (float)(scene.Numbers.Box.BackgroundFrom?.Si ?? 0);
        foreach (var side in Terrain.Covered(scene.Design))
        {
            var (low, high) = Slab(side, foot);
            var body = new Mesh();
            var color = Tint(key);
            body.Block(low, high, color, 0.45f);
            var face = Face(side, low, high);
            var dice = new Dice($"{key} {side}");
            if (key.Contains("foam", StringComparison.Ordinal))
            {
                Relief(body, face, color, dice);
            }
            else if (key.Contains("cork", StringComparison.Ordinal))
            {
                Plates(body, face, color, dice);
            }
            else
            {
                Fibers(body, face, color, dice);
            }

            mesh.Take(body);
        }
    }

    private static Vector3 Tint(string key) =>
        key.Contains("cork", StringComparison.Ordinal) ? Hue.Of(0x8C6C4D)
        : key.Contains("fern", StringComparison.Ordinal) ? Hue.Of(0x68533F)
        : key.Contains("coir", StringComparison.Ordinal) ? Hue.Of(0x8E6E4A)
        : Hue.Of(0x8A8274);

    private (Vector3 Low, Vector3 High) Slab(Side side, float foot)
    {
        var (l, d, h) = ((float)terrain.Length, (float)terrain.DepthOfBox, (float)terrain.Height - 0.001f);
        return side switch
        {
            Side.Left => (new(0, 0, foot), new((float)terrain.Left, d, h)),
            Side.Right => (new((float)terrain.Right, 0, foot), new(l, d, h)),
            Side.Front => (new(0, 0, foot), new(l, (float)terrain.Front, h)),
            _ => (new(0, (float)terrain.Back, foot), new(l, d, h)),
        };
    }

    /// <summary>
    /// The face toward the box: a corner, its way across, its way up, and the way into the box.
    /// </summary>
    private static (Vector3 Corner, Vector3 Across, Vector3 Up, Vector3 In) Face(
        Side side,
        Vector3 low,
        Vector3 high
    )
    {
        var up = new Vector3(0, 0, high.Z - low.Z);
        return side switch
        {
            Side.Left => (new(high.X, low.Y, low.Z), new(0, high.Y - low.Y, 0), up, Vector3.UnitX),
            Side.Right => (low, new(0, high.Y - low.Y, 0), up, -Vector3.UnitX),
            Side.Front => (new(low.X, high.Y, low.Z), new(high.X - low.X, 0, 0), up, Vector3.UnitY),
            _ => (low, new(high.X - low.X, 0, 0), up, -Vector3.UnitY),
        };
    }

    /// <summary>Plates of bark with cracks between.</summary>
    private static void Plates(
        Mesh mesh,
        (Vector3 Corner, Vector3 Across, Vector3 Up, Vector3 In) f,
        Vector3 color,
        Dice dice
    )
    {
        var (w, h) = (f.Across.Length(), f.Up.Length());
        var (nx, ny) = (Math.Max(3, (int)(w / 0.05f)), Math.Max(3, (int)(h / 0.07f)));
        var knots = Knots(nx, ny, dice, 0.34f);
        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                Vector3 P(int a, int b) =>
                    f.Corner + (f.Across * knots[a, b].X) + (f.Up * knots[a, b].Y) + (f.In * Off);
                var tint = Hue.Times(color, dice.Between(0.84f, 1.16f));
                var (p, q, r, s) = (P(i, j), P(i + 1, j), P(i + 1, j + 1), P(i, j + 1));
                mesh.Quad(p, q, r, s, tint);
                mesh.Edge(p, q, Hue.Times(color, 0.45f), dice.Between(0.2f, 0.55f));
                mesh.Edge(p, s, Hue.Times(color, 0.45f), dice.Between(0.25f, 0.6f));
                for (var k = 0; k < 3; k++)
                {
                    var (u, v) = (dice.Next(), dice.Next());
                    var at = Vector3.Lerp(Vector3.Lerp(p, q, u), Vector3.Lerp(s, r, u), v) + (f.In * Off);
                    mesh.Edge(
                        at,
                        at + (Vector3.Normalize(f.Up) * dice.Between(0.004f, 0.014f)),
                        Hue.Times(color, 0.5f),
                        0.45f
                    );
                }
            }
        }
    }

    /// <summary>Upright fibers.</summary>
    private static void Fibers(
        Mesh mesh,
        (Vector3 Corner, Vector3 Across, Vector3 Up, Vector3 In) f,
        Vector3 color,
        Dice dice
    )
    {
        var (w, h) = (f.Across.Length(), f.Up.Length());
        var (nx, ny) = (Math.Max(3, (int)(w / 0.04f)), Math.Max(3, (int)(h / 0.11f)));
        var knots = Knots(nx, ny, dice, 0.3f);
        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                Vector3 P(int a, int b) =>
                    f.Corner + (f.Across * knots[a, b].X) + (f.Up * knots[a, b].Y) + (f.In * Off);
                mesh.Quad(
                    P(i, j),
                    P(i + 1, j),
                    P(i + 1, j + 1),
                    P(i, j + 1),
                    Hue.Times(color, dice.Between(0.86f, 1.16f))
                );
            }
        }

        var count = (int)(w * h * 2600);
        for (var k = 0; k < count; k++)
        {
            var at =
                f.Corner
                + (f.Across * dice.Between(0.01f, 0.99f))
                + (f.Up * dice.Between(0.01f, 0.9f))
                + (f.In * (2 * Off));
            var way =
                (Vector3.Normalize(f.Up) * dice.Between(0.012f, 0.04f))
                + (Vector3.Normalize(f.Across) * dice.Between(-0.004f, 0.004f));
            var isLight = dice.Next() < 0.35f;
            mesh.Edge(at, at + way, Hue.Times(color, isLight ? 1.5f : 0.5f), 0.4f);
        }
    }

    /// <summary>Carved foam: an uneven face about its mean thickness.</summary>
    private static void Relief(
        Mesh mesh,
        (Vector3 Corner, Vector3 Across, Vector3 Up, Vector3 In) f,
        Vector3 color,
        Dice dice
    )
    {
        var (w, h) = (f.Across.Length(), f.Up.Length());
        var (nx, ny) = (Math.Max(4, (int)(w / 0.045f)), Math.Max(4, (int)(h / 0.045f)));
        var knots = Knots(nx, ny, dice, 0.36f);
        var bumps = new float[nx + 1, ny + 1];
        foreach (
            ref var bump in System.Runtime.InteropServices.MemoryMarshal.CreateSpan(
                ref bumps[0, 0],
                bumps.Length
            )
        )
        {
            bump = dice.Between(0.0006f, 0.011f);
        }

        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                Vector3 P(int a, int b) =>
                    f.Corner + (f.Across * knots[a, b].X) + (f.Up * knots[a, b].Y) + (f.In * bumps[a, b]);
                var (p, q, r, s) = (P(i, j), P(i + 1, j), P(i + 1, j + 1), P(i, j + 1));
                var one = Hue.Times(color, dice.Between(0.78f, 1.0f));
                var first = mesh.Point(p, one);
                mesh.Point(q, one);
                mesh.Point(r, one);
                mesh.Triangle(first, first + 1, first + 2);
                var two = Hue.Times(color, dice.Between(0.95f, 1.2f));
                first = mesh.Point(p, two);
                mesh.Point(r, two);
                mesh.Point(s, two);
                mesh.Triangle(first, first + 1, first + 2);
                mesh.Edge(p, r, Hue.Times(color, 0.5f), 0.22f);
                mesh.Edge(p, s, Hue.Times(color, 0.5f), 0.35f);
            }
        }
    }

    /// <summary>Crossings of an uneven net over a face, shares of its width and height.</summary>
    private static Vector2[,] Knots(int nx, int ny, Dice dice, float loose)
    {
        var knots = new Vector2[nx + 1, ny + 1];
        for (var j = 0; j <= ny; j++)
        {
            for (var i = 0; i <= nx; i++)
            {
                var dx = i == 0 || i == nx ? 0 : dice.Between(-loose, loose);
                var dy = j == 0 || j == ny ? 0 : dice.Between(-loose, loose);
                knots[i, j] = new((i + dx) / nx, (j + dy) / ny);
            }
        }

        return knots;
    }
}
