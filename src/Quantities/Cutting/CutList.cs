using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
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

    /// <summary>Rectangles to cut out; one that reaches an edge is a notch.</summary>
    public ImmutableArray<CutOut> CutOuts { get; init; } = [];

    /// <summary>Side the drawing is seen from; "" where both are alike.</summary>
    public string SeenFrom { get; init; } = "";
}

/// <summary>A hole: its middle from the left and from the lower edge, and its diameter, in meters.</summary>
public sealed record CutHole(Figure FromLeft, Figure FromBottom, Figure Diameter, string For, string Key)
{
    /// <summary>What it is for in a sentence: "the drain", "vent 2".</summary>
    public string Named => For.StartsWith("vent ", StringComparison.Ordinal) ? For : $"the {For}";
}

/// <summary>A rectangle cut out of a part: its left and lower edge and its size, in meters.</summary>
public sealed record CutOut(Figure FromLeft, Figure FromBottom, Figure Length, Figure Width)
{
    /// <summary>What it is for.</summary>
    public required string For { get; init; }

    /// <summary>Key of the design it follows from.</summary>
    public required string Key { get; init; }
}

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
        parts.AddRange(LidParts.Of(design, box));
        AddDoors(design, box, parts);
        parts.AddRange(ShelfPanes.Of(design, box).Select(shelf => Shelf(design, shelf)));
        foreach (var vent in VentShape.Of(design, box))
        {
            AddVent(design, vent, parts);
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

    private static void AddVent(CheckedDesign design, VentShape vent, ImmutableArray<CutPart>.Builder parts)
    {
        if (vent.Mesh is not { } mesh || vent.Length.Si <= 0 || vent.Width.Si <= 0)
        {
            return;
        }

        parts.Add(
            Part(
                "vent-mesh",
                mesh.Key,
                design,
                Fit("mesh length", vent.Length + Two * VentAllowance),
                Fit("mesh width", vent.Width + Two * VentAllowance),
                FormattableString.Invariant($"over vent {vent.Index + 1}; trim after fitting")
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

        foreach (var side in background.Sides.Count == 0 ? [Side.Back] : background.Sides)
        {
            var below = LidLedges.Taken(design, box, side);
            var top = below is null ? box.InsideHeight : box.InsideHeight - below;
            var height = Fit("panel height", top - box.BackgroundFrom! - PanelClearance);
            var across = side is Side.Left or Side.Right ? box.OpenDepth : box.InsideLength;
            parts.Add(
                Part(
                    "background",
                    entry.Key,
                    design,
                    Fit($"panel width, {side.ToString().ToLowerInvariant()}", across - PanelClearance),
                    height,
                    $"{side.ToString().ToLowerInvariant()}; check that it passes the opening"
                        + (below is null ? "" : "; ends below the lid")
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
        ["ledge"] = "lid.rests",
        ["vent-mesh"] = "vents",
        ["background"] = "background",
    };

    internal static Figure Fit(string name, Figure size) =>
        Figure.NotNegative(size).As(name, Unit.Millimeter);
}
