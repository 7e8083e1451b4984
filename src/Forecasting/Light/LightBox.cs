using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// A design as light meets it: the air between the faces of backgrounds and panes, from the lowest ground up
/// to the lid.
/// </summary>
internal sealed class LightBox
{
    private const double Least = 0.01;
    private const double LeastAir = 0.03;
    private const double LeastEdge = 0.05;
    private readonly CheckedDesign design;
    private readonly BoxGeometry box;
    private readonly ImmutableArray<FloorLayer> layers;

    private LightBox(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        ModelCoefficients with
    )
    {
        With = with;
        this.design = design;
        this.box = box;
        this.layers = layers;
        Terrain = new Terrain(design, box, layers);
        Basins = WaterBasins.Of(design, box);
        Plants = PlantSpot.Of(design, Terrain);
        Ground = Corners(Terrain).Min();
        Origin = new Point3(Terrain.Left, Terrain.Front, Ground);
        Scene = Build();
    }

    /// <summary>Coefficients, of which what is taken is noted.</summary>
    public ModelCoefficients With { get; }

    /// <summary>The design.</summary>
    public CheckedDesign Design => design;

    /// <summary>The ground.</summary>
    public Terrain Terrain { get; }

    /// <summary>Basins of open water.</summary>
    public ImmutableArray<WaterBasin> Basins { get; }

    /// <summary>Where the plants are.</summary>
    public ImmutableArray<PlantSpot> Plants { get; }

    /// <summary>Edges of the air as figures.</summary>
    public IEnumerable<Figure> Edges => [box.OpenLength, box.OpenDepth, box.InsideHeight];

    /// <summary>Lowest ground over the base, m.</summary>
    public double Ground { get; }

    /// <summary>The corner of the scene, in meters inside the box.</summary>
    public Point3 Origin { get; }

    /// <summary>What light meets.</summary>
    public LightScene Scene { get; }

    /// <summary>
    /// Place in <see cref="LightScene.Canopies"/> of the crown of each plant; -1 without one.
    /// </summary>
    public ImmutableArray<int> Crowns { get; private set; } = [];

    /// <summary>Ground under a cover of wood or cork, as boxes of the scene.</summary>
    public ImmutableArray<Box3> Covers { get; private set; } = [];

    /// <summary>The box of a design; null with hardly any air or floor.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="with">Coefficients.</param>
    public static LightBox? Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        ModelCoefficients with
    )
    {
        if (!box.IsBuildable)
        {
            return null;
        }

        var terrain = new Terrain(design, box, layers);
        double top = Corners(terrain).Max();
        bool hasAir =
            terrain.Height - top - terrain.Moss >= LeastAir
            && terrain.Right - terrain.Left >= LeastEdge
            && terrain.Back - terrain.Front >= LeastEdge;
        return hasAir ? new LightBox(design, box, layers, with) : null;
    }

    /// <summary>Height of the ground over the lowest ground, at a place of the scene, m.</summary>
    /// <param name="x">In the scene, m.</param>
    /// <param name="y">In the scene, m.</param>
    /// <param name="litterMeters">Leaves on it, where it is not water.</param>
    public double Rise(double x, double y, double litterMeters = 0.0)
    {
        var basin = Basin(x, y);
        double over = basin is null ? Cover(y) + litterMeters : -basin.Edge.Si;
        return Math.Clamp(
            Terrain.Ground(x + Origin.X, y + Origin.Y) + over - Ground,
            0.0,
            Scene.Height - LightPolicy.Free
        );
    }

    /// <summary>True where a place of the scene is open water.</summary>
    public bool IsWater(double x, double y) => Basin(x, y) is not null;

    private WaterBasin? Basin(double x, double y) =>
        Basins.FirstOrDefault(b => b.Holds(x + Origin.X, y + Origin.Y));

    private double Cover(double y) => Mossy(y) ? Terrain.Moss : 0.0;

    /// <summary>True where moss lies: from the back to its share of the floor.</summary>
    private bool Mossy(double y) => Terrain.Moss > 0.0 && y >= MossFrom;

    /// <summary>Where moss begins, from front to back, m in the scene.</summary>
    public double MossFrom =>
        (1.0 - Math.Clamp(design.Design.Floor.Moss?.Cover?.Si ?? 1.0, 0.0, 1.0))
        * (Terrain.Back - Terrain.Front);

    /// <summary>Heights of the ground where it bends, m.</summary>
    private static IEnumerable<double> Corners(Terrain terrain) =>
        terrain
            .Steps()
            .SelectMany(x => new[] { x + 1e-6, x - 1e-6 })
            .SelectMany(x => new[] { terrain.Ground(x, terrain.Front), terrain.Ground(x, terrain.Back) });

    private LightScene Build()
    {
        var scene = new LightScene
        {
            Length = Terrain.Right - Terrain.Left,
            Depth = Terrain.Back - Terrain.Front,
            Height = Terrain.Height - Ground,
            Faces = [Wall(Side.Left), Wall(Side.Right), Wall(Side.Front), Wall(Side.Back), Floor()],
        };
        var pieces = PieceSpot.Of(design, Terrain);
        var blocks = pieces
            .Select((p, i) => (Spot: p, Block: Block(p, i, scene)))
            .Where(b => b.Block is not null);
        scene = scene with
        {
            Blocks = [.. blocks.Select(b => b.Block!)],
            Lid = [.. LightLid.Parts((design, With), Terrain, box, scene)],
        };
        Covers = [.. blocks.Where(b => !b.Spot.IsStone).Select(b => b.Block!.Extent)];
        return scene with { Canopies = Leaves(scene) };
    }

    private FaceFinish Wall(Side side)
    {
        if (Terrain.Covered(design.Design).Contains(side))
        {
            return FaceFinish.Diffuse(
                design.Find<BackgroundEntry>("background.material")?.Reflectance?.Si
                    ?? With.Light.BackgroundReflectance.UseSi()
            );
        }

        return FaceFinish.Glass(
            LightLid.Sheet(
                design.Find<SheetEntry>("box.material"),
                box.Walls?.Si ?? With.Surface.UsualWall.UseSi(),
                With
            )
        );
    }

    /// <summary>
    /// The floor as one reflectance: open water over its share; moss, litter over the rest, soil without
    /// either on the ground beside it.
    /// </summary>
    private FaceFinish Floor()
    {
        double Of(string layer) =>
            (layers.FirstOrDefault(l => l.Layer == layer)?.Material as SubstrateEntry)?.Reflectance?.Si
            ?? With.Light.SoilReflectance.UseSi();
        double moss =
            Terrain.Moss > 0.0 ? Math.Clamp(design.Design.Floor.Moss?.Cover?.Si ?? 1.0, 0.0, 1.0) : 0.0;
        double litter =
            Terrain.Litter > 0.0
                ? Math.Min(1.0 - moss, Math.Clamp(design.Design.Floor.Litter?.Cover?.Si ?? 1.0, 0.0, 1.0))
                : 0.0;
        double ground = (moss * Of("moss")) + (litter * Of("litter")) + ((1.0 - moss - litter) * Of("soil"));
        double water = WaterBasins.Share(design, box);
        return FaceFinish.Diffuse(
            water > 0.0 ? (water * With.Light.WaterReflectance.UseSi()) + ((1.0 - water) * ground) : ground
        );
    }

    private LightBlock? Block(PieceSpot piece, int i, LightScene scene)
    {
        double half = 0.5 * PieceSpot.EllipseEdge;
        var from = new Point3(
            Math.Max(0.0, piece.X - (half * piece.Length) - Origin.X),
            Math.Max(0.0, piece.Y - (half * piece.Depth) - Origin.Y),
            Math.Max(0.0, piece.Foot - Ground)
        );
        var to = new Point3(
            Math.Min(scene.Length, piece.X + (half * piece.Length) - Origin.X),
            Math.Min(scene.Depth, piece.Y + (half * piece.Depth) - Origin.Y),
            Math.Min(scene.Height - LightPolicy.Free, piece.Foot + piece.Height - Ground)
        );
        if (to.X - from.X < Least || to.Y - from.Y < Least || to.Z - from.Z < 0.5 * Least)
        {
            return null;
        }

        double reflectance = design
            .Find<HardscapeEntry>(FormattableString.Invariant($"hardscape[{i}].material"))
            ?.Reflectance?.Si
            ?? With.Light.PieceReflectance.UseSi();
        return new LightBlock(new Box3(from, to), reflectance);
    }

    /// <summary>Crowns of what stands free; mats and climbers lie on what they grow on.</summary>
    private ImmutableArray<Canopy> Leaves(LightScene scene)
    {
        var leaves = ImmutableArray.CreateBuilder<Canopy>();
        var crowns = ImmutableArray.CreateBuilder<int>();
        foreach (var plant in Plants)
        {
            if (plant.Form is PlantForm.Mat or PlantForm.Climber)
            {
                crowns.Add(-1);
                continue;
            }

            double tall = Across(plant);
            double wide = Math.Min(
                tall * Math.Sqrt(plant.Count),
                With.Light.MostCrown.UseSi() * Math.Max(scene.Length, scene.Depth)
            );
            var foot = Foot(plant);
            double top = Math.Min(foot.Z + tall, scene.Height - LightPolicy.Free);
            double bottom = Math.Max(0.0, plant.Mounted ? foot.Z - (0.5 * tall) : foot.Z);
            var extent = new Box3(
                new Point3(foot.X - (0.5 * wide), foot.Y - (0.5 * wide), bottom),
                new Point3(foot.X + (0.5 * wide), foot.Y + (0.5 * wide), Math.Max(top, bottom + Least))
            );
            double area =
                With.Surface.LeafLayers.Use()
                * With.Light.Ellipsoid.Use()
                / (extent.To.Z - extent.From.Z)
                * With.Light.Leaves.Use();
            crowns.Add(leaves.Count);
            leaves.Add(
                new Canopy(extent, area)
                {
                    IsRound = true,
                    Projection = With.Light.LeafProjection.UseSi(),
                    Absorptance = With.Light.LeafAbsorptance.UseSi(),
                }
            );
        }

        Crowns = crowns.ToImmutable();
        return leaves.ToImmutable();
    }

    /// <summary>
    /// Size of a plant today: between young and grown, and not more than its share of the air.
    /// </summary>
    public double Across(PlantSpot plant)
    {
        var entry = design.Find<PlantEntry>(FormattableString.Invariant($"plants[{plant.Number - 1}].plant"));
        double low = entry?.SmallestGrown?.Si ?? plant.Size;
        double high = entry?.LargestGrown?.Si ?? plant.Size;
        return Math.Min(0.5 * (low + high), With.Light.MostCrown.UseSi() * (Terrain.Height - Ground));
    }

    /// <summary>Foot of a plant in the scene, kept inside it.</summary>
    public Point3 Foot(PlantSpot plant) =>
        new(
            Math.Clamp(plant.X - Origin.X, LightPolicy.Free, Terrain.Right - Terrain.Left - LightPolicy.Free),
            Math.Clamp(plant.Y - Origin.Y, LightPolicy.Free, Terrain.Back - Terrain.Front - LightPolicy.Free),
            Math.Clamp(plant.Z - Ground, 0.0, Terrain.Height - Ground - (2.0 * LightPolicy.Free))
        );
}
