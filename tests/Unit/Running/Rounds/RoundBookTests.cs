using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Rounds;

namespace Litterfall.UnitTests.Running.Rounds;

/// <summary>
/// Own worked example: 64 mL stand in a millimeter of level, 30 mm are allowed, 0.5 mm come in a day.
/// </summary>
public sealed class RoundBookTests
{
    private static readonly DateOnly Day = new(2026, 5, 4);

    private static readonly Tank Tank = new()
    {
        Code = "A3",
        Name = "breeding tank",
        Since = Day,
    };

    private static CareEntry Line(int day, CareKind kind, double? amount, string note = "") =>
        new()
        {
            Key = $"{day}-{kind}-{note}",
            Tank = "A3",
            At = Day.AddDays(day).ToDateTime(new TimeOnly(8, 0), DateTimeKind.Utc),
            Kind = kind,
            Amount = amount,
            Note = note,
            Who = "Ilse",
        };

    private static DrainState State(int today, params CareEntry[] lines) =>
        DrainState.Find(lines, new DrainOutlook(30, 64, 0.5), Day, Day.AddDays(today));

    /// <summary>12 mm on day 0; 18 mm are left at 0.5 mm a day: 36 days.</summary>
    [Fact]
    public void Water_is_due_when_the_forecast_reaches_the_mark()
    {
        var state = State(10, Line(0, CareKind.Level, 12));
        Assert.Equal(Day.AddDays(36), state.Due);
        Assert.Equal(17, state.LevelMillimeters, 9);
        Assert.False(state.IsMeasured);
    }

    /// <summary>640 mL are 10 mm: 28 less 10 leave 18; 12 more take 24 days.</summary>
    [Fact]
    public void What_is_drawn_off_is_taken_from_the_level()
    {
        var state = State(5, Line(2, CareKind.Level, 28), Line(2, CareKind.Drained, 640));
        Assert.Equal(Day.AddDays(26), state.Due);
    }

    /// <summary>Rises of 1.0, 1.1 and 0.9 mm a day: the middle one counts, not the design's 0.5.</summary>
    [Fact]
    public void Three_rises_of_its_own_go_before_the_design()
    {
        var state = State(
            30,
            Line(0, CareKind.Level, 0),
            Line(7, CareKind.Level, 7),
            Line(14, CareKind.Level, 14.7),
            Line(21, CareKind.Level, 21)
        );
        Assert.True(state.IsMeasured);
        Assert.Equal(1.0, state.MillimetersPerDay!.Value, 9);
        Assert.Equal(Day.AddDays(30), state.Due);
    }

    [Fact]
    public void A_round_names_what_is_due_and_what_was_done_is_not_named_again()
    {
        ImmutableArray<CareEntry> lines =
        [
            Line(0, CareKind.Level, 10),
            Line(100, CareKind.Added, null, "oak leaves"),
            Line(125, CareKind.Level, 10),
        ];
        var outlook = new DrainOutlook(30, 64, 0.5);
        var book = new RoundBook([new RoundTank(Tank, lines, outlook)], [], Day.AddDays(130));
        Assert.Equal(["trim"], book.DueNow.Select(i => i.Task));
        Assert.Contains(book.All, i => i.Task == "litter" && i.Due == Day.AddDays(220));
        Assert.Contains(book.All, i => i.Task == RoundPractice.Level && i.Due == Day.AddDays(132));
    }
}
