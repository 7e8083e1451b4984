using System.Collections.Immutable;
using Litterfall.Domain.Cultures;

namespace Litterfall.Workshop.Cultures;

/// <summary>
/// Odds that cultures are left: a line is lost whole with one chance, and each cup of a line that is not
/// lost fails by itself with another. Exact: the distributions of the lines are convolved.
/// </summary>
/// <param name="Left">Chance of 0, 1, 2 … cups left.</param>
public sealed record CrashRisk(ImmutableArray<double> Left)
{
    /// <summary>Chance that none is left.</summary>
    public double None => Left[0];

    /// <summary>Chance that fewer are left than are wanted.</summary>
    /// <param name="wanted">Cups that are wanted.</param>
    public double Below(int wanted) => Left.Take(Math.Max(0, wanted)).Sum();

    /// <summary>Odds of groups of cups, each of which shares its fate.</summary>
    /// <param name="cups">Cups of each group.</param>
    /// <param name="lineLoss">Chance that a whole group is lost.</param>
    /// <param name="cupLoss">Chance of each cup else.</param>
    public static CrashRisk Find(IEnumerable<int> cups, double lineLoss, double cupLoss)
    {
        double[] sum = [1.0];
        foreach (var count in cups)
        {
            var one = Binomial(count, 1 - cupLoss);
            for (var i = 0; i < one.Length; i++)
            {
                one[i] = ((1 - lineLoss) * one[i]) + (i == 0 ? lineLoss : 0);
            }

            sum = Convolved(sum, one);
        }

        return new([.. sum]);
    }

    /// <summary>
    /// Groups that share a fate: cultures of one line, and lines that came from one mother, however long ago.
    /// </summary>
    /// <param name="cultures">All cultures, ended ones too: they are mothers.</param>
    /// <returns>Standing cultures of each group, large groups first.</returns>
    public static ImmutableArray<ImmutableArray<Culture>> Groups(IReadOnlyCollection<Culture> cultures)
    {
        var above = new Dictionary<string, string>(StringComparer.Ordinal);
        string Top(string name)
        {
            var at = name;
            while (above.TryGetValue(at, out var up) && up != at)
            {
                at = up;
            }

            return at;
        }

        void Join(string one, string other) => above[Top(one)] = Top(other);
        var known = cultures.Select(c => c.Number).ToHashSet(StringComparer.Ordinal);
        foreach (var culture in cultures)
        {
            Join(Cup(culture.Number), $"line {culture.Species} {culture.Line}");
            if (culture.Mother is { } mother && known.Contains(mother))
            {
                Join(Cup(culture.Number), Cup(mother));
            }
        }

        return
        [
            .. cultures
                .Where(c => c.IsUsable)
                .GroupBy(c => Top(Cup(c.Number)), StringComparer.Ordinal)
                .OrderByDescending(g => g.Count())
                .ThenBy(g => g.Min(c => c.Number), StringComparer.Ordinal)
                .Select(g => g.ToImmutableArray()),
        ];

        static string Cup(string number) => $"cup {number}";
    }

    private static double[] Binomial(int count, double chance)
    {
        var odds = new double[count + 1];
        odds[0] = 1;
        for (var n = 1; n <= count; n++)
        {
            for (var k = n; k > 0; k--)
            {
                odds[k] = (odds[k] * (1 - chance)) + (odds[k - 1] * chance);
            }

            odds[0] *= 1 - chance;
        }

        return odds;
    }

    private static double[] Convolved(double[] one, double[] other)
    {
        var sum = new double[one.Length + other.Length - 1];
        for (var i = 0; i < one.Length; i++)
        {
            for (var j = 0; j < other.Length; j++)
            {
                sum[i + j] += one[i] * other[j];
            }
        }

        return sum;
    }
}
