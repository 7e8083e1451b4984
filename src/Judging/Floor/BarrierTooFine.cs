using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>A fine barrier can clog and holds the water above it.</summary>
internal static class BarrierTooFine
{
    private static readonly Figure Finest = Figure.Given(
        "finest opening of a barrier under a misting system",
        0.0005,
        Unit.Millimeter,
        Citation.Habit("barriers of 0.5 to 0.8 mm and finer fabrics clog and need a larger area")
    );

    public static readonly Rule Rule = new(
        "barrier-too-fine",
        Protects.Build,
        FormattableString.Invariant(
            $"the barrier mesh has openings under {Finest.Value:0.##} mm below a misting system"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.Screen(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Design.Misting is not null
            && n.Design.Find<MeshEntry>("floor.barrier.material")?.Aperture is { } opening
            && opening.Si < Finest.Si - Gaps.Slack
        )
        {
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The barrier has openings of {opening.Value:0.##} mm; under {Finest.Value:0.#} "
                        + $"mm it can clog, and under a misting system water then stands in the soil."
                ),
                (opening, Finest),
                $"Take a screen of {Practice.Barrier}, unless the mix is so fine that it needs the fabric.",
                "floor.barrier.material"
            );
        }
    }
}
