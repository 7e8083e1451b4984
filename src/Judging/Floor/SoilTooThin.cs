using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Roots and crew need soil.</summary>
internal static class SoilTooThin
{
    private static readonly Figure Least = Figure.Given(
        "thinnest soil",
        0.025,
        Unit.Centimeter,
        Citation.Habit("2.5 to 7 cm of finished soil for small ground frogs")
    );

    public static readonly Rule Rule = new(
        "soil-too-thin",
        Protects.Build,
        FormattableString.Invariant($"the thinnest soil is under {Least.Value:0.##} cm"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => FixEdit.MoreSoil(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var soil = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil);
        if (soil is not null && soil.Lowest.Si < Least.Si - Gaps.Slack)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The soil is {soil.Lowest.Value:0.#} cm deep where it is thinnest; roots and crew need "
                        + $"{Least.Value:0.#} cm."
                ),
                (soil.Lowest, Least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Add {(Least.Si - soil.Lowest.Si) * 100:0.#} cm of finished soil there."
                ),
                Controls.Soil(n.Design.Design)
            );
        }
    }
}
