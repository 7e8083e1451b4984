using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Judging.Plants;

/// <summary>A plant that cannot stand wet has its roots just above the drainage water.</summary>
internal static class WetRoots
{
    public static readonly Rule Rule = new(
        "plant-with-wet-roots",
        Protects.Build,
        "a plant that bears no wet feet stands in less than 3 cm of soil over a drainage layer",
        Judge
    );

    private static readonly Figure Least = Figure.Choice(
        "least soil under such a plant",
        3,
        Units.Centimeter,
        "soil just over the barrier stays wet after each rise of the drainage water"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor.Drainage is null)
        {
            yield break;
        }

        foreach (
            var plant in Plantings.Of(n).Where(p => p.Species.Text("wetFeet") == "no" && !p.Entry.Mounted)
        )
        {
            if (
                Plantings.SoilAt(n, plant.Entry.At) is not { } soil
                || plant.Entry.At?.Z is not null
                || soil.Si >= Least.Si - 1e-9
            )
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plant.Species.Name} bears no wet feet and stands in {soil.Value:0.#} cm of soil "
                        + $"over the drainage layer, less than {Least.Value:0}."
                ),
                (soil, Least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Add {(Least.Si - soil.Si) * 100:0.#} cm of soil there, or plant it where the soil "
                        + $"is deeper."
                ),
                plant.Path
            );
        }
    }
}
