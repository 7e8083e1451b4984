using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Light;

/// <summary>Sums up the light of a design and names what each number rests on.</summary>
internal sealed class ComputedLight
{
    private const string How = "direct light through the lid + mirrors of panes + light thrown back";
    private readonly CheckedDesign design;
    private readonly LightBox box;
    private readonly ImmutableArray<LampSource> lamps;
    private readonly LampShares.Lit[] shares;
    private readonly LightField field;
    private readonly ImmutableArray<Canopy> thin;
    private readonly ImmutableArray<Canopy> thick;
    private readonly Figure? turned;
    private readonly double uncertainty;
    private readonly ImmutableArray<Figure> fixtures;

    /// <summary>The light of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its box.</param>
    /// <param name="shares">Where the light of its lamps ends.</param>
    /// <param name="cancel">Ends it, and the figures made of it.</param>
    public ComputedLight(
        CheckedDesign design,
        LightBox box,
        LampShares.Lit[] shares,
        CancellationToken cancel = default
    )
    {
        this.design = design;
        this.box = box;
        this.shares = shares;
        lamps = LampSource.Of(design, box);
        fixtures = LightInputs.Of(design);
        field = new LightField(box, lamps, cancel);
        var leaves = box.With.Light.Leaves.Range!.Value;
        thin = Scaled(leaves.Low);
        thick = Scaled(leaves.High);
        turned = Reading();
        field.Turned = turned?.Si ?? 1.0;
        uncertainty = turned is null
            ? LightUncertainty.Absolute(field.Knowledge, LightLid.IsPane(design), box.With.LightUncertainty)
            : LightUncertainty.Measured(
                design.Design.Light?.Reading?.Meter?.Si ?? box.With.LightUncertainty.Meter.UseSi(),
                field.Knowledge,
                box.With.LightUncertainty
            );
    }

    private ImmutableArray<Canopy> Scaled(double factor) =>
        [.. box.Scene.Canopies.Select(c => c with { LeafAreaPerMeter = factor * c.LeafAreaPerMeter })];

    private IEnumerable<Figure> Inputs =>
        lamps
            .SelectMany(l => new[] { l.Lumens, l.Photons, l.Above })
            .Concat(LightLid.Losses(design, box.With.Light))
            .Concat(box.Edges)
            .Concat(Fixtures)
            .Concat(box.With.Used);

    /// <summary>Glass, mesh, leaves and what throws light back.</summary>
    private IEnumerable<Figure> Fixtures => fixtures;

    /// <summary>All figures.</summary>
    /// <param name="cellMeters">Cells of the map, about, m.</param>
    public LightFigures Figures(double cellMeters = LightPolicy.CellMeters)
    {
        var ground = new GroundLight(box, field, cellMeters);
        var (mean, low, high) = ground.Means(thin, thick);
        double? onLitter = box.Terrain.Litter > 0.0 ? ground.LitterOverSoil() : null;
        var plants = box.Plants.Select((_, i) => PlantLights.Of(this, i)).ToImmutableArray();
        var band = Leafy(mean, low, high);
        return new LightFigures
        {
            Map = ground.Map,
            GroundMean = Band("mean light on the ground", Unit.Micromole, mean.Micromoles * 1e-6, band),
            GroundDaily = Band("mean light on the ground a day", Unit.MolePerDay, mean.Daily / 86400.0, band),
            GroundLux = Band("mean illuminance of the ground", Unit.Lux, mean.Lux, band),
            LitterMean = onLitter is null
                ? null
                : Band(
                    "mean light on the leaf litter",
                    Unit.Micromole,
                    mean.Micromoles * 1e-6 * onLitter.Value,
                    band
                ),
            LitterDaily = onLitter is null
                ? null
                : Band(
                    "mean light on the leaf litter a day",
                    Unit.MolePerDay,
                    mean.Daily / 86400.0 * onLitter.Value,
                    band
                ),
            LeastOverMean = Computed(
                "least over mean light on the ground",
                Unit.One,
                ground.Map.Statistics.Mean > 0.0
                    ? ground.Map.Statistics.Least / ground.Map.Statistics.Mean
                    : 0.0
            ),
            MossMean = ground.Moss is { } moss
                ? Band("mean light on the moss", Unit.Micromole, moss * 1e-6, band)
                : null,
            Refuge = ground.Refuge(plants, Computed),
            Absolute = Parts("uncertainty of computed light", uncertainty),
            Relative = Parts(
                "uncertainty between places",
                LightUncertainty.Relative(box.With.LightUncertainty)
            ),
            Turned = turned,
            Lamps = [.. lamps.Select((l, i) => Lamp(l, i, ground.LampShares[i]))],
            Plants = plants,
            Field = field,
        };
    }

    private Figure Parts(string name, double share) =>
        Figure
            .Computed(
                "parts of flux, distribution, lid, drops, dirt, reflectances, geometry and photons, summed "
                    + "by squares, k = 2",
                share,
                Dimension.None,
                box.With.UsedForUncertainty.AsSpan()
            )
            .As(name, Unit.Percent);

    private static (double Low, double High) Leafy(LightField.Sums mean, double low, double high) =>
        mean.Micromoles > 0.0 ? (low / mean.Micromoles, high / mean.Micromoles) : (1.0, 1.0);

    /// <summary>A computed number with its least and most: uncertainty and leaves, by squares.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="si">Its value, SI.</param>
    /// <param name="leaves">The same with more and with fewer leaves, over the value.</param>
    public Banded Band(string name, Unit unit, double si, (double Low, double High) leaves)
    {
        double down = Math.Min(0.95, Root(uncertainty, 1.0 - leaves.Low));
        double up = Root(uncertainty, leaves.High - 1.0);
        return new Banded(
            Computed(name, unit, si),
            Computed($"least {name}", unit, si * (1.0 - down), box.With.UsedForUncertainty),
            Computed($"most {name}", unit, si * (1.0 + up), box.With.UsedForUncertainty)
        );
    }

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));

    /// <summary>A computed number that names lamps, and a reading where there is one.</summary>
    public Figure Computed(string name, Unit unit, double si) => Computed(name, unit, si, []);

    private Figure Computed(string name, Unit unit, double si, ImmutableArray<Figure> more)
    {
        IEnumerable<Figure> inputs =
            unit.Dimension == Unit.MolePerDay.Dimension && unit.Symbol == "mol/m2/d"
                ? Inputs.Concat(lamps.Select(l => l.FullSeconds))
                : Inputs;
        Figure[] all = [.. turned is null ? inputs : inputs.Append(turned), .. more];
        return Figure.Computed(How, si, unit.Dimension, all).As(name, unit, LightFigures.Engine);
    }

    /// <summary>
    /// Light of all lamps at places, under all leaves but a crown; and under fewer and more leaves.
    /// </summary>
    /// <param name="receivers">Places and where they face.</param>
    /// <param name="crown">Place of the crown left out; -1 for none.</param>
    public (LightField.Sums[] Light, LightField.Sums Thin, LightField.Sums Thick) At(
        ReadOnlySpan<Receiver> receivers,
        int crown
    ) =>
        (
            field.At(receivers, Without(box.Scene.Canopies, crown)),
            field.At(receivers[..1], Without(thin, crown))[0],
            field.At(receivers[..1], Without(thick, crown))[0]
        );

    private static ImmutableArray<Canopy> Without(ImmutableArray<Canopy> canopies, int crown) =>
        crown < 0 ? canopies : canopies.RemoveAt(crown);

    /// <summary>The design.</summary>
    public CheckedDesign Design => design;

    /// <summary>Its box.</summary>
    public LightBox Box => box;

    /// <summary>What a reading turns the computed light by.</summary>
    private Figure? Reading()
    {
        if (design.Design.Light?.Reading is not { } reading)
        {
            return null;
        }

        var (at, origin) = (reading.At, box.Origin);
        double x = Math.Clamp(at.X.Si - origin.X, 0.0, box.Scene.Length);
        double y = Math.Clamp(at.Y.Si - origin.Y, 0.0, box.Scene.Depth);
        double z = at.Z is { } typed ? typed.Si - origin.Z : box.Rise(x, y);
        var place = new Receiver(
            new Point3(x, y, Math.Clamp(z, 0.0, box.Scene.Height - LightPolicy.Free)),
            Point3.Up
        );
        var computed = Computed(
            "illuminance computed there",
            Unit.Lux,
            field.At([place], box.Scene.Canopies)[0].Lux
        );
        return computed.Si <= 0.0
            ? null
            : (design.Figure("light.reading.lux", "illuminance read", reading.Lux, Unit.Lux) / computed).As(
                "what the reading turns the light by",
                Unit.One
            );
    }

    private LampLight Lamp(LampSource lamp, int i, double groundShare)
    {
        var heat = LampHeat.Of(design, i, shares[i], box.With.Light);
        double infrared = shares[i].Infrared?.Inside ?? 0.0;
        double inside =
            (heat.LightWatts * shares[i].Light.Inside)
            + (heat.InfraredWatts * infrared)
            + (heat.CaseWatts * heat.DownShare);
        string words = FormattableString.Invariant($"lamp {i + 1}");
        return new LampLight(lamp.Kind?.Name ?? words, lamp.Path)
        {
            Lumens = lamp.Lumens,
            Photons = lamp.Photons,
            FullHours = lamp.FullSeconds,
            TakenInside = Figure
                .Computed(
                    "rays followed until they are taken: ground, leaves, wood, backgrounds, "
                        + $"{box.With.Light.PaneInside.Figure.Name}",
                    shares[i].Light.Inside,
                    Dimension.None,
                    [.. Inputs]
                )
                .As($"share of the light of {words} taken inside", Unit.Percent, LightFigures.Engine),
            HeatInside = Figure
                .Computed(
                    "light × share taken inside + infrared × its share + heat of the case × share that "
                        + "crosses the lid",
                    inside,
                    Unit.Watt.Dimension,
                    [.. Inputs, .. LightInputs.Heat(design, i)]
                )
                .As($"heat of {words} that stays inside", Unit.Watt, LightFigures.Engine),
            OverMesh = Meets(lamp, LidKind.Mesh),
            GroundShare = groundShare,
            Clock = lamp.Clock,
            LifeHours = lamp.Kind?.LifeToSeventyPercent?.Si / 3600.0,
            Outlines = Outlines(lamp.Luminaires),
            Height =
                lamp.Luminaires.Select(l => l.Center.Z).DefaultIfEmpty(box.Scene.Height).Max() + box.Ground,
            Notes = lamp.File is { } file ? PlacedLamp.Oddities(file) : [],
        };
    }

    /// <summary>Outlines of what shines; strips of one that is turned are its rectangle.</summary>
    private ImmutableArray<ImmutableArray<(double X, double Y)>> Outlines(ImmutableArray<Luminaire> lamps)
    {
        if (lamps.Length < 2 || !lamps.All(l => l.IsStrip))
        {
            return [.. lamps.Select(Outline)];
        }

        double span = PlacedLamp.StripSpan;
        var middle = 0.5 * (lamps[0].Center + lamps[^1].Center);
        var across = 0.5 / span * (lamps[^1].Center - lamps[0].Center);
        var along = lamps[0].HalfLine;
        (double X, double Y) At(Point3 p) => (p.X + box.Origin.X, p.Y + box.Origin.Y);
        return
        [
            [
                At(middle - along - across),
                At(middle + along - across),
                At(middle + along + across),
                At(middle - along + across),
            ],
        ];
    }

    private ImmutableArray<(double X, double Y)> Outline(Luminaire lamp)
    {
        var c = lamp.Center;
        (double X, double Y) At(double dx, double dy) => (c.X + dx + box.Origin.X, c.Y + dy + box.Origin.Y);
        const int corners = 24;
        return lamp.Shape switch
        {
            LuminousShape.Rectangle =>
            [
                At(-lamp.Half.X, -lamp.Half.Y),
                At(lamp.Half.X, -lamp.Half.Y),
                At(lamp.Half.X, lamp.Half.Y),
                At(-lamp.Half.X, lamp.Half.Y),
            ],
            LuminousShape.Line =>
            [
                At(-lamp.HalfLine.X, -lamp.HalfLine.Y),
                At(lamp.HalfLine.X, lamp.HalfLine.Y),
            ],
            _ =>
            [
                .. Enumerable
                    .Range(0, corners)
                    .Select(k => 2.0 * Math.PI * k / corners)
                    .Select(a =>
                        At(
                            Math.Max(lamp.Half.X, 0.005) * Math.Cos(a),
                            Math.Max(lamp.Half.X, 0.005) * Math.Sin(a)
                        )
                    ),
            ],
        };
    }

    /// <summary>Share of the opening straight under the lamp that is of a kind.</summary>
    private double Meets(LampSource lamp, LidKind kind)
    {
        var centers = lamp.Luminaires.Select(l => l.Center).ToList();
        return centers.Count == 0
            ? 0.0
            : centers.Count(c => box.Scene.Lid.Any(p => p.Kind == kind && p.Covers(c.X, c.Y)))
                / (double)centers.Count;
    }
}
