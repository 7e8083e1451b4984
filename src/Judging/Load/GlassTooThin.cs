using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>A pane too thin for a flooded floor can break under a person's hands.</summary>
internal static class GlassTooThin
{
    public static readonly Rule Rule = new(
        "glass-too-thin",
        Protects.Person,
        "the stress with the floor flooded, of a lid or shelf under weight and load, or of a door under a "
            + "hand exceeds the allowable stress (recalled; an estimate)",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fixes = (finding, design) => ThickerGlass.Fixes(finding, design.Document),
    };

    private const string Rough =
        "It bends by more than half its thickness, where the stress is less than computed. ";

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane => pane.Stress.Si > pane.Allowable.Si)
            .Select(pane =>
                Rule.Found(
                    Severity.Stop,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{pane.Under} the {pane.Pane.Replace('-', ' ')} pane is stressed to "
                            + $"{pane.Stress.Value:0.#} MPa, above {pane.Allowable.Value:0.#} MPa. "
                            + $"{(pane.IsLinear ? "" : Rough)}"
                            + $"This is an estimate: ask a glazier."
                    ),
                    (pane.Stress, pane.Allowable),
                    pane.Needed is not null
                        ? string.Create(
                            CultureInfo.InvariantCulture,
                            $"Take glass of at least {pane.Needed.Value + 0.2:0.#} mm, or hold the upper "
                                + $"edge."
                        )
                        : pane.Fix,
                    pane.Key
                )
            );
}
