using Litterfall.Domain.Quantities;

namespace Litterfall.Domain.Designs;

/// <summary>Ways to take water out.</summary>
public enum DrainKind
{
    /// <summary>A hose through which water is drawn by hand.</summary>
    Siphon,

    /// <summary>A drilled fitting in the wall or base.</summary>
    Bulkhead,

    /// <summary>A pipe that keeps a fixed level.</summary>
    Standpipe,
}

/// <summary>How water is taken out.</summary>
[Means("How water is taken out.")]
public sealed record Drain
{
    /// <summary>Kind.</summary>
    [Means("siphon, bulkhead or standpipe.")]
    public required DrainKind Kind { get; init; }

    /// <summary>Height over the base inside.</summary>
    [Means("Height of the outlet above the base inside.")]
    public Typed<Length>? Height { get; init; }

    /// <summary>Diameter of the hole.</summary>
    [Means("Diameter of the hole to be drilled.")]
    public Typed<Length>? Diameter { get; init; }

    /// <summary>Side of the hole.</summary>
    [Means("The side it is drilled in; the back if left out.")]
    public Side? Side { get; init; }

    /// <summary>Distance of the middle of the hole along that side.</summary>
    [Means(
        "Distance of its middle from the left end of the front or back, or from the front end of a side wall."
    )]
    public Typed<Length>? Along { get; init; }
}

/// <summary>Misting.</summary>
[Means("The misting system.")]
public sealed record Misting
{
    /// <summary>Nozzles.</summary>
    [Means("Number of nozzles."), Whole(1, 100)]
    public required int Nozzles { get; init; }

    /// <summary>Flow of each.</summary>
    [Means("Flow of each nozzle, measured in a cup.")]
    public required Typed<Flow> Each { get; init; }

    /// <summary>Times.</summary>
    [Means("When it mists, and for how long.")]
    public Seq<MistTime> Times { get; init; } = [];
}

/// <summary>One misting.</summary>
[Means("One misting.")]
public sealed record MistTime
{
    /// <summary>Time of day.</summary>
    [Means("Time of day, as \"07:30\".")]
    public required TimeOnly At { get; init; }

    /// <summary>Duration.</summary>
    [Means("How long.")]
    public required Typed<Duration> For { get; init; }
}

/// <summary>Which way leaves face.</summary>
public enum LeafFacing
{
    /// <summary>Up.</summary>
    Up,

    /// <summary>To the front, as on a back wall.</summary>
    Front,

    /// <summary>To the back.</summary>
    Back,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>All ways: the mean of six faces counts.</summary>
    All,
}

/// <summary>
/// A point in the box: x along the front from the left, y from front to back, z up from the base.
/// </summary>
[Means("A point inside: x along the front from the left, y from front to back, z up from the base.")]
public sealed record Place
{
    /// <summary>Along the front.</summary>
    [Means("Along the front from the left.")]
    public required Typed<Length> X { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back.")]
    public required Typed<Length> Y { get; init; }

    /// <summary>Up.</summary>
    [Means("Up from the base; the ground there if left out.")]
    public Typed<Length>? Z { get; init; }
}

/// <summary>A plant.</summary>
[Means("A plant.")]
public sealed record Planting
{
    /// <summary>Catalog plant.</summary>
    [Key("plant"), Means("Plant."), Names("plant")]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many."), Whole(1, 1000)]
    public int Count { get; init; } = 1;

    /// <summary>Place.</summary>
    [Means("Where it sits.")]
    public Place? At { get; init; }

    /// <summary>Mounted above the ground.</summary>
    [Means("true when it is mounted on wood or background, not planted in soil.")]
    public bool Mounted { get; init; }

    /// <summary>Which way its leaves face.</summary>
    [Means("Which way its leaves face; up, or away from the wall for a climber, if left out.")]
    public LeafFacing? Leaves { get; init; }

    /// <summary>Time in plant quarantine.</summary>
    [Means("How long it has been in plant quarantine before planting.")]
    public Typed<Duration>? Quarantined { get; init; }
}

/// <summary>A crew animal.</summary>
[Means("A crew animal to seed.")]
public sealed record Inhabitant
{
    /// <summary>Catalog crew.</summary>
    [Key("animal"), Means("Crew animal."), Names("crew")]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many per box."), Whole(0, 1_000_000)]
    public required int Count { get; init; }
}

/// <summary>Where an animal comes from.</summary>
public enum AnimalOrigin
{
    /// <summary>Captive bred.</summary>
    CaptiveBred,

    /// <summary>Farm bred.</summary>
    FarmBred,

    /// <summary>Wild caught.</summary>
    WildCaught,
}

/// <summary>State of the papers of an animal.</summary>
public enum PaperState
{
    /// <summary>Proof of legal origin is on file.</summary>
    Held,

    /// <summary>Proof of legal origin is missing.</summary>
    Missing,
}

/// <summary>Result of a pathogen test.</summary>
public enum TestResult
{
    /// <summary>Negative.</summary>
    Clear,

    /// <summary>Not back yet.</summary>
    Pending,

    /// <summary>Positive.</summary>
    Positive,
}

/// <summary>An animal.</summary>
[Means("An animal the box is for.")]
public sealed record Resident
{
    /// <summary>Catalog animal.</summary>
    [Key("animal"), Means("Animal."), Names("animal")]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many per box."), Whole(0, 1000)]
    public required int Count { get; init; }

    /// <summary>Males among them.</summary>
    [Means("How many of them are males, where the sexes are known."), Whole(0, 1000)]
    public int? Males { get; init; }

    /// <summary>Females among them.</summary>
    [Means("How many of them are females, where the sexes are known."), Whole(0, 1000)]
    public int? Females { get; init; }

    /// <summary>Locality or line.</summary>
    [Means("Locality or breeding line.")]
    public string? Line { get; init; }

    /// <summary>Origin.</summary>
    [Means("captive-bred, farm-bred or wild-caught.")]
    public AnimalOrigin? Origin { get; init; }

    /// <summary>Papers.</summary>
    [Means("held when proof of legal origin is on file, missing when it is not.")]
    public PaperState? Papers { get; init; }

    /// <summary>Time in quarantine.</summary>
    [Means("How long they have been in quarantine.")]
    public Typed<Duration>? Quarantined { get; init; }

    /// <summary>Swab for chytrid fungus and ranavirus.</summary>
    [Means("Result of the swab for chytrid fungus and ranavirus.")]
    public TestResult? Swab { get; init; }
}

/// <summary>What a wall of the box faces.</summary>
public enum Facing
{
    /// <summary>The room.</summary>
    Room,

    /// <summary>An outer wall of the house.</summary>
    OuterWall,

    /// <summary>A window.</summary>
    Window,

    /// <summary>Another box.</summary>
    Box,
}

/// <summary>What each pane faces.</summary>
[Means("What each pane faces; the room if left out.")]
public sealed record Faces
{
    /// <summary>Front.</summary>
    [Means("The front.")]
    public Facing Front { get; init; }

    /// <summary>Back.</summary>
    [Means("The back.")]
    public Facing Back { get; init; }

    /// <summary>Left.</summary>
    [Means("The left side.")]
    public Facing Left { get; init; }

    /// <summary>Right.</summary>
    [Means("The right side.")]
    public Facing Right { get; init; }

    /// <summary>Top.</summary>
    [Means("The top.")]
    public Facing Top { get; init; }
}

/// <summary>Air of the room at one time.</summary>
[Means("Air of the room.")]
public sealed record RoomAir
{
    /// <summary>Temperature.</summary>
    [Means("Mean temperature.")]
    public Typed<Temperature>? Temperature { get; init; }

    /// <summary>Swing.</summary>
    [Means("Half the difference between the warmest and the coolest hour.")]
    public Typed<TemperatureDifference>? Swing { get; init; }

    /// <summary>Humidity.</summary>
    [Means("Relative humidity.")]
    public Typed<Share>? Humidity { get; init; }
}

/// <summary>Air of the room by month.</summary>
[Means("Air of the room by month; a month left out is like the room's own values.")]
public sealed record RoomYear
{
    /// <summary>January.</summary>
    [Means("January."), Also("1", "01", "january")]
    public RoomAir? Jan { get; init; }

    /// <summary>February.</summary>
    [Means("February."), Also("2", "02", "february")]
    public RoomAir? Feb { get; init; }

    /// <summary>March.</summary>
    [Means("March."), Also("3", "03", "march")]
    public RoomAir? Mar { get; init; }

    /// <summary>April.</summary>
    [Means("April."), Also("4", "04", "april")]
    public RoomAir? Apr { get; init; }

    /// <summary>May.</summary>
    [Means("May."), Also("5", "05")]
    public RoomAir? May { get; init; }

    /// <summary>June.</summary>
    [Means("June."), Also("6", "06", "june")]
    public RoomAir? Jun { get; init; }

    /// <summary>July.</summary>
    [Means("July."), Also("7", "07", "july")]
    public RoomAir? Jul { get; init; }

    /// <summary>August.</summary>
    [Means("August."), Also("8", "08", "august")]
    public RoomAir? Aug { get; init; }

    /// <summary>September.</summary>
    [Means("September."), Also("9", "09", "september")]
    public RoomAir? Sep { get; init; }

    /// <summary>October.</summary>
    [Means("October."), Also("10", "october")]
    public RoomAir? Oct { get; init; }

    /// <summary>November.</summary>
    [Means("November."), Also("11", "november")]
    public RoomAir? Nov { get; init; }

    /// <summary>December.</summary>
    [Means("December."), Also("12", "december")]
    public RoomAir? Dec { get; init; }
}

/// <summary>The room.</summary>
[Means("The room the box stands in: constant, by month, by weekday, or from a logger file.")]
public sealed record Room
{
    /// <summary>Temperature.</summary>
    [Means("Mean temperature.")]
    public Typed<Temperature>? Temperature { get; init; }

    /// <summary>Swing.</summary>
    [Means("Half the difference between the warmest and the coolest hour.")]
    public Typed<TemperatureDifference>? Swing { get; init; }

    /// <summary>Humidity.</summary>
    [Means("Relative humidity.")]
    public Typed<Share>? Humidity { get; init; }

    /// <summary>Weekend.</summary>
    [Means("Saturdays and Sundays, where they differ.")]
    public RoomAir? Weekend { get; init; }

    /// <summary>Months.</summary>
    [Means("The months that differ.")]
    public RoomYear? Months { get; init; }

    /// <summary>Height above the sea.</summary>
    [Means("Height above the sea, for the pressure of the air; sea level if left out.")]
    public Typed<Elevation>? Altitude { get; init; }

    /// <summary>Logger file.</summary>
    [Means(
        "Logger file with time, temperature and humidity, seen from this file; its days are "
            + "repeated where it ends."
    )]
    public string? Log { get; init; }

    /// <summary>What each pane faces.</summary>
    [Means("What each pane faces.")]
    public Faces? Faces { get; init; }

    /// <summary>Who else can reach the box.</summary>
    [Means("Who else can reach the box: adults, children, pets.")]
    public Seq<Visitor> Visitors { get; init; } = [];
}

/// <summary>Who can reach the box besides its keeper.</summary>
public enum Visitor
{
    /// <summary>Grown people.</summary>
    Adults,

    /// <summary>Children.</summary>
    Children,

    /// <summary>Pets.</summary>
    Pets,
}

/// <summary>The headspace held constant.</summary>
[Means("Replaces the climate model by constants.")]
public sealed record Headspace
{
    /// <summary>The constants.</summary>
    [Means("The constants.")]
    public required HeldAir Hold { get; init; }
}

/// <summary>Constant air in the box.</summary>
[Means("Constant air in the box.")]
public sealed record HeldAir
{
    /// <summary>Temperature.</summary>
    [Means("Temperature of the air.")]
    public required Typed<Temperature> Air { get; init; }

    /// <summary>Humidity.</summary>
    [Means("Relative humidity.")]
    public required Typed<Share> Humidity { get; init; }

    /// <summary>Air changes.</summary>
    [Means("How often the air is replaced per hour.")]
    public required Typed<AirChangeRate> AirChanges { get; init; }
}

/// <summary>Water a keeper mists with.</summary>
public enum MistWater
{
    /// <summary>Reverse osmosis or distilled.</summary>
    Purified,

    /// <summary>Rain water.</summary>
    Rain,

    /// <summary>Tap water.</summary>
    Tap,
}

/// <summary>What the keeper does and how often.</summary>
[Means("What the keeper does and how often.")]
public sealed record Habits
{
    /// <summary>Looks at the level every.</summary>
    [Means("How often the water level is looked at.")]
    public Typed<Duration>? LevelCheck { get; init; }

    /// <summary>Feeds every.</summary>
    [Means("How often the animals are fed.")]
    public Typed<Duration>? Feeding { get; init; }

    /// <summary>Away at a stretch.</summary>
    [Means("Longest time nobody is there.")]
    public Typed<Duration>? Away { get; init; }

    /// <summary>Hand misting per day.</summary>
    [Means("Water misted by hand per day.")]
    public Typed<Volume>? HandMist { get; init; }

    /// <summary>Water.</summary>
    [Means("Water used for misting.")]
    public MistWater? Water { get; init; }
}
