using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Water;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>A plant of moist ground roots where the forecast runs dry.</summary>
internal static class DryRoots
{
    private static readonly Citation Media = new(
        "container-media-textbook",
        "recalled: water of potting media is easily had to 5 kPa, buffered to 10 kPa, and hardly to be had "
            + "beyond some tens",
        Provenance.Recalled
    );

    private static readonly Figure Moist = Figure.Given(
        "suction that roots of moist ground bear",
        30e3,
        Unit.Kilopascal,
        Media
    );

    private static readonly Figure NeverDry = Figure.Given(
        "suction that roots bear which must never dry",
        10e3,
        Unit.Kilopascal,
        Media
    );

    public static readonly Rule Rule = new(
        "plant-with-dry-roots",
        Protects.Build,
        FormattableString.Invariant(
            $"a plant of moist ground roots where the suction passes {Moist.Value:0} "
        )
            + FormattableString.Invariant($"kPa on more than {Week} days of the first year; ")
            + FormattableString.Invariant($"{NeverDry.Value:0} kPa where it must never dry"),
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
    };

    private const int Week = 7;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n).Where(p => !p.Entry.Mounted && p.Entry.At?.Z is null))
        {
            bool never = plant.Wants("never dry") || plant.Wants("wet");
            if (plant.Species.RootPlace?.Text == "epiphyte" || !(never || plant.Wants("moist")))
            {
                continue;
            }

            var limit = never ? NeverDry : Moist;
            int[] zones = RootZones.Of(n, plant);
            bool IsDry(FloorDay d, int zone) => Suction(d, zone) > limit.Si;
            int days = RootZones.Days(n, zones, IsDry);
            if (days <= Week)
            {
                continue;
            }

            double most = n.Water.Forecast!.Days.Max(d => zones.Min(z => Suction(d, z)));
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plant.Species.Name} wants moist ground; at its place the suction is above "
                        + $"{limit.Value:0} kPa on {days} days of the first year."
                ),
                (
                    SimulatedFigure.From(
                        $"largest suction at the roots of {plant.Species.Name}",
                        most,
                        Unit.Kilopascal,
                        $"forecast of the floor at its place, {RootZones.Depth(n)} deep",
                        n.Water.LeastAir is { } air ? [air] : []
                    ),
                    limit
                ),
                "Mist more or longer, let less air through, or take a mix that holds more water.",
                new Control(Controls.Mist(n.Design.Design), plant.Path)
            );
        }
    }

    private static double Suction(FloorDay day, int zone) =>
        -day.RootHeadMeters[zone] * WaterPolicy.PascalsPerMeter;
}
