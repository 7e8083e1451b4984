using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>The grid of a raised floor.</summary>
public sealed record GridEntry : PorousEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Grid;

    /// <summary>Thickness, m.</summary>
    public Figure? Thickness => Number("thickness");

    /// <summary>Distance of its cells, m.</summary>
    public Figure? CellPitch => Number("cellPitch");

    /// <summary>Share of its area that is open.</summary>
    public Figure? OpenShare => Number("openShare");

    /// <summary>Mass over its area, kg/m².</summary>
    public Figure? AreaMass => Number("areaMass");

    /// <summary>Clearance it is cut smaller by, m.</summary>
    public Figure? CutClearance => Number("cutClearance");
}
