using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
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
        var vents = VentSpot.Of(design, terrain).Where(v => v.Side == Side.Top).ToList();
        double strip = lid?.Strip?.Si ?? 0.0;
        var clear = strip > Sliver ? pane with { Back = Math.Max(front, back - strip) } : pane;
        return vents.Count == 0 ? [clear] : Cut(design, terrain, clear, vents);
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

    /// <summary>
    /// Vents in the top as one band across their place: mesh or open along its length, pane beside it, before
    /// it and behind it.
    /// </summary>
    private static IEnumerable<LidPart> Cut(
        CheckedDesign design,
        Terrain terrain,
        LidPart pane,
        IReadOnlyList<VentSpot> vents
    )
    {
        double deep = vents.Sum(v => v.Width);
        double middle = (terrain.DepthOfBox * VentSpot.TopPlace) - terrain.Front;
        double from = Math.Clamp(middle - (0.5 * deep), pane.Front, pane.Back);
        double to = Math.Clamp(middle + (0.5 * deep), pane.Front, pane.Back);
        double at = from;
        if (from - pane.Front > Sliver)
        {
            yield return pane with
            {
                Back = from,
            };
        }

        foreach (var vent in vents)
        {
            double end = Math.Min(at + vent.Width, to);
            double center = vent.Middle - terrain.Left;
            double left = Math.Clamp(center - (0.5 * vent.Length), pane.Left, pane.Right);
            double right = Math.Clamp(center + (0.5 * vent.Length), pane.Left, pane.Right);
            if (end - at > Sliver && right - left > Sliver)
            {
                var mesh = design.Find<MeshEntry>(FormattableString.Invariant($"{vent.Key}.mesh"));
                var hole = new LidPart(left, right, at, end) { Kind = LidKind.Open };
                yield return mesh is null ? hole : Woven(hole, mesh);
                foreach (var beside in new[] { pane with { Right = left }, pane with { Left = right } })
                {
                    if (beside.Right - beside.Left > Sliver)
                    {
                        yield return beside with
                        {
                            Front = at,
                            Back = end,
                        };
                    }
                }
            }

            at = Math.Max(at, end);
        }

        if (pane.Back - at > Sliver)
        {
            yield return pane with
            {
                Front = at,
            };
        }
    }
}
