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
        FormattableString.Invariant(
            $"house rule: less than {100 * LightPolicy.RefugeShare:0} % of the ground is dark "
        )
            + FormattableString.Invariant($"({Cited("light.refugeLight"):0.#} µmol/m²/s or less) or under ")
            + FormattableString.Invariant(
                $"wood, the shade has no {Cited("light.refugePatch"):0} cm² for each "
            )
            + "animal, some open place is farther than "
            + FormattableString.Invariant($"{100 * LightPolicy.RefugeReach:0} cm from it, or its darkest ")
            + FormattableString.Invariant(
                $"place has more than {100 * LightPolicy.RefugeDepth:0.#} % of the "
            )
            + "light of the brightest; a caution where it is less than that share and the mean is above "
            + FormattableString.Invariant($"{LightPolicy.BrightFloor:0} µmol/m²/s"),
        Judge
    )
    {
        Needs = Stage.Light,
        Fix = (_, design) => FixEdit.CorkFlats(design.Document),
    };

    private static double Cited(string key) => ModelCoefficients.Cited.First(c => c.Key == key).Number;

    private const string Reason =
        "house rule: no published limit of light for small rainforest frogs was found; they are active "
        + "within two and a half "
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
        int animals = n.Design.Design.Animals.Concat(n.Design.Design.RatedFor).Sum(r => r.Count);
        if (
            !isSmall
            && refuge.Places.Si >= animals
            && refuge.Reach.Si <= LightPolicy.RefugeReach
            && refuge.DarkToBright.Si <= LightPolicy.RefugeDepth
        )
        {
            yield break;
        }

        bool isBright = light.GroundMean.Value.Micromoles() > LightPolicy.BrightFloor && isSmall;
        yield return Rule.Found(
            isBright ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{100.0 * refuge.Share.Si:0} % of the ground is shaded or under wood, with room for "
                    + $"{refuge.Places.Si:0} of {animals} animals and up to {100.0 * refuge.Reach.Si:0} cm "
                    + $"away; aim for {100 * LightPolicy.RefugeShare:0} %, room for all, and no more than "
                    + $"{100 * LightPolicy.RefugeReach:0} cm to it."
            ),
            (refuge.Share, Least),
            "Lay cork flats or half tubes, and plant broad leaves low, so that frogs can leave the light "
                + "anywhere.",
            "hardscape",
            Least.Origin
        );
    }
}
