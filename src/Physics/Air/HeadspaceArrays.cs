using System.Runtime.InteropServices;

namespace Litterfall.Physics.Air;

/// <summary>
/// A surface while it is computed: what does not change, what the span holds, and the iterate.
/// </summary>
[StructLayout(LayoutKind.Auto)]
internal struct SurfaceWork
{
    /// <summary>Places of its first and last node.</summary>
    public int First;

    /// <summary>The same of the last.</summary>
    public int Last;

    /// <summary>Area, m².</summary>
    public double Area;

    /// <summary>Conductance to the radiant node, W/K.</summary>
    public double Radiant;

    /// <summary>Heat capacity of the inner node, J/K.</summary>
    public double Capacity;

    /// <summary>Conductance outward of the inner node, W/K.</summary>
    public double Outward;

    /// <summary>Heat capacity of the inner node over the time of the stage, W/K.</summary>
    public double Storing;

    /// <summary>True where it carries a film.</summary>
    public bool HasFilm;

    /// <summary>True where water comes from behind it.</summary>
    public bool HasSupply;

    /// <summary>A film of this mass leaves 1/e dry, kg.</summary>
    public double WetKilograms;

    /// <summary>What a film holds before it runs off, kg.</summary>
    public double DripAbove;

    /// <summary>Time in which the excess runs off, s.</summary>
    public double DripSeconds;

    /// <summary>Vapor pressure at the water behind it over that of free water.</summary>
    public double SupplyHumidity;

    /// <summary>Resistance between that water and the surface, s/m.</summary>
    public double SupplyResistance;

    /// <summary>Mist on it, kg/s.</summary>
    public double Mist;

    /// <summary>Heat into its inner node, W.</summary>
    public double Watts;

    /// <summary>Heat into its outermost node where that is another, W.</summary>
    public double Back;

    /// <summary>Outside of it over the room, K.</summary>
    public double OutsideOffset;

    /// <summary>Known part of its inner temperature, °C.</summary>
    public double KnownCelsius;

    /// <summary>Known part of its film, kg.</summary>
    public double KnownFilm;

    /// <summary>Inner temperature, °C.</summary>
    public double Inner;

    /// <summary>Film, kg.</summary>
    public double Film;

    /// <summary>Convection, W/K.</summary>
    public double Convection;

    /// <summary>Mass transfer, m/s.</summary>
    public double Transfer;

    /// <summary>Constant part of the temperature of the node behind the inner one, °C.</summary>
    public double BehindConstant;

    /// <summary>Factor of the inner temperature in it.</summary>
    public double BehindFactor;

    /// <summary>Vapor onto it, kg/s.</summary>
    public double Flux;

    /// <summary>Part of it that condenses or dries from the film, kg/s.</summary>
    public double FluxFilm;

    /// <summary>Slope of the flux with w, kg/s.</summary>
    public double FluxByVapor;

    /// <summary>Slope of the flux against the inner temperature, kg/(s K).</summary>
    public double FluxByKelvin;

    /// <summary>Heat that a kilogram brings to it, J/kg.</summary>
    public double Latent;

    /// <summary>What its balance misses, W.</summary>
    public double Right;

    /// <summary>One over the slope of that balance, K/W.</summary>
    public double PerSlope;
}

/// <summary>Scratch of one span of a headspace, private to it.</summary>
internal sealed class HeadspaceArrays
{
    public HeadspaceArrays(HeadspaceShape shape)
    {
        Surfaces = new SurfaceWork[shape.Surfaces.Length];
        int nodes = 0;
        for (int i = 0; i < Surfaces.Length; i++)
        {
            var surface = shape.Surfaces[i];
            int count = surface.CapacityJoulesPerKelvin.Length;
            Surfaces[i] = new SurfaceWork
            {
                First = nodes,
                Last = nodes + count - 1,
                Area = surface.AreaSquareMeters,
                Radiant = surface.RadiantWattsPerKelvin,
                Capacity = surface.CapacityJoulesPerKelvin[0],
                Outward = surface.OutwardWattsPerKelvin[0],
                HasFilm = surface.Film is not null,
                HasSupply = surface.HasSupply,
                WetKilograms = surface.Film?.WetKilograms ?? 0.0,
                DripAbove = surface.Film?.DripAboveKilograms ?? 0.0,
                DripSeconds = surface.Film?.DripSeconds ?? 1.0,
            };
            nodes += count;
        }

        Capacity = new double[nodes];
        Outward = new double[nodes];
        Constant = new double[nodes];
        Factor = new double[nodes];
        for (int i = 0; i < Surfaces.Length; i++)
        {
            shape.Surfaces[i].CapacityJoulesPerKelvin.CopyTo(Capacity, Surfaces[i].First);
            shape.Surfaces[i].OutwardWattsPerKelvin.CopyTo(Outward, Surfaces[i].First);
        }
    }

    /// <summary>The surfaces.</summary>
    public SurfaceWork[] Surfaces { get; }

    /// <summary>Heat capacities of the nodes, J/K.</summary>
    public double[] Capacity { get; }

    /// <summary>Conductances outward of the nodes, W/K.</summary>
    public double[] Outward { get; }

    /// <summary>Temperature of a node behind: constant part, °C.</summary>
    public double[] Constant { get; }

    /// <summary>The same: factor of the node before it.</summary>
    public double[] Factor { get; }
}
