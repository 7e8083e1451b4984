using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Cleaning of plants and tools.</summary>
[Means("Cleaning of plants and tools.")]
public sealed record Hygiene
{
    /// <summary>Label strength of the bleach.</summary>
    [Means("Sodium hypochlorite on the label of the bleach, such as 6 %.")]
    public Typed<Share>? Bleach { get; init; }

    /// <summary>Volume of the bath.</summary>
    [Means("Volume of the bath; 10 L if left out.")]
    public Typed<Volume>? Bath { get; init; }
}
