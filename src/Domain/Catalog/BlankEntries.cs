using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Domain.Catalog;

/// <summary>An entry of each kind with nothing in it, which a reader fills.</summary>
internal static class BlankEntries
{
    /// <summary>The empty entry of a kind.</summary>
    public static CatalogEntry Of(EntryKind kind) =>
        Living(kind)
        ?? OfTheFloor(kind)
        ?? OfTheBox(kind)
        ?? throw new ArgumentOutOfRangeException(nameof(kind));

    private static CatalogEntry? Living(EntryKind kind) =>
        kind switch
        {
            EntryKind.Animal => new AnimalEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Crew => new CrewEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Feeder => new FeederEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Plant => new PlantEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            _ => null,
        };

    private static CatalogEntry? OfTheFloor(EntryKind kind) =>
        kind switch
        {
            EntryKind.Aggregate => new AggregateEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Grid => new GridEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Litter => new LitterEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Mesh => new MeshEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Moss => new MossEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Recipe => new RecipeEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Soil => new SoilEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            _ => null,
        };

    private static CatalogEntry? OfTheBox(EntryKind kind) =>
        kind switch
        {
            EntryKind.Adhesive => new AdhesiveEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Background => new BackgroundEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Equipment => new EquipmentEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Hardscape => new HardscapeEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Lamp => new LampEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Pack => new PackEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            EntryKind.Sheet => new SheetEntry
            {
                Key = "",
                Name = "",
                Values = [],
            },
            _ => null,
        };
}
