using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Routes;

/// <summary>
/// A second way to the odds, written from the description of the model alone: another generator, no strata,
/// a small explicit step in heat content, no curve but the plain formulas.
/// </summary>
internal sealed class BruteForceJourneys(int seed, DispatchRules rules, double lateChance)
{
    private const double Step = 120;
    private readonly Random random = new(seed);

    /// <summary>Air at workshop, hub and destination, the same all day, °C.</summary>
    public required (double Origin, double Hub, double Away) Air { get; init; }

    /// <summary>Conductance, W/K, and heat capacity, J/K.</summary>
    public required (double Conductance, double Capacity) Box { get; init; }

    /// <summary>Latent heat, J, melting point, °C, and liquid share at the start.</summary>
    public (double Joules, double Melt, double Liquid) Wax { get; init; }

    /// <summary>Power of a heat pack that never ends, W.</summary>
    public double Watts { get; init; }

    /// <summary>Share of journeys that leave a band.</summary>
    public double Out(int journeys, double low, double high)
    {
        var left = 0;
        for (var i = 0; i < journeys; i++)
        {
            var (cold, warm) = One();
            left += cold < low || warm > high ? 1 : 0;
        }

        return left / (double)journeys;
    }

    /// <summary>Hand-over 17:00, hub 22:00 to 03:00, brought 09:00 to 12:00, then the wait.</summary>
    private (double Cold, double Warm) One()
    {
        var late = random.NextDouble() < lateChance ? 24.0 : 0;
        var hubEnd = 10 + (random.NextDouble() < 0.5 ? late : 0);
        var brought = 16 + (3 * random.NextDouble()) + late;
        var end = brought + (rules.DoorstepHours * random.NextDouble());
        var sun = random.NextDouble();
        var errors = Errors();
        var wall = 1 + (0.10 * Clipped());
        var latent = Wax.Joules * (1 + (0.06 * Clipped()));
        var watts = Watts * (1 + (0.15 * Clipped()));
        var start = 21 + (0.7 * Clipped());
        var heat = (Box.Capacity * start) + (latent * Wax.Liquid);
        var (cold, warm) = (Celsius(heat, latent), Celsius(heat, latent));
        for (double s = 0; s < end * 3600; s += Step)
        {
            var hour = (s + (0.5 * Step)) / 3600;
            var air = At(hour, hubEnd, brought, sun, errors);
            heat +=
                Math.Min(Step, (end * 3600) - s)
                * ((Box.Conductance * wall * (air - Celsius(heat, latent))) + watts);
            cold = Math.Min(cold, Celsius(heat, latent));
            warm = Math.Max(warm, Celsius(heat, latent));
        }

        return (cold, warm);
    }

    private double At(double hour, double hubEnd, double brought, double sun, double[] errors)
    {
        var place =
            hour < 5 ? Air.Origin
            : hour < hubEnd ? Air.Hub
            : Air.Away;
        var wallClock = (17 + hour) % 24;
        var height = wallClock is > 6 and < 18 ? Math.Sin(Math.PI * (wallClock - 6) / 12) : 0;
        var warmer =
            hour >= brought ? rules.DoorstepSunKelvin
            : hour < 5 || hour >= hubEnd ? rules.VanSunKelvin
            : 0;
        // The forecast is of 06:00, eleven hours before hand-over.
        var days = Math.Max(0, ((11 + hour) / 24) - 1);
        var spread = rules.ForecastErrorKelvin + (rules.ForecastErrorPerDayKelvin * days);
        var k = (int)(hour / 6);
        var error = errors[k] + ((errors[k + 1] - errors[k]) * ((hour / 6) - k));
        return place + (warmer * sun * height) + (spread * error);
    }

    private double[] Errors()
    {
        var like = Math.Exp(-6.0 / 24);
        var errors = new double[14];
        errors[0] = Normal();
        for (var i = 1; i < errors.Length; i++)
        {
            errors[i] = (like * errors[i - 1]) + (Math.Sqrt(1 - (like * like)) * Normal());
        }

        return errors;
    }

    private double Celsius(double heat, double latent)
    {
        var solid = Box.Capacity * Wax.Melt;
        return heat < solid ? heat / Box.Capacity
            : heat < solid + latent ? Wax.Melt
            : (heat - latent) / Box.Capacity;
    }

    private double Clipped() => Math.Clamp(Normal(), -2.5, 2.5);

    /// <summary>Box and Muller 1958.</summary>
    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
