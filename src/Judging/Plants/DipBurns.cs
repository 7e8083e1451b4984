using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>Soft leaves may not bear the dip for hardy plants.</summary>
internal static class DipBurns
{
    public static readonly Rule Rule = new(
        "dip-burns-plant",
        Protects.Build,
        "bleach is entered for the plant dip, and a plant has soft leaves",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Dip is null)
        {
            yield break;
        }

        foreach (var plant in Plantings.Of(n).Where(p => p.Species.BleachTolerance?.Text == "soft"))
        {
            yield return Rule.Found(
                Severity.Note,
                $"{plant.Species.Name} has soft leaves that the dip for hardy plants can burn.",
                (null, null),
                $"Dip it for {Practice.SoftDip} at half the strength to the full strength, one leaf "
                    + $"first; or "
                    + FormattableString.Invariant($"skip the dip and keep it {Practice.PlantsApart.Least:0} ")
                    + "days in quarantine. Rinse five times.",
                $"{plant.Path}.plant",
                plant.Species.BleachTolerance!.Origin
            );
        }
    }
}
