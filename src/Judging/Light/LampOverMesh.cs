using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>Mesh under a lamp eats slanting light, and lets water and heat past.</summary>
internal static class LampOverMesh
{
    public static readonly Rule Rule = new(
        "lamp-over-mesh",
        Protects.Person,
        "a lamp shines through a mesh",
        Judge
    )
    {
        Needs = Stage.Light,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light)
        {
            yield break;
        }

        foreach (var lamp in light.Lamps.Where(l => l.OverMesh > 0.5))
        {
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{lamp.Name} shines through mesh: the wires block slanting light most, and "
                        + $"{100.0 * lamp.TakenInside.Si:0} % "
                        + $"of its light gets inside; spray and steam reach the lamp."
                ),
                (lamp.TakenInside, null),
                "Hang it out of reach of spray, with a lamp sealed for damp places (IP rating by its "
                    + "maker) behind a "
                    + "ground-fault (residual-current) device; local rules and a licensed electrician come "
                    + "first.",
                $"{lamp.Path}.above",
                Citation.Habit("mesh lids let spray and steam up to the lamp")
            );
        }
    }
}
