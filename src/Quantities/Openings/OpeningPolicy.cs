using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Openings;

/// <summary>Clearances and widths of parts that close openings: common practice and own choices.</summary>
public static class OpeningPolicy
{
    /// <summary>Sheet of the strips of a lid: light, and mesh is fixed on it.</summary>
    public const string StripSheet = "acrylic-sheet";

    /// <summary>Silicone between two panes.</summary>
    public static readonly Figure Joint = Figure.Given(
        "silicone joint between panes",
        0.0015,
        Unit.Millimeter,
        Citation.Habit("1 to 2 mm between panes, middle taken")
    );

    /// <summary>Clearance on each side of an inset lid.</summary>
    public static readonly Figure LidClearance = Figure.Given(
        "lid clearance on each side",
        0.002,
        Unit.Millimeter,
        Citation.Habit("a lid is 3 to 4 mm smaller than the opening in each direction")
    );

    /// <summary>Plastic left around an opening that mesh is fixed over.</summary>
    public static readonly Figure VentMargin = Figure.Choice(
        "edge of a strip beside its mesh",
        15,
        Unit.Millimeter,
        "mesh needs about 1 cm to be fixed on, and the strip must stay stiff"
    );

    /// <summary>Narrowest pane of a lid.</summary>
    public static readonly Figure Sliver = Figure.Choice(
        "narrowest pane of a lid",
        40,
        Unit.Millimeter,
        "narrower glass is hard to cut and chips; the strip beside it is made wider instead"
    );

    /// <summary>Lowest pane of a wall over or under a vent.</summary>
    public static readonly Figure WallSliver = Figure.Choice(
        "lowest pane beside a vent in a wall",
        15,
        Unit.Millimeter,
        "a glass shop cuts strips from about 15 mm up"
    );

    /// <summary>Bar of glass that carries a track over a vent.</summary>
    public static readonly Figure Bar = Figure.Choice(
        "bar between vent and doors",
        30,
        Unit.Millimeter,
        "the lower track is glued to it"
    );

    /// <summary>Bar over the doors.</summary>
    public static readonly Figure Header = Figure.Choice(
        "bar over the doors",
        40,
        Unit.Millimeter,
        "it carries the upper track and holds the sides together"
    );

    /// <summary>Width of a ledge.</summary>
    public static readonly Figure LedgeWidth = Figure.Choice(
        "width of a ledge",
        15,
        Unit.Millimeter,
        "a lid with its clearance still rests on 1 cm of it"
    );

    /// <summary>Width of the frame of a mesh lid.</summary>
    public static readonly Figure FrameWidth = Figure.Choice(
        "width of the frame of a mesh lid",
        20,
        Unit.Millimeter,
        "mesh is fixed on 1 cm of it"
    );
}
