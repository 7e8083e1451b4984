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
        for (int i = 0; i < steps; i++)
        {
            double middle = (i + 0.5) * step;
            double celsius = Celsius(capacity, rising, drive.LatentFactor, content);
            above += celsius > level ? step : 0.0;
            double air = At(drive.AmbientSeconds, drive.AmbientCelsius, middle);
            double watts = drive.HeatSeconds.IsEmpty ? 0.0 : At(drive.HeatSeconds, drive.HeatWatts, middle);
            content += step * ((drive.Conductance * (air - celsius)) + watts + drive.SteadyWatts);
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

    private static double At(ReadOnlySpan<double> times, ReadOnlySpan<double> values, double at)
    {
        int next = 0;
        while (next < times.Length && times[next] <= at)
        {
            next++;
        }

        return next == 0 ? values[0]
            : next == times.Length ? values[^1]
            : values[next - 1]
                + ((values[next] - values[next - 1]) * (at - times[next - 1]) / (times[next] - times[next - 1]));
    }
}
