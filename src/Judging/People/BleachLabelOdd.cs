using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>A strength no household bleach has is a slip of the pen, or a stronger product.</summary>
internal static class BleachLabelOdd
{
    private static readonly Figure Weakest = Figure.Given(
        "weakest household bleach",
        0.03,
        Unit.Percent,
        Practice
    );

    private static readonly Figure Strongest = Figure.Given(
        "strongest household bleach",
        0.0825,
        Unit.Percent,
        Practice
    );

    public static readonly Rule Rule = new(
        "bleach-label-odd",
        Protects.Person,
        FormattableString.Invariant(
            $"the label strength of the bleach is outside {Weakest.Value:0.##} to {Strongest.Value:0.##} %"
        ),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static Citation Practice =>
        new("keeper-practice", "recalled: household bleach holds 3 to 8.25 %", Provenance.Recalled);

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Dip?.Label is { } label && (label.Si < Weakest.Si - 1e-9 || label.Si > Strongest.Si + 1e-9))
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"A label strength of {label.Value:0.##} % is outside the {Weakest.Value:0.##} to "
                        + $"{Strongest.Value:0.##} % of household bleach: the dip may be far too "
                        + $"weak or burn."
                ),
                (label, label.Si < Weakest.Si ? Weakest : Strongest),
                "Read the label again: sodium hypochlorite, not chlorine, and the date; take a "
                    + "household bleach.",
                "hygiene.bleach"
            );
        }
    }
}
