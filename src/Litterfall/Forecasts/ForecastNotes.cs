using Litterfall.Domain.Checking;

namespace Litterfall.App.Forecasts;

/// <summary>What a reader of a forecast must know about it.</summary>
internal static class ForecastNotes
{
    /// <summary>Notes on a design's forecast.</summary>
    /// <param name="design">The design.</param>
    /// <param name="usesOwnDate">True when no date was asked for.</param>
    public static IEnumerable<string> Of(CheckedDesign design, bool usesOwnDate)
    {
        if (usesOwnDate && design.Design.Planted is null)
        {
            yield return "the design has no planting day: days count from Monday 2026-01-05";
        }

        if (design.Design.Headspace is not null)
        {
            yield return "the air is held constant by the design: no fog, no films, no heat";
        }

        if (design.Design.Misting is null && design.Design.Habits?.HandMist is null)
        {
            yield return "nothing says how much is misted: the box only dries";
        }

        if (design.Design.Start is not null)
        {
            yield return "the floor starts drained over the level given by start";
        }
    }
}
