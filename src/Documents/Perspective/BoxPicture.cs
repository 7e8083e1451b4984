using System.Collections.Immutable;
using System.Numerics;
using Litterfall.Documents.Shapes;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>What a picture shows besides the design.</summary>
/// <param name="Months">Months since planting.</param>
/// <param name="HasAnimals">True where its animals are drawn.</param>
public sealed record PictureWish(double Months, bool HasAnimals);

/// <summary>The finished box of a design in space, from the geometry of its drawings.</summary>
public sealed class BoxPicture
{
    /// <summary>Oldest age that is drawn, months.</summary>
    public const int OldestMonths = 24;

    private const float MountMeters = 0.02f;
    private readonly Scene scene;
    private readonly SceneLight shine;
    private readonly Panes panes;
    private readonly FloorFigure floor;
    private readonly Fixtures fixtures;
    private readonly LitterFigure litter;
    private readonly Dictionary<PictureWish, ImmutableArray<ScenePart>> still = [];

    /// <summary>Places everything once.</summary>
    /// <param name="numbers">The design with its numbers.</param>
    /// <param name="light">Its computed light; null without lamps, or while it is not computed.</param>
    public BoxPicture(DesignNumbers numbers, LightFigures? light)
    {
        scene = new Scene(numbers);
        shine = new SceneLight(light, scene.Terrain);
        panes = new Panes(scene);
        floor = new FloorFigure(scene);
        fixtures = new Fixtures(scene, light);
        litter = new LitterFigure(scene);
    }

    /// <summary>The box at an hour.</summary>
    /// <param name="wish">Age and animals.</param>
    /// <param name="moment">The hour; null for the day it is built, with the lamps on.</param>
    public BoxScene At(PictureWish wish, Moment? moment)
    {
        var (low, high) = Bounds();
        return new BoxScene([.. Still(wish), .. Live(moment)], low, high, IsLit(moment)) { Turn = Turn };
    }

    /// <summary>What no hour changes.</summary>
    /// <param name="wish">Age and animals.</param>
    public ImmutableArray<ScenePart> Still(PictureWish wish)
    {
        if (still.TryGetValue(wish, out var known))
        {
            return known;
        }

        var parts = ImmutableArray.CreateBuilder<ScenePart>();
        var (films, solid) = panes.Draw();
        var inside = new Mesh();
        floor.Still(inside);
        var (drainage, moss, leaves) = (new Mesh(), new Mesh(), new Mesh());
        floor.Drainage(drainage);
        litter.Beds(moss, leaves);
        litter.Draw(inside);
        new Backdrop(scene).Draw(inside);
        new Wood(scene).Draw(inside);
        Plants(inside, wish.Months);
        if (wish.HasAnimals)
        {
            new Beasts(scene, litter).Draw(inside);
        }

        fixtures.Draw(inside);
        inside.Take(solid);
        parts.AddRange(Bake.Body("drainage", drainage, shine.At));
        parts.AddRange(Bake.Body("moss", moss, shine.At));
        parts.AddRange(Bake.Body("litter", leaves, shine.At));
        parts.AddRange(Bake.Body("inside", inside, shine.At));
        var (housing, shining, board) = (new Mesh(), new Mesh(), new Mesh());
        fixtures.Lamps(housing, shining);
        fixtures.Board(board, Wall, Foot);
        housing.Take(board);
        parts.AddRange(Bake.Body("around", housing, _ => 1));
        parts.Add(Bake.Lamp("lamps", shining));
        parts.AddRange(films.Where(f => f.Film.Points.Count > 0).Select(f => Bake.Film(f.Name, f.Film)));
        parts.Add(Bake.Film("shade", Shade(wish.Months)));
        parts.Add(Bake.Film("gleam", panes.Gleam(), 0.3f));
        return still[wish] = parts.ToImmutable();
    }

    /// <summary>What the hour changes: wet soil, water, fog.</summary>
    /// <param name="moment">The hour; null for the day it is built.</param>
    public ImmutableArray<ScenePart> Live(Moment? moment)
    {
        var parts = ImmutableArray.CreateBuilder<ScenePart>();
        var soil = new Mesh();
        floor.Soil(soil, moment);
        parts.AddRange(Bake.Body("soil", soil, shine.At));
        if (floor.Level(moment?.LevelMeters ?? scene.Design.Start?.Level.Si ?? 0) is { } water)
        {
            parts.Add(Bake.Film("water", water));
        }

        if (floor.Open() is { } open)
        {
            parts.Add(Bake.Film("open water", open));
        }

        foreach (var (side, share) in moment?.Fogs ?? [])
        {
            if (share > 0.02)
            {
                parts.Add(
                    Bake.Film($"fog {side.ToString().ToLowerInvariant()}", panes.Fog(side, (float)share))
                );
            }
        }

        return [.. parts.Select(p => p with { IsLive = true })];
    }

    /// <summary>From the front to the side that is glass, degrees to the right.</summary>
    public float Turn
    {
        get
        {
            var covered = Terrain.Covered(scene.Design);
            return covered.Contains(Side.Right) && !covered.Contains(Side.Left)
                ? -Camera.UsualTurn
                : Camera.UsualTurn;
        }
    }

    /// <summary>True while the lamps burn; without lamps, by day.</summary>
    public bool IsLit(Moment? moment) =>
        moment is null || moment.IsLit || (scene.Design.Lamps.Count == 0 && moment.IsDay);

    /// <summary>What must be in the picture: box, lamps and the board.</summary>
    public (Vector3 Low, Vector3 High) Bounds()
    {
        var lamps = fixtures.Places().Select(p => p.High.Z).DefaultIfEmpty(0).Max();
        var around = Wall + 0.035f;
        return (
            new(-around, -around, -Foot - 0.016f),
            new(
                (float)scene.Terrain.Length + around,
                (float)scene.Terrain.DepthOfBox + around,
                Math.Max((float)scene.Terrain.Height + 0.01f, lamps)
            )
        );
    }

    /// <summary>The picture in words.</summary>
    /// <param name="wish">Age and animals.</param>
    /// <param name="moment">The hour.</param>
    public string Words(PictureWish wish, Moment? moment)
    {
        var plants = scene
            .Plants.GroupBy(p => p.Name, StringComparer.Ordinal)
            .Select(g => Counted(g.Sum(p => p.Count), g.Key))
            .ToList();
        var age =
            wish.Months < 0.5
                ? "as planted"
                : FormattableString.Invariant($"{wish.Months:0} months after planting");
        var light_ = IsLit(moment) ? "by day" : "at night";
        var fog = moment?.Fogs.Any(f => f.Share > 0.25) == true ? ", panes fogged" : "";
        var inside = plants.Count > 0 ? $"; plants: {string.Join(", ", plants)}" : "";
        var pieces =
            scene.Pieces.Length > 0
                ? $"; wood and stone: {string.Join(", ", scene.Pieces.Select(p => p.Name))}"
                : "";
        return $"Picture of {scene.Design.Name}, {age}, {light_}{fog}{inside}{pieces}.";
    }

    /// <summary>Soft shade on the ground under plants and wood.</summary>
    private Mesh Shade(double months)
    {
        var mesh = new Mesh();
        foreach (var plant in Specimen.Of(scene.Numbers.Design, scene.Terrain, scene.Plants))
        {
            if (!plant.Spot.Mounted)
            {
                var r = (float)Math.Min(0.16, plant.Size(months) * 0.55);
                Blot(mesh, (plant.X, plant.Y), (r, r));
            }
        }

        foreach (var piece in scene.Pieces)
        {
            Blot(mesh, (piece.X, piece.Y), ((float)piece.Length * 0.62f, (float)piece.Depth * 0.66f));
        }

        return mesh;
    }

    private void Blot(Mesh mesh, (double X, double Y) at, (float X, float Y) radius)
    {
        const int Around = 20;
        var t = scene.Terrain;
        Vector3 On(double x, double y)
        {
            var (cx, cy) = (
                Math.Clamp(x, t.Left + 0.001, t.Right - 0.001),
                Math.Clamp(y, t.Front + 0.001, t.Back - 0.001)
            );
            return new((float)cx, (float)cy, Math.Min(litter.Top(cx, cy) + 0.009f, (float)t.Height - 0.002f));
        }

        var middle = mesh.Point(On(at.X, at.Y), Hue.Of(0x1E2420), 0.42f);
        for (var k = 0; k < Around; k++)
        {
            var (sin, cos) = MathF.SinCos(k * MathF.Tau / Around);
            mesh.Point(On(at.X + (cos * radius.X), at.Y + (sin * radius.Y)), Hue.Of(0x1E2420), 0);
        }

        for (var k = 0; k < Around; k++)
        {
            mesh.Triangle(middle, middle + 1 + k, middle + 1 + ((k + 1) % Around));
        }
    }

    private static string Counted(int count, string name) =>
        count == 1 ? name : FormattableString.Invariant($"{count} {name}");

    private float Wall => (float)(scene.Numbers.Box.Walls?.Si ?? 0.004);

    private float Foot => (float)(scene.Numbers.Box.Base?.Si ?? Wall);

    private void Plants(Mesh mesh, double months)
    {
        var room = new PlantRoom(scene);
        foreach (var plant in Specimen.Of(scene.Numbers.Design, scene.Terrain, scene.Plants))
        {
            var dice = new Dice($"{plant.Spot.Key} {plant.Index} {plant.Spot.Name}");
            var place = new PlantPlace(plant, (float)plant.Size(months), dice, scene.Terrain);
            room.Carry(mesh, place);
            PlantFigure.Add(mesh, place, scene.Design);
        }
    }

    /// <summary>What carries plants that are mounted away from any wall or wood.</summary>
    private sealed class PlantRoom(Scene scene)
    {
        public void Carry(Mesh mesh, PlantPlace place)
        {
            if (!place.Plant.Spot.Mounted || scene.Pieces.Any(p => Touches(p, place.Foot)))
            {
                return;
            }

            var (wall, _) = place.Wall(scene.Design);
            if (Vector3.Distance(wall, place.Foot) > MountMeters)
            {
                Wood.Mount(mesh, place.Kept(wall - new Vector3(0, 0, 0.02f)), place.Foot, place.Dice);
            }
        }

        private static bool Touches(PieceSpot piece, Vector3 at) =>
            Math.Abs(piece.X - at.X) < piece.Length / 2
            && Math.Abs(piece.Y - at.Y) < piece.Depth / 2
            && at.Z < piece.Foot + piece.Height + 0.02;
    }
}
