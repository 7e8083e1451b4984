using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>Wood, cork and stone, each in the frame that the drawings give it.</summary>
internal sealed class Wood(Scene scene)
{
    private const int Sides = 9;
    private static readonly Vector3 Bark = Hue.Of(0x97775A);

    /// <summary>Draws all pieces.</summary>
    public void Draw(Mesh mesh)
    {
        foreach (var piece in scene.Pieces)
        {
            var body = new Mesh(hasSides: true);
            var key = scene.Design.Hardscape[piece.Number - 1].Material;
            var dice = new Dice($"{key} {piece.Number}");
            Draw(body, piece, key, dice);
            mesh.Take(body, Kept);
        }
    }

    /// <summary>A short branch that carries a plant which hangs away from any wall.</summary>
    public static void Mount(Mesh mesh, Vector3 from, Vector3 to, Dice dice)
    {
        var body = new Mesh(hasSides: true);
        Tube(
            body,
            [from, Vector3.Lerp(from, to, 0.5f) + new Vector3(0, 0, 0.012f), to],
            (0.013f, 0.009f),
            (Bark, 0.1f),
            dice
        );
        mesh.Take(body);
    }

    private static void Draw(Mesh body, PieceSpot piece, string key, Dice dice)
    {
        switch (key)
        {
            case "cork-bark":
                Flat(body, piece, dice);
                break;
            case "cork-tube":
                Hollow(body, piece, dice);
                break;
            case "slate":
                Slates(body, piece, dice);
                break;
            case "hardwood-branch":
                Branches(body, piece, (Hue.Of(0x8C6F50), 3, 0.6f), dice);
                break;
            case "grapevine-wood":
                Branches(body, piece, (Hue.Of(0xA5825C), 4, 1.3f), dice);
                break;
            case "azalea-root":
                Branches(body, piece, (Hue.Of(0x9A6B4A), 8, 0.8f), dice);
                break;
            case "driftwood":
                Branches(body, piece, (Hue.Of(0x93826C), 4, 0.9f), dice);
                break;
            case "lava-stone":
                Rock(body, piece, (Hue.Of(0x6B4A44), 0.3f), dice);
                break;
            case "limestone":
                Rock(body, piece, (Hue.Of(0xC6BDA6), 0.24f), dice);
                break;
            default:
                if (piece.IsStone)
                {
                    Rock(body, piece, (Hue.Of(0x9B9A95), 0.12f), dice);
                }
                else
                {
                    Branches(body, piece, (Bark, 3, 0.7f), dice);
                }

                break;
        }
    }

    private Vector3 Kept(Vector3 p)
    {
        var t = scene.Terrain;
        return new(
            Math.Clamp(p.X, (float)t.Left + 0.002f, (float)t.Right - 0.002f),
            Math.Clamp(p.Y, (float)t.Front + 0.002f, (float)t.Back - 0.002f),
            Math.Clamp(p.Z, 0.001f, (float)t.Height - 0.003f)
        );
    }

    private static Vector3 At(PieceSpot piece, float x, float y, float z) =>
        new(
            (float)(piece.X + (piece.Length * (x - 0.5f))),
            (float)(piece.Y + (piece.Depth * (y - 0.5f))),
            (float)(piece.Foot + (piece.Height * z))
        );

    /// <summary>A half pipe of bark, rough outside, its hollow down.</summary>
    private static void Flat(Mesh body, PieceSpot piece, Dice dice)
    {
        const int Long = 12;
        const int Round = 9;
        var outer = new Vector3[Long + 1, Round + 1];
        var inner = new Vector3[Long + 1, Round + 1];
        for (var i = 0; i <= Long; i++)
        {
            var t = i / (float)Long;
            var ends = 0.82f + (0.18f * MathF.Sin(MathF.PI * t));
            for (var k = 0; k <= Round; k++)
            {
                var (sin, cos) = MathF.SinCos(MathF.PI * (0.04f + (0.92f * k / Round)));
                var rough = dice.About(0.07f) * ends;
                var x = t + (i is 0 or Long ? dice.Between(-0.025f, 0.025f) : 0);
                outer[i, k] = At(
                    piece,
                    Math.Clamp(x, 0, 1),
                    0.5f - (0.5f * cos * rough),
                    Math.Min(1, sin * rough)
                );
                inner[i, k] = At(piece, Math.Clamp(x, 0, 1), 0.5f - (0.42f * cos * ends), sin * 0.86f * ends);
            }
        }

        float[] streaks = [.. Enumerable.Range(0, Round).Select(_ => dice.Between(0.84f, 1.18f))];
        for (var i = 0; i < Long; i++)
        {
            for (var k = 0; k < Round; k++)
            {
                body.Quad(
                    outer[i, k],
                    outer[i, k + 1],
                    outer[i + 1, k + 1],
                    outer[i + 1, k],
                    Hue.Times(Bark, streaks[k] * dice.About(0.06f))
                );
                body.Quad(
                    inner[i, k],
                    inner[i + 1, k],
                    inner[i + 1, k + 1],
                    inner[i, k + 1],
                    Hue.Times(Bark, 0.55f)
                );
                body.Edge(outer[i, k], outer[i + 1, k], Hue.Times(Bark, 0.4f), dice.Between(0.1f, 0.6f));
            }
        }

        Rim(body, outer, inner);
    }

    /// <summary>Sawn ends and edges of a half pipe.</summary>
    private static void Rim(Mesh body, Vector3[,] outer, Vector3[,] inner)
    {
        var (last, round) = (outer.GetLength(0) - 1, outer.GetLength(1) - 1);
        foreach (var i in new[] { 0, last })
        {
            for (var k = 0; k < round; k++)
            {
                body.Quad(outer[i, k], outer[i, k + 1], inner[i, k + 1], inner[i, k], Hue.Of(0xB48E63));
                body.Edge(outer[i, k], outer[i, k + 1], Hue.Ink, 0.7f);
                body.Edge(inner[i, k], inner[i, k + 1], Hue.Ink, 0.5f);
            }
        }

        foreach (var k in new[] { 0, round })
        {
            for (var i = 0; i < last; i++)
            {
                body.Quad(outer[i, k], outer[i + 1, k], inner[i + 1, k], inner[i, k], Hue.Of(0xA07E58));
                body.Edge(outer[i, k], outer[i + 1, k], Hue.Ink, 0.7f);
            }
        }
    }

    /// <summary>A tube of bark, open at both ends.</summary>
    private static void Hollow(Mesh body, PieceSpot piece, Dice dice)
    {
        var long_ = (float)piece.Length;
        var radius = (float)Math.Min(piece.Height, piece.Depth) / 2;
        const int Rings = 9;
        var outer = new Vector3[Rings + 1][];
        var inner = new Vector3[Rings + 1][];
        for (var r = 0; r <= Rings; r++)
        {
            outer[r] = new Vector3[Sides + 3];
            inner[r] = new Vector3[Sides + 3];
            for (var s = 0; s < Sides + 3; s++)
            {
                var (sin, cos) = MathF.SinCos(s * MathF.Tau / (Sides + 3));
                var rough = dice.About(0.09f);
                var along = long_ * ((r / (float)Rings) - 0.5f) * (r is 0 or Rings ? dice.About(0.02f) : 1);
                var a = new Vector3(cos * radius * rough, sin * radius * rough, along);
                var b = new Vector3(cos * radius * 0.78f, sin * radius * 0.78f, along);
                (outer[r][s], inner[r][s]) = (Set(a), Set(b));
            }
        }

        Vector3 Set(Vector3 v) =>
            new((float)piece.X + v.Z, (float)piece.Y + v.X, (float)(piece.Foot + (piece.Height / 2)) + v.Y);

        float[] streaks = [.. Enumerable.Range(0, Sides + 3).Select(_ => dice.Between(0.84f, 1.18f))];
        body.Skin(outer, (_, s) => Hue.Times(Bark, streaks[s] * dice.About(0.06f)), isCapped: false);
        for (var r = 0; r < Rings; r++)
        {
            for (var s = 0; s < Sides + 3; s++)
            {
                var t = (s + 1) % (Sides + 3);
                body.Quad(inner[r][t], inner[r][s], inner[r + 1][s], inner[r + 1][t], Hue.Times(Bark, 0.5f));
                body.Edge(outer[r][s], outer[r + 1][s], Hue.Times(Bark, 0.4f), dice.Between(0, 0.55f));
            }
        }

        foreach (var r in new[] { 0, Rings })
        {
            for (var s = 0; s < Sides + 3; s++)
            {
                var t = (s + 1) % (Sides + 3);
                body.Quad(outer[r][s], outer[r][t], inner[r][t], inner[r][s], Hue.Of(0xB48E63));
                body.Edge(inner[r][s], inner[r][t], Hue.Ink, 0.55f);
                body.Edge(outer[r][s], outer[r][t], Hue.Ink, 0.6f);
            }
        }
    }

    /// <summary>A trunk with limbs.</summary>
    private static void Branches(
        Mesh body,
        PieceSpot piece,
        (Vector3 Color, int Limbs, float Twist) kind,
        Dice dice
    )
    {
        var thick = (float)Math.Min(piece.Height * 0.3, Math.Min(piece.Depth * 0.3, piece.Length * 0.09));
        var trunk = Line(piece, (0.02f, 0.5f, 0.12f), (0.98f, 0.5f, 0.6f), kind.Twist, dice);
        Tube(body, trunk, (thick, thick * 0.5f), (kind.Color, 0.16f), dice);
        for (var i = 0; i < kind.Limbs; i++)
        {
            var from = Leaves.On(trunk, 0.15f + (0.7f * i / Math.Max(1, kind.Limbs - 1))).At;
            var ahead = i % 2 == 0 ? 1 : -1;
            var to = At(
                piece,
                Math.Clamp(
                    0.15f + (0.7f * i / Math.Max(1, kind.Limbs - 1)) + dice.Between(0.05f, 0.3f),
                    0.02f,
                    0.98f
                ),
                Math.Clamp(0.5f + (ahead * dice.Between(0.2f, 0.48f)), 0.03f, 0.97f),
                dice.Between(0.45f, 0.99f)
            );
            var bend =
                Vector3.Lerp(from, to, 0.5f)
                + (
                    new Vector3(dice.Between(-1, 1), dice.Between(-1, 1), dice.Between(0, 1))
                    * (0.06f * kind.Twist * (float)piece.Height)
                );
            Tube(body, [from, bend, to], (thick * 0.55f, thick * 0.16f), (kind.Color, 0.14f), dice);
        }
    }

    private static Vector3[] Line(
        PieceSpot piece,
        (float X, float Y, float Z) from,
        (float X, float Y, float Z) to,
        float twist,
        Dice dice
    )
    {
        const int Pieces = 7;
        var line = new Vector3[Pieces + 1];
        for (var i = 0; i <= Pieces; i++)
        {
            var t = i / (float)Pieces;
            var loose = 0.12f * twist * MathF.Sin(MathF.PI * t);
            line[i] = At(
                piece,
                from.X + ((to.X - from.X) * t),
                from.Y + ((to.Y - from.Y) * t) + dice.Between(-loose, loose),
                from.Z + ((to.Z - from.Z) * t) + dice.Between(-loose, loose)
            );
        }

        return line;
    }

    /// <summary>A round limb along a line, thinner toward its end, with lines of bark.</summary>
    private static void Tube(
        Mesh body,
        Vector3[] line,
        (float From, float To) radius,
        (Vector3 Color, float Rough) skin,
        Dice dice
    )
    {
        const int Round = 7;
        var rings = new Vector3[line.Length][];
        for (var i = 0; i < line.Length; i++)
        {
            var t = i / (line.Length - 1f);
            var along = Vector3.Normalize(line[Math.Min(i + 1, line.Length - 1)] - line[Math.Max(0, i - 1)]);
            var side = Leaves.Side(along, Vector3.UnitZ);
            var up = Vector3.Cross(side, along);
            var r = radius.From + ((radius.To - radius.From) * t);
            rings[i] = new Vector3[Round];
            for (var s = 0; s < Round; s++)
            {
                var (sin, cos) = MathF.SinCos(s * MathF.Tau / Round);
                rings[i][s] = line[i] + (((side * cos) + (up * sin)) * (r * dice.About(skin.Rough)));
            }
        }

        body.Skin(rings, (_, _) => Hue.Times(skin.Color, dice.Between(0.9f, 1.12f)));
        for (var i = 0; i + 1 < rings.Length; i++)
        {
            for (var s = 0; s < Round; s += 2)
            {
                body.Edge(
                    rings[i][s],
                    rings[i + 1][s],
                    Hue.Times(skin.Color, 0.42f),
                    dice.Between(0.05f, 0.5f)
                );
            }
        }
    }

    /// <summary>Flat plates, the upper ones smaller.</summary>
    private static void Slates(Mesh body, PieceSpot piece, Dice dice)
    {
        const int Plates = 4;
        for (var i = 0; i < Plates; i++)
        {
            var (low, high) = (i / (float)Plates, (i + 0.93f) / Plates);
            var small = 1 - (0.16f * i);
            var (dx, dy) = (dice.Between(-0.07f, 0.07f), dice.Between(-0.07f, 0.07f));
            Vector3[] Ring(float z) =>
                [
                    .. new[]
                    {
                        (0.1f, 0f),
                        (0.86f, 0.04f),
                        (1f, 0.5f),
                        (0.8f, 1f),
                        (0.25f, 0.94f),
                        (0f, 0.55f),
                    }.Select(c =>
                        At(
                            piece,
                            Math.Clamp(0.5f + ((c.Item1 - 0.5f) * small) + dx, 0, 1),
                            Math.Clamp(0.5f + ((c.Item2 - 0.5f) * small) + dy, 0, 1),
                            z
                        )
                    ),
                ];
            var color = Hue.Times(Hue.Of(0x6F7A80), dice.About(0.12f));
            var (a, b) = (Ring(low), Ring(high));
            body.Skin([a, b], (_, s) => Hue.Times(color, 0.9f + (0.03f * s)));
            body.Outline(b, true, Hue.Ink, 0.5f);
            for (var k = 0; k < 6; k++)
            {
                body.Edge(a[k], b[k], Hue.Ink, 0.3f);
            }
        }
    }

    /// <summary>A stone: a lump with flat faces.</summary>
    private static void Rock(Mesh body, PieceSpot piece, (Vector3 Color, float Rough) kind, Dice dice)
    {
        const int Rings = 6;
        var rings = new Vector3[Rings + 1][];
        for (var r = 0; r <= Rings; r++)
        {
            rings[r] = new Vector3[Sides];
            var (sin, cos) = MathF.SinCos((-MathF.PI / 2) + (MathF.PI * r / Rings));
            for (var s = 0; s < Sides; s++)
            {
                var (y, x) = MathF.SinCos(s * MathF.Tau / Sides);
                var rough = r is 0 or Rings ? 1 : 1 - (kind.Rough * dice.Next());
                rings[r][s] = At(
                    piece,
                    0.5f + (0.5f * x * MathF.Pow(MathF.Abs(cos), 0.7f) * rough),
                    0.5f + (0.5f * y * MathF.Pow(MathF.Abs(cos), 0.7f) * rough),
                    0.5f + (0.5f * sin * (r is 0 or Rings ? 1 : dice.Between(1 - (kind.Rough * 0.4f), 1)))
                );
            }
        }

        body.Skin(rings, (_, _) => Hue.Times(kind.Color, dice.Between(0.84f, 1.14f)), isCapped: false);
        for (var r = 1; r < Rings; r++)
        {
            for (var s = 0; s < Sides; s++)
            {
                if (dice.Next() < 0.4f)
                {
                    body.Edge(rings[r][s], rings[r][(s + 1) % Sides], Hue.Times(kind.Color, 0.5f), 0.4f);
                }

                if (kind.Rough > 0.2f && dice.Next() < 0.6f)
                {
                    var at = Vector3.Lerp(rings[r][s], rings[r][(s + 1) % Sides], dice.Next());
                    body.Edge(at, at + new Vector3(0.003f, 0, 0.002f), Hue.Times(kind.Color, 0.35f), 0.7f);
                }
            }
        }
    }
}
