using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Water;

/// <summary>Numbers that do not add up are not to be built on.</summary>
internal static class OpenWaterBalance
{
    public static readonly Rule Rule = new(
        "water-ledger-open",
        Protects.Build,
        FormattableString.Invariant(
            $"the water ledger of the forecast misses more than {GramsPerSquareMeter} g a square meter of "
        ) + "floor and year, or the forecast stopped early",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
    };

    private const double GramsPerSquareMeter = 1;

    /// <summary>The solver's tolerance holds for each square meter, so a large floor misses more.</summary>
    private static Figure Most(DesignNumbers n) =>
        Figure.Choice(
            "largest miss of the water ledger",
            GramsPerSquareMeter * n.Box.OpenFloor.Si,
            Unit.Gram,
            "far below what can be weighed; more is a fault of the program or of the numbers fed to it"
        );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Water.Forecast?.StoppedEarly is { } stop)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The water forecast stopped on day {stop.Seconds / 86400:0.#}, "
                        + $"{100 * stop.DepthMeters:0.#} "
                        + $"cm below the surface: {stop.Reason} (miss {stop.Residual:0.0e+0})."
                ),
                (null, null),
                "Check the depths and the water curves of the floor's materials.",
                "floor.soil.recipe"
            );
        }
        else if (
            n is
            { Climate: null, Design.Design.Headspace: null, Water.Forecast: not null, Box.IsBuildable: true }
        )
        {
            yield return Rule.Found(
                Severity.Stop,
                "The air of this box changes too fast to be followed, so its climate is assumed, "
                    + "not calculated.",
                (null, null),
                "Check the fogger, the heating, the lamps and the vents: one of them is far too "
                    + "large for a box of this size.",
                Controls.Vents(n.Design.Design)
            );
        }
        else if (n.Water.LedgerError is { } miss && Most(n) is var most && miss.Si > most.Si)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The water ledger of the forecast misses {miss.Value:0.###} g; it must close."
                ),
                (miss, most),
                "Report this design to us; do not build on its water numbers.",
                "floor.soil.recipe"
            );
        }
    }
}
