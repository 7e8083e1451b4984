using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk;

/// <summary>Lid, vents, doors, drain and holes; shelves and water inside.</summary>
public sealed partial record PartForm
{
    private static ImmutableArray<PartForm> Openings(DesignDocument document) =>
        [
            Lid(document),
            .. Doors(document),
            .. Items(
                document,
                "vents",
                "Vent",
                document.Design.Vents.Select(_ => "vent"),
                "{ length: 20 cm, width: 3 cm, height: 10 cm, mesh: steel-gauze-0.5, side: front }",
                new("side", "side", FieldForm.Choice, "front", "back", "left", "right", "top"),
                new("length", "length", FieldForm.Quantity),
                new("width", "width", FieldForm.Quantity),
                new("diameter", "diameter, if round", FieldForm.Quantity),
                new("area", "open area, if nothing else is known", FieldForm.Quantity),
                new("along", "its middle along that side", FieldForm.Quantity),
                new("height", "center height", FieldForm.Quantity),
                new("behind", "its middle behind the front, in a lid", FieldForm.Quantity),
                new("make", "made as", FieldForm.Choice, "strip", "cutout"),
                new("mesh", "mesh", FieldForm.Entry, "mesh")
            ),
            Part(
                document,
                "drain",
                "Drain",
                true,
                "{ kind: siphon, diameter: 20 mm }",
                new("kind", "kind", FieldForm.Choice, "bulkhead", "standpipe", "siphon"),
                new("height", "height", FieldForm.Quantity),
                new("diameter", "diameter", FieldForm.Quantity),
                new("side", "side", FieldForm.Choice, "front", "back", "left", "right"),
                new("along", "its middle along that side", FieldForm.Quantity)
            ),
            .. Items(
                document,
                "passages",
                "Hole for a hose or cable",
                document.Design.Passages.Select(p => p.For),
                "{ for: mist hose, hole: 12 mm, through: 6 mm, sealed: true, in: lid }",
                new("for", "what goes through", FieldForm.Text),
                new("hole", "width of the hole", FieldForm.Quantity),
                new("through", "thickness of what goes through", FieldForm.Quantity),
                new("sealed", "gap closed", FieldForm.Flag),
                new("in", "it is in", FieldForm.Choice, "lid", "wall", "barrier"),
                new("side", "wall", FieldForm.Choice, "front", "back", "left", "right"),
                new("along", "its middle along the wall or lid", FieldForm.Quantity),
                new("height", "height of its middle", FieldForm.Quantity)
            ),
        ];

    private static PartForm Lid(DesignDocument document) =>
        Part(
            document,
            "lid",
            "Lid",
            true,
            "{ material: float-glass, thickness: 4 mm, gap: 2 mm, rests: ledges }",
            new("material", "material", FieldForm.Entry, "sheet", "mesh"),
            new("thickness", "thickness", FieldForm.Quantity),
            new("rests", "lies on", FieldForm.Choice, "ledges", "clips", "rim"),
            new("gap", "gap on each side, set in", FieldForm.Quantity),
            new("overlap", "overlap on each side, on the rim", FieldForm.Quantity),
            new("panes", "panes side by side", FieldForm.Whole),
            new("hinged", "front part that folds up", FieldForm.Quantity),
            new("strip", "rear strip", FieldForm.Quantity),
            new("latched", "rear strip taped or latched", FieldForm.Flag),
            new(
                "held",
                "held at",
                FieldForm.Choice,
                "all-edges",
                "back-hangs",
                "sides",
                "front-and-back",
                "corners"
            ),
            new("braced", "bar under its middle", FieldForm.Flag),
            new("share", "open share of a mesh lid", FieldForm.Quantity),
            new("frame", "frame of a mesh lid", FieldForm.Quantity)
        );

    /// <summary>Only where the box opens in front.</summary>
    private static IEnumerable<PartForm> Doors(DesignDocument document)
    {
        if (document.Design.Box.Opening != Opening.Front)
        {
            yield break;
        }

        yield return Part(
            document,
            "box.doors",
            "Doors",
            true,
            "{ kind: sliding, count: 2, thickness: 4 mm, seal: brush }",
            new("kind", "they open", FieldForm.Choice, "sliding", "hinged", "lift-out"),
            new("count", "panes", FieldForm.Whole),
            new("material", "material", FieldForm.Entry, "sheet"),
            new("thickness", "thickness", FieldForm.Quantity),
            new("height", "height of the opening", FieldForm.Quantity),
            new("overlap", "overlap of sliding panes", FieldForm.Quantity),
            new("play", "tracks and play", FieldForm.Quantity),
            new("gap", "widest gap when closed", FieldForm.Quantity),
            new("seal", "gap closed by", FieldForm.Choice, "none", "brush", "lip", "tape"),
            new("rated", "weight track or hinges allow", FieldForm.Quantity)
        );
    }

    private static ImmutableArray<PartForm> Inside(DesignDocument document) =>
        [
            .. Items(
                document,
                "shelves",
                "Shelf inside",
                document.Design.Shelves.Select(_ => "shelf"),
                "{ depth: 12 cm, thickness: 6 mm, load: 1 kg }",
                new("length", "length", FieldForm.Quantity),
                new("depth", "depth", FieldForm.Quantity),
                new("thickness", "thickness", FieldForm.Quantity),
                new("material", "material", FieldForm.Entry, "sheet"),
                new("held", "held at", FieldForm.Choice, "ends", "three-edges", "corners"),
                new("load", "carries in all", FieldForm.Quantity),
                new("at.x", "its middle from the left", FieldForm.Quantity),
                new("at.y", "its middle from the front", FieldForm.Quantity),
                new("at.z", "height of its upper face", FieldForm.Quantity)
            ),
            .. Items(
                document,
                "basins",
                "Water basin",
                document.Design.Basins.Select(_ => "basin"),
                "{ length: 15 cm, width: 10 cm, depth: 3 cm, edge: 1 cm, sides: ramp }",
                new("length", "water along the front", FieldForm.Quantity),
                new("width", "water front to back", FieldForm.Quantity),
                new("depth", "depth of the water", FieldForm.Quantity),
                new("edge", "edge above the water", FieldForm.Quantity),
                new("sides", "its sides", FieldForm.Choice, "steep", "ramp"),
                new("at.x", "its middle from the left", FieldForm.Quantity),
                new("at.y", "its middle from the front", FieldForm.Quantity)
            ),
        ];
}
