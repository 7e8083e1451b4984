using System.Numerics;
using Litterfall.Documents.Shapes;
using Litterfall.Documents.Views;
using Litterfall.Domain;

namespace Litterfall.Documents.Perspective;

/// <summary>A plant at its place and size.</summary>
internal static class PlantFigure
{
    /// <summary>Lean of a plant that hangs on a wall, radians from upright.</summary>
    private const float Lean = 0.75f;

    private const float HeadMeters = 0.012f;

    /// <summary>Draws a plant into the box.</summary>
    /// <param name="mesh">Takes it.</param>
    /// <param name="p">The plant.</param>
    /// <param name="design">The design.</param>
    public static void Add(Mesh mesh, PlantPlace p, Design design)
    {
        switch (p.Plant.Habit)
        {
            case PlantHabit.Shingling or PlantHabit.Vine:
                var climber = new Mesh();
                Stems.Climb(climber, p, design, p.Plant.Habit == PlantHabit.Shingling);
                mesh.Take(climber, p.Kept);
                return;
            case PlantHabit.Creeping:
                var creeper = new Mesh();
                Covers.Creeping(creeper, p);
                mesh.Take(creeper, p.Kept);
                return;
            default:
                Stand(mesh, p);
                return;
        }
    }

    private static void Stand(Mesh mesh, PlantPlace p)
    {
        var local = new Mesh();
        Shape(local, p);
        if (local.Points.Count == 0)
        {
            return;
        }

        var isHanging = p.Plant.Habit == PlantHabit.Trailing;
        var scale = isHanging ? Hung(local, p) : Risen(local, p);
        var turn = p.Dice.Between(0, MathF.Tau);
        var lean = p.Plant.Spot.Mounted && !isHanging && p.Plant.Habit != PlantHabit.Antler ? Lean : 0;
        var (sin, cos) = MathF.SinCos(turn);
        var (over, upright) = MathF.SinCos(lean);
        var squeeze = isHanging ? 0.5f : 1f;
        mesh.Take(local, v =>
        {
            var x = ((v.X * cos) - (v.Y * sin)) * squeeze;
            var y = ((v.X * sin) + (v.Y * cos)) * squeeze;
            var moved = new Vector3(x, (y * upright) - (v.Z * over), (v.Z * upright) + (y * over)) * scale;
            return p.Kept(p.Foot + moved);
        });
    }

    /// <summary>As long as the plant is, or as there is room below it.</summary>
    private static float Hung(Mesh local, PlantPlace p)
    {
        var long_ = -local.Points.Min(v => v.Z);
        var room = Math.Max(0.02f, p.Foot.Z - p.Ground(p.Foot.X, p.Foot.Y));
        var wanted = Math.Min(p.Size, room);
        return long_ > wanted ? wanted / long_ : 1;
    }

    /// <summary>
    /// As high as the plant is, rosettes as high or wide; no higher than there is room under the lid.
    /// </summary>
    private static float Risen(Mesh local, PlantPlace p)
    {
        var tall = local.Points.Max(v => v.Z);
        var wide = p.Plant.Habit is PlantHabit.Tank or PlantHabit.Star or PlantHabit.Air or PlantHabit.Nest
            ? 2 * local.Points.Max(v => MathF.Sqrt((v.X * v.X) + (v.Y * v.Y)))
            : 0;
        var room = Math.Max(0.02f, (float)p.Terrain.Height - HeadMeters - p.Foot.Z);
        return Math.Min(p.Size / Math.Max(1e-4f, Math.Max(tall, wide)), room / Math.Max(1e-4f, tall));
    }

    private static void Shape(Mesh mesh, PlantPlace p)
    {
        Action<Mesh, PlantPlace> draw = p.Plant.Habit switch
        {
            PlantHabit.Tank => Rosettes.Tank,
            PlantHabit.Star => Rosettes.Star,
            PlantHabit.Air => Rosettes.Air,
            PlantHabit.Nest => Rosettes.Nest,
            PlantHabit.Tuft => Rosettes.Tuft,
            PlantHabit.Grass => Rosettes.Grass,
            PlantHabit.Fern => Stems.Fern,
            PlantHabit.Antler => Stems.Antler,
            PlantHabit.Bush => Stems.Bush,
            PlantHabit.Cane => Stems.Cane,
            PlantHabit.Trailing => Stems.Trailing,
            PlantHabit.Mat => Covers.Mat,
            PlantHabit.Moss => Covers.Moss,
            _ => Rosettes.Leafy,
        };
        draw(mesh, p);
    }
}
