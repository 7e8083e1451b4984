using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>A heavy box needs a stand that is made for it.</summary>
internal static class StandRatingMissing
{
    public static readonly Rule Rule = new(
        "stand-rating-missing",
        Protects.Person,
        FormattableString.Invariant(
            $"the box at its wettest is over {TwoPersonLift.MostForOne.Value:0} kg and no load of "
        ) + "the shelf is entered",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Shelf.Rated is null && n.Shelf.Total.Si > TwoPersonLift.MostForOne.Si + 1e-9)
        {
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"At its wettest the box weighs about {n.Shelf.Total.Value:0} kg, and no load of "
                        + $"the shelf is "
                        + $"entered; from {TwoPersonLift.MostForOne.Value:0} kg on it is checked."
                ),
                (n.Shelf.Total, TwoPersonLift.MostForOne),
                "Ask the maker of the stand and enter the load it is made for; for racks ask an engineer.",
                "shelf.rated"
            );
        }
    }
}
