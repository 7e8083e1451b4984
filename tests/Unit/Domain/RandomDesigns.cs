using System.Globalization;
using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Domain;

/// <summary>Random designs a maker could write: every form of every part, units of both worlds.</summary>
internal static class RandomDesigns
{
    private static readonly string[] NamePieces =
    [
        .. "waiting room|LD-201|:|: |#| #|'|\"|\\|{|}|[|]|,|&|*|!|>|%|@|`|-|- |?|=|~".Split('|'),
        .. "é|漢|🐸|none|null|true|1.5|07:30|//|...|---|a b| ".Split('|'),
    ];

    private static readonly Gen<Typed<Length>> Thin = Amount<Length>(2, 12, "mm", 0.1, 0.5, "in");
    private static readonly Gen<Typed<Length>> Panel = Amount<Length>(5, 60, "mm", 0.25, 2, "in");
    private static readonly Gen<Typed<Length>> Layer = Amount<Length>(0, 15, "cm", 0, 6, "in");
    private static readonly Gen<Typed<Length>> Small = Amount<Length>(0, 60, "mm", 0, 2, "inches");
    private static readonly Gen<Typed<Length>> Inside = Amount<Length>(0, 90, "cm", 0, 3, "ft");
    private static readonly Gen<Typed<Share>> Part = Amount<Share>(0, 80, "%", 0, 80, "percent");
    private static readonly Gen<Typed<Duration>> Wait = Amount<Duration>(1, 90, "s", 1, 30, "min");
    private static readonly Gen<TimeOnly> Clock = Gen.Int[0, 1439].Select(m => new TimeOnly(m / 60, m % 60));

    private static readonly Gen<string> Name = Pick.From(NamePieces)
        .Array[1, 6]
        .Select(pieces => string.Concat(pieces).Trim())
        .Where(name => name.Length > 0);

    private static readonly Gen<Seq<Typed<Length>>> Measured = Many(
        Amount<Length>(20, 160, "cm", 8, 70, "in"),
        1,
        3
    );

    private static readonly Gen<Edges> Size = Gen.Select(
        Measured,
        Measured,
        Measured,
        (length, depth, height) =>
            new Edges
            {
                Length = length,
                Depth = depth,
                Height = height,
            }
    );

    private static readonly Gen<Glass> Panes = Gen.Select(Thin, Pick.Maybe(Thin), (walls, below) =>
        new Glass { Walls = walls, Base = below }
    );

    private static readonly Gen<Box> Boxes =
        from outside in Gen.Bool
        from edges in Size
        from glass in Panes
        from glassToo in Gen.Bool
        from opening in Pick.From(Enum.GetValues<Opening>())
        from sill in Pick.Maybe(Small)
        from rim in Pick.Maybe(Amount<Length>(0, 20, "mm", 0, 0.5, "in"))
        from topEdge in Pick.Maybe(Pick.From(Enum.GetValues<TopEdge>()))
        select new Box
        {
            Outside = outside ? edges : null,
            Inside = outside ? null : edges,
            Glass = outside || glassToo ? glass : null,
            Opening = opening,
            Sill = sill,
            Rim = rim,
            TopEdge = topEdge,
        };

    private static readonly Gen<DrainageLayer> Drainage =
        from raised in Gen.Bool
        from material in Key("aggregate")
        from grid in Pick.Perhaps(Key("grid"))
        from depth in Layer
        from loss in Pick.Maybe(Part)
        select raised
            ? new DrainageLayer
            {
                Raised = depth,
                Grid = grid,
                Loss = loss,
            }
            : new DrainageLayer
            {
                Material = material,
                Depth = depth,
                Loss = loss,
            };

    private static readonly Gen<SoilLayer> Soil =
        from form in Gen.Int[0, 2]
        from recipe in Pick.From(Keys("recipe", "soil"))
        from front in Layer
        from back in Layer
        from zones in Gen.OneOf(Steps(100), Steps(40, 60), Steps(12.5, 50, 37.5))
        from settling in Pick.Maybe(Part)
        from yield in Pick.Maybe(Amount<Share>(50, 100, "%", 50, 100, "percent"))
        from squeeze in Pick.Maybe(Part)
        from loss in Pick.Maybe(Part)
        select new SoilLayer
        {
            Recipe = recipe,
            Depth = form == 0 ? front : null,
            Front = form == 1 ? front : null,
            Back = form == 1 ? back : null,
            Zones = form == 2 ? zones : [],
            Settling = settling,
            MixingYield = yield,
            Squeeze = squeeze,
            Loss = loss,
        };

    private static readonly Gen<MossLayer> Moss =
        from material in Key("moss")
        from depth in Layer
        from cover in Pick.Maybe(Part)
        from loss in Pick.Maybe(Part)
        select new MossLayer
        {
            Material = material,
            Depth = depth,
            Cover = cover,
            Loss = loss,
        };

    private static readonly Gen<LeafLitter> Litter =
        from material in Key("litter")
        from depth in Layer
        from cover in Pick.Maybe(Part)
        from loss in Pick.Maybe(Part)
        select new LeafLitter
        {
            Material = material,
            Depth = depth,
            Cover = cover,
            Loss = loss,
        };

    private static readonly Gen<Litterfall.Domain.Barrier> Mesh =
        from material in Key("mesh")
        from upturn in Pick.Maybe(Small)
        from piece in Pick.Perhaps(
            Gen.Select(Measured, Measured, (l, d) => new Piece { Length = l, Depth = d })
        )
        select new Litterfall.Domain.Barrier
        {
            Material = material,
            Upturn = upturn,
            OnHand = piece,
        };

    private static readonly Gen<Floor> Floors =
        from drainage in Pick.Perhaps(Drainage)
        from barrier in Pick.Perhaps(Mesh)
        from soil in Pick.Perhaps(Soil)
        from moss in Pick.Perhaps(Moss)
        from litter in Litter
        from litterToo in Gen.Bool
        select new Floor
        {
            Drainage = drainage,
            Barrier = barrier,
            Soil = soil,
            Moss = moss,
            Litter = litterToo || (soil is null && drainage is null) ? litter : null,
        };

    private static readonly Gen<HardscapePiece> Wood =
        from material in Key("hardscape")
        from mass in Amount<Mass>(0, 9, "kg", 0, 20, "lb")
        from volume in Pick.Maybe(Amount<Volume>(0, 9, "L", 0, 2, "gal"))
        from buried in Pick.Maybe(Part)
        from seat in Pick.Maybe(Pick.From(Enum.GetValues<Seat>()))
        select new HardscapePiece
        {
            Material = material,
            Mass = mass,
            Volume = volume,
            Buried = buried,
            Seat = seat,
        };

    private static readonly Gen<Lid> Lids =
        from mesh in Key("mesh")
        from isMesh in Gen.Bool
        from share in Pick.Maybe(Part)
        from thickness in Pick.Maybe(Thin)
        from gap in Pick.Maybe(Amount<Length>(0, 5, "mm", 0, 0.25, "in"))
        from overlap in Pick.Maybe(Small)
        select new Lid
        {
            Material = isMesh ? mesh : "glass",
            Share = isMesh ? share : null,
            Thickness = thickness,
            Gap = gap,
            Overlap = overlap,
        };

    private static readonly Gen<Vent> Vents =
        from area in Amount<Area>(0, 90, "cm2", 0, 20, "sq in")
        from byArea in Gen.Bool
        from length in Small
        from height in Pick.Maybe(Inside)
        from side in Pick.Maybe(Pick.From(Enum.GetValues<Side>()))
        select new Vent
        {
            Area = byArea ? area : null,
            Length = byArea ? null : length,
            Width = byArea ? null : length,
            Height = height,
            Side = side,
        };

    private static readonly Gen<Misting> Mist =
        from nozzles in Gen.Int[1, 9]
        from each in Amount<Flow>(10, 120, "mL/min", 0.1, 2, "gal/h")
        from times in Many(Gen.Select(Clock, Wait, (at, wait) => new MistTime { At = at, For = wait }), 0, 4)
        select new Misting
        {
            Nozzles = nozzles,
            Each = each,
            Times = times,
        };

    private static readonly Gen<Fan> Fans =
        from flow in Amount<Flow>(1, 20, "m3/h", 100, 400, "L/min")
        from use in Pick.From(Enum.GetValues<FanUse>())
        from start in Pick.Maybe(Clock)
        from end in Pick.Maybe(Clock)
        select new Fan
        {
            Flow = flow,
            Use = use,
            On = start,
            Off = end,
        };

    private static readonly Gen<Fogger> Foggers =
        from rate in Amount<Flow>(10, 400, "mL/h", 0.01, 0.1, "gal/h")
        from times in Many(Gen.Select(Clock, Wait, (at, wait) => new MistTime { At = at, For = wait }), 0, 2)
        select new Fogger { Rate = rate, Times = times };

    private static readonly Gen<Planting> Plant =
        from kind in Key("plant")
        from count in Gen.Int[1, 5]
        from x in Inside
        from z in Pick.Maybe(Inside)
        from placed in Gen.Bool
        from mounted in Gen.Bool
        from leaves in Pick.Maybe(Pick.From(Enum.GetValues<LeafFacing>()))
        select new Planting
        {
            Kind = kind,
            Count = count,
            At = placed
                ? new Place
                {
                    X = x,
                    Y = x,
                    Z = z,
                }
                : null,
            Mounted = mounted,
            Leaves = leaves,
        };

    private static readonly Gen<RoomAir> Air =
        from temperature in Pick.Maybe(Amount<Temperature>(-5, 35, "C", 20, 95, "F"))
        from swing in Pick.Maybe(Amount<TemperatureDifference>(0, 5, "K", 0, 9, "F"))
        from humidity in Pick.Maybe(Part)
        select new RoomAir
        {
            Temperature = temperature,
            Swing = swing,
            Humidity = humidity,
        };

    private static readonly Gen<Room> Rooms =
        from air in Air
        from weekend in Pick.Perhaps(Air)
        from january in Pick.Perhaps(Air)
        from facing in Pick.From(Enum.GetValues<Facing>())
        select new Room
        {
            Temperature = air.Temperature,
            Swing = air.Swing,
            Humidity = air.Humidity,
            Weekend = weekend,
            Months = january is null ? null : new RoomYear { Jan = january, Dec = weekend },
            Faces = new Faces { Back = facing },
        };

    private static readonly Gen<Design> Built =
        from name in Name
        from box in Boxes
        from floor in Floors
        from wood in Many(Wood, 0, 3)
        from lid in Pick.Perhaps(Lids)
        from vents in Many(Vents, 0, 2)
        from bleach in Pick.Maybe(Amount<Share>(1, 12, "%", 1, 12, "percent"))
        from rated in Pick.Maybe(Amount<Mass>(1, 200, "kg", 1, 400, "lb"))
        from background in Pick.Perhaps(Gen.Select(Key("background"), Panel, Many(Sides, 0, 3), Covered))
        select new Design
        {
            Version = 1,
            Name = name,
            Box = box,
            Floor = floor,
            Hardscape = wood,
            Lid = lid,
            Vents = vents,
            Hygiene = bleach is null ? null : new Hygiene { Bleach = bleach },
            Shelf = rated is null ? null : new Shelf { Rated = rated },
            Background = background,
        };

    private static Gen<Side> Sides => Pick.From(Side.Back, Side.Left, Side.Right);

    private static readonly Gen<OverBox> Over = Gen.Select(Inside, Inside, (x, y) =>
        new OverBox { X = x, Y = y }
    );

    private static readonly Gen<Lamp> Lamps =
        from kind in Key("lamp")
        from lumens in Amount<LuminousFlux>(100, 5000, "lm", 100, 5000, "")
        from photons in Pick.Maybe(Amount<PhotonFlux>(5, 60, "umol/s", 5, 60, "µmol/s"))
        from at in Pick.Perhaps(Over)
        from turn in Pick.Maybe(Amount<Angle>(0, 350, "deg", 0, 350, "°"))
        from length in Pick.Maybe(Amount<Length>(5, 120, "cm", 3, 40, "in"))
        from width in Pick.Maybe(Amount<Length>(1, 30, "cm", 1, 10, "in"))
        from beam in Pick.Maybe(Amount<Angle>(15, 160, "deg", 15, 160, "degrees"))
        from age in Pick.Maybe(Amount<Duration>(1, 9000, "h", 1, 900, "d"))
        from ramp in Pick.Maybe(Amount<Duration>(5, 90, "min", 0.5, 2, "h"))
        select new Lamp
        {
            Kind = kind,
            Lumens = lumens,
            Photons = photons,
            At = at,
            Turn = turn,
            Length = length,
            Width = width,
            Beam = beam,
            Age = age,
            Ramp = ramp,
        };

    private static readonly Gen<KnownLight> Known =
        from clean in Pick.Maybe(Amount<Share>(50, 100, "%", 50, 100, "percent"))
        from drops in Pick.Maybe(Amount<Share>(50, 100, "%", 50, 100, "percent"))
        from x in Inside
        from lux in Amount<Illuminance>(10, 9000, "lx", 10, 9000, "lux")
        from meter in Pick.Maybe(Amount<Share>(1, 20, "%", 1, 20, "percent"))
        from isRead in Gen.Bool
        select new KnownLight
        {
            Clean = clean,
            Drops = drops,
            Reading = isRead
                ? new LightReading
                {
                    At = new Place { X = x, Y = x },
                    Lux = lux,
                    Meter = meter,
                }
                : null,
        };

    private static readonly Gen<Design> Drawn =
        from design in Built
        from planted in Pick.Maybe(Gen.Int[0, 20_000].Select(d => new DateOnly(2000, 1, 1).AddDays(d)))
        from form in Pick.From(Enum.GetValues<BuildForm>())
        from boxes in Gen.Int[1, 12]
        from misting in Pick.Perhaps(Mist)
        from plants in Many(Plant, 0, 3)
        from lamps in Many(Lamps, 0, 2)
        from light in Pick.Perhaps(Known)
        from crew in Key("crew")
        from animal in Key("animal")
        from count in Gen.Int[0, 500]
        from room in Pick.Perhaps(Rooms)
        from changes in Pick.Maybe(Amount<AirChangeRate>(0, 9, "/h", 0, 9, ""))
        from temperature in Amount<Temperature>(15, 30, "C", 60, 85, "F")
        from humidity in Part
        from fan in Pick.Perhaps(Fans)
        from fogger in Pick.Perhaps(Foggers)
        select design with
        {
            Planted = planted,
            Form = form,
            Boxes = boxes,
            Misting = misting,
            Plants = plants,
            Lamps = lamps,
            Light = light,
            Crew = [new Inhabitant { Kind = crew, Count = count }],
            Animals = count > 9 ? [] : [new Resident { Kind = animal, Count = count }],
            Room = room,
            Fan = fan,
            Fogger = fogger,
            Headspace = changes is not { } rate
                ? null
                : new Headspace
                {
                    Hold = new HeldAir
                    {
                        Air = temperature,
                        Humidity = humidity,
                        AirChanges = rate,
                    },
                },
        };

    /// <summary>Designs the checker accepts.</summary>
    public static Gen<Design> All { get; } = Drawn.Where(design => !PlausibleRanges.TooMuch(design).Any());

    private static Background Covered(string material, Typed<Length> thickness, Seq<Side> sides) =>
        new()
        {
            Material = material,
            Thickness = thickness,
            Sides = sides,
        };

    private static Gen<Seq<SoilZone>> Steps(params double[] percents) =>
        Layer
            .Array[percents.Length]
            .Select(depths =>
                Seq.Create<SoilZone>([
                    .. percents.Select(
                        (share, i) =>
                            new SoilZone { Share = Parsed<Share>(Text(share, ',') + " %"), Depth = depths[i] }
                    ),
                ])
            );

    private static Gen<Seq<T>> Many<T>(Gen<T> item, int least, int most) =>
        item.Array[least, most].Select(items => Seq.Create<T>(items));

    private static string[] Keys(params string[] kinds) =>
        [.. SampleFiles.Catalog.Entries.Where(e => kinds.Contains(e.Kind.Word())).Select(e => e.Key)];

    private static Gen<string> Key(string kind) => Pick.From(Keys(kind));

    /// <summary>A quantity in one of two units, with point or comma, as typed.</summary>
    private static Gen<Typed<T>> Amount<T>(
        double low,
        double high,
        string unit,
        double otherLow,
        double otherHigh,
        string otherUnit
    )
        where T : struct, IQuantity<T> =>
        from other in Gen.Bool
        from share in Gen.Double[0, 1]
        from mark in Pick.From('.', ',')
        from blank in Pick.From(" ", "")
        let number = other ? otherLow + share * (otherHigh - otherLow) : low + share * (high - low)
        select Parsed<T>(Text(number, mark) + blank + (other ? otherUnit : unit));

    private static string Text(double number, char mark) =>
        number.ToString("0.##", CultureInfo.InvariantCulture).Replace('.', mark);

    private static Typed<T> Parsed<T>(string text)
        where T : struct, IQuantity<T>
    {
        Assert.True(QuantityText.TryParse<T>(text.Trim(), out var typed, out var problem), problem);
        return typed;
    }
}
