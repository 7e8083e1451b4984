namespace Litterfall.Domain.Tanks;

/// <summary>A single reading as a live sensor sends it.</summary>
/// <param name="Place">Tank, or what else it hangs in.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Unit">Unit of the value as it is kept: °C, %.</param>
/// <param name="Value">The value.</param>
/// <param name="At">When, UTC.</param>
public sealed record LiveReading(string Place, LogQuantity Quantity, string Unit, double Value, DateTime At);
