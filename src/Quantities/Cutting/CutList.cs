using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>One rectangular part to cut, per box; lengths in meters.</summary>
public sealed record CutPart
{
    /// <summary>What it is: barrier, lid, vent-mesh, background, grid, strip, door or shelf.</summary>
    public required string Part { get; init; }

    /// <summary>Catalog key of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Pieces per box.</summary>
    public required Figure Count { get; init; }

    /// <summary>Longer statement of the size along the front, or across.</summary>
    public required Figure Length { get; init; }

    /// <summary>The other edge.</summary>
    public required Figure Width { get; init; }

    /// <summary>Thickness of a sheet; null for mesh.</summary>
    public Figure? Thickness { get; init; }

    /// <summary>Mass of one piece, kg, of doors and shelves.</summary>
    public Figure? Mass { get; init; }

    /// <summary>How it is cut and fitted.</summary>
    public required string Note { get; init; }

    /// <summary>Key of the design it follows from.</summary>
    public string Key { get; init; } = "";

    /// <summary>Holes to drill.</summary>
    public ImmutableArray<CutHole> Holes { get; init; } = [];

    /// <summary>Side the drawing is seen from; "" where both are alike.</summary>
    public string SeenFrom { get; init; } = "";
}

/// <summary>A hole: its middle from the left and from the lower edge, and its diameter, in meters.</summary>
public sealed record CutHole(Figure FromLeft, Figure FromBottom, Figure Diameter, string For, string Key);

/// <summary>Cut sizes from the true inside, with the clearance of each part.</summary>
public static class CutList
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>Clearance of a flat barrier, over both edges together.</summary>
    public static readonly Figure BarrierClearance = Figure.Given(
        "clearance of a flat barrier",
        0.002,
        Unit.Millimeter,
        Citation.Habit("a flat barrier is cut 0 to 2 mm smaller than the inside")
    );

    /// <summary>Clearance on each side of an inset lid.</summary>
    public static readonly Figure LidClearance = Figure.Given(
        "lid clearance on each side",
        0.002,
        Unit.Millimeter,
        Citation.Habit("a lid is 3 to 4 mm smaller than the opening in each direction")
    );

    /// <summary>Extra on each side of a vent mesh, trimmed after fitting.</summary>
    public static readonly Figure VentAllowance = Figure.Given(
        "mesh allowance on each side",
        0.025,
        Unit.Millimeter,
        Citation.Habit("25 to 30 mm on each side, trimmed after")
    );

    /// <summary>Clearance of a background panel per axis.</summary>
    public static readonly Figure PanelClearance = Figure.Given(
        "panel clearance per axis",
        0.003,
        Unit.Millimeter,
        Citation.Habit("panels are cut 2 to 3 mm smaller per axis")
    );

    /// <summary>Play of a raised grid per axis.</summary>
    public static readonly Figure GridClearance = Figure.Given(
        "grid clearance per axis",
        0.003,
        Unit.Millimeter,
        Citation.Habit("as for panels")
    );

    /// <summary>All parts of one box.</summary>
    public static ImmutableArray<CutPart> Of(CheckedDesign design, BoxGeometry box)
    {
        var parts = ImmutableArray.CreateBuilder<CutPart>();
        parts.AddRange(BoxPanes.Of(design, box));
        AddFloor(design, box, parts);
        AddLid(design, box, parts);
        AddDoors(design, box, parts);
        parts.AddRange(ShelfPanes.Of(design, box).Select(shelf => Shelf(design, shelf)));
        for (var i = 0; i < design.Design.Vents.Count; i++)
        {
            AddVent(design, i, parts);
        }

        AddBackground(design, box, parts);
        return parts.ToImmutable();
    }

    private static void AddFloor(CheckedDesign design, BoxGeometry box, ImmutableArray<CutPart>.Builder parts)
    {
        if (design.Find<GridEntry>("floor.drainage.grid") is { } grid)
        {
            parts.Add(
                Part(
                    "grid",
                    grid.Key,
                    design,
                    Fit("grid length", box.OpenLength - GridClearance),
                    Fit("grid depth", box.OpenDepth - GridClearance),
                    "rests on feet; round the corners"
                )
            );
        }

        if (design.Design.Floor.Barrier is not { } barrier)
        {
            return;
        }

        var key = design.Entry<MeshEntry>("floor.barrier.material").Key;
        if (barrier.Upturn is { Si: > 0 } typed)
        {
            var upturn = design.Figure("floor.barrier.upturn", "upturn", typed, Unit.Millimeter);
            parts.Add(
                Part(
                    "barrier",
                    key,
                    design,
                    Fit("barrier length", box.OpenLength + Two * upturn),
                    Fit("barrier depth", box.OpenDepth + Two * upturn),
                    "upturn on all four edges, silicone spots every 10 cm"
                )
            );
            return;
        }

        parts.Add(
            Part(
                "barrier",
                key,
                design,
                Fit("barrier length", box.OpenLength - BarrierClearance),
                Fit("barrier depth", box.OpenDepth - BarrierClearance),
                "flat; no gap over 2 mm, sealed around a drain tube"
            )
        );
    }

    private static void AddLid(CheckedDesign design, BoxGeometry box, ImmutableArray<CutPart>.Builder parts)
    {
        if (design.Design.Lid is not { } lid)
        {
            return;
        }

        var entry = design.Entry("lid.material");
        var strip = lid.Strip is { } s
            ? design.Figure("lid.strip", "strip for hoses and cables", s, Unit.Millimeter)
            : null;
        var depth = strip is null ? box.OpeningDepth : box.OpeningDepth - strip;
        var (fitted, note) = LidMargin(design, entry);
        parts.Add(
            Part(
                "lid",
                entry.Key,
                design,
                Fit("lid length", fitted(box.OpeningLength)),
                Fit("lid depth", fitted(depth)),
                note
            ) with
            {
                Thickness = lid.Thickness is { } t
                    ? design.Figure("lid.thickness", "lid thickness", t, Unit.Millimeter)
                    : null,
            }
        );
        if (strip is not null)
        {
            var length = Fit("strip length", box.OpeningLength - Two * LidClearance);
            parts.Add(
                Part(
                    "strip",
                    "acrylic-sheet",
                    design,
                    length,
                    strip,
                    "for hoses and cables, taped or latched"
                )
            );
        }
    }

    private static void AddDoors(CheckedDesign design, BoxGeometry box, ImmutableArray<CutPart>.Builder parts)
    {
        if (DoorPanes.Of(design, box) is not { } door)
        {
            return;
        }

        var part = Part("door", door.Sheet.Key, design, door.Width, door.Height, door.Note);
        parts.Add(
            part with
            {
                Count = (Figure.Number(door.Count) * part.Count).As("door panes, all boxes", Unit.One),
                Thickness = door.Thickness,
                Mass = door.Mass,
                Key = "box.doors",
            }
        );
    }

    private static CutPart Shelf(CheckedDesign design, ShelfPane shelf) =>
        Part(
            shelf.Name,
            shelf.Sheet.Key,
            design,
            shelf.Length,
            shelf.Depth,
            shelf.IsWholeLength
                ? "from side to side inside, less a joint at each end; polish the edges"
                : "polish the edges"
        ) with
        {
            Thickness = shelf.Thickness,
            Mass = shelf.Mass,
            Key = shelf.Path,
        };

    /// <summary>How a lid follows from its opening: larger on the rim, smaller when set in.</summary>
    private static (Func<Figure, Figure> Fitted, string Note) LidMargin(
        CheckedDesign design,
        CatalogEntry entry
    )
    {
        if (design.Design.Lid!.Overlap is { } o)
        {
            var overlap = design.Figure("lid.overlap", "overlap on each side", o, Unit.Millimeter);
            return (size => size + Two * overlap, "lies on the rim; seam the edges");
        }

        var gap = design.Design.Lid.Gap is { } g
            ? design.Figure("lid.gap", "lid clearance on each side", g, Unit.Millimeter)
            : LidClearance;
        var note =
            entry is MeshEntry
                ? "in a frame, no wire ends inside"
                : "set into the opening; polish edges that are touched";
        return (size => size - Two * gap, note);
    }

    private static void AddVent(CheckedDesign design, int i, ImmutableArray<CutPart>.Builder parts)
    {
        var vent = design.Design.Vents[i];
        if (
            design.Find<MeshEntry>($"vents[{i}].mesh") is not { } mesh
            || vent.Length is null
            || vent.Width is null
        )
        {
            return;
        }

        var length = design.Figure($"vents[{i}].length", "vent length", vent.Length.Value, Unit.Millimeter);
        var width = design.Figure($"vents[{i}].width", "vent width", vent.Width.Value, Unit.Millimeter);
        parts.Add(
            Part(
                "vent-mesh",
                mesh.Key,
                design,
                Fit("mesh length", length + Two * VentAllowance),
                Fit("mesh width", width + Two * VentAllowance),
                "trim after fitting"
            )
        );
    }

    private static void AddBackground(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<CutPart>.Builder parts
    )
    {
        if (design.Design.Background is not { } background)
        {
            return;
        }

        var entry = design.Entry<BackgroundEntry>("background.material");
        if (entry.PouredFrom?.Text is not null)
        {
            // Foam that is poured and carved in the box is no part to cut.
            return;
        }

        var height = Fit("panel height", box.InsideHeight - box.BackgroundFrom! - PanelClearance);
        foreach (var side in background.Sides.Count == 0 ? [Side.Back] : background.Sides)
        {
            var across = side is Side.Left or Side.Right ? box.OpenDepth : box.InsideLength;
            parts.Add(
                Part(
                    "background",
                    entry.Key,
                    design,
                    Fit($"panel width, {side.ToString().ToLowerInvariant()}", across - PanelClearance),
                    height,
                    $"{side.ToString().ToLowerInvariant()}; check that it passes the opening"
                ) with
                {
                    Thickness = box.BackgroundThickness,
                }
            );
        }
    }

    internal static CutPart Part(
        string part,
        string material,
        CheckedDesign design,
        Figure length,
        Figure width,
        string note
    ) =>
        new()
        {
            Part = part,
            Material = material,
            Length = length,
            Width = width,
            Note = note,
            Count = design.Count("boxes", "pieces, one per box", design.Design.Boxes),
            Key = Keys.GetValueOrDefault(part, ""),
        };

    private static readonly Dictionary<string, string> Keys = new(StringComparer.Ordinal)
    {
        ["barrier"] = "floor.barrier",
        ["grid"] = "floor.drainage.grid",
        ["lid"] = "lid",
        ["strip"] = "lid.strip",
        ["vent-mesh"] = "vents",
        ["background"] = "background",
    };

    internal static Figure Fit(string name, Figure size) =>
        Figure.NotNegative(size).As(name, Unit.Millimeter);
}
