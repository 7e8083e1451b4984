using System.Globalization;
using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Quantities;
using Litterfall.Tests.Unit.House;

namespace Litterfall.Tests.Unit.Domain;

/// <summary>Random designs a maker could write: every form of every part, units of both worlds.</summary>
internal static class RandomDesigns
{
    private static readonly string[] NamePieces =
    [
        "waiting", "room", " ", "LD-201", ":", "#", "'", "\"", "\\", "{", "}", "[", "]", ",", "&", "*", "!", "|",
        ">", "%", "@", "`", "-", "?", "=", "~", "é", "漢", "🐸", "none", "null", "true", "1.5", "07:30", "//",
    ];

    private static readonly Gen<Typed<Length>> Thin = Typed<Length>(2, 12, "mm", 0.08, 0.5, "in");
    private static readonly Gen<Typed<Length>> Layer = Typed<Length>(0, 15, "cm", 0, 6, "in");
    private static readonly Gen<Typed<Length>> Small = Typed<Length>(0, 60, "mm", 0, 2, "inches");
    private static readonly Gen<Typed<Share>> Part = Typed<Share>(0, 80, "%", 0, 80, "percent");
    private static readonly Gen<Typed<Duration>> Wait = Typed<Duration>(1, 90, "s", 1, 30, "min");

    private static readonly Gen<TimeOnly> Clock = Gen.Int[0, 1439].Select(m =>
        new TimeOnly(m / 60, m % 60)
    );

    public static Gen<Design> All { get; } =
        from name in Name
        from box in Boxes
        from floor in Floors
        from fittings in Fittings
        from living in Living
        from climate in Climate
        from planted in Pick.Maybe(Gen.Int[0, 20_000].Select(d => new DateOnly(2000, 1, 1).AddDays(d)))
        from boxes in Gen.Int[1, 12]
        from form in Pick.From(Enum.GetValues<BuildForm>())
        select new Design
        {
            Version = 1,
            Name = name,
            Planted = planted,
            Form = form,
            Boxes = boxes,
            Box = box,
            Floor = floor,
            Background = fittings.Background,
            Hardscape = fittings.Hardscape,
            Lid = fittings.Lid,
            Vents = fittings.Vents,
            Drain = fittings.Drain,
            Shelf = fittings.Shelf,
            Hygiene = fittings.Hygiene,
            Misting = living.Misting,
            Lamps = living.Lamps,
            Plants = living.Plants,
            Crew = living.Crew,
            Animals = living.Animals,
            Room = climate.Room,
            Headspace = climate.Headspace,
            Habits = climate.Habits,
        };

    private static Gen<string> Name =>
        Pick.From(NamePieces)
            .Array[1, 6]
            .Select(pieces => string.Concat(pieces).Trim())
            .Where(name => name.Length > 0);

    private static Gen<Box> Boxes =>
        from outside in Gen.Bool
        from edges in Edges
        from walls in Thin
        from basePane in Pick.Maybe(Thin)
        from glassToo in Gen.Bool
        from opening in Pick.From(Enum.GetValues<Opening>())
        from sill in Pick.Maybe(Small)
        from rim in Pick.Maybe(Typed<Length>(0, 20, "mm", 0, 0.5, "in"))
        from topEdge in Pick.Maybe(Pick.From(Enum.GetValues<TopEdge>()))
        select new Box
        {
            Outside = outside ? edges : null,
            Inside = outside ? null : edges,
            Glass = outside || glassToo ? new Glass { Walls = walls, Base = basePane } : null,
            Opening = opening,
            Sill = sill,
            Rim = rim,
            TopEdge = topEdge,
        };

    private static Gen<Edges> Edges =>
        from length in Measured
        from depth in Measured
        from height in Measured
        select new Edges
        {
            Length = length,
            Depth = depth,
            Height = height,
        };

    private static Gen<Seq<Typed<Length>>> Measured =>
        Typed<Length>(20, 160, "cm", 8, 70, "in").Array[1, 3].Select(a => Seq.Create<Typed<Length>>(a));

    private static Gen<Floor> Floors =>
        from drainage in Pick.Perhaps(Drainages)
        from mesh in Pick.Perhaps(Key("mesh"))
        from upturn in Pick.Maybe(Small)
        from soil in Soils
        from moss in Pick.Perhaps(Gen.Select(Key("moss"), Layer, Pick.Maybe(Part)))
        from litter in Pick.Perhaps(Gen.Select(Key("litter"), Layer, Pick.Maybe(Part)))
        select new Floor
        {
            Drainage = drainage,
            Barrier = mesh is null ? null : new Barrier { Material = mesh, Upturn = upturn },
            Soil = soil,
            Moss = moss,
            Litter = litter,
        };
}
