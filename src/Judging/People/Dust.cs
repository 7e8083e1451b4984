using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Dry aggregate, perlite, sand and peat give off dust.</summary>
internal static class Dust
{
    public static readonly Rule Rule = new(
        "dust",
        Protects.Person,
        "a material of the floor gives off dust that can harm the lungs",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: dusty goods are wetted before pouring and poured with an FFP2 or N95 mask",
        Provenance.Recalled
    );

    /// <summary>The layer whose goods are dry and dusty.</summary>
    private static string Dusty(DesignNumbers n) =>
        n.Design.Find("floor.drainage.material") is { } entry && Materials.Says(entry, " mask", "dust")
            ? "floor.drainage.material"
            : "floor.soil.recipe";

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var dusty = Materials.OfFloor(n).Where(m => Materials.Says(m, " mask", "dust")).ToList();
        if (dusty.Count > 0)
        {
            yield return Rule.Found(
                Severity.Note,
                $"Dry dust can harm the lungs; it comes from "
                    + $"{Materials.Listed([.. dusty.Select(m => m.Name)])}.",
                (null, null),
                "Wet it before pouring, wear an FFP2 or N95 mask, and work in moving air.",
                Dusty(n),
                Practice
            );
        }
    }
}
