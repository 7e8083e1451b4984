namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>Pieces that were looked at, by their edges; in each group the best first.</summary>
internal sealed class PieceShelf(GridSheet sheet)
{
    private readonly Rank?[] byLength = new Rank?[sheet.Length + 1];
    private readonly Rank?[] byWidth = new Rank?[sheet.Width + 1];
    private readonly List<Rank> lengths = [];
    private readonly List<Rank> widths = [];
    private readonly Dictionary<(int, int), Group> groups = [];

    /// <summary>Pieces of one size, the best first.</summary>
    /// <param name="Length">Edge along x.</param>
    /// <param name="Width">Edge along y.</param>
    internal sealed record Group(int Length, int Width)
    {
        /// <summary>The pieces.</summary>
        public List<int> Members { get; } = [];
    }

    /// <summary>Groups with one edge in common.</summary>
    /// <param name="Edge">The edge.</param>
    internal sealed record Rank(int Edge)
    {
        /// <summary>The groups.</summary>
        public List<Group> Groups { get; } = [];

        /// <summary>Largest value less prices among all.</summary>
        public double BestPriced { get; set; } = double.MinValue;
    }

    /// <summary>Ranks by length or by width, the shortest edge first.</summary>
    public IReadOnlyList<Rank> Ranks(bool isByLength) => isByLength ? lengths : widths;

    /// <summary>Adds a piece; pieces of one size come best first.</summary>
    public void Add(int index, in PieceStore.Piece piece)
    {
        var (row, column) = (RankOf(lengths, byLength, piece.Length), RankOf(widths, byWidth, piece.Width));
        if (!groups.TryGetValue((piece.Length, piece.Width), out var group))
        {
            group = new(piece.Length, piece.Width);
            groups.Add((piece.Length, piece.Width), group);
            row.Groups.Add(group);
            column.Groups.Add(group);
        }

        row.BestPriced = Math.Max(row.BestPriced, piece.Priced);
        column.BestPriced = Math.Max(column.BestPriced, piece.Priced);
        group.Members.Add(index);
    }

    private static Rank RankOf(List<Rank> ranks, Rank?[] byEdge, int edge)
    {
        if (byEdge[edge] is { } known)
        {
            return known;
        }

        var rank = new Rank(edge);
        byEdge[edge] = rank;
        var place = ranks.FindIndex(r => r.Edge > edge);
        ranks.Insert(place < 0 ? ranks.Count : place, rank);
        return rank;
    }
}
