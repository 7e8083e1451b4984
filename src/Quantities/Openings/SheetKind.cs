using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Quantities.Openings;

/// <summary>What a sheet is by its density: glass has 2500 kg/m³, plastics at most 1600.</summary>
public static class SheetKind
{
    private const double LightestGlass = 2000;

    /// <summary>True for acrylic, polycarbonate and other plastics.</summary>
    /// <param name="sheet">A sheet; glass where it is not known.</param>
    public static bool IsPlastic(SheetEntry? sheet) => sheet?.Density?.Si < LightestGlass;
}
