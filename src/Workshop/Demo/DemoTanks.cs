using System.Globalization;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Demo;

/// <summary>
/// The breeding room with its twenty-four tanks, the old show tank, and tanks that were delivered; each with
/// its log. The room keeps the dates of its loggers; what goes on until today follows the day it is filled.
/// </summary>
/// <param name="book">The demo so far: its orders and lots.</param>
/// <param name="designs">Design of the breeding tanks, and of the old show tank.</param>
/// <param name="today">Day the demo is filled.</param>
internal sealed class DemoTanks(DemoBook book, DemoTankDesigns designs, DateOnly today)
{
    /// <summary>Key of the breeding room.</summary>
    public const string Room = "breeding-room";

    /// <summary>Number of the old show tank.</summary>
    public const string OldTank = "T-17";

    private const int Delivered = 6;
    private static readonly DateOnly Planted = new(2025, 10, 6);
    private static readonly string[] Racks = ["A", "B", "C"];

    /// <summary>Writes rooms, tanks and logs.</summary>
    public void Write()
    {
        book.NewRooms.Add(Breeding());
        foreach (var rack in Racks)
        {
            for (var slot = 1; slot <= 8; slot++)
            {
                book.NewTanks.Add(InRoom(rack, slot));
            }
        }

        book.NewTanks.Add(Old());
        new DemoVisits(book, today).Write();
        book.NewTanks.AddRange(Sold());
        var log = new DemoCare(today);
        foreach (var tank in book.NewTanks)
        {
            book.NewCare.AddRange(log.Write(tank));
        }
    }

    private static TankRoom Breeding() =>
        new()
        {
            Key = Room,
            Name = "Breeding room",
            LengthMeters = 6.0,
            DepthMeters = 2.8,
            DoorMeters = 0.8,
            TimeZone = "Europe/Berlin",
            SetCelsius = 21.6,
            Racks =
            [
                Rack("A", 0.2, [0.20, 0.85]),
                Rack("B", 2.1, [0.45, 1.10]),
                Rack("C", 4.0, [0.90, 1.60]),
            ],
        };

    private static TankRack Rack(string name, double left, double[] shelves) =>
        new()
        {
            Name = name,
            LeftMeters = left,
            FrontMeters = 2.3,
            LengthMeters = 1.76,
            DepthMeters = 0.45,
            ShelfMeters = [.. shelves],
            Slots = 4,
        };

    private Tank InRoom(string rack, int slot) =>
        new()
        {
            Code = string.Create(CultureInfo.InvariantCulture, $"{rack}{slot}"),
            Name = "Breeding tank",
            Design = designs.Breeding?.Id,
            DrawnVersion = designs.Breeding?.Version ?? 0,
            Planted = Planted,
            // Each rack is looked at on days of its own.
            Since = Planted.AddDays(7 + ((rack[0] - 'A') * 2)),
            Place = new()
            {
                Room = Room,
                Rack = rack,
                Shelf = slot > 4 ? 2 : 1,
                Slot = slot > 4 ? slot - 4 : slot,
                Zone = rack,
            },
            Lots = Lots(rack[0] - 'A'),
        };

    /// <summary>Soil and crew of a rack, out of the stock of the year before.</summary>
    private Seq<string> Lots(int rack)
    {
        var soil = book.Batches.ElementAtOrDefault(rack)?.Lot;
        var crew = book
            .Cultures.Where(c => c.Mother is null && c.Line != "C")
            .ElementAtOrDefault(rack)
            ?.Number;
        return [.. new[] { soil, crew }.OfType<string>()];
    }

    private Tank Old() =>
        new()
        {
            Code = OldTank,
            Name = "Ilse's old show tank",
            Design = designs.Old?.Id,
            DrawnVersion = designs.Old?.Version ?? 0,
            Planted = new DateOnly(2022, 3, 1),
            Since = new DateOnly(2022, 3, 1),
            Place = new() { Room = Room },
            Notes = "Front vent taped in January \"to keep it humid\".",
        };

    /// <summary>The last tanks that were built, planted and handed over.</summary>
    private IEnumerable<Tank> Sold() =>
        book
            .Orders.Where(o => o.Number < DemoHistory.First + DemoHistory.Count)
            .Where(o => o.Items[0].Kind == OrderItemKind.Build)
            .OrderByDescending(o => o.Number)
            .Take(Delivered)
            .Select(o =>
            {
                var code = DemoHistory.TankOf(o.Number);
                var day = book.Lots.First(l => l.Id == code).Since;
                return new Tank
                {
                    Code = code,
                    Name = o.Items[0].Name,
                    Design = o.Items[0].Design,
                    DrawnVersion = o.Items[0].Version,
                    Order = o.Number,
                    Customer = o.Customer,
                    Planted = day,
                    Since = day.AddDays(45),
                    Lots =
                    [
                        .. book
                            .Lines.Where(m => m.Kind == MovementKind.Used && m.Into == code)
                            .Select(m => m.Lot)
                            .Distinct(),
                    ],
                };
            });
}

/// <summary>Designs of tanks that run in the demo; null where they are not there.</summary>
/// <param name="Breeding">The breeding tanks.</param>
/// <param name="Old">The old show tank.</param>
public sealed record DemoTankDesigns(KeptDesign? Breeding, KeptDesign? Old);

/// <summary>A design as it is kept.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Version">Its version.</param>
public sealed record KeptDesign(Guid Id, int Version);
