using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Keys;

namespace Litterfall.Domain.DesignFile;

/// <summary>From the least to the most that a key takes.</summary>
/// <param name="Least">Least, SI.</param>
/// <param name="Most">Most, SI.</param>
/// <param name="Words">The range as people write it, such as "8 cm to 3 m".</param>
public sealed record PlausibleRange(double Least, double Most, string Words)
{
    /// <summary>True inside the range; its ends are inside.</summary>
    /// <param name="si">A value, SI.</param>
    public bool Holds(double si) => si >= Least - 1e-9 && si <= Most * (1 + 1e-9);
}

/// <summary>
/// The sizes within which a planted box of a small maker lies, and within which every check ends in
/// seconds. Outside
/// of them a slip of the pen (mm for cm, L for mL) is far likelier than such a box, and nothing is
/// computed. All are
/// own choices: the largest boxes of small makers reach about 2.5 m; fog nozzles give 20 to 150 mL and large
/// ones about 1 L a minute; foggers of several heads throw 1 to 2 L an hour; a wet place of the tropics gets
/// 10 m of rain a year, 30 mm a day.
/// </summary>
public static class PlausibleRanges
{
    /// <summary>First day of any date.</summary>
    public static readonly DateOnly FirstDay = new(1990, 1, 1);

    /// <summary>Last day of any date.</summary>
    public static readonly DateOnly LastDay = new(2099, 12, 31);

    /// <summary>Most water of misting, fog and hand a day, as a depth over the floor, m.</summary>
    public const double WaterMetersADay = 0.1;

    /// <summary>Most power of lamps and heating for each square meter of floor, W/m².</summary>
    public const double WattsPerSquareMeter = 3000;

    private const double MilliliterAMinute = 1e-6 / 60;
    private const double LiterAnHour = 1e-3 / 3600;
    private const double Day = 86400;

    private static readonly PlausibleRange Edge = new(0.08, 3, "8 cm to 3 m (3 1/4 in to 118 in)");
    private static readonly PlausibleRange Layer = new(0, 1, "0 to 1 m (39 in)");
    private static readonly PlausibleRange Open = new(0.02, 3, "2 cm to 3 m (1 in to 118 in)");
    private static readonly PlausibleRange Pane = new(0, 0.05, "up to 50 mm (2 in)");
    private static readonly PlausibleRange Fitting = new(0, 0.2, "up to 20 cm (8 in)");
    private static readonly PlausibleRange LampWatts = new(0, 1000, "up to 1000 W for each lamp");

    private static readonly ImmutableDictionary<(Type Owner, string Key), PlausibleRange> ByKey =
        new Dictionary<(Type, string), PlausibleRange>
        {
            [(typeof(Edges), "length")] = Edge,
            [(typeof(Edges), "depth")] = Edge,
            [(typeof(Edges), "height")] = Edge,
            [(typeof(Glass), "walls")] = Pane,
            [(typeof(Glass), "base")] = Pane,
            [(typeof(Lid), "thickness")] = Pane,
            [(typeof(Doors), "thickness")] = Pane,
            [(typeof(Doors), "height")] = Open,
            [(typeof(Doors), "overlap")] = Fitting,
            [(typeof(Doors), "play")] = Fitting,
            [(typeof(InsideShelf), "length")] = Open,
            [(typeof(InsideShelf), "depth")] = Open,
            [(typeof(InsideShelf), "thickness")] = Pane,
            [(typeof(InsideShelf), "load")] = new(0, 200, "up to 200 kg"),
            [(typeof(DrainageLayer), "depth")] = Layer,
            [(typeof(DrainageLayer), "raised")] = Layer,
            [(typeof(SoilLayer), "depth")] = Layer,
            [(typeof(SoilLayer), "front")] = Layer,
            [(typeof(SoilLayer), "back")] = Layer,
            [(typeof(SoilZone), "depth")] = Layer,
            [(typeof(SoilZone), "front")] = Layer,
            [(typeof(SoilZone), "back")] = Layer,
            [(typeof(MossLayer), "depth")] = Layer,
            [(typeof(Basin), "length")] = Open,
            [(typeof(Basin), "width")] = Open,
            [(typeof(Basin), "depth")] = Layer,
            [(typeof(Basin), "edge")] = Layer,
            [(typeof(LeafLitter), "depth")] = Layer,
            [(typeof(Misting), "each")] = new(
                MilliliterAMinute,
                2000 * MilliliterAMinute,
                "1 mL/min to 2 L/min for each nozzle"
            ),
            [(typeof(MistHose), "length")] = new(0, 100, "up to 100 m (330 ft)"),
            [(typeof(MistHose), "bore")] = new(0.0005, 0.05, "0.5 to 50 mm (2 in)"),
            [(typeof(MistHose), "fill")] = new(
                MilliliterAMinute,
                20_000 * MilliliterAMinute,
                "1 mL/min to 20 L/min"
            ),
            [(typeof(Fogger), "rate")] = new(LiterAnHour / 1000, 2 * LiterAnHour, "1 mL/h to 2 L/h"),
            [(typeof(MistTime), "for")] = new(0, Day, "up to 24 h"),
            [(typeof(Fan), "flow")] = new(0, 500.0 / 3600, "up to 500 m3/h"),
            [(typeof(Heating), "watts")] = new(0, 500, "up to 500 W"),
            [(typeof(Lamp), "watts")] = LampWatts,
            [(typeof(Lamp), "lumens")] = new(0, 150_000, "up to 150 000 lm for each lamp"),
            [(typeof(Lamp), "above")] = new(0, 3, "up to 3 m (118 in)"),
            [(typeof(Vent), "area")] = new(0, 6, "up to 6 m2"),
            [(typeof(Habits), "handMist")] = new(0, 0.1, "up to 100 L a day"),
            [(typeof(HeldAir), "airChanges")] = new(0, 200.0 / 3600, "up to 200 /h"),
        }.ToImmutableDictionary();

    /// <summary>The range of dates in words.</summary>
    public static string Dates { get; } =
        string.Create(
            CultureInfo.InvariantCulture,
            $"a day from {FirstDay:yyyy-MM-dd} to {LastDay:yyyy-MM-dd}"
        );

    /// <summary>The range of a key; null where it has none of its own.</summary>
    /// <param name="owner">The record it is a key of.</param>
    /// <param name="key">The key.</param>
    public static PlausibleRange? Find(Type owner, string key) => ByKey.GetValueOrDefault((owner, key));

    /// <summary>True for a day that dates can be counted from.</summary>
    /// <param name="day">A day.</param>
    public static bool Holds(DateOnly day) => day >= FirstDay && day <= LastDay;

    /// <summary>What a design asks of one box in all, where that is too much.</summary>
    /// <param name="design">A design whose keys lie in their ranges.</param>
    public static IEnumerable<(string Path, string Message, string Expected)> TooMuch(Design design)
    {
        if ((design.Box.Outside ?? design.Box.Inside) is not { } edges)
        {
            yield break;
        }

        var floor = edges.Length.Min(e => e.Si) * edges.Depth.Min(e => e.Si);
        var water = WaterADay(design) / floor;
        if (water > WaterMetersADay)
        {
            yield return (
                design.Misting is not null ? "misting"
                : design.Fogger is not null ? "fogger"
                : "habits.handMist",
                FormattableString.Invariant(
                    $"{1000 * water * floor:0.#} L of mist and fog a day on this floor"
                ),
                FormattableString.Invariant(
                    $"at most {1000 * WaterMetersADay * floor:0.#} L a day, 10 cm over the floor"
                )
            );
        }

        if (design.Lamps.Count * design.Plants.Count > PlausibleCounts.LampsTimesPlants)
        {
            yield return (
                "plants",
                $"{design.Lamps.Count} lamps over {design.Plants.Count} lines of plants",
                $"lamps times lines of plants of at most {PlausibleCounts.LampsTimesPlants}: several plants "
                    + "of a kind in one line, or fewer lamps"
            );
        }

        var watts = design.Lamps.Sum(l => l.Watts?.Si ?? 0) + (design.Heating?.Watts.Si ?? 0);
        var most = WattsPerSquareMeter * floor;
        if (watts > most)
        {
            yield return (
                design.Lamps.Count > 0 ? "lamps" : "heating.watts",
                FormattableString.Invariant($"lamps and heating take {watts:0.#} W in all over this floor"),
                FormattableString.Invariant($"at most {most:0} W, {WattsPerSquareMeter:0} W a square meter")
            );
        }
    }

    private static double WaterADay(Design design)
    {
        var misted = design.Misting is { } mist
            ? mist.Nozzles * mist.Each.Si * mist.Times.Sum(t => t.For.Si)
            : 0;
        var fogged = design.Fogger is { } fog ? fog.Rate.Si * fog.Times.Sum(t => t.For.Si) : 0;
        return misted + fogged + (design.Habits?.HandMist?.Si ?? 0);
    }
}
