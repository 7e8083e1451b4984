using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;

namespace Litterfall.Quantities.Cutting;

/// <summary>The sheet a pane is of.</summary>
internal static class Sheets
{
    /// <summary>The one a key names, else that of the walls, else float glass.</summary>
    /// <param name="design">The design.</param>
    /// <param name="path">The key.</param>
    public static SheetEntry? Of(CheckedDesign design, string path) =>
        design.Find<SheetEntry>(path)
        ?? design.Find<SheetEntry>("box.material")
        ?? design.Catalog.Find<SheetEntry>("float-glass");
}
