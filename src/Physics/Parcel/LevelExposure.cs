namespace Litterfall.Physics.Parcel;

/// <summary>How long the contents were above and below a temperature, and since when.</summary>
/// <param name="Celsius">The temperature, °C.</param>
public record struct LevelExposure(double Celsius)
{
    /// <summary>Gets or sets the time above it, s.</summary>
    public double SecondsAbove { get; set; }

    /// <summary>Gets or sets the time below it, s.</summary>
    public double SecondsBelow { get; set; }

    /// <summary>Gets or sets when it was first above, s from the start; infinite for never.</summary>
    public double FirstAbove { get; set; } = double.PositiveInfinity;

    /// <summary>Gets or sets when it was first below, s from the start; infinite for never.</summary>
    public double FirstBelow { get; set; } = double.PositiveInfinity;
}
