using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Several localities or breeding lines of one species, which would interbreed.</summary>
internal static class MixedLines
{
    public static readonly Rule Rule = new(
        "mixed-lines",
        Protects.Animal,
        "one species is entered with different localities or lines",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var lines = species
                .Entries.Select(r => r.Line?.Trim() ?? "")
                .Where(line => line.Length > 0)
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .ToArray();
            if (lines.Length > 1)
            {
                yield return Rule.Found(
                    Severity.Caution,
                    $"{species.Species.Name} of different lines share the box ({string.Join(", ", lines)}); "
                        + "their young belong to none and can be sold as neither.",
                    (null, null),
                    "Keep each line in its own box, and write the line on every label.",
                    $"{species.Item}.line",
                    new Citation(
                        "keeper-practice",
                        "recalled: one locality or line in each box",
                        Provenance.Recalled
                    )
                );
            }
        }
    }
}
