namespace Litterfall.Physics.Parcel;

/// <summary>Oxygen and carbon dioxide of a mixed chamber in which something breathes or burns.</summary>
/// <remarks>
/// V dx/dt = G (x_out − x) − use, x a share by volume, G the exchange with outside by diffusion and leaks.
/// What is used and what is given off are taken to leave the pressure as it is.
/// </remarks>
public static class ChamberAir
{
    /// <summary>Oxygen in dry air, share by volume (US Standard Atmosphere 1976: 0.209476).</summary>
    public const double OutdoorOxygen = 0.209476;

    /// <summary>
    /// Carbon dioxide of air in rooms and vehicles (own choice: twice that outdoors, people breathe there).
    /// </summary>
    public const double RoomCarbonDioxide = 0.0008;

    /// <summary>Share of oxygen below which keepers call air poor (common practice, no source).</summary>
    public const double PoorOxygen = 0.19;

    /// <summary>
    /// Air that passes seams and lid of a taped carton in an hour, in its own volumes (own working value, not
    /// measured: half of it; a bag inside or tape all round passes next to nothing).
    /// </summary>
    public const double TapedCartonChangesPerHour = 0.5;

    private const double SecondsPerHour = 3600.0;

    /// <summary>Exchange by leaks, m³/s.</summary>
    /// <param name="volume">Air in the chamber, m³.</param>
    /// <param name="changesPerHour">How often it is replaced in an hour.</param>
    public static double LeakPerSecond(double volume, double changesPerHour) =>
        volume * changesPerHour / SecondsPerHour;

    /// <summary>Oxygen after all has settled; 0 where more is used than can come in.</summary>
    /// <param name="usePerSecond">Oxygen used, m³/s.</param>
    /// <param name="exchangePerSecond">Exchange with outside, m³/s.</param>
    /// <param name="outside">Share outside.</param>
    public static double SteadyOxygen(double usePerSecond, double exchangePerSecond, double outside) =>
        usePerSecond <= 0.0 ? outside
        : exchangePerSecond <= 0.0 ? 0.0
        : Math.Max(0.0, outside - (usePerSecond / exchangePerSecond));

    /// <summary>
    /// Share of its power that the oxygen coming in allows a pack at most: 1 where there is enough. Below 1
    /// it uses up all oxygen of its chamber, which is no place for an animal then.
    /// </summary>
    /// <param name="usePerSecond">Oxygen it would use, m³/s.</param>
    /// <param name="exchangePerSecond">Exchange of its chamber with outside, m³/s.</param>
    public static double SupplyShare(double usePerSecond, double exchangePerSecond) =>
        usePerSecond <= 0.0 ? 1.0 : Math.Min(1.0, exchangePerSecond * OutdoorOxygen / usePerSecond);

    /// <summary>Carbon dioxide after all has settled; 1 at most.</summary>
    /// <param name="givenPerSecond">Carbon dioxide given off, m³/s.</param>
    /// <param name="exchangePerSecond">Exchange with outside, m³/s.</param>
    /// <param name="outside">Share outside.</param>
    public static double SteadyCarbonDioxide(
        double givenPerSecond,
        double exchangePerSecond,
        double outside
    ) =>
        givenPerSecond <= 0.0 ? outside
        : exchangePerSecond <= 0.0 ? 1.0
        : Math.Min(1.0, outside + (givenPerSecond / exchangePerSecond));

    /// <summary>Time until oxygen falls from that outdoors to a share; infinite for never.</summary>
    /// <param name="volume">Air in the chamber, m³.</param>
    /// <param name="usePerSecond">Oxygen used, m³/s.</param>
    /// <param name="exchangePerSecond">Exchange with outside, m³/s; 0 for a sealed chamber.</param>
    /// <param name="share">The share to fall to.</param>
    /// <returns>Seconds.</returns>
    public static double SecondsTo(double volume, double usePerSecond, double exchangePerSecond, double share)
    {
        double fall = OutdoorOxygen - share;
        if (usePerSecond <= 0.0)
        {
            return double.PositiveInfinity;
        }

        if (exchangePerSecond <= 0.0)
        {
            return volume * fall / usePerSecond;
        }

        // fall = use/G (1 − e^(−G t/V))
        double part = fall * exchangePerSecond / usePerSecond;
        return part < 1.0 ? -volume / exchangePerSecond * Math.Log(1.0 - part) : double.PositiveInfinity;
    }
}
