using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Care;

/// <summary>
/// The day for animals, the same on step card, care sheet, calendar, passport and desk: the earliest, the
/// better one, never before it, and neither while a stop stands.
/// </summary>
/// <param name="Planting">The planting day it counts from.</param>
/// <param name="Earliest">First day on which they may move in.</param>
/// <param name="Better">Day on which they better move in; not before the earliest.</param>
/// <param name="Waits">What the earliest day waits for.</param>
/// <param name="Held">First sentence of the stop that takes the day away; null without a stop.</param>
/// <param name="IsDated">True where the planting day is known, so that days can be told.</param>
public sealed record AnimalDay(
    DateOnly Planting,
    DateOnly Earliest,
    DateOnly Better,
    Figure Waits,
    string? Held,
    bool IsDated
)
{
    /// <summary>The day of a design; null where no animals are to move in.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="planting">Planting day.</param>
    public static AnimalDay? Of(DesignNumbers numbers, ImmutableArray<Finding> findings, DateOnly planting)
    {
        var design = numbers.Design.Design;
        if (design.Animals.Count + design.RatedFor.Count == 0)
        {
            return null;
        }

        var grown = GrowIn.Ends(numbers.Sealants, planting);
        var ready = numbers.Life?.CrewReady;
        var bred = ready is null ? grown : planting.AddDays(GrowIn.WholeDays(ready));
        var earliest = bred > grown ? bred : grown;
        var eight = planting.AddDays(GrowIn.WholeDays(CareIntervals.BetterAnimals));
        var isLater = bred > grown;
        return new AnimalDay(
            planting,
            earliest,
            eight > earliest ? eight : earliest,
            isLater ? ready! : GrowIn.EarliestAnimals,
            StopOf(findings),
            planting != CareDates.StandIn || design.Planted is not null
        );
    }

    /// <summary>First sentence of the first stop; null where nothing stops the build.</summary>
    /// <param name="findings">What was found.</param>
    public static string? StopOf(ImmutableArray<Finding> findings) =>
        (findings.IsDefault ? [] : findings).FirstOrDefault(f =>
            f is { IsOpen: true, Severity: Severity.Stop }
        )
            is { } stop
            ? FloorWaits.Sentence(stop.Text)
            : null;

    /// <summary>
    /// "No animals before 4 weeks after planting (Fri 11 Sep 2026), better 8 weeks (Fri 9 Oct 2026)"; where
    /// a stop stands, that.
    /// </summary>
    public string Words =>
        Held is { } stop ? $"No animals while this stop stands: {stop.TrimEnd('.')}"
        : Better > Earliest
            ? $"No animals before {After(Earliest, " after planting")}, better {After(Better, "")}"
        : $"No animals before {After(Earliest, " after planting")}";

    private string After(DateOnly day, string more)
    {
        var weeks = (day.DayNumber - Planting.DayNumber + 6) / 7;
        return NumberText.Count(weeks, "week", "weeks") + more + (IsDated ? $" ({NumberText.Day(day)})" : "");
    }
}
