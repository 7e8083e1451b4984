using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>Something bought that holds, guides or closes a lid, door or vent of one box.</summary>
/// <param name="Key">Key of the library's equipment.</param>
/// <param name="Item">Its name.</param>
/// <param name="Where">Key of the design it follows from.</param>
public sealed record ClosureGood(string Key, string Item, string Where)
{
    /// <summary>Pieces for one box; null where it is sold by length.</summary>
    public Figure? Count { get; init; }

    /// <summary>Length for one box, m; null where it is counted.</summary>
    public Figure? Length { get; init; }

    /// <summary>What to look at when buying.</summary>
    public string Note { get; init; } = "";
}

/// <summary>Clips, handles, hinges, tracks, channels, seals and frames of what they belong to.</summary>
public static class ClosureGoods
{
    private static readonly Figure Two = Figure.Number(2);

    private static readonly Figure HingesEach = Figure.Given(
        "hinges of a pane",
        2,
        Unit.One,
        Citation.Habit("two hinges a pane up to about 60 cm")
    );

    /// <summary>All for one box.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="doors">Its doors; null without.</param>
    public static IEnumerable<ClosureGood> Of(CheckedDesign design, BoxGeometry box, DoorPanes? doors) =>
        [.. Lid(design, box), .. doors is null ? [] : Doors(design, box, doors), .. Locks(design)];

    private static IEnumerable<ClosureGood> Lid(CheckedDesign design, BoxGeometry box)
    {
        if (LidPlan.Of(design, box) is not { } plan)
        {
            yield break;
        }

        var lid = design.Design.Lid!;
        if (design.Find("lid.material") is MeshEntry)
        {
            var width = lid.Frame is { } typed
                ? design.Figure("lid.frame", "width of the frame", typed, Unit.Millimeter)
                : OpeningPolicy.FrameWidth;
            yield return new ClosureGood("lid-frame", "frame profile for the mesh lid", "lid.frame")
            {
                Length = (Two * (box.OpeningLength + box.OpeningDepth)).As("frame of the lid", Unit.Meter),
                Note = FormattableString.Invariant(
                    $"{width.Value:0.#} mm wide, with four corners; no wire ends inside"
                ),
            };
            yield break;
        }

        var panes = plan.Cells.Count(c => c.Kind == CellKind.Pane);
        yield return Pieces("lid-handle", "handle or knob for a lid pane, glued on", "lid", panes);
        if (lid.Held == PaneHold.Corners || lid.Rests == LidRest.Clips)
        {
            yield return Pieces(
                "lid-clip",
                "clip that carries a lid pane on the wall",
                "lid.rests",
                4 * panes
            ) with
            {
                Note = "fit for the thickness of wall and lid",
            };
        }

        if (lid.Hinged is not null)
        {
            yield return Pieces("lid-hinge", "hinge for the front part of the lid", "lid.hinged", 2);
        }

        if (lid.Panes > 1)
        {
            yield return new ClosureGood("lid-bar", "bar under the joint of two lid panes", "lid.panes")
            {
                Count = Figure.Choice("bars", lid.Panes - 1, Unit.One, "one for each joint"),
                Length = box.OpeningDepth,
                Note = "glass or plastic as thick as the walls, or an H profile; from front to back",
            };
        }
    }

    private static IEnumerable<ClosureGood> Doors(CheckedDesign design, BoxGeometry box, DoorPanes doors)
    {
        const string Where = "box.doors";
        var track = FormattableString.Invariant($"for {doors.Thickness.Value:0.#} mm panes");
        switch (doors.Kind)
        {
            case DoorKind.Sliding:
                yield return new ClosureGood("door-track-lower", "lower door track, double", Where)
                {
                    Length = box.InsideLength,
                    Note = $"{track}; drilled for drops that run into it",
                };
                yield return new ClosureGood("door-track-upper", "upper door track, double and deeper", Where)
                {
                    Length = box.InsideLength,
                    Note = track,
                };
                break;
            case DoorKind.Hinged:
                var hinges = (HingesEach * Figure.Number(doors.Count)).As("hinges", Unit.One);
                yield return new ClosureGood("door-hinge", "hinge for a glass door", Where)
                {
                    Count = hinges,
                    Note = $"{track}; the maker's allowed mass decides",
                };
                yield return Pieces("door-catch", "catch or magnet for a door", Where, doors.Count);
                break;
            default:
                yield return new ClosureGood("door-channel", "channel for a lift-out front", Where)
                {
                    Length = (box.InsideLength + Two * doors.OpeningHeight).As("channels", Unit.Meter),
                    Note = track,
                };
                break;
        }

        yield return Pieces("door-handle", "finger pull for a door pane, glued on", Where, doors.Count);
        if (Seal(design, doors) is { } seal)
        {
            yield return seal;
        }
    }

    private static ClosureGood? Seal(CheckedDesign design, DoorPanes doors)
    {
        var kind = design.Design.Box.Doors!.Seal;
        if (kind == DoorSeal.None)
        {
            return null;
        }

        var (key, name) = kind switch
        {
            DoorSeal.Brush => ("door-seal-brush", "brush strip for the gap of the doors"),
            DoorSeal.Lip => ("door-seal-lip", "clear lip for the gap of the doors"),
            _ => ("door-seal-tape", "foam or tape for the gap of the doors"),
        };
        var joints = Math.Max(1, doors.Count - 1);
        return new ClosureGood(key, name, "box.doors.seal")
        {
            Length = (
                Figure.Number(joints) * doors.OpeningHeight + Two * doors.Width * Figure.Number(doors.Count)
            ).As("seal of the doors", Unit.Meter),
            Note = "between the panes, and along their upper and lower edge",
        };
    }

    private static IEnumerable<ClosureGood> Locks(CheckedDesign design)
    {
        if (design.Design.Box.Locked)
        {
            yield return Pieces("lock", "lock or screws for lid and doors", "box.locked", 1);
        }
    }

    private static ClosureGood Pieces(string key, string item, string where, int count) =>
        new(key, item, where)
        {
            Count = Figure.Choice(
                $"pieces of {item}",
                count,
                Unit.One,
                "one for each pane, clips at four corners"
            ),
        };
}
