using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Web.Shop.Stock;
using NodaTime;

namespace Litterfall.Web.Tanks.Places;

/// <summary>What is typed of a rack.</summary>
public sealed class RackDraft
{
    /// <summary>Name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Left edge.</summary>
    public string Left { get; set; } = "";

    /// <summary>Front edge.</summary>
    public string Front { get; set; } = "";

    /// <summary>Length.</summary>
    public string Length { get; set; } = "";

    /// <summary>Depth.</summary>
    public string Depth { get; set; } = "";

    /// <summary>Heights of the shelves.</summary>
    public string Shelves { get; set; } = "";

    /// <summary>Tanks side by side.</summary>
    public string Slots { get; set; } = "";
}

/// <summary>What is typed of a room.</summary>
public sealed class RoomDraft
{
    private const double Longest = 200;

    /// <summary>Its key; empty for a new one.</summary>
    public string Key { get; set; } = "";

    /// <summary>Name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Length.</summary>
    public string Length { get; set; } = "";

    /// <summary>Depth.</summary>
    public string Depth { get; set; } = "";

    /// <summary>Where the door is.</summary>
    public string Door { get; set; } = "";

    /// <summary>Set point.</summary>
    public string Set { get; set; } = "";

    /// <summary>Time zone.</summary>
    public string Zone { get; set; } = "";

    /// <summary>Racks.</summary>
    public List<RackDraft> Racks { get; init; } = [];

    /// <summary>A room as it is.</summary>
    /// <param name="room">The room.</param>
    public static RoomDraft From(TankRoom room) =>
        new()
        {
            Key = room.Key,
            Name = room.Name,
            Length = Text(room.LengthMeters),
            Depth = Text(room.DepthMeters),
            Door = Text(room.DoorMeters),
            Set = room.SetCelsius is { } set ? Text(set) : "",
            Zone = room.TimeZone,
            Racks =
            [
                .. room.Racks.Select(r => new RackDraft
                {
                    Name = r.Name,
                    Left = Text(r.LeftMeters),
                    Front = Text(r.FrontMeters),
                    Length = Text(r.LengthMeters),
                    Depth = Text(r.DepthMeters),
                    Shelves = string.Join("; ", r.ShelfMeters.Select(Text)),
                    Slots = r.Slots.ToString(CultureInfo.InvariantCulture),
                }),
            ],
        };

    /// <summary>The room that is typed, or what is wrong, in one sentence.</summary>
    /// <param name="view">The tanks and rooms.</param>
    public (TankRoom? Room, string? Fault) Read(TankView view)
    {
        if (Name.Trim().Length is 0 or > 100)
        {
            return (null, "Give the room a name of 1 to 100 characters.");
        }

        if (Meters(Length) is not { } length || Meters(Depth) is not { } depth)
        {
            return (null, "Type the room's length and depth in meters, such as 4.2.");
        }

        if (Zone.Trim().Length > 0 && DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone.Trim()) is null)
        {
            return (null, $"{Zone.Trim()} is no time zone; expected one such as Europe/Berlin or America/Chicago.");
        }

        if (Set.Trim().Length > 0 && StockWords.Plain(Set) is not (>= 5 and <= 40))
        {
            return (null, "Type what the heating is set to in °C, 5 to 40, or leave it out.");
        }

        var racks = new List<TankRack>();
        foreach (var rack in Racks)
        {
            var (read, fault) = Rack(rack, (length, depth), racks);
            if (read is null)
            {
                return (null, fault);
            }

            racks.Add(read);
        }

        return (
            new TankRoom
            {
                Key = Key.Length > 0 ? Key : FreeKey(Name.Trim(), view),
                Name = Name.Trim(),
                LengthMeters = length,
                DepthMeters = depth,
                DoorMeters = Math.Clamp(StockWords.Plain(Door) ?? 0, 0, length),
                TimeZone = Zone.Trim(),
                SetCelsius = StockWords.Plain(Set),
                Racks = [.. racks],
            },
            null
        );
    }

    private static (TankRack? Rack, string? Fault) Rack(
        RackDraft draft,
        (double Length, double Depth) room,
        List<TankRack> others
    )
    {
        var name = draft.Name.Trim();
        if (name.Length is 0 or > 20 || others.Any(o => o.Name == name))
        {
            return (null, "Give each rack a name of its own, such as A.");
        }

        ImmutableArray<double?> shelves =
        [
            .. draft
                .Shelves.Split([';', ' '], StringSplitOptions.RemoveEmptyEntries)
                .Select(StockWords.Plain),
        ];
        if (shelves.Length == 0 || shelves.Any(s => s is not (>= 0 and <= 4)) || !shelves.SequenceEqual(shelves.Order()))
        {
            return (null, $"Type the heights of the shelves of rack {name} from below, in meters, such as 0.2; 0.85.");
        }

        if (StockWords.Plain(draft.Slots) is not (>= 1 and <= 60 and var slots))
        {
            return (null, $"Type how many tanks stand side by side on rack {name}, 1 to 60.");
        }

        var (left, front) = (StockWords.Plain(draft.Left) ?? 0, StockWords.Plain(draft.Front) ?? 0);
        return Meters(draft.Length) is not { } length || Meters(draft.Depth) is not { } depth
                ? (null, $"Type length and depth of rack {name} in meters, such as 1.8.")
            : left < 0 || front < 0 || left + length > room.Length + 1e-9 || front + depth > room.Depth + 1e-9
                ? (null, $"Rack {name} does not stand within the room; check its edges, length and depth.")
            : (
                new TankRack
                {
                    Name = name,
                    LeftMeters = left,
                    FrontMeters = front,
                    LengthMeters = length,
                    DepthMeters = depth,
                    ShelfMeters = [.. shelves.Select(s => s!.Value)],
                    Slots = (int)slots,
                },
                null
            );
    }

    private static string FreeKey(string name, TankView view)
    {
        var begin = OwnKey.From(name);
        var key = begin;
        for (var i = 2; view.Rooms.Any(r => r.Key == key); i++)
        {
            key = string.Create(CultureInfo.InvariantCulture, $"{begin}-{i}");
        }

        return key;
    }

    private static double? Meters(string text) => StockWords.Plain(text) is > 0 and <= Longest and var meters ? meters : null;

    private static string Text(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
