using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>What a luminaire file made its reader guess.</summary>
internal static class LampFileOdd
{
    public static readonly Rule Rule = new(
        "lamp-file-odd",
        Protects.Build,
        "a luminaire file was read, but something in it is odd or was guessed",
        Judge
    )
    {
        Needs = Stage.Light,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var lamp in n.Light?.Lamps ?? [])
        {
            foreach (string note in lamp.Notes)
            {
                yield return Rule.Found(
                    Severity.Note,
                    $"Luminaire file of {lamp.Name}: {note}",
                    (null, null),
                    "Ask the maker of the lamp for the report behind the file, or measure the light once "
                        + "and enter it.",
                    $"{lamp.Path}.file",
                    Citation.OwnDerivation
                );
            }
        }
    }
}
