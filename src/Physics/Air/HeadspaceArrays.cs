namespace Litterfall.Physics.Air;

/// <summary>Scratch of one span of a headspace, private to it.</summary>
internal sealed class HeadspaceArrays
{
    public HeadspaceArrays(HeadspaceShape shape, HeadspaceState state)
    {
        int count = shape.Surfaces.Length;
        First = new int[count + 1];
        for (int i = 0; i < count; i++)
        {
            First[i + 1] = First[i] + shape.Surfaces[i].CapacityJoulesPerKelvin.Length;
        }

        Area = [.. shape.Surfaces.Select(s => s.AreaSquareMeters)];
        Radiant = [.. shape.Surfaces.Select(s => s.RadiantWattsPerKelvin)];
        Capacity = [.. shape.Surfaces.SelectMany(s => s.CapacityJoulesPerKelvin)];
        Outward = [.. shape.Surfaces.SelectMany(s => s.OutwardWattsPerKelvin)];
        Celsius = [.. state.Celsius];
        OldCelsius = [.. state.Celsius];
        Film = [.. state.FilmKilograms];
        OldFilm = [.. state.FilmKilograms];
        Dew = state.DewKilograms.IsDefaultOrEmpty ? new double[count] : [.. state.DewKilograms];
        Constant = new double[Celsius.Length];
        Factor = new double[Celsius.Length];
        Rate = new double[count];
        Convection = new double[count];
        Transfer = new double[count];
        Inner = new double[count];
        Mist = new double[count];
        Watts = new double[count];
        BehindConstant = new double[count];
        BehindFactor = new double[count];
        Flux = new double[count];
        FluxFilm = new double[count];
        FluxByVapor = new double[count];
        FluxByKelvin = new double[count];
        Latent = new double[count];
        Right = new double[count];
        Diagonal = new double[count];
    }

    /// <summary>Place of each surface's first node; one more at the end.</summary>
    public int[] First { get; }

    /// <summary>Areas, m².</summary>
    public double[] Area { get; }

    /// <summary>Conductances to the radiant node, W/K.</summary>
    public double[] Radiant { get; }

    /// <summary>Heat capacities of the nodes, J/K.</summary>
    public double[] Capacity { get; }

    /// <summary>Conductances outward of the nodes, W/K.</summary>
    public double[] Outward { get; }

    /// <summary>Temperatures of the nodes, °C.</summary>
    public double[] Celsius { get; }

    /// <summary>The same at the start of the step, °C.</summary>
    public double[] OldCelsius { get; }

    /// <summary>Films, kg.</summary>
    public double[] Film { get; }

    /// <summary>The same at the start of the step, kg.</summary>
    public double[] OldFilm { get; }

    /// <summary>Part of the films that came as dew, kg.</summary>
    public double[] Dew { get; }

    /// <summary>Temperature of a node behind: constant part, °C.</summary>
    public double[] Constant { get; }

    /// <summary>The same: factor of the node before it.</summary>
    public double[] Factor { get; }

    /// <summary>Rate of change of the inner temperatures in the last step, K/s.</summary>
    public double[] Rate { get; }

    /// <summary>Convection, W/K.</summary>
    public double[] Convection { get; }

    /// <summary>Mass transfer, m/s.</summary>
    public double[] Transfer { get; }

    /// <summary>Inner temperatures of the iterate, °C.</summary>
    public double[] Inner { get; }

    /// <summary>Mist on each surface, kg/s.</summary>
    public double[] Mist { get; }

    /// <summary>Heat into each inner node, W.</summary>
    public double[] Watts { get; }

    /// <summary>Constant part of the node behind the inner one, °C.</summary>
    public double[] BehindConstant { get; }

    /// <summary>Factor of the inner temperature in it.</summary>
    public double[] BehindFactor { get; }

    /// <summary>Vapor onto each surface, kg/s.</summary>
    public double[] Flux { get; }

    /// <summary>Part of it that condenses or dries from the film, kg/s.</summary>
    public double[] FluxFilm { get; }

    /// <summary>Slope of the flux with w, kg/s.</summary>
    public double[] FluxByVapor { get; }

    /// <summary>Slope of the flux against the inner temperature, kg/(s K).</summary>
    public double[] FluxByKelvin { get; }

    /// <summary>Heat that a kilogram brings to the surface, J/kg.</summary>
    public double[] Latent { get; }

    /// <summary>What the surface's balance misses, W.</summary>
    public double[] Right { get; }

    /// <summary>Slope of that balance, W/K.</summary>
    public double[] Diagonal { get; }
}
