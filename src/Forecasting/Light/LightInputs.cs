using System.Collections.Immutable;
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
            .. Entry(design, "lid.material", "refractiveIndex", "extinction", "openShare"),
            .. Entry(design, "box.material", "refractiveIndex", "extinction"),
            .. Entry(design, "background.material", "reflectance"),
            .. Entry(design, "floor.soil.recipe", "reflectance"),
            .. Entry(design, "floor.moss.material", "reflectance"),
            .. Entry(design, "floor.litter.material", "reflectance"),
            .. Enumerable
                .Range(0, design.Design.Hardscape.Count)
                .SelectMany(i => Entry(design, Path("hardscape", i, "material"), "reflectance")),
            .. Enumerable
                .Range(0, design.Design.Vents.Count)
                .SelectMany(i => Entry(design, Path("vents", i, "mesh"), "openShare")),
            .. Enumerable
                .Range(0, design.Design.Plants.Count)
                .SelectMany(i => Entry(design, Path("plants", i, "plant"), "sizeLow", "sizeHigh")),
        ];
        return [.. all.OfType<Figure>()];
    }

    /// <summary>What splits the power of a lamp.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lamp">Place of the lamp.</param>
    public static ImmutableArray<Figure> Heat(CheckedDesign design, int lamp)
    {
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
            .. Entry(
                design,
                Path("lamps", lamp, "lamp"),
                "visibleShare",
                "radiationEfficacy",
                "infraredShare",
                "downShare",
                "power"
            ),
        ];
        return [.. all.OfType<Figure>()];
    }

    private static Figure? Typed(CheckedDesign design) =>
        design.Design.Lid?.Thickness is { } thick
            ? design.Figure("lid.thickness", "thickness of the lid", thick, Unit.Millimeter)
            : null;

    private static string Path(string list, int i, string name) =>
        FormattableString.Invariant($"{list}[{i}].{name}");

    private static IEnumerable<Figure?> Entry(CheckedDesign design, string path, params string[] names) =>
        design.Find(path) is { } entry ? names.Select(entry.Figure) : [];
}
