using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Plates;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>
/// The lid and the strip beside it under their own weight, as they are held: a level pane on four, three or
/// two edges, or on its corners. Sag counts with the modulus that is left after years.
/// </summary>
public static class HeldPanes
{
    /// <summary>Load on a lid besides its own weight.</summary>
    private static readonly Figure LidLoad = Figure.Choice(
        "load on the lid",
        0.02,
        Unit.Kilopascal,
        "dust, drops and a light lamp; nothing heavy is put on a lid"
    );

    private static readonly Figure Half = Figure.Number(0.5);
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>EN 16612: span over this.</summary>
    public static readonly Figure StandardShare = Figure.Number(65);

    /// <summary>Own limit for gaps: span over this.</summary>
    public static readonly Figure GapShare = Figure.Number(250);

    private static readonly Citation Standard = new(
        "en-16612",
        "9.1.4: default limit of deflection, span ÷ 65 or 50 mm, whichever is less",
        Provenance.Read
    );

    /// <summary>EN 16612: no more than this however long the span.</summary>
    public static readonly Figure StandardMost = Figure.Given(
        "most sag of a pane",
        0.05,
        Unit.Millimeter,
        Standard
    );

    private static readonly Citation Gaps = new(
        "own-choice",
        "a lid that sags by less than span ÷ 250 shows no gap at its edges",
        Provenance.OwnChoice
    );

    /// <summary>The lid and its strip; none for mesh, or without a thickness.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<PaneCheck> Of(CheckedDesign design, BoxGeometry box)
    {
        if (
            design.Design.Lid is not { Thickness: { } typed } lid
            || design.Find("lid.material") is not SheetEntry sheet
        )
        {
            return [];
        }

        var thickness = design.Figure("lid.thickness", "lid thickness", typed, Unit.Millimeter);
        var plan = LidPlan.Of(design, box)!;
        var acrylic = design.Catalog.Find<SheetEntry>(OpeningPolicy.StripSheet);
        // Panes of one size are one check; a strip with its opening bends as its edges beside it do.
        var cells = plan.Cells.DistinctBy(c =>
            (c.Kind, Math.Round(c.Length.Si, 6), Math.Round(c.Width.Si, 6), c.LowHangs, c.HighHangs)
        );
        return
        [
            .. cells
                .Select(cell =>
                    cell.Kind == CellKind.Pane
                        ? Check(
                            new HeldPane(cell.Name, sheet, HeldBy(lid, cell))
                            {
                                Size = Supports(design, plan, cell, thickness),
                                Load = LidLoad,
                            }
                        )
                    : acrylic is not null ? Check(Strip(acrylic, cell, thickness))
                    : null
                )
                .OfType<PaneCheck>(),
        ];
    }

    /// <summary>What carries a pane: as entered, else the edges at which no other part begins.</summary>
    private static PaneHold HeldBy(Lid lid, OpeningCell cell) =>
        lid.Held
        ?? (
            cell is { LowHangs: true, HighHangs: true } ? PaneHold.Sides
            : cell.LowHangs || cell.HighHangs ? PaneHold.BackHangs
            : PaneHold.AllEdges
        );

    /// <summary>What is left beside the opening of a strip carries it.</summary>
    private static HeldPane Strip(SheetEntry acrylic, OpeningCell cell, Figure thickness)
    {
        var hangs = cell is { LowHangs: true, HighHangs: true };
        var open = cell.Openings.Length == 0 ? null : Figure.Max([.. cell.Openings.Select(o => o.Width)]);
        return new HeldPane(cell.Name, acrylic, hangs ? PaneHold.Sides : PaneHold.BackHangs)
        {
            Size = (cell.Length, cell.Width, thickness),
            Load =
                open is null || cell.Width.Si - open.Si <= 1e-6
                    ? LidLoad
                    : (LidLoad * cell.Width / (cell.Width - open)).As(
                        $"load beside the opening of the {cell.Name}",
                        Unit.Kilopascal
                    ),
            Key = "lid",
            Fix = "Take a thicker lid, or set a bar under the strip.",
        };
    }

    /// <summary>The shelves inside the box under what stands on them, spread evenly.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<PaneCheck> Shelves(CheckedDesign design, BoxGeometry box) =>
        [.. ShelfPanes.Of(design, box).Select(shelf => Shelf(design, shelf)).OfType<PaneCheck>()];

    private static PaneCheck? Shelf(CheckedDesign design, ShelfPane shelf)
    {
        if (shelf.Length.Si <= 0 || shelf.Depth.Si <= 0)
        {
            return null;
        }

        var least = Figure
            .NotNegative(
                shelf.Thickness - GlassCheck.ThicknessTolerance(design, shelf.Sheet, shelf.Thickness)
            )
            .As($"least thickness of the {shelf.Name}", Unit.Millimeter);
        return Check(
            new HeldPane(
                shelf.Name,
                shelf.Sheet,
                shelf.Held switch
                {
                    ShelfHold.Ends => PaneHold.Sides,
                    ShelfHold.ThreeEdges => PaneHold.BackHangs,
                    _ => PaneHold.Corners,
                }
            )
            {
                Size = (shelf.Length, shelf.Depth, least),
                Load = (shelf.Load * SizingPolicy.Gravity / (shelf.Length * shelf.Depth)).As(
                    $"what stands on the {shelf.Name}, spread evenly",
                    Unit.Kilopascal
                ),
                Words = shelf.Held switch
                {
                    ShelfHold.Ends => "on its two ends",
                    ShelfHold.ThreeEdges => "on its ends and its back edge",
                    _ => "on clips at its corners",
                },
                Under = "Under its load",
                Key = $"{shelf.Path}.thickness",
                Fix = "Take a thicker shelf, hold it on more of its edges, or put less on it.",
            }
        );
    }

    /// <summary>A pane that lies, and what it carries besides its own weight.</summary>
    private sealed record HeldPane(string Name, SheetEntry Sheet, PaneHold Held)
    {
        public required (Figure Length, Figure Depth, Figure Thickness) Size { get; init; }

        public required Figure Load { get; init; }

        public string Words { get; init; } = HeldPanes.Words(Held);

        public string Under { get; init; } = "Under its own weight";

        public string Key { get; init; } = "lid.thickness";

        public string Fix { get; init; } = "Take a thicker lid, or set a bar under its middle.";
    }

    /// <summary>
    /// Between what holds it: the opening under a pane that overlaps it, the pane itself where it is set in;
    /// half of it over a bar.
    /// </summary>
    private static (Figure Length, Figure Depth, Figure Thickness) Supports(
        CheckedDesign design,
        OpeningPlan plan,
        OpeningCell cell,
        Figure thickness
    )
    {
        var lid = design.Design.Lid!;
        var (length, depth) = (cell.Length, cell.Width);
        if (lid.Overlap is null)
        {
            var gap = LidParts.Clearance(design);
            length = (length - Two * gap).As("length of the lid", Unit.Millimeter);
            depth = (depth - Two * gap).As("depth of the lid", Unit.Millimeter);
        }

        var held = HeldBy(lid, cell);
        if (lid.Braced && held != PaneHold.FrontAndBack && cell.Length.Si > plan.Length.Si / 2)
        {
            length = (length * Half).As("half the lid, to the bar", Unit.Millimeter);
        }

        return (length, depth, thickness);
    }

    private static PaneCheck? Check(HeldPane of)
    {
        var (name, sheet, held, size) = (of.Name, of.Sheet, of.Held, of.Size);
        if (
            size.Length.Si <= 0
            || size.Depth.Si <= 0
            || size.Thickness.Si <= 0
            || sheet is not { Density: { } density, YoungsModulus: { } young, Poisson: { } poisson }
            || (IsFree(held) ? sheet.AllowableFreeEdge : sheet.AllowablePermanent) is not { } allowable
        )
        {
            return null;
        }

        var modulus = sheet.CreepModulus ?? young;
        var load = (density * SizingPolicy.Gravity * size.Thickness + of.Load).As(
            $"weight and load on the {name}",
            Unit.Kilopascal
        );
        var pane = new PlatePane(
            size.Length.Si,
            size.Depth.Si,
            size.Thickness.Si,
            modulus.Si,
            poisson.Si,
            held == PaneHold.AllEdges ? PlateEdge.TopHeld : PlateEdge.TopFree
        );
        var (stress, sag) = Bend(pane, load.Si, held);
        var span = Span(size.Length, size.Depth, held);
        Figure[] inputs = [size.Length, size.Depth, size.Thickness, load, poisson];
        return new PaneCheck
        {
            Pane = name,
            Width = size.Length,
            Height = size.Depth,
            Allowable = allowable,
            Held = of.Words,
            Under = of.Under,
            Key = of.Key,
            Fix = of.Fix,
            Stress = GlassCheck.Solved(
                ($"stress in the {name}", Unit.Megapascal),
                $"largest bending stress of a thin plate {of.Words} under an even load",
                stress,
                inputs
            ),
            Sag = GlassCheck.Solved(
                ($"sag of the {name}", Unit.Millimeter),
                $"deflection of a thin plate {of.Words} under an even load",
                sag,
                [.. inputs, modulus]
            ),
            SagLimit = StandardLimit(span, name),
            GapLimit = (span / GapShare).As($"sag at which the {name} gapes", Unit.Millimeter, Gaps),
            IsLinear = IsTwoEdges(held) || pane.IsLinear(sag),
        };
    }

    /// <summary>Most deflection of a pane by EN 16612: span ÷ 65, at most 50 mm.</summary>
    /// <param name="span">What bends, m.</param>
    /// <param name="name">The pane.</param>
    internal static Figure StandardLimit(Figure span, string name) =>
        Figure
            .Min(span / StandardShare, StandardMost)
            .As($"most sag of the {name}", Unit.Millimeter, Standard);

    private static (double Stress, double Sag) Bend(PlatePane pane, double load, PaneHold held)
    {
        if (held == PaneHold.Corners)
        {
            return CornerPlate.Solve(pane, load);
        }

        if (IsTwoEdges(held))
        {
            double span = held == PaneHold.Sides ? pane.WidthMeters : pane.HeightMeters;
            return (
                TwoEdgeSpan.StressPascals(load, span, pane.ThicknessMeters),
                TwoEdgeSpan.DeflectionMeters(load, span, pane.ThicknessMeters, pane.YoungsModulusPascals)
            );
        }

        var solved = LevyPlate.Solve(pane, PlateLoad.Uniform(load, pane.HeightMeters));
        return (solved.LargestStressPascals, solved.LargestDeflectionMeters);
    }

    private static bool IsTwoEdges(PaneHold held) => held is PaneHold.Sides or PaneHold.FrontAndBack;

    private static bool IsFree(PaneHold held) => held != PaneHold.AllEdges;

    /// <summary>What sags: the shorter way over four edges, the hanging edge, the way between two.</summary>
    private static Figure Span(Figure length, Figure depth, PaneHold held) =>
        held switch
        {
            PaneHold.AllEdges => Figure.Min(length, depth),
            PaneHold.FrontAndBack => depth,
            PaneHold.Corners => Figure.Max(length, depth),
            _ => length,
        };

    private static string Words(PaneHold held) =>
        held switch
        {
            PaneHold.AllEdges => "on four edges",
            PaneHold.BackHangs => "on three edges, its back edge hanging",
            PaneHold.Sides => "on its two sides",
            PaneHold.FrontAndBack => "on its front and back edge",
            _ => "on clips at its corners",
        };
}
