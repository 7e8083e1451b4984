using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>A pane that would not carry the box filled by mistake.</summary>
internal static class GlassNotForWater
{
    public static readonly Rule Rule = new(
        "glass-not-for-water",
        Protects.Person,
        "the pane would not carry the box filled by mistake",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane =>
                pane.Stress.Si <= pane.Allowable.Si && pane.LargestWaterDepth?.Si < pane.Height.Si - 1e-6
            )
            .OrderBy(pane => pane.LargestWaterDepth!.Si)
            .Take(1)
            .Select(pane =>
                Rule.Found(
                    Severity.Note,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The {pane.Pane} pane carries water up to about "
                            + $"{pane.LargestWaterDepth!.Value / 10:0} cm; a blocked drain or misting left "
                            + $"on must not fill the box above that. This is an estimate: ask a glazier."
                    ),
                    (pane.LargestWaterDepth, pane.Height),
                    "Keep an overflow or a leak alarm below that height.",
                    "box.glass.walls"
                )
            );
}
