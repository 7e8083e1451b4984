using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Running.Service;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Service;

/// <summary>What is typed of a tank: when it is put in service, and later.</summary>
public sealed class TankDraft
{
    /// <summary>Its number.</summary>
    public string Code { get; set; } = "";

    /// <summary>Number on its printed label.</summary>
    public string Label { get; set; } = "";

    /// <summary>Its name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Its design; empty for none.</summary>
    public string Design { get; set; } = "";

    /// <summary>Version of the design.</summary>
    public int Version { get; set; }

    /// <summary>Order; null for none.</summary>
    public int? Order { get; set; }

    /// <summary>Key of the customer.</summary>
    public string Customer { get; set; } = "";

    /// <summary>Key of the room.</summary>
    public string Room { get; set; } = "";

    /// <summary>Rack.</summary>
    public string Rack { get; set; } = "";

    /// <summary>Shelf.</summary>
    public string Shelf { get; set; } = "";

    /// <summary>Slot.</summary>
    public string Slot { get; set; } = "";

    /// <summary>Misting zone.</summary>
    public string Zone { get; set; } = "";

    /// <summary>Day it was planted.</summary>
    public DateOnly? Planted { get; set; }

    /// <summary>Day from which it runs.</summary>
    public DateOnly? Since { get; set; }

    /// <summary>Lots, with commas between.</summary>
    public string Lots { get; set; } = "";

    /// <summary>What to remember.</summary>
    public string Notes { get; set; } = "";

    /// <summary>A tank as it is.</summary>
    /// <param name="tank">The tank.</param>
    public static TankDraft From(Tank tank) =>
        new()
        {
            Code = tank.Code,
            Label = tank.Label,
            Name = tank.Name,
            Design = tank.Design?.ToString() ?? "",
            Version = tank.DrawnVersion,
            Order = tank.Order,
            Customer = tank.Customer,
            Room = tank.Place.Room,
            Rack = tank.Place.Rack,
            Shelf = Number(tank.Place.Shelf),
            Slot = Number(tank.Place.Slot),
            Zone = tank.Place.Zone,
            Planted = tank.Planted,
            Since = tank.Since,
            Lots = string.Join(", ", tank.Lots),
            Notes = tank.Notes,
        };

    /// <summary>From an order: the next of its tanks that is not in service yet.</summary>
    /// <param name="order">The order.</param>
    /// <param name="view">The tanks.</param>
    public static TankDraft? From(Order order, TankView view)
    {
        var item = order
            .Items.Where(i => i.Design is not null)
            .FirstOrDefault(i =>
                view.Tanks.Count(t => t.Value.Order == order.Number && t.Value.Design == i.Design) < i.Amount
            );
        if (item is null)
        {
            return null;
        }

        var name = view.Stock.OrderName(order.Number);
        var all = view.Tanks.Select(t => t.Value).ToList();
        return new()
        {
            Code = item.Amount > 1 || all.Any(t => t.Code == name) ? TankCodes.Next(name + "-", all) : name,
            Name = item.Name,
            Design = item.Design?.ToString() ?? "",
            Version = item.Version,
            Order = order.Number,
            Customer = order.Customer,
            Since = view.Today,
            Lots = string.Join(", ", LotsOf(order, view)),
        };
    }

    /// <summary>Lots that went into the tanks of an order by the book of stock.</summary>
    private static IEnumerable<string> LotsOf(Order order, TankView view)
    {
        var number = order.Number.ToString(CultureInfo.InvariantCulture);
        var into = view
            .Stock.Book.Lots.Where(l => l.Lot.Order == order.Number)
            .Select(l => l.Lot.Id)
            .Append(number)
            .Append(view.Stock.OrderName(order.Number))
            .ToHashSet(StringComparer.Ordinal);
        return view
            .Stock.Book.Lots.Where(l =>
                l.Lines.Any(m =>
                    m.Line is { Kind: MovementKind.Used or MovementKind.Sold, Into: { } to }
                    && into.Contains(to)
                )
            )
            .Select(l => l.Lot.Id)
            .Order(StringComparer.Ordinal);
    }

    /// <summary>The tank that is typed, or what is wrong, in one sentence.</summary>
    /// <param name="before">The tank before; null for a new one.</param>
    /// <param name="view">The tanks.</param>
    public (Tank? Tank, string? Fault) Read(Tank? before, TankView view)
    {
        var code = Code.Trim();
        if (before is null && TankCodes.Refusal(code, view.Tanks.Select(t => t.Value)) is { } taken)
        {
            return (null, taken);
        }

        if (Name.Trim().Length is 0 or > 200)
        {
            return (null, "Give the tank a name of 1 to 200 characters.");
        }

        if (Since is not { } since)
        {
            return (null, "Choose the day from which it runs.");
        }

        if (Whole(Shelf) is not { } shelf || Whole(Slot) is not { } slot)
        {
            return (
                null,
                "Shelf and place are whole numbers, 1 for the lowest shelf and the first place from the left."
            );
        }

        var place = new TankPlace
        {
            Room = Room,
            Rack = Rack.Trim(),
            Shelf = shelf,
            Slot = slot,
            Zone = Zone.Trim(),
        };
        return PlaceFault(before, place, view) is { } fault
            ? (null, fault)
            : (
                Made(
                    before
                        ?? new Tank
                        {
                            Code = code,
                            Name = "",
                            Since = since,
                        },
                    since,
                    place
                ),
                null
            );
    }

    private Tank Made(Tank before, DateOnly since, TankPlace place) =>
        before with
        {
            Label = Label.Trim(),
            Name = Name.Trim(),
            Design = Guid.TryParse(Design, out var id) ? id : null,
            DrawnVersion = Version,
            Order = Order,
            Customer = Customer,
            Place = place,
            Planted = Planted,
            Since = since,
            Lots = [.. Split(Lots)],
            Notes = Notes.Trim(),
        };

    private static string? PlaceFault(Tank? before, TankPlace place, TankView view)
    {
        var room = view.Places.FirstOrDefault(r => r.Key == place.Room);
        if (place.Rack.Length == 0 || room is null)
        {
            return null;
        }

        if (room.Racks.FirstOrDefault(r => r.Name == place.Rack) is not { } rack)
        {
            return $"{room.Name} has no rack {place.Rack}; its racks are "
                + $"{string.Join(", ", room.Racks.Select(r => r.Name))}.";
        }

        if (place.Shelf > rack.ShelfMeters.Count || place.Slot > rack.Slots)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"Rack {rack.Name} has {rack.ShelfMeters.Count} shelves with {rack.Slots} places each."
            );
        }

        var other = view.Running.FirstOrDefault(t =>
            t.Code != before?.Code
            && place is { Shelf: > 0, Slot: > 0 }
            && t.Place with { Zone = "" } == place with { Zone = "" }
        );
        return other is null ? null : $"{other.Code} stands there already.";
    }

    /// <summary>Text of a design as it stands for a tank; null where there is none.</summary>
    /// <param name="store">The store.</param>
    /// <param name="tank">The tank.</param>
    internal static async Task<DesignDocument?> DocumentAsync(BenchStore store, Tank tank)
    {
        var stored =
            tank.Design is not { } id ? null
            : tank.Version > 0 ? await store.DesignAsync(id, tank.Version)
            : await store.DesignAsync(id);
        return stored is null ? null : DesignReader.Read(stored.Name, stored.Text).Value;
    }

    private static IEnumerable<string> Split(string lots) =>
        lots.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Distinct(StringComparer.Ordinal);

    private static string Number(int number) =>
        number > 0 ? number.ToString(CultureInfo.InvariantCulture) : "";

    private static int? Whole(string text) =>
        text.Trim().Length == 0 ? 0
        : int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n)
        && n is > 0 and < 1000
            ? n
        : null;
}
