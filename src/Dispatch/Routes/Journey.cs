namespace Litterfall.Dispatch.Routes;

/// <summary>One journey that may come: the air along it, and how the pieces turn out.</summary>
public sealed record Journey
{
    /// <summary>Times of the air, s from hand-over; two of one time are a step.</summary>
    public required double[] Seconds { get; init; }

    /// <summary>Air at these times, °C.</summary>
    public required double[] Celsius { get; init; }

    /// <summary>End: somebody takes it in, s.</summary>
    public required double EndSeconds { get; init; }

    /// <summary>Contents when it was closed, °C.</summary>
    public required double StartCelsius { get; init; }

    /// <summary>Factor on the conductance of the carton.</summary>
    public required double Wall { get; init; }

    /// <summary>Factor on the latent heat of packs.</summary>
    public required double Latent { get; init; }

    /// <summary>Factor on the power of heat packs.</summary>
    public required double Heat { get; init; }

    /// <summary>Air at a time, °C.</summary>
    /// <param name="seconds">From hand-over, s.</param>
    public double At(double seconds)
    {
        var next = 0;
        while (next < Seconds.Length && Seconds[next] <= seconds)
        {
            next++;
        }

        if (next == 0 || next == Seconds.Length)
        {
            return Celsius[next == 0 ? 0 : next - 1];
        }

        var share = (seconds - Seconds[next - 1]) / (Seconds[next] - Seconds[next - 1]);
        return Celsius[next - 1] + (share * (Celsius[next] - Celsius[next - 1]));
    }
}
