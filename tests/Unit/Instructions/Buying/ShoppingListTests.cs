using Litterfall.Instructions.Buying;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Packs;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Buying;

/// <summary>The shopping list against the design and the workshop's stock.</summary>
public sealed class ShoppingListTests
{
    private static readonly ShoppingList Kits = ShoppingList.Of(Built.Kits);

    [Fact]
    public void Goods_in_stock_are_taken_and_not_bought()
    {
        // Stock 110 L of clay; eight floors of 292 × 277 mm × 4 cm = 25.88 L. All of it comes from stock.
        var clay = Kits.Lines.Where(l => l.Key.Contains("expanded-clay", StringComparison.Ordinal)).ToArray();
        var line = Assert.Single(clay);
        Assert.Equal(ShoppingKind.FromStock, line.Kind);
        Assert.Equal(0.2588288, line.Liters!.Si * 10, 1e-6);
    }

    [Fact]
    public void Pieces_are_for_all_boxes()
    {
        var barrier = Kits.Lines.Single(l => l.Where == "floor.barrier" && l.Kind == ShoppingKind.Mesh);
        Assert.Equal(8, barrier.Pieces!.Si);
        // 292 + 20 by 277 + 20 mm, eight times.
        Assert.Equal(8 * 0.312 * 0.297, barrier.Area!.Si, 1e-9);
        Assert.Equal(8, Kits.Lines.Single(l => l.Kind == ShoppingKind.Box).Pieces!.Si);
        Assert.All(Kits.Lines.Where(l => l.Kind == ShoppingKind.Plant), l => Assert.Equal(8, l.Pieces!.Si));
    }

    [Fact]
    public void Each_kit_gets_a_cup_of_its_own()
    {
        // 170 springtails a kit; the smallest cup holds about 250 (common practice): one cup each, eight
        // cups.
        var crew = Kits.Lines.Single(l => l.Kind == ShoppingKind.Crew);
        Assert.Equal(8, crew.Pieces!.Si);
        Assert.Contains("240-ml", crew.Key, StringComparison.Ordinal);
    }

    [Fact]
    public void Boxes_planted_on_one_bench_share_cups()
    {
        // Three boxes of 200 springtails: 600 for a cup that holds about 1000, one cup in all.
        var numbers = Posed
            .Run(
                "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
                "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
                "boxes: 3\ncrew: [ { animal: folsomia-candida, count: 200 } ]"
            )
            .Numbers;
        var starter = Assert.Single(CrewStarters.Of(numbers));
        Assert.Equal(1, starter.Cups.Si);
        Assert.Contains("950-ml", starter.Pack!.Key, StringComparison.Ordinal);
    }

    [Fact]
    public void The_total_is_the_sum_of_its_priced_lines()
    {
        Assert.Equal("EUR", Kits.Currency);
        // Two packs of chopped sphagnum at 5.90 and one of long-fiber sphagnum at 7.40 in the workshop's
        // price list; all else is in stock or has no price there.
        Assert.Equal(2 * 5.90 + 7.40, Kits.Total!.Si, 1e-9);
        Assert.Equal(GoodsCost.Purchase(Built.Kits.Packs)!.Si, Kits.Total.Si, 1e-9);
        Assert.True(Kits.Unpriced > 0);
    }

    [Fact]
    public void A_design_without_a_workshop_has_no_prices()
    {
        var list = ShoppingList.Of(Built.Box);
        Assert.Null(list.Total);
        Assert.Null(list.Currency);
        Assert.All(list.Lines, l => Assert.Null(l.Price));
    }

    [Fact]
    public void Nozzles_tubes_and_foam_are_on_the_list()
    {
        var inches = ShoppingList.Of(Built.Inches).Lines;
        Assert.Equal(2, inches.Single(l => l.Key == "mist-nozzle").Pieces!.Si);
        Assert.Contains(inches, l => l.Key == "siphon");
        Assert.Contains(inches, l => l.Kind == ShoppingKind.Lamp);
        // A vent with an area only, 60 cm², is made 3 cm high and 20 cm long; mesh is 25 mm more all round.
        var vent = inches.Single(l => l is { Where: "vents", Kind: ShoppingKind.Mesh });
        Assert.Equal(0.25 * 0.08, vent.Area!.Si, 1e-9);
        // 14.4 L of foam; a can gives 25 L (common practice): one can.
        var foam = ShoppingList.Of(Built.Foam).Lines.Single(l => l.Key == "pack-expanding-foam-can");
        Assert.Equal(1, foam.Pieces!.Si);
    }
}
