using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Bleach with acid or ammonia makes toxic gas.</summary>
internal static class BleachInUse
{
    public static readonly Rule Rule = new("bleach-in-use", Protects.Person, "bleach is used", Judge)
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: bleach with acids gives chlorine, with ammonia chloramines",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Hygiene?.Bleach is not null)
        {
            yield return Rule.Found(
                Severity.Note,
                "Never mix bleach with acids such as vinegar or descaler, or with ammonia or urine: "
                    + "it makes toxic gas.",
                (null, null),
                "Gloves, goggles, an open window; add bleach to water; mix fresh every day; none "
                    + "reaches an animal.",
                "hygiene.bleach",
                Practice
            );
        }
    }
}
