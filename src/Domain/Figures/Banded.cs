namespace Litterfall.Domain.Figures;

/// <summary>A simulated number with the least and the most it may be; null bands where it has none.</summary>
public sealed record Banded(Figure Value, Figure? Low, Figure? High);
