using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Goods;

/// <summary>Entries of the library as goods of a workshop.</summary>
public static class LibraryGoods
{
    /// <summary>
    /// The good an entry is; null for what is not bought or kept, such as packs and lamps' spectra.
    /// </summary>
    /// <param name="entry">The entry.</param>
    public static Good? From(CatalogEntry entry) =>
        Counted(entry) is var (kind, unit)
            ? new Good
            {
                Key = entry.Key,
                Name = entry.Name,
                Kind = kind,
                Unit = unit,
            }
            : null;

    /// <summary>
    /// The good somebody names: one that is kept, else one of the library; null for neither.
    /// </summary>
    /// <param name="named">Name or key, blanks as hyphens; the library's other names count too.</param>
    /// <param name="kept">Goods that are kept.</param>
    /// <param name="catalog">The library.</param>
    public static Good? Find(string named, IEnumerable<Good> kept, TradeCatalog catalog) =>
        kept.FirstOrDefault(g => IsSame(g.Key, named) || IsSame(g.Name, named))
        ?? catalog
            .Entries.Where(e =>
                IsSame(e.Key, named) || IsSame(e.Name, named) || e.Synonyms.Any(s => IsSame(s, named))
            )
            .Select(From)
            .FirstOrDefault(g => g is not null);

    private static bool IsSame(string one, string other) =>
        string.Equals(
            TradeCatalog.Canonical(one),
            TradeCatalog.Canonical(other),
            StringComparison.OrdinalIgnoreCase
        );

    private static (GoodKind Kind, StockUnit Unit)? Counted(CatalogEntry entry) =>
        entry switch
        {
            RecipeEntry => (GoodKind.Mix, StockUnit.Liters),
            SoilEntry or AggregateEntry or MossEntry or LitterEntry => (GoodKind.Bulk, StockUnit.Liters),
            PlantEntry => (GoodKind.Plant, StockUnit.Pieces),
            AnimalEntry => (GoodKind.Animal, StockUnit.Pieces),
            CrewEntry or FeederEntry => (GoodKind.Culture, StockUnit.Pieces),
            MeshEntry => (GoodKind.Sheet, StockUnit.Meters),
            SheetEntry or PanelEntry or BackgroundEntry => (GoodKind.Sheet, StockUnit.Pieces),
            EquipmentEntry { Sold: not null } => (GoodKind.Equipment, StockUnit.Meters),
            EquipmentEntry or LampEntry => (GoodKind.Equipment, StockUnit.Pieces),
            HardscapeEntry => (GoodKind.Bulk, StockUnit.Kilograms),
            AdhesiveEntry => (GoodKind.Equipment, StockUnit.Pieces),
            _ => null,
        };
}
