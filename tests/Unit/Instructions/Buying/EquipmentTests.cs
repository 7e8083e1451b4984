using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;
using Litterfall.Instructions.Buying;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Equipping;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Instructions.Buying;

/// <summary>The bill of equipment against the design.</summary>
public sealed class EquipmentTests
{
    private const string Box =
        "{ outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }";

    private const string Floor =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: ready-rainforest, depth: 6 cm } }";

    public static TheoryData<string> Samples =>
        [.. SampleFiles.Paths.Where(p => p.StartsWith("samples/", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_fitting_of_a_sample_has_a_line_and_no_line_is_without_a_use(string sample)
    {
        var numbers = Posed.Sample(sample).Numbers;
        var lines = ShoppingList.Of(numbers).Lines;
        var have = lines
            .Select(l => (numbers.Design.Catalog.Find(l.Key) as EquipmentEntry)?.Part?.Text ?? l.Key)
            .ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Wanted(numbers).Except(have, StringComparer.Ordinal));
        var equipment = lines.Where(l => numbers.Design.Catalog.Find(l.Key) is EquipmentEntry).ToList();
        Assert.NotEmpty(equipment);
        Assert.All(equipment, l => Assert.True(l.Use.Length > 5 && l.Where.Length > 2, l.Key));
        Assert.All(equipment, l => Assert.True(l.Pieces is { Si: >= 1 }, l.Key));
    }

    /// <summary>What each part of a design takes (common practice, no source).</summary>
    private static IEnumerable<string> Wanted(DesignNumbers numbers)
    {
        var design = numbers.Design.Design;
        List<(bool Is, string[] Parts)> rows =
        [
            (
                design.Misting is not null,
                [
                    "mist-pump",
                    "mist-nozzle",
                    "mist-tee",
                    "mist-elbow",
                    "mist-end-cap",
                    "check-valve",
                    "mist-filter",
                    "mist-tank",
                    "seconds-timer",
                ]
            ),
            (design.Drain is { Kind: DrainKind.Siphon }, ["siphon", "drain-bottle"]),
            (design.Drain is { Kind: DrainKind.Bulkhead or DrainKind.Standpipe }, ["bulkhead", "drain-hose"]),
            (design.Drain is { Kind: DrainKind.Standpipe }, ["standpipe"]),
            (design.Floor.Drainage is not null, ["dip-tube"]),
            (design.Floor.Drainage?.Raised is not null, ["floor-foot"]),
            (design.Lamps.Count > 0, ["plug-timer", "ground-fault", "socket-strip"]),
            (design.Fan is not null, ["fan", "fan-supply"]),
            (design.Fogger is not null, ["fogger", "fog-hose"]),
            (design.Heating is not null, ["thermostat"]),
            (
                design.Box.Doors?.Kind == DoorKind.Sliding,
                ["door-track-lower", "door-track-upper", "door-handle"]
            ),
            (design.Box.Doors?.Seal is DoorSeal.Brush, ["door-seal"]),
            (design.Plants.Any(p => p.Mounted), ["mount-pin", "mount-wire"]),
            (design.Plants.Count > 0, ["bleach"]),
            (design.WaterCups > 0, ["water-cup"]),
            (true, ["thermometer", "hygrometer", "tank-label", "gloves", "goggles"]),
        ];
        return rows.Where(r => r.Is).SelectMany(r => r.Parts);
    }

    [Fact]
    public void A_box_with_everything_has_everything()
    {
        var numbers = Posed
            .Run(
                Box,
                Floor,
                """
                heating: { watts: 15 W }
                fan: { flow: 8 m3/h, use: stir, on: "09:00", off: "09:20" }
                fogger: { rate: 100 mL/h, times: [ { at: "06:00", for: 600 s } ] }
                passages: [ { for: mist hose, hole: 8 mm, through: 6 mm } ]
                shelves: [ { depth: 10 cm, thickness: 4 mm, held: corners, load: 1 kg } ]
                basins: [ { length: 12 cm, width: 10 cm, depth: 3 cm } ]
                waterCups: 3
                boxes: 2
                """
            )
            .Numbers;
        var lines = ShoppingList.Of(numbers).Lines;
        Assert.Empty(Wanted(numbers).Except(lines.Select(Part), StringComparer.Ordinal));
        // Two boxes: a mat each, three cups each, four clips each, a grommet each.
        Assert.Equal(2, lines.Single(l => l.Key == "heat-mat-15").Pieces!.Si);
        Assert.Equal(6, lines.Single(l => l.Key == "water-cup").Pieces!.Si);
        Assert.Equal(8, lines.Single(l => l.Key == "shelf-clip").Pieces!.Si);
        Assert.Equal(2, lines.Single(l => l.Key == "grommet").Pieces!.Si);
        Assert.Equal(0.12, lines.Single(l => l.Key == "basin").Length!.Si, 1e-9);
        // 8 m³/h asked: the 40 mm fan of 9 m³/h; 100 mL/h asked: the fogger of 100 mL/h (both recalled).
        Assert.Contains(lines, l => l.Key == "fan-40");
        Assert.Contains(lines, l => l.Key == "fogger-100");

        string Part(ShoppingLine line) =>
            (numbers.Design.Catalog.Find(line.Key) as EquipmentEntry)?.Part?.Text ?? line.Key;
    }

    /// <summary>
    /// UL 943 class A trips at 4 to 6 mA, IEC 60364-4-41 asks for 30 mA at most (both recalled): the device
    /// follows the reader's region, told by the inches of the box.
    /// </summary>
    [Theory]
    [InlineData("samples/ld-202-waiting-room.viv.yaml", 6)]
    [InlineData("samples/ld-201-flat.viv.yaml", 30)]
    public void The_device_protects_people_where_the_reader_lives(string sample, double most)
    {
        var device = PowerPlan.Of(Posed.Sample(sample).Numbers.Design).Protection!;
        Assert.InRange(device.Trip!.Value, most == 6 ? 4 : 10, most);
    }

    [Fact]
    public void Watts_the_design_does_not_tell_are_the_librarys_and_say_so()
    {
        var items = ElectricalList.Of(Posed.Sample("samples/ld-202-waiting-room.viv.yaml").Numbers).Items;
        var pump = Assert.Single(items, i => i.Key == "misting");
        Assert.EndsWith(" W by the library", pump.Power, StringComparison.Ordinal);
        Assert.DoesNotContain(items, i => i.Key == "lamps[0]" && i.IsByLibrary);
    }

    /// <summary>
    /// LD-201: ledges 2 × 440 and 2 × 560 mm, mesh of 450 × 80 and 550 × 90 mm (25 mm over each side): 2.00,
    /// 1.06 and 1.28 m, 4.34 m of a bead of 28 mL/m (common practice): 122 mL. Cork of 0.59 × 0.445 m at
    /// 310 mL for 1.1 m² and a few spots: less than 200 mL more, one cartridge of 310 mL in all.
    /// </summary>
    [Fact]
    public void Silicone_of_everything_is_one_line()
    {
        var lines = ShoppingList.Of(Posed.Sample("samples/ld-201-flat.viv.yaml").Numbers).Lines;
        var line = Assert.Single(lines, l => l.Key == "pack-silicone-neutral-cartridge");
        Assert.Contains("joints, ledges and mesh 122 mL", line.Note, StringComparison.Ordinal);
        Assert.Equal(1, line.Pieces!.Si);
    }

    /// <summary>
    /// The tall box: a back of 438 and a side of 398 mm, 40 mm thick, by 894 mm: 0.747 m². Pressed 3 mm deep
    /// from twice as much (own choices) 4.48 L; a bed of 310 mL for 0.155 m² (library) 1.495 L of silicone.
    /// </summary>
    [Fact]
    public void A_back_of_foam_gets_its_cover()
    {
        var lines = ShoppingList.Of(Posed.Sample("samples/tall-raised-floor.viv.yaml").Numbers).Lines;
        var area = (0.438 + 0.398) * 0.894;
        Assert.Equal(area * 0.003 * 2, lines.Single(l => l.Key == "cover-fiber").Liters!.Si, 1e-9);
        var silicone = lines.Single(l => l.Key == "pack-silicone-neutral-cartridge");
        Assert.Contains("bed of the cover 1495 mL", silicone.Note, StringComparison.Ordinal);
        // With 75 mL under ledges and mesh and a few spots more than five cartridges of 310 mL.
        Assert.Equal(6, silicone.Pieces!.Si);
    }

    /// <summary>An own pump of 20 W at 41.00 and tube at 1.20 a meter.</summary>
    [Fact]
    public void An_own_entry_overrides_and_a_price_names_equipment()
    {
        var shop = Workshop(
            """
            [ { "key": "mist-pump", "kind": "equipment", "name": "our pump",
                "values": { "power": { "value": 20, "unit": "W" } } } ]
            """,
            """[ { "pack": "mist-pump", "price": 41 }, { "pack": "mist-tube-6", "price": 1.2 } ]"""
        );
        var numbers = Posed
            .Text(
                $"""
                litterfall: 1
                name: own
                box: {Box}
                floor: {Floor}
                misting: "{Mist}"
                """.Replace($"\"{Mist}\"", Mist, StringComparison.Ordinal),
                SampleFiles.Catalog.With(shop)
            )
            .Numbers;
        var lines = ShoppingList.Of(numbers).Lines;
        var pump = lines.Single(l => l.Key == "mist-pump");
        Assert.Equal("our pump", pump.Item);
        Assert.Equal(41, pump.Price!.Value, 1e-9);
        Assert.Contains("20 W", pump.Note, StringComparison.Ordinal);
        // 3.6 m as in the test of the plan, at 1.20 a meter.
        Assert.Equal(3.6 * 1.2, lines.Single(l => l.Key == "mist-tube-6").Price!.Value, 1e-9);
    }

    [Fact]
    public void A_price_of_nothing_known_is_still_refused()
    {
        var shop = Workshop("[]", """[ { "pack": "mist-pumpp", "price": 41 } ]""");
        var fault = Assert.Single(WorkshopReader.Unknown(SampleFiles.Catalog.With(shop), "own"));
        Assert.Contains("not a pack or equipment", fault.Message, StringComparison.Ordinal);
        Assert.Contains("mist-pump", fault.Expected, StringComparison.Ordinal);
    }

    private const string Mist = "{ nozzles: 2, each: 90 mL/min }";

    private static Litterfall.Domain.Catalog.Workshop Workshop(string entries, string prices)
    {
        var reading = WorkshopReader.Read(
            "own",
            [new CatalogFile("own.json", entries), new CatalogFile("prices.json", prices)]
        );
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }
}
