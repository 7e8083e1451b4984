using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>The box at its wettest is heavier than the shelf is rated for.</summary>
internal static class ShelfOverloaded
{
    public static readonly Rule Rule = new(
        "shelf-overloaded",
        Protects.Person,
        "the box at its wettest is heavier than the load entered for the shelf",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var rated = n.Shelf.Rated;
        if (rated is not null && n.Shelf.Total.Si > rated.Si)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"At its wettest the box weighs about {n.Shelf.Total.Value:0} kg; the shelf is "
                        + $"rated for {rated.Value:0} kg."
                ),
                (n.Shelf.Total, rated),
                "Take a stronger stand; ask an engineer for racks and wall shelves.",
                "shelf.rated"
            );
        }
    }
}
