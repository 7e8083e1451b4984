using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Life;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>Leaves rot; one day they cover no more.</summary>
internal static class LitterRunsLow
{
    public static readonly Rule Rule = new(
        "litter-runs-low",
        Protects.Build,
        "within five years the leaf litter rots down to less than 2 cm",
        Judge
    )
    {
        Needs = Stage.Life,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Life is not { Masses.LitterLow: { } day } life)
        {
            yield break;
        }

        double cover = ModelCoefficients.Of(n.Design).Life.Cover.Number;
        yield return Rule.Found(
            Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"About {day.Value:0} days after planting the leaves cover less than {cover:0.##} cm."
            ),
            (day, null),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Lay on leaves every {day.Value:0} days or before: about {life.Masses.TopUp.Value:0} g of "
                    + $"dry "
                    + $"leaves a year."
            ),
            "floor.litter",
            LifeFigures.Engine
        );
    }
}
