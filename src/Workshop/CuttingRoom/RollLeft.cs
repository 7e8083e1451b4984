using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>What is left of a roll that no plan holds.</summary>
/// <param name="Source">The roll.</param>
/// <param name="Good">Name of its good.</param>
/// <param name="Words">Length that is left and width, in words.</param>
public sealed record RollLeft(CutSource Source, string Good, string Words)
{
    /// <summary>All rolls.</summary>
    /// <param name="facts">What the table knows.</param>
    /// <param name="goods">Goods.</param>
    public static IEnumerable<RollLeft> Read(TableFacts facts, IEnumerable<Good> goods) =>
        goods
            .Where(g => g.Kind == GoodKind.Sheet)
            .SelectMany(g =>
                SheetSupply
                    .Read(facts, g, null, facts.RulesOf(g.Key))
                    .Where(s => s.Source.Kind == CutSourceKind.Roll)
                    .Select(s => new RollLeft(
                        s.Source,
                        g.Name,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{s.Sheet.Length / 1000:0.00} m left, {s.Sheet.Width:0.#} mm wide"
                        )
                    ))
            );
}
