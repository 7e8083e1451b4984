using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Air;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>The openings of a design: vents, a mesh or open top, the gaps of lid and doors.</summary>
public static class BoxOpenings
{
    /// <summary>Open area of a vent, m².</summary>
    public static double Area(Vent vent) =>
        vent.Area?.Si
        ?? (
            vent.Diameter is { } across
                ? Math.PI / 4 * across.Si * across.Si
                : (vent.Length?.Si ?? 0) * (vent.Width?.Si ?? 0)
        );

    /// <summary>The openings, heights over the base inside.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="with">Coefficients.</param>
    public static ImmutableArray<AirOpening> Of(CheckedDesign design, BoxGeometry box, ModelCoefficients with)
    {
        var top = box.InsideHeight.Si;
        var openings = ImmutableArray.CreateBuilder<AirOpening>();
        for (var i = 0; i < design.Design.Vents.Count; i++)
        {
            openings.Add(OfVent(design, i, top, with));
        }

        AddTop((design, box), top, openings, with);
        AddDoors((design, box), top, openings, with);
        return openings.ToImmutable();
    }

    private static AirOpening OfVent(CheckedDesign design, int i, double top, ModelCoefficients with)
    {
        var vent = design.Design.Vents[i];
        var mesh = design.Find<MeshEntry>(FormattableString.Invariant($"vents[{i}].mesh"));
        var level = vent.Side == Side.Top;
        var height = level
            ? top
            : Math.Min(vent.Height?.Si ?? (with.Headspace.VentHeight.UseSi() * top), top);
        return new AirOpening(
            Area(vent),
            height,
            level
                ? vent.Diameter?.Si ?? Hydraulic(vent.Length?.Si ?? 0, vent.Width?.Si ?? 0)
                : vent.Width?.Si ?? vent.Diameter?.Si ?? with.Headspace.VentWidth.UseSi(),
            level,
            Resistance(mesh, with),
            with.Air.Discharge.UseSi()
        );
    }

    private static void AddTop(
        (CheckedDesign Design, BoxGeometry Box) of,
        double top,
        ImmutableArray<AirOpening>.Builder openings,
        ModelCoefficients with
    )
    {
        var (design, box) = of;
        var lid = design.Design.Lid;
        var whole = box.OpeningLength.Si * box.OpeningDepth.Si;
        var hydraulic = Hydraulic(box.OpeningLength.Si, box.OpeningDepth.Si);
        if (lid is null)
        {
            if (design.Design.Box.Opening == Opening.Top)
            {
                openings.Add(new AirOpening(whole, top, hydraulic, true, 0, with.Air.Discharge.UseSi()));
            }

            return;
        }

        if (design.Find("lid.material") is MeshEntry mesh)
        {
            var share = Math.Clamp(lid.Share?.Si ?? 1, 0, 1);
            openings.Add(
                new AirOpening(
                    whole * share,
                    top,
                    Hydraulic(box.OpeningLength.Si, box.OpeningDepth.Si * share),
                    true,
                    Resistance(mesh, with),
                    with.Air.Discharge.UseSi()
                )
            );
            return;
        }

        var gap = lid.Overlap is null
            ? lid.Gap?.Si ?? with.Headspace.LidGap.UseSi()
            : with.Headspace.DoorGap.UseSi();
        if (gap > 0)
        {
            openings.Add(
                AirOpening.Slit(
                    2 * (box.OpeningLength.Si + box.OpeningDepth.Si),
                    gap,
                    Math.Max(lid.Thickness?.Si ?? with.Surface.UsualLid.UseSi(), 0.002),
                    top,
                    0,
                    with.Air.Discharge.UseSi()
                )
            );
        }
    }

    private static void AddDoors(
        (CheckedDesign Design, BoxGeometry Box) of,
        double top,
        ImmutableArray<AirOpening>.Builder openings,
        ModelCoefficients with
    )
    {
        var (design, box) = of;
        if (design.Design.Box.Opening != Opening.Front)
        {
            return;
        }

        var sill = Math.Min(design.Design.Box.Sill?.Si ?? 0, 0.9 * top);
        var gap = design.Design.Box.Doors?.Gap?.Si ?? with.Headspace.DoorGap.UseSi();
        var through = Math.Max(box.Walls?.Si ?? with.Surface.UsualWall.UseSi(), 0.002);
        if (gap > 0)
        {
            var edges = with.Air.Discharge.UseSi();
            openings.Add(AirOpening.Slit(top - sill, gap, through, 0.5 * (top + sill), top - sill, edges));
            openings.Add(AirOpening.Slit(box.InsideLength.Si, gap, through, sill, 0, edges));
        }
    }

    /// <summary>4 areas over perimeter, m; 0 where a side is unknown.</summary>
    private static double Hydraulic(double length, double width) =>
        length > 0 && width > 0 ? 2 * length * width / (length + width) : 0;

    private static double Resistance(MeshEntry? mesh, ModelCoefficients with) =>
        mesh?.Aperture is { Si: > 0 } aperture
            ? AirOpening.WovenMesh(
                aperture.Si,
                mesh.WireDiameter?.Si ?? with.Headspace.WireOfAperture.Use() * aperture.Si,
                with.Air.MeshFactor.Use()
            )
            : 0;
}
