using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Perspective;

/// <summary>Moss and leaf litter on the soil.</summary>
internal sealed class LitterFigure(Scene scene)
{
    private const int MostLeaves = 420;
    private static readonly Vector3[] Browns =
    [
        Hue.Of(0xA67B4C),
        Hue.Of(0x8B623C),
        Hue.Of(0xBD9660),
        Hue.Of(0x77583A),
        Hue.Of(0xB08A5E),
    ];

    private readonly Terrain terrain = scene.Terrain;
    private readonly FloorBlocks ground = new(scene);

    /// <summary>Height of moss and litter over the soil, m.</summary>
    private float MossTop => (float)terrain.Moss;

    /// <summary>Where the moss begins, from front to back, m.</summary>
    private double MossFrom => terrain.Back - (Share(LayerKind.Moss) * (terrain.Back - terrain.Front));

    /// <summary>Top of what the leaves lie on, m over the base.</summary>
    private float Under(double x, double y) =>
        (float)(terrain.Ground(x, y) + (y >= MossFrom - 1e-6 ? terrain.Moss : 0));

    /// <summary>Top of the floor with moss and leaves, m over the base.</summary>
    public float Top(double x, double y) => Under(x, y) + (float)terrain.Litter;

    /// <summary>The moss: a bed over the strip at the back that the plan shows.</summary>
    public IEnumerable<FloorBlock> Moss() =>
        terrain.Moss <= 0 ? [] : Bed(((float)MossFrom, (float)terrain.Back), (0, (float)terrain.Moss));

    /// <summary>The loose leaves: a bed on soil and moss, from the back where they cover a part.</summary>
    public IEnumerable<FloorBlock> Litter()
    {
        if (terrain.Litter <= 0)
        {
            return [];
        }

        var start = (float)(terrain.Back - (Share(LayerKind.Litter) * (terrain.Back - terrain.Front)));
        var moss = terrain.Moss > 0 ? Math.Max(start, (float)MossFrom) : (float)terrain.Back;
        return
        [
            .. Bed((start, moss), (0, (float)terrain.Litter)),
            .. Bed((moss, (float)terrain.Back), (MossTop, (float)terrain.Litter)),
        ];
    }

    /// <summary>Draws the beds, each closed all around.</summary>
    public void Beds(Mesh moss, Mesh litter)
    {
        var dice = new Dice("beds");
        foreach (var column in Moss())
        {
            Bed(moss, column, Hue.Of(0x6E9450), dice);
        }

        foreach (var column in Litter())
        {
            Bed(litter, column, Hue.Of(0x8A6A4A), dice);
        }
    }

    /// <summary>Draws single leaves and cushions of moss.</summary>
    public void Draw(Mesh mesh)
    {
        if (terrain.Litter > 0)
        {
            var leaves = new Mesh();
            Leaves(leaves, new Dice("litter"));
            Slivers(leaves, new Dice("slivers"));
            mesh.Take(leaves);
        }

        Cushions(mesh);
    }

    /// <summary>Leaves seen on edge behind the panes.</summary>
    private void Slivers(Mesh mesh, Dice dice)
    {
        var share = (float)Share(LayerKind.Litter);
        var (l, r) = ((float)terrain.Left, (float)terrain.Right);
        var (f, b) = ((float)terrain.Front, (float)terrain.Back);
        var start = b - (share * (b - f));
        foreach (
            var (from, to, out_) in new[]
            {
                (new Vector3(l, start, 0), new Vector3(r, start, 0), -Vector3.UnitY),
                (new(r, start, 0), new(r, b, 0), Vector3.UnitX),
                (new(l, b, 0), new(l, start, 0), -Vector3.UnitX),
            }
        )
        {
            var along = Vector3.Normalize(to - from);
            var count = (int)(Vector3.Distance(from, to) * 130);
            for (var i = 0; i < count; i++)
            {
                var at = Vector3.Lerp(from, to, dice.Between(0.02f, 0.98f));
                var foot = Under(at.X, at.Y);
                at +=
                    (out_ * 0.0004f)
                    + new Vector3(0, 0, foot + ((float)terrain.Litter * dice.Between(0.08f, 0.9f)));
                var half = along * dice.Between(0.008f, 0.024f);
                var bow = new Vector3(0, 0, dice.Between(-0.004f, 0.004f));
                var thick = new Vector3(0, 0, dice.Between(0.0006f, 0.0014f));
                var color = Hue.Times(Browns[i % Browns.Length], dice.About(0.2f));
                mesh.Quad(at - half - bow, at - thick + bow, at + half - bow, at + thick + bow, color);
            }
        }
    }

    private double Share(LayerKind kind)
    {
        var floor = scene.Design.Floor;
        var typed = kind == LayerKind.Moss ? floor.Moss?.Cover : floor.Litter?.Cover;
        return Math.Clamp(typed?.Si ?? 1, 0, 1);
    }

    /// <summary>A layer of one depth on the ground between two lines; beside basins, not in them.</summary>
    private IEnumerable<FloorBlock> Bed((float From, float To) strip, (float Low, float Deep) layer)
    {
        foreach (var soil in ground.Soil().DefaultIfEmpty(Bare()))
        {
            var (front, back) = (Math.Max(soil.Front, strip.From), Math.Min(soil.Back, strip.To));
            if (back - front < 1e-4f || soil.Right <= terrain.Left || soil.Left >= terrain.Right)
            {
                continue;
            }

            yield return soil with
            {
                Front = front,
                Back = back,
                Foot = soil.Top(front) + layer.Low,
                FrontTop = soil.Top(front) + layer.Low + layer.Deep,
                BackTop = soil.Top(back) + layer.Low + layer.Deep,
            };
        }
    }

    /// <summary>The drainage layer, or the base, where there is no soil.</summary>
    private FloorBlock Bare() =>
        new((float)terrain.Left, (float)terrain.Right, (float)terrain.Front, (float)terrain.Back)
        {
            Foot = (float)terrain.Drainage,
            FrontTop = (float)terrain.Drainage,
            BackTop = (float)terrain.Drainage,
        };

    /// <summary>
    /// A bed whose foot follows the ground; its top is uneven about its true depth, its rim even.
    /// </summary>
    private static void Bed(Mesh mesh, in FloorBlock c, Vector3 color, Dice dice)
    {
        var (nx, ny) = (
            Math.Max(2, (int)((c.Right - c.Left) / 0.016f)),
            Math.Max(2, (int)((c.Back - c.Front) / 0.016f))
        );
        var rise = c.FrontTop - c.Foot;
        var bumps = Bumps(nx, ny, dice);
        var body = new Mesh();
        for (var j = 0; j <= ny; j++)
        {
            for (var i = 0; i <= nx; i++)
            {
                var y = c.Front + ((c.Back - c.Front) * j / ny);
                body.Point(
                    new(c.Left + ((c.Right - c.Left) * i / nx), y, c.Top(y) + (rise * bumps[i, j])),
                    Hue.Times(color, dice.About(0.12f))
                );
            }
        }

        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                var a = i + (j * (nx + 1));
                body.Triangle(a, a + 1, a + nx + 2);
                body.Triangle(a, a + nx + 2, a + nx + 1);
            }
        }

        Skirt(body, c, rise, Hue.Times(color, 0.85f));
        mesh.Take(body);
    }

    /// <summary>Shares of the depth, 0 at the rim and on the mean.</summary>
    private static float[,] Bumps(int nx, int ny, Dice dice)
    {
        var bumps = new float[nx + 1, ny + 1];
        var sum = 0f;
        for (var j = 1; j < ny; j++)
        {
            for (var i = 1; i < nx; i++)
            {
                sum += bumps[i, j] = dice.Between(-0.12f, 0.12f);
            }
        }

        var mean = sum / ((nx - 1) * (ny - 1));
        for (var j = 1; j < ny; j++)
        {
            for (var i = 1; i < nx; i++)
            {
                bumps[i, j] -= mean;
            }
        }

        return bumps;
    }

    private static void Skirt(Mesh mesh, FloorBlock c, float rise, Vector3 color)
    {
        Vector3 At(float x, float y, bool isTop) => new(x, y, c.Top(y) - (isTop ? 0 : rise));
        (float X, float Y)[] around =
        [
            (c.Left, c.Front),
            (c.Right, c.Front),
            (c.Right, c.Back),
            (c.Left, c.Back),
        ];
        for (var k = 0; k < 4; k++)
        {
            var (a, b) = (around[k], around[(k + 1) % 4]);
            mesh.Quad(
                At(a.X, a.Y, false),
                At(b.X, b.Y, false),
                At(b.X, b.Y, true),
                At(a.X, a.Y, true),
                color
            );
        }

        mesh.Quad(
            At(c.Left, c.Front, false),
            At(c.Left, c.Back, false),
            At(c.Right, c.Back, false),
            At(c.Right, c.Front, false),
            color
        );
    }

    /// <summary>Single leaves on the bed, and on edge behind the glass.</summary>
    private void Leaves(Mesh mesh, Dice dice)
    {
        var (length, width, isRound) = Kind(scene.Design.Floor.Litter!.Material);
        var (w, d) = ((float)(terrain.Right - terrain.Left), (float)(terrain.Back - terrain.Front));
        var share = (float)Share(LayerKind.Litter);
        var count = Math.Clamp((int)(w * d * share / (length * width) * 3.4f), 12, MostLeaves);
        for (var i = 0; i < count; i++)
        {
            var x = (float)terrain.Left + (w * dice.Between(0.02f, 0.98f));
            var y = (float)terrain.Back - (d * share * dice.Between(0.02f, 0.98f));
            var z = Under(x, y) + (float)terrain.Litter;
            if (
                ground.Basins.Any(b =>
                    Math.Abs(b.Middle.X - x) < b.Length.Si / 2 && Math.Abs(b.Middle.Y - y) < b.Width.Si / 2
                )
            )
            {
                continue;
            }

            var (sin, cos) = MathF.SinCos(dice.Between(0, MathF.Tau));
            var l = length * dice.Between(0.7f, 1.05f);
            var way = new Vector3(cos, sin, dice.Between(0.02f, 0.2f));
            var leaf = new LeafForm(isRound ? LeafShape.Round : LeafShape.Oval, l, width * l / length)
            {
                Color = Hue.Times(Browns[i % Browns.Length], dice.About(0.08f)),
                Droop = dice.Between(-0.25f, 0.4f),
                Fold = dice.Between(0, 0.3f),
                Pieces = 6,
                Edge = 0.7f,
            };
            var foot = new Vector3(x - (cos * l / 2), y - (sin * l / 2), z + dice.Between(0.001f, 0.007f));
            var one = new Mesh();
            Perspective.Leaves.Add(
                one,
                foot,
                way,
                leaf,
                new(dice.Between(-0.2f, 0.2f), dice.Between(-0.2f, 0.2f), 1)
            );
            mesh.Take(one, Kept);
        }
    }

    private Vector3 Kept(Vector3 p) =>
        new(
            Math.Clamp(p.X, (float)terrain.Left + 0.001f, (float)terrain.Right - 0.001f),
            Math.Clamp(p.Y, (float)terrain.Front + 0.001f, (float)terrain.Back - 0.001f),
            Math.Clamp(p.Z, 0.001f, (float)terrain.Height - 0.002f)
        );

    /// <summary>Length and width of a fallen leaf, m; from memory.</summary>
    private static (float Length, float Width, bool IsRound) Kind(string material) =>
        material switch
        {
            "oak-leaves" => (0.085f, 0.045f, false),
            "beech-leaves" => (0.06f, 0.036f, false),
            "magnolia-leaves" => (0.14f, 0.06f, false),
            "sea-grape-leaves" => (0.12f, 0.12f, true),
            "indian-almond-leaves" => (0.16f, 0.085f, false),
            _ => (0.08f, 0.04f, false),
        };

    /// <summary>Cushions of moss that stand out between the leaves.</summary>
    private void Cushions(Mesh mesh)
    {
        if (terrain.Moss <= 0)
        {
            return;
        }

        var dice = new Dice("moss");
        var share = (float)Share(LayerKind.Moss);
        var (w, d) = ((float)(terrain.Right - terrain.Left), (float)(terrain.Back - terrain.Front) * share);
        var color = scene.Design.Floor.Moss!.Material switch
        {
            "long-fibre-sphagnum" => Hue.Of(0xA9B478),
            "live-sphagnum" => Hue.Of(0xA3BC77),
            "cushion-moss" => Hue.Of(0x86A75C),
            _ => Hue.Of(0x6F9850),
        };
        var basins = ground.Basins;
        var count = Math.Clamp((int)(w * d / 0.0011f), 10, 240);
        for (var i = 0; i < count; i++)
        {
            var x = (float)terrain.Left + (w * dice.Between(0.03f, 0.97f));
            var y = (float)terrain.Back - (d * dice.Between(0.03f, 0.99f));
            var wide = dice.Between(0.02f, 0.042f);
            if (
                basins.Any(b =>
                    Math.Abs(b.Middle.X - x) < (b.Length.Si / 2) + wide
                    && Math.Abs(b.Middle.Y - y) < (b.Width.Si / 2) + wide
                )
            )
            {
                continue;
            }

            var foot = new Vector3(x, y, (float)terrain.Ground(x, y));
            var tall = MossTop + (float)terrain.Litter + dice.Between(0.002f, 0.011f);
            var one = new Mesh();
            Covers.Cushion(one, foot, (wide, tall), Hue.Times(color, dice.About(0.09f)), dice);
            mesh.Take(one, Kept);
        }
    }
}
