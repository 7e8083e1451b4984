using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Figures;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>How a material is usually cut, until the workshop enters its own figures.</summary>
public static class UsualRules
{
    /// <summary>Narrowest strip that is broken off glass, mm: common practice 15 to 20.</summary>
    private const double GlassStrip = 15;

    /// <summary>What grinding by hand takes off an edge, mm: common practice 0.2 to 0.5.</summary>
    private const double Arris = 0.35;

    private const int GlassStages = 3;

    /// <summary>The usual rules of a good.</summary>
    /// <param name="good">Key of the good.</param>
    /// <param name="entry">Its entry of the library; null where it has none.</param>
    public static CuttingRules For(string good, CatalogEntry? entry)
    {
        var rules = entry switch
        {
            SheetEntry sheet when IsGlass(sheet) => Glass(sheet),
            PanelEntry panel => Panel(panel),
            MeshEntry => new CuttingRules
            {
                Good = good,
                Tool = CutTool.Shears,
                IsRoll = true,
                Source = "common practice: shears take no width, turn-up is in the sizes",
            },
            GridEntry => new CuttingRules
            {
                Good = good,
                Tool = CutTool.Knife,
                Source = "common practice: snipped between two cells",
            },
            _ => new CuttingRules { Good = good, Source = "no figures known: enter your own" },
        };
        return rules with { Good = good };
    }

    /// <summary>True for panes of glass: they can cut, and hold water only after a glazier looked.</summary>
    /// <param name="entry">Entry of the library.</param>
    public static bool IsGlass(CatalogEntry? entry) =>
        entry is SheetEntry && entry.Key.EndsWith("glass", StringComparison.Ordinal);

    /// <summary>True for glass that shatters when it is scored: it is ordered to size before it is toughened.
    /// </summary>
    /// <param name="entry">Entry of the library.</param>
    public static bool IsToughened(CatalogEntry? entry) => entry?.Key == "toughened-glass";

    private static CuttingRules Glass(SheetEntry sheet) =>
        new()
        {
            Good = sheet.Key,
            IsCutHere = false,
            Tool = CutTool.ScoreAndSnap,
            Kerf = Millimeters(sheet.Kerf),
            Trim = Millimeters(sheet.Trim),
            NarrowestStrip = GlassStrip,
            EdgeAllowance = Arris,
            Stages = GlassStages,
            Source =
                $"trim {Trust(sheet.Trim)}; strips of 15 mm common practice; edges from memory, "
                + "source not checked",
        };

    private static CuttingRules Panel(PanelEntry panel) =>
        new()
        {
            Good = panel.Key,
            Tool = Millimeters(panel.Kerf) > 0 ? CutTool.Saw : CutTool.Knife,
            Kerf = Millimeters(panel.Kerf),
            Trim = Millimeters(panel.Trim),
            Source = $"width of the cut {Trust(panel.Kerf)}, trim {Trust(panel.Trim)}",
        };

    private static double Millimeters(Figure? figure) =>
        figure is null ? 0 : Math.Round(figure.Si * 1000, 2, MidpointRounding.AwayFromZero);

    private static string Trust(Figure? figure) =>
        figure is null ? "not known, taken as 0" : figure.Trust.Spoken();
}
