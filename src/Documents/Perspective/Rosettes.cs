using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Plants whose leaves rise from one foot; around it, straight up, sizes in meters.</summary>
internal static class Rosettes
{
    private const float GoldenAngle = 2.39996f;

    /// <summary>A cup of straps, the inner ones steeper.</summary>
    public static void Tank(Mesh mesh, PlantPlace p)
    {
        const int Count = 20;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var color = p.Mark is { } red
                ? Vector3.Lerp(p.Tint(), red, Math.Clamp((t * 1.5f) - 0.45f, 0, 0.95f))
                : p.Tint();
            var isBanded = p.Plant.Colors.Length > 1 && p.Plant.Colors[1] == "dark bands";
            var leaf = new LeafForm(
                LeafShape.Strap,
                p.Size * (1.02f - (0.36f * t)) * p.Dice.About(0.06f),
                p.Size * 0.15f
            )
            {
                Color = isBanded ? p.Tint() : color,
                Droop = 0.95f - (0.45f * t),
                Fold = 0.34f,
                Pieces = 6,
            };
            var way = Way(i, 0.32f + (0.92f * t), p.Dice);
            Leaves.Add(mesh, Around(way, p.Size * 0.03f), way, leaf);
            if (isBanded)
            {
                Bands(mesh, Around(way, p.Size * 0.03f), way, leaf);
            }
        }

        Spike(mesh, p);
    }

    /// <summary>A flat star with a stripe on each leaf.</summary>
    public static void Star(Mesh mesh, PlantPlace p)
    {
        const int Count = 15;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var way = Way(i, 0.2f + (0.75f * t), p.Dice);
            var leaf = new LeafForm(LeafShape.Lance, p.Size * (1.1f - (0.55f * t)), p.Size * 0.24f)
            {
                Color = p.Tint(),
                Mark = p.Mark,
                MarkShare = 0.4f,
                Droop = 0.5f,
                Fold = 0.4f,
            };
            Leaves.Add(mesh, Around(way, p.Size * 0.02f), way, leaf);
        }
    }

    /// <summary>Thin curled leaves.</summary>
    public static void Air(Mesh mesh, PlantPlace p)
    {
        const int Count = 30;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var way = Way(i, 0.15f + (1.2f * t), p.Dice);
            var color = p.Mark is { } tip
                ? Vector3.Lerp(p.Tint(), tip, Math.Max(0, (t - 0.6f) * 1.8f))
                : p.Tint();
            var leaf = new LeafForm(LeafShape.Blade, p.Size * p.Dice.Between(0.75f, 1.1f), p.Size * 0.06f)
            {
                Color = color,
                Droop = p.Dice.Between(-0.9f, 1.3f),
                Pieces = 6,
                Edge = 0.45f,
            };
            Leaves.Add(mesh, Vector3.Zero, way, leaf);
        }
    }

    /// <summary>A funnel of undivided fronds with a dark rib.</summary>
    public static void Nest(Mesh mesh, PlantPlace p)
    {
        var isNarrow = p.Plant.Leaf == "lance";
        const int Count = 17;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var way = Way(i, 0.62f + (0.75f * t), p.Dice);
            var leaf = new LeafForm(
                isNarrow ? LeafShape.Lance : LeafShape.Strap,
                p.Size * (1.15f - (0.35f * t)) * p.Dice.About(0.08f),
                p.Size * (isNarrow ? 0.13f : 0.2f)
            )
            {
                Color = p.Tint(),
                Mark = Hue.Times(p.Color, 0.55f),
                MarkShare = 0.07f,
                Droop = p.Dice.Between(0.5f, 0.9f),
                Fold = 0.3f,
                Pieces = 7,
            };
            Leaves.Add(mesh, Around(way, p.Size * 0.04f), way, leaf);
        }
    }

    /// <summary>Leaves on stalks.</summary>
    public static void Leafy(Mesh mesh, PlantPlace p)
    {
        var shape = p.Plant.Leaf switch
        {
            "lance" => LeafShape.Lance,
            "heart" => LeafShape.Heart,
            "arrow" => LeafShape.Arrow,
            "round" => LeafShape.Round,
            _ => LeafShape.Oval,
        };
        var count = shape == LeafShape.Arrow ? 8 : 14;
        for (var i = 0; i < count; i++)
        {
            var t = i / (count - 1f);
            var way = Way(i, 0.55f + (0.85f * t), p.Dice);
            var long_ = p.Size * p.Dice.Between(0.42f, 0.62f) * (0.7f + (0.4f * t));
            var stalk = Leaves.Spine(Around(way, p.Size * 0.02f), way, long_, 0.35f, 3);
            Leaves.Stalk(mesh, stalk, p.Size * 0.02f, Hue.Times(p.Color, 0.8f));
            var leaf = new LeafForm(shape, p.Size * p.Dice.Between(0.38f, 0.5f), p.Size * Broad(shape))
            {
                Color = p.Tint(),
                Mark = p.Mark,
                MarkShare = shape is LeafShape.Heart or LeafShape.Round ? 0.45f : 0.28f,
                Droop = 0.7f,
                Fold = 0.16f,
                Pieces = 6,
            };
            var on = Vector3.Normalize(new Vector3(way.X, way.Y, 0) + new Vector3(0, 0, 0.25f));
            Leaves.Add(mesh, stalk[^1], on, leaf);
        }

        Flowers(mesh, p, 4);
    }

    /// <summary>A small tuft.</summary>
    public static void Tuft(Mesh mesh, PlantPlace p)
    {
        const int Count = 13;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var way = Way(i, 0.5f + (0.9f * t), p.Dice);
            var leaf = new LeafForm(
                p.Plant.Leaf == "lance" ? LeafShape.Lance : LeafShape.Oval,
                p.Size * p.Dice.Between(0.62f, 0.95f),
                p.Size * 0.2f
            )
            {
                Color = p.Tint(),
                Droop = 0.45f,
                Fold = 0.3f,
                Pieces = 4,
            };
            Leaves.Add(mesh, Around(way, p.Size * 0.06f * (1 - t)), way, leaf);
        }

        Flowers(mesh, p, 3);
    }

    /// <summary>A fan of blades.</summary>
    public static void Grass(Mesh mesh, PlantPlace p)
    {
        const int Count = 34;
        for (var i = 0; i < Count; i++)
        {
            var t = i / (Count - 1f);
            var way = Way(i, 0.85f + (0.65f * t), p.Dice);
            var leaf = new LeafForm(LeafShape.Blade, p.Size * p.Dice.Between(0.8f, 1.08f), p.Size * 0.045f)
            {
                Color = p.Tint(0.1f),
                Mark = i % 3 == 0 ? p.Mark : null,
                Droop = p.Dice.Between(0.1f, 0.75f),
                Pieces = 5,
            };
            Leaves.Add(mesh, Around(way, p.Size * 0.05f), way, leaf);
        }
    }

    /// <summary>A direction around the foot, by turns of the golden angle.</summary>
    internal static Vector3 Way(int i, float rise, Dice dice)
    {
        var turn = (i * GoldenAngle) + dice.Between(-0.12f, 0.12f);
        var up = rise + dice.Between(-0.06f, 0.06f);
        var (sin, cos) = MathF.SinCos(turn);
        var (high, flat) = MathF.SinCos(up);
        return new(cos * flat, sin * flat, high);
    }

    private static Vector3 Around(Vector3 way, float far) => new(way.X * far, way.Y * far, 0);

    private static float Broad(LeafShape shape) =>
        shape switch
        {
            LeafShape.Round => 0.36f,
            LeafShape.Heart => 0.4f,
            LeafShape.Lance => 0.18f,
            LeafShape.Arrow => 0.26f,
            _ => 0.26f,
        };

    /// <summary>Dark bands across a strap.</summary>
    private static void Bands(Mesh mesh, Vector3 foot, Vector3 way, in LeafForm leaf)
    {
        var spine = Leaves.Spine(foot, way, leaf.Length, leaf.Droop, leaf.Pieces);
        for (var k = 1; k < 7; k++)
        {
            var (at, along) = Leaves.On(spine, k / 8f);
            var side = Leaves.Side(along, Vector3.UnitZ) * (leaf.Width * 0.46f);
            var above = Vector3.Cross(Vector3.Normalize(side), along);
            var lift = above * (leaf.Width * 0.46f * leaf.Fold);
            var half = along * (leaf.Length * 0.026f);
            var up = above * 0.0006f;
            foreach (var hand in new[] { -1f, 1f })
            {
                var rim = at + (side * hand) + lift + up - (half * 0.8f);
                mesh.Quad(at + half + up, rim + half, rim - half, at - half + up, Hue.Of("dark bands"));
            }
        }
    }

    /// <summary>Bracts on a stem over the cup.</summary>
    private static void Spike(Mesh mesh, PlantPlace p)
    {
        if (p.Flower is not { } color)
        {
            return;
        }

        Vector3[] stem = [Vector3.Zero, new(0, 0, p.Size * 0.5f), new(0.01f * p.Size, 0, p.Size * 0.86f)];
        Leaves.Stalk(mesh, stem, p.Size * 0.03f, Hue.Times(color, 0.8f));
        for (var i = 0; i < 12; i++)
        {
            var t = i / 11f;
            var way = Way(i, 0.5f + (0.9f * t), p.Dice);
            var bract = new LeafForm(LeafShape.Lance, p.Size * (0.26f - (0.1f * t)), p.Size * 0.085f)
            {
                Color = Hue.Times(color, p.Dice.About(0.08f)),
                Droop = 0.3f,
                Pieces = 4,
            };
            Leaves.Add(mesh, new(0, 0, p.Size * (0.56f + (0.26f * t))), way, bract);
        }
    }

    /// <summary>Small flowers on stalks of their own.</summary>
    internal static void Flowers(Mesh mesh, PlantPlace p, int count)
    {
        if (p.Flower is not { } color)
        {
            return;
        }

        for (var i = 0; i < count; i++)
        {
            var way = Way(i, 1.15f, p.Dice);
            var stalk = Leaves.Spine(Vector3.Zero, way, p.Size * p.Dice.Between(0.82f, 1.02f), 0.5f, 5);
            Leaves.Stalk(mesh, stalk, p.Size * 0.014f, Hue.Of("light green"));
            if (p.Plant.Leaf == "lance" && p.Plant.Colors[1] == "white flower")
            {
                var spathe = new LeafForm(LeafShape.Heart, p.Size * 0.24f, p.Size * 0.13f)
                {
                    Color = color,
                    Droop = 0.2f,
                };
                Leaves.Add(
                    mesh,
                    stalk[^1],
                    new(way.X * 0.5f, way.Y * 0.5f, 1),
                    spathe,
                    new(-way.X, -way.Y, 0.2f)
                );
                continue;
            }

            Blossom(mesh, stalk[^1], p.Size * 0.1f, color);
        }
    }

    /// <summary>Five petals.</summary>
    internal static void Blossom(Mesh mesh, Vector3 at, float size, Vector3 color)
    {
        for (var k = 0; k < 5; k++)
        {
            var (sin, cos) = MathF.SinCos(k * MathF.Tau / 5);
            var petal = new LeafForm(LeafShape.Round, size, size * 0.8f)
            {
                Color = color,
                Droop = 0.2f,
                Pieces = 3,
                Fold = 0.1f,
            };
            Leaves.Add(mesh, at, new(cos, sin, 0.35f), petal);
        }
    }
}
