using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>A door pane is heavier than its hinges or track bear, or nobody asked what they bear.</summary>
internal static class DoorTooHeavy
{
    public static readonly Rule Rule = new(
        "door-too-heavy",
        Protects.Person,
        "a door pane, as it is cut, is heavier than the mass entered for its hinges or track",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    public static readonly Rule Unknown = new(
        "door-rating-missing",
        Protects.Person,
        "hinged or sliding doors are entered without the mass that the maker of hinges or track allows",
        JudgeUnknown
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Doors is { Mass: { } mass, Rated: { } rated } && mass.Si > rated.Si)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"A door pane of {n.Doors.Width.Value:0} × {n.Doors.Height.Value:0} × "
                        + $"{n.Doors.Thickness.Value:0.#} mm weighs {mass.Value:0.##} kg; its hinges or "
                        + $"track are made for {rated.Value:0.##} kg."
                ),
                (mass, rated),
                "Take more or thinner panes, or stronger hinges or track; a glazier knows which.",
                "box.doors.rated"
            );
        }
    }

    private static IEnumerable<Finding> JudgeUnknown(DesignNumbers n)
    {
        if (n.Doors is { Mass: { } mass, Rated: null } doors && doors.Kind != DoorKind.LiftOut)
        {
            yield return Unknown.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Each of {doors.Count} door panes weighs {mass.Value:0.##} kg, and what its "
                        + $"{(doors.Kind == DoorKind.Hinged ? "hinges are" : "track is")} made for is not "
                        + $"entered."
                ),
                (mass, null),
                "Ask their maker, and enter the weight they are made for.",
                "box.doors.rated"
            );
        }
    }
}
