using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A mix by loose parts, or one bought ready.</summary>
public sealed record RecipeEntry : GroundEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Recipe;

    /// <summary>Air left in a drained pot of it, by volume.</summary>
    public Figure? AirSpace => Number("airSpace");
}
