namespace Litterfall.Physics.Air;

/// <summary>A surface at the end of a stage.</summary>
internal struct StageSurface
{
    /// <summary>Inner temperature, °C.</summary>
    public double Inner;

    /// <summary>Film, kg.</summary>
    public double Film;

    /// <summary>Vapor onto it, kg/s.</summary>
    public double Flux;

    /// <summary>Vapor that its film gains, kg/s; negative where it dries.</summary>
    public double FilmFlux;

    /// <summary>True where vapor condenses on it.</summary>
    public bool IsCondensing;

    /// <summary>Water that runs off its film, kg/s.</summary>
    public double Drip;
}

/// <summary>
/// One implicit stage of a step: what is known of it before it is solved, and the air, the nodes and the
/// fluxes at its time. The temperature of the known air is that of air of the known enthalpy and vapor.
/// </summary>
/// <param name="surfaces">How many surfaces.</param>
/// <param name="nodes">How many nodes they have.</param>
internal sealed class HeadspaceStage(int surfaces, int nodes)
{
    /// <summary>Known temperatures of the nodes, °C.</summary>
    public double[] KnownCelsius { get; } = new double[nodes];

    /// <summary>Known films, kg.</summary>
    public double[] KnownFilm { get; } = new double[surfaces];

    /// <summary>Known air.</summary>
    public RoomPoint Known { get; set; }

    /// <summary>Temperatures of the nodes, °C; before it is solved, a guess for the inner ones.</summary>
    public double[] Celsius { get; } = new double[nodes];

    /// <summary>The surfaces.</summary>
    public StageSurface[] Surfaces { get; } = new StageSurface[surfaces];

    /// <summary>Temperature of the air, °C; before it is solved, a guess.</summary>
    public double AirCelsius { get; set; }

    /// <summary>w, kg/kg; before it is solved, a guess.</summary>
    public double HumidityRatio { get; set; }

    /// <summary>w as the fluxes leave it, kg/kg.</summary>
    public double BookedRatio { get; set; }

    /// <summary>The room.</summary>
    public RoomPoint Room { get; set; }

    /// <summary>Dry air exchanged, kg/s.</summary>
    public double AirFlow { get; set; }

    /// <summary>Vapor made by the fogger, kg/s.</summary>
    public double Fog { get; set; }

    /// <summary>Vapor that condenses in the air itself, kg/s.</summary>
    public double Settling { get; set; }
}
