using Litterfall.Physics.Air;

namespace Litterfall.Physics.Parcel;

/// <summary>A heat pack that rusts: 4 Fe + 3 O2 → 2 Fe2O3.</summary>
/// <remarks>
/// Heat of formation of Fe2O3 824.2 kJ/mol at 25 °C (NIST chemistry tables, read as quoted on the web;
/// another compilation has 825.5), molar mass of iron 55.845 g/mol (IUPAC). All the iron is taken to rust to
/// the end, and to nothing but Fe2O3; hydrates give a few per cent more. A pack short of air gives less heat
/// for longer.
/// </remarks>
/// <param name="Kilograms">Iron in it, kg; the pack also holds carbon, salt and water.</param>
/// <param name="Seconds">How long it gives heat, s.</param>
public readonly record struct IronPack(double Kilograms, double Seconds)
{
    private const double FormationJoulesPerMole = 824_200.0;
    private const double IronKilogramsPerMole = 0.055845;
    private const double IronPerOxide = 2.0;
    private const double OxygenPerOxide = 1.5;

    /// <summary>Own choice: rises for a tenth of its time, within an hour; see the decision.</summary>
    private const double RiseShare = 0.10;
    private const double LongestRiseSeconds = 3600.0;

    /// <summary>Own choice: declines over the last quarter, grain by grain.</summary>
    private const double DeclineShare = 0.25;

    /// <summary>Heat of a kilogram of iron, J/kg.</summary>
    public const double JoulesPerKilogram = FormationJoulesPerMole / (IronPerOxide * IronKilogramsPerMole);

    /// <summary>Gets all its heat, J.</summary>
    public double Joules => Kilograms * JoulesPerKilogram;

    /// <summary>Gets its mean power, W.</summary>
    public double MeanWatts => Joules / Seconds;

    /// <summary>Gets its power on the plateau, W.</summary>
    public double PlateauWatts => Joules / (Seconds - (0.5 * (RiseSeconds + DeclineSeconds)));

    /// <summary>Gets the oxygen it uses in all, mol.</summary>
    public double OxygenMoles => Joules * OxygenPerOxide / FormationJoulesPerMole;

    private double RiseSeconds => Math.Min(RiseShare * Seconds, LongestRiseSeconds);

    private double DeclineSeconds => DeclineShare * Seconds;

    /// <summary>A pack of which heat and hours are known, as printed on it.</summary>
    /// <param name="meanWatts">Mean power, W.</param>
    /// <param name="seconds">How long, s.</param>
    public static IronPack FromPower(double meanWatts, double seconds) =>
        new(meanWatts * seconds / JoulesPerKilogram, seconds);

    /// <summary>Its power from a time on: rise, plateau, decline; the integral is its heat.</summary>
    /// <param name="startSeconds">When it is opened to the air, s.</param>
    public TimeCurve Power(double startSeconds) =>
        new(
            [
                startSeconds,
                startSeconds + RiseSeconds,
                startSeconds + Seconds - DeclineSeconds,
                startSeconds + Seconds,
            ],
            [0.0, PlateauWatts, PlateauWatts, 0.0]
        );

    /// <summary>Volume of the oxygen it uses in all, m³.</summary>
    /// <param name="celsius">Temperature of the air, °C.</param>
    public double OxygenVolume(double celsius) => OxygenMoles * MolarVolume(celsius);

    /// <summary>Volume of air that holds this oxygen, m³.</summary>
    /// <param name="celsius">Temperature of the air, °C.</param>
    public double AirVolume(double celsius) => OxygenVolume(celsius) / ChamberAir.OutdoorOxygen;

    /// <summary>Oxygen it uses on its plateau, m³/s.</summary>
    /// <param name="celsius">Temperature of the air, °C.</param>
    public double OxygenPerSecond(double celsius) =>
        PlateauWatts * OxygenPerOxide / FormationJoulesPerMole * MolarVolume(celsius);

    private static double MolarVolume(double celsius) =>
        Constants.MolarGasConstant * (celsius + Constants.ZeroCelsiusKelvin) / MoistAir.StandardPascals;
}
