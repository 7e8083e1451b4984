using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Workshop.Cultures;

namespace Litterfall.UnitTests.Workshop.Cultures;

/// <summary>A culture led by the day classes: settled ages, plateau, harvest, counts.</summary>
public sealed class CultureModelTests
{
    private static readonly DateOnly Start = new(2026, 6, 1);

    internal static readonly Lazy<TradeCatalog> Library = new(Shop.Embedded);

    internal static CultureKind Kind(string key) => CultureKind.From(Library.Value.Find<CrewEntry>(key)!)!;

    /// <summary>
    /// Own worked example: 1 − λ^−7 with the roots of the day classes, 1.140264 at 22 °C, 1.122915 at 20 °C,
    /// 1.017865 and 1.028898 at 24 °C.
    /// </summary>
    [Theory]
    [InlineData("folsomia-candida", 22, 0.6010)]
    [InlineData("folsomia-candida", 20, 0.5558)]
    [InlineData("trichorhina-tomentosa", 24, 0.1166)]
    [InlineData("porcellionides-pruinosus", 24, 0.1808)]
    public void What_can_be_taken_each_week_keeps_the_stock(string key, double celsius, double share)
    {
        var kind = Kind(key);
        Assert.Equal(share, kind.WeeklyShare(celsius, false), 4);
        Assert.Equal(share / 2, kind.WeeklyShare(celsius, true), 4);
    }

    [Fact]
    public void Nothing_can_be_taken_where_no_egg_hatches() =>
        Assert.Equal(0, Kind("folsomia-candida").WeeklyShare(28, false));

    /// <summary>
    /// Settled ages grow by the root of their equation from the first day on (own worked example: 1.140264
    /// at 22 °C). Without a plateau in reach 1 of 1000 grows to 1.140264^14 of it.
    /// </summary>
    [Fact]
    public void Settled_ages_grow_evenly()
    {
        var kind = Kind("folsomia-candida") with { Plateau = null };
        var rates = kind.Rates(22);
        var run = CultureRun.Start(kind, 1000, false, 1, 22);
        for (var day = 1; day <= 14; day++)
        {
            run.Day(rates);
            Assert.Equal(1000 * Math.Pow(1.140264, day), run.Walking, 0.002 * run.Walking);
        }
    }

    /// <summary>100 adults at 22 °C, no limit: own worked example with another program.</summary>
    [Fact]
    public void Adults_alone_need_a_generation()
    {
        var kind = Kind("folsomia-candida") with { Plateau = null };
        var run = CultureRun.Start(kind, 100, true, 1, 22);
        for (var day = 1; day <= 28; day++)
        {
            run.Day(kind.Rates(22));
        }

        Assert.Equal(9182, run.Walking, 0.6);
    }

    /// <summary>
    /// Half a liter of substrate holds 2,500 springtails, a quarter 1,250: 100 grow to that and never beyond;
    /// at 1.135 a day they need ln 12.5 ÷ ln 1.135 = 19.9 days.
    /// </summary>
    [Fact]
    public void Growth_ends_at_the_plateau()
    {
        var kind = Kind("folsomia-candida");
        var run = CultureRun.Start(kind, 100, false, 0.25, 21);
        for (var day = 1; day <= 400; day++)
        {
            run.Day(kind.Rates(21));
            Assert.InRange(run.Walking, 0, 1250 + 1e-6);
            Assert.Equal(day is >= 20 and < 30, run.Walking > 1249 && day < 30);
        }

        Assert.InRange(run.Walking, 600, 1250);
    }

    /// <summary>
    /// Weight of a sampled count against a culture just started: 0.30² ÷ (0.30² + 0.25²) = 0.5902, so that
    /// 200 counted of 100 told make 100 · 2^0.59016 = 150.54; the band narrows to e^(2 · √(0.09 · 0.4098)).
    /// </summary>
    [Fact]
    public void A_count_corrects_by_its_weight()
    {
        var run = CultureRun.Start(Kind("folsomia-candida"), 100, false, 0.5, 21);
        Assert.Equal(0.5902, run.Count(200, CountWay.Sample), 4);
        Assert.Equal(150.54, run.Walking, 2);
        Assert.Equal(Math.Exp(2 * Math.Sqrt(0.09 * 0.4098)), run.Band, 3);
    }

    [Fact]
    public void A_full_count_is_believed_and_a_glance_hardly()
    {
        var sure = CultureRun.Start(Kind("folsomia-candida"), 100, false, 0.5, 21);
        var glance = sure.Copy();
        sure.Count(400, CountWay.All);
        glance.Count(400, CountWay.Eye);
        Assert.InRange(sure.Walking, 370, 400);
        Assert.InRange(glance.Walking, 100, 200);
    }

    /// <summary>Splits and harvests happen on their days: half out, then a quarter of the rest.</summary>
    [Fact]
    public void What_people_did_is_in_the_curve()
    {
        var kind = Kind("folsomia-candida");
        var plain = Cup("A");
        var done = plain with
        {
            Splits = [new CultureSplit(Start, "B", 0.5, "Ilse")],
            Harvests = [new CultureHarvest(Start, 125, "", "Ilse")],
        };
        CultureCurve Lead(Culture c) => CultureCurve.Lead(kind, c, _ => 21, Start.AddDays(40), Start);
        Assert.Equal(1000, Lead(plain).On(Start).Animals, 1e-6);
        Assert.Equal(375, Lead(done).On(Start).Animals, 1e-6);
        Assert.True(Lead(done).On(Start.AddDays(9)).Animals < Lead(plain).On(Start.AddDays(9)).Animals);
    }

    /// <summary>
    /// 1,250 animals of a full cup give half of 0.588 a week: 367; eight portions of 250 of which 0.85 live
    /// need 2,000 ÷ (367.6 · 0.85) = 6.4, so seven cups.
    /// </summary>
    [Fact]
    public void Cups_that_give_a_weekly_portion_are_counted() =>
        Assert.Equal(7, Kind("folsomia-candida").Needed(8 * 250, 0.25, 21));

    internal static Culture Cup(string number, string line = "A", string? mother = null) =>
        new()
        {
            Number = number,
            Species = "folsomia-candida",
            Line = line,
            Mother = mother,
            Since = Start,
            Liters = 0.5,
            StartedWith = 1000,
            Shelf = "door",
        };
}
