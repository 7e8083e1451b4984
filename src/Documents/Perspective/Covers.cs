using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Plants that cover the ground, in the box itself: mounds, creepers and moss.</summary>
internal static class Covers
{
    /// <summary>A low mound of leaves.</summary>
    public static void Mat(Mesh mesh, PlantPlace p)
    {
        var isScale = p.Plant.Leaf == "scale";
        var count = isScale ? 46 : 64;
        var wide = p.Size * 0.9f;
        for (var i = 0; i < count; i++)
        {
            var far = MathF.Sqrt((i + 0.5f) / count);
            var way = Rosettes.Way(i, 0.35f + (0.85f * (1 - far)), p.Dice);
            var flat = Vector3.Normalize(new Vector3(way.X, way.Y, 0));
            var at =
                (flat * (far * wide * 0.8f))
                + new Vector3(0, 0, p.Size * 0.66f * MathF.Sqrt(1 - (far * far * 0.92f)));
            var stem = new[] { flat * (far * wide * 0.5f), at };
            Leaves.Stalk(mesh, stem, p.Size * 0.015f, Hue.Times(p.Color, 0.55f));
            if (isScale)
            {
                var spine = Leaves.Spine(at, way, p.Size * 0.5f, 0.9f, 4);
                var leaflet = new LeafForm(LeafShape.Lance, p.Size * 0.13f, p.Size * 0.1f)
                {
                    Color = p.Tint(0.12f),
                    Edge = 0.28f,
                };
                Leaves.Frond(mesh, spine, leaflet, 6, 0);
                continue;
            }

            var leaf = new LeafForm(LeafShape.Oval, p.Size * p.Dice.Between(0.34f, 0.46f), p.Size * 0.26f)
            {
                Color = p.Tint(0.08f),
                Mark = p.Mark,
                MarkShare = 0.22f,
                Droop = 0.6f,
                Fold = 0.14f,
                Pieces = 4,
                Edge = 0.5f,
            };
            Leaves.Add(mesh, at, way, leaf);
        }
    }

    /// <summary>Stems on the ground, or down a wall where it is mounted, with small leaves.</summary>
    public static void Creeping(Mesh mesh, PlantPlace p)
    {
        var reach = Math.Clamp(p.Size * 2.4f, 0.035f, 0.16f);
        var leafLong = Math.Clamp(p.Size * 0.24f, 0.006f, 0.022f);
        var isOval = p.Plant.Leaf == "oval";
        for (var i = 0; i < 11; i++)
        {
            var way = Rosettes.Way(i, 0, p.Dice);
            var at = p.Foot;
            var length = reach * p.Dice.Between(0.5f, 1f);
            var nodes = Math.Max(3, (int)(length / leafLong * 0.75f));
            for (var k = 1; k <= nodes; k++)
            {
                way = Vector3.Normalize(
                    way + new Vector3(p.Dice.Between(-0.3f, 0.3f), p.Dice.Between(-0.3f, 0.3f), 0)
                );
                at = p.Kept(Onward(p, at, way, length / nodes));
                var side = Leaves.Side(way, Vector3.UnitZ);
                foreach (var hand in new[] { -1f, 1f })
                {
                    var leaf = new LeafForm(
                        isOval ? LeafShape.Oval : LeafShape.Round,
                        leafLong * p.Dice.Between(0.8f, 1.15f),
                        leafLong * (isOval ? 0.55f : 0.95f)
                    )
                    {
                        Color = p.Tint(0.1f),
                        Mark = p.Mark,
                        Droop = 0.3f,
                        Pieces = 3,
                        Edge = 0.42f,
                    };
                    Leaves.Add(mesh, at, (side * hand) + new Vector3(0, 0, p.Dice.Between(0.1f, 0.9f)), leaf);
                }
            }
        }
    }

    private static Vector3 Onward(PlantPlace p, Vector3 at, Vector3 way, float step)
    {
        if (p.Plant.Spot.Mounted)
        {
            return at + new Vector3(way.X * step, -0.15f * step, -MathF.Abs(way.Y) * step);
        }

        var next = at + (way * step);
        next.Z = p.Ground(next.X, next.Y) + (Math.Min(0.016f, 0.35f * p.Size) * p.Dice.Between(0.3f, 1));
        return next;
    }

    /// <summary>Cushions, or a carpet of them.</summary>
    public static void Moss(Mesh mesh, PlantPlace p)
    {
        var isCushion = p.Plant.Leaf == "cushion";
        var count = isCushion ? 4 : 9;
        for (var i = 0; i < count; i++)
        {
            var way = Rosettes.Way(i, 0, p.Dice);
            var far = i == 0 ? 0 : p.Size * (isCushion ? 0.9f : 0.75f) * MathF.Sqrt(i);
            var at = way * far;
            var tall = i == 0 ? p.Size : p.Size * p.Dice.Between(0.55f, 0.9f);
            var wide = tall * (isCushion ? 0.95f : 1.5f);
            Cushion(
                mesh,
                at,
                (wide, tall),
                p.Mark is { } mark && i % 3 == 1 ? Vector3.Lerp(p.Tint(), mark, 0.4f) : p.Tint(),
                p.Dice
            );
        }
    }

    /// <summary>A dome with short strokes of ink.</summary>
    internal static void Cushion(
        Mesh mesh,
        Vector3 foot,
        (float Wide, float Tall) size,
        Vector3 color,
        Dice dice
    )
    {
        const int Sides = 9;
        const int Rings = 4;
        var rings = new Vector3[Rings + 1][];
        for (var r = 0; r <= Rings; r++)
        {
            var (high, flat) = MathF.SinCos(MathF.PI / 2 * r / Rings);
            rings[r] = new Vector3[Sides];
            for (var s = 0; s < Sides; s++)
            {
                var (sin, cos) = MathF.SinCos(s * MathF.Tau / Sides);
                var bump = r == Rings ? 1 : dice.About(0.13f);
                rings[r][s] =
                    foot
                    + new Vector3(
                        cos * flat * size.Wide * bump,
                        sin * flat * size.Wide * bump,
                        high * size.Tall
                    );
            }
        }

        var body = new Mesh(hasSides: true);
        body.Skin(rings, (r, _) => Hue.Times(color, 0.84f + (0.07f * r)), isCapped: false);
        for (var k = 0; k < 9; k++)
        {
            var (r, s) = (dice.Between(0.3f, 3.6f), (int)(dice.Next() * Sides));
            var a = Vector3.Lerp(rings[(int)r][s], rings[(int)r + 1][s], r - (int)r);
            body.Edge(
                a,
                a + (Vector3.Normalize(a - foot) * (size.Tall * 0.13f)),
                Hue.Times(color, 0.5f),
                0.5f
            );
        }

        mesh.Take(body);
    }
}
