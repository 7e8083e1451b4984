using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Silicone, glue or expanding foam.</summary>
public sealed record AdhesiveEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Adhesive;

    /// <summary>Volume a can of foam fills once it has risen, m³.</summary>
    public Figure? CanYield => Number("yield");

    /// <summary>Thickest pour of foam that cures through, m.</summary>
    public Figure? LiftThickness => Number("liftThickness");

    /// <summary>Time to cure before planting, s.</summary>
    public Figure? CureBeforePlanting => Number("cureDaysBeforePlanting");

    /// <summary>Time to cure before animals move in, s.</summary>
    public Figure? CureBeforeAnimals => Number("cureDaysBeforeAnimals");

    /// <summary>Time to cure before a joint is loaded, s.</summary>
    public Figure? CureBeforeLoad => Number("cureDaysBeforeLoad");

    /// <summary>Density of the cured foam, kg/m³.</summary>
    public Figure? Density => Number("density");

    /// <summary>What to mind when handling it.</summary>
    public CatalogText? Caution => Text("caution");

    /// <summary>Content of a cartridge, m³.</summary>
    public Figure? Cartridge => Number("cartridge");

    /// <summary>Width of a bead, m.</summary>
    public Figure? BeadWidth => Number("beadWidth");

    /// <summary>Volume of a bead over its length, m².</summary>
    public Figure? BeadVolume => Number("beadVolume");

    /// <summary>Distance of spots of glue, m.</summary>
    public Figure? SpotSpacing => Number("spotSpacing");

    /// <summary>Volume of one spot of glue, m³.</summary>
    public Figure? SpotVolume => Number("spotVolume");

    /// <summary>Gap of a glued joint of glass, m.</summary>
    public Figure? JointGap => Number("jointGap");
}
