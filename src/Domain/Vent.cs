using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>An opening for air.</summary>
[Means("An opening for air.")]
public sealed record Vent
{
    /// <summary>Area.</summary>
    [Means("Open area; or give length and width.")]
    public Typed<Area>? Area { get; init; }

    /// <summary>Length.</summary>
    [Means("Length of the opening.")]
    public Typed<Length>? Length { get; init; }

    /// <summary>Width.</summary>
    [Means("Width of the opening.")]
    public Typed<Length>? Width { get; init; }

    /// <summary>Height of its middle above the base inside.</summary>
    [Means("Height of its middle above the base inside.")]
    public Typed<Length>? Height { get; init; }

    /// <summary>Mesh.</summary>
    [Means("Mesh over the opening, or none."), Names(EntryKind.Mesh)]
    public string? Mesh { get; init; }

    /// <summary>Side.</summary>
    [Means("The side it is in.")]
    public Side? Side { get; init; }
}
