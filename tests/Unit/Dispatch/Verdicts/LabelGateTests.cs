using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Verdicts;

/// <summary>When a label may be printed; the rules are own worked ones.</summary>
public sealed class LabelGateTests
{
    private static readonly DateOnly Wednesday = new(2026, 7, 15);
    private static readonly DateTime Noon = new(2026, 7, 15, 12, 0, 0, DateTimeKind.Utc);

    private static DayVerdict Day(DateOnly day, ShipVerdict verdict = ShipVerdict.Ship) =>
        new()
        {
            Day = day,
            Verdict = verdict,
            ForecastTakenAt = Noon.AddHours(-6),
            JudgedAt = Noon.AddHours(-5),
            Reasons =
            [
                new()
                {
                    Slug = "x",
                    Rule = ShipRule.Calendar,
                    Verdict = verdict,
                    Text = "Because.",
                    Cure = "Wait.",
                },
            ],
        };

    [Theory]
    [InlineData(ShipVerdict.Ship)]
    [InlineData(ShipVerdict.ShipWithPacks)]
    [InlineData(ShipVerdict.DepotOnly)]
    public void A_good_verdict_on_its_day_gives_a_label(ShipVerdict verdict) =>
        Assert.Equal("", LabelGate.Refusal(Day(Wednesday, verdict), Wednesday, Noon, Noon.AddHours(-6)));

    [Theory]
    [InlineData(ShipVerdict.Hold)]
    [InlineData(ShipVerdict.Never)]
    public void A_hold_gives_none_and_says_why(ShipVerdict verdict) =>
        Assert.Contains(
            "Because. Wait.",
            LabelGate.Refusal(Day(Wednesday, verdict), Wednesday, Noon, null),
            StringComparison.Ordinal
        );

    /// <summary>Whatever a verdict says: no label on a Friday, for a Friday, or at the weekend.</summary>
    [Fact]
    public void There_is_no_label_from_Friday_to_Sunday()
    {
        for (var i = 0; i < 400; i++)
        {
            var day = Wednesday.AddDays(i);
            var now = Noon.AddDays(i);
            var verdict = Day(day) with { ForecastTakenAt = now, JudgedAt = now };
            var isEnd = day.DayOfWeek is DayOfWeek.Friday or DayOfWeek.Saturday or DayOfWeek.Sunday;
            Assert.Equal(isEnd, LabelGate.Refusal(verdict, day, now, null).Length > 0);
            var friday = verdict with { Day = new DateOnly(2026, 7, 17) };
            Assert.NotEqual("", LabelGate.Refusal(friday, day, now, null));
        }
    }

    [Fact]
    public void A_verdict_counts_on_its_own_day_alone()
    {
        Assert.NotEqual("", LabelGate.Refusal(Day(Wednesday), Wednesday.AddDays(-1), Noon.AddDays(-1), null));
        Assert.NotEqual("", LabelGate.Refusal(Day(Wednesday), Wednesday.AddDays(5), Noon.AddDays(5), null));
    }

    [Fact]
    public void A_newer_forecast_or_an_old_one_asks_for_a_new_verdict()
    {
        var day = Day(Wednesday);
        Assert.Contains(
            "newer",
            LabelGate.Refusal(day, Wednesday, Noon, Noon.AddHours(-1)),
            StringComparison.Ordinal
        );
        var old = day with { ForecastTakenAt = Noon.AddHours(-37) };
        Assert.Contains("too old", LabelGate.Refusal(old, Wednesday, Noon, null), StringComparison.Ordinal);
        var none = day with { ForecastTakenAt = null };
        Assert.NotEqual("", LabelGate.Refusal(none, Wednesday, Noon, null));
    }
}
