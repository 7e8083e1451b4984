using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Planning.Water;

namespace Litterfall.Planning.Judging.Water;

/// <summary>Numbers that do not add up are not to be built on.</summary>
internal static class WaterLedger
{
    public static readonly Rule Rule = new(
        "water-ledger-open",
        Protects.Build,
        "the water ledger of the forecast misses more than a gram a year, or the forecast stopped early",
        Judge
    );

    private static readonly Figure Most = Figure.Choice(
        "largest miss of the water ledger",
        1,
        FloorWater.Gram,
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
                "floor"
            );
        }
        else if (n.Water.LedgerError is { } miss && miss.Si > Most.Si)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The water ledger of the forecast misses {miss.Value:0.###} g; it must close."
                ),
                (miss, Most),
                "Report this design to us; do not build on its water numbers.",
                "floor"
            );
        }
    }
}
