using Litterfall.Domain.Cutting;

namespace Litterfall.UnitTests.Workshop.Cutting;

/// <summary>
/// Every way to put few parts together by straight cuts, with the kerf between two pieces counted where it is
/// cut: for each set of parts all smallest rectangles. It is written from the definition and shares nothing
/// with the search: no sizes with kerf added, no places, no bounds.
/// </summary>
internal sealed class GuillotineOracle
{
    private readonly List<(double Length, double Width, bool MayTurn, double Value)> parts = [];
    private readonly List<(double Length, double Width)>[] shapes;
    private readonly double kerf;

    public GuillotineOracle(CuttingTask task)
    {
        kerf = task.Kerf;
        foreach (var part in task.Parts)
        {
            for (var i = 0; i < part.Count; i++)
            {
                parts.Add((part.Length, part.Width, part.MayTurn, part.Value ?? part.Length * part.Width));
            }
        }

        shapes = new List<(double, double)>[1 << parts.Count];
        for (var set = 1; set < shapes.Length; set++)
        {
            shapes[set] = Smallest(All(set));
        }
    }

    public int Sets => shapes.Length;

    public double Value(int set) => parts.Where((_, i) => (set >> i & 1) == 1).Sum(p => p.Value);

    public bool Fits(int set, double length, double width) =>
        set == 0 || shapes[set].Any(s => s.Length <= length + 1e-9 && s.Width <= width + 1e-9);

    /// <summary>Most value from one sheet.</summary>
    public double Best(double length, double width) =>
        Enumerable.Range(0, Sets).Where(set => Fits(set, length, width)).Max(Value);

    /// <summary>Fewest sheets of one size.</summary>
    public int Fewest(double length, double width) => (int)Cheapest([(length, width, 1.0, int.MaxValue)]);

    /// <summary>Cheapest sheets; sheets of which there are few are taken one by one.</summary>
    public double Cheapest((double Length, double Width, double Cost, int Count)[] stock)
    {
        var single = stock
            .SelectMany(s => s.Count == int.MaxValue ? [s] : Enumerable.Repeat(s with { Count = 1 }, s.Count))
            .ToArray();
        var least = Enumerable.Repeat(double.PositiveInfinity, Sets).ToArray();
        least[0] = 0;
        foreach (var sheet in single)
        {
            var before = least.ToArray();
            for (var set = 1; set < Sets; set++)
            {
                for (var on = set; on > 0; on = (on - 1) & set)
                {
                    var rest = sheet.Count == 1 ? before[set ^ on] : least[set ^ on];
                    if (rest + sheet.Cost < least[set] && Fits(on, sheet.Length, sheet.Width))
                    {
                        least[set] = rest + sheet.Cost;
                    }
                }
            }
        }

        return least[^1];
    }

    /// <summary>Shortest piece of a roll.</summary>
    public double Shortest(double width) =>
        shapes[^1]
            .Where(s => s.Width <= width + 1e-9)
            .Select(s => s.Length)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();

    private IEnumerable<(double, double)> All(int set)
    {
        if ((set & (set - 1)) == 0)
        {
            var part = parts[System.Numerics.BitOperations.TrailingZeroCount(set)];
            yield return (part.Length, part.Width);
            if (part.MayTurn)
            {
                yield return (part.Width, part.Length);
            }

            yield break;
        }

        for (var one = (set - 1) & set; one > 0; one = (one - 1) & set)
        {
            if (one < (set ^ one))
            {
                continue;
            }

            foreach (var (a, b) in shapes[one])
            {
                foreach (var (c, d) in shapes[set ^ one])
                {
                    yield return (a + kerf + c, Math.Max(b, d));
                    yield return (Math.Max(a, c), b + kerf + d);
                }
            }
        }
    }

    private static List<(double Length, double Width)> Smallest(
        IEnumerable<(double Length, double Width)> all
    )
    {
        var kept = new List<(double Length, double Width)>();
        foreach (var shape in all.Distinct().OrderBy(s => s.Length).ThenBy(s => s.Width))
        {
            if (kept.Count == 0 || shape.Width < kept[^1].Width)
            {
                kept.Add(shape);
            }
        }

        return kept;
    }
}
