using System.Numerics;
using Litterfall.Domain;

namespace Litterfall.Documents.Perspective;

/// <summary>Plants with stems and fronds; around the foot, straight up, unless a wall carries them.</summary>
internal static class Stems
{
    /// <summary>Fronds with leaflets.</summary>
    public static void Fern(Mesh mesh, PlantPlace p)
    {
        var (count, pairs, long_, wide, bare) = p.Plant.Leaf switch
        {
            "round" => (14, 9, 0.16f, 0.13f, 0.3f),
            "lace" => (9, 10, 0.3f, 0.12f, 0.35f),
            "ribbon" => (10, 5, 0.42f, 0.07f, 0.35f),
            _ => (16, 26, 0.125f, 0.043f, 0.05f),
        };
        for (var i = 0; i < count; i++)
        {
            var t = i / (count - 1f);
            var way = Rosettes.Way(i, 0.75f + (0.7f * t), p.Dice);
            var spine = Leaves.Spine(
                new(way.X * 0.03f * p.Size, way.Y * 0.03f * p.Size, 0),
                way,
                p.Size * p.Dice.Between(1.05f, 1.3f),
                1.5f - (0.5f * t),
                8
            );
            var leaflet = new LeafForm(
                p.Plant.Leaf == "round" ? LeafShape.Round : LeafShape.Lance,
                p.Size * long_,
                p.Size * wide
            )
            {
                Color = p.Mark is { } mark && i % 2 == 0 ? Vector3.Lerp(p.Tint(), mark, 0.3f) : p.Tint(0.1f),
                Droop = 0.15f,
                Edge = pairs > 15 ? 0.3f : 0.42f,
            };
            Leaves.Frond(mesh, spine, leaflet, pairs, bare);
        }
    }

    /// <summary>Forked fronds that hang from a shield.</summary>
    public static void Antler(Mesh mesh, PlantPlace p)
    {
        for (var i = 0; i < 5; i++)
        {
            var shield = new LeafForm(LeafShape.Round, p.Size * 0.32f, p.Size * 0.32f)
            {
                Color = Hue.Times(Hue.Of("brown"), p.Dice.About(0.1f)),
                Droop = 0.1f,
            };
            Leaves.Add(
                mesh,
                new(0, 0.01f * p.Size * i, -0.12f * p.Size),
                Rosettes.Way(i, 1.1f, p.Dice),
                shield,
                -Vector3.UnitY
            );
        }

        for (var i = 0; i < 7; i++)
        {
            var way = Rosettes.Way(i, 0.8f, p.Dice);
            var arm = Leaves.Spine(Vector3.Zero, way, p.Size * 0.55f, 0.7f, 5);
            var color = p.Tint();
            Leaves.Stalk(mesh, arm, p.Size * 0.035f, color);
            Fork(mesh, (arm[^1], arm[^1] - arm[^2]), p, (color, p.Size * 0.36f, 2));
        }
    }

    private static void Fork(
        Mesh mesh,
        (Vector3 At, Vector3 Along) from,
        PlantPlace p,
        (Vector3 Color, float Length, int Left) arm
    )
    {
        var side = Leaves.Side(from.Along, Vector3.UnitZ);
        foreach (var turn in new[] { -0.55f, 0.5f })
        {
            var way = Vector3.Normalize(Vector3.Normalize(from.Along) + (side * turn));
            var shape = arm.Left == 1 ? LeafShape.Blade : LeafShape.Strap;
            var leaf = new LeafForm(shape, arm.Length, p.Size * 0.075f)
            {
                Color = arm.Color,
                Droop = 0.45f,
                Pieces = 4,
            };
            Leaves.Add(mesh, from.At, way, leaf);
            if (arm.Left > 1)
            {
                var end = Leaves.Spine(from.At, way, arm.Length * 0.82f, 0.4f, 3);
                Fork(mesh, (end[^1], end[^1] - end[^2]), p, (arm.Color, arm.Length * 0.62f, arm.Left - 1));
            }
        }
    }

    /// <summary>Upright stems with crossed pairs of leaves.</summary>
    public static void Bush(Mesh mesh, PlantPlace p)
    {
        var isFine = p.Plant.Leaf == "needle";
        var shape = p.Plant.Leaf == "round" ? LeafShape.Round : LeafShape.Oval;
        for (var i = 0; i < 8; i++)
        {
            var way = Rosettes.Way(i, 1.05f + (0.06f * (i % 6)), p.Dice);
            var stem = Leaves.Spine(
                new(way.X * 0.1f * p.Size, way.Y * 0.1f * p.Size, 0),
                way,
                p.Size * p.Dice.Between(0.7f, 0.95f),
                -0.25f,
                5
            );
            Leaves.Stalk(mesh, stem, p.Size * 0.022f, Hue.Times(p.Color, 0.7f));
            var nodes = isFine ? 9 : 5;
            for (var k = 1; k <= nodes; k++)
            {
                var (at, along) = Leaves.On(stem, k / (float)nodes);
                var side = Leaves.Side(along, k % 2 == 0 ? Vector3.UnitX : Vector3.UnitY);
                foreach (var hand in new[] { -1f, 1f })
                {
                    var leaf = new LeafForm(
                        shape,
                        p.Size * (isFine ? 0.12f : 0.27f) * (1.1f - (0.35f * k / nodes)),
                        p.Size * (isFine ? 0.06f : 0.17f)
                    )
                    {
                        Color = p.Tint(),
                        Mark = isFine ? null : p.Mark,
                        MarkShare = 0.4f,
                        Droop = 0.5f,
                        Pieces = isFine ? 3 : 4,
                        Edge = isFine ? 0.35f : 0.5f,
                    };
                    Leaves.Add(mesh, at, (side * hand) + new Vector3(0, 0, 0.45f), leaf);
                }
            }
        }
    }

    /// <summary>Canes with feathered leaves.</summary>
    public static void Cane(Mesh mesh, PlantPlace p)
    {
        var isSingle = p.Plant.Leaf == "feather" && p.Plant.Grown < 0.2;
        for (var i = 0; i < (isSingle ? 1 : 5); i++)
        {
            var way = Rosettes.Way(i, isSingle ? 1.5f : 1.25f, p.Dice);
            var tall = p.Size * (isSingle ? 0.6f : p.Dice.Between(0.4f, 0.68f));
            var cane = Leaves.Spine(
                new(way.X * 0.08f * p.Size, way.Y * 0.08f * p.Size, 0),
                way,
                tall,
                -0.15f,
                4
            );
            Leaves.Stalk(mesh, cane, p.Size * 0.028f, Hue.Of("yellow green"));
            var fronds = isSingle ? 11 : 5;
            for (var k = 0; k < fronds; k++)
            {
                var at = isSingle ? cane[^1] : Leaves.On(cane, 0.55f + (0.45f * k / (fronds - 1))).At;
                var out_ = Rosettes.Way((i * 3) + k, isSingle ? 0.35f : 0.7f, p.Dice);
                var spine = Leaves.Spine(at, out_, p.Size * (isSingle ? 0.4f : 0.5f), 1.0f, 6);
                var leaflet = new LeafForm(
                    LeafShape.Lance,
                    p.Size * (isSingle ? 0.11f : 0.2f),
                    p.Size * 0.045f
                )
                {
                    Color = p.Tint(),
                    Droop = 0.35f,
                    Edge = 0.38f,
                };
                Leaves.Frond(mesh, spine, leaflet, isSingle ? 10 : 9, 0.16f);
            }
        }
    }

    /// <summary>Stems that hang over an edge, with pairs of leaves.</summary>
    public static void Trailing(Mesh mesh, PlantPlace p)
    {
        var isBare = p.Plant.Leaf == "none";
        var count = isBare ? 16 : 9;
        var leafLong = Math.Clamp(p.Size * 0.11f, 0.008f, 0.045f);
        for (var i = 0; i < count; i++)
        {
            var way = Rosettes.Way(i, 0.75f, p.Dice);
            var long_ = p.Size * p.Dice.Between(0.6f, 1f);
            var stem = Leaves.Spine(Vector3.Zero, way, long_, 2.6f, 10);
            Leaves.Stalk(
                mesh,
                stem,
                isBare ? 0.003f : 0.0018f,
                isBare ? p.Tint() : Hue.Times(p.Color, 0.75f)
            );
            var nodes = isBare ? 0 : Math.Clamp((int)(long_ / leafLong * 0.85f), 4, 16);
            for (var k = 1; k <= nodes; k++)
            {
                var (at, along) = Leaves.On(stem, k / (float)nodes);
                var side = Leaves.Side(along, Vector3.UnitZ);
                Pair(mesh, p, (at, side, along), leafLong);
            }

            if (p.Flower is { } flower && i % 3 == 0)
            {
                Rosettes.Blossom(mesh, stem[^1], leafLong * 0.5f, flower);
            }
        }
    }

    private static void Pair(
        Mesh mesh,
        PlantPlace p,
        (Vector3 At, Vector3 Side, Vector3 Along) on,
        float long_
    )
    {
        var shape = p.Plant.Leaf switch
        {
            "round" => LeafShape.Round,
            "heart" => LeafShape.Heart,
            _ => LeafShape.Oval,
        };
        foreach (var hand in new[] { -1f, 1f })
        {
            var leaf = new LeafForm(
                shape,
                long_ * p.Dice.Between(0.85f, 1.1f),
                long_ * (shape == LeafShape.Oval ? 0.5f : 0.78f)
            )
            {
                Color = p.Tint(),
                Mark = p.Mark,
                Droop = 0.4f,
                Pieces = 4,
                Edge = 0.5f,
            };
            Leaves.Add(mesh, on.At, (on.Side * hand) + (on.Along * 0.4f) + new Vector3(0, 0, 0.3f), leaf);
        }
    }

    /// <summary>
    /// Stems up a wall in the box itself: leaves flat on it, or on stalks.
    /// </summary>
    public static void Climb(Mesh mesh, PlantPlace p, Design design, bool isFlat)
    {
        var (wall, normal) = p.Wall(design);
        var right = Vector3.Normalize(Vector3.Cross(normal, Vector3.UnitZ));
        var leafLong = isFlat
            ? Math.Clamp((float)p.Plant.Grown * 0.05f, 0.022f, 0.04f)
            : Math.Clamp(p.Size * 0.13f, 0.03f, 0.085f);
        var stems = isFlat ? 4 : 3;
        for (var i = 0; i < stems; i++)
        {
            var line = Line(
                p,
                (wall, normal, right),
                (i - ((stems - 1) / 2f)) * 0.36f,
                p.Size * (1 - (0.16f * i))
            );
            Leaves.Stalk(mesh, line, 0.003f, Hue.Times(p.Color, 0.6f));
            var length = Length(line);
            var nodes = Math.Max(3, (int)(length / leafLong * (isFlat ? 1.5f : 1.25f)));
            for (var k = 1; k <= nodes; k++)
            {
                var (at, along) = Leaves.On(line, k / (float)nodes);
                Leaf(mesh, p, (at, along, normal), (leafLong, k % 2 == 0 ? 1 : -1, isFlat));
            }
        }
    }

    private static void Leaf(
        Mesh mesh,
        PlantPlace p,
        (Vector3 At, Vector3 Along, Vector3 Normal) on,
        (float Long, int Hand, bool IsFlat) of
    )
    {
        var side = Leaves.Side(on.Along, on.Normal) * of.Hand;
        var shape = p.Plant.Leaf switch
        {
            "round" => LeafShape.Round,
            "arrow" => LeafShape.Arrow,
            "oval" => LeafShape.Oval,
            _ => LeafShape.Heart,
        };
        var leaf = new LeafForm(shape, of.Long * p.Dice.Between(0.75f, 1.12f), of.Long * 0.8f)
        {
            Color = p.Tint(),
            Mark = p.Plant.Leaf == "holed" ? Hue.Times(p.Color, 0.6f) : p.Mark,
            MarkShare =
                p.Plant.Leaf == "holed" ? 0.3f
                : of.IsFlat ? 0.42f
                : 0.26f,
            Droop = of.IsFlat ? 0.02f : 0.5f,
            Fold = of.IsFlat ? 0.02f : 0.18f,
            Pieces = of.IsFlat ? 4 : 6,
            Edge = 0.5f,
        };
        var lift = on.Normal * 0.003f;
        if (of.IsFlat)
        {
            Leaves.Add(mesh, on.At + lift, side + (on.Along * 0.55f), leaf, on.Normal);
            return;
        }

        var out_ = Vector3.Normalize((side * 0.7f) + (on.Normal * 0.8f) + new Vector3(0, 0, 0.35f));
        var stalk = Leaves.Spine(on.At + lift, out_, of.Long * 0.6f, 0.3f, 2);
        Leaves.Stalk(mesh, stalk, 0.002f, Hue.Times(p.Color, 0.75f));
        Leaves.Add(
            mesh,
            stalk[^1],
            (side * 0.45f) + (on.Normal * 0.5f) - new Vector3(0, 0, 0.75f),
            leaf,
            on.Normal + new Vector3(0, 0, 0.5f)
        );
    }

    /// <summary>From the foot to the wall, then up it in bends, along under the lid where it ends.</summary>
    private static Vector3[] Line(
        PlantPlace p,
        (Vector3 At, Vector3 Normal, Vector3 Right) wall,
        float lean,
        float length
    )
    {
        var points = new List<Vector3> { p.Foot };
        var foot = wall.At + (wall.Normal * 0.004f);
        var reach = Vector3.Distance(foot, p.Foot);
        var step = 0.018f;
        var at = p.Foot;
        var gone = 0f;
        while (gone < Math.Min(reach, length))
        {
            at = Vector3.Lerp(p.Foot, foot, Math.Min(1, (gone + step) / Math.Max(reach, 0.001f)));
            at.Z = p.Foot.Z + (p.Plant.Spot.Mounted ? 0 : 0.008f);
            points.Add(at);
            gone += step;
        }

        var way = lean + p.Dice.Between(-0.1f, 0.1f);
        var top = (float)p.Terrain.Height - 0.03f;
        while (gone < length)
        {
            way = Math.Clamp(way + p.Dice.Between(-0.22f, 0.22f), -1.1f, 1.1f);
            var isUnder = at.Z > top;
            var (sin, cos) = MathF.SinCos(isUnder ? (lean < 0 ? -1.57f : 1.57f) : way);
            at = p.Kept(at + (wall.Right * (sin * step)) + (Vector3.UnitZ * (cos * step)));
            points.Add(at);
            gone += step;
        }

        return points.Count > 1 ? [.. points] : [p.Foot, p.Foot + (Vector3.UnitZ * 0.02f)];
    }

    private static float Length(Vector3[] line)
    {
        var sum = 0f;
        for (var i = 1; i < line.Length; i++)
        {
            sum += Vector3.Distance(line[i - 1], line[i]);
        }

        return sum;
    }
}
