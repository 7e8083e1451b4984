using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using static Litterfall.UnitTests.Dispatch.Packing.PackingExamples;

namespace Litterfall.UnitTests.Dispatch.Packing;

public sealed class CustomerMessageTests
{
    private static readonly DayVerdict Day = new()
    {
        Day = Tuesday,
        Arrives = Tuesday.AddDays(1),
        Verdict = ShipVerdict.Ship,
    };

    private static MessageCase Case(bool isDepot = false) =>
        new()
        {
            Parcel = Parcel(new LiveContent("dendrobates-auratus", 2)) with { IsDepotPickUp = isDepot },
            Rules = Rules,
            Carrier = Carrier,
            Cups = PackingPlanner
                .Plan(PackingExamples.Case(Big, Parcel(new LiveContent("dendrobates-auratus", 2))))
                .Cups,
            BandLowCelsius = 17,
            BandHighCelsius = 26,
            Fingerprint = "3f9a02bc71de" + new string('0', 52),
        };

    [Fact]
    public void It_says_what_comes_when_where_and_what_to_do()
    {
        var text = string.Join('\n', CustomerMessage.Leaves(Case(), Day));
        foreach (
            var said in new[]
            {
                "2 × green and black poison frog (Dendrobates auratus)",
                "on Wednesday 25 November 2026 between 09:00 and 12:00 to your door",
                "dim light",
                "1 to 2 hours",
                "Never warm them fast",
                "within 24 hours of delivery",
                "17–26 °C",
                "quarantine",
                "The first delivery attempt is met by an adult.",
                "3f9a 02bc 71de",
            }
        )
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_reader_of_Fahrenheit_gets_it()
    {
        // 17 °C = 62.6 °F, 26 °C = 78.8 °F.
        var text = string.Join('\n', CustomerMessage.Leaves(Case() with { IsUs = true }, Day));
        Assert.Contains("63–79 °F", text, StringComparison.Ordinal);
        Assert.Contains("9:00 AM and 12:00 PM", text, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_parcel_for_the_depot_is_not_brought_to_the_door()
    {
        var text = string.Join('\n', CustomerMessage.Leaves(Case(true), Day));
        Assert.Contains("at the carrier's depot", text, StringComparison.Ordinal);
        Assert.DoesNotContain("to your door", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hold_says_why_and_when_instead()
    {
        var week = new WeekVerdict
        {
            NextDay = Tuesday.AddDays(6),
            Days =
            [
                Day with
                {
                    Verdict = ShipVerdict.Hold,
                    Reasons =
                    [
                        new ShipReason
                        {
                            Slug = "hub-hot",
                            Rule = ShipRule.ClassBands,
                            Verdict = ShipVerdict.Hold,
                            Text = "The hub has 34 °C; these frogs are held above 27 °C.",
                        },
                    ],
                },
            ],
        };
        var text = string.Join('\n', CustomerMessage.Stays(Case(), week, Tuesday));
        Assert.Contains("does not leave on Tuesday 24 November 2026", text, StringComparison.Ordinal);
        Assert.Contains("34 °C", text, StringComparison.Ordinal);
        Assert.Contains("Monday 30 November 2026", text, StringComparison.Ordinal);
        var us = string.Join('\n', CustomerMessage.Stays(Case() with { IsUs = true }, week, Tuesday));
        Assert.Contains("The hub has 93 °F; these frogs are held above 81 °F.", us, StringComparison.Ordinal);
        var never = string.Join('\n', CustomerMessage.Stays(Case(), week with { NextDay = null }, Tuesday));
        Assert.Contains("None of the days", never, StringComparison.Ordinal);
        // What the workshop still has to do is not listed to the customer, but the day is named.
        var (held, own) = (week.Days[0], week.Days[0].Reasons[0] with { Slug = OpenTasks.Papers });
        var once = week with { NextDay = null, NextDayOnceDone = Tuesday.AddDays(1) };
        var waits = string.Join(
            '\n',
            CustomerMessage.Stays(
                Case(),
                once with
                {
                    Days = [held with { Reasons = [own with { Text = "no proof of origin" }] }],
                },
                Tuesday
            )
        );
        Assert.Contains("papers or answers to complete here", waits, StringComparison.Ordinal);
        Assert.DoesNotContain("no proof of origin", waits, StringComparison.Ordinal);
        Assert.Contains("As soon as that is done", waits, StringComparison.Ordinal);
        Assert.Contains("Wednesday 25 November 2026", waits, StringComparison.Ordinal);
    }
}
