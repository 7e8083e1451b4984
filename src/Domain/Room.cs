using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

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
    [Means("Who else can reach the box: adults, children, pets, or the public where it is on show.")]
    public Seq<Visitor> Visitors { get; init; } = [];
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

    /// <summary>The air of a month; null where it does not differ.</summary>
    /// <param name="month">1 for January.</param>
    public RoomAir? Of(int month) =>
        month switch
        {
            1 => Jan,
            2 => Feb,
            3 => Mar,
            4 => Apr,
            5 => May,
            6 => Jun,
            7 => Jul,
            8 => Aug,
            9 => Sep,
            10 => Oct,
            11 => Nov,
            12 => Dec,
            _ => null,
        };
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

    /// <summary>Anybody: the box is on public show.</summary>
    Public,
}
