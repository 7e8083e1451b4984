using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Words and counts the stocking rules share.</summary>
internal static class StockingWords
{
    /// <summary>
    /// All practice rules broken is a stop only where at least two speak: one rule alone is no agreement.
    /// </summary>
    public const int FewestRulesForStop = 2;

    /// <summary>The guide that is the species' own row.</summary>
    public const string OwnBox = "species-box";

    public static IEnumerable<StockedRows> Species(DesignNumbers n) =>
        n.Stocking.GroupBy(row => row.Animal, StringComparer.Ordinal).Select(g => new StockedRows([.. g]));

    public static string Number(Figure figure) => figure.Value.ToString("0.#", CultureInfo.InvariantCulture);

    public static string List(IEnumerable<StockingRow> rows) =>
        string.Join(", ", rows.Select(row => $"{row.Name} {Number(row.Allowed!)}"));
}

/// <summary>The rows of one species.</summary>
internal sealed record StockedRows(StockingRow[] Rows)
{
    public StockingRow First => Rows[0];

    public StockingRow[] Practice => [.. Rows.Where(row => row is { Applies: true, IsGroupRule: false })];

    public StockingRow[] Broken => [.. Practice.Where(row => !row.Holds)];

    /// <summary>True where the smallest box of the species itself is among what is broken.</summary>
    public bool IsOwnBoxBroken => Broken.Any(row => row.Rule == StockingWords.OwnBox);

    public bool IsGroupBroken => Rows.Any(row => row is { IsGroupRule: true, Holds: false });

    public bool IsEveryRuleBroken =>
        Practice.Length >= StockingWords.FewestRulesForStop && Broken.Length == Practice.Length;
}
