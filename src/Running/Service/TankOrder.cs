using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Service;

/// <summary>Numbers of tanks, and the order in which one walks past them.</summary>
public static class TankOrder
{
    /// <summary>A tank by its number or by the number printed on its label, whatever the case.</summary>
    /// <param name="tanks">All tanks; where a number was given again, the one that runs counts.</param>
    /// <param name="code">As it was typed or scanned.</param>
    public static Tank? Find(IEnumerable<Tank> tanks, string code)
    {
        var said = code.Trim();
        bool Is(string number) =>
            number.Length > 0 && string.Equals(number, said, StringComparison.OrdinalIgnoreCase);
        return tanks.OrderByDescending(t => t.IsRunning).FirstOrDefault(t => Is(t.Code))
            ?? tanks.OrderByDescending(t => t.IsRunning).FirstOrDefault(t => Is(t.Label));
    }

    /// <summary>
    /// Running tanks as one walks: room by room from its door, rack by rack, the shelves of a rack from the
    /// top, slots from the left; then those that stand nowhere.
    /// </summary>
    /// <param name="tanks">Tanks.</param>
    /// <param name="rooms">Rooms; their racks in walking order.</param>
    public static ImmutableArray<Tank> Walk(IEnumerable<Tank> tanks, IReadOnlyList<TankRoom> rooms)
    {
        var ranks = rooms
            .SelectMany((room, r) => room.Racks.Select((rack, k) => ((room.Key, rack.Name), (r, k))))
            .GroupBy(p => p.Item1)
            .ToDictionary(g => g.Key, g => g.First().Item2);
        (int, int) Rank(TankPlace place) =>
            ranks.TryGetValue((place.Room, place.Rack), out var rank) ? rank
            : rooms.Any(r => r.Key == place.Room) ? (Room(rooms, place.Room), int.MaxValue)
            : (int.MaxValue, int.MaxValue);
        return
        [
            .. tanks
                .Where(t => t.IsRunning)
                .OrderBy(t => Rank(t.Place))
                .ThenByDescending(t => t.Place.Shelf)
                .ThenBy(t => t.Place.Slot)
                .ThenBy(t => t.Code, StringComparer.Ordinal),
        ];
    }

    /// <summary>Where a tank stands, in words: "rack A, shelf 2, place 3"; empty where nobody said.</summary>
    /// <param name="place">The place.</param>
    /// <param name="room">Its room; null where it stands in none.</param>
    public static string Tell(TankPlace place, TankRoom? room)
    {
        string[] parts =
        [
            room?.Name ?? "",
            place.Rack.Length > 0 ? $"rack {place.Rack}" : "",
            place.Shelf > 0 ? string.Create(CultureInfo.InvariantCulture, $"shelf {place.Shelf}") : "",
            place.Slot > 0 ? string.Create(CultureInfo.InvariantCulture, $"place {place.Slot}") : "",
        ];
        return string.Join(", ", parts.Where(p => p.Length > 0));
    }

    private static int Room(IReadOnlyList<TankRoom> rooms, string key) =>
        rooms.Select((r, i) => (r, i)).First(p => p.r.Key == key).i;
}
