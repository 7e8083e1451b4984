using Litterfall.Physics.Parcel;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// A parcel stepped on by its heat content in small even steps: an explicit method that knows nothing of
/// plateaus and events, for the temperature is read off the heat content anew each time.
/// </summary>
/// <remarks>The error falls with the step; at a second it is below a hundredth of a kelvin here.</remarks>
public static class EnthalpyEuler
{
    /// <summary>Runs it.</summary>
    /// <param name="capacity">Heat capacity, J/K.</param>
    /// <param name="packs">The packs.</param>
    /// <param name="drive">The way.</param>
    /// <param name="stepSeconds">Step, s.</param>
    /// <param name="level">A temperature to count the time above of, °C.</param>
    /// <returns>Temperature and heat taken up by melting at the end, and time above the level.</returns>
    public static (double Celsius, double Latent, double SecondsAbove) Run(
        double capacity,
        PhaseStore[] packs,
        in ParcelDrive drive,
        double stepSeconds,
        double level
    )
    {
        PhaseStore[] rising = [.. packs.OrderBy(p => p.MeltCelsius)];
        double content = capacity * drive.StartCelsius;
        foreach (var pack in rising)
        {
            content += pack.LatentJoules * pack.StartLiquid * drive.LatentFactor;
        }

        int steps = (int)Math.Ceiling(drive.EndSeconds / stepSeconds);
        double step = drive.EndSeconds / steps;
        double above = 0.0;
        var (air, heat) = (0, 0);
        for (int i = 0; i < steps; i++)
        {
            double middle = (i + 0.5) * step;
            double celsius = Celsius(capacity, rising, drive.LatentFactor, content);
            above += celsius > level ? step : 0.0;
            double outside = At(drive.AmbientSeconds, drive.AmbientCelsius, middle, ref air);
            double watts = At(drive.HeatSeconds, drive.HeatWatts, middle, ref heat);
            content += step * ((drive.Conductance * (outside - celsius)) + watts + drive.SteadyWatts);
        }

        double end = Celsius(capacity, rising, drive.LatentFactor, content);
        return (end, content - (capacity * end), above);
    }

    private static double Celsius(double capacity, PhaseStore[] rising, double factor, double content)
    {
        foreach (var pack in rising)
        {
            double start = capacity * pack.MeltCelsius;
            if (content <= start)
            {
                break;
            }

            if (content <= start + (pack.LatentJoules * factor))
            {
                return pack.MeltCelsius;
            }

            content -= pack.LatentJoules * factor;
        }

        return content / capacity;
    }

    /// <summary>A curve at a time that does not fall from call to call.</summary>
    private static double At(ReadOnlySpan<double> times, ReadOnlySpan<double> values, double at, ref int next)
    {
        while (next < times.Length && times[next] <= at)
        {
            next++;
        }

        if (times.IsEmpty || next == 0 || next == times.Length)
        {
            return times.IsEmpty ? 0.0 : values[next == 0 ? 0 : next - 1];
        }

        double share = (at - times[next - 1]) / (times[next] - times[next - 1]);
        return values[next - 1] + (share * (values[next] - values[next - 1]));
    }
}
