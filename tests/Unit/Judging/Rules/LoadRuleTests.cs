using System.Collections.Immutable;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Rules of weight and cost that need a workshop.</summary>
public sealed class LoadRuleTests
{
    [Fact]
    public void A_workshop_without_a_price_is_told_of_it()
    {
        var packs = Shop.Catalog(null).Value!.PacksOf("ready-rainforest");
        Assert.NotEmpty(packs);
        var prices = packs.ToImmutableDictionary(
            pack => pack.Key,
            pack => new PackPrice(pack.Key, [new PriceBreak(1, 9.5m)], "posed")
        );
        var workshop = new Workshop { Name = "own", Currency = "EUR" };
        RuleCheck.Check(
            "price-missing",
            Severity.Note,
            RuleCheck.PoseFor(workshop, RuleCheck.Floor),
            RuleCheck.PoseFor(workshop with { Prices = prices }, RuleCheck.Floor)
        );
        Assert.Null(RuleCheck.Pose("").Finding("price-missing"));
    }
}
