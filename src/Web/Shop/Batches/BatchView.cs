using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;

namespace Litterfall.Web.Shop.Batches;

/// <summary>Soil batches as they stand.</summary>
/// <param name="Stock">Stock.</param>
/// <param name="Catalog">The library.</param>
/// <param name="Needs">What open orders still need.</param>
/// <param name="Batches">Batches in the order they were made.</param>
/// <param name="Terms">The workshop: tub, jug, lift limit.</param>
/// <param name="Today">Today.</param>
public sealed record BatchView(
    StockView Stock,
    TradeCatalog Catalog,
    ImmutableArray<MixNeed> Needs,
    ImmutableArray<Kept<SoilBatch>> Batches,
    ShopTerms Terms,
    DateOnly Today
)
{
    /// <summary>Recipes that can be mixed here, by name.</summary>
    public IEnumerable<RecipeEntry> Recipes =>
        Catalog
            .Of<RecipeEntry>()
            .Where(r => !r.Parts.IsDefaultOrEmpty)
            .OrderBy(r => r.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>How a recipe is made now.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="more">Liters beyond what orders need.</param>
    public BatchPlan Plan(RecipeEntry recipe, double more) =>
        BatchPlan.From(
            recipe,
            [.. Needs.Where(n => n.Recipe == recipe.Key)],
            more,
            new(Stock.Book, Catalog, Terms, Today),
            Learned(recipe.Key)
        );

    /// <summary>What batches of a recipe taught, in words.</summary>
    /// <param name="recipe">Key of the recipe.</param>
    public string Told(string recipe) =>
        BatchLearning.Told(Batches.Select(b => b.Value).Where(b => b.Recipe == recipe));

    /// <summary>What batches of a recipe taught.</summary>
    /// <param name="recipe">Key of the recipe.</param>
    public BatchLearning Learned(string recipe) =>
        BatchLearning.From([.. Batches.Select(b => b.Value).Where(b => b.Recipe == recipe)]);
}
