using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A lamp lying on glass heats one spot of it; annealed glass can crack.</summary>
internal static class LampRestsOnLid
{
    private static readonly Figure LeastDistance = Figure.Choice(
        "least distance of a lamp from a glass lid",
        1,
        Unit.Centimeter,
        "air must pass under the lamp; the trade hangs lamps 10 to 30 cm higher"
    );

    private const double Raised = 0.03;

    public static readonly Rule Rule = new(
        "lamp-rests-on-lid",
        Protects.Person,
        FormattableString.Invariant(
            $"a lamp is less than {LeastDistance.Value:0.##} cm above a lid of annealed glass"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            FixEdit.Index(finding) is { } i
                ? DesignFix.From(
                    FormattableString.Invariant($"the lamp {Raised * 100:0.#} cm over the lid"),
                    FixEdit.Length(design.Document, FormattableString.Invariant($"lamps[{i}].above"), Raised)
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        // Only annealed glass has a crack difference in the library; toughened glass bears far more.
        if (n.Design.Find<SheetEntry>("lid.material")?.CrackDifference is not { } crack)
        {
            yield break;
        }

        for (var i = 0; i < n.Design.Design.Lamps.Count; i++)
        {
            if (n.Design.Design.Lamps[i].Above is not { } typed || typed.Si >= LeastDistance.Si - Gaps.Slack)
            {
                continue;
            }

            var path = $"lamps[{i}].above";
            var above = n.Design.Figure(
                path,
                $"height of lamp {i + 1} above the lid",
                typed,
                Unit.Centimeter
            );
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Lamp {i + 1} hangs {above.Value:0.#} cm above a glass lid; a spot about "
                        + $"{crack.Value:0} K warmer than the edge can crack it."
                ),
                (above, LeastDistance),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Raise the lamp by {LeastDistance.Value - above.Value:0.#} cm or more, on feet "
                        + $"or a bracket."
                ),
                path
            );
        }
    }
}
