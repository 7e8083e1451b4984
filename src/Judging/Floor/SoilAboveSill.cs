using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Soil at the front stands above the sill of the doors and falls out.</summary>
internal static class SoilAboveSill
{
    public static readonly Rule Rule = new(
        "soil-above-sill",
        Protects.Build,
        "drainage and soil at the front stand above the sill of the doors",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            FixEdit.Short(finding) is < 0 and var over
                ? DesignFix.From(
                    FormattableString.Invariant($"{-over * 100:0.#} cm less soil at the front"),
                    FixEdit.Soil(design.Document, over, atFront: true)
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Box is not { Opening: Opening.Front, Sill: { } typed })
        {
            yield break;
        }

        var sill = n.Design.Figure("box.sill", "height of the front sill", typed, Unit.Centimeter);
        var front = Figure
            .Total(
                [
                    .. n
                        .Layers.Where(l => l.Kind is LayerKind.Drainage or LayerKind.Soil)
                        .Select(l => l.FrontDepth),
                ],
                Unit.Meter.Dimension
            )
            .As("drainage and soil at the front", Unit.Centimeter);
        if (front.Si <= sill.Si + 1e-9)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Stop,
            string.Create(
                CultureInfo.InvariantCulture,
                $"At the front, drainage and soil stand {front.Value:0.#} cm high, above the sill of "
                    + $"{sill.Value:0.#} cm: soil and crew fall out when the doors open."
            ),
            (front, sill),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Lower the layers at the front by {(front.Si - sill.Si) * 100:0.#} cm, or slope the "
                    + $"soil up to the back."
            ),
            Controls.SoilInFront(n.Design.Design)
        );
    }
}
