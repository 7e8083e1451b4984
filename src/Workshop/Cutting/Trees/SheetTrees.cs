using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>What cuts a plan may have.</summary>
/// <param name="Kerf">Kerf, grid units.</param>
/// <param name="Strip">Narrowest strip with kerf, grid units; 0 for any.</param>
/// <param name="Stages">Most stages; <see cref="int.MaxValue"/> for any.</param>
internal readonly record struct CutRules(int Kerf, int Strip, int Stages);

/// <summary>
/// Trees of cuts on several sheets into which parts are put and from which they are taken. A part can be put
/// beside or above every piece, so that every plan of straight cuts can be reached.
/// </summary>
internal sealed class SheetTrees
{
    private const int Up = 0;
    private const int First = 1;
    private const int Second = 2;
    private const int Kind = 3; // Part and turn for a leaf, Beside or Above for a piece, Free for none.
    private const int Length = 4;
    private const int Width = 5;
    private const int Levels = 6;
    private const int Stride = 7;
    private const int Beside = -1;
    private const int Above = -2;
    private const int None = -3;
    private const int Places = 4096;

    private readonly ImmutableArray<GridPart> parts;
    private readonly GridSheet[] sheets;
    private readonly CutRules rules;
    private readonly int[] data;
    private readonly int[] roots;
    private readonly int[] room;
    private int free;
    private int used;

    /// <summary>Empty sheets.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="sheets">The sheets, one each.</param>
    /// <param name="mostParts">Most parts that are ever placed.</param>
    /// <param name="rules">What cuts there may be.</param>
    public SheetTrees(ImmutableArray<GridPart> parts, GridSheet[] sheets, int mostParts, CutRules rules)
    {
        this.parts = parts;
        this.sheets = sheets;
        this.rules = rules;
        data = new int[2 * (mostParts + 1) * Stride];
        roots = new int[sheets.Length];
        room = new int[2 * (mostParts + 1) * 3];
        Array.Fill(roots, -1);
        free = -1;
    }

    /// <summary>Sheets.</summary>
    public ReadOnlySpan<GridSheet> Sheets => sheets;

    /// <summary>A place at which a part can be put.</summary>
    /// <param name="Node">Piece beside or above which it goes; below 0 for an empty sheet.</param>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="IsBeside">True for beside.</param>
    /// <param name="IsTurned">True where it lies the other way.</param>
    /// <param name="Score">Waste that it makes, grid units squared; less is better.</param>
    public readonly record struct Spot(int Node, int Sheet, bool IsBeside, bool IsTurned, double Score)
    {
        /// <summary>No place.</summary>
        public static Spot Nowhere { get; } = new(-1, -1, false, false, double.MaxValue);
    }

    /// <summary>Takes over another state of the same sheets.</summary>
    public void CopyFrom(SheetTrees other)
    {
        other.data.AsSpan(0, other.used * Stride).CopyTo(data);
        other.roots.CopyTo(roots.AsSpan());
        (free, used) = (other.free, other.used);
    }

    /// <summary>All leaves of a sheet or of all, as nodes.</summary>
    public void Leaves(List<int> into)
    {
        into.Clear();
        for (var node = 0; node < used; node++)
        {
            if (data[node * Stride + Kind] >= 0)
            {
                into.Add(node);
            }
        }
    }

    /// <summary>Leaves at and under a node.</summary>
    public void LeavesUnder(int node, List<int> into)
    {
        if (At(node, Kind) >= 0)
        {
            into.Add(node);
            return;
        }

        LeavesUnder(At(node, First), into);
        LeavesUnder(At(node, Second), into);
    }

    /// <summary>Piece a node belongs to; below 0 for none.</summary>
    public int Parent(int node) => At(node, Up);

    /// <summary>Kind of the part at a leaf.</summary>
    public int PartAt(int leaf) => At(leaf, Kind) >> 1;

    /// <summary>Size of what lies on a sheet.</summary>
    public (int Length, int Width) Size(int sheet) =>
        roots[sheet] < 0 ? (0, 0) : (At(roots[sheet], Length), At(roots[sheet], Width));

    /// <summary>Takes the part at a leaf away.</summary>
    public void Remove(int leaf)
    {
        var parent = At(leaf, Up);
        if (parent < 0)
        {
            roots[Array.IndexOf(roots, leaf)] = -1;
            Release(leaf);
            return;
        }

        var other = At(parent, First) == leaf ? At(parent, Second) : At(parent, First);
        var above = At(parent, Up);
        data[other * Stride + Up] = above;
        Replace(above, parent, other);
        Release(leaf);
        Release(parent);
        Refit(above);
    }

    /// <summary>Works out how far every piece may grow; to be called after changes, before looking.</summary>
    public void MeasureRoom()
    {
        for (var sheet = 0; sheet < sheets.Length; sheet++)
        {
            if (roots[sheet] >= 0)
            {
                MeasureRoom(roots[sheet], sheets[sheet].Length, sheets[sheet].Width, sheet * Places + 1);
            }
        }
    }

    /// <summary>Offers every place for a part to a taker.</summary>
    /// <param name="part">Kind of the part.</param>
    /// <param name="jitter">Random numbers that spoil some scores; null for none.</param>
    public Spot Best(int part, Random? jitter)
    {
        var best = Spot.Nowhere;
        var size = parts[part];
        for (var turn = 0; turn <= (size.MayTurn ? 1 : 0); turn++)
        {
            var (length, width) = turn == 0 ? (size.Length, size.Width) : (size.Width, size.Length);
            for (var node = 0; node < used; node++)
            {
                if (data[node * Stride + Kind] == None)
                {
                    continue;
                }

                best = Better(best, node, (length, width), turn == 1, jitter);
            }

            for (var sheet = 0; sheet < sheets.Length; sheet++)
            {
                if (roots[sheet] < 0 && IsWithin(sheet, length, width))
                {
                    var score = (double)length * width;
                    best = score < best.Score ? new(-1, sheet, false, turn == 1, score) : best;
                    break;
                }
            }
        }

        return best;
    }

    /// <summary>Puts a part at a place that was offered; false where a rest would not break.</summary>
    public bool Put(int part, Spot spot)
    {
        var leaf = Take();
        var size = parts[part];
        Set(leaf, part * 2 + (spot.IsTurned ? 1 : 0), -1, -1);
        data[leaf * Stride + Length] = spot.IsTurned ? size.Width : size.Length;
        data[leaf * Stride + Width] = spot.IsTurned ? size.Length : size.Width;
        data[leaf * Stride + Levels] = 0;
        data[leaf * Stride + Up] = -1;
        if (spot.Node < 0)
        {
            roots[spot.Sheet] = leaf;
            return true;
        }

        var above = At(spot.Node, Up);
        var piece = Take();
        Set(piece, spot.IsBeside ? Beside : Above, spot.Node, leaf);
        data[piece * Stride + Up] = above;
        data[leaf * Stride + Up] = piece;
        Replace(above, spot.Node, piece);
        data[spot.Node * Stride + Up] = piece;
        Refit(piece);
        if (rules.Strip == 0 || IsWhole(spot.Sheet))
        {
            return true;
        }

        Remove(leaf);
        return false;
    }

    /// <summary>The tree of a sheet; null where it is empty.</summary>
    public CutNode? Tree(int sheet) => roots[sheet] < 0 ? null : TreeAt(roots[sheet]);

    /// <summary>Puts a whole tree on an empty sheet.</summary>
    public void Plant(int sheet, CutNode tree)
    {
        roots[sheet] = Grow(tree, -1);
    }

    private int Grow(CutNode tree, int parent)
    {
        var node = Take();
        var kind =
            tree.Part >= 0 ? tree.Part * 2 + (tree.IsTurned ? 1 : 0)
            : tree.IsBeside ? Beside
            : Above;
        Set(node, kind, -1, -1);
        data[node * Stride + Up] = parent;
        data[node * Stride + Length] = tree.Length;
        data[node * Stride + Width] = tree.Width;
        data[node * Stride + Levels] = 0;
        if (tree.Part < 0)
        {
            var first = Grow(tree.First!, node);
            var second = Grow(tree.Second!, node);
            data[node * Stride + First] = first;
            data[node * Stride + Second] = second;
            Fit(node);
        }

        return node;
    }

    private CutNode TreeAt(int node)
    {
        var kind = At(node, Kind);
        return kind >= 0
            ? CutNode.Leaf(kind >> 1, parts[kind >> 1], (kind & 1) == 1)
            : CutNode.Join(
                TreeAt(At(node, First)),
                TreeAt(At(node, Second)),
                kind == Beside,
                rules.Strip,
                rules.Kerf
            );
    }

    private int At(int node, int field) => data[node * Stride + field];

    private void Set(int node, int kind, int first, int second)
    {
        data[node * Stride + Kind] = kind;
        data[node * Stride + First] = first;
        data[node * Stride + Second] = second;
    }

    private int Take()
    {
        if (free < 0)
        {
            return used++;
        }

        var node = free;
        free = At(node, Up);
        return node;
    }

    private void Release(int node)
    {
        data[node * Stride + Kind] = None;
        data[node * Stride + Up] = free;
        free = node;
    }

    private void Replace(int above, int old, int now)
    {
        if (above < 0)
        {
            roots[Array.IndexOf(roots, old)] = now;
        }
        else
        {
            data[above * Stride + (At(above, First) == old ? First : Second)] = now;
        }
    }

    private void Refit(int node)
    {
        for (; node >= 0; node = At(node, Up))
        {
            Fit(node);
        }
    }

    private void Fit(int node)
    {
        var (a, b) = (At(node, First) * Stride, At(node, Second) * Stride);
        var isBeside = At(node, Kind) == Beside;
        var sum = isBeside ? Length : Width;
        var across = isBeside ? Width : Length;
        data[node * Stride + sum] = data[a + sum] + data[b + sum];
        data[node * Stride + across] = CutNode.Across(
            data[a + across],
            data[b + across],
            rules.Strip,
            rules.Kerf
        );
        var kind = At(node, Kind);
        data[node * Stride + Levels] = Math.Max(LevelsUnder(a, kind), LevelsUnder(b, kind));
    }

    private int LevelsUnder(int child, int kind) =>
        data[child + Kind] == kind ? data[child + Levels] : data[child + Levels] + 1;

    /// <summary>
    /// The last number of a room is its sheet times 4096 and the stage of cuts at the piece.
    /// </summary>
    private void MeasureRoom(int node, int length, int width, int place)
    {
        room[node * 3] = length;
        room[node * 3 + 1] = width;
        room[node * 3 + 2] = place;
        var kind = At(node, Kind);
        if (kind >= 0)
        {
            return;
        }

        var (a, b) = (At(node, First), At(node, Second));
        if (kind == Beside)
        {
            MeasureRoom(a, length - At(b, Length), width, At(a, Kind) == kind ? place : place + 1);
            MeasureRoom(b, length - At(a, Length), width, At(b, Kind) == kind ? place : place + 1);
        }
        else
        {
            MeasureRoom(a, length, width - At(b, Width), At(a, Kind) == kind ? place : place + 1);
            MeasureRoom(b, length, width - At(a, Width), At(b, Kind) == kind ? place : place + 1);
        }
    }

    private Spot Better(Spot best, int node, (int Length, int Width) size, bool isTurned, Random? jitter)
    {
        var at = node * Stride;
        var (length, width) = (data[at + Length], data[at + Width]);
        var (roomX, roomY) = (room[node * 3], room[node * 3 + 1]);
        if (length + size.Length <= roomX && Math.Max(width, size.Width) <= roomY)
        {
            best = Better(best, node, size, (true, isTurned), jitter);
        }

        if (width + size.Width <= roomY && Math.Max(length, size.Length) <= roomX)
        {
            best = Better(best, node, size, (false, isTurned), jitter);
        }

        return best;
    }

    private Spot Better(
        Spot best,
        int node,
        (int Length, int Width) size,
        (bool IsBeside, bool IsTurned) how,
        Random? jitter
    )
    {
        if (rules.Stages != int.MaxValue && !IsWithinStages(node, how.IsBeside))
        {
            return best;
        }

        var score = Waste(node, size, how.IsBeside);
        if (jitter is not null)
        {
            score += jitter.NextDouble() * 0.02 * size.Length * size.Width;
        }

        return score < best.Score && (jitter is null || jitter.Next(64) != 0)
            ? new(node, room[node * 3 + 2] / Places, how.IsBeside, how.IsTurned, score)
            : best;
    }

    /// <summary>How much waste the piece above the node gains.</summary>
    private double Waste(int node, (int Length, int Width) size, bool isBeside)
    {
        var at = node * Stride;
        var length = isBeside ? data[at + Length] + size.Length : Math.Max(data[at + Length], size.Length);
        var width = isBeside ? Math.Max(data[at + Width], size.Width) : data[at + Width] + size.Width;
        var above = data[at + Up];
        var gained = -(double)size.Length * size.Width;
        if (above < 0)
        {
            return gained + (double)length * width - (double)data[at + Length] * data[at + Width];
        }

        var up = above * Stride;
        var (wholeX, wholeY) = (data[up + Length], data[up + Width]);
        var other = (data[up + First] == node ? data[up + Second] : data[up + First]) * Stride;
        var (x, y) =
            data[up + Kind] == Beside
                ? (data[other + Length] + length, Math.Max(data[other + Width], width))
                : (Math.Max(data[other + Length], length), data[other + Width] + width);
        return gained + (double)x * y - (double)wholeX * wholeY;
    }

    private bool IsWithinStages(int node, bool isBeside)
    {
        var kind = isBeside ? Beside : Above;
        var above = At(node, Up);
        var stage = above < 0 ? 1 : (room[above * 3 + 2] & (Places - 1)) + (At(above, Kind) == kind ? 0 : 1);
        var levels = Math.Max(1, LevelsUnder(node * Stride, kind));
        return stage - 1 + levels <= rules.Stages;
    }

    private bool IsWithin(int sheet, int length, int width) =>
        CutNode.IsRest(sheets[sheet].Length - length, rules.Strip, rules.Kerf)
        && CutNode.IsRest(sheets[sheet].Width - width, rules.Strip, rules.Kerf);

    private bool IsWhole(int sheet)
    {
        var (length, width) = Size(sheet);
        return IsWithin(sheet, length, width);
    }
}
