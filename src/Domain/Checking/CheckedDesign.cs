using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Checking;

/// <summary>
/// A design whose names are resolved and whose parts fit together; only <see cref="DesignChecker"/> makes
/// one.
/// </summary>
public sealed class CheckedDesign
{
    private readonly ImmutableDictionary<string, CatalogEntry> resolved;

    internal CheckedDesign(
        DesignDocument document,
        TradeCatalog catalog,
        ImmutableDictionary<string, CatalogEntry> resolved
    )
    {
        Document = document;
        Catalog = catalog;
        this.resolved = resolved;
    }

    /// <summary>The file.</summary>
    public DesignDocument Document { get; }

    /// <summary>What it says.</summary>
    public Design Design => Document.Design;

    /// <summary>What the files it names hold.</summary>
    public DesignFiles Files { get; internal init; } = DesignFiles.None;

    /// <summary>What the logger in its room recorded; null without one.</summary>
    public RoomLog? RoomLog => Files.RoomLog;

    /// <summary>The catalog it was checked against.</summary>
    public TradeCatalog Catalog { get; }

    /// <summary>Coefficients of the models that are to be used with other values; none by default.</summary>
    public CoefficientChanges Coefficients { get; private init; } = CoefficientChanges.None;

    /// <summary>The same design computed with other coefficients, to ask what they move.</summary>
    /// <param name="changes">The other values.</param>
    public CheckedDesign With(CoefficientChanges changes) =>
        new(Document, Catalog, resolved) { Files = Files, Coefficients = changes };

    /// <summary>
    /// The same design with another value in a catalog entry that it uses, to ask what that moves.
    /// </summary>
    /// <param name="entry">The entry with the other value; it goes in the place of its key.</param>
    public CheckedDesign With(CatalogEntry entry) =>
        new(
            Document,
            Catalog.With(entry),
            resolved.SetItems(
                resolved
                    .Where(pair => pair.Value.Key == entry.Key)
                    .Select(pair => KeyValuePair.Create(pair.Key, entry))
            )
        )
        {
            Files = Files,
            Coefficients = Coefficients,
        };

    /// <summary>The catalog entries it names, each once.</summary>
    public IEnumerable<CatalogEntry> Entries => resolved.Values.DistinctBy(e => e.Key);

    /// <summary>The catalog entry named at a path such as "floor.soil.recipe".</summary>
    /// <exception cref="KeyNotFoundException">Nothing is named there.</exception>
    public CatalogEntry Entry(string path) => resolved[path];

    /// <summary>The catalog entry named at a path, or null.</summary>
    public CatalogEntry? Find(string path) => resolved.GetValueOrDefault(path);

    /// <summary>The entry of a kind named at a path such as "box.material".</summary>
    /// <exception cref="KeyNotFoundException">Nothing is named there.</exception>
    /// <exception cref="InvalidCastException">An entry of another kind is named there.</exception>
    public T Entry<T>(string path)
        where T : CatalogEntry => (T)resolved[path];

    /// <summary>The entry named at a path; null where none or one of another kind is.</summary>
    public T? Find<T>(string path)
        where T : CatalogEntry => resolved.GetValueOrDefault(path) as T;

    /// <summary>A typed value as a figure that names its place in the file.</summary>
    public Figure Figure<T>(string path, string name, Typed<T> typed, Unit unit)
        where T : struct, IQuantity<T>
    {
        var line = Document.LineOf(path);
        var place = line.Length == 0 ? path : $"{path}, {line}";
        return Figures.Figure.Given(
            name,
            typed.Si,
            unit,
            new Citation("design", place, Provenance.Entered),
            $"typed as '{typed.Text}'"
        );
    }

    /// <summary>A whole number of the design as a figure.</summary>
    public Figure Count(string path, string name, int count)
    {
        var line = Document.LineOf(path);
        var place = line.Length == 0 ? $"{path}, left out" : $"{path}, {line}";
        return Figures.Figure.Given(name, count, Unit.One, new Citation("design", place, Provenance.Entered));
    }
}
