using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Water;

/// <summary>Leaves that dry out between two mistings turn crisp and shed the water.</summary>
internal static class LitterCrust
{
    public static readonly Rule Rule = new(
        "litter-crust",
        Protects.Build,
        "in the longest gap between two mistings the air takes more than the leaves hold",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Floor,
        Fix = (_, design) => FixEdit.MistingPump(design.Document),
    };

    private const double DaySeconds = 86400;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var litter = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        if (
            litter is not { DryMass: { Si: > 0 } mass }
            || n.Water.Balance is not { Misted: { Si: > 0 } misted } balance
            || n.Design.Design.Misting is not { Times.Count: > 0 } misting
        )
        {
            yield break;
        }

        var gap = LongestGap([.. misting.Times.Select(t => t.At.ToTimeSpan().TotalSeconds)]);
        var gapFigure = Figure.Given(
            "longest time between two mistings",
            gap,
            Unit.Hour,
            new Citation("design", "misting.times", Provenance.Entered)
        );
        var taken = (balance.Vented * gapFigure / WaterPolicy.Day).As(
            "water the air takes in that time",
            Unit.Milliliter
        );
        var held = Figure
            .Min(
                mass * ModelCoefficients.Of(n.Design).Water.LitterHolds.Figure,
                misted / Figure.Number(misting.Times.Count)
            )
            .As("water the leaves keep of one misting", Unit.Milliliter);
        if (taken.Si > held.Si)
        {
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"In the {gapFigure.Value:0.#} hours between two mistings ventilation removes "
                        + $"{taken.Value:0} mL; "
                        + $"the leaves hold {held.Value:0} mL: they dry crisp each day and shed the "
                        + $"next mist."
                ),
                (taken, held),
                "Mist shorter and more often, or let less air through.",
                Controls.Mist(n.Design.Design)
            );
        }
    }

    private static double LongestGap(double[] times)
    {
        Array.Sort(times);
        var longest = times[0] + DaySeconds - times[^1];
        for (var i = 1; i < times.Length; i++)
        {
            longest = Math.Max(longest, times[i] - times[i - 1]);
        }

        return longest;
    }
}
