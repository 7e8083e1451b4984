using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Light;

/// <summary>The top of a box as light meets it: panes, mesh, frame, strips and vents.</summary>
internal static class LightLid
{
    private const double Sliver = 1e-4;

    /// <summary>A sheet of glass or plastic as a pane; float glass where it is not known.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="thicknessMeters">Its thickness, m.</param>
    /// <param name="with">Coefficients.</param>
    public static PaneOptics Sheet(SheetEntry? sheet, double thicknessMeters, ModelCoefficients with) =>
        PaneOptics.Single(
            thicknessMeters,
            sheet?.RefractiveIndex?.Si ?? with.Light.GlassIndex.Use(),
            sheet?.Extinction?.Si ?? with.Light.GlassExtinction.UseSi()
        );

    /// <summary>True where the top is a pane, apart from its vents.</summary>
    public static bool IsPane(CheckedDesign design) =>
        design.Design.Lid is null
            ? design.Design.Box.Opening == Opening.Front
            : design.Find("lid.material") is not MeshEntry;

    /// <summary>What dirt and drops on a pane let through, as figures.</summary>
    /// <param name="design">The design.</param>
    /// <param name="with">Coefficients.</param>
    public static IEnumerable<Figure> Losses(CheckedDesign design, LightCoefficients with)
    {
        if (!IsPane(design))
        {
            yield break;
        }

        var known = design.Design.Light;
        yield return known?.Clean is { } clean
            ? design.Figure("light.clean", "light past dirt on the lid", clean, Unit.Percent)
            : with.Clean.Figure;
        yield return known?.Drops is { } drops
            ? design.Figure("light.drops", "light past drops under the lid", drops, Unit.Percent)
            : (IsPlastic(design) ? with.DropsOnPlastic : with.DropsOnGlass).Figure;
    }

    private static bool IsPlastic(CheckedDesign design) =>
        design.Design.Lid is not null && design.Find<SheetEntry>("lid.material")?.Density?.Si < 2000.0;

    /// <summary>The parts that let light through; beside them is frame.</summary>
    public static IEnumerable<LidPart> Parts(
        (CheckedDesign Design, ModelCoefficients With) of,
        Terrain terrain,
        BoxGeometry box,
        LightScene scene
    )
    {
        var design = of.Design;
        double rim = design.Design.Box.Rim?.Si ?? 0.0;
        var (left, right) = (
            Math.Max(0.0, rim - terrain.Left),
            Math.Min(scene.Length, terrain.Length - rim - terrain.Left)
        );
        var (front, back) = (
            Math.Max(0.0, rim - terrain.Front),
            Math.Min(scene.Depth, terrain.DepthOfBox - rim - terrain.Front)
        );
        var whole = new LidPart(left, right, front, back) { Kind = LidKind.Open };
        var lid = design.Design.Lid;
        if (lid is null && design.Design.Box.Opening == Opening.Top)
        {
            return [whole];
        }

        if (design.Find("lid.material") is MeshEntry mesh)
        {
            return WithMesh(of, whole, mesh, box);
        }

        var pane = Pane(of, whole, box);
        return LidPlan.Of(design, box) is { } plan
            ? plan
                .Cells.Where(c => c.Kind != CellKind.HoseStrip)
                .SelectMany(cell => Cell(of, plan, cell, (pane, terrain, rim)))
            : Split(pane, [.. Holes(of.Design, box, terrain)]);
    }

    /// <summary>A pane or strip of the lid with its openings, where it lies over the planted room.</summary>
    private static IEnumerable<LidPart> Cell(
        (CheckedDesign Design, ModelCoefficients With) of,
        OpeningPlan plan,
        OpeningCell cell,
        (LidPart Pane, Terrain Terrain, double Rim) on
    )
    {
        var (x, y) = (on.Rim - on.Terrain.Left, on.Rim - on.Terrain.Front);
        var part = on.Pane with
        {
            Left = Math.Max(on.Pane.Left, x + cell.Left.Si),
            Right = Math.Min(on.Pane.Right, x + cell.RightSi),
            Front = Math.Max(on.Pane.Front, y + cell.Low.Si),
            Back = Math.Min(on.Pane.Back, y + cell.HighSi),
        };
        if (cell.Kind == CellKind.VentStrip)
        {
            part = part with
            {
                Pane = Sheet(
                    of.Design.Catalog.Find<SheetEntry>(OpeningPolicy.StripSheet),
                    Thick(of),
                    of.With
                ),
            };
        }

        return Split(
            part,
            [
                .. cell.Openings.Select(o =>
                    Hole(o.Vent, (x + o.Left.Si + (o.Length.Si / 2), y + o.Low.Si + (o.Width.Si / 2)))
                ),
            ]
        );
    }

    private static double Thick((CheckedDesign Design, ModelCoefficients With) of) =>
        of.Design.Design.Lid?.Thickness?.Si ?? of.With.Surface.UsualLid.UseSi();

    /// <summary>Vents of a top that is no lid.</summary>
    private static IEnumerable<LidPart> Holes(CheckedDesign design, BoxGeometry box, Terrain terrain)
    {
        var spots = VentSpot.Of(design, box);
        return VentShape
            .Of(design, box)
            .Where(v => v.Side == Side.Top)
            .Select(v => Hole(v, (v.Along.Si - terrain.Left, spots[v.Index].Behind - terrain.Front)));
    }

    /// <summary>A round opening as a square of its area.</summary>
    private static LidPart Hole(VentShape vent, (double X, double Y) middle)
    {
        var share = vent.IsRound ? Math.Sqrt(Math.PI) / 4 : 0.5;
        var (half, deep) = (share * vent.Length.Si, share * vent.Width.Si);
        var hole = new LidPart(middle.X - half, middle.X + half, middle.Y - deep, middle.Y + deep)
        {
            Kind = LidKind.Open,
        };
        return vent.Mesh is null ? hole : Woven(hole, vent.Mesh);
    }

    /// <summary>
    /// A part and the openings in it: rows between their edges, and in each row what lies beside them.
    /// </summary>
    private static IEnumerable<LidPart> Split(LidPart part, IReadOnlyList<LidPart> holes)
    {
        if (part.Right - part.Left <= Sliver || part.Back - part.Front <= Sliver)
        {
            yield break;
        }

        double[] rows =
        [
            .. holes
                .SelectMany(h => new[] { h.Front, h.Back })
                .Append(part.Front)
                .Append(part.Back)
                .Select(y => Math.Clamp(y, part.Front, part.Back))
                .Distinct()
                .Order(),
        ];
        for (int i = 0; i + 1 < rows.Length; i++)
        {
            if (rows[i + 1] - rows[i] > Sliver)
            {
                foreach (var piece in Row(part with { Front = rows[i], Back = rows[i + 1] }, holes))
                {
                    yield return piece;
                }
            }
        }
    }

    /// <summary>A row of a part from left to right: what is before, in and behind each opening.</summary>
    private static IEnumerable<LidPart> Row(LidPart row, IReadOnlyList<LidPart> holes)
    {
        double at = row.Left;
        var inside = holes.Where(h => h.Front < row.Back - 1e-9 && h.Back > row.Front + 1e-9);
        foreach (var hole in inside.OrderBy(h => h.Left))
        {
            double left = Math.Clamp(hole.Left, at, row.Right);
            double right = Math.Clamp(hole.Right, at, row.Right);
            if (left - at > Sliver)
            {
                yield return row with
                {
                    Left = at,
                    Right = left,
                };
            }

            if (right - left > Sliver)
            {
                yield return hole with
                {
                    Left = left,
                    Right = right,
                    Front = row.Front,
                    Back = row.Back,
                };
            }

            at = Math.Max(at, right);
        }

        if (row.Right - at > Sliver)
        {
            yield return row with
            {
                Left = at,
            };
        }
    }

    /// <summary>A mesh over its share of the opening, from the back; a pane over the rest.</summary>
    private static IEnumerable<LidPart> WithMesh(
        (CheckedDesign Design, ModelCoefficients With) of,
        LidPart whole,
        MeshEntry mesh,
        BoxGeometry box
    )
    {
        double share = Math.Clamp(of.Design.Design.Lid?.Share?.Si ?? 1.0, 0.0, 1.0);
        double edge = whole.Back - (share * (whole.Back - whole.Front));
        yield return Woven(whole with { Front = edge }, mesh);
        if (edge - whole.Front > Sliver)
        {
            yield return Pane(of, whole with { Back = edge }, box, isGlass: true);
        }
    }

    private static LidPart Woven(LidPart part, MeshEntry? mesh) =>
        part with
        {
            Kind = LidKind.Mesh,
            WireOverPitch = 1.0 - Math.Sqrt(Math.Clamp(mesh?.OpenShare?.Si ?? 0.6, 0.0, 1.0)),
        };

    private static LidPart Pane(
        (CheckedDesign Design, ModelCoefficients With) of,
        LidPart part,
        BoxGeometry box,
        bool isGlass = false
    )
    {
        var (design, with) = of;
        var sheet = isGlass || design.Design.Lid is null ? null : design.Find<SheetEntry>("lid.material");
        bool isPlastic = !isGlass && IsPlastic(design);
        double drops = design.Design.Light?.Drops?.Si
            ?? (isPlastic ? with.Light.DropsOnPlastic : with.Light.DropsOnGlass).UseSi();
        return part with
        {
            Kind = LidKind.Pane,
            Pane = Sheet(
                sheet,
                design.Design.Lid?.Thickness?.Si ?? box.Walls?.Si ?? with.Surface.UsualWall.UseSi(),
                with
            ),
            Clean = drops * (design.Design.Light?.Clean?.Si ?? with.Light.Clean.UseSi()),
        };
    }
}
