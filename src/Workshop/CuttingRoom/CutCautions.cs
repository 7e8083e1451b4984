using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>What can hurt at the cutting table.</summary>
public static class CutCautions
{
    /// <summary>Cautions of a material and its tool, in sentences.</summary>
    /// <param name="entry">Entry of the library; null where it has none.</param>
    /// <param name="tool">Tool.</param>
    public static IEnumerable<string> For(CatalogEntry? entry, CutTool tool)
    {
        if (UsualRules.IsGlass(entry))
        {
            yield return "Glass: wear cut-resistant gloves and eye protection; break it over the edge of a "
                + "flat table, with nobody beside you.";
            yield return "Raw edges cut: grind or tape every edge before anything is carried. Sweep "
                + "splinters up, never wipe them by hand.";
            yield return "Toughened glass cannot be cut: it shatters. Look for the mark in a corner first.";
            yield return "Panes that hold back water are for a glazier: sizes here are estimates.";
        }

        if (tool == CutTool.Saw)
        {
            yield return "Saw: eye and hearing protection, dust mask, push stick; follow its maker's rules "
                + "for the guard.";
        }

        if (tool == CutTool.Laser)
        {
            yield return "Laser: never leave it running alone; extract the fumes; never cut PVC, it gives "
                + "off acid gas.";
        }

        if (entry is MeshEntry { Metal.Text: "yes" })
        {
            yield return "Metal mesh: gloves; cut wires prick.";
        }
    }
}
