using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Crew;

/// <summary>Larger isopods nibble eggs and molting animals when they lack protein.</summary>
internal static class NibblingIsopods
{
    private static readonly Figure Small = Figure.Given(
        "length below which isopods are small",
        0.008,
        Unit.Millimeter,
        new Citation(
            "keeper-practice",
            "recalled: isopods of the larger kinds nibble eggs and molting animals when short of protein",
            Provenance.Recalled
        )
    );

    public static readonly Rule Rule = new(
        "nibbling-isopods",
        Protects.Animal,
        FormattableString.Invariant($"isopods of {Small.Value:0.##} mm and more live with frogs"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            FixEdit.Index(finding) is { } i
                ? DesignFix.From(
                    $"without {FixEdit.Named(design, $"crew[{i}].animal")}",
                    DesignEdits.Remove(design.Document, FormattableString.Invariant($"crew[{i}]"))
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (!StockedSpecies.Of(n.Design).Any(s => s.IsFrog))
        {
            yield break;
        }

        foreach (var crew in Crews.Of(n).Where(c => c.Species.Taxon?.Text == "isopod"))
        {
            if (crew.Species.AdultLength is not { } length || length.Si < Small.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{crew.Species.Name} grows to {length.Value:0.#} mm; isopods of that size are said to "
                        + $"nibble eggs, moss and molting animals when they lack protein."
                ),
                (length, Small),
                "Take dwarf isopods, or feed the crew some protein and lift eggs out.",
                $"{crew.Path}.animal"
            );
        }
    }
}
