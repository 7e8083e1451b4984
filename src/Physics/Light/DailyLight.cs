namespace Litterfall.Physics.Light;

/// <summary>Light over a day and over the life of a lamp.</summary>
public static class DailyLight
{
    private const double DaySeconds = 86400.0;

    /// <summary>
    /// Seconds a lamp is on between two times of day, over midnight where off is not after on.
    /// </summary>
    /// <param name="onSeconds">Time it goes on, s after midnight.</param>
    /// <param name="offSeconds">Time it goes off, s after midnight; the same as on is a whole day.</param>
    public static double OnSeconds(double onSeconds, double offSeconds)
    {
        double span = offSeconds - onSeconds;
        return span > 0.0 ? span : span + DaySeconds;
    }

    /// <summary>
    /// Seconds at full light that give the same sum: two straight ramps inside the time count half each.
    /// </summary>
    /// <param name="seconds">Time on, ramps included, s.</param>
    /// <param name="rampSeconds">Length of each ramp, s; at most half the time counts.</param>
    public static double FullSeconds(double seconds, double rampSeconds) =>
        seconds - Math.Clamp(rampSeconds, 0.0, 0.5 * seconds);

    /// <summary>Sum of a day, mol/m².</summary>
    /// <param name="micromoles">Photons of 400 to 700 nm at full light, µmol/(m² s).</param>
    /// <param name="fullSeconds">Seconds at full light.</param>
    public static double Integral(double micromoles, double fullSeconds) => 1e-6 * micromoles * fullSeconds;

    /// <summary>
    /// Share of the first flux left, falling evenly by share of the flux: 0.7^(t/L70). The form of IES TM-21
    /// (recalled).
    /// </summary>
    /// <param name="hours">Hours burnt, 0 or more.</param>
    /// <param name="hoursTo70Percent">Hours to 70 % of the flux, above 0.</param>
    public static double FluxLeft(double hours, double hoursTo70Percent) =>
        Math.Pow(EndShare, hours / hoursTo70Percent);

    /// <summary>Hours burnt until a share of the first flux is left, by the same law.</summary>
    /// <param name="share">Share left, above 0 and at most 1.</param>
    /// <param name="hoursTo70Percent">Hours to 70 % of the flux, above 0.</param>
    public static double HoursTo(double share, double hoursTo70Percent) =>
        hoursTo70Percent * Math.Log(share) / Math.Log(EndShare);

    private const double EndShare = 0.7;
}
