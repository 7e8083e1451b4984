using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
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

        var parts = cuts.Where(c =>
                c.Key == "lid"
                || c.Key == "lid.strip"
                || c.Part.StartsWith("vent-strip", StringComparison.Ordinal)
            )
            .ToList();
        return Figure
            .Total(
                [
                    .. parts.Select(part =>
                        Net(part)
                        * lid.Thickness
                        * (design.Catalog.Find<SheetEntry>(part.Material)?.Density ?? density)
                    ),
                ],
                Unit.Kilogram.Dimension
            )
            .As("mass of the lid", Unit.Kilogram);
    }

    /// <summary>Area of a part less what is cut out of it.</summary>
    private static Figure Net(CutPart part)
    {
        var area = part.Length * part.Width;
        foreach (var cut in part.CutOuts)
        {
            area -= cut.Length * cut.Width;
        }

        foreach (var hole in part.Holes)
        {
            area -= QuarterTurn * hole.Diameter * hole.Diameter;
        }

        return Figure.NotNegative(area);
    }

    private static readonly Figure QuarterTurn = Figure.Number(Math.PI / 4);
}
