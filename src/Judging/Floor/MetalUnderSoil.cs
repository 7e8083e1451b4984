using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Metal corrodes under wet soil, and its ions can harm amphibians.</summary>
internal static class MetalUnderSoil
{
    public static readonly Rule Rule = new(
        "metal-under-soil",
        Protects.Animal,
        "the barrier mesh under wet soil is of metal",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.Screen(design.Document),
    };

    private static readonly Citation Habit = Citation.Habit("barriers under wet soil are not of metal");

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Find<MeshEntry>("floor.barrier.material") is { } mesh && mesh.Metal?.Text == "yes")
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Stop, Severity.Caution),
                $"The barrier is {mesh.Name}: metal corrodes under wet soil, and what dissolves "
                    + $"can harm amphibians.",
                (null, null),
                "Take a glass-fiber or plastic screen as the barrier.",
                "floor.barrier.material",
                Habit
            );
        }
    }
}
