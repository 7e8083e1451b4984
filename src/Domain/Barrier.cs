using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Mesh between drainage and soil.</summary>
[Means("Mesh between drainage and soil.")]
public sealed record Barrier
{
    /// <summary>Mesh.</summary>
    [Means("Mesh material."), Names(EntryKind.Mesh)]
    public required string Material { get; init; }

    /// <summary>Upturn on all edges.</summary>
    [Means("Upturn on all four edges; 0 for a flat piece.")]
    public Typed<Length>? Upturn { get; init; }

    /// <summary>A cut piece already there.</summary>
    [Means("A cut piece already on hand.")]
    public Piece? OnHand { get; init; }
}

/// <summary>A rectangular piece.</summary>
[Means("A rectangular piece.")]
public sealed record Piece
{
    /// <summary>Along the front.</summary>
    [Means("Along the front."), AtMost(3)]
    public required Seq<Typed<Length>> Length { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back."), AtMost(3)]
    public required Seq<Typed<Length>> Depth { get; init; }
}
