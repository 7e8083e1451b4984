using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Light;

namespace Litterfall.Laboratory.Light;

/// <summary>The case of <c>lab light</c>: from the form to the engine's own box and lamps.</summary>
public sealed class LightForm
{
    private const int MostThings = 200;
    private const int MostPoints = 5_000;
    private const int MostCells = 250_000;
    private const double Beside = 1e-6;
    private static readonly NumberRange Length = new(1e-3, 20.0);
    private static readonly NumberRange Place = NumberRange.Within(100.0);
    private static readonly NumberRange Share = NumberRange.UpTo(1.0);
    private readonly TreeForm form;
    private readonly string path;
    private readonly ImmutableArray<string>.Builder notes = ImmutableArray.CreateBuilder<string>();
    private (double Length, double Depth, double Height) box;

    private LightForm(TreeForm form, string path) => (this.form, this.path) = (form, path);

    /// <summary>The checked case, or null and faults on the form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="path">The case file, from which the paths of luminaire files count.</param>
    public static LightCase? Read(TreeForm form, string path) => new LightForm(form, path).Read();

    private LightCase? Read()
    {
        if (form.Object("box", "the box") is { } sizes)
        {
            box = (
                sizes.Number("lengthM", Length),
                sizes.Number("depthM", Length),
                sizes.Number("heightM", Length)
            );
            sizes.Close();
        }

        var faces = Faces();
        var lid = Lid();
        var lamps = new LampForm(path, notes, form.IsGood ? box.Height : double.PositiveInfinity);
        var lit = form.Objects("lamps", "a lamp", MostThings)
            .SelectMany(lamp => lamps.Read(lamp))
            .ToImmutableArray();
        var blocks = form.OptionalObjects("blocks", "a block", MostThings).Select(Block).ToImmutableArray();
        var canopies = form.OptionalObjects("canopies", "a canopy", MostThings)
            .Select(Leaves)
            .ToImmutableArray();
        var points = form.OptionalObjects("points", "a point", MostPoints).Select(Point).ToImmutableArray();
        var map = Map();
        form.Close();
        if (form.IsGood && points.IsEmpty && map is null)
        {
            form.Refuse("the case asks for nothing", "points, a map, or both");
        }

        if (!form.IsGood)
        {
            return null;
        }

        var scene = new LightScene
        {
            Length = box.Length,
            Depth = box.Depth,
            Height = box.Height,
            Faces = faces,
            Blocks = blocks,
            Canopies = canopies,
        };
        return new LightCase(scene with { Lid = [lid!(scene)] }, lit, points, map, notes.ToImmutable());
    }

    private ImmutableArray<FaceFinish> Faces()
    {
        string[] names = ["left", "right", "front", "back", "floor"];
        if (form.OptionalObject("walls", "the walls") is not { } walls)
        {
            return [.. names.Select(_ => FaceFinish.Black)];
        }

        var faces = names.Select(name => Face(walls, name)).ToImmutableArray();
        walls.Close();
        return faces;
    }

    private static FaceFinish Face(TreeForm walls, string name)
    {
        var (word, inner) = walls.WordOrObject(name, "a wall", "black", "open");
        if (inner is null)
        {
            return word == "open" ? FaceFinish.Open : FaceFinish.Black;
        }

        FaceFinish? face = null;
        if (inner.OptionalObject("glass", "a pane") is { } glass)
        {
            face = Pane(glass) is { } pane ? FaceFinish.Glass(pane) : null;
        }

        if (inner.OptionalObject("diffuse", "a diffuse wall") is { } diffuse)
        {
            if (face is not null)
            {
                inner.Refuse("diffuse", "a wall is glass and diffuse at once", "one of both");
            }

            face = FaceFinish.Diffuse(diffuse.Number("reflectance", Share));
            diffuse.Close();
        }

        if (face is null && !inner.Has("glass") && !inner.Has("diffuse"))
        {
            inner.Refuse("the wall has no finish", "glass or diffuse");
        }

        inner.Close();
        return face ?? FaceFinish.Black;
    }

    private static PaneOptics? Pane(TreeForm glass)
    {
        double thickness = glass.Number("thicknessMm", NumberRange.UpTo(1000.0));
        double index = glass.Number(
            "refractiveIndex",
            new NumberRange(1.0, 5.0, TakesLowest: false),
            PaneOptics.GlassIndex
        );
        double extinction = glass.Number("extinctionPerM", NumberRange.UpTo(1e5), PaneOptics.ClearPerMeter);
        glass.Close();
        return glass.IsGood ? PaneOptics.Single(thickness / 1000.0, index, extinction) : null;
    }

    private Func<LightScene, LidPart>? Lid()
    {
        var (_, inner) = form.WordOrObject("lid", "the lid", "none");
        if (inner is null)
        {
            return scene => scene.WholeLid(LidKind.Open);
        }

        Func<LightScene, LidPart>? lid = null;
        if (inner.OptionalObject("glass", "a pane") is { } glass && Pane(glass) is { } pane)
        {
            lid = scene => scene.WholeLid(LidKind.Pane, pane);
        }

        if (inner.OptionalObject("mesh", "a mesh") is { } mesh)
        {
            double wire = 1.0 - Math.Sqrt(mesh.Number("openFraction", Share));
            mesh.Close();
            if (lid is not null)
            {
                inner.Refuse("mesh", "the lid is glass and mesh at once", "one of both");
            }

            lid = scene => scene.WholeLid(LidKind.Mesh, null, wire);
        }

        if (!inner.Has("glass") && !inner.Has("mesh"))
        {
            inner.Refuse("the lid is of nothing", "glass or mesh");
        }

        inner.Close();
        return lid;
    }

    private LightBlock Block(TreeForm f)
    {
        var block = new LightBlock(Extent(f), f.Number("reflectance", Share));
        f.Close();
        return block;
    }

    private Canopy Leaves(TreeForm f)
    {
        var canopy = new Canopy(Extent(f), f.Number("leafAreaPerM", NumberRange.UpTo(1e4)))
        {
            Projection = f.Number("g", Share, 0.5),
            Absorptance = f.Number("absorptance", Share, 0.8),
        };
        f.Close();
        return canopy;
    }

    private static Box3 Extent(TreeForm f)
    {
        var from = Three(f, "fromM", Place);
        var to = Three(f, "toM", Place);
        if (f.IsGood && !(from.X < to.X && from.Y < to.Y && from.Z < to.Z))
        {
            f.Refuse("toM", "toM is not above fromM in all three", "the corner with the highest coordinates");
        }

        return new Box3(from, to);
    }

    /// <summary>Three numbers as a point.</summary>
    public static Point3 Three(TreeForm f, string key, NumberRange range)
    {
        var values = f.Numbers(key, range, 3);
        if (values.Length == 3)
        {
            return new Point3(values[0], values[1], values[2]);
        }

        if (f.IsGood)
        {
            f.Refuse(key, $"{key} does not hold three numbers", "[x, y, z]");
        }

        return default;
    }

    private Receiver Point(TreeForm f)
    {
        var at = Three(f, "positionM", Place);
        var normal = f.Has("normal") ? Three(f, "normal", NumberRange.Within(1e6)) : Point3.Up;
        if (f.IsGood && normal.Length <= 0.0)
        {
            f.Refuse("normal", "the normal has no length", "a direction [x, y, z]");
        }

        if (f.IsGood && form.IsGood && !IsIn(at))
        {
            f.Refuse("positionM", "the point lies outside the box", "a place within the box");
        }

        f.Close();
        return new Receiver(at, normal.Unit());
    }

    private bool IsIn(Point3 p) =>
        p.X >= -Beside
        && p.X <= box.Length + Beside
        && p.Y >= -Beside
        && p.Y <= box.Depth + Beside
        && p.Z >= -Beside
        && p.Z <= box.Height + Beside;

    private MapGrid? Map()
    {
        if (form.OptionalObject("map", "the map") is not { } map)
        {
            return null;
        }

        double height = map.Number("heightM", NumberRange.UpTo(20.0));
        int x = map.Whole("cellsX", 1, MostCells);
        int y = map.Whole("cellsY", 1, MostCells);
        map.Close();
        if (map.IsGood && (long)x * y > MostCells)
        {
            map.Refuse("cellsX", "the map has more than 250 000 cells", "fewer cells");
        }

        if (map.IsGood && height > box.Height)
        {
            map.Refuse("heightM", "the map lies above the lid", "a height within the box");
        }

        return new MapGrid(height, x, y);
    }
}
