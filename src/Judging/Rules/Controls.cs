using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Lists;

namespace Litterfall.Judging.Rules;

/// <summary>The keys that several rules end in, as a design has them written.</summary>
internal static class Controls
{
    private static readonly string[] Months =
    [
        "january",
        "february",
        "march",
        "april",
        "may",
        "june",
        "july",
        "august",
        "september",
        "october",
        "november",
        "december",
    ];

    /// <summary>The size of the first vent; where there is none, the list to add one to.</summary>
    public static string Vents(Design design) =>
        design.Vents.Count == 0 ? "vents"
        : design.Vents[0].Area is not null ? "vents[0].area"
        : design.Vents[0].Diameter is not null ? "vents[0].diameter"
        : "vents[0].width";

    /// <summary>How long it mists; where nothing mists, the pump to begin with.</summary>
    public static string Mist(Design design) =>
        design.Misting is { Times.Count: > 0 } ? "misting.times[0].for"
        : design.Misting is not null ? "misting.times"
        : design.Habits?.HandMist is not null ? "habits.handMist"
        : "misting.nozzles";

    /// <summary>Depth of the soil where it is thinnest.</summary>
    public static string Soil(Design design)
    {
        if (design.Floor.Soil is not { Zones.Count: > 0 and var count } soil)
        {
            return Depth("floor.soil", design.Floor.Soil?.Front?.Si, design.Floor.Soil?.Back?.Si);
        }

        var thinnest = Enumerable.Range(0, count).MinBy(i => Least(soil.Zones[i]));
        var zone = soil.Zones[thinnest];
        return Depth(At("floor.soil.zones", thinnest), zone.Front?.Si, zone.Back?.Si);
    }

    /// <summary>Depth of the soil along the front.</summary>
    public static string SoilInFront(Design design) =>
        design.Floor.Soil is { Front: not null } ? "floor.soil.front" : Soil(design);

    /// <summary>The power of the lamp that takes the most; where there is none, the room.</summary>
    public static string LampHeat(Design design, string season) =>
        Lamp(design, l => l.Watts?.Si, "watts") ?? Room(design, season);

    /// <summary>The flux of the lamp that gives the most; the list where there is none.</summary>
    public static string LampLight(Design design) => Lamp(design, l => l.Lumens?.Si, "lumens") ?? "lamps";

    /// <summary>How warm the room is in a season; its log where that says it.</summary>
    /// <param name="design">The design.</param>
    /// <param name="season">Such as "in January".</param>
    public static string Room(Design design, string season)
    {
        if (design.Room?.Log is not null)
        {
            return "room.log";
        }

        if (design.Room?.Weekend?.Temperature is not null && season.Contains("weekend", Ignore))
        {
            return "room.weekend.temperature";
        }

        var month = Array.FindIndex(Months, m => season.Contains(m, Ignore));
        return month >= 0 && design.Room?.Months?.Of(month + 1)?.Temperature is not null
            ? $"room.months.{Months[month][..3]}.temperature"
            : "room.temperature";
    }

    /// <summary>An item of a list: "plants[2]".</summary>
    public static string At(string list, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    /// <summary>The item of which there are the most.</summary>
    public static int Largest<T>(Seq<T> items, Func<T, double> size) =>
        Enumerable.Range(0, items.Count).MaxBy(i => size(items[i]));

    private const StringComparison Ignore = StringComparison.OrdinalIgnoreCase;

    private static string Depth(string path, double? front, double? back) =>
        front is { } low && back is { } high ? $"{path}.{(low <= high ? "front" : "back")}" : $"{path}.depth";

    private static double Least(SoilZone zone) =>
        zone.Depth?.Si ?? Math.Min(zone.Front?.Si ?? double.MaxValue, zone.Back?.Si ?? double.MaxValue);

    private static string? Lamp(Design design, Func<Lamp, double?> of, string key) =>
        design.Lamps.Count == 0 ? null : $"{At("lamps", Largest(design.Lamps, l => of(l) ?? 0))}.{key}";
}
