using Litterfall.Domain.Figures;

namespace Litterfall.Judging.Rules;

/// <summary>
/// How near a limit a computed or habitual number cannot be told from it: own choices. A limit missed by less
/// is a note that says so.
/// </summary>
public static class ModelError
{
    /// <summary>
    /// Warmth of air, K: rooms are told in whole degrees and sensors in half ones.
    /// </summary>
    public const double Kelvins = 0.5;

    /// <summary>Relative humidity: what a good sensor is off by.</summary>
    public const double Humidity = 0.02;

    /// <summary>Water of a day: what a keeper's own measure of a nozzle cannot tell from balance.</summary>
    public const double WaterShare = 0.05;

    /// <summary>Sizes plants grow to, m: rows tell them to the nearest half inch.</summary>
    public const double PlantMeters = 0.01;

    /// <summary>True where a warmth is off its limit by no more than the error.</summary>
    /// <param name="kelvins">Distance from the limit, K.</param>
    public static bool IsWarmthNear(double kelvins) => Math.Abs(kelvins) <= Kelvins + 1e-9;

    /// <summary>True where a humidity is off its limit by no more than the error.</summary>
    /// <param name="share">Humidity, 0 to 1.</param>
    /// <param name="limit">The limit.</param>
    public static bool IsHumidityNear(double share, Figure limit) =>
        Math.Abs(share - limit.Si) <= Humidity + 1e-9;

    /// <summary>The sentence behind such a finding; nothing elsewhere.</summary>
    /// <param name="isNear">True where the limit is missed by less than the error.</param>
    public static string Words(bool isNear) => isNear ? " That is within the error of the numbers." : "";
}
