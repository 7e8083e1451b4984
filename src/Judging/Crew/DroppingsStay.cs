using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Life;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>Isopods eat less than the animals drop.</summary>
internal static class DroppingsStay
{
    public static readonly Rule Rule = new(
        "droppings-stay",
        Protects.Build,
        "a year after animals moved in the isopods could eat less than half of the droppings that fall",
        Judge
    )
    {
        Needs = Stage.Life,
        Fix = (finding, design) => CrewFix.More(finding, design),
    };

    private const double Half = 0.5;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Life is not { } life
            || life.Masses.Droppings.Si <= 0.0
            || life.Masses.DroppingsEatable.Si >= Half * life.Masses.Droppings.Si
            || FloorSetups.Crew(n.Design).FirstOrDefault(c => !c.Species.NeedsDamp) is not { } isopods
        )
        {
            yield break;
        }

        var body = CrewKinds.Body(isopods.Entry, ModelCoefficients.Of(n.Design));
        double each = body.Droppings * body.AdultMilligrams;
        var needed = Figure
            .Computed(
                "droppings ÷ what one adult isopod eats",
                Math.Ceiling(life.Masses.Droppings.Value / each),
                Dimension.None,
                life.Masses.Droppings
            )
            .As($"adult {isopods.Entry.Name} for all droppings", Unit.One, LifeFigures.Engine);
        yield return Rule.Found(
            Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The animals drop {life.Masses.Droppings.Value:0.#} mg a day, dry; a year on the isopods "
                    + $"could eat "
                    + $"{life.Masses.DroppingsEatable.Value:0.#} mg of it. Mold and microbes take the rest."
            ),
            (life.Masses.DroppingsEatable, life.Masses.Droppings),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{needed.Value:0} adult {isopods.Entry.Name} would eat it all: seed more, feed them, or "
                    + $"wipe leaves and panes where droppings lie."
            ),
            $"{isopods.Path}.count",
            LifeFigures.Engine
        );
    }
}
