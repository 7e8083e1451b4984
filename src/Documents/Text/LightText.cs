using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Text;

/// <summary>The light of the box as a maker reads it on a terminal.</summary>
internal static class LightText
{
    /// <summary>Nothing where there is no light.</summary>
    public static void Write(StringBuilder text, LightFigures? light)
    {
        if (light is null)
        {
            return;
        }

        var table = new TextTable("", "", "");
        table.Add(
            "ground, mean",
            Text(Unit.Micromole.FromSi(light.GroundMean.Value.Si), "0"),
            $"µmol/m²/s; {Between(light.GroundMean, Unit.Micromole, "0")} by lamp, lid and leaves"
        );
        table.Add(
            "a day",
            Text(Unit.MolePerDay.FromSi(light.GroundDaily.Value.Si), "0.0#"),
            $"mol/m²/d; {Text(light.GroundLux.Value.Si, "0")} lx"
        );
        table.Add(
            "darkest, brightest",
            $"{Text(light.Map.Statistics.Least, "0.#")}, {Text(light.Map.Statistics.Most, "0.#")}",
            "µmol/m²/s on the open ground"
        );
        table.Add(
            "dark or under wood",
            Text(100 * light.Refuge.Share.Si, "0"),
            $"% of the ground, room for "
                + $"{NumberText.Count((int)light.Refuge.Places.Si, "animal", "animals")}, "
                + $"{Text(light.Refuge.Reach.Value, "0")} cm to it at most"
        );
        foreach (var plant in light.Plants)
        {
            string band = plant.Band is { } b
                ? $" of {Text(b.Low.Value, "0.##")} to {Text(plant.Most!.Value, "0.#")} "
                    + $"({b.Low.Origin.Source})"
                : "";
            table.Add(
                $"{plant.Spot.Number} {plant.Species.Key}",
                Text(Unit.Micromole.FromSi(plant.Photons.Value.Si), "0"),
                $"µmol/m²/s, {Text(Unit.MolePerDay.FromSi(plant.Daily.Value.Si), "0.0#")} mol/m²/d{band}: "
                    + plant.Words
            );
        }

        text.Append(
                CultureInfo.InvariantCulture,
                $"Light at full lamps, ± {light.Absolute.Value:0} %, between places ± "
                    + $"{light.Relative.Value:0} %\n"
            )
            .Append(table)
            .Append('\n');
    }

    private static string Between(Banded number, Unit unit, string form) =>
        number is { Low: { } low, High: { } high }
            ? $"{Text(unit.FromSi(low.Si), form)} to {Text(unit.FromSi(high.Si), form)}"
            : "";

    private static string Text(double value, string form) =>
        value.ToString(form, CultureInfo.InvariantCulture);
}
