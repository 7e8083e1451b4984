using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Judging.Air;

/// <summary>How long leaves stay wet.</summary>
internal static class WetLeaves
{
    private const int Day = 24;

    /// <summary>Longest run of hours in which leaves are wet more than half the time.</summary>
    /// <param name="days">A season.</param>
    /// <param name="leaves">Number of the leaves among the surfaces.</param>
    public static int Longest(ClimateDays days, int leaves)
    {
        var longest = 0;
        var now = 0;
        foreach (SimulationHour hour in days.Hours)
        {
            now = hour.Wet[leaves] > 0.5 ? now + 1 : 0;
            longest = Math.Max(longest, now);
        }

        return longest;
    }

    /// <summary>True where they do not dry between one day and the next.</summary>
    /// <param name="days">A season.</param>
    /// <param name="leaves">Number of the leaves among the surfaces.</param>
    public static bool IsWetAllDay(ClimateDays days, int leaves) => Longest(days, leaves) >= Day;
}
