using System.Collections.Immutable;
using Litterfall.Domain.Cultures;

namespace Litterfall.Workshop.Cultures;

/// <summary>A culture in the tree of its line.</summary>
/// <param name="Culture">The culture.</param>
/// <param name="Depth">Splits since the first of the tree.</param>
public sealed record LineageRow(Culture Culture, int Depth);

/// <summary>Mothers and daughters.</summary>
public static class Lineage
{
    /// <summary>The tree a culture belongs to, mothers before their daughters.</summary>
    /// <param name="cultures">All cultures.</param>
    /// <param name="number">Number of one of them.</param>
    public static ImmutableArray<LineageRow> Tree(IReadOnlyCollection<Culture> cultures, string number)
    {
        var byNumber = cultures.ToDictionary(c => c.Number, StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var top = byNumber.GetValueOrDefault(number);
        while (top?.Mother is { } up && byNumber.TryGetValue(up, out var mother) && seen.Add(top.Number))
        {
            top = mother;
        }

        var rows = ImmutableArray.CreateBuilder<LineageRow>();
        if (top is not null)
        {
            Put(top, 0, Daughters(cultures), rows);
        }

        return rows.ToImmutable();
    }

    /// <summary>
    /// All cultures that share a fate with a line: its own, and whatever was split off them, however named.
    /// </summary>
    /// <param name="cultures">All cultures.</param>
    /// <param name="species">Catalog key.</param>
    /// <param name="line">The line.</param>
    public static ImmutableArray<Culture> OfLine(
        IReadOnlyCollection<Culture> cultures,
        string species,
        string line
    )
    {
        var daughters = Daughters(cultures);
        var found = new List<Culture>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var queue = new Queue<Culture>(cultures.Where(c => c.Species == species && c.Line == line));
        while (queue.TryDequeue(out var culture))
        {
            if (!seen.Add(culture.Number))
            {
                continue;
            }

            found.Add(culture);
            foreach (var daughter in daughters[culture.Number])
            {
                queue.Enqueue(daughter);
            }
        }

        return [.. found];
    }

    private static ILookup<string, Culture> Daughters(IEnumerable<Culture> cultures) =>
        cultures
            .Where(c => c.Mother is not null)
            .OrderBy(c => c.Since)
            .ThenBy(c => c.Number, StringComparer.Ordinal)
            .ToLookup(c => c.Mother!, StringComparer.Ordinal);

    private static void Put(
        Culture culture,
        int depth,
        ILookup<string, Culture> daughters,
        ImmutableArray<LineageRow>.Builder rows
    )
    {
        const int deepest = 60;
        rows.Add(new(culture, depth));
        if (depth >= deepest)
        {
            return;
        }

        foreach (var daughter in daughters[culture.Number])
        {
            Put(daughter, depth + 1, daughters, rows);
        }
    }
}
