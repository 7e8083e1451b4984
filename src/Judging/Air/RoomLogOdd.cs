using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Air;

/// <summary>
/// What the log of the room does not tell, so that nobody trusts its air more than it earns.
/// </summary>
internal static class RoomLogOdd
{
    public static readonly Rule Rule = new(
        "room-log-odd",
        Protects.Build,
        "the log of the room is short, has gaps, a value that stands still, humidity as a share of one, "
            + "lines "
            + "twice or without a value",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.RoomLog is not { } log)
        {
            yield break;
        }

        foreach (var oddity in log.Oddities().Take(6))
        {
            yield return Rule.Found(
                Severity.Note,
                $"The log of the room is taken, but {oddity}.",
                (null, null),
                "Between two readings a straight line is taken, outside of them the days are repeated; "
                    + "log a week or more without gaps for a better forecast.",
                "room.log",
                Citation.OwnDerivation
            );
        }
    }
}
