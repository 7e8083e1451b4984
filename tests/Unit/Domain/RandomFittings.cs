using System.Globalization;
using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Domain;

/// <summary>
/// Random designs with what hangs, stands and lies in a box besides: doors, shelves, basins, drains, a mist
/// hose; only those that the checker takes.
/// </summary>
internal static class RandomFittings
{
    private static readonly Gen<Doors> Door =
        from kind in Pick.From(Enum.GetValues<DoorKind>())
        from count in Gen.Int[1, 3]
        from gap in Pick.Maybe(Length(0.5, 3, "mm"))
        from thickness in Pick.Maybe(Length(3, 6, "mm"))
        select new Doors
        {
            Kind = kind,
            Count =
                kind == DoorKind.LiftOut ? 1
                : kind == DoorKind.Sliding ? Math.Max(2, count)
                : count,
            Gap = gap,
            Thickness = thickness,
        };

    private static readonly Gen<InsideShelf> Shelf =
        from depth in Length(3, 12, "in")
        from thickness in Length(4, 8, "mm")
        from load in Gen.Double[0.2, 5]
        from height in Pick.Maybe(Length(10, 19, "cm"))
        from held in Pick.From(Enum.GetValues<ShelfHold>())
        select new InsideShelf
        {
            Depth = depth,
            Thickness = thickness,
            Load = Typed<Mass>(load, "kg"),
            Held = held,
            At = height is { } z
                ? new Place
                {
                    X = Typed<Length>(10, "cm"),
                    Y = depth,
                    Z = z,
                }
                : null,
        };

    private static readonly Gen<Basin> Pool =
        from length in Length(5, 15, "cm")
        from width in Length(2, 6, "in")
        from depth in Length(0.5, 3, "cm")
        from sides in Pick.Maybe(Pick.From(Enum.GetValues<BasinSides>()))
        select new Basin
        {
            Length = length,
            Width = width,
            Depth = depth,
            Sides = sides,
        };

    private static readonly Gen<Drain> Outlet =
        from kind in Pick.From(Enum.GetValues<DrainKind>())
        from height in Length(1, 4, "cm")
        from diameter in Length(12, 25, "mm")
        select new Drain
        {
            Kind = kind,
            Height = kind == DrainKind.Siphon ? null : height,
            Diameter = kind == DrainKind.Siphon ? null : diameter,
        };

    private static readonly Gen<MistHose> Hose =
        from length in Length(0.5, 4, "m")
        from bore in Length(2, 6, "mm")
        from valve in Gen.Bool
        select new MistHose
        {
            Length = length,
            Bore = bore,
            CheckValve = valve,
        };

    private static readonly Gen<Design> Fitted =
        from design in RandomDesigns.All
        from doors in Pick.Perhaps(Door)
        from shelf in Pick.Perhaps(Shelf)
        from basin in Pick.Perhaps(Pool)
        from drain in Pick.Perhaps(Outlet)
        from hose in Pick.Perhaps(Hose)
        select design with
        {
            Box = design.Box with { Doors = design.Box.Opening == Opening.Front ? doors : null },
            Shelves = shelf is null ? [] : Seq.Create<InsideShelf>([shelf]),
            Basins = basin is null ? [] : Seq.Create<Basin>([basin]),
            Drain = drain,
            Misting = design.Misting is { } mist ? mist with { Hose = hose } : null,
        };

    /// <summary>Designs the checker takes, checked.</summary>
    public static Gen<CheckedDesign> All { get; } = Taken(Fitted);

    /// <summary>The same with held air and few lamps, which compute at once.</summary>
    public static Gen<CheckedDesign> Quick { get; } =
        Taken(
            Fitted.Select(design =>
                design with
                {
                    Headspace = design.Headspace
                        ?? new Headspace
                        {
                            Hold = new HeldAir
                            {
                                Air = Typed<Temperature>(24, "C"),
                                Humidity = Typed<Share>(90, "%"),
                                AirChanges = Typed<AirChangeRate>(2, "/h"),
                            },
                        },
                    Lamps = design.Boxes % 4 == 0 ? [.. design.Lamps.Take(1)] : [],
                }
            )
        );

    private static Gen<CheckedDesign> Taken(Gen<Design> designs) =>
        designs.Select(Checked).Where(design => design is not null).Select(design => design!);

    private static CheckedDesign? Checked(Design design)
    {
        var reading = DesignReader.Read("random", DesignWriter.Write(design));
        return reading.Value is { } document && reading.IsGood
            ? DesignChecker.Check(document, SampleFiles.Catalog).Value
            : null;
    }

    private static Gen<Typed<Length>> Length(double low, double high, string unit) =>
        Gen.Double[low, high].Select(number => Typed<Length>(number, unit));

    private static Typed<T> Typed<T>(double number, string unit)
        where T : struct, IQuantity<T>
    {
        var text = number.ToString("0.##", CultureInfo.InvariantCulture) + " " + unit;
        Assert.True(QuantityText.TryParse<T>(text, out var typed, out var problem), problem);
        return typed;
    }
}
