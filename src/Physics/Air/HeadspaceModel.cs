using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>How finely time is cut.</summary>
/// <param name="FirstStepSeconds">First step of a span, s.</param>
/// <param name="LongestStepSeconds">Longest step, s.</param>
/// <param name="ErrorKelvin">
/// Error allowed a step, K, vapor counted by its latent heat; infinite for steps of one length.
/// </param>
public sealed record HeadspaceControl(double FirstStepSeconds, double LongestStepSeconds, double ErrorKelvin)
{
    /// <summary>Forecasts: 10 s after something was switched, then up to an hour.</summary>
    public static readonly HeadspaceControl Forecast = new(10.0, 3600.0, 0.02);

    /// <summary>Steps of one length, the last of a span shortened.</summary>
    /// <param name="seconds">Length, s.</param>
    public static HeadspaceControl Even(double seconds) => new(seconds, seconds, double.PositiveInfinity);
}

/// <summary>
/// The headspace: well-mixed air, panes with films, the ground, leaves, joined by convection, vapor and long
/// waves, open to the room. Immutable; each span returns the next state and its balance of water and heat.
/// Valid for one temperature and humidity of the air in the whole box.
/// </summary>
/// <param name="shape">What does not change.</param>
/// <param name="laws">Coefficients.</param>
public sealed class HeadspaceModel(HeadspaceShape shape, ExchangeLaws laws)
{
    /// <summary>What does not change.</summary>
    public HeadspaceShape Shape => shape;

    /// <summary>A state of one temperature throughout and no films.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="relativeHumidity">Relative humidity, 0 to 1.</param>
    public HeadspaceState Even(double celsius, double relativeHumidity) =>
        new(
            0.0,
            celsius,
            MoistAir.HumidityRatio(celsius, relativeHumidity, shape.Pascals),
            [.. shape.Surfaces.SelectMany(s => s.CapacityJoulesPerKelvin.Select(_ => celsius))],
            [.. shape.Surfaces.Select(_ => 0.0)]
        );

    /// <summary>Runs a span in which nothing is switched.</summary>
    /// <param name="state">State at its start.</param>
    /// <param name="drive">What drives it.</param>
    /// <param name="untilSeconds">Its end, s.</param>
    /// <param name="control">How finely time is cut.</param>
    /// <param name="cancel">Cancels between steps.</param>
    /// <returns>State and totals; they are those of the time it came to where it stopped early.</returns>
    public HeadspaceSpan Advance(
        HeadspaceState state,
        HeadspaceDrive drive,
        double untilSeconds,
        HeadspaceControl control,
        CancellationToken cancel = default
    ) => Begin(state, control).Advance(drive, untilSeconds, null, cancel);

    /// <summary>A run that spans are asked of one after the other.</summary>
    internal HeadspaceRun Begin(HeadspaceState state, HeadspaceControl control) =>
        new(shape, laws, state, control);
}
