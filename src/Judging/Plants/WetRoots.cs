using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>A plant that cannot stand wet has its roots just above the drainage water.</summary>
internal static class WetRoots
{
    private static readonly Figure Least = Figure.Choice(
        "least soil under such a plant",
        3,
        Unit.Centimeter,
        "soil just over the barrier stays wet after each rise of the drainage water"
    );

    private static readonly Figure Week = Figure.Choice(
        "longest time with little air at its roots",
        7,
        Unit.Day,
        "roots that cannot stand wet may rot; a week is a long rain"
    );

    private static readonly Figure Month = Figure.Choice(
        "longest time with little air at its roots",
        30,
        Unit.Day,
        "plants that stand wet roots for a short time"
    );

    public static readonly Rule Rule = new(
        "plant-with-wet-roots",
        Protects.Build,
        FormattableString.Invariant(
            $"a plant that can't stand wet roots has less than {Least.Value:0} cm of "
        )
            + "soil over a drainage layer, or its roots have less than "
            + FormattableString.Invariant($"{WaterPolicy.LeastAir.Value:0} % air on more than ")
            + FormattableString.Invariant($"{Week.Value:0} days of the first year (on more than ")
            + FormattableString.Invariant($"{Month.Value:0} where it stands wet roots for a short time)"),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Fix = (finding, design) =>
            finding.Limit?.Unit?.Symbol == "cm" ? FixEdit.MoreSoil(finding, design.Document) : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n).Where(p => !p.Entry.Mounted && p.Entry.At?.Z is null))
        {
            if ((Thin(n, plant) ?? Airless(n, plant)) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private static Finding? Thin(DesignNumbers n, PlacedPlant plant)
    {
        if (
            n.Design.Design.Floor.Drainage is null
            || plant.Species.WetFeet?.Text != "no"
            || Plantings.SoilAt(n, plant.Entry.At) is not { } soil
            || soil.Si >= Least.Si - 1e-9
        )
        {
            return null;
        }

        return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{plant.Species.Name} can't stand wet roots and has {soil.Value:0.#} cm of soil "
                    + $"over the drainage layer, less than {Least.Value:0}."
            ),
            (soil, Least),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Add {(Least.Si - soil.Si) * 100:0.#} cm of soil there, or plant it where the soil "
                    + $"is deeper."
            ),
            new Control(Controls.Soil(n.Design.Design), plant.Path)
        );
    }

    /// <summary>By the forecast of the floor at its place.</summary>
    private static Finding? Airless(DesignNumbers n, PlacedPlant plant)
    {
        if (plant.Species.WetFeet?.Text is not ("no" or "short") || n.Water.LeastAir is not { } least)
        {
            return null;
        }

        var limit = plant.Species.WetFeet?.Text == "no" ? Week : Month;
        string feet = limit == Week ? "can't stand wet roots" : "stands wet roots only shortly";
        int[] zones = RootZones.Of(n, plant);
        int days = RootZones.Days(n, zones, (d, z) => d.RootAir[z] < WaterPolicy.LeastAir.Si);
        return days <= limit.Value
            ? null
            : Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plant.Species.Name} {feet}; "
                        + $"at its place the roots have less than {WaterPolicy.LeastAir.Value:0} % air on "
                        + $"{days} days of the first year."
                ),
                (
                    SimulatedFigure.From(
                        $"days with little air at the roots of {plant.Species.Name}",
                        Unit.Day.ToSiValue(days),
                        Unit.Day,
                        $"forecast of the floor at its place, {RootZones.Depth(n)} deep",
                        [least]
                    ),
                    limit
                ),
                "Plant it higher or in a coarser mix, drain earlier, mist less; or take a kind that bears "
                    + "wet roots.",
                new Control(Controls.Mist(n.Design.Design), plant.Path)
            );
    }
}
