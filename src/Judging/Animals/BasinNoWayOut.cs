using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Small frogs of the ground are poor swimmers and may drown in deep water.</summary>
internal static class BasinNoWayOut
{
    private static readonly Figure Standing = Figure.Given(
        "share of its length in which an animal keeps its head out",
        0.5,
        Unit.Percent,
        Citation.Habit("water for frogs of the ground is no deeper than half their length, or has a ramp")
    );

    private static readonly Figure UnknownBody = Figure.Choice(
        "length of the animal",
        2,
        Unit.Centimeter,
        "the library does not know it; a small frog is taken"
    );

    public static readonly Rule Rule = new(
        "basin-no-way-out",
        Protects.Animal,
        FormattableString.Invariant(
            $"a basin with steep sides, or whose sides are not told, is deeper than {Standing.Value:0} % of "
        ) + "the animal's length",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            finding.Where.StartsWith("basins", StringComparison.Ordinal)
                ? DesignFix.From(
                    "a ramp out of the basin",
                    DesignEdits.Set(design.Document, finding.Where, "ramp")
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var basin in WaterBasins.Of(n.Design, n.Box).Where(b => b.Sides != BasinSides.Ramp))
        {
            foreach (var species in StockedSpecies.Of(n.Design).Where(s => s.IsFrog))
            {
                var limit = ((species.Body ?? UnknownBody) * Standing).As(
                    $"deepest water for {species.Species.Name} without a way out",
                    Unit.Millimeter
                );
                if (basin.Depth.Si > limit.Si + Gaps.Slack)
                {
                    yield return Found(basin, species, limit);
                }
            }
        }
    }

    private static Finding Found(WaterBasin basin, StockedSpecies species, Figure limit)
    {
        var isSteep = basin.Sides == BasinSides.Steep;
        var swims = species.Species.WaterShare is not null;
        return Rule.Found(
            isSteep && !swims ? Severity.Stop : Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The basin is {basin.Depth.Value:0.#} cm deep with its edge {basin.Edge.Value:0.#} cm over "
                    + $"the water, and {(isSteep ? "its sides are steep" : "nothing tells a way out")}: "
                    + $"{species.Species.Name} may drown in more than {limit.Value:0} mm."
            ),
            (basin.Depth, limit),
            "Lead a slope, stones or wood from its bottom over the edge and enter its sides as a ramp, or "
                + "make it "
                + "shallower.",
            basin.Path.StartsWith("basins", StringComparison.Ordinal) ? $"{basin.Path}.sides" : basin.Path
        );
    }
}
