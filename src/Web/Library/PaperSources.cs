using Litterfall.Store;

namespace Litterfall.Web.Library;

/// <summary>What papers are written from.</summary>
/// <param name="Store">The designs.</param>
/// <param name="Library">The library.</param>
/// <param name="Options">The bench.</param>
/// <param name="Shelf">Papers that were written before.</param>
public sealed record PaperSources(
    BenchStore Store,
    BenchLibrary Library,
    BenchOptions Options,
    PaperShelf Shelf
);
