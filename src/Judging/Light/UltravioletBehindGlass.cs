using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>Window glass passes almost no UV-B.</summary>
internal static class UltravioletBehindGlass
{
    public static readonly Rule Rule = new(
        "uvb-behind-glass",
        Protects.Animal,
        "a lamp for ultraviolet B is over a pane, where hardly any comes through, or over mesh, where it "
            + "must be measured",
        Judge
    )
    {
        Needs = Stage.Light,
    };

    private static readonly Citation Glass = new(
        "ketola-robbins-1994",
        "abstract: window glass passes almost no light below 300 nm, and what it passes at 310 to 320 nm "
            + "varies and ages",
        Provenance.Read
    );

    private static readonly PracticeNumber ByMesh = new(
        30,
        50,
        "%",
        Citation.Recalled("burger-2007", "screens take 30 to 50 % of the ultraviolet, as others cite it")
    );

    private static readonly PracticeNumber Index = new(
        0,
        0.7,
        "(from memory)",
        Citation.Recalled(
            "baines-2016",
            "zone 1, shade dwellers, mean UV index 0 to 0.7, always with full shade"
        )
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light)
        {
            yield break;
        }

        for (int i = 0; i < light.Lamps.Length; i++)
        {
            var lamp = light.Lamps[i];
            if (
                n.Design.Find<LampEntry>(FormattableString.Invariant($"lamps[{i}].lamp"))?.Ultraviolet?.Text
                is null
            )
            {
                continue;
            }

            if (lamp.OverMesh <= 0.0)
            {
                yield return Rule.Found(
                    Severity.Caution,
                    $"{lamp.Name} is over a pane: glass passes almost no UV-B, and none is counted.",
                    (null, null),
                    "Give vitamin D3 with the food, or set it over mesh and measure "
                        + "with a UV index "
                        + "meter.",
                    new Control($"{lamp.Path}.lamp"),
                    Glass
                );
            }
            else
            {
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{lamp.Name} shines through mesh, which takes {ByMesh} of its UV-B (from memory); "
                            + $"an index is never computed from lumens."
                    ),
                    (null, null),
                    $"Measure at the highest perch with a UV index meter: for shade dwellers {Index} are "
                        + "advised, with full shade always in reach. Do not look into the lamp.",
                    new Control($"{lamp.Path}.lamp"),
                    Index.Origin
                );
            }
        }
    }
}
