using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>An offcut that somebody puts on the rack by hand.</summary>
public static class HandOffcut
{
    /// <summary>The lot it becomes: its amount from its area, its worth by the rules of its good.</summary>
    /// <param name="offcut">Good, edges, day and thickness.</param>
    /// <param name="good">Its good.</param>
    /// <param name="facts">What the table knows.</param>
    /// <param name="number">Number of the lot.</param>
    public static Lot Make(Lot offcut, Good good, TableFacts facts, string number)
    {
        var area = SheetSupply.Area((offcut.LengthMillimeters ?? 0, offcut.WidthMillimeters ?? 0));
        var rules = facts.RulesOf(good.Key);
        var each = SheetSupply.PricePerSquareMeter(facts, good, offcut.ThicknessMillimeters);
        return offcut with
        {
            Id = number,
            Form = SheetForm.Offcut,
            Amount = area * PerSquareMeter(good, facts, rules.SheetLength, rules.SheetWidth),
            Cost = each is { } price
                ? Math.Round(price * (decimal)(area * rules.OffcutWorth), 2, MidpointRounding.AwayFromZero)
                : 0,
        };
    }

    /// <summary>Units in a square meter, told by a lot of the good or by its usual size; 1 where nobody
    /// knows.
    /// </summary>
    private static double PerSquareMeter(Good good, TableFacts facts, double? length, double? width) =>
        facts
            .Book.LotsOf(good.Key)
            .Select(a => SheetSupply.UnitsPerSquareMeter(a.Lot, good.Unit))
            .LastOrDefault(u => u is not null)
        ?? (
            (good.Unit, length, width) switch
            {
                (StockUnit.Pieces, { } l, { } w) => 1 / SheetSupply.Area((l, w)),
                (StockUnit.Meters, _, { } w) => 1000 / w,
                _ => 1,
            }
        );
}
