using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics;
using Litterfall.Physics.Air;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The surfaces of a box as the headspace meets them: ground, four walls over it, lid, leaves, wood, and the
/// room seen through an open top. All lengths in meters.
/// </summary>
public sealed record BoxSurfaces
{
    private const double LeastAir = 0.01;
    private const double LeastArea = 1e-4;
    private const double OpenOutward = 1e3;
    private readonly List<(HeadspaceSurface Surface, SurfacePlace Place, double Emissivity)> list = [];

    private BoxSurfaces(CheckedDesign design, BoxGeometry box, double airMeters, ModelCoefficients with)
    {
        Design = design;
        Usual = with.Surface;
        Open = with.Headspace;
        Length = Math.Max(box.OpenLength.Si, LeastAir);
        Depth = Math.Max(box.OpenDepth.Si, LeastAir);
        Air = Math.Max(airMeters, LeastAir);
        Glass = box.Walls?.Si ?? Usual.UsualWall.UseSi();
        OpenWaterShare = WaterBasins.Share(design, box);
    }

    private CheckedDesign Design { get; }

    private SurfaceCoefficients Usual { get; }

    private HeadspaceCoefficients Open { get; }

    /// <summary>Along the front, m.</summary>
    public double Length { get; }

    /// <summary>Front to back, m.</summary>
    public double Depth { get; }

    /// <summary>Height of the air, m.</summary>
    public double Air { get; }

    private double Glass { get; }

    /// <summary>What the model is built from.</summary>
    public HeadspaceShape Shape { get; private set; } = null!;

    /// <summary>How air moves along each.</summary>
    public ImmutableArray<SurfacePlace> Places => [.. list.Select(l => l.Place)];

    /// <summary>Place of the ground.</summary>
    public int Ground { get; private set; }

    /// <summary>Place of the open water of all basins; null without.</summary>
    public int? OpenWater { get; private set; }

    /// <summary>Share of the floor that is open water.</summary>
    public double OpenWaterShare { get; }

    /// <summary>Place of the leaves; null without.</summary>
    public int? Leaves { get; private set; }

    /// <summary>Place of wood and stone; null without.</summary>
    public int? Wood { get; private set; }

    /// <summary>Place of the lid; null where the top is open.</summary>
    public int? Lid { get; private set; }

    /// <summary>Places of the walls, by side.</summary>
    public ImmutableDictionary<Side, int> Walls { get; private set; } = ImmutableDictionary<Side, int>.Empty;

    /// <summary>Share of the top that is open or mesh.</summary>
    public double OpenTop { get; private set; }

    /// <summary>Panes whose fog is reported, by name.</summary>
    public ImmutableArray<(string Name, int Place)> Panes { get; private set; } = [];

    /// <summary>The surfaces of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="headspace">The air over them.</param>
    /// <param name="with">Coefficients.</param>
    public static BoxSurfaces Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        AirSpace headspace,
        ModelCoefficients with
    )
    {
        var surfaces = new BoxSurfaces(design, box, headspace.AirHeight.Si, with);
        surfaces.AddGround(box, layers, headspace.LayersHeight.Si);
        surfaces.AddOpenWater(box, layers);
        var walls = ImmutableDictionary.CreateBuilder<Side, int>();
        foreach (var side in new[] { Side.Front, Side.Back, Side.Left, Side.Right })
        {
            walls[side] = surfaces.AddWall(side);
        }

        surfaces.Walls = walls.ToImmutable();
        surfaces.AddTop();
        surfaces.AddLeaves();
        surfaces.AddWood();
        surfaces.Close(headspace.Volume.Si, RoomClimate.Pascals(design));
        return surfaces;
    }

    private void AddGround(BoxGeometry box, ImmutableArray<FloorLayer> layers, double heightMeters)
    {
        var area = Length * Depth * (1 - OpenWaterShare);
        var soil = layers.Where(l => l.Kind is LayerKind.Soil or LayerKind.Moss).Sum(l => l.Depth.Si);
        var drainage = layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)?.Depth.Si ?? 0;
        var skin = Math.Min(Usual.Skin.UseSi(), Math.Max(soil, 0.002));
        var rest = Math.Max(soil - skin, 0);
        var (heat, conductivity) = (Usual.SoilHeat.UseSi(), Usual.SoilConductivity.UseSi());
        List<(double Heat, double Resistance)> nodes = [(heat * skin, skin / conductivity)];
        foreach (var _ in rest > 0.002 ? new[] { 0, 1 } : [])
        {
            nodes.Add((heat * rest / 2, rest / 2 / conductivity));
        }

        if (drainage > 0.002)
        {
            nodes.Add((Usual.DrainageHeat.UseSi() * drainage, drainage / Usual.DrainageConductivity.UseSi()));
        }

        var baseGlass = box.Base?.Si ?? Glass;
        nodes.Add(BaseGlass(baseGlass));
        var around = 2 * (Length + Depth) * heightMeters * (1 - OpenWaterShare);
        Ground = Add(
            Level("ground", nodes, area, around),
            new SurfacePlace(SurfaceRole.Floor, Width()),
            Usual.GroundEmissivity.UseSi()
        );
    }

    /// <summary>
    /// The water of all basins as one, over what lies under it: its feet and the drainage layer as one.
    /// </summary>
    private void AddOpenWater(BoxGeometry box, ImmutableArray<FloorLayer> layers)
    {
        var basins = WaterBasins.Of(Design, box);
        if (OpenWaterShare <= 0)
        {
            return;
        }

        var area = Length * Depth * OpenWaterShare;
        var depth = basins.Sum(b => b.Volume.Si) / basins.Sum(b => b.Area.Si);
        var below =
            layers.Where(l => l.Kind is LayerKind.Soil or LayerKind.Drainage).Sum(l => l.Depth.Si)
            - depth
            - basins.Average(b => b.Edge.Si);
        List<(double Heat, double Resistance)> nodes =
        [
            (
                Constants.WaterDensity * MoistAir.LiquidHeatCapacity * depth,
                depth / Usual.WaterConductivity.UseSi()
            ),
        ];
        if (below > 0.002)
        {
            nodes.Add((Usual.DrainageHeat.UseSi() * below, below / Usual.DrainageConductivity.UseSi()));
        }

        nodes.Add(BaseGlass(box.Base?.Si ?? Glass));
        var across = basins.Average(b => 2 * b.Area.Si / (b.Length.Si + b.Width.Si));
        OpenWater = Add(
            Level("open water", nodes, area, 0),
            new SurfacePlace(SurfaceRole.Floor, across),
            Usual.WaterEmissivity.UseSi()
        );
    }

    private (double Heat, double Resistance) BaseGlass(double meters) =>
        (
            Usual.GlassDensity.UseSi() * Usual.GlassHeat.UseSi() * meters,
            meters / Usual.GlassConductivity.UseSi()
        );

    /// <summary>A part of the floor that gives water, over its layers and the shelf.</summary>
    private HeadspaceSurface Level(
        string name,
        List<(double Heat, double Resistance)> nodes,
        double area,
        double around
    )
    {
        var outward = new double[nodes.Count];
        for (var i = 0; i + 1 < nodes.Count; i++)
        {
            outward[i] = area / (0.5 * (nodes[i].Resistance + nodes[i + 1].Resistance));
        }

        outward[^1] = Usual.ThroughShelf.UseSi() * (area + around);
        return new HeadspaceSurface
        {
            Name = name,
            AreaSquareMeters = area,
            CapacityJoulesPerKelvin = [.. nodes.Select(n => n.Heat * area)],
            OutwardWattsPerKelvin = [.. outward],
            HasSupply = true,
        };
    }

    private int AddWall(Side side)
    {
        var along = side is Side.Front or Side.Back ? Length : Depth;
        var (density, heat, conductivity) = Sheet(Design.Find<SheetEntry>("box.material"));
        var behind =
            Design.Design.Background is { } b
            && (b.Sides.Count == 0 ? side == Side.Back : b.Sides.Contains(side))
                ? Design.Find<BackgroundEntry>("background.material")
                : null;
        var area = along * Air;
        var facing = FacingOf(side);
        var film = facing == Facing.Box ? 0 : Usual.RoomFilm.UseSi();
        var pane = (Heat: density * heat * Glass, Half: 0.5 * Glass / conductivity);
        var out1 = film > 0 ? area / (pane.Half + (1 / film)) : 0;
        ImmutableArray<double> capacity = [pane.Heat * area];
        ImmutableArray<double> outward = [out1];
        var emissivity = behind is null ? Usual.GlassEmissivity.UseSi() : Usual.BackgroundEmissivity.UseSi();
        if (behind is not null)
        {
            var thick = Math.Max(Design.Design.Background!.Thickness.Si, 0.001);
            var cork = behind.ThermalConductivity?.Si ?? Usual.BackgroundConductivity.UseSi();
            var mass = (behind.Density?.Si ?? Usual.BackgroundDensity.UseSi()) * thick;
            var inward = area / ((0.5 * thick / cork) + pane.Half);
            var front = area / (0.5 * thick / cork);
            capacity =
            [
                Math.Max(0.5 * mass * Usual.WoodHeat.UseSi() * area, 50 * area),
                Math.Max(0.5 * mass * Usual.WoodHeat.UseSi() * area, 50 * area),
                pane.Heat * area,
            ];
            outward = [front, inward, out1];
        }

        var place = Add(
            new HeadspaceSurface
            {
                Name = side.ToString().ToLowerInvariant(),
                AreaSquareMeters = area,
                CapacityJoulesPerKelvin = capacity,
                OutwardWattsPerKelvin = outward,
                Film = Film(area, Usual.WallHolds.UseSi()),
            },
            new SurfacePlace(SurfaceRole.Wall, Air),
            emissivity
        );
        if (behind is null)
        {
            Panes = Panes.Add((side.ToString().ToLowerInvariant(), place));
        }

        return place;
    }

    private void AddTop()
    {
        var whole = Length * Depth;
        var lid = Design.Design.Lid;
        var mesh = Design.Find("lid.material") is MeshEntry;
        var vents = Design.Design.Vents.Where(v => v.Side == Side.Top).Sum(BoxOpenings.Area);
        OpenTop =
            lid is null && Design.Design.Box.Opening == Opening.Top ? 1
            : mesh ? Math.Clamp(lid?.Share?.Si ?? 1, 0, 1)
            : Math.Clamp(vents / whole, 0, 0.95);
        var area = whole * (1 - OpenTop);
        if (area > LeastArea)
        {
            var (density, heat, conductivity) = Sheet(mesh ? null : Design.Find<SheetEntry>("lid.material"));
            var thick = lid?.Thickness?.Si ?? Glass;
            var film = FacingOf(Side.Top) == Facing.Box ? 0 : Usual.RoomFilm.UseSi();
            Lid = Add(
                new HeadspaceSurface
                {
                    Name = "lid",
                    AreaSquareMeters = area,
                    CapacityJoulesPerKelvin = [density * heat * thick * area],
                    OutwardWattsPerKelvin =
                    [
                        film > 0 ? area / ((0.5 * thick / conductivity) + (1 / film)) : 0,
                    ],
                    Film = Film(area, Usual.LidHolds.UseSi()),
                },
                new SurfacePlace(SurfaceRole.Ceiling, Width()),
                Usual.GlassEmissivity.UseSi()
            );
            Panes = Panes.Add(("lid", Lid.Value));
        }

        if (whole * OpenTop > LeastArea)
        {
            // The room seen through the opening: a surface held at its temperature, dry, without air of
            // its own.
            Add(
                new HeadspaceSurface
                {
                    Name = "open top",
                    AreaSquareMeters = whole * OpenTop,
                    CapacityJoulesPerKelvin = [1],
                    OutwardWattsPerKelvin = [OpenOutward * whole * OpenTop],
                },
                new SurfacePlace(SurfaceRole.Opening, Width()),
                mesh || vents > 0 ? Usual.MeshEmissivity.UseSi() : 1.0
            );
        }
    }

    private void AddLeaves()
    {
        double crowns = 0;
        for (var i = 0; i < Design.Design.Plants.Count; i++)
        {
            var entry = Design.Find<PlantEntry>(FormattableString.Invariant($"plants[{i}].plant"));
            var low = entry?.SmallestGrown?.Si ?? 0.1;
            var high = entry?.LargestGrown?.Si ?? 0.2;
            var across = Math.Min(0.5 * (low + high), Math.Min(Length, Depth));
            crowns += Design.Design.Plants[i].Count * 0.25 * Math.PI * across * across;
        }

        var oneSided = Math.Min(
            Usual.LeafLayers.UseSi() * crowns,
            Usual.MostLeafLayers.UseSi() * Length * Depth
        );
        if (oneSided < LeastArea)
        {
            return;
        }

        Leaves = Add(
            new HeadspaceSurface
            {
                Name = "leaves",
                AreaSquareMeters = 2 * oneSided,
                CapacityJoulesPerKelvin = [Usual.LeafHeat.UseSi() * oneSided],
                OutwardWattsPerKelvin = [0],
                HasSupply = true,
                Film = new FilmRule(
                    Usual.LeafWet.UseSi() * oneSided,
                    Usual.LeafHolds.UseSi() * oneSided,
                    Usual.DripTime.UseSi(),
                    Ground
                ),
            },
            new SurfacePlace(SurfaceRole.Wall, Usual.LeafHeight.UseSi()),
            Usual.LeafEmissivity.UseSi()
        );
    }

    /// <summary>Wood and stone over the ground: a slab with both sides in the air.</summary>
    private void AddWood()
    {
        double mass = 0;
        double volume = 0;
        for (var i = 0; i < Design.Design.Hardscape.Count; i++)
        {
            mass += HardscapeSize.Mass(Design, i).Si;
            volume += HardscapeSize.Volume(Design, i).Si;
        }

        if (mass <= 0 || volume <= 0)
        {
            return;
        }

        var area = Math.Min(2 * volume / Open.PieceThickness.UseSi(), 2 * Length * Depth);
        Wood = Add(
            new HeadspaceSurface
            {
                Name = "wood",
                AreaSquareMeters = area,
                CapacityJoulesPerKelvin = [mass * Usual.WoodHeat.UseSi()],
                OutwardWattsPerKelvin = [0],
                Film = Film(area, Usual.LeafHolds.UseSi()),
            },
            new SurfacePlace(SurfaceRole.Wall, Usual.LeafHeight.UseSi()),
            Usual.BackgroundEmissivity.UseSi()
        );
    }

    private void Close(double volume, double pascals)
    {
        var middle = Usual.RadiantMean.Use();
        var conductance = Carroll1980.Conductances(
            [.. list.Select(l => l.Surface.AreaSquareMeters)],
            [.. list.Select(l => l.Emissivity)],
            middle
        );
        var panes = list.Where(l => l.Surface.Film is not null && l.Surface.Name is not ("leaves" or "wood"))
            .Sum(l => l.Surface.AreaSquareMeters);
        Shape = new HeadspaceShape
        {
            DryAirKilograms = Math.Max(volume, 1e-3) / MoistAir.SpecificVolume(middle, 0.014, pascals),
            Pascals = pascals,
            Surfaces =
            [
                .. list.Select(
                    (l, i) =>
                        l.Surface with
                        {
                            RadiantWattsPerKelvin = conductance[i],
                            MistShare = MistOn(i, panes),
                        }
                ),
            ],
            SettlesOn = Ground,
        };
    }

    private double MistOn(int place, double panes)
    {
        var surface = list[place].Surface;
        if (place == OpenWater)
        {
            var onPanes = panes > 0 ? Usual.MistOnPanes.UseSi() : 0;
            var onLeaves = Leaves is null ? 0 : Usual.MistOnLeaves.UseSi();
            return (1 - onPanes - onLeaves) * OpenWaterShare;
        }

        return place == Leaves ? Usual.MistOnLeaves.UseSi()
            : surface.Name == "wood" || surface.Film is null || panes <= 0 ? 0
            : Usual.MistOnPanes.UseSi() * surface.AreaSquareMeters / panes;
    }

    private int Add(HeadspaceSurface surface, SurfacePlace place, double emissivity)
    {
        list.Add((surface, place, emissivity));
        return list.Count - 1;
    }

    private FilmRule Film(double area, double holds) =>
        new(Usual.PaneWet.UseSi() * area, holds * area, Usual.DripTime.UseSi(), Ground);

    private double Width() => 2 * Length * Depth / (Length + Depth);

    /// <summary>What a side faces.</summary>
    public Facing FacingOf(Side side) =>
        Design.Design.Room?.Faces is not { } faces
            ? Facing.Room
            : side switch
            {
                Side.Front => faces.Front,
                Side.Back => faces.Back,
                Side.Left => faces.Left,
                Side.Right => faces.Right,
                _ => faces.Top,
            };

    private (double Density, double Heat, double Conductivity) Sheet(SheetEntry? sheet)
    {
        var density = sheet?.Density?.Si ?? Usual.GlassDensity.UseSi();
        return (
            density,
            density > 2000 ? Usual.GlassHeat.UseSi() : Usual.PlasticHeat.UseSi(),
            sheet?.ThermalConductivity?.Si ?? Usual.GlassConductivity.UseSi()
        );
    }
}
