using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Soil washes into the aggregate and the layer stops draining.</summary>
internal static class NoBarrier
{
    public static readonly Rule Rule = new(
        "no-barrier",
        Protects.Build,
        "soil lies on a drainage layer or raised floor without a barrier mesh",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "lay a barrier mesh",
                DesignEdits.SetPart(
                    design.Document,
                    "floor.barrier",
                    "{ material: glass-fibre-screen, upturn: 15 mm }"
                )
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor is { Drainage: not null, Soil: not null, Barrier: null })
        {
            yield return Rule.Found(
                Severity.Caution,
                "Soil lies on the drainage layer without a barrier mesh and can wash into it.",
                (null, null),
                $"Lay a barrier of non-metal mesh, {Practice.Barrier}, with an upturn.",
                "floor.barrier.material",
                Practice.Barrier.Origin
            );
        }
    }
}
