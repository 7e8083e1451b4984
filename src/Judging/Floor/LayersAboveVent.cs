using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Soil in front of a low vent closes it and falls out.</summary>
internal static class LayersAboveVent
{
    public static readonly Rule Rule = new(
        "layers-above-vent",
        Protects.Build,
        "drainage, soil, moss and leaves stand above the lower edge of a vent in a wall",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Higher(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Vents.Count; i++)
        {
            var vent = n.Design.Design.Vents[i];
            if (vent is not { Height: { } height, Side: { } side } || side == Side.Top)
            {
                continue;
            }

            var middle = n.Design.Figure(
                $"vents[{i}].height",
                $"middle of vent {i + 1}",
                height,
                Unit.Centimeter
            );
            var edge = vent.Width is { } width
                ? Figure
                    .NotNegative(
                        middle
                            - n.Design.Figure(
                                $"vents[{i}].width",
                                $"width of vent {i + 1}",
                                width,
                                Unit.Centimeter
                            ) / Figure.Number(2)
                    )
                    .As($"lower edge of vent {i + 1}", Unit.Centimeter)
                : middle;
            var layers = Near(n, side);
            if (layers.Si > edge.Si + Gaps.Slack)
            {
                var what = n.Layers.Any(l => l.Kind is LayerKind.Moss or LayerKind.Litter)
                    ? "drainage, soil and what covers it"
                    : "drainage and soil";
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Vent {i + 1} begins {edge.Value:0.#} cm above the base; {what} stand "
                            + $"{layers.Value:0.#} cm high there and close it."
                    ),
                    (layers, edge),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Set the vent {(layers.Si - edge.Si) * 100:0.#} cm higher, or lower the "
                            + $"layers there."
                    ),
                    $"vents[{i}].height"
                );
            }
        }
    }

    /// <summary>Height of the layers at a wall, moss and leaves with them: they slide down to it.</summary>
    private static Figure Near(DesignNumbers n, Side side) =>
        Figure
            .Total(
                [
                    .. n.Layers.Select(l =>
                        side switch
                        {
                            Side.Front => l.FrontDepth,
                            Side.Back => l.BackDepth,
                            _ => l.Highest,
                        }
                    ),
                ],
                Unit.Meter.Dimension
            )
            .As("layers at that wall", Unit.Centimeter);

    private const double RoomOverSoil = 0.005;

    private static DesignFix? Higher(Finding finding, DesignDocument document)
    {
        if (
            FixEdit.Short(finding) is not (< 0 and var low)
            || FixEdit.Index(finding) is not { } i
            || document.Design.Vents.Count <= i
            || document.Design.Vents[i].Height is not { } now
        )
        {
            return null;
        }

        var height = FixEdit.Rounded(now.Si - low + RoomOverSoil);
        return DesignFix.From(
            $"vent {i + 1} at {FixEdit.Written(document, finding.Where, height)}",
            FixEdit.Length(document, finding.Where, height)
        );
    }
}
