using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Views;

/// <summary>
/// Lines of equal value through a grid of points, straight within each square. Points that are not numbers
/// cut a line.
/// </summary>
internal sealed class Isolines
{
    private static readonly double[] Steps = [1.0, 2.0, 5.0];
    private readonly IReadOnlyList<double> values;
    private readonly int across;
    private readonly int rows;
    private readonly Func<double, double, Spot> place;
    private readonly Dictionary<int, (int A, int B)> links = [];
    private readonly Dictionary<int, Spot> crossings = [];
    private double level;

    /// <summary>Lines through a grid.</summary>
    /// <param name="values">Values, row by row.</param>
    /// <param name="across">Points in a row.</param>
    /// <param name="place">Where a point of the grid lies, by its column and row, whole or between.</param>
    public Isolines(IReadOnlyList<double> values, int across, Func<double, double, Spot> place)
    {
        this.values = values;
        this.across = across;
        this.place = place;
        rows = values.Count / across;
    }

    /// <summary>Round levels between the least and the most, at most so many.</summary>
    public static ImmutableArray<double> Levels(double least, double most, int count)
    {
        if (!(most > least))
        {
            return [];
        }

        for (int power = -3; power < 6; power++)
        {
            foreach (double step in Steps)
            {
                double size = step * Math.Pow(10.0, power);
                double first = Math.Ceiling((least / size) + 1e-9);
                double last = Math.Floor((most / size) - 1e-9);
                if (last - first + 1.0 <= count)
                {
                    return
                    [
                        .. Enumerable
                            .Range(0, (int)Math.Max(0.0, last - first + 1.0))
                            .Select(i => (first + i) * size),
                    ];
                }
            }
        }

        return [];
    }

    /// <summary>The lines of a level.</summary>
    public IReadOnlyList<ImmutableArray<Spot>> At(double wanted)
    {
        level = wanted;
        links.Clear();
        crossings.Clear();
        for (int j = 0; j + 1 < rows; j++)
        {
            for (int i = 0; i + 1 < across; i++)
            {
                Square(i, j);
            }
        }

        return Chains();
    }

    private double Value(int i, int j) => values[(j * across) + i];

    private void Square(int i, int j)
    {
        double a = Value(i, j);
        double b = Value(i + 1, j);
        double c = Value(i + 1, j + 1);
        double d = Value(i, j + 1);
        if (double.IsNaN(a + b + c + d))
        {
            return;
        }

        int low = Edge(i, j, false);
        int right = Edge(i + 1, j, true);
        int high = Edge(i, j + 1, false);
        int left = Edge(i, j, true);
        var cut = new List<int>(4);
        Cross(cut, low, a, b, (i, j), (1, 0));
        Cross(cut, right, b, c, (i + 1, j), (0, 1));
        Cross(cut, high, d, c, (i, j + 1), (1, 0));
        Cross(cut, left, a, d, (i, j), (0, 1));
        if (cut.Count == 2)
        {
            Link(cut[0], cut[1]);
        }
        else if (cut.Count == 4)
        {
            bool isHigh = 0.25 * (a + b + c + d) >= level;
            bool joinsLow = isHigh == a >= level;
            Link(low, joinsLow ? right : left);
            Link(high, joinsLow ? left : right);
        }
    }

    private int Edge(int i, int j, bool isUp) => (2 * ((j * across) + i)) + (isUp ? 1 : 0);

    private void Cross(
        List<int> cut,
        int edge,
        double from,
        double to,
        (int I, int J) start,
        (int I, int J) way
    )
    {
        if (from >= level == to >= level)
        {
            return;
        }

        double share = (level - from) / (to - from);
        crossings[edge] = place(start.I + (share * way.I), start.J + (share * way.J));
        cut.Add(edge);
    }

    private void Link(int a, int b)
    {
        Add(a, b);
        Add(b, a);
    }

    private void Add(int from, int to) =>
        links[from] = links.TryGetValue(from, out var known) ? (known.A, to) : (to, -1);

    private List<ImmutableArray<Spot>> Chains()
    {
        var chains = new List<ImmutableArray<Spot>>();
        var seen = new HashSet<int>();
        var ends = links.Where(l => l.Value.B < 0).Select(l => l.Key).Concat(links.Keys);
        foreach (int start in ends.ToList())
        {
            if (!seen.Add(start))
            {
                continue;
            }

            var chain = ImmutableArray.CreateBuilder<Spot>();
            chain.Add(crossings[start]);
            int at = links[start].A;
            int before = start;
            while (at >= 0 && seen.Add(at))
            {
                chain.Add(crossings[at]);
                var (a, b) = links[at];
                (before, at) = (at, a == before ? b : a);
            }

            if (at == start && chain.Count > 2)
            {
                chain.Add(crossings[start]);
            }

            if (chain.Count > 1)
            {
                chains.Add(chain.ToImmutable());
            }
        }

        return chains;
    }
}
