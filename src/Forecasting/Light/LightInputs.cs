using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// What the light of a box rests on besides its lamps and its edges, as figures of the library.
/// </summary>
internal static class LightInputs
{
    /// <summary>Panes, mesh, leaves and what throws light back.</summary>
    /// <param name="design">The design.</param>
    public static ImmutableArray<Figure> Of(CheckedDesign design)
    {
        IEnumerable<Figure?> all =
        [
            Typed(design),
            .. Pane(design.Find<SheetEntry>("lid.material")),
            design.Find<MeshEntry>("lid.material")?.OpenShare,
            .. Pane(design.Find<SheetEntry>("box.material")),
            design.Find<BackgroundEntry>("background.material")?.Reflectance,
            design.Find<SubstrateEntry>("floor.soil.recipe")?.Reflectance,
            design.Find<SubstrateEntry>("floor.moss.material")?.Reflectance,
            design.Find<SubstrateEntry>("floor.litter.material")?.Reflectance,
            .. design.Design.Hardscape.Select(
                (_, i) => design.Find<HardscapeEntry>(Path("hardscape", i, "material"))?.Reflectance
            ),
            .. design.Design.Vents.Select(
                (_, i) => design.Find<MeshEntry>(Path("vents", i, "mesh"))?.OpenShare
            ),
            .. design.Design.Plants.SelectMany(
                (_, i) => Grown(design.Find<PlantEntry>(Path("plants", i, "plant")))
            ),
        ];
        return [.. all.OfType<Figure>()];
    }

    /// <summary>What splits the power of a lamp.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lamp">Place of the lamp.</param>
    public static ImmutableArray<Figure> Heat(CheckedDesign design, int lamp)
    {
        var kind = design.Find<LampEntry>(Path("lamps", lamp, "lamp"));
        IEnumerable<Figure?> all =
        [
            design.Design.Lamps[lamp].Watts is { } watts
                ? design.Figure(
                    Path("lamps", lamp, "watts"),
                    FormattableString.Invariant($"power of lamp {lamp + 1}"),
                    watts,
                    Unit.Watt
                )
                : null,
            kind?.VisibleShare,
            kind?.RadiationEfficacy,
            kind?.InfraredShare,
            kind?.DownShare,
            kind?.Power,
        ];
        return [.. all.OfType<Figure>()];
    }

    private static Figure? Typed(CheckedDesign design) =>
        design.Design.Lid?.Thickness is { } thick
            ? design.Figure("lid.thickness", "thickness of the lid", thick, Unit.Millimeter)
            : null;

    private static string Path(string list, int i, string name) =>
        FormattableString.Invariant($"{list}[{i}].{name}");

    private static Figure?[] Pane(SheetEntry? sheet) => [sheet?.RefractiveIndex, sheet?.Extinction];

    private static Figure?[] Grown(PlantEntry? plant) => [plant?.SmallestGrown, plant?.LargestGrown];
}
