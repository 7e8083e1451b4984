using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Animals need a cool part of the floor to go to.</summary>
internal static class HeatMatCoversTooMuch
{
    private static readonly Figure Most = Figure.Given(
        "largest heated share of the floor",
        0.5,
        Unit.Percent,
        new Citation(
            "floor-heating-article",
            "laid under half of the floor at most",
            Provenance.CommonPractice
        )
    );

    public static readonly Rule Rule = new(
        "heat-mat-covers-too-much",
        Protects.Animal,
        FormattableString.Invariant($"the heat mat lies under more than {Most.Value:0} % of the floor"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Heating is { Cover: not null } heating)
        {
            var cover = HeatMat.Cover(n, heating);
            if (cover.Si > Most.Si + 1e-9)
            {
                yield return Rule.Found(
                    n.WithAnimals(Severity.Caution, Severity.Note),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The heat mat lies under {cover.Value:0} % of the floor; over "
                            + $"{Most.Value:0} % little of it stays cool."
                    ),
                    (cover, Most),
                    FormattableString.Invariant($"Lay it under {Most.Value:0} % of the floor or less."),
                    "heating.cover"
                );
            }
        }
    }
}
