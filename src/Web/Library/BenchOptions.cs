using System.Collections.Immutable;
using System.Security.Cryptography;
using Litterfall.Domain.Catalog;

namespace Litterfall.Web.Library;

/// <summary>What the edge hands to the bench.</summary>
/// <param name="Catalog">The library built in.</param>
/// <param name="Examples">Designs shown on an empty bench and used by the demo.</param>
/// <param name="Version">Version of the program.</param>
public sealed record BenchOptions(TradeCatalog Catalog, ImmutableArray<BenchExample> Examples, string Version)
{
    /// <summary>Files of the workshop's folder: own entries, prices, stock; none without one.</summary>
    public ImmutableArray<CatalogFile> Workshop { get; init; } = [];

    /// <summary>Designs of tanks that run in the demo; none without one.</summary>
    public ImmutableArray<BenchExample> Running { get; init; } = [];

    /// <summary>Secret by which tickets of paired devices are signed; one of its own if left out.</summary>
    public ImmutableArray<byte> DeviceKey { get; init; } = [.. RandomNumberGenerator.GetBytes(32)];
}

/// <summary>A design to begin with.</summary>
/// <param name="Name">In two or three words.</param>
/// <param name="About">In half a sentence.</param>
/// <param name="Text">The design file.</param>
public sealed record BenchExample(string Name, string About, string Text);
