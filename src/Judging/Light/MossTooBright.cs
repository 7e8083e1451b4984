using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>A moss floor that bleaches.</summary>
internal static class MossTooBright
{
    private static readonly Figure Most = Figure.Given(
        "most light for forest moss",
        Unit.Micromole.ToSiValue(70),
        Unit.Micromole,
        new Citation(
            "plant-extension-charts",
            "recalled: row sheet moss, 1 to 3 mol/m2/d, 25 to 70 umol at 12 hours; forest mosses saturate "
                + "below 30",
            Provenance.Recalled
        )
    );

    public static readonly Rule Rule = new(
        "moss-too-bright",
        Protects.Build,
        FormattableString.Invariant(
            $"the mean light on the moss of the floor is above {Most.Micromoles():0} µmol/m²/s"
        ),
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (finding, design) => LampFix.Dimmer(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light?.MossMean is not { } moss || moss.Value.Si <= Most.Si)
        {
            yield break;
        }

        yield return Rule.Found(
            (moss.Low ?? moss.Value).Si > Most.Si ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The moss gets {moss.Value.Micromoles():0} µmol/m²/s on average; forest moss "
                    + $"may bleach above {Most.Micromoles():0} (from memory)."
            ),
            (moss.Value, Most),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Dim the lamps to {Math.Floor(100.0 * Most.Si / moss.Value.Si):0} %, shade the moss with "
                    + $"plants, or hang the lamps "
                    + $"higher."
            ),
            new Control(Controls.LampLight(n.Design.Design), "floor.moss")
        );
    }
}
