namespace Litterfall.Physics.Crew;

/// <summary>
/// Linear degree-day development: time = K/(T − T0). Valid from about 5 K above the threshold T0 up to the
/// highest temperature at which rates still rise.
/// </summary>
public static class DegreeDays
{
    /// <summary>Lower threshold from two temperatures and the ratio of their rates.</summary>
    /// <param name="coolCelsius">The lower temperature, °C.</param>
    /// <param name="warmCelsius">The higher temperature, °C.</param>
    /// <param name="rateRatio">Rate at the higher over rate at the lower temperature, above 1.</param>
    /// <returns>T0, °C, from (warm − T0)/(cool − T0) = ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures do not rise or the ratio is not above
    /// 1.</exception>
    public static double LowerThresholdCelsius(double coolCelsius, double warmCelsius, double rateRatio)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(warmCelsius, coolCelsius);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(rateRatio, 1.0);
        return ((rateRatio * coolCelsius) - warmCelsius) / (rateRatio - 1.0);
    }

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
