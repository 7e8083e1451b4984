using CsCheck;
using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using static Litterfall.UnitTests.Dispatch.Packing.PackingExamples;

namespace Litterfall.UnitTests.Dispatch.Packing;

/// <summary>Everything placed lies in the carton and on nothing else; what does not fit is said.</summary>
public sealed class CartonFitTests
{
    private const double Rounding = 1e-7;

    [Theory]
    // 300 × 200 mm, cups of 123 mm with 4 mm between: two along, one across. Height 200 − 20 mm of padding,
    // 44 mm and card of 3 mm: (180 + 3) / 47 = 3.9, three layers. Six cups (own worked example).
    [InlineData(6, true)]
    [InlineData(7, false)]
    public void A_carton_holds_what_its_floor_and_height_take(int cups, bool fits)
    {
        var plan = Plan(Middle, cups);
        Assert.Equal(fits, plan.Fits);
        if (!fits)
        {
            Assert.Equal("big", plan.SmallestCarton);
            Assert.Contains("1 of 7 cups", plan.Refusal, StringComparison.Ordinal);
            Assert.Contains("big carton", plan.Refusal, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Where_no_carton_would_do_the_parcel_is_to_be_split()
    {
        var plan = Plan(Big, 500);
        Assert.Equal("", plan.SmallestCarton);
        Assert.Contains("split the parcel", plan.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_heat_pack_needs_a_large_box_with_holes_and_stays_alone()
    {
        var heat = new PackUse("heat", 1, 0);
        Assert.Contains("too small for a heat pack", Plan(Small, 1, heat).Refusal, StringComparison.Ordinal);
        Assert.Equal("middle", Plan(Small, 1, heat).SmallestCarton);
        var closed = PackingPlanner.Plan(
            Case(Middle with { VentHoles = 0 }, Parcel(new LiveContent("epipedobates-anthonyi", 1)), heat)
        );
        Assert.Contains("no vent holes", closed.Refusal, StringComparison.Ordinal);
        Assert.Contains(
            "more than one heat pack",
            Plan(Big, 1, heat with { Count = 2 }).Refusal,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_unknown_pack_is_named() =>
        Assert.Contains("“snow”", Plan(Big, 1, new PackUse("snow", 1, 0)).Refusal, StringComparison.Ordinal);

    [Fact]
    public void Nothing_lies_on_anything_else_and_no_pack_touches_a_cup()
    {
        string[] keys =
        [
            "epipedobates-anthonyi",
            "dendrobates-tinctorius",
            "folsomia-candida",
            "drosophila-hydei",
            "begonia-rex",
        ];
        Gen.Select(
                Gen.Int[0, 7].Array[keys.Length],
                Gen.Int[0, 3],
                Gen.Int[0, 2],
                Gen.Bool,
                Gen.Double[0.2, 0.6].Array[3]
            )
            .Where(t => t.Item1.Sum() > 0)
            .Sample(
                t =>
                {
                    var carton = Big with
                    {
                        LengthMeters = t.Item5[0],
                        WidthMeters = t.Item5[1],
                        HeightMeters = t.Item5[2],
                    };
                    var plan = PackingPlanner.Plan(
                        Case(
                            carton,
                            Parcel([
                                .. keys.Select((k, i) => new LiveContent(k, t.Item1[i]))
                                    .Where(c => c.Count > 0),
                            ]),
                            new PackUse("wax", t.Item2, 1),
                            new PackUse("ice", t.Item3, 0),
                            new PackUse("heat", t.Item4 ? 1 : 0, 0)
                        )
                    );
                    Whole(carton, plan, t.Item1.Sum());
                },
                iter: LongRun.Cases(150, 20_000),
                threads: 1
            );
    }

    private static void Whole(Carton carton, PackingPlan plan, int cups)
    {
        var things = plan.Places;
        foreach (var thing in things)
        {
            Assert.InRange(thing.XMeters, -Rounding, carton.LengthMeters - thing.LengthMeters + Rounding);
            Assert.InRange(thing.YMeters, -Rounding, carton.WidthMeters - thing.WidthMeters + Rounding);
            Assert.InRange(thing.ZMeters, -Rounding, carton.HeightMeters - thing.HeightMeters + Rounding);
        }

        for (var i = 0; i < things.Count; i++)
        {
            for (var k = i + 1; k < things.Count; k++)
            {
                // A pack keeps a finger's width from every cup: a spacer is between them.
                var isMixed = IsCup(things[i]) != IsCup(things[k]);
                Assert.True(
                    Apart(things[i], things[k]) >= (isMixed ? 0.01 : 0) - Rounding,
                    $"{things[i]} meets {things[k]}"
                );
            }
        }

        if (plan.Fits)
        {
            Assert.Equal(cups, things.Count(t => t.Kind is "cup" or "pot"));
        }
        else
        {
            Assert.NotEqual("", plan.Refusal);
        }
    }

    private static bool IsCup(PlacedThing thing) => thing.Kind is "cup" or "pot";

    /// <summary>The largest gap along one of the axes; below 0 where both share room.</summary>
    private static double Apart(PlacedThing one, PlacedThing other) =>
        new[]
        {
            Gap(one.XMeters, one.LengthMeters, other.XMeters, other.LengthMeters),
            Gap(one.YMeters, one.WidthMeters, other.YMeters, other.WidthMeters),
            Gap(one.ZMeters, one.HeightMeters, other.ZMeters, other.HeightMeters),
        }.Max();

    private static double Gap(double from, double length, double other, double otherLong) =>
        Math.Max(other - (from + length), from - (other + otherLong));
}
