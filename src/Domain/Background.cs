using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>What covers walls on the inside.</summary>
[Means("Panels, tiles or carved foam on the walls.")]
public sealed record Background
{
    /// <summary>Material.</summary>
    [Means("Material of the background."), Names(EntryKind.Background)]
    public required string Material { get; init; }

    /// <summary>Thickness.</summary>
    [Means("Mean thickness; it takes floor from the box.")]
    public required Typed<Length> Thickness { get; init; }

    /// <summary>Covered sides.</summary>
    [Means("Covered sides; the back if left out.")]
    public Seq<Side> Sides { get; init; } = [];

    /// <summary>Whether it stands on the base glass or on the floor layers.</summary>
    [Means("Lower edge above the base inside; 0 if left out.")]
    public Typed<Length>? From { get; init; }

    /// <summary>How foam is poured.</summary>
    [Means("How foam is poured, where it is poured here.")]
    public Pour? Poured { get; init; }
}

/// <summary>Pouring of foam.</summary>
[Means("Pouring of expanding foam.")]
public sealed record Pour
{
    /// <summary>Thickness of one pour.</summary>
    [Means("Thickness of one pour.")]
    public Typed<Length>? Lift { get; init; }

    /// <summary>Poured into a closed space.</summary>
    [Means("true when it is poured into a closed space, such as between trapped wood and a pane.")]
    public bool Enclosed { get; init; }
}
