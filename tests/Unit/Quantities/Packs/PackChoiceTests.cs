using CsCheck;
using Litterfall.Quantities.Packs;
using Xunit;

namespace Litterfall.UnitTests.Quantities.Packs;

/// <summary>Pack choice against plain enumeration, which shares no code with the search.</summary>
public sealed class PackChoiceTests
{
    private static readonly Gen<PackOffer> Offer =
        from liters in Gen.Int[1, 50]
        from cents in Gen.Int[50, 4000]
        from packs in Gen.Int[2, 8]
        from off in Gen.Int[0, 40]
        select new PackOffer(
            $"{liters} {cents} {packs}",
            liters,
            [new(1, cents), new(packs, Math.Max(1, cents * (100 - off) / 100))]
        );

    [Fact]
    public void NoEnumeratedSetIsCheaper() =>
        Gen.Select(Offer.Array[1, 3], Gen.Int[1, 60])
            .Sample(
                (offers, need) =>
                {
                    var set = PackChoice.Cheapest(need, offers)!;
                    Assert.True(set.IsProved);
                    Assert.True(set.Lines.Sum(l => l.Packs * l.Offer.Liters) >= need - 1e-9);
                    Assert.Equal(set.Cents, set.Lines.Sum(l => l.Offer.Cents(l.Packs)));
                    Assert.Equal(Enumerated(offers, 0, need), set.Cents);
                },
                iter: 300,
                seed: "0N0XIzNsQ0O2"
            );

    [Fact]
    public void NothingNeededBuysNothingAndNothingOfferedGivesNothing()
    {
        Assert.Empty(PackChoice.Cheapest(0, [PackOffer.Flat("a", 10, 100)])!.Lines);
        Assert.Null(PackChoice.Cheapest(5, []));
    }

    [Fact]
    public void TiesGoToTheLeastLeftOverThenTheFewestPacks()
    {
        // 10 L for 200 or two of 5 L for 100 each: equal price, nothing left either way, one pack wins.
        var set = PackChoice.Cheapest(10, [PackOffer.Flat("ten", 10, 200), PackOffer.Flat("five", 5, 100)])!;
        Assert.Equal(1, set.Packs);
        // 8 L: 10 L for 200 leaves 2, 5 + 3 L for 200 leaves none.
        var exact = PackChoice.Cheapest(
            8,
            [PackOffer.Flat("ten", 10, 200), PackOffer.Flat("five", 5, 100), PackOffer.Flat("three", 3, 100)]
        )!;
        Assert.Equal(0, exact.LeftLiters);
    }

    [Fact]
    public void ManySizesAndAGreatNeedStayQuick()
    {
        var offers = new[] { 1.0, 1.101221, 2, 4.404884, 5, 8.809768, 10, 20, 25, 50, 70 }
            .Select(l => PackOffer.Flat($"{l}", l, (long)(Math.Pow(l, 0.75) * 10_000)))
            .ToArray();
        var set = PackChoice.Cheapest(4321.7, offers)!;
        Assert.True(set.Lines.Sum(l => l.Packs * l.Offer.Liters) >= 4321.7);
        Assert.True(set.IsProved);
    }

    /// <summary>The cheapest price over every combination of counts.</summary>
    private static long Enumerated(PackOffer[] offers, int at, double need)
    {
        if (at == offers.Length)
        {
            return need <= 0 ? 0 : long.MaxValue / 4;
        }

        var most = (int)Math.Ceiling(Math.Max(0, need) / offers[at].Liters) + 8;
        return Enumerable
            .Range(0, most + 1)
            .Min(packs =>
                offers[at].Cents(packs) + Enumerated(offers, at + 1, need - packs * offers[at].Liters)
            );
    }
}
