namespace Litterfall.Physics.Parcel;

/// <summary>What a parcel meets on its way: everything that may differ between two runs.</summary>
/// <remarks>
/// Curves are points joined by straight lines and constant outside; two points at one time are a step.
/// Times must not fall. Nothing is copied, so a caller may fill the same buffers anew for each run.
/// </remarks>
public readonly ref struct ParcelDrive
{
    /// <summary>Makes one without heat in it.</summary>
    public ParcelDrive() { }

    /// <summary>Gets the times of the air outside, s; at least one.</summary>
    public required ReadOnlySpan<double> AmbientSeconds { get; init; }

    /// <summary>Gets the air outside at those times, °C.</summary>
    public required ReadOnlySpan<double> AmbientCelsius { get; init; }

    /// <summary>Gets the conductance of the carton, W/K; 0 for a perfect one.</summary>
    public required double Conductance { get; init; }

    /// <summary>Gets the contents at the start, °C.</summary>
    public required double StartCelsius { get; init; }

    /// <summary>Gets the length of the run, s.</summary>
    public required double EndSeconds { get; init; }

    /// <summary>Gets the times of the power of heat packs, s; none without a pack.</summary>
    public ReadOnlySpan<double> HeatSeconds { get; init; }

    /// <summary>Gets the power of heat packs at those times, W.</summary>
    public ReadOnlySpan<double> HeatWatts { get; init; }

    /// <summary>Gets heat that never changes, such as that of animals, W.</summary>
    public double SteadyWatts { get; init; }

    /// <summary>Gets the factor on the latent heat of every pack.</summary>
    public double LatentFactor { get; init; } = 1.0;
}

/// <summary>Where a run writes what was asked of it; empty spans ask for nothing.</summary>
public readonly ref struct ParcelReport
{
    /// <summary>Gets the time between rows, s; the end has a row of its own where it falls between.</summary>
    public double EverySeconds { get; init; }

    /// <summary>Gets room for the temperature of each row, °C.</summary>
    public Span<double> Celsius { get; init; }

    /// <summary>Gets room for the liquid share of all latent heat in each row.</summary>
    public Span<double> Liquid { get; init; }

    /// <summary>Gets room for the liquid share of each pack, row by row.</summary>
    public Span<double> PackLiquid { get; init; }

    /// <summary>Gets temperatures to keep count of; start with fresh ones.</summary>
    public Span<LevelExposure> Levels { get; init; }

    /// <summary>Rows of a run, that of hour 0 included.</summary>
    /// <param name="endSeconds">Length of the run, s.</param>
    /// <param name="everySeconds">Time between rows, s.</param>
    public static int Rows(double endSeconds, double everySeconds)
    {
        int whole = (int)Math.Floor(endSeconds / everySeconds);
        return whole * everySeconds < endSeconds ? whole + 2 : whole + 1;
    }
}
