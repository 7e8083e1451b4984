using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Perspective;

/// <summary>The layers of the floor as they show behind the glass, and open water.</summary>
internal sealed class FloorFigure(Scene scene)
{
    private const float Off = 0.0004f;
    private static readonly Vector3 DrySoil = Hue.Of(0xA58460);
    private static readonly Vector3 WetSoil = Hue.Of(0x54402F);
    private static readonly Vector3 Clay = Hue.Of(0xC68560);
    private static readonly Vector3 Water = Hue.Of(0x2B6E9E);
    private readonly Terrain terrain = scene.Terrain;
    private readonly FloorBlocks ground = new(scene);

    /// <summary>The drainage layer as a body.</summary>
    public void Drainage(Mesh mesh)
    {
        var body = new Mesh();
        foreach (var column in ground.Drainage())
        {
            Block(body, column, (_, _) => Hue.Times(GrainColor(), 0.62f));
        }

        mesh.Take(body);
    }

    /// <summary>Barrier, grains and chips: what no hour changes.</summary>
    public void Still(Mesh mesh)
    {
        var body = new Mesh();
        foreach (var (a, b, normal) in Faces())
        {
            Grains(body, a, b, normal);
            Chips(body, a, b, normal);
        }

        if (terrain.Drainage > 0 && !ground.HasGrains)
        {
            Raised(body);
        }

        Barrier(body);
        Basins(body);
        mesh.Take(body);
    }

    /// <summary>Soil, darker where it is wet.</summary>
    /// <param name="mesh">Takes it.</param>
    /// <param name="moment">The hour; null where nothing is computed.</param>
    public void Soil(Mesh mesh, Moment? moment)
    {
        var body = new Mesh();
        foreach (var column in ground.Soil())
        {
            Block(body, column, (up, top) => SoilColor(moment, column.Foot, up, top), 8);
        }

        mesh.Take(body);
    }

    /// <summary>Water in the drainage layer and under a raised floor; null where there is none.</summary>
    /// <param name="levelMeters">Its level over the base, m.</param>
    public Mesh? Level(double levelMeters)
    {
        var level = (float)Math.Min(levelMeters, terrain.Height);
        if (level < 0.001f)
        {
            return null;
        }

        var mesh = new Mesh();
        var deep = Hue.Of(0x2B6E9E);
        foreach (var (a, b, normal) in Faces())
        {
            var out_ = normal * 0.0009f;
            var up = new Vector3(0, 0, level);
            mesh.Quad(a + out_, b + out_, b + out_ + up, a + out_ + up, deep, 0.55f);
            mesh.Edge(a + out_ + up, b + out_ + up, Hue.Of(0x1D4F74), 0.9f);
        }

        if (!ground.HasGrains)
        {
            mesh.Quad(
                new((float)terrain.Left, (float)terrain.Front, level),
                new((float)terrain.Right, (float)terrain.Front, level),
                new((float)terrain.Right, (float)terrain.Back, level),
                new((float)terrain.Left, (float)terrain.Back, level),
                deep,
                0.5f
            );
        }

        return mesh;
    }

    /// <summary>Water of the basins; null without any.</summary>
    public Mesh? Open()
    {
        if (ground.Basins.IsEmpty)
        {
            return null;
        }

        var mesh = new Mesh();
        foreach (var basin in ground.Basins)
        {
            var (low, high, top) = Rim(basin);
            var up = top - Math.Min(0.004f, (float)basin.Edge.Si);
            Vector3[] c =
            [
                low with
                {
                    Z = up,
                },
                new(high.X, low.Y, up),
                high with
                {
                    Z = up,
                },
                new(low.X, high.Y, up),
            ];
            mesh.Quad(c[0], c[1], c[2], c[3], Water, 0.62f);
            for (var k = 1; k < 4; k++)
            {
                var y = low.Y + ((high.Y - low.Y) * k / 4);
                var x = low.X + ((high.X - low.X) * (0.15f + (0.12f * k)));
                mesh.Edge(
                    new(x, y, up + Off),
                    new(x + ((high.X - low.X) * 0.3f), y, up + Off),
                    Hue.Of(0xE6F0F4),
                    0.7f
                );
            }
        }

        return mesh;
    }

    private static Vector3 SoilColor(Moment? moment, float foot, float up, float top)
    {
        var depth = top - foot < 1e-5f ? 0 : Math.Clamp((top - up) / (top - foot), 0, 1);
        if (moment is not { Wetness.Length: > 1 } now)
        {
            return Vector3.Lerp(DrySoil, WetSoil, 0.45f + (0.2f * depth));
        }

        var share = now.Wetness.MinBy(w => Math.Abs(w.Depth - depth)).Share;
        return Vector3.Lerp(DrySoil, WetSoil, (float)Math.Clamp((share - 0.15) / 0.75, 0, 1));
    }

    /// <summary>A block with colored sides in slices from its foot up.</summary>
    private static void Block(Mesh mesh, FloorBlock c, Func<float, float, Vector3> color, int slices = 1)
    {
        Vector3 P(float x, float y, float share)
        {
            var top = y <= ((c.Front + c.Back) / 2) ? c.FrontTop : c.BackTop;
            return new(x, y, c.Foot + (share * (top - c.Foot)));
        }

        (float X, float Y)[] around =
        [
            (c.Left, c.Front),
            (c.Right, c.Front),
            (c.Right, c.Back),
            (c.Left, c.Back),
        ];
        for (var side = 0; side < 4; side++)
        {
            var (a, b) = (around[side], around[(side + 1) % 4]);
            for (var k = 0; k < slices; k++)
            {
                var (s, t) = (k / (float)slices, (k + 1) / (float)slices);
                var middle = P(a.X, a.Y, (s + t) / 2).Z;
                mesh.Quad(
                    P(a.X, a.Y, s),
                    P(b.X, b.Y, s),
                    P(b.X, b.Y, t),
                    P(a.X, a.Y, t),
                    color(middle, P(a.X, a.Y, 1).Z)
                );
            }

            mesh.Edge(P(a.X, a.Y, 1), P(b.X, b.Y, 1), Hue.Ink, 0.3f);
        }

        var (f, r) = (around[0], around[2]);
        mesh.Quad(
            P(f.X, f.Y, 1),
            P(r.X, f.Y, 1),
            P(r.X, r.Y, 1),
            P(f.X, r.Y, 1),
            color(c.FrontTop, c.FrontTop)
        );
        mesh.Quad(P(f.X, f.Y, 0), P(f.X, r.Y, 0), P(r.X, r.Y, 0), P(r.X, f.Y, 0), color(c.Foot, c.FrontTop));
    }

    /// <summary>The four upright faces of the floor: lower corners and the way out.</summary>
    private IEnumerable<(Vector3 A, Vector3 B, Vector3 Normal)> Faces()
    {
        var (l, r) = ((float)terrain.Left, (float)terrain.Right);
        var (f, b) = ((float)terrain.Front, (float)terrain.Back);
        var covered = Terrain.Covered(scene.Design);
        if (!covered.Contains(Side.Front))
        {
            yield return (new(l, f, 0), new(r, f, 0), -Vector3.UnitY);
        }

        if (!covered.Contains(Side.Right))
        {
            yield return (new(r, f, 0), new(r, b, 0), Vector3.UnitX);
        }

        if (!covered.Contains(Side.Back))
        {
            yield return (new(r, b, 0), new(l, b, 0), Vector3.UnitY);
        }

        if (!covered.Contains(Side.Left))
        {
            yield return (new(l, b, 0), new(l, f, 0), -Vector3.UnitX);
        }
    }

    private Vector3 GrainColor()
    {
        var key = scene.Design.Floor.Drainage?.Material ?? "";
        return key.Contains("clay", StringComparison.Ordinal) ? Clay
            : key.Contains("lava", StringComparison.Ordinal) ? Hue.Of(0x7E4F45)
            : key.Contains("perlite", StringComparison.Ordinal)
            || key.Contains("pumice", StringComparison.Ordinal)
                ? Hue.Of(0xE2DED2)
            : Hue.Of(0xA49A88);
    }

    /// <summary>Grains of the drainage layer, round behind the glass.</summary>
    private void Grains(Mesh mesh, Vector3 a, Vector3 b, Vector3 normal)
    {
        if (!ground.HasGrains)
        {
            return;
        }

        var dice = new Dice($"grains {normal}");
        var color = GrainColor();
        var radius = Math.Clamp(0.0055f, (float)terrain.Drainage / 8, (float)terrain.Drainage / 3);
        var along = b - a;
        var length = along.Length();
        along /= length;
        var rows = Math.Max(1, (int)(terrain.Drainage / (radius * 1.72f)));
        for (var row = 0; row < rows; row++)
        {
            var z = (float)terrain.Drainage * (row + 0.5f) / rows;
            for (var s = radius * (row % 2 == 0 ? 1 : 2); s < length - radius * 0.6f; s += radius * 2.04f)
            {
                var r = radius * dice.Between(0.72f, 1f);
                var at = a + (along * (s + (radius * dice.Between(-0.15f, 0.15f)))) + (normal * Off);
                at.Z = Math.Clamp(z + (radius * dice.Between(-0.2f, 0.2f)), r, (float)terrain.Drainage - r);
                Disc(mesh, at, along * r, (Hue.Times(color, dice.About(0.14f)), 7), dice);
            }
        }
    }

    private static void Disc(Mesh mesh, Vector3 at, Vector3 across, (Vector3 Color, int Sides) of, Dice dice)
    {
        Span<Vector3> around = stackalloc Vector3[of.Sides];
        var up = new Vector3(0, 0, across.Length());
        for (var k = 0; k < of.Sides; k++)
        {
            var (sin, cos) = MathF.SinCos(k * MathF.Tau / of.Sides);
            around[k] = at + (((across * cos) + (up * sin)) * dice.About(0.08f));
        }

        mesh.Fan(at, around, of.Color);
        mesh.Outline(around, true, Hue.Times(of.Color, 0.42f), 0.55f);
    }

    /// <summary>Bark and charcoal in the soil.</summary>
    private void Chips(Mesh mesh, Vector3 a, Vector3 b, Vector3 normal)
    {
        if (scene.Design.Floor.Soil is null)
        {
            return;
        }

        var dice = new Dice($"chips {normal}");
        var length = Vector3.Distance(a, b);
        var count = (int)(length * 190);
        for (var i = 0; i < count; i++)
        {
            var at = Vector3.Lerp(a, b, dice.Between(0.01f, 0.99f)) + (normal * Off);
            var (x, y) = (
                Math.Clamp(at.X, terrain.Left, terrain.Right),
                Math.Clamp(at.Y, terrain.Front, terrain.Back)
            );
            var deep = (float)terrain.Soil(x, y);
            if (deep < 0.012f)
            {
                continue;
            }

            at.Z = (float)terrain.Drainage + (deep * dice.Between(0.08f, 0.92f));
            var (sin, cos) = MathF.SinCos(dice.Between(-0.7f, 0.7f));
            var level = Vector3.Normalize(b - a);
            var along = ((level * cos) + new Vector3(0, 0, sin)) * dice.Between(0.0012f, 0.0042f);
            var up = (new Vector3(0, 0, cos) - (level * sin)) * dice.Between(0.0006f, 0.0017f);
            var color = dice.Next() switch
            {
                < 0.3f => Hue.Of(0x2F2A28),
                < 0.75f => Hue.Of(0xA8825A),
                _ => Hue.Of(0xC6B08A),
            };
            mesh.Quad(
                at - along - up,
                at + (along * 0.7f) - up,
                at + along + (up * 0.6f),
                at - (along * 0.8f) + up,
                color
            );
        }
    }

    /// <summary>A raised floor: a grid on feet over open water.</summary>
    private void Raised(Mesh mesh)
    {
        var (l, r) = ((float)terrain.Left, (float)terrain.Right);
        var (f, b) = ((float)terrain.Front, (float)terrain.Back);
        var top = (float)terrain.Drainage;
        mesh.Block(new(l, f, top - 0.006f), new(r, b, top - 0.0005f), Hue.Of(0xDDDCD2), 0.5f);
        for (var i = 0; i < 4; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var x = l + ((r - l) * (0.06f + (0.88f * i / 3)));
                var y = f + ((b - f) * (0.08f + (0.84f * j / 2)));
                mesh.Block(
                    new(x - 0.012f, y - 0.012f, 0.0005f),
                    new(x + 0.012f, y + 0.012f, top - 0.006f),
                    Hue.Of(0xC9C8BE),
                    0.4f
                );
            }
        }
    }

    private void Barrier(Mesh mesh)
    {
        if (scene.Design.Floor.Barrier is null || terrain.Drainage <= 0)
        {
            return;
        }

        foreach (var (a, b, normal) in Faces())
        {
            var up = new Vector3(0, 0, (float)terrain.Drainage);
            var out_ = normal * (2 * Off);
            var half = new Vector3(0, 0, 0.0009f);
            mesh.Quad(
                a + up + out_ - half,
                b + up + out_ - half,
                b + up + out_ + half,
                a + up + out_ + half,
                Hue.Of(0x3A4240)
            );
        }
    }

    private void Basins(Mesh mesh)
    {
        foreach (var basin in ground.Basins)
        {
            var (low, high, top) = Rim(basin);
            var deep = Math.Max(0.002f, top - (float)(basin.Depth.Si + basin.Edge.Si));
            const float Wall = 0.004f;
            var stone = Hue.Of(0x8F8A7E);
            mesh.Block(new(low.X, low.Y, deep), new(high.X, high.Y, deep + 0.001f), Hue.Of(0x6B6A5F), 0);
            mesh.Block(new(low.X - Wall, low.Y - Wall, deep), new(high.X + Wall, low.Y, top), stone, 0.5f);
            mesh.Block(new(low.X - Wall, high.Y, deep), new(high.X + Wall, high.Y + Wall, top), stone, 0.5f);
            mesh.Block(new(low.X - Wall, low.Y, deep), new(low.X, high.Y, top), stone, 0.5f);
            mesh.Block(new(high.X, low.Y, deep), new(high.X + Wall, high.Y, top), stone, 0.5f);
        }
    }

    private (Vector3 Low, Vector3 High, float Top) Rim(WaterBasin basin)
    {
        const float Clear = 0.005f;
        var (x, y) = basin.Middle;
        var low = new Vector3(
            (float)Math.Max(terrain.Left + Clear, x - (basin.Length.Si / 2)),
            (float)Math.Max(terrain.Front + Clear, y - (basin.Width.Si / 2)),
            0
        );
        var high = new Vector3(
            (float)Math.Min(terrain.Right - Clear, x + (basin.Length.Si / 2)),
            (float)Math.Min(terrain.Back - Clear, y + (basin.Width.Si / 2)),
            0
        );
        var top = (float)Math.Max(terrain.Ground(x, y), basin.Depth.Si + basin.Edge.Si) + 0.003f;
        return (low, high, top);
    }
}
