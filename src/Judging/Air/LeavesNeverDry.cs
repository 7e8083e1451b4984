using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Plants;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Air;

/// <summary>A plant that must dry between waterings stands in leaves' wet all day.</summary>
internal static class LeavesNeverDry
{
    private static readonly Figure Within = Figure.Choice(
        "longest wet spell of a plant that must dry fast",
        4,
        Unit.Hour,
        "its entry asks for leaves dry within 4 hours"
    );

    private static readonly Figure Daily = Figure.Choice(
        "longest wet spell of a plant that dries between waterings",
        20,
        Unit.Hour,
        "it should dry once a day at least"
    );

    public static readonly Rule Rule = new(
        "leaves-never-dry",
        Protects.Build,
        "leaves stay wet for longer at a time than a plant bears that wants to dry: "
            + FormattableString.Invariant(
                $"{Within.Value:0} hours where its entry says so, else {Daily.Value:0}"
            ),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Climate?.Computed is not { Run.Surfaces.Leaves: { } leaves })
        {
            yield break;
        }

        foreach (var plant in Plantings.Of(n))
        {
            var water = plant.Species.Water?.Text ?? "";
            var limit =
                water.StartsWith("must dry", StringComparison.Ordinal) ? Within
                : water.Contains("dry", StringComparison.Ordinal)
                && !water.Contains("never", StringComparison.Ordinal)
                    ? Daily
                : null;
            if (
                limit is null
                || Seasons.Worst(n, d => WetLeaves.Longest(d, leaves)) is not { } worst
                || worst.Value <= limit.Value
            )
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Leaves {Spell(worst.Season, worst.Value)} {worst.Season.Name}; "
                        + $"{plant.Species.Name} wants them dry within {limit.Value:0}."
                ),
                (Seasons.Hours(n, worst.Season, "longest wet spell of leaves", worst.Value), limit),
                "Let more air through, mist shorter and in the morning, or plant it elsewhere.",
                new Control(Controls.Mist(n.Design.Design), plant.Path)
            );
        }
    }

    private static string Spell(ClimateSeason season, double hours) =>
        hours >= season.Days.Hours.Length
            ? "never dry"
            : string.Create(CultureInfo.InvariantCulture, $"stay wet for {hours:0} hours at a time");
}
