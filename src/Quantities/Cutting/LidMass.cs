using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>Mass of the lid from the panes that are cut for it, kg.</summary>
public static class LidMass
{
    private static readonly Figure UsualMesh = Figure.Choice(
        "mass of mesh",
        0.15,
        Unit.KilogramPerSquareMeter,
        "a light screen; it hardly counts"
    );

    /// <summary>
    /// Lid and strip as cut, less the openings in them; null without a lid, or a pane without a thickness.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="cuts">Its parts to cut.</param>
    public static Figure? Of(CheckedDesign design, BoxGeometry box, IReadOnlyList<CutPart> cuts)
    {
        if (design.Design.Lid is null || cuts.FirstOrDefault(c => c.Part == "lid") is not { } lid)
        {
            return null;
        }

        if (design.Find<MeshEntry>("lid.material") is { } woven)
        {
            return (box.OpeningLength * box.OpeningDepth * (woven.AreaMass ?? UsualMesh)).As(
                "mass of the lid",
                Unit.Kilogram
            );
        }

        if (lid.Thickness is null || design.Find<SheetEntry>("lid.material")?.Density is not { } density)
        {
            return null;
        }

        var pane = Figure.NotNegative(Area(lid) - Openings(design)) * lid.Thickness * density;
        var strip = cuts.FirstOrDefault(c => c.Part == "strip");
        return (
            strip is not null && design.Catalog.Find<SheetEntry>(strip.Material)?.Density is { } plastic
                ? pane + Area(strip) * lid.Thickness * plastic
                : pane
        ).As("mass of the lid", Unit.Kilogram);
    }

    private static Figure Area(CutPart part) => part.Length * part.Width;

    /// <summary>Openings for air in the lid.</summary>
    private static Figure Openings(CheckedDesign design) =>
        Figure
            .Total(
                [
                    .. design
                        .Design.Vents.Select(
                            (v, i) => (Vent: v, Path: FormattableString.Invariant($"vents[{i}]"))
                        )
                        .Where(v => v.Vent.Side == Side.Top)
                        .Select(v => Opening(design, v.Vent, v.Path))
                        .OfType<Figure>(),
                ],
                Unit.SquareCentimeter.Dimension
            )
            .As("openings in the lid", Unit.SquareCentimeter);

    private static Figure? Opening(CheckedDesign design, Vent vent, string path) =>
        vent is { Length: { } length, Width: { } width }
            ? design.Figure($"{path}.length", "length of the vent", length, Unit.Millimeter)
                * design.Figure($"{path}.width", "width of the vent", width, Unit.Millimeter)
        : vent.Area is { } area
            ? design.Figure($"{path}.area", "area of the vent", area, Unit.SquareCentimeter)
        : null;
}
