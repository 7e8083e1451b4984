using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Frogs and crew dig under a stone, and it settles on them.</summary>
internal static class StoneOnSoil
{
    private static readonly Figure Heaviest = Figure.Choice(
        "heaviest stone on soil",
        1,
        Unit.Kilogram,
        "a stone that settles must not crush a frog; the trade stands heavy stone on the base"
    );

    public static readonly Rule Rule = new(
        "stone-on-soil",
        Protects.Animal,
        FormattableString.Invariant(
            $"a stone over {Heaviest.Value:0.#} kg is not entered as standing on the base"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "stones stand on the " + "base",
                DesignEdits.Set(design.Document, finding.Where, "base")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Hardscape.Count; i++)
        {
            if (
                n.Design.Design.Hardscape[i].Seat == Seat.Base
                || n.Design.Entry<HardscapeEntry>($"hardscape[{i}].material").Seat?.Text != "base"
            )
            {
                continue;
            }

            var mass = HardscapeSize.Mass(n.Design, i);
            if (mass.Si > Heaviest.Si + 1e-9)
            {
                yield return Rule.Found(
                    n.WithAnimals(Severity.Caution, Severity.Note),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{Materials.Sentence(HardscapeSize.Name(n.Design, i))} weighs "
                            + $"{mass.Value:0.#} kg, and the "
                            + $"design doesn't say it rests on the glass: frogs and crew can dig under it, "
                            + $"and "
                            + $"it can settle on them."
                    ),
                    (mass, Heaviest),
                    "Stand it on the base, on a foam pad, before the layers go in, and enter that it "
                        + "stands there.",
                    $"hardscape[{i}].seat"
                );
            }
        }
    }
}
