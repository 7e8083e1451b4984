using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Heating that nothing switches off on a warm day.</summary>
internal static class HeatWithoutThermostat
{
    public static readonly Rule Rule = new(
        "heat-without-thermostat",
        Protects.Animal,
        "the heating has no thermostat",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "a thermostat for the heating",
                DesignEdits.Set(design.Document, finding.Where, "true")
            ),
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: heating is switched by a thermostat; frogs die of heat before cold",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Heating is { Thermostat: false })
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                "No thermostat switches the heating: on a warm day it goes on heating, and heat "
                    + "harms frogs sooner than cold (from memory).",
                (null, null),
                "Set a thermostat with its sensor in the soil above the mat, and enter that there is one.",
                "heating.thermostat",
                Practice
            );
        }
    }
}
