namespace Litterfall.Domain.DesignFile;

/// <summary>What somebody probably meant by a word that is not known.</summary>
public static class NearWords
{
    /// <summary>Known words within a third of the letters, nearest first.</summary>
    /// <param name="typed">The word.</param>
    /// <param name="known">What is known.</param>
    public static IEnumerable<string> Of(string typed, IEnumerable<string> known) =>
        known
            .Select(word => (word, Distance: Distance(typed.ToLowerInvariant(), word.ToLowerInvariant())))
            .Where(pair => pair.Distance <= Math.Max(1, typed.Length / 3))
            .OrderBy(pair => pair.Distance)
            .ThenBy(pair => pair.word, StringComparer.Ordinal)
            .Select(pair => pair.word);

    /// <summary>
    /// Letters to put in, leave out or change, and neighbors to swap (Damerau 1964, recalled).
    /// </summary>
    public static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    rows[i, j] = i + j;
                    continue;
                }

                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                rows[i, j] = Math.Min(
                    Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1),
                    rows[i - 1, j - 1] + change
                );
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }
}
