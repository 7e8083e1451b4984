using System.Collections.Concurrent;
using Litterfall.Physics.Plates;

namespace Litterfall.Quantities.Sizing;

/// <summary>A pane under soaked soil.</summary>
/// <param name="Pane">The pane.</param>
/// <param name="FloodedMeters">Height of the load, m.</param>
/// <param name="SoilKilogramsPerCubicMeter">Density of the soaked soil, kg/m³.</param>
/// <param name="AllowablePascals">Allowable stress, Pa.</param>
public readonly record struct BentPane(
    PlatePane Pane,
    double FloodedMeters,
    double SoilKilogramsPerCubicMeter,
    double AllowablePascals
);

/// <summary>
/// Stress, bulge and deepest water of panes, which take milliseconds of a series each. Whoever changes a
/// design step by step hands them on.
/// </summary>
public sealed class BentPanes
{
    private const int Most = 64;
    private readonly ConcurrentDictionary<BentPane, (double Stress, double Depth, double Sag)> made = new();

    /// <summary>Largest stress, Pa, deepest water, m, and largest deflection, m.</summary>
    /// <param name="pane">The pane.</param>
    public (double Stress, double Depth, double Sag) Find(BentPane pane)
    {
        if (made.Count >= Most && !made.ContainsKey(pane))
        {
            made.Clear();
        }

        return made.GetOrAdd(pane, Bend);
    }

    private static (double Stress, double Depth, double Sag) Bend(BentPane bending)
    {
        var (pane, flooded, soil, allowable) = bending;
        var load = PlateLoad.Of(new WetSoil(flooded, flooded, soil, GlassCheck.RestCoefficient.Si));
        var bent = LevyPlate.Solve(pane, load);
        return (
            bent.LargestStressPascals,
            LevyPlate.LargestWaterDepth(pane, allowable),
            bent.LargestDeflectionMeters
        );
    }
}
