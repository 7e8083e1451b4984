namespace Litterfall.Physics.Crew;

/// <summary>
/// Linear degree-day development: time = K/(T − T0). Valid from about 5 K above the threshold T0 up to the
/// highest temperature at which rates still rise.
/// </summary>
public static class DegreeDays
{
    /// <summary>Development time at a constant temperature.</summary>
    /// <param name="degreeDays">K, °C·d, above 0.</param>
    /// <param name="thresholdCelsius">T0, °C.</param>
    /// <param name="temperatureCelsius">T, °C, above T0.</param>
    /// <returns>Days.</returns>
    /// <exception cref="ArgumentOutOfRangeException">K is not positive or T is not above T0.</exception>
    public static double DevelopmentDays(
        double degreeDays,
        double thresholdCelsius,
        double temperatureCelsius
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degreeDays);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(temperatureCelsius, thresholdCelsius);
        return degreeDays / (temperatureCelsius - thresholdCelsius);
    }
}
