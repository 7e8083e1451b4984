using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>
/// Every stocking rule of the trade side by side, for each species. The rules disagree; the strictest that
/// applies is the safe one.
/// </summary>
public static class StockingTable
{
    private static readonly ImmutableArray<StockingRule> Rules =
    [
        GermanArea.Rule,
        UnitedStatesArea.Rule,
        VolumePerAnimal.Rule,
        GallonsPerFrog.Rule,
        GallonsPerSmallFrog.Rule,
        DutchGuide.Rule,
        ItalianGuide.Rule,
        SmallestBox.Rule,
        GroupForm.Rule,
    ];

    /// <summary>Rows by species, then by rule; empty when no animals are asked for.</summary>
    public static ImmutableArray<StockingRow> Of(CheckedDesign design, BoxGeometry box) =>
        [.. StockedSpecies.Of(design).SelectMany(species => Rules.Select(rule => rule.Row(species, box)))];

    /// <summary>The row that allows fewest, of those of one species that apply; null when none
    /// does.</summary>
    public static StockingRow? Strictest(IEnumerable<StockingRow> rows) =>
        rows.Where(row => row.Applies).MinBy(row => row.Allowed!.Si);
}
