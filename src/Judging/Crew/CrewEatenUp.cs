using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Life;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Crew;

/// <summary>Animals eat the crew faster than it breeds.</summary>
internal static class CrewEatenUp
{
    public static readonly Rule Rule = new(
        "crew-eaten-up",
        Protects.Build,
        "within five years, leaves topped up, the animals eat the springtails down to less than "
            + FormattableString.Invariant($"{Least():0} for each square meter"),
        Judge
    )
    {
        Needs = Stage.Life,
    };

    private static double Least() =>
        ModelCoefficients.Cited.First(c => c.Key == "life.leastSpringtails").Number;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Life is not { EatenUp: { } day } life)
        {
            yield break;
        }

        yield return Rule.Found(
            life.IsEatenInFirstYear ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"About {day.Value:0} days after planting the springtails are eaten up: the animals would "
                    + $"eat {life.Appetite.Value:0} a day, and the colony can lose "
                    + $"{life.Bearable.Value.Value:0} a day when they go in."
            ),
            (life.Appetite, life.Bearable.Value),
            life is { Reseed: { } more, ReseedEvery: { } every }
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"Add {more.Value:0} springtails every {every.Value / 7:0} weeks, feed more flies, lay "
                        + $"on "
                        + $"more leaves, or keep fewer animals."
                )
                : "Seeding again does not keep them up: keep fewer animals, or count on flies alone.",
            new Control($"{StockedSpecies.Of(n.Design).Select(s => s.Item).First()}.count", "crew"),
            LifeFigures.Engine
        );
    }
}
