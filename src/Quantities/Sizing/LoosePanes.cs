using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Quantities.Sizing;

/// <summary>Panes that are not glued to the box, as far as their masses are known, kg.</summary>
/// <param name="Lid">Lid and strip; null without one or without its thickness.</param>
public sealed record LoosePanes(Figure? Lid)
{
    /// <summary>All doors; null without their kind or thickness.</summary>
    public Figure? Doors { get; init; }

    /// <summary>Face of the front that the doors take the place of, m²; null without their kind.</summary>
    public Figure? DoorOpening { get; init; }

    /// <summary>All shelves inside; null without.</summary>
    public Figure? Shelves { get; init; }

    /// <summary>What could not be weighed, in words.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>Masses that are known.</summary>
    public IEnumerable<Figure> All => new[] { Lid, Doors, Shelves }.OfType<Figure>();
}
