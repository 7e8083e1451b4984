using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Forecasting.Light;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// What is fixed to the box: lamps over it, nozzles, outlet, shelves inside, and the board it stands on.
/// </summary>
internal sealed class Fixtures(Scene scene, LightFigures? light)
{
    private const float BoardMeters = 0.016f;
    private const float AroundMeters = 0.035f;
    private static readonly Vector3 Housing = Hue.Of(0x5C6663);

    private readonly float top = (float)scene.Terrain.Height;

    /// <summary>Nozzles, outlet and shelves.</summary>
    public void Draw(Mesh mesh)
    {
        foreach (var (x, y) in scene.Nozzles())
        {
            var at = new Vector3((float)x, (float)y, top - 0.012f);
            mesh.Block(
                at - new Vector3(0.006f, 0.006f, 0.02f),
                at + new Vector3(0.006f, 0.006f, 0),
                Hue.Of(0x49535A),
                0.5f
            );
        }

        Outlet(mesh);
        for (var i = 0; i < scene.Design.Shelves.Count; i++)
        {
            Shelf(mesh, scene.Design.Shelves[i]);
        }
    }

    /// <summary>The board it stands on.</summary>
    public void Board(Mesh mesh, float wall, float foot)
    {
        var t = scene.Terrain;
        var far = wall + AroundMeters;
        mesh.Block(
            new(-far, -far, -foot - BoardMeters),
            new((float)t.Length + far, (float)t.DepthOfBox + far, -foot - 0.0006f),
            Hue.Of(0xD3C3A3),
            0.55f
        );
        for (var k = 0; k < 7; k++)
        {
            var y = -far + ((float)(t.DepthOfBox + (2 * far)) * (k + 0.6f) / 7.5f);
            mesh.Edge(
                new(-far, y, -foot - 0.0003f),
                new((float)t.Length + far, y, -foot - 0.0003f),
                Hue.Of(0xA8946F),
                0.35f
            );
        }
    }

    /// <summary>Housings of the lamps; what of them shines, which is drawn by itself.</summary>
    public void Lamps(Mesh housing, Mesh shining)
    {
        foreach (var (low, high) in Places())
        {
            housing.Block(low, high, Housing, 0.65f);
            var inset = new Vector3(0.004f, 0.004f, 0);
            var (a, b) = (low + inset, high - inset);
            var z = low.Z - 0.0006f;
            shining.Quad(
                new(a.X, a.Y, z),
                new(a.X, b.Y, z),
                new(b.X, b.Y, z),
                new(b.X, a.Y, z),
                Hue.Of(0xFFF3C4)
            );
            var strip = low.Z + 0.004f;
            shining.Quad(
                new(a.X, low.Y - 0.0006f, low.Z),
                new(b.X, low.Y - 0.0006f, low.Z),
                new(b.X, low.Y - 0.0006f, strip),
                new(a.X, low.Y - 0.0006f, strip),
                Hue.Of(0xFFF3C4)
            );
        }
    }

    /// <summary>Where lamps hang, as two corners each, m.</summary>
    public IEnumerable<(Vector3 Low, Vector3 High)> Places()
    {
        const float Tall = 0.022f;
        for (var i = 0; i < scene.Design.Lamps.Count; i++)
        {
            var lamp = scene.Design.Lamps[i];
            var above = top + 0.006f + (float)Math.Min(0.4, lamp.Above?.Si ?? 0.03);
            var known = light?.Lamps.FirstOrDefault(l =>
                l.Path == FormattableString.Invariant($"lamps[{i}]")
            );
            var points = known?.Outlines.SelectMany(o => o).ToList() ?? [];
            if (points.Count > 2)
            {
                yield return (
                    new((float)points.Min(p => p.X) - 0.008f, (float)points.Min(p => p.Y) - 0.008f, above),
                    new(
                        (float)points.Max(p => p.X) + 0.008f,
                        (float)points.Max(p => p.Y) + 0.008f,
                        above + Tall
                    )
                );
                continue;
            }

            var half = (float)(lamp.Length?.Si ?? (scene.Terrain.Length * 0.8)) / 2;
            var wide = (float)(lamp.Width?.Si ?? 0.07) / 2;
            var x = (float)(lamp.At?.X.Si ?? (scene.Terrain.Length / 2));
            var y = (float)(lamp.At?.Y.Si ?? (scene.Terrain.DepthOfBox / 2));
            yield return (new(x - half, y - wide, above), new(x + half, y + wide, above + Tall));
        }
    }

    private void Outlet(Mesh mesh)
    {
        if (scene.Drain is not { } drain)
        {
            return;
        }

        var t = scene.Terrain;
        var r = (float)Math.Clamp(drain.Diameter / 2, 0.004, 0.02);
        var along = (float)drain.Along;
        var (at, out_) = drain.Side switch
        {
            Side.Front => (new Vector3(along, 0, 0), -Vector3.UnitY),
            Side.Left => (new Vector3(0, along, 0), -Vector3.UnitX),
            Side.Right => (new Vector3((float)t.Length, along, 0), Vector3.UnitX),
            _ => (new Vector3(along, (float)t.DepthOfBox, 0), Vector3.UnitY),
        };
        var color = Hue.Of(0x8FA6AE);
        if (drain.Kind == DrainKind.Bulkhead)
        {
            var z = new Vector3(0, 0, (float)drain.Height);
            Pipe(mesh, at + z - (out_ * 0.01f), at + z + (out_ * 0.028f), r, color);
            return;
        }

        var thick = (float)(scene.Numbers.Box.BackgroundThickness?.Si ?? 0);
        var inside = at - (out_ * (Terrain(drain.Side) ? thick + 0.02f : 0.02f));
        inside.X = Math.Clamp(inside.X, (float)t.Left + (2 * r), (float)t.Right - (2 * r));
        inside.Y = Math.Clamp(inside.Y, (float)t.Front + (2 * r), (float)t.Back - (2 * r));
        var end =
            drain.Kind == DrainKind.Standpipe
                ? (float)Math.Max(drain.Height, 0.01)
                : (float)Math.Min(t.Height - 0.03, t.Ground(inside.X, inside.Y) + t.Moss + t.Litter + 0.02);
        Pipe(mesh, inside with { Z = 0.001f }, inside with { Z = end }, Math.Min(r, 0.008f), color);
    }

    private bool Terrain(Side side) => Quantities.Placing.Terrain.Covered(scene.Design).Contains(side);

    private static void Pipe(Mesh mesh, Vector3 from, Vector3 to, float r, Vector3 color)
    {
        const int Round = 10;
        var along = Vector3.Normalize(to - from);
        var side = Leaves.Side(along, Vector3.UnitZ);
        var up = Vector3.Cross(side, along);
        Vector3[] Ring(Vector3 at) =>
            [
                .. Enumerable
                    .Range(0, Round)
                    .Select(s => MathF.SinCos(s * MathF.Tau / Round))
                    .Select(t => at + (((side * t.Cos) + (up * t.Sin)) * r)),
            ];
        var body = new Mesh(hasSides: true);
        body.Skin([Ring(from), Ring(to)], (_, _) => color);
        mesh.Take(body);
    }

    private void Shelf(Mesh mesh, InsideShelf shelf)
    {
        var t = scene.Terrain;
        var length = (float)(shelf.Length?.Si ?? t.Length);
        var deep = (float)shelf.Depth.Si;
        var x = (float)
            Math.Clamp((shelf.At?.X.Si ?? (t.Length / 2)) - (length / 2), 0, Math.Max(0, t.Length - length));
        var y = (float)
            Math.Clamp(
                (shelf.At?.Y.Si ?? (t.DepthOfBox - (deep / 2))) - (deep / 2),
                0,
                Math.Max(0, t.DepthOfBox - deep)
            );
        var z = (float)Math.Clamp(shelf.At?.Z?.Si ?? (t.Height * 0.55), 0.01, t.Height - 0.01);
        mesh.Block(
            new(x + 0.001f, y + 0.001f, z - (float)shelf.Thickness.Si),
            new(x + length - 0.001f, y + deep - 0.001f, z),
            Hue.Of(0xC9DDD4),
            0.55f
        );
    }
}
