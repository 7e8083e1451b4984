using System.Globalization;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>What plants need in words: light, band, and what would bring it there.</summary>
internal static class PlantWords
{
    private const double Step = 0.01;
    private const double UnderLid = 0.03;
    private const double MostFactor = 4.0;
    private const int UsualPlaces = 100;
    private const int FewestPlaces = 6;
    private const int MostPlaces = 600;

    /// <summary>
    /// "gets 1.9 mol/m²/d (44 µmol/m²/s, ± 21 %), leaves facing up; it lives from 0.7, grows well from 2 and
    /// bears 8".
    /// </summary>
    public static string Light(LightFigures light, PlantLight plant)
    {
        string band = plant.Band is { } b
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"; it lives from {plant.Survival.Value:0.0#}, grows well from {b.Low.Value:0.0#} and "
                    + $"tolerates "
                    + $"{plant.Most!.Value:0.#} mol/m²/d"
            )
            : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{plant.Spot.Name} gets {plant.Daily.Value.Value:0.0#} mol/m²/d ({plant.Photons.Value.Value:0} "
                + $"µmol/m²/s, ± {light.Absolute.Value:0} %), leaves {plant.Facing}{band}"
        );
    }

    /// <summary>A mounted plant is set higher or lower; for one in the ground the lamps are turned.</summary>
    /// <param name="n">The design.</param>
    /// <param name="plant">The plant.</param>
    public static Control Control(DesignNumbers n, PlantLight plant)
    {
        var path = plant.Spot.Key[..(plant.Spot.Key.IndexOf(']', StringComparison.Ordinal) + 1)];
        return new Control(plant.Spot.Mounted ? $"{path}.at.z" : Controls.LampLight(n.Design.Design), path);
    }

    /// <summary>What becomes of a plant that lives with less light than it grows well in.</summary>
    /// <param name="plant">The plant.</param>
    public static string InTheDark(PlantLight plant) =>
        plant.Species.Habit?.Text.Contains("moss", StringComparison.Ordinal) == true
            ? "It should live, with longer, thinner shoots and bare places."
            : "It should live and grow slowly, with greener, longer leaves and little color.";

    /// <summary>
    /// What would bring a plant up to a daily sum: more lumens, a higher place, another plant.
    /// </summary>
    /// <param name="n">The design.</param>
    /// <param name="light">Its light.</param>
    /// <param name="plant">The plant.</param>
    public static string Brighter(DesignNumbers n, LightFigures light, PlantLight plant)
    {
        double wanted = plant.Band?.Low.Si ?? plant.Survival.Si;
        double factor = plant.Daily.Value.Si > 0.0 ? wanted / plant.Daily.Value.Si : double.PositiveInfinity;
        var ways = new List<string>();
        if (factor is > 1.0 and <= MostFactor)
        {
            double lumens = light.Lamps.Sum(l => l.Lumens.Si) * factor;
            ways.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"give {MoreLight.Words(factor)} (about {Math.Ceiling(lumens / 100.0) * 100.0:0} "
                        + $"lm; check "
                        + $"heat and the other plants again)"
                )
            );
        }

        if (Height(n, light, plant, wanted) is { } height)
        {
            ways.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"mount it with its leaves at {height * 100.0:0} cm instead of "
                        + $"{plant.LeafHeight.Value:0} cm"
                )
            );
        }

        ways.Add("take a plant that lives on less");
        return Sentence(ways);
    }

    /// <summary>Ways as one sentence.</summary>
    public static string Sentence(IReadOnlyList<string> ways)
    {
        string all = ways.Count == 1 ? ways[0] : string.Join(", ", ways.SkipLast(1)) + ", or " + ways[^1];
        return char.ToUpperInvariant(all[0]) + all[1..] + ".";
    }

    /// <summary>
    /// Lowest height over its own at which a level leaf gets the sum; null where there is none.
    /// </summary>
    private static double? Height(DesignNumbers n, LightFigures light, PlantLight plant, double wanted)
    {
        if (plant.Facing != "facing up" || plant.Photons.Value.Si <= 0.0)
        {
            return null;
        }

        double seconds = plant.Daily.Value.Si / plant.Photons.Value.Si;
        var places = new List<(double X, double Y, double Z)>();
        double top = n.Box.InsideHeight.Si - UnderLid;
        double step = Math.Max(Step, (top - plant.LeafHeight.Si) / Places(light));
        for (double z = plant.LeafHeight.Si + step; z < top; z += step)
        {
            places.Add((plant.Spot.X, plant.Spot.Y, z));
        }

        var along = light.Along(places);
        int at = along.ToList().FindIndex(micromoles => micromoles * 1e-6 * seconds >= wanted);
        return at < 0 ? null : places[at].Z;
    }

    /// <summary>How many heights are tried over one plant: the fewer, the more plants there are.</summary>
    private static int Places(LightFigures light) =>
        Math.Clamp(MostPlaces / Math.Max(1, light.Plants.Length), FewestPlaces, UsualPlaces);

    /// <summary>The photons of a figure in µmol/(m² s).</summary>
    public static double Micromoles(this Domain.Figures.Figure figure) => Unit.Micromole.FromSi(figure.Si);
}
