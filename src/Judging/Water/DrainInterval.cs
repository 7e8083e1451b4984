using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Water;

/// <summary>A reservoir that must be emptied too often is forgotten.</summary>
internal static class DrainInterval
{
    public static readonly Rule Rule = new(
        "drain-interval-short",
        Protects.Build,
        FormattableString.Invariant(
            $"the reservoir fills in less than {WaterPolicy.ShortestInterval.Value:0.#} days and is emptied "
        ) + "by hand",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Floor,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var balance = n.Water.Balance;
        var design = n.Design.Design;
        if (
            balance.DrainEvery is not { } every
            || every.Si >= WaterPolicy.ShortestInterval.Si
            || design.Drain is { Kind: not DrainKind.Siphon, Height: not null }
        )
        {
            yield break;
        }

        var shortest = WaterPolicy.ShortestInterval;
        var most = (balance.Vented + balance.Usable! * WaterPolicy.Day / shortest).As(
            "water misted a day for that interval",
            Unit.Milliliter
        );
        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The reservoir fills in {NumberText.Days(every)} and must be emptied as often; "
                    + $"every {shortest.Value:0} days or less often is easy to keep up."
            ),
            (every, shortest),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Mist {most.Value:0} mL a day or less, let more air through, or lay a deeper drainage layer."
            ),
            Controls.Mist(design)
        );
    }
}
