using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>More waste than a planted floor takes.</summary>
internal static class NitrogenLoad
{
    private static readonly Unit Gram = Unit.Find("g/m2")!;

    private static readonly Figure Most = Figure.Given(
        "nitrogen of tropical litterfall, a year",
        Gram.ToSiValue(10),
        Gram,
        new Citation(
            "litter-decay-literature",
            "recalled: about 100 kg/ha a year in litterfall",
            Provenance.Recalled
        )
    );

    private static string TripsWhen =>
        "the food of the animals brings in more nitrogen a year than forest litterfall carries, "
        + FormattableString.Invariant($"{Most.Value:0.#} g/m²");

    public static readonly Rule Rule = new("nitrogen-load", Protects.Build, TripsWhen, Judge)
    {
        Needs = Stage.Life,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Life is not { } life || life.Masses.Nitrogen.Si <= Most.Si)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Food brings in {Gram.FromSi(life.Masses.Nitrogen.Si):0.0} g of nitrogen for each square "
                    + $"meter a "
                    + $"year; litter of "
                    + $"tropical forest brings about {Gram.FromSi(Most.Si):0} (from memory)."
            ),
            (life.Masses.Nitrogen, Most),
            "Keep fewer animals, plant more, and draw the water off before its mark, with gloves on.",
            $"{Controls.At("animals", Controls.Largest(n.Design.Design.Animals, a => a.Count))}.count"
        );
    }
}
