using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Heavy glass needs two people.</summary>
internal static class TwoPersonLift
{
    public static readonly Figure MostForOne = Figure.Given(
        "most one person lifts",
        25,
        Unit.Kilogram,
        new Citation(
            "manual-handling-guideline",
            "recalled: 25 kg close to the body at waist height, less at arm's length or for smaller people",
            Provenance.Recalled
        )
    );

    public static readonly Rule Rule = new(
        "two-person-lift",
        Protects.Person,
        FormattableString.Invariant(
            $"the planted box, or the empty box of a kit, is over {MostForOne.Value:0} kg"
        ),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var kit = n.Design.Design.Form == BuildForm.Kit;
        var mass = kit ? n.Weights.Box : n.Weights.Planted;
        if (mass is not null && mass.Si > MostForOne.Si + 1e-9)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The {(kit ? "empty" : "planted")} box weighs about {mass.Value:0} kg; over "
                        + $"{MostForOne.Value:0} kg one "
                        + $"person does not lift it (a guideline from memory)."
                ),
                (mass, MostForOne),
                "Never move it planted: carry it empty, with two people, and fill it where it stands.",
                "box"
            );
        }
    }
}
