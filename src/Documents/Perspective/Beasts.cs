using System.Numerics;
using Litterfall.Documents.Shapes;
using Litterfall.Documents.Views;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>Animals at their true size, as simple bodies by kind; where they sit is chance.</summary>
internal sealed class Beasts(Scene scene, LitterFigure litter)
{
    private const int MostDrawn = 24;
    private readonly Terrain terrain = scene.Terrain;

    /// <summary>Draws all residents.</summary>
    public void Draw(Mesh mesh)
    {
        for (var i = 0; i < scene.Design.Animals.Count; i++)
        {
            var entry = scene.Numbers.Design.Entry<AnimalEntry>(
                FormattableString.Invariant($"animals[{i}].animal")
            );
            for (var k = 0; k < Math.Min(scene.Design.Animals[i].Count, MostDrawn); k++)
            {
                var dice = new Dice($"{entry.Key} {i} {k}");
                var body = new Mesh(hasSides: true);
                var look = Look(entry);
                switch (AnimalShapes.Of(entry))
                {
                    case AnimalShape.Gecko:
                        Lizard(body, look, dice);
                        break;
                    case AnimalShape.Millipede:
                        Millipede(body, look);
                        break;
                    case AnimalShape.Crab:
                        Crab(body, look);
                        break;
                    default:
                        Frog(body, look);
                        break;
                }

                Set(mesh, body, (entry, look.Length), dice);
            }
        }
    }

    private static (float Length, Vector3 Color, Vector3 Mark) Look(AnimalEntry entry)
    {
        var words = (entry.Color?.Text ?? "brown, dark brown").Split(',', StringSplitOptions.TrimEntries);
        var color = Hue.Of(words[0]);
        return (
            (float)AnimalShapes.Length(entry),
            color,
            words.Length > 1 ? Hue.Of(words[1]) : Hue.Times(color, 0.75f)
        );
    }

    /// <summary>Puts a body on the ground, on wood, or climbers on a wall.</summary>
    private void Set(Mesh mesh, Mesh body, (AnimalEntry Entry, float Length) of, Dice dice)
    {
        var isClimbing =
            of.Entry.Habit?.Text == "climber"
            && dice.Next() < 0.6f
            && AnimalShapes.Of(of.Entry) != AnimalShape.Crab;
        var half = Math.Min(
            body.Points.Max(p => new Vector2(p.X, p.Y).Length()),
            (float)Math.Min(terrain.Right - terrain.Left, terrain.Back - terrain.Front) / 2
        );
        var x =
            (float)terrain.Left
            + half
            + (dice.Next() * Math.Max(0, (float)(terrain.Right - terrain.Left) - (2 * half)));
        var turn = dice.Between(0, MathF.Tau);
        var (sin, cos) = MathF.SinCos(turn);
        if (isClimbing)
        {
            var low = litter.Top(x, terrain.Back) + half;
            var z = low + (dice.Next() * Math.Max(0, (float)terrain.Height - half - low - 0.02f));
            var wall = (float)terrain.Back - 0.001f;
            mesh.Take(body, v =>
                new(x + (v.X * cos) - (v.Y * sin), wall - v.Z, z + (v.X * sin) + (v.Y * cos))
            );
            return;
        }

        var y =
            (float)terrain.Front
            + half
            + (dice.Next() * 0.72f * Math.Max(0, (float)(terrain.Back - terrain.Front) - (2 * half)));
        var ground = litter.Top(x, y) + 0.003f;
        foreach (var piece in scene.Pieces)
        {
            if (Math.Abs(piece.X - x) < piece.Length * 0.35 && Math.Abs(piece.Y - y) < piece.Depth * 0.3)
            {
                ground = Math.Max(ground, (float)(piece.Foot + (piece.Height * 0.97)));
            }
        }

        mesh.Take(body, v => new(x + (v.X * cos) - (v.Y * sin), y + (v.X * sin) + (v.Y * cos), ground + v.Z));
    }

    /// <summary>A frog that sits: along x, snout ahead, as long as its body.</summary>
    private static void Frog(Mesh body, (float Length, Vector3 Color, Vector3 Mark) of)
    {
        var l = of.Length;
        (float X, float Z, float Wide, float Tall)[] cuts =
        [
            (-0.5f, 0.1f, 0.05f, 0.04f),
            (-0.42f, 0.13f, 0.19f, 0.12f),
            (-0.2f, 0.22f, 0.27f, 0.19f),
            (0.08f, 0.31f, 0.25f, 0.19f),
            (0.28f, 0.36f, 0.22f, 0.14f),
            (0.43f, 0.35f, 0.15f, 0.09f),
            (0.5f, 0.33f, 0.05f, 0.04f),
        ];
        body.Skin(Lathe(cuts, l, 10), (r, s) => s is 2 or 3 && r % 2 == 1 ? of.Mark
            : s is 0 or 5 && r is 2 or 4 ? of.Mark
            : of.Color);
        foreach (var hand in new[] { -1f, 1f })
        {
            Ball(body, new(0.3f * l, hand * 0.17f * l, 0.46f * l), 0.07f * l, Hue.Of(0x1D2022));
            Limb(
                body,
                l,
                [
                    new(0.16f, hand * 0.2f, 0.26f),
                    new(0.26f, hand * 0.34f, 0.16f),
                    new(0.34f, hand * 0.32f, 0.02f),
                    new(0.46f, hand * 0.36f, 0.015f),
                ],
                (0.055f, of.Color)
            );
            Limb(
                body,
                l,
                [
                    new(-0.36f, hand * 0.16f, 0.16f),
                    new(-0.08f, hand * 0.38f, 0.2f),
                    new(-0.42f, hand * 0.4f, 0.05f),
                    new(-0.12f, hand * 0.48f, 0.015f),
                ],
                (0.085f, Vector3.Lerp(of.Color, of.Mark, 0.35f))
            );
        }
    }

    /// <summary>A gecko: body and head as long as in the library, the tail besides.</summary>
    private static void Lizard(Mesh body, (float Length, Vector3 Color, Vector3 Mark) of, Dice dice)
    {
        var l = of.Length;
        var bend = dice.Between(-0.5f, 0.5f);
        (float X, float Z, float Wide, float Tall)[] cuts =
        [
            (-1.35f, 0.03f, 0.01f, 0.01f),
            (-0.95f, 0.06f, 0.035f, 0.035f),
            (-0.5f, 0.09f, 0.06f, 0.06f),
            (-0.2f, 0.13f, 0.13f, 0.09f),
            (0.08f, 0.14f, 0.14f, 0.1f),
            (0.24f, 0.14f, 0.08f, 0.075f),
            (0.36f, 0.15f, 0.12f, 0.09f),
            (0.5f, 0.13f, 0.04f, 0.04f),
        ];
        var rings = Lathe(cuts, l, 8);
        foreach (var ring in rings)
        {
            for (var s = 0; s < ring.Length; s++)
            {
                var back = Math.Min(0, ring[s].X + (0.3f * l)) / l;
                ring[s].Y += bend * back * back * l;
            }
        }

        body.Skin(rings, (r, s) => r % 2 == 0 && s is 1 or 2 ? of.Mark : of.Color);
        foreach (var hand in new[] { -1f, 1f })
        {
            Ball(body, new(0.38f * l, hand * 0.09f * l, 0.2f * l), 0.035f * l, Hue.Of(0x1D2022));
            Limb(
                body,
                l,
                [
                    new(0.18f, hand * 0.08f, 0.12f),
                    new(0.2f, hand * 0.26f, 0.12f),
                    new(0.32f, hand * 0.34f, 0.012f),
                ],
                (0.035f, of.Color)
            );
            Limb(
                body,
                l,
                [
                    new(-0.3f, hand * 0.08f, 0.11f),
                    new(-0.2f, hand * 0.27f, 0.12f),
                    new(-0.34f, hand * 0.36f, 0.012f),
                ],
                (0.04f, of.Color)
            );
        }
    }

    private static void Millipede(Mesh body, (float Length, Vector3 Color, Vector3 Mark) of)
    {
        const int Parts = 22;
        var l = of.Length;
        var r = l * 0.045f;
        var cuts = Enumerable
            .Range(0, Parts + 1)
            .Select(i =>
                (
                    (i / (float)Parts) - 0.5f,
                    0.055f,
                    i is 0 or Parts ? 0.01f
                    : i % 2 == 0 ? 0.04f
                    : 0.046f,
                    i is 0 or Parts ? 0.01f : 0.042f
                )
            )
            .ToArray();
        var rings = Lathe(cuts, l, 8);
        foreach (var ring in rings)
        {
            for (var s = 0; s < ring.Length; s++)
            {
                ring[s].Y += MathF.Sin(ring[s].X / l * 6) * l * 0.08f;
            }
        }

        body.Skin(rings, (i, _) => i % 2 == 0 ? of.Mark : of.Color);
        for (var i = 1; i < Parts; i++)
        {
            var x = ((i / (float)Parts) - 0.5f) * l;
            var y = MathF.Sin(x / l * 6) * l * 0.08f;
            foreach (var hand in new[] { -1f, 1f })
            {
                body.Edge(
                    new(x, y + (hand * r * 0.8f), 0.03f * l),
                    new(x + (0.01f * l), y + (hand * r * 1.9f), 0.001f),
                    Hue.Ink,
                    0.8f
                );
            }
        }
    }

    /// <summary>A crab: its shell as wide as in the library.</summary>
    private static void Crab(Mesh body, (float Length, Vector3 Color, Vector3 Mark) of)
    {
        var l = of.Length;
        (float X, float Z, float Wide, float Tall)[] cuts =
        [
            (-0.42f, 0.3f, 0.25f, 0.05f),
            (-0.25f, 0.34f, 0.44f, 0.16f),
            (0.1f, 0.36f, 0.5f, 0.18f),
            (0.36f, 0.33f, 0.4f, 0.12f),
            (0.42f, 0.3f, 0.3f, 0.04f),
        ];
        body.Skin(Lathe(cuts, l, 10), (r, s) => s is 2 or 3 && r == 1 ? of.Mark : of.Color);
        foreach (var hand in new[] { -1f, 1f })
        {
            Ball(body, new(0.42f * l, hand * 0.2f * l, 0.48f * l), 0.06f * l, Hue.Of(0x1D2022));
            Limb(
                body,
                l,
                [
                    new(0.3f, hand * 0.38f, 0.3f),
                    new(0.58f, hand * 0.55f, 0.25f),
                    new(0.72f, hand * 0.28f, 0.18f),
                ],
                (0.1f, of.Mark)
            );
            for (var k = 0; k < 4; k++)
            {
                var x = 0.2f - (0.2f * k);
                Limb(
                    body,
                    l,
                    [
                        new(x, hand * 0.42f, 0.3f),
                        new(x - (0.1f * k), hand * 0.78f, 0.42f),
                        new(x - (0.14f * k), hand * 1.02f, 0.01f),
                    ],
                    (0.045f, of.Color)
                );
            }
        }
    }

    /// <summary>Rings across a body that lies along x, from shares of its length.</summary>
    private static Vector3[][] Lathe((float X, float Z, float Wide, float Tall)[] cuts, float l, int sides) =>
        [
            .. cuts.Select(c =>
                Enumerable
                    .Range(0, sides)
                    .Select(s => MathF.SinCos(s * MathF.Tau / sides))
                    .Select(t => new Vector3(
                        c.X * l,
                        c.Wide * l * t.Cos,
                        Math.Max(0.004f * l, (c.Z + (c.Tall * t.Sin)) * l)
                    ))
                    .ToArray()
            ),
        ];

    private static void Limb(Mesh body, float l, Vector3[] line, (float Thick, Vector3 Color) of)
    {
        const int Round = 6;
        var rings = new Vector3[line.Length][];
        for (var i = 0; i < line.Length; i++)
        {
            var along = Vector3.Normalize(line[Math.Min(i + 1, line.Length - 1)] - line[Math.Max(0, i - 1)]);
            var side = Leaves.Side(along, Vector3.UnitZ);
            var up = Vector3.Cross(side, along);
            var r = of.Thick * (1 - (0.5f * i / (line.Length - 1)));
            rings[i] =
            [
                .. Enumerable
                    .Range(0, Round)
                    .Select(s => MathF.SinCos(s * MathF.Tau / Round))
                    .Select(t => (line[i] + (((side * t.Cos) + (up * t.Sin)) * r)) * l)
                    .Select(p => p with { Z = Math.Max(0.0005f, p.Z) }),
            ];
        }

        body.Skin(rings, (_, _) => of.Color);
    }

    private static void Ball(Mesh body, Vector3 at, float r, Vector3 color)
    {
        Vector3[] Ring(float up, float wide) =>
            [
                .. Enumerable
                    .Range(0, 6)
                    .Select(s => MathF.SinCos(s * MathF.Tau / 6))
                    .Select(t => at + (new Vector3(t.Cos * wide, t.Sin * wide, up) * r)),
            ];
        body.Skin([Ring(-0.9f, 0.3f), Ring(0, 1), Ring(0.9f, 0.3f)], (_, _) => color);
    }
}
