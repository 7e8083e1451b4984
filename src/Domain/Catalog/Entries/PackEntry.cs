using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A pack as it is sold.</summary>
public sealed record PackEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Pack;

    /// <summary>Key of the material it holds.</summary>
    public string? Material { get; init; }

    /// <summary>Volume printed on the bag, m³.</summary>
    public Figure? Volume => Number("volume");

    /// <summary>Volume it holds loose, m³.</summary>
    public Figure? LooseVolume => Number("litres");

    /// <summary>Mass it holds, kg.</summary>
    public Figure? Mass => Number("kilograms");

    /// <summary>Volume once soaked over the volume of the pack.</summary>
    public Figure? Expansion => Number("expansion");

    /// <summary>Volume of the block once soaked, m³.</summary>
    public Figure? Opened => Number("opened");

    /// <summary>Pieces or animals it holds.</summary>
    public Figure? Pieces => Number("pieces");

    /// <summary>Width of the sheet or roll, m.</summary>
    public Figure? Width => Number("width");

    /// <summary>Length of the sheet or roll, m.</summary>
    public Figure? Length => Number("length");

    /// <summary>Thickness of the sheet, m.</summary>
    public Figure? Thickness => Number("thickness");

    /// <summary>Volume its foam fills once it has risen, m³.</summary>
    public Figure? FoamYield => Number("yield");
}
