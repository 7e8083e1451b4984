using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>A piece of mesh on hand that leaves a gap at an edge, which traps frogs.</summary>
internal static class BarrierTooSmall
{
    private static readonly Figure LargestGap = Figure.Given(
        "largest gap at an edge",
        0.002,
        Unit.Millimeter,
        Citation.Habit(
            "froglets and crew get through more than 2 mm; frogs trapped below a barrier are reported"
        )
    );

    public static readonly Rule Rule = new(
        "barrier-gap",
        Protects.Animal,
        FormattableString.Invariant(
            $"a piece of mesh on hand leaves more than {LargestGap.Value:0.##} mm at an edge (common "
        ) + "practice; keepers report frogs trapped under barriers)",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "cut a new barrier mesh",
                DesignEdits.Remove(design.Document, "floor.barrier.onHand")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor.Barrier?.OnHand is not { } piece)
        {
            yield break;
        }

        foreach (
            var finding in Edge(n, piece.Length, "length", n.Box.OpenLength)
                .Concat(Edge(n, piece.Depth, "depth", n.Box.OpenDepth))
        )
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Edge(
        DesignNumbers n,
        Litterfall.Domain.Lists.Seq<Typed<Length>> edge,
        string name,
        Figure inside
    )
    {
        var piece = BoxGeometry.Smallest(
            n.Design,
            edge,
            $"floor.barrier.onHand.{name}",
            $"{name} of the piece on hand"
        );
        var gap = Figure.NotNegative(inside - piece).As($"gap along the {name}", Unit.Millimeter);
        if (gap.Si > LargestGap.Si + 1e-9)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The piece on hand is {gap.Value:0.#} mm short in {name}: a gap over "
                        + $"{LargestGap.Value:0.##} mm can let froglets and crew under the barrier."
                ),
                (gap, LargestGap),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Cut a new piece: {inside.Value - 1:0} mm in {name} flat, or more with an upturn."
                ),
                $"floor.barrier.onHand.{name}"
            );
        }
    }
}
