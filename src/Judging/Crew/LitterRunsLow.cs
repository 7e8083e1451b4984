using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Life;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Crew;

/// <summary>Leaves rot; one day they cover no more.</summary>
internal static class LitterRunsLow
{
    public static readonly Rule Rule = new(
        "litter-runs-low",
        Protects.Build,
        FormattableString.Invariant(
            $"within five years the leaf litter rots to less than {Cited():0.##} cm, or is laid no deeper"
        ),
        Judge
    )
    {
        Needs = Stage.Life,
    };

    private static double Cited() => ModelCoefficients.Cited.First(c => c.Key == "life.cover").Number;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (Thin(n) is { } thin)
        {
            yield return thin;
        }

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
            "floor.litter.depth",
            LifeFigures.Engine
        );
    }

    /// <summary>Leaves just as deep as they must be: thinner is a finding of its own.</summary>
    private static Finding? Thin(DesignNumbers n)
    {
        var cover = ModelCoefficients.Of(n.Design).Life.Cover.Figure;
        var litter = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        return
            n.Life is null
            || litter is null
            || n.Life.Masses.LitterLow is not null
            || Math.Abs(litter.Depth.Si - cover.Si) > Slack
            ? null
            : Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The leaves are laid {litter.Depth.Value:0.#} cm deep, the least that covers; they rot, "
                        + $"and cover less from the first weeks on."
                ),
                (litter.Depth, cover),
                FormattableString.Invariant(
                    $"Lay it deeper, up to {Practice.Leaves.Most:0.#} cm, and top up when you see the soil."
                ),
                "floor.litter.depth"
            );
    }

    private const double Slack = 2e-4;
}
