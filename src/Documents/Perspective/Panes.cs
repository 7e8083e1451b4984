using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Quantities.Openings;

namespace Litterfall.Documents.Perspective;

/// <summary>Panes, doors, vents and lid, from the plans that the glass is cut by.</summary>
internal sealed class Panes
{
    private const float Clearness = 0.07f;
    private static readonly Vector3 Sheet = Hue.Of(0xD8EAE2);
    private static readonly Vector3 Green = Hue.Of(0x8CC0A4);
    private static readonly Vector3 Ink = Hue.Of(0x3C6B5A);
    private static readonly Vector3 Plastic = Hue.Of(0xA9B3AC);
    private static readonly Vector3 Gauze = Hue.Of(0x59635F);
    private readonly Scene scene;
    private readonly float wall;
    private readonly float bottom;
    private readonly Vector3 size;

    /// <summary>The panes of a box.</summary>
    public Panes(Scene scene)
    {
        this.scene = scene;
        wall = (float)(scene.Numbers.Box.Walls?.Si ?? 0.004);
        bottom = (float)(scene.Numbers.Box.Base?.Si ?? wall);
        size = new((float)scene.Terrain.Length, (float)scene.Terrain.DepthOfBox, (float)scene.Terrain.Height);
    }

    /// <summary>
    /// Panes with their names, each a film; and what of them hides things: plastic, mesh, bars.
    /// </summary>
    public (List<(string Name, Mesh Film)> Films, Mesh Solid) Draw()
    {
        var films = new List<(string, Mesh)>();
        var solid = new Mesh();
        var floor = new Mesh();
        Slab(floor, new(-wall, -wall, -bottom), new(size.X + wall, size.Y + wall, 0));
        films.Add(("base", floor));
        foreach (var side in new[] { Side.Back, Side.Left, Side.Right, Side.Front })
        {
            var film = new Mesh();
            var plan = WallPlan.Of(scene.Numbers.Design, scene.Numbers.Box, side);
            foreach (var cell in plan.Cells)
            {
                Cell(film, solid, (cell, plan));
            }

            films.Add((side.ToString().ToLowerInvariant(), film));
        }

        films.Add(("lid", Top(solid)));
        Rim(solid);
        return (films, solid);
    }

    /// <summary>Two slanting streaks, as glass is drawn.</summary>
    public Mesh Gleam()
    {
        var mesh = new Mesh();
        var (x, z) = (size.X, size.Z);
        var y = -wall - 0.0005f;
        foreach (var (from, wide) in new[] { (0.1f, 0.09f), (0.23f, 0.03f) })
        {
            var slant = 0.34f * z;
            var first = mesh.Point(new((from * x) + slant, y, z * 0.97f), Vector3.One, 0.17f);
            mesh.Point(new(((from + wide) * x) + slant, y, z * 0.97f), Vector3.One, 0.17f);
            mesh.Point(new((from + wide) * x, y, z * 0.3f), Vector3.One, 0);
            mesh.Point(new(from * x, y, z * 0.3f), Vector3.One, 0);
            mesh.Triangle(first, first + 1, first + 2);
            mesh.Triangle(first, first + 2, first + 3);
        }

        return mesh;
    }

    /// <summary>Fog on a pane: white film, thicker near its foot.</summary>
    /// <param name="side">The pane.</param>
    /// <param name="share">How much of the hour it was fogged, 0 to 1.</param>
    public Mesh Fog(Side side, float share)
    {
        const int Across = 18;
        const int Up = 12;
        var mesh = new Mesh();
        var dice = new Dice($"fog {side}");
        var low = (float)(scene.Terrain.Drainage * 0.2);
        var first = mesh.Points.Count;
        for (var j = 0; j <= Up; j++)
        {
            for (var i = 0; i <= Across; i++)
            {
                var (u, v) = (i / (float)Across, j / (float)Up);
                var rim = MathF.Min(1, 6 * MathF.Min(MathF.Min(u, 1 - u), MathF.Min(v + 0.08f, 1 - v)));
                var alpha = share * (0.3f + (0.34f * (1 - v))) * dice.About(0.14f) * (0.35f + (0.65f * rim));
                mesh.Point(On(side, u, low + (v * (size.Z - low)), -0.0006f), Hue.Of(0xF4F6F3), alpha);
            }
        }

        for (var j = 0; j < Up; j++)
        {
            for (var i = 0; i < Across; i++)
            {
                var a = first + i + (j * (Across + 1));
                mesh.Triangle(a, a + 1, a + Across + 2);
                mesh.Triangle(a, a + Across + 2, a + Across + 1);
            }
        }

        return mesh;
    }

    /// <summary>A place on a wall: share along it, height, and how far out from its inner face, m.</summary>
    private Vector3 On(Side side, float share, float up, float out_) =>
        side switch
        {
            Side.Front => new(share * size.X, -out_, up),
            Side.Back => new(share * size.X, size.Y + out_, up),
            Side.Left => new(-out_, share * size.Y, up),
            _ => new(size.X + out_, share * size.Y, up),
        };

    private void Cell(Mesh film, Mesh solid, (OpeningCell Cell, OpeningPlan Plan) at)
    {
        var (cell, plan) = at;
        var run = plan.Side is Side.Left or Side.Right ? size.Y : size.X;
        var shift = (run - (float)plan.Length.Si) / 2;
        var rise = size.Z - (float)plan.Width.Si;
        var ends = plan.Side is Side.Front or Side.Back && shift > -1e-4f ? wall : 0;
        var from = (float)cell.Left.Si + shift - (cell.Left.Si < 1e-6 ? ends : 0);
        var to = (float)cell.RightSi + shift + (cell.RightSi > plan.Length.Si - 1e-6 ? ends : 0);
        var (low, high) = ((float)cell.Low.Si + rise, (float)cell.HighSi + rise);
        var (a, b) = Between(plan.Side, (from, to), (low, high), (0, wall));
        switch (cell.Kind)
        {
            case CellKind.Doors:
                Doors(film, solid, (plan.Side, from, to, low, high));
                break;
            case CellKind.Mesh:
                Net(solid, (plan.Side, from, to, low, high));
                break;
            case CellKind.Bar
            or CellKind.VentStrip
            or CellKind.HoseStrip when plan.Side != Side.Front || cell.Kind != CellKind.Bar:
                solid.Block(a, b, Plastic, 0.5f);
                break;
            default:
                Slab(film, a, b);
                break;
        }

        foreach (var hole in cell.Openings)
        {
            var left = (float)hole.Left.Si + shift;
            var foot = (float)hole.Low.Si + rise;
            Net(solid, (plan.Side, left, left + (float)hole.Length.Si, foot, foot + (float)hole.Width.Si));
        }
    }

    /// <summary>Two opposite corners of a part of a wall between two distances outward.</summary>
    private (Vector3 Low, Vector3 High) Between(
        Side side,
        (float From, float To) along,
        (float Low, float High) up,
        (float In, float Out) deep
    ) =>
        side switch
        {
            Side.Front => (new(along.From, -deep.Out, up.Low), new(along.To, -deep.In, up.High)),
            Side.Back => (
                new(along.From, size.Y + deep.In, up.Low),
                new(along.To, size.Y + deep.Out, up.High)
            ),
            Side.Left => (new(-deep.Out, along.From, up.Low), new(-deep.In, along.To, up.High)),
            Side.Right => (
                new(size.X + deep.In, along.From, up.Low),
                new(size.X + deep.Out, along.To, up.High)
            ),
            _ => (new(along.From, up.Low, size.Z - deep.Out), new(along.To, up.High, size.Z - deep.In)),
        };

    private void Doors(Mesh film, Mesh solid, (Side Side, float From, float To, float Low, float High) at)
    {
        var doors = scene.Design.Box.Doors;
        var kind = doors?.Kind ?? DoorKind.Hinged;
        var count = Math.Clamp(doors?.Count ?? (kind == DoorKind.LiftOut ? 1 : 2), 1, 8);
        var thick = Math.Min((float)(doors?.Thickness?.Si ?? wall), wall);
        var lap = kind == DoorKind.Sliding ? (float)(doors?.Overlap?.Si ?? 0.025) : 0;
        var each = (at.To - at.From + (lap * (count - 1))) / count;
        for (var i = 0; i < count; i++)
        {
            var from = at.From + (i * (each - lap)) + (i > 0 && lap == 0 ? 0.001f : 0);
            var out_ = kind == DoorKind.Sliding && i % 2 == 1 ? thick + 0.001f : 0;
            var (a, b) = Between(
                at.Side,
                (from, Math.Min(at.To, from + each - (lap == 0 ? 0.001f : 0))),
                (at.Low + 0.001f, at.High - 0.001f),
                (out_, out_ + thick)
            );
            Slab(film, a, b);
            var isLeft = i % 2 == 0;
            var x =
                kind == DoorKind.LiftOut ? (a.X + b.X) / 2
                : (kind == DoorKind.Sliding) == isLeft ? a.X + 0.022f
                : b.X - 0.022f;
            var z = kind == DoorKind.LiftOut ? b.Z - 0.02f : a.Z + (0.42f * (b.Z - a.Z));
            Knob(solid, new(x, a.Y, z));
        }

        if (kind == DoorKind.Sliding)
        {
            foreach (var z in new[] { at.Low - 0.001f, at.High - 0.007f })
            {
                var (a, b) = Between(at.Side, (at.From, at.To), (z, z + 0.008f), (0, (2 * thick) + 0.002f));
                solid.Block(a, b, Plastic, 0.5f);
            }
        }
    }

    private static void Knob(Mesh solid, Vector3 at)
    {
        const int Sides = 10;
        Vector3[] Ring(float y, float r) =>
            [
                .. Enumerable
                    .Range(0, Sides)
                    .Select(s => MathF.SinCos(s * MathF.Tau / Sides))
                    .Select(t => at + new Vector3(t.Cos * r, y, t.Sin * r)),
            ];
        var knob = new Mesh(hasSides: true);
        knob.Skin([Ring(-0.009f, 0.0055f), Ring(0, 0.0045f)], (_, _) => Hue.Of(0x93A19B));
        solid.Take(knob);
    }

    /// <summary>A pane: its faces nearly clear, its edges green.</summary>
    private static void Slab(Mesh film, Vector3 low, Vector3 high)
    {
        var c = Mesh.Corners(low, high);
        var span = high - low;
        (int, int, int, int, int Axis)[] faces =
        [
            (0, 3, 2, 1, 2),
            (4, 5, 6, 7, 2),
            (0, 1, 5, 4, 1),
            (2, 3, 7, 6, 1),
            (1, 2, 6, 5, 0),
            (3, 0, 4, 7, 0),
        ];
        var thin =
            span.X <= span.Y && span.X <= span.Z ? 0
            : span.Y <= span.Z ? 1
            : 2;
        var isFirst = true;
        foreach (var (i, j, k, l, axis) in faces)
        {
            if (axis != thin)
            {
                film.Quad(c[i], c[j], c[k], c[l], Green, 0.62f);
            }
            else if (isFirst)
            {
                // One face carries the tint of both: two would double it where they lie over each other.
                film.Quad(c[i], c[j], c[k], c[l], Sheet, Clearness);
                isFirst = false;
            }
        }

        film.Frame(c, Ink, 0.62f);
    }

    /// <summary>Mesh: a dim face with a net of lines.</summary>
    private void Net(Mesh solid, (Side Side, float From, float To, float Low, float High) at)
    {
        var (a, b) = Between(at.Side, (at.From, at.To), (at.Low, at.High), (0.0005f, 0.0015f));
        solid.Block(a, b, Plastic, 0.6f);
        var (span, high) = (at.To - at.From, at.High - at.Low);
        var step = Math.Max(0.004f, Math.Min(span, high) / 16);
        for (var x = step; x < span; x += step)
        {
            Line(solid, at.Side, (at.From + x, at.Low), (at.From + x, at.High));
        }

        for (var z = step; z < high; z += step)
        {
            Line(solid, at.Side, (at.From, at.Low + z), (at.To, at.Low + z));
        }
    }

    private void Line(Mesh solid, Side side, (float Along, float Up) from, (float Along, float Up) to)
    {
        foreach (var deep in new[] { 0.0004f, 0.0016f })
        {
            var (a, _) = Between(side, (from.Along, from.Along), (from.Up, from.Up), (deep, deep));
            var (b, _) = Between(side, (to.Along, to.Along), (to.Up, to.Up), (deep, deep));
            solid.Edge(a, b, Gauze, 0.5f);
        }
    }

    /// <summary>The lid, or the glued top of a box that opens in front.</summary>
    private Mesh Top(Mesh solid)
    {
        var film = new Mesh();
        var design = scene.Numbers.Design;
        var lid = scene.Design.Lid;
        var plan = LidPlan.Of(design, scene.Numbers.Box);
        if (plan is null && scene.Design.Box.Opening == Opening.Front)
        {
            plan = WallPlan.Of(design, scene.Numbers.Box, Side.Top);
        }

        if (plan is null)
        {
            return film;
        }

        var thick = (float)(lid?.Thickness?.Si ?? (lid is null ? wall : 0.004));
        var over = (float)(lid?.Overlap?.Si ?? 0);
        var low = lid?.Overlap is null ? size.Z - thick : size.Z;
        var (x, y) = ((size.X - (float)plan.Length.Si) / 2, (size.Y - (float)plan.Width.Si) / 2);
        foreach (var cell in plan.Cells)
        {
            var a = new Vector3(x + (float)cell.Left.Si, y + (float)cell.Low.Si, low);
            var b = new Vector3(x + (float)cell.RightSi, y + (float)cell.HighSi, low + thick);
            a -= new Vector3(cell.Left.Si < 1e-6 ? over : -0.0005f, cell.Low.Si < 1e-6 ? over : -0.0005f, 0);
            b += new Vector3(
                cell.RightSi > plan.Length.Si - 1e-6 ? over : -0.0005f,
                cell.HighSi > plan.Width.Si - 1e-6 ? over : -0.0005f,
                0
            );
            LidCell(film, solid, (cell, a, b));
            foreach (var hole in cell.Openings)
            {
                Grate(
                    solid,
                    new(x + (float)hole.Left.Si, y + (float)hole.Low.Si, low - 0.001f),
                    new(
                        x + (float)(hole.Left.Si + hole.Length.Si),
                        y + (float)(hole.Low.Si + hole.Width.Si),
                        low + thick + 0.001f
                    )
                );
            }
        }

        return film;
    }

    private static void LidCell(Mesh film, Mesh solid, (OpeningCell Cell, Vector3 Low, Vector3 High) at)
    {
        switch (at.Cell.Kind)
        {
            case CellKind.Mesh:
                Grate(solid, at.Low, at.High);
                break;
            case CellKind.HoseStrip or CellKind.VentStrip or CellKind.Bar:
                solid.Block(at.Low, at.High, Plastic, 0.5f);
                break;
            default:
                Slab(film, at.Low, at.High);
                break;
        }
    }

    /// <summary>A lying mesh, seen through from above and below.</summary>
    private static void Grate(Mesh solid, Vector3 low, Vector3 high)
    {
        var step = Math.Max(0.005f, Math.Min(high.X - low.X, high.Y - low.Y) / 22);
        var c = Mesh.Corners(low, high);
        solid.Frame(c, Hue.Ink, 0.6f);
        foreach (var z in new[] { low.Z, high.Z })
        {
            for (var x = low.X; x <= high.X + 1e-5f; x += step)
            {
                solid.Edge(new(x, low.Y, z), new(x, high.Y, z), Gauze, 0.5f);
            }

            for (var y = low.Y; y <= high.Y + 1e-5f; y += step)
            {
                solid.Edge(new(low.X, y, z), new(high.X, y, z), Gauze, 0.5f);
            }
        }
    }

    /// <summary>A rim that narrows the top opening.</summary>
    private void Rim(Mesh solid)
    {
        if (scene.Design.Box.Rim is not { } typed)
        {
            return;
        }

        const float Tall = 0.012f;
        var rim = (float)typed.Si;
        var dark = Hue.Of(0x4A524F);
        var (low, high) = (size.Z - Tall, size.Z + 0.002f);
        var (x, y) = (size.X, size.Y);
        var out_ = wall + 0.0015f;
        solid.Block(new(-out_, -out_, low), new(x + out_, rim, high), dark, 0.6f);
        solid.Block(new(-out_, y - rim, low), new(x + out_, y + out_, high), dark, 0.6f);
        solid.Block(new(-out_, rim, low), new(rim, y - rim, high), dark, 0.6f);
        solid.Block(new(x - rim, rim, low), new(x + out_, y - rim, high), dark, 0.6f);
    }
}
