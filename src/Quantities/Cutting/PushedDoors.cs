using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Plates;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// A closed door under the push of a hand, as it is held: sliding panes below and above, hinged ones on their
/// corners (hinges at one side, catches at the other), a lift-out front below and at its sides.
/// </summary>
public static class PushedDoors
{
    private static readonly Unit Newton = new(
        "N",
        1,
        Unit.Kilogram.Dimension * Unit.MeterPerSecondSquared.Dimension
    );

    /// <summary>Push in the middle of a pane.</summary>
    public static readonly Figure Leaning = Figure.Choice(
        "push of a hand that leans on a door",
        100,
        Newton,
        "about 10 kg; standards of glass and loads name none for furniture, so it is taken here"
    );

    /// <summary>Push at the free edge of a pane.</summary>
    public static readonly Figure Opening = Figure.Choice(
        "push of fingers at the edge of a door",
        50,
        Newton,
        "half of a leaning hand: doors are opened at their free edge"
    );

    private static readonly Figure Palm = Figure.Choice(
        "side of the square a hand presses",
        50,
        Unit.Millimeter,
        "the ball of a hand"
    );

    /// <summary>The doors of a design; none without a kind or a thickness.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<PaneCheck> Of(CheckedDesign design, BoxGeometry box)
    {
        if (
            DoorPanes.Of(design, box) is not { } door
            || door.Sheet
                is not
                {
                    YoungsModulus: { } young,
                    Poisson: { } poisson,
                    AllowablePermanent: { } permanent,
                    AllowableFreeEdge: { } free
                }
        )
        {
            return [];
        }

        var least = Figure
            .NotNegative(door.Thickness - GlassCheck.ThicknessTolerance(design, door.Sheet, door.Thickness))
            .As("least door thickness", Unit.Millimeter);
        var (edge, across) = Turned(door);
        var pane = new PlatePane(
            edge.Si,
            across.Si,
            Math.Max(least.Si, 1e-4),
            young.Si,
            poisson.Si,
            PlateEdge.TopFree
        );
        var inside = door.Sheet.AllowableShort ?? permanent;
        var cut = door.Sheet.AllowableShort is { } brief
            ? (brief * free / permanent).As("allowable stress of a cut edge, short push", Unit.Megapascal)
            : free;
        var cases = new[] { (Leaning, 0.5, inside), (Opening, 1.0, cut) }
            .Select(c => new Case(c.Item1, c.Item3, Bend(pane, door.Kind, c.Item1, c.Item2)))
            .ToArray();
        var worst = cases.MaxBy(c => c.Bent.Stress / c.Allowable.Si)!;
        var widest = cases.MaxBy(c => c.Bent.Sag)!;
        return
        [
            Check(
                door,
                (worst, widest),
                [door.Width, door.Height, least, Palm, poisson],
                (pane, young, edge)
            ),
        ];
    }

    private sealed record Case(Figure Push, Figure Allowable, (double Stress, double Sag) Bent);

    /// <summary>The free edge that is pushed, and the way across from it.</summary>
    private static (Figure Edge, Figure Across) Turned(DoorPanes door) =>
        door.Kind switch
        {
            DoorKind.Sliding => (door.Height, door.Width),
            DoorKind.LiftOut => (door.Width, door.Height),
            _ => door.Height.Si >= door.Width.Si ? (door.Height, door.Width) : (door.Width, door.Height),
        };

    private static (double Stress, double Sag) Bend(PlatePane pane, DoorKind kind, Figure push, double at) =>
        PushedPlate.Solve(
            pane,
            kind switch
            {
                DoorKind.Sliding => PushedHold.Ends,
                DoorKind.LiftOut => PushedHold.EndsAndBottom,
                _ => PushedHold.Corners,
            },
            new HandPush(push.Si, Math.Min(Palm.Si, Math.Min(pane.WidthMeters, pane.HeightMeters)), at)
        );

    private static PaneCheck Check(
        DoorPanes door,
        (Case Worst, Case Widest) of,
        Figure[] size,
        (PlatePane Pane, Figure Young, Figure Span) with
    )
    {
        var held = Words(door.Kind);
        var (worst, widest) = of;
        return new PaneCheck
        {
            Pane = "door",
            Width = door.Width,
            Height = door.Height,
            Allowable = worst.Allowable,
            Held = held,
            Under = worst.Push == Leaning ? "Under a hand that leans on it" : "Pushed at its edge by fingers",
            Key = "box.doors.thickness",
            Fix = "Take thicker or toughened panes for the doors.",
            Stress = GlassCheck.Solved(
                ("stress in the door", Unit.Megapascal),
                $"largest bending stress of a thin plate {held} under a push on a square",
                worst.Bent.Stress,
                [.. size, worst.Push]
            ),
            Sag = GlassCheck.Solved(
                ("give of the door", Unit.Millimeter),
                $"largest deflection of a thin plate {held} under a push on a square",
                widest.Bent.Sag,
                [.. size, widest.Push, with.Young]
            ),
            SagLimit = HeldPanes.StandardLimit(with.Span, "door"),
            IsLinear = with.Pane.IsLinear(widest.Bent.Sag),
        };
    }

    private static string Words(DoorKind kind) =>
        kind switch
        {
            DoorKind.Sliding => "in tracks below and above",
            DoorKind.LiftOut => "below and at both sides",
            _ => "on hinges and catches at its corners",
        };
}
