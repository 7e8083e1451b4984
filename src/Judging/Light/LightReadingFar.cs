using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A reading far from what was computed: one of the two is about another tank.</summary>
internal static class LightReadingFar
{
    public static readonly Rule Rule = new(
        "light-reading-far",
        Protects.Build,
        "a reading of the light is less than half or more than one and a half times what was computed there",
        Judge
    )
    {
        Needs = Stage.Light,
    };

    private static readonly Figure Most = Figure.Choice(
        "largest believable reading over computed light",
        1.5,
        Unit.One,
        "more than twice the uncertainty of light computed from a label"
    );

    private static readonly Figure Least = Figure.Choice(
        "smallest believable reading over computed light",
        0.5,
        Unit.One,
        "more than twice the uncertainty of light computed from a label"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light?.Turned is not { } turned || (turned.Si >= Least.Si && turned.Si <= Most.Si))
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The reading of the light is {turned.Si:0.0#} times what was computed there; "
                    + $"{Least.Si:0.#} to "
                    + $"{Most.Si:0.#} times is plausible."
            ),
            (turned, turned.Si > Most.Si ? Most : Least),
            "Check its place, that all lamps were at full light and the room dark, and the lumens of the "
                + "lamps.",
            "light.reading.lux"
        );
    }
}
