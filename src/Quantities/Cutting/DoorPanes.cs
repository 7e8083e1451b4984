using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>The panes of doors as they are cut, all alike; lengths in meters.</summary>
/// <param name="Kind">How they open.</param>
/// <param name="Sheet">Their material.</param>
/// <param name="Count">How many for one box.</param>
public sealed record DoorPanes(DoorKind Kind, SheetEntry Sheet, int Count)
{
    private static readonly Figure UsualOverlap = Figure.Given(
        "overlap of sliding panes",
        0.025,
        Unit.Millimeter,
        Citation.Habit("sliding panes overlap by 20 to 30 mm")
    );

    private static readonly Figure UsualPlay = Figure.Choice(
        "floors of both tracks and play",
        5,
        Unit.Millimeter,
        "about 1.5 mm for the floor of each track and 2 mm of play; measure the tracks"
    );

    private static readonly Figure UsualGap = Figure.Given(
        "gap around a hinged or lifted pane",
        0.002,
        Unit.Millimeter,
        Citation.Habit("2 to 3 mm between sliding or hinged panes, the lower end taken")
    );

    /// <summary>Width of one pane.</summary>
    public required Figure Width { get; init; }

    /// <summary>Height of a pane.</summary>
    public required Figure Height { get; init; }

    /// <summary>Thickness as ordered.</summary>
    public required Figure Thickness { get; init; }

    /// <summary>Height of the opening they close.</summary>
    public required Figure OpeningHeight { get; init; }

    /// <summary>Mass of one pane, kg; null where the library has no density.</summary>
    public Figure? Mass { get; init; }

    /// <summary>Mass the maker of track or hinges allows for one pane, kg; null where not entered.</summary>
    public Figure? Rated { get; init; }

    /// <summary>What was assumed, in words.</summary>
    public required string Note { get; init; }

    /// <summary>
    /// Doors of a design; null where their kind or thickness is not known or nothing is left of them.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static DoorPanes? Of(CheckedDesign design, BoxGeometry box)
    {
        if (
            design.Design.Box is not { Opening: Opening.Front, Doors: { Kind: { } kind } doors }
            || Sheets.Of(design, "box.doors.material") is not { } sheet
            || Thick(design, box) is not { } thickness
        )
        {
            return null;
        }

        var count = CountOf(design.Design);
        var opening = Measured(design, box);
        var (width, height) = Size(design, box, opening, count);
        return width.Si <= 0 || height.Si <= 0
            ? null
            : new DoorPanes(kind, sheet, count)
            {
                Width = CutList.Fit("door width", width),
                Height = CutList.Fit("door height", height),
                Thickness = thickness,
                OpeningHeight = opening,
                Mass = sheet.Density is { } density
                    ? (width * height * thickness * density).As("mass of a door pane", Unit.Kilogram)
                    : null,
                Rated = doors.Rated is { } rated
                    ? design.Figure("box.doors.rated", "mass allowed for a door pane", rated, Unit.Kilogram)
                    : null,
                Note = Told(doors, kind),
            };
    }

    /// <summary>How many door panes a box has.</summary>
    /// <param name="design">A design that opens in front.</param>
    public static int CountOf(Design design) =>
        design.Box.Doors is not { } doors ? 2 : doors.Count ?? (doors.Kind == DoorKind.LiftOut ? 1 : 2);

    private static Figure? Thick(CheckedDesign design, BoxGeometry box) =>
        design.Design.Box.Doors!.Thickness is { } typed
            ? design.Figure("box.doors.thickness", "door thickness", typed, Unit.Millimeter)
            : box.Walls;

    private static Figure Measured(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Box.Doors!.Height is { } typed)
        {
            return design.Figure("box.doors.height", "height of the front opening", typed, Unit.Millimeter);
        }

        return WallPlan.DoorOpening(design, box)?.As("height of the front opening", Unit.Millimeter)
            ?? OpeningPlan.Zero;
    }

    private static (Figure Width, Figure Height) Size(
        CheckedDesign design,
        BoxGeometry box,
        Figure opening,
        int count
    )
    {
        var doors = design.Design.Box.Doors!;
        var panes = Figure.Number(count);
        if (doors.Kind == DoorKind.Sliding)
        {
            var overlap = doors.Overlap is { } o
                ? design.Figure("box.doors.overlap", "overlap of sliding panes", o, Unit.Millimeter)
                : UsualOverlap;
            var play = doors.Play is { } p
                ? design.Figure("box.doors.play", "floors of both tracks and play", p, Unit.Millimeter)
                : UsualPlay;
            return ((box.InsideLength + Figure.Number(count - 1) * overlap) / panes, opening - play);
        }

        var gap = doors.Gap is { } g
            ? design.Figure("box.doors.gap", "widest gap of the closed doors", g, Unit.Millimeter)
            : UsualGap;
        return (
            (box.InsideLength - Figure.Number(count + 1) * gap) / panes,
            opening - Figure.Number(2) * gap
        );
    }

    private static string Told(Doors doors, DoorKind kind)
    {
        var assumed = new List<string>();
        if (doors.Thickness is null)
        {
            assumed.Add("thickness of the walls");
        }

        if (doors.Material is null)
        {
            assumed.Add("material of the walls");
        }

        if (kind == DoorKind.Sliding && doors.Overlap is null)
        {
            assumed.Add(FormattableString.Invariant($"overlap {UsualOverlap.Value:0.#} mm"));
        }

        if (kind == DoorKind.Sliding && doors.Play is null)
        {
            assumed.Add(FormattableString.Invariant($"{UsualPlay.Value:0.#} mm for tracks and play"));
        }

        if (kind != DoorKind.Sliding && doors.Gap is null)
        {
            assumed.Add(FormattableString.Invariant($"{UsualGap.Value:0.#} mm on each side"));
        }

        var words = kind switch
        {
            DoorKind.Sliding => "slides in tracks",
            DoorKind.Hinged => "on hinges",
            _ => "stands in channels",
        };
        return $"{words}; polish all edges"
            + (assumed.Count > 0 ? $"; assumed: {string.Join(", ", assumed)}; measure before cutting" : "");
    }
}
