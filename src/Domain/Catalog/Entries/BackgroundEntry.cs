using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Cork, foam or fiber behind the planting.</summary>
public sealed record BackgroundEntry : PanelEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Background;

    /// <summary>Usual thickness, m.</summary>
    public Figure? Thickness => Number("thickness");

    /// <summary>Area a cartridge of glue holds, m².</summary>
    public Figure? AdhesiveCoverage => Number("adhesiveCoverage");

    /// <summary>Time the glue cures, s.</summary>
    public Figure? CureTime => Number("cureDays");

    /// <summary>Clearance it is cut smaller by, m.</summary>
    public Figure? CutClearance => Number("cutClearance");

    /// <summary>Share of visible light it throws back.</summary>
    public Figure? Reflectance => Number("reflectance");

    /// <summary>Key of the foam it is poured from; none for one that is cut.</summary>
    public CatalogText? PouredFrom => Text("pouredFrom");

    /// <summary>What to mind when handling it.</summary>
    public CatalogText? Caution => Text("caution");
}
