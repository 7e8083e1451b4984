using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>Lays a tree of cuts out on its sheet, in millimeters and in cutting order.</summary>
internal sealed class SheetLayout
{
    private readonly GridTask grid;
    private readonly int stock;
    private readonly Queue<int>[] names;
    private readonly List<PlacedPart> placed = [];
    private readonly List<CutLine> cuts = [];
    private readonly List<Offcut> rests = [];
    private int kinds;
    private double largest;

    private SheetLayout(GridTask grid, int stock, Queue<int>[] names)
    {
        this.grid = grid;
        this.stock = stock;
        this.names = names;
    }

    /// <summary>A rectangle on the grid; its edges carry their kerf.</summary>
    private readonly record struct Area(int X, int Y, int Length, int Width);

    /// <summary>The sheet with its parts, cuts and rests.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="sheet">The sheet; of a roll, the length that is taken.</param>
    /// <param name="tree">Its cuts; null for none.</param>
    /// <param name="names">Demands still to be met, by kind of part; those placed are taken out.</param>
    public static CutSheet Create(GridTask grid, GridSheet sheet, CutNode? tree, Queue<int>[] names)
    {
        var layout = new SheetLayout(grid, sheet.Stock, names) { kinds = names.Length };
        var from = grid.Task.Stock[sheet.Stock];
        var whole = new Area(0, 0, sheet.Length, sheet.Width);
        var (trimX, trimY) = grid.Trim(sheet.Stock);
        var length = from.IsRoll ? grid.Millimeters(sheet.Length - grid.Kerf) : from.Length;
        if (from.IsRoll && sheet.Length < grid.Sheets.First(s => s.Stock == sheet.Stock).Length)
        {
            layout.cuts.Add(new(0, true, length, 0, from.Width));
        }

        layout.TrimEdges(length, from.Width, trimX, trimY);
        layout.Lay(tree, whole);
        return new()
        {
            Stock = from.Id,
            Length = length,
            Width = from.Width,
            UsedLength = from.IsRoll
                ? length
                : layout.placed.Select(p => p.X + p.Length).DefaultIfEmpty().Max(),
            Parts = [.. layout.placed],
            Cuts = [.. layout.cuts],
            Offcuts =
            [
                .. layout
                    .rests.Where(layout.IsWorthKeeping)
                    .OrderByDescending(r => r.Length * r.Width)
                    .ThenBy(r => r.X)
                    .ThenBy(r => r.Y),
            ],
        };
    }

    /// <summary>Area of the largest rest, grid units squared; kerfs are counted with it.</summary>
    /// <param name="grid">The task.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="tree">Its cuts; null for none.</param>
    /// <param name="kinds">Kinds of parts; what is beyond is a rest that was asked for.</param>
    public static double LargestRest(GridTask grid, GridSheet sheet, CutNode? tree, int kinds)
    {
        var layout = new SheetLayout(grid, sheet.Stock, []) { kinds = kinds };
        layout.Lay(tree, new(0, 0, sheet.Length, sheet.Width));
        return layout.largest;
    }

    private void Lay(CutNode? tree, Area whole)
    {
        if (tree is null)
        {
            Rest(whole);
        }
        else
        {
            CutSlack(tree, whole);
        }
    }

    private void TrimEdges(double length, double width, double trimX, double trimY)
    {
        if (trimX > 0)
        {
            cuts.Add(new(0, true, trimX, 0, width));
            cuts.Add(new(0, true, length - trimX, 0, width));
        }

        if (trimY > 0)
        {
            cuts.Add(new(0, false, trimY, trimX, length - trimX));
            cuts.Add(new(0, false, width - trimY, trimX, length - trimX));
        }
    }

    /// <summary>Cuts off what lies beyond the whole tree, the larger rest in one piece.</summary>
    private void CutSlack(CutNode tree, Area area)
    {
        var (restX, restY) = (area.Length - tree.Length, area.Width - tree.Width);
        var isUprightFirst =
            restX > 0 && (restY == 0 || (double)restX * area.Width >= (double)restY * area.Length);
        if (tree.Part < 0 && grid.Task.Stages is not null)
        {
            // A rest across the first cuts would take a stage of its own: it comes off with the pieces.
            isUprightFirst = tree.IsBeside;
            (restX, restY) = isUprightFirst ? (restX, 0) : (0, restY);
        }

        if (restX == 0 && restY == 0)
        {
            Cut(tree, area, 1);
            return;
        }

        var (one, other) = Parted(area, isUprightFirst ? tree.Length : tree.Width, isUprightFirst);
        Line(area, one, 1, isUprightFirst);
        Rest(other);
        if (tree.Part < 0 && tree.IsBeside == isUprightFirst && grid.Task.Stages is not null)
        {
            Cut(tree, one, 1);
        }
        else
        {
            Trimmed(tree, one, tree.Part < 0 && tree.IsBeside == isUprightFirst ? 1 : 2);
        }
    }

    /// <summary>Cuts a tree out of an area that may be larger across.</summary>
    private void Trimmed(CutNode tree, Area area, int stage)
    {
        var isUpright = area.Length > tree.Length;
        if (!isUpright && area.Width == tree.Width)
        {
            Cut(tree, area, stage);
            return;
        }

        var (one, other) = Parted(area, isUpright ? tree.Length : tree.Width, isUpright);
        Line(area, one, stage, isUpright);
        Rest(other);
        Cut(tree, one, tree.Part >= 0 || tree.IsBeside == isUpright ? stage : stage + 1);
    }

    private void Cut(CutNode tree, Area area, int stage)
    {
        if (tree.Part >= 0)
        {
            Place(tree, area);
            return;
        }

        var isUpright = tree.IsBeside;
        var (one, other) = Parted(area, isUpright ? tree.First!.Length : tree.First!.Width, isUpright);
        Line(area, one, stage, isUpright);
        Piece(tree.First!, one, isUpright, stage);
        Piece(tree.Second!, other, isUpright, stage);
    }

    private void Piece(CutNode tree, Area area, bool isUpright, int stage)
    {
        var isSame = tree.Part < 0 && tree.IsBeside == isUpright;
        if (isSame && grid.Task.Stages is not null)
        {
            Cut(tree, area, stage);
        }
        else
        {
            Trimmed(tree, area, isSame ? stage : stage + 1);
        }
    }

    private void Place(CutNode leaf, Area area)
    {
        if (leaf.Part >= kinds)
        {
            Rest(area);
            return;
        }

        if (names.Length == 0)
        {
            return;
        }

        var demand = grid.Task.Parts[names[leaf.Part].Dequeue()];
        var (trimX, trimY) = grid.Trim(stock);
        placed.Add(
            new(
                demand.Id,
                Round(trimX + grid.Millimeters(area.X)),
                Round(trimY + grid.Millimeters(area.Y)),
                leaf.IsTurned ? demand.Width : demand.Length,
                leaf.IsTurned ? demand.Length : demand.Width,
                leaf.IsTurned
            )
        );
    }

    private static (Area One, Area Other) Parted(Area area, int at, bool isUpright) =>
        isUpright
            ? (area with { Length = at }, area with { X = area.X + at, Length = area.Length - at })
            : (area with { Width = at }, area with { Y = area.Y + at, Width = area.Width - at });

    /// <summary>A line along the good edge of a piece; the kerf lies beyond it.</summary>
    private void Line(Area whole, Area piece, int stage, bool isUpright)
    {
        var (trimX, trimY) = grid.Trim(stock);
        cuts.Add(
            isUpright
                ? new(
                    stage,
                    true,
                    Round(trimX + grid.Millimeters(piece.X + piece.Length - grid.Kerf)),
                    Round(trimY + grid.Millimeters(whole.Y)),
                    Round(trimY + grid.Millimeters(whole.Y + whole.Width - grid.Kerf))
                )
                : new(
                    stage,
                    false,
                    Round(trimY + grid.Millimeters(piece.Y + piece.Width - grid.Kerf)),
                    Round(trimX + grid.Millimeters(whole.X)),
                    Round(trimX + grid.Millimeters(whole.X + whole.Length - grid.Kerf))
                )
        );
    }

    private void Rest(Area area)
    {
        largest = Math.Max(largest, (double)area.Length * area.Width);
        var (trimX, trimY) = grid.Trim(stock);
        var (length, width) = (
            grid.Millimeters(area.Length - grid.Kerf),
            grid.Millimeters(area.Width - grid.Kerf)
        );
        if (length > 0 && width > 0)
        {
            rests.Add(
                new(
                    Round(trimX + grid.Millimeters(area.X)),
                    Round(trimY + grid.Millimeters(area.Y)),
                    Round(length),
                    Round(width)
                )
            );
        }
    }

    private bool IsWorthKeeping(Offcut rest) =>
        Math.Min(rest.Length, rest.Width) >= grid.Task.OffcutShort
        && Math.Max(rest.Length, rest.Width) >= grid.Task.OffcutLong;

    private static double Round(double millimeters) => Math.Round(millimeters, 4);
}
