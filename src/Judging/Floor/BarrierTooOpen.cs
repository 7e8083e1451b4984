using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Fine soil falls through a coarse barrier.</summary>
internal static class BarrierTooOpen
{
    private static readonly Figure Widest = Figure.Given(
        "widest opening of a barrier",
        Unit.Millimeter.ToSiValue(Practice.Barrier.Most),
        Unit.Millimeter,
        Practice.Barrier.Origin
    );

    public static readonly Rule Rule = new(
        "barrier-too-open",
        Protects.Build,
        FormattableString.Invariant($"the barrier mesh has openings over {Widest.Value:0.##} mm"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.Screen(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Find<MeshEntry>("floor.barrier.material")?.Aperture is { } opening
            && opening.Si > Widest.Si + Gaps.Slack
        )
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The barrier has openings of {opening.Value:0.##} mm; through more than "
                        + $"{Widest.Value:0.#} mm soil can wash into the drainage layer."
                ),
                (opening, Widest),
                $"Take a screen of {Practice.Barrier}, or lay a finer one on it.",
                "floor.barrier.material"
            );
        }
    }
}
