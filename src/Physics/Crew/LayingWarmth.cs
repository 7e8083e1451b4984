namespace Litterfall.Physics.Crew;

/// <summary>
/// At which warmth of the ground a crew animal lays, as a share of what it lays at its best.
/// </summary>
/// <remarks>
/// What is read are ends ("able to reproduce between", "unable to produce offspring at"), no slopes. Within
/// half a kelvin inside of an end laying falls to nothing (own choice: the mean of a day is known no better,
/// and a floor must not hang on a hundredth of a kelvin). Where a source tells of fewer eggs the warmer it
/// is, the fall is even from there to the end.
/// </remarks>
public sealed record LayingWarmth
{
    /// <summary>Width of an end without a slope of its own, K (own choice).</summary>
    public const double EdgeKelvin = 0.5;

    /// <summary>No end at all.</summary>
    public static readonly LayingWarmth Any = new();

    /// <summary>Nothing is laid up to here, °C.</summary>
    public double FromCelsius { get; init; } = double.NegativeInfinity;

    /// <summary>Nothing is laid from here on, °C.</summary>
    public double ToCelsius { get; init; } = double.PositiveInfinity;

    /// <summary>The warmer the fewer from here on, °C; null where only the end is known.</summary>
    public double? LessFromCelsius { get; init; }

    /// <summary>Share of what is laid at the best warmth, 0 to 1.</summary>
    /// <param name="celsius">Mean temperature of the day, °C.</param>
    public double Share(double celsius)
    {
        double rise = Math.Clamp((celsius - FromCelsius) / EdgeKelvin, 0.0, 1.0);
        double width = LessFromCelsius is { } less ? ToCelsius - less : EdgeKelvin;
        return double.IsInfinity(ToCelsius)
            ? rise
            : rise * Math.Clamp((ToCelsius - celsius) / width, 0.0, 1.0);
    }
}
