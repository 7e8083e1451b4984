using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Floor;

namespace Litterfall.Quantities.Sizing;

/// <summary>Whether rising water lifts a light aggregate with the soil on it.</summary>
/// <param name="LiftHeight">Water height over the base at which lift equals weight; may lie above the
/// layer.</param>
/// <param name="SafetyWhenFull">Weight over lift with the layer full.</param>
/// <param name="Depth">Depth of the drainage layer.</param>
/// <param name="Load">Mass of the moist soil per area at its thinnest place.</param>
public sealed record FloatCheck(Figure LiftHeight, Figure SafetyWhenFull, Figure Depth, Figure Load)
{
    private static readonly Citation Archimedes = new(
        "own-derivation",
        "Archimedes' principle per square meter of floor",
        Provenance.Recomputed
    );

    /// <summary>True when it lifts before the layer is full.</summary>
    public bool Lifts => SafetyWhenFull.Si < 1;

    /// <summary>Checks the thinnest place of the soil; null without aggregate.</summary>
    public static FloatCheck? Of(ImmutableArray<FloorLayer> layers)
    {
        var drainage = layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        if (
            drainage?.Material is not AggregateEntry aggregate
            || aggregate.BulkDensity is not { } density
            || drainage.Depth.Si <= 0
        )
        {
            return null;
        }

        var voids = aggregate.InterparticleVoids ?? SizingPolicy.Voids;
        var load = LoadAbove(layers.FirstOrDefault(l => l.Kind == LayerKind.Soil));
        var layer = new AggregateLayer(drainage.Depth.Si, density.Si, voids.Si, load.Si);
        return new FloatCheck(
            Figure
                .Computed(
                    "(aggregate depth × its bulk density + load above) ÷ ((1 − voids) × density of water)",
                    AggregateFlotation.BalanceHeightMeters(layer),
                    Unit.Meter.Dimension,
                    drainage.Depth,
                    density,
                    load,
                    voids,
                    SizingPolicy.Water
                )
                .As("water height that lifts the floor", Unit.Centimeter, Archimedes),
            Figure
                .Computed(
                    "(aggregate depth × its bulk density + load above) ÷ (depth × (1 − voids) × "
                        + "density of water)",
                    AggregateFlotation.SafetyRatioWhenFull(layer),
                    Dimension.None,
                    drainage.Depth,
                    density,
                    load,
                    voids,
                    SizingPolicy.Water
                )
                .As("weight over lift when full", Unit.One, Archimedes),
            drainage.Depth,
            load
        );
    }

    private static Figure LoadAbove(FloorLayer? soil)
    {
        if (soil?.DryMass is null || soil.Finished.Si <= 0)
        {
            return Figure.Choice(
                "load on the aggregate",
                0,
                Unit.KilogramPerSquareMeter,
                "no soil of known density lies on it"
            );
        }

        var moist = ((soil.DryMass + soil.SqueezeWater! * SizingPolicy.Water) / soil.Finished).As(
            "density of the moist soil",
            Unit.KilogramPerCubicMeter
        );
        return (moist * soil.Lowest).As("load on the aggregate", Unit.KilogramPerSquareMeter);
    }
}
