using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Soil;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Floor;

/// <summary>
/// The floor of a design as ground zones: a level soil is one, a wedge its front and back half, steps as they
/// are typed; each is split in two where moss covers a part. Wood and stone in a layer take their share of
/// its pores.
/// </summary>
public sealed record FloorColumns
{
    private const int MossElements = 4;
    private const int SoilElements = 12;
    private const int DrainageElements = 8;
    private const double LeastShare = 0.02;

    /// <summary>The columns.</summary>
    public required SoilColumns Columns { get; init; }

    /// <summary>Area of the floor, m².</summary>
    public required double AreaSquareMeters { get; init; }

    /// <summary>Depth of the drainage layer, m; 0 without one.</summary>
    public required double DrainageMeters { get; init; }

    /// <summary>Depth of the moss in each zone, m; 0 where it is bare.</summary>
    public required ImmutableArray<double> MossMeters { get; init; }

    /// <summary>Depth of the soil in each zone, m.</summary>
    public required ImmutableArray<double> SoilMeters { get; init; }

    /// <summary>Where the soil of each zone lies.</summary>
    public required ImmutableArray<SoilZones> Places { get; init; }

    /// <summary>Curve of the soil.</summary>
    public required HydraulicCurve Soil { get; init; }

    /// <summary>
    /// State on planting day: soil and moss at squeeze wetness, drainage layer at rest, empty.
    /// </summary>
    public required ColumnState Fresh { get; init; }

    private double LowerBoundaryMeters => Columns.LowerBoundaryMeters(0);

    private Materials? Used { get; init; }

    private CurveTables Tables { get; init; } = new();

    /// <summary>Figures of the curves it is built from.</summary>
    public required ImmutableArray<Figure> Curves { get; init; }

    /// <summary>The floor of a design; null when a material has no curve or there is no soil.</summary>
    /// <param name="design">The design.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="tables">Tables of curves.</param>
    /// <param name="with">Coefficients.</param>
    public static FloorColumns? Of(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        CurveTables tables,
        FloorWaterCoefficients with
    ) => Of(design, layers, CurveChange.None, (tables, null), with);

    /// <summary>The same floor with another soil; the curves of the other layers are shared.</summary>
    /// <param name="design">The design.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="change">Change of the soil's curve.</param>
    /// <param name="with">Coefficients.</param>
    public FloorColumns With(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        CurveChange change,
        FloorWaterCoefficients with
    ) => Of(design, layers, change, (Tables, this), with)!;

    private static FloorColumns? Of(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        CurveChange asked,
        (CurveTables Tables, FloorColumns? Like) made,
        FloorWaterCoefficients with
    )
    {
        var change = Changed(asked, with);
        var soil = layers.FirstOrDefault(l => l.Kind == LayerKind.Soil);
        if (
            soil is not { Material: { } mix, Finished.Si: > 0 }
            || MaterialCurve.Of(mix, design.Catalog) is not { } soilCurve
        )
        {
            return null;
        }

        var drainage = layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        var moss = layers.FirstOrDefault(l => l.Kind == LayerKind.Moss);
        var mossCurve = moss?.Material is { } m ? MaterialCurve.Of(m) : null;
        var below = drainage is null ? null : DrainageCurve(design, drainage, with);
        var area = Area(design, drainage, soil);
        if (area <= 0 || (drainage is { Finished.Si: > 0 } && below is null))
        {
            return null;
        }

        var mixed = made.Tables.Curve(Scaled(change.Apply(soilCurve), OpenShare(soil, area)));
        var materials = made.Like?.Used is { } used
            ? used with
            {
                Soil = mixed,
                Below = Like(used, (below, asked.DrainagePores), made.Tables, drainage, area),
            }
            : new Materials(
                mixed,
                mossCurve is null ? null : made.Tables.Curve(mossCurve),
                Tabled(made.Tables, below, drainage, area)
            );
        var cover = moss is { Area.Si: > 0 } && mossCurve is not null ? moss.Area.Si / area : 0;
        var zones = Split(SoilZones.Of(design), Math.Min(cover, 1), moss?.Depth.Si ?? 0);
        var built = Build((materials, Roots(with)), zones, drainage?.Depth.Si ?? 0, area);
        return built with
        {
            Tables = made.Tables,
            Fresh = design.Design.Start is { } running
                ? built.Columns.AtRest(Math.Clamp(running.Level.Si, 0, built.LowerBoundaryMeters))
                : FreshState(built, soil, moss, change),
            Curves =
            [
                .. MaterialCurve.Figures(mix, design.Catalog),
                .. drainage?.Material is { } a ? MaterialCurve.Figures(a) : [],
            ],
        };
    }

    /// <summary>Ground that the columns stand for: with basins, that of the soil beside them.</summary>
    private static double Area(CheckedDesign design, FloorLayer? drainage, FloorLayer soil) =>
        drainage is { Area.Si: > 0 } && design.Design is { Basins.Count: 0, WaterArea: null or { Si: <= 0 } }
            ? drainage.Area.Si
            : soil.Area.Si;

    private readonly record struct Zone(SoilZones Place, double Share, double SoilMeters, double MossMeters);

    private sealed record Materials(HydraulicCurve Soil, HydraulicCurve? Moss, HydraulicCurve? Below);

    private static CurveChange Changed(CurveChange asked, FloorWaterCoefficients with) =>
        new(
            asked.Conductivity * with.Conductivity.Use(),
            asked.Alpha * with.Alpha.Use(),
            asked.Squeeze + with.Squeeze.UseSi()
        )
        {
            DrainagePores = asked.DrainagePores,
        };

    private static HydraulicCurve? Like(
        Materials used,
        (VanGenuchtenParameters? Curve, double Pores) below,
        CurveTables tables,
        FloorLayer? drainage,
        double area
    ) =>
        below.Pores == 1 || below.Curve is null
            ? used.Below
            : Tabled(tables, Widened(below.Curve, below.Pores), drainage, area);

    /// <summary>Curve of the drainage over the ground that the columns stand for; null without it.</summary>
    private static HydraulicCurve? Tabled(
        CurveTables tables,
        VanGenuchtenParameters? curve,
        FloorLayer? drainage,
        double area
    ) => curve is null || drainage is null ? null : tables.Curve(Scaled(curve, OpenShare(drainage, area)));

    /// <summary>
    /// The same layer with more or less room between its grains; it is never more than full.
    /// </summary>
    private static VanGenuchtenParameters Widened(VanGenuchtenParameters curve, double factor) =>
        curve with
        {
            ThetaR = curve.ThetaR * factor,
            ThetaS = Math.Min(0.99, curve.ThetaS * factor),
        };

    private static FeddesHeads Roots(FloorWaterCoefficients with) =>
        new(with.RootsTooWet.UseSi(), with.RootsWet.UseSi(), with.RootsDry.UseSi(), with.RootsWilted.UseSi());

    private static VanGenuchtenParameters? DrainageCurve(
        CheckedDesign design,
        FloorLayer drainage,
        FloorWaterCoefficients with
    ) =>
        drainage.Material is { } aggregate ? MaterialCurve.Of(aggregate)
        : design.Find<GridEntry>("floor.drainage.grid") is { } grid
            ? MaterialCurve.Of(grid) ?? OpenWater(with)
        : OpenWater(with);

    /// <summary>
    /// Open water under a raised floor, as a material that empties over the last centimeters.
    /// </summary>
    private static VanGenuchtenParameters OpenWater(FloorWaterCoefficients with) =>
        VanGenuchten
            .Single((0, 1), with.OpenAlpha.UseSi(), with.OpenN.Use(), with.OpenConductivity.UseSi())
            .Parameters;

    /// <summary>
    /// Volume of a layer over that of its depth on the ground. The drainage layer runs on under basins, so
    /// that each square meter of ground has more of it than lies under it: the level rises as much slower.
    /// </summary>
    private static double OpenShare(FloorLayer layer, double area) =>
        layer.Depth.Si > 0
            ? Math.Clamp(layer.Finished.Si / (area * layer.Depth.Si), 0.01, Math.Max(1, MostOf(layer, area)))
            : 1;

    private static double MostOf(FloorLayer layer, double area) =>
        layer.Kind == LayerKind.Drainage ? layer.Area.Si / area : 1;

    private static VanGenuchtenParameters Scaled(VanGenuchtenParameters curve, double share) =>
        curve with
        {
            ThetaR = curve.ThetaR * share,
            ThetaS = curve.ThetaS * share,
            WidthRatio = Math.Max(1, share),
        };

    private static List<Zone> Split(ImmutableArray<SoilZones> soil, double cover, double mossMeters)
    {
        var zones = new List<Zone>();
        foreach (var zone in soil)
        {
            var mossed = cover > 1 - LeastShare ? 1 : cover;
            if (mossed > LeastShare && mossMeters > 0)
            {
                zones.Add(new Zone(zone, zone.Share * mossed, zone.DepthMeters, mossMeters));
            }

            if (mossed <= LeastShare || mossMeters <= 0)
            {
                zones.Add(new Zone(zone, zone.Share, zone.DepthMeters, 0));
            }
            else if (mossed < 1)
            {
                zones.Add(new Zone(zone, zone.Share * (1 - mossed), zone.DepthMeters, 0));
            }
        }

        return zones;
    }

    private static FloorColumns Build(
        (Materials Materials, FeddesHeads Roots) of,
        List<Zone> zones,
        double drainage,
        double area
    )
    {
        var (materials, roots) = of;
        var anyMoss = zones.Any(z => z.MossMeters > 0);
        var sum = zones.Sum(z => z.Share);
        var profiles = zones
            .Select(z => new SoilProfile(
                [.. Layers(materials, z, anyMoss, drainage)],
                new RootZone(z.MossMeters, z.MossMeters + z.SoilMeters, roots),
                z.Share / sum
            ))
            .ToImmutableArray();
        var columns = new SoilColumns(profiles);
        return new FloorColumns
        {
            Columns = columns,
            AreaSquareMeters = area,
            DrainageMeters = materials.Below is null ? 0 : drainage,
            MossMeters = [.. zones.Select(z => z.MossMeters)],
            SoilMeters = [.. zones.Select(z => z.SoilMeters)],
            Places = [.. zones.Select(z => z.Place)],
            Soil = materials.Soil,
            Used = materials,
            Fresh = columns.AtRest(0),
            Curves = [],
        };
    }

    private static IEnumerable<ColumnLayer> Layers(
        Materials materials,
        Zone zone,
        bool anyMoss,
        double drainage
    )
    {
        if (zone.MossMeters > 0)
        {
            yield return ColumnLayer.Even(materials.Moss!, zone.MossMeters, MossElements);
        }

        var elements = SoilElements + (anyMoss && zone.MossMeters <= 0 ? MossElements : 0);
        yield return new ColumnLayer(materials.Soil, FineAtBothEnds(zone.SoilMeters, elements));
        if (materials.Below is { } below && drainage > 0)
        {
            yield return new ColumnLayer(below, FineOnTop(drainage, DrainageElements));
        }
    }

    /// <summary>Elements whose ends lie on a half circle: thin at the surface and over the mesh.</summary>
    private static ImmutableArray<double> FineAtBothEnds(double thickness, int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    0.5 * thickness * (Math.Cos(Math.PI * i / count) - Math.Cos(Math.PI * (i + 1) / count))
                ),
        ];

    private static ImmutableArray<double> FineOnTop(double thickness, int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    thickness
                    * (Math.Cos(0.5 * Math.PI * i / count) - Math.Cos(0.5 * Math.PI * (i + 1) / count))
                ),
        ];

    private static ColumnState FreshState(
        FloorColumns floor,
        FloorLayer soil,
        FloorLayer? moss,
        CurveChange change
    )
    {
        var squeeze = soil.SqueezeWater is { } w ? w.Si / soil.Finished.Si : 0;
        var open = OpenShare(soil, floor.AreaSquareMeters);
        var soilHead = floor.Soil.HeadMeters((squeeze + change.Squeeze) * open);
        var mossCurve = floor
            .Columns.Profiles.Select(p => p.Layers[0].Curve)
            .FirstOrDefault(c => c != floor.Soil);
        var mossHead =
            moss?.SqueezeWater is { } v && mossCurve is not null && moss.Finished.Si > 0
                ? mossCurve.HeadMeters(v.Si / moss.Finished.Si)
                : soilHead;
        return floor.Columns.From(
            (zone, depth) =>
            {
                var foot = floor.Columns.LowerBoundaryMeters(zone);
                return depth < floor.MossMeters[zone] - 1e-9 ? mossHead
                    : depth <= foot - floor.DrainageMeters + 1e-9 ? Math.Max(soilHead, -50)
                    : depth - foot;
            }
        );
    }
}

/// <summary>A change of the soil's curve, to ask how far an answer moves over what is not known.</summary>
/// <param name="Conductivity">Factor on the saturated conductivity.</param>
/// <param name="Alpha">Factor on α of all pore systems.</param>
/// <param name="Squeeze">Added to the water content of the fresh mix, m³/m³.</param>
public readonly record struct CurveChange(double Conductivity, double Alpha, double Squeeze)
{
    /// <summary>
    /// Factor on the room for water in the drainage layer, and so on the liters that stand in a centimeter.
    /// </summary>
    public double DrainagePores { get; init; } = 1;

    /// <summary>No change.</summary>
    public static readonly CurveChange None = new(1, 1, 0);

    /// <summary>The changed parameters.</summary>
    public VanGenuchtenParameters Apply(VanGenuchtenParameters curve)
    {
        var alpha = Alpha;
        return curve with
        {
            KsMetersPerSecond = curve.KsMetersPerSecond * Conductivity,
            Modes = [.. curve.Modes.Select(m => m with { AlphaPerMeter = m.AlphaPerMeter * alpha })],
        };
    }
}
