using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A wide open mesh dries a box for frogs that need wet air.</summary>
internal static class LidTooOpen
{
    private static readonly Figure LargestShare = Figure.Given(
        "largest open share for animals of wet air",
        0.5,
        Unit.Percent,
        Citation.Habit("screen lids are covered by 50 to 75 % as a start, by 80 to 90 % in heated rooms")
    );

    public static readonly Rule Rule = new(
        "lid-too-open",
        Protects.Animal,
        FormattableString.Invariant(
            $"over {LargestShare.Value:0} % of a mesh lid is open while the animals are "
        ) + FormattableString.Invariant($"kept at {100 * WetAir:0} % humidity or more"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly PracticeNumber HeatedRoom = new(80, 90, "%", LargestShare.Origin);

    private const double WetAir = 0.7;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Lid is not { } lid || n.Design.Find("lid.material") is not MeshEntry)
        {
            yield break;
        }

        var open = lid.Share is { } share
            ? n.Design.Figure("lid.share", "open share of the lid", share, Unit.Percent)
            : Figure.Choice(
                "open share of the lid",
                100,
                Unit.Percent,
                "a mesh is open where no share is entered"
            );
        var wettest = n.AnimalEntries()
            .Where(animal => animal.LeastHumidity?.Si >= WetAir - 1e-9)
            .MaxBy(animal => animal.LeastHumidity!.Si);
        if (wettest is not null && open.Si > LargestShare.Si + 1e-9)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{open.Value:0.#} % of the mesh lid is open; {wettest.Name} is kept at "
                        + $"{wettest.LeastHumidity!.Value:0} % humidity or more, and the box "
                        + $"may dry."
                ),
                (open, LargestShare),
                $"Cover {HeatedRoom} of the mesh in a heated room, and at least half of it.",
                "lid.share"
            );
        }
    }
}
