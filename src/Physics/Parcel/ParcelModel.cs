namespace Litterfall.Physics.Parcel;

/// <summary>
/// Contents, packs and wall of a parcel as one lump of heat: C dT/dt = UA (Ta − T) + Q, and while a pack
/// melts or freezes dE/dt = UA (Ta − Tm) + Q at its melting point.
/// </summary>
/// <remarks>
/// Solved exactly from one bend of the drive to the next, see docs/models/parcel.md. The model holds what
/// does not change between runs and may be used by several threads at once.
/// </remarks>
public sealed class ParcelModel
{
    /// <summary>Most packs of one parcel.</summary>
    public const int MostPacks = 64;

    private readonly PhaseStore[] packs;
    private readonly int[] groupOfPack;
    private readonly double[] meltCelsius;
    private readonly double[] latentJoules;

    /// <summary>Makes one.</summary>
    /// <param name="heatCapacity">Heat capacity of everything inside, J/K; above 0.</param>
    /// <param name="packs">The packs that melt; those of no latent heat are only carried along.</param>
    /// <exception cref="ArgumentOutOfRangeException">No heat capacity, or too many packs.</exception>
    public ParcelModel(double heatCapacity, ReadOnlySpan<PhaseStore> packs)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heatCapacity);
        if (packs.Length > MostPacks)
        {
            throw new ArgumentOutOfRangeException(
                nameof(packs),
                packs.Length,
                "more packs than a parcel has"
            );
        }

        HeatCapacity = heatCapacity;
        this.packs = packs.ToArray();
        meltCelsius = [.. this.packs.Select(p => p.MeltCelsius).Distinct().Order()];
        groupOfPack = [.. this.packs.Select(p => Array.IndexOf(meltCelsius, p.MeltCelsius))];
        latentJoules = new double[meltCelsius.Length];
        for (int i = 0; i < this.packs.Length; i++)
        {
            latentJoules[groupOfPack[i]] += this.packs[i].LatentJoules;
        }
    }

    /// <summary>Gets the heat capacity of everything inside, J/K.</summary>
    public double HeatCapacity { get; }

    /// <summary>Gets the packs as given.</summary>
    internal ReadOnlySpan<PhaseStore> Packs => packs;

    /// <summary>Gets the melting points, rising, °C.</summary>
    internal ReadOnlySpan<double> MeltCelsius => meltCelsius;

    /// <summary>Gets the latent heat of all packs of each melting point, J.</summary>
    internal ReadOnlySpan<double> LatentJoules => latentJoules;

    /// <summary>Gets the melting point of each pack, counted.</summary>
    internal ReadOnlySpan<int> GroupOfPack => groupOfPack;

    /// <summary>Runs it once; nothing is allocated.</summary>
    /// <param name="drive">The way.</param>
    /// <param name="report">What to write down.</param>
    /// <returns>Ends, extremes and the heat account.</returns>
    public ParcelOutcome Run(in ParcelDrive drive, in ParcelReport report)
    {
        Span<double> liquid = stackalloc double[MostPacks];
        var walk = new ParcelWalk(this, drive, report, liquid[..packs.Length]);
        return walk.Run();
    }
}
