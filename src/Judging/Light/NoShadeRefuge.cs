using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>Forest-floor frogs want a gradient of light with dark places in it.</summary>
internal static class NoShadeRefuge
{
    public static readonly Rule Rule = new(
        "no-shade-refuge",
        Protects.Animal,
        "house rule: less than 30 % of the ground is dark (5 µmol/m²/s or less) or under wood, in fewer "
            + "than three "
            + "patches of 10 × 10 cm, or its darkest place is more than 1/30 of the brightest; a caution "
            + "above "
            + "100 µmol/m²/s on the mean",
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (_, design) => FixEdit.CorkFlats(design.Document),
    };

    private const string Reason =
        "house rule: no published limit of light for small rainforest frogs was found; they are active "
        + "within 2.5 "
        + "decades of illuminance and leave bright perches, so a gradient with refuges is planned";

    private static readonly Figure Least = Figure.Choice(
        "house rule for shade",
        100 * LightPolicy.RefugeShare,
        Unit.Percent,
        Reason
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Light is not { } light || !n.HasAnimals())
        {
            yield break;
        }

        var refuge = light.Refuge;
        bool isSmall = refuge.Share.Si < LightPolicy.RefugeShare;
        if (
            !isSmall
            && refuge.Patches.Si >= LightPolicy.RefugePatches
            && refuge.DarkToBright.Si <= LightPolicy.RefugeDepth
        )
        {
            yield break;
        }

        bool isBright = light.GroundMean.Value.Micromoles() > LightPolicy.BrightFloor && isSmall;
        double patches = refuge.Patches.Si;
        yield return Rule.Found(
            isBright ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{100.0 * refuge.Share.Si:0} % of the ground is dark or under wood, in {patches:0} "
                    + $"{(patches == 1.0 ? "patch" : "patches")} of 10 × 10 cm or more; the house rule is "
                    + $"30 % in three."
            ),
            (refuge.Share, Least),
            "Lay cork flats or half tubes, and plant broad leaves low, so that frogs can leave the light "
                + "anywhere.",
            "hardscape",
            Least.Origin
        );
    }
}
