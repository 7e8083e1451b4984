using System.Collections.Immutable;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// Light on the ground hour by hour: lamps with dawn and dusk, and with what time takes from them.
/// </summary>
/// <param name="Micromoles">
/// Mean on the open ground over each hour of a day, µmol/(m² s), lamps as today.
/// </param>
/// <param name="Lit">Share of each hour with any lamp on.</param>
/// <param name="LeftAfterYear">Share of today's light left after another year.</param>
public sealed record LightDay(
    ImmutableArray<double> Micromoles,
    ImmutableArray<double> Lit,
    double LeftAfterYear
)
{
    private const int Hours = 24;
    private const int Samples = 60;
    private const double HourSeconds = 3600.0;
    private const double DaySeconds = 86400.0;
    private const double YearDays = 365.0;

    /// <summary>A day without lamps.</summary>
    public static readonly LightDay Dark = new([.. new double[Hours]], [.. new double[Hours]], 1.0);

    /// <summary>Mean light of an hour some time from now, µmol/(m² s).</summary>
    /// <param name="hour">Hours since a midnight; the hour before it is meant.</param>
    public double At(double hour) =>
        Micromoles[Place(hour)] * Math.Pow(LeftAfterYear, Math.Max(hour, 0.0) / (Hours * YearDays));

    /// <summary>Share of an hour with light.</summary>
    /// <param name="hour">Hours since a midnight; the hour before it is meant.</param>
    public double LitAt(double hour) => Lit[Place(hour)];

    private static int Place(double hour) => (((int)Math.Ceiling(hour) - 1) % Hours + Hours) % Hours;

    /// <summary>The day of a design.</summary>
    /// <param name="light">Its light; null for a dark day.</param>
    public static LightDay Of(LightFigures? light)
    {
        if (light is null)
        {
            return Dark;
        }

        double[] sums = new double[Hours];
        double[] lit = new double[Hours];
        double mean = light.GroundMean.Value.Si * 1e6;
        double later = 0.0;
        for (int s = 0; s < Hours * Samples; s++)
        {
            double at = (s + 0.5) * HourSeconds / Samples;
            bool isLit = false;
            foreach (var lamp in light.Lamps)
            {
                double power = lamp.PowerAt(at);
                sums[s / Samples] += power * lamp.GroundShare * mean / Samples;
                isLit |= power > 0.0;
            }

            lit[s / Samples] += isLit ? 1.0 / Samples : 0.0;
        }

        foreach (var lamp in light.Lamps)
        {
            double burnt = YearDays * lamp.OnSeconds / HourSeconds;
            later += lamp.GroundShare * (lamp.LifeHours is { } life ? DailyLight.FluxLeft(burnt, life) : 1.0);
        }

        return new LightDay([.. sums], [.. lit], later > 0.0 ? later : 1.0);
    }

    /// <summary>Share of its full light at a time of day.</summary>
    /// <param name="onSeconds">On, s after midnight.</param>
    /// <param name="seconds">Time on, s.</param>
    /// <param name="rampSeconds">Dawn and dusk, s each.</param>
    /// <param name="atSeconds">Time of day, s after midnight.</param>
    public static double Power(double onSeconds, double seconds, double rampSeconds, double atSeconds)
    {
        double since = atSeconds - onSeconds;
        since -= Math.Floor(since / DaySeconds) * DaySeconds;
        if (since >= seconds)
        {
            return 0.0;
        }

        double ramp = Math.Clamp(rampSeconds, 0.0, 0.5 * seconds);
        return ramp <= 0.0 ? 1.0 : Math.Min(1.0, Math.Min(since, seconds - since) / ramp);
    }
}
