using Litterfall.Domain.Checking;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>A log of the room with a gap of a day is told; without it nothing is said.</summary>
public sealed class RoomLogRuleTests
{
    [Fact]
    public void A_gap_of_a_day_is_told()
    {
        Assert.Empty(Logged(gapDays: 0).FindingsOf("room-log-odd"));
        Assert.Contains(Logged(gapDays: 1).FindingsOf("room-log-odd"), f =>
            f.Text.Contains("25 hours", StringComparison.Ordinal)
        );
    }

    /// <summary>Two weeks of hours, warmer by day, with a gap in the middle.</summary>
    private static PosedDesign Logged(int gapDays)
    {
        var lines = new List<string> { "time,temperature,humidity" };
        var start = new DateTime(2026, 1, 5, 0, 0, 0, DateTimeKind.Unspecified);
        for (var hour = 0; hour < 14 * 24; hour++)
        {
            var at = start.AddHours(hour + (hour >= 7 * 24 ? gapDays * 24 : 0));
            var celsius = 21 + (2 * Math.Sin((hour - 9) * Math.PI / 12)) + (0.01 * (hour % 7));
            lines.Add(
                FormattableString.Invariant($"{at:yyyy-MM-dd HH:mm},{celsius:0.00},{50 + (hour % 11):0}")
            );
        }

        var log = RoomLog.Read("room.csv", string.Join('\n', lines) + "\n").Value!;
        return Posed.Text(
            $"litterfall: 1\nname: posed\nbox: {RuleCheck.Cube}\nfloor: {RuleCheck.Floor}\n"
                + "room: { log: room.csv }\n",
            SampleFiles.Catalog,
            new DesignFiles { RoomLog = log }
        );
    }
}
