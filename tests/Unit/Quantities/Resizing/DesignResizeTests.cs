using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Quantities.Measuring;
using Litterfall.Quantities.Resizing;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Quantities.Resizing;

/// <summary>
/// A design for another size, against sums by hand; and the tests with bucket, cup and stick.
/// </summary>
public sealed class DesignResizeTests
{
    private const string Text = """
        litterfall: 1
        name: r # kept
        box: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }
        misting: { nozzles: 2, each: 90 mL/min, times: [ { at: "08:00", for: 20 s } ] }
        vents: [ { length: 30 cm, width: 3 cm, height: 12 cm, side: front } ]
        plants: [ { plant: ficus-pumila, at: { x: 12 in, y: 30 cm } } ]
        crew: [ { animal: folsomia-candida, count: 500 } ]

        """;

    /// <summary>
    /// Own worked example: 60 × 45 to 90 × 60 cm. Floor × 2: 1000 springtails, 40 s of mist. Length × 1.5:
    /// vent
    /// 45 cm, x 18 in; depth × 4/3: y 40 cm; height × 1: 12 cm stays.
    /// </summary>
    [Fact]
    public void Parts_go_with_what_they_depend_on()
    {
        var reading = DesignReader.Read("r", Text).Value!;
        var resized = DesignResize.To(reading, ("90 cm", "60 cm", "60 cm")).Value!;
        var design = resized.Document.Design;
        Assert.Equal(1000, design.Crew[0].Count);
        Assert.Equal(40.0, design.Misting!.Times[0].For.Si, 1e-9);
        Assert.Equal(0.45, design.Vents[0].Length!.Value.Si, 1e-9);
        Assert.Equal(0.12, design.Vents[0].Height!.Value.Si, 1e-9);
        Assert.Contains("x: 18 in, y: 40 cm", resized.Document.Text, StringComparison.Ordinal);
        Assert.Equal(0.07, design.Floor.Soil!.Depth!.Value.Si, 1e-9);
        Assert.Contains("# kept", resized.Document.Text, StringComparison.Ordinal);
        Assert.All(resized.Values, v => Assert.NotEmpty(v.Reason));
        Assert.Equal(7, resized.Values.Length);
    }

    [Fact]
    public void A_size_that_does_not_read_is_refused() =>
        Assert.False(DesignResize.To(DesignReader.Read("r", Text).Value!, ("90", "60 cm", "60 cm")).IsGood);

    /// <summary>
    /// Sums by hand: 10 L of parts to 8.8 L is 88 %; 8.8 to 7.48 L settles 15 %; 45 mL in 30 s is 90 mL/min;
    /// 1 L raising 0.2 m² by 12.5 mm fills 40 % of 2.5 L.
    /// </summary>
    [Fact]
    public void Bucket_cup_and_stick_give_shares_and_flows()
    {
        Assert.Equal(0.88, WorkshopTests.MixingYield(10, 8.8)!.Value, 1e-12);
        Assert.Equal(0.15, WorkshopTests.Settling(8.8, 7.48)!.Value, 1e-12);
        Assert.Equal(90.0, WorkshopTests.NozzleFlow(45, 30)!.Value, 1e-12);
        Assert.Equal(0.4, WorkshopTests.DrainablePorosity(1, 12.5, 0.2)!.Value, 1e-12);
        Assert.Null(WorkshopTests.MixingYield(8, 9));
        Assert.Null(WorkshopTests.Settling(8, 9));
        Assert.Null(WorkshopTests.NozzleFlow(0, 30));
        Assert.Null(WorkshopTests.DrainablePorosity(9, 12.5, 0.2));
    }
}
