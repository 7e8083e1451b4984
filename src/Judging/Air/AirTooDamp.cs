using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>Air above the band of the animals while leaves never dry: nothing is left that is dry.</summary>
internal static class AirTooDamp
{
    public static readonly Rule Rule = new(
        "air-too-damp",
        Protects.Animal,
        "the mean humidity of some season is above the species' band, and leaves stay wet all day",
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

        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (
                species.Species.LargestHumidity is not { } high
                || Seasons.Worst(n, d => WetLeaves.IsWetAllDay(d, leaves) ? d.Humidity.Mean : 0.0)
                    is not { } worst
                || worst.Value <= high.Si
            )
            {
                continue;
            }

            var isNear = ModelError.IsHumidityNear(worst.Value, high);
            yield return Rule.Found(
                isNear ? Severity.Note : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The air is at {100 * worst.Value:0} % on a day's mean {worst.Season.Name} and leaves "
                        + $"stay wet all day; {species.Species.Name} is kept at {high.Value:0} % or less."
                ) + ModelError.Words(isNear),
                (Seasons.Number(n, worst.Season, "mean humidity", worst.Value, Unit.Percent), high),
                "Let more air through, or mist less, so that leaves dry once a day.",
                Controls.Vents(n.Design.Design)
            );
        }
    }
}
