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

    /// <summary>
    /// Takes the solution: temperatures behind the surfaces, films by their fluxes, vapor by all of them, so
    /// that the budget of water is exact.
    /// </summary>
    /// <param name="now">The solved surfaces.</param>
    /// <param name="dryAirKilograms">Dry air, kg.</param>
    /// <param name="seconds">The stage's own time, s.</param>
    public void Take(HeadspaceArrays now, double dryAirKilograms, double seconds)
    {
        double taken = 0.0;
        for (int i = 0; i < Surfaces.Length; i++)
        {
            ref var one = ref now.Surfaces[i];
            Celsius[one.First] = one.Inner;
            for (int n = one.First + 1; n <= one.Last; n++)
            {
                Celsius[n] = now.Constant[n] + (now.Factor[n] * Celsius[n - 1]);
            }

            Take(ref one, ref Surfaces[i], seconds);
            taken += one.Flux;
        }

        double gained = Fog - (AirFlow * (HumidityRatio - Room.HumidityRatio)) - taken - Settling;
        BookedRatio = Known.HumidityRatio + (seconds * gained / dryAirKilograms);
    }

    private static void Take(ref SurfaceWork one, ref StageSurface to, double seconds)
    {
        to.Inner = one.Inner;
        to.IsCondensing = one.Flux > 0.0 && one.FluxFilm > 0.0;
        to.FilmFlux = 0.0;
        to.Drip = 0.0;
        to.Film = 0.0;
        if (one.HasFilm)
        {
            to.FilmFlux = to.IsCondensing || !one.HasSupply ? one.Flux : one.FluxFilm;
            double gained = one.KnownFilm + (seconds * (to.FilmFlux + one.Mist));
            if (gained < 0.0)
            {
                // What Newton's last change overdrew: less dries than was computed, and the air gets less.
                one.Flux -= gained / seconds;
                to.FilmFlux -= gained / seconds;
                gained = 0.0;
            }

            double dripped = one.Film > one.DripAbove ? Math.Clamp(gained - one.Film, 0.0, gained) : 0.0;
            to.Drip = dripped / seconds;
            to.Film = gained - dripped;
        }

        to.Flux = one.Flux;
    }
}
