using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Exact search for the most value from one sheet with limited numbers of parts: pieces are built up from
/// parts, the most promising first (Viswanathan and Bagchi 1993, in the form of Cung, Hifi and Le Cun 2000),
/// with the bounds outside a piece taken once without and once with prices on parts.
/// </summary>
internal sealed class LimitedSearch
{
    private readonly ImmutableArray<GridPart> parts;
    private readonly GridSheet sheet;
    private readonly CutRules rules;
    private readonly byte[] most;
    private readonly double[] prices;
    private readonly double constant;
    private readonly OutsideTable priced;
    private readonly OutsideTable plain;
    private readonly PieceStore store;
    private readonly PieceShelf shelf;
    private readonly PriorityQueue<int, double> open = new();
    private readonly byte[] numbers;
    private readonly double least;
    private int bestPiece = -1;

    /// <summary>A search.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="counts">How many of each there are.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="rules">What cuts there may be; stages are not looked at.</param>
    /// <param name="bounds">Bounds and prices.</param>
    public LimitedSearch(
        ImmutableArray<GridPart> parts,
        int[] counts,
        GridSheet sheet,
        CutRules rules,
        PieceBounds bounds
    )
    {
        this.parts = parts;
        this.sheet = sheet;
        this.rules = rules;
        most = [.. counts.Select((n, i) => (byte)Math.Min(n, Most(parts[i], sheet)))];
        prices = bounds.Prices;
        constant = prices.Select((p, i) => p > 0 ? p * counts[i] : 0).Sum();
        (priced, plain) = (bounds.Priced, bounds.Plain);
        store = new(parts.Length);
        shelf = new(sheet);
        numbers = new byte[parts.Length];
        Value = bounds.Value;
        least = bounds.IsWhole ? 1 - 1e-6 : Math.Max(1e-9, bounds.Value * 1e-9);
    }

    /// <summary>Value of the best plan.</summary>
    public double Value { get; private set; }

    /// <summary>Largest value that a plan can still have.</summary>
    public double Bound { get; private set; }

    /// <summary>True where the numbers of parts are within what the search counts.</summary>
    public static bool Serves(ImmutableArray<GridPart> parts, int[] counts, GridSheet sheet) =>
        parts.Select((p, i) => Math.Min(counts[i], Most(p, sheet))).All(n => n < 128);

    /// <summary>Searches.</summary>
    /// <param name="mostPieces">Most pieces that are kept.</param>
    /// <param name="cancel">Ends it early.</param>
    /// <returns>True where the best plan is proved.</returns>
    public bool Run(int mostPieces, CancellationToken cancel)
    {
        Start();
        var turns = 0;
        while (open.TryPeek(out var piece, out var rank))
        {
            Bound = Math.Max(Value, -rank);
            if (-rank < Value + least)
            {
                Bound = Value;
                return true;
            }

            if (store.Count > mostPieces || ((++turns & 15) == 0 && cancel.IsCancellationRequested))
            {
                return false;
            }

            open.Dequeue();
            shelf.Add(piece, store.At(piece));
            Grow(piece, true);
            Grow(piece, false);
        }

        Bound = Value;
        return true;
    }

    /// <summary>The cuts of the best plan; null where nothing better than before was found.</summary>
    public CutNode? Best() => bestPiece < 0 ? null : TreeOf(bestPiece);

    private static int Most(GridPart part, GridSheet sheet) =>
        (int)Math.Min(int.MaxValue, sheet.Area / part.Area);

    private void Start()
    {
        for (var i = 0; i < parts.Length; i++)
        {
            if (most[i] == 0)
            {
                continue;
            }

            Array.Clear(numbers);
            numbers[i] = 1;
            var value = parts[i].Value;
            Take(new(parts[i].Length, parts[i].Width, i, -1, false, value - prices[i], value));
            if (parts[i].MayTurn)
            {
                Take(new(parts[i].Width, parts[i].Length, i, -2, false, value - prices[i], value));
            }
        }
    }

    /// <summary>Joins a piece with all that were looked at before, and with itself.</summary>
    private void Grow(int piece, bool isBeside)
    {
        var one = store.At(piece);
        var room = isBeside ? sheet.Length - one.Length : sheet.Width - one.Width;
        foreach (var rank in shelf.Ranks(isBeside))
        {
            if (rank.Edge > room)
            {
                break;
            }

            var edge = rank.Edge + (isBeside ? one.Length : one.Width);
            var roof = isBeside ? priced.Of(edge, one.Width) : priced.Of(one.Length, edge);
            if (constant + one.Priced + rank.BestPriced + roof < Value + least)
            {
                continue;
            }

            foreach (var group in rank.Groups)
            {
                Grow(piece, one, group, isBeside);
            }
        }
    }

    private void Grow(int piece, in PieceStore.Piece one, PieceShelf.Group group, bool isBeside)
    {
        var across = isBeside
            ? CutNode.Across(one.Width, group.Width, rules.Strip, rules.Kerf)
            : CutNode.Across(one.Length, group.Length, rules.Strip, rules.Kerf);
        if (across > (isBeside ? sheet.Width : sheet.Length))
        {
            return;
        }

        var (length, width) = isBeside
            ? (one.Length + group.Length, across)
            : (across, one.Width + group.Width);
        var roof = constant + one.Priced + priced.Of(length, width);
        var plainRoof = one.Value + plain.Of(length, width);
        for (var i = 0; i < group.Members.Count; i++)
        {
            var other = store.At(group.Members[i]);
            if (roof + other.Priced < Value + least)
            {
                return;
            }

            if (plainRoof + other.Value >= Value + least && store.Sum(piece, group.Members[i], most, numbers))
            {
                Take(
                    new(
                        length,
                        width,
                        piece,
                        group.Members[i],
                        isBeside,
                        one.Priced + other.Priced,
                        one.Value + other.Value
                    )
                );
            }
        }
    }

    private void Take(in PieceStore.Piece piece)
    {
        if (piece.Length > sheet.Length || piece.Width > sheet.Width)
        {
            return;
        }

        // The queue stands on the priced bound alone: so pieces of one size come in the order of their price.
        var bound = constant + piece.Priced + priced.Of(piece.Length, piece.Width);
        if (bound < Value + least || piece.Value + plain.Of(piece.Length, piece.Width) < Value + least)
        {
            return;
        }

        var index = store.Add(piece, numbers);
        if (index < 0)
        {
            return;
        }

        if (
            piece.Value > Value
            && CutNode.IsRest(sheet.Length - piece.Length, rules.Strip, rules.Kerf)
            && CutNode.IsRest(sheet.Width - piece.Width, rules.Strip, rules.Kerf)
        )
        {
            Value = piece.Value;
            bestPiece = index;
        }

        open.Enqueue(index, -bound);
    }

    private CutNode TreeOf(int index)
    {
        var piece = store.At(index);
        return piece.Second < 0
            ? CutNode.Leaf(piece.First, parts[piece.First], piece.Second == -2)
            : CutNode.Join(
                TreeOf(piece.First),
                TreeOf(piece.Second),
                piece.IsBeside,
                rules.Strip,
                rules.Kerf
            );
    }
}

/// <summary>What a search over pieces stands on.</summary>
/// <param name="Priced">Bounds outside a piece with prices on parts.</param>
/// <param name="Plain">Bounds outside a piece without.</param>
/// <param name="Prices">The prices.</param>
/// <param name="Value">Value of a plan that is known.</param>
/// <param name="IsWhole">True where all values are whole.</param>
internal sealed record PieceBounds(
    OutsideTable Priced,
    OutsideTable Plain,
    double[] Prices,
    double Value,
    bool IsWhole
);
