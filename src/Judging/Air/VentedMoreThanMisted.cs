using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Physics;

namespace Litterfall.Judging.Air;

/// <summary>In some season the air takes more water than is misted: the floor dries.</summary>
internal static class VentedMoreThanMisted
{
    private static readonly Figure Share = Figure.Choice(
        "water vented over water misted",
        1.05,
        Unit.One,
        "what a keeper's own measure of a nozzle cannot tell from balance"
    );

    public static readonly Rule Rule = new(
        "vented-more-than-misted",
        Protects.Build,
        FormattableString.Invariant(
            $"in some season ventilation removes over {100 * (Share.Si - 1):0} % and "
        ) + FormattableString.Invariant($"{1000 * LeastKilograms:0} mL a day more than is misted"),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
        Fix = (_, design) => FixEdit.MistingPump(design.Document),
    };

    private const double LeastKilograms = 0.005;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        // Misting nobody entered is unknown, not none.
        if (
            n.Design.Design is { Misting: null, Habits: null or { HandMist: null } }
            || Seasons.Worst(n, d => d.Vented - d.Misted) is not { } worst
            || worst.Value <= LeastKilograms
            || worst.Season.Days.Vented <= Share.Si * worst.Season.Days.Misted
        )
        {
            yield break;
        }

        var (season, _) = worst;
        var misted = season.Days.Misted / Constants.WaterDensity;
        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Ventilation removes {1000 * season.Days.Vented:0} mL a day {season.Name}; misting adds "
                    + $"{1000 * season.Days.Misted:0} mL: the floor dries day by day."
            ),
            (
                Seasons.Number(
                    n,
                    season,
                    "water vented a day",
                    season.Days.Vented / Constants.WaterDensity,
                    Unit.Milliliter
                ),
                Seasons.Number(n, season, "water misted a day", misted, Unit.Milliliter)
            ),
            "Mist more in that season, or close part of the vents.",
            Controls.Mist(n.Design.Design)
        );
    }
}
