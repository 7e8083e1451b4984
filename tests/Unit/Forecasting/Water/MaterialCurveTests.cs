using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Water;
using Litterfall.Physics.Soil;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Forecasting.Water;

/// <summary>Recipes without a curve of their own.</summary>
public sealed class MaterialCurveTests
{
    private static readonly string[] own =
    [
        "thetaR",
        "thetaS",
        "weight1",
        "alpha1",
        "n1",
        "alpha2",
        "n2",
        "ks",
        "l",
    ];

    // The catalog's rows of these recipes were fitted beforehand, by another program, to the same parts.
    [Theory]
    [InlineData("peat-free-rainforest")]
    [InlineData("airy-mix")]
    [InlineData("simple-bench-mix")]
    public void TheEstimateStandsInForTheRow(string key)
    {
        var catalog = Shop.Catalog(null).Value!;
        var recipe = catalog.Find<RecipeEntry>(key)!;
        var bare = recipe with { Values = [.. recipe.Values.Where(v => !own.Contains(v.Name))] };
        Assert.Null(MaterialCurve.Of(bare));
        var estimate = new VanGenuchten(MaterialCurve.Of(bare, catalog)!);
        var row = new VanGenuchten(MaterialCurve.Of(recipe)!);
        foreach (double head in (double[])[-0.03, -0.1, -0.5])
        {
            Assert.Equal(row.WaterContent(head), estimate.WaterContent(head), 0.005);
        }

        Assert.NotEmpty(MaterialCurve.Figures(bare, catalog));
    }

    [Fact]
    public void ARowOfItsOwnIsKept()
    {
        var catalog = Shop.Catalog(null).Value!;
        var recipe = catalog.Find<RecipeEntry>("airy-mix")!;
        Assert.Equal(MaterialCurve.Of(recipe)!.ThetaS, MaterialCurve.Of(recipe, catalog)!.ThetaS);
    }

    [Fact]
    public void APartWithoutACurveLeavesNone()
    {
        var catalog = Shop.Catalog(null).Value!;
        var recipe = catalog.Find<RecipeEntry>("airy-mix")!;
        var bare = recipe with
        {
            Values = [.. recipe.Values.Where(v => !own.Contains(v.Name))],
            Parts = [.. recipe.Parts, new("worm-castings", 1)],
        };
        Assert.Null(MaterialCurve.Of(bare, catalog));
    }
}
