using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>Glass, lid, outlet, lamps and the figures of the section.</summary>
public sealed partial class SectionView
{
    private void Box()
    {
        sketch.Key = "box.glass";
        Pane(-wall, Span + wall, -baseGlass, 0);
        var front = scene.Design.Box is { Opening: Opening.Front } && !lengthwise;
        var sill = scene.Design.Box.Sill?.Si ?? 0;
        if (front)
        {
            sketch.Key = "box.sill";
            Pane(-wall, 0, 0, sill);
            sketch.Key = "box.doors";
            var (a, b) = (At(-wall * 0.5, sill + 0.002), At(-wall * 0.5, Terrain.Height - 0.002));
            sketch.Line(a, b, new Pen(Tone.Glass, Math.Max(0.3, wall * scale * 500)));
            sketch.Key = "box.glass";
        }
        else
        {
            Pane(-wall, 0, 0, Terrain.Height);
        }

        Pane(Span, Span + wall, 0, Terrain.Height);
        sketch.Key = "";
    }

    private void Pane(double from, double to, double low, double high) =>
        sketch.Area(
            [At(from, low), At(to, low), At(to, high), At(from, high)],
            new Pen(Tone.Ink, 0.2),
            Tone.Glass,
            0.55
        );

    private void Outlet()
    {
        if (scene.Drain is not { } drain)
        {
            return;
        }

        sketch.Key = "drain";
        var (low, high) = lengthwise ? (Side.Left, Side.Right) : (Side.Front, Side.Back);
        var inPlane = drain.Side == low || drain.Side == high;
        var across =
            drain.Side == low ? 0
            : drain.Side == high ? Span
            : lengthwise ? drain.Along
            : Span * 0.9;
        var pipe = new Pen(Tone.Water, 0.4);
        switch (drain.Kind)
        {
            case DrainKind.Bulkhead when inPlane:
                var outside = drain.Side == low ? -wall - 0.02 : Span + wall + 0.02;
                var half = drain.Diameter / 2;
                sketch.Area(
                    [
                        At(across, drain.Height - half),
                        At(outside, drain.Height - half),
                        At(outside, drain.Height + half),
                        At(across, drain.Height + half),
                    ],
                    pipe,
                    Tone.Paper
                );
                break;
            case DrainKind.Bulkhead:
                sketch.Rings(
                    [new Ring(At(across, drain.Height), Math.Max(0.8, drain.Diameter / 2 * scale * 1000))],
                    pipe,
                    Tone.Paper
                );
                break;
            case DrainKind.Standpipe:
            case DrainKind.Siphon:
            default:
                Tube(drain, across);
                break;
        }

        sketch.Key = "";
    }

    /// <summary>
    /// A standpipe ends at its height; a dip tube for the siphon reaches through all layers.
    /// </summary>
    private void Tube(DrainSpot drain, double across)
    {
        var place = Math.Clamp(
            across,
            0.02,
            Math.Max(0.02, Span - 0.02 - (Span - (lengthwise ? Terrain.Right : Terrain.Back)))
        );
        var top =
            drain.Kind == DrainKind.Standpipe
                ? drain.Height
                : Terrain.Ground(X(place), Y(place)) + Terrain.Moss + Terrain.Litter + 0.02;
        var half = Math.Max(0.004, drain.Diameter / 2);
        sketch.Area(
            [At(place - half, 0), At(place + half, 0), At(place + half, top), At(place - half, top)],
            new Pen(Tone.Water, 0.3, 1),
            Tone.Paper,
            0.6
        );
    }

    private void Fittings()
    {
        Lid();
        sketch.Key = "misting.nozzles";
        foreach (var (x, y) in scene.Nozzles().Take(lengthwise ? 12 : 1))
        {
            var tip = At(lengthwise ? x : y, Terrain.Height - 0.004);
            sketch.Area(
                [tip.Moved(-1.3, 0), tip.Moved(1.3, 0), tip.Moved(0, 2.6)],
                new Pen(Tone.Water, 0.25),
                Tone.Paper
            );
            sketch.Lines(
                [
                    new([tip.Moved(-0.6, 3.2), tip.Moved(-1.8, 6)], false),
                    new([tip.Moved(0, 3.2), tip.Moved(0, 6.4)], false),
                    new([tip.Moved(0.6, 3.2), tip.Moved(1.8, 6)], false),
                ],
                new Pen(Tone.Water, 0.2, 0.6)
            );
        }

        foreach (var vent in scene.Vents)
        {
            Vent(vent);
        }

        Lamps();
        sketch.Key = "";
    }

    private void Lid()
    {
        if (scene.Design.Lid is not { } lid)
        {
            return;
        }

        sketch.Key = "lid";
        var thick = Math.Max(lid.Thickness?.Si ?? 0.004, 0.4 / scale / 1000);
        var mesh = scene.Numbers.Design.Find("lid.material") is MeshEntry;
        if (mesh)
        {
            sketch.Line(At(0, Terrain.Height), At(Span, Terrain.Height), new Pen(Tone.Ink, 0.6, 0.7));
            return;
        }

        var over = lid.Overlap?.Si;
        var low = over is null ? Terrain.Height - thick : Terrain.Height;
        var plan = LidPlan.Of(scene.Numbers.Design, scene.Numbers.Box)!;
        var rim = (Span - (lengthwise ? plan.Length.Si : plan.Width.Si)) / 2;
        foreach (var cell in plan.Cells)
        {
            sketch.Key = cell.Kind == CellKind.HoseStrip ? "lid.strip" : "lid";
            var (from, to) = lengthwise ? (cell.Left.Si, cell.RightSi) : (cell.Low.Si, cell.HighSi);
            var whole = lengthwise ? plan.Length.Si : plan.Width.Si;
            Pane(
                rim + from + (from > 1e-9 ? 0.0005 : Edge(lid, over)),
                rim + to - (to < whole - 1e-9 ? 0.0005 : Edge(lid, over)),
                low,
                low + thick
            );
        }
    }

    private static double Edge(Lid lid, double? over) => over is { } o ? -o : lid.Gap?.Si ?? 0.002;

    private void Vent(VentSpot vent)
    {
        sketch.Key = vent.Key;
        var pen = new Pen(Tone.Note, 0.8, 0.6);
        var (low, high) = lengthwise ? (Side.Left, Side.Right) : (Side.Front, Side.Back);
        if (vent.Side == Side.Top)
        {
            var half = (lengthwise ? vent.Length : vent.Width) / 2;
            var middle = lengthwise ? vent.Middle : vent.Behind;
            sketch.Line(
                At(middle - half, Terrain.Height).Moved(0, -0.8),
                At(middle + half, Terrain.Height).Moved(0, -0.8),
                pen
            );
        }
        else if (vent.Side == low || vent.Side == high)
        {
            var across = vent.Side == low ? -wall / 2 : Span + wall / 2;
            sketch.Line(
                At(across, vent.Height - vent.Width / 2),
                At(across, vent.Height + vent.Width / 2),
                new Pen(Tone.Note, 1.2, 0.6)
            );
        }
    }

    private void Lamps()
    {
        for (var i = 0; i < Math.Min(scene.Design.Lamps.Count, 4); i++)
        {
            var lamp = scene.Design.Lamps[i];
            sketch.Key = $"lamps[{i}]";
            var low = Terrain.Height + Math.Min(0.3, lamp.Above?.Si ?? 0.03) + 0.004;
            var middle = Span * (i + 1) / (Math.Min(scene.Design.Lamps.Count, 4) + 1);
            var half = lengthwise
                ? Span * 0.4 / Math.Min(scene.Design.Lamps.Count, 4)
                : Math.Min(0.06, Span * 0.12);
            sketch.Area(
                [
                    At(middle - half, low),
                    At(middle + half, low),
                    At(middle + half, low + 0.022),
                    At(middle - half, low + 0.022),
                ],
                Pen.Thin,
                Tone.Field
            );
            sketch.Line(
                At(middle - half * 0.9, low),
                At(middle + half * 0.9, low),
                new Pen(Tone.Caution, 0.5)
            );
        }
    }

    private void Figures()
    {
        var box = scene.Numbers.Box;
        var outside = box.OutsideDepth is not null && box.OutsideLength is not null;
        var (spanSi, spanKey) = lengthwise
            ? ((outside ? box.OutsideLength! : box.InsideLength).Si, "length")
            : ((outside ? box.OutsideDepth! : box.InsideDepth).Si, "depth");
        var frame = outside ? "outside" : "inside";
        var edge = outside ? wall : 0;
        Dimensions.Across(
            sketch,
            At(-edge, -baseGlass),
            At(Span + edge, -baseGlass),
            6.5,
            (Lengths.Edge(spanSi, Inches), $"box.{frame}.{spanKey}")
        );
        var high = outside ? box.OutsideHeight!.Si : box.InsideHeight.Si;
        var narrow = naming == Naming.OneSide;
        var beside = narrow ? -edge : Span + edge;
        Dimensions.Upward(
            sketch,
            At(beside, outside ? -baseGlass : 0),
            At(beside, Terrain.Height),
            narrow ? -4 : Right - 2.5,
            (Lengths.Edge(high, Inches), $"box.{frame}.height")
        );
        var bottom = At(0, -baseGlass).Y + 11;
        sketch.Text(
            new(Sides, bottom),
            lengthwise ? "left" : "front",
            Dimensions.Points,
            Align.Start,
            Tone.Quiet
        );
        sketch.Text(
            new(At(Span, 0).X, bottom),
            lengthwise ? "right" : "back",
            Dimensions.Points,
            Align.End,
            Tone.Quiet
        );
        Names(narrow);
    }

    /// <summary>Names of layers and fittings on both sides, or all on the right.</summary>
    private void Names(bool narrow)
    {
        var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
        var reach = (Above + 3, At(0, -baseGlass).Y + 4);
        var left = Named(from + 1e-4, lengthwise ? "" : "front");
        if (!narrow)
        {
            Dimensions.Beside(sketch, left, Sides - 3, Align.End, reach);
        }

        Dimensions.Beside(
            sketch,
            [
                .. Named(to - 1e-4, lengthwise ? "" : "back"),
                .. narrow ? left.Where(c => c.Key == "drain") : [],
                .. Fitted(),
            ],
            At(Span, 0).X + 4,
            Align.Start,
            reach
        );
    }

    /// <summary>Lid, vents and lamps, named on the right.</summary>
    private IEnumerable<Callout> Fitted()
    {
        if (!parts.HasFlag(Parts.Fittings))
        {
            yield break;
        }

        if (scene.Design.Lamps.Count > 0)
        {
            var above = scene.Design.Lamps[0].Above?.Si ?? 0.03;
            var at = At(
                Span / (Math.Min(scene.Design.Lamps.Count, 4) + 1) + 0.04,
                Terrain.Height + above + 0.015
            );
            yield return new(at, $"lamp {Lengths.Short(above, DepthInches)} up", "lamps[0].above");
        }

        foreach (var vent in scene.Vents.Where(v => v.Side == Side.Top).Take(1))
        {
            var middle = lengthwise ? vent.Middle : vent.Behind;
            yield return new(At(middle, Terrain.Height).Moved(0, -0.8), "top vent", vent.Key);
        }

        if (scene.Design.Misting is not null && !lengthwise)
        {
            var tip = At(scene.Nozzles().First().Y, Terrain.Height - 0.004);
            yield return new(tip.Moved(1, 1), "nozzle", "misting.nozzles");
        }
    }

    /// <summary>Depths of the layers at one end of the cut.</summary>
    private List<Callout> Named(double across, string end)
    {
        var list = new List<Callout>();
        var at = across + (across > Span / 2 ? -0.012 : 0.012);
        var ground = Terrain.Ground(X(across), Y(across));
        if (parts.HasFlag(Parts.Life))
        {
            NameCover(list, across, (at, ground));
        }

        if (parts.HasFlag(Parts.Soil) && scene.Design.Floor.Soil is { } soil)
        {
            var depth = Terrain.Soil(X(across), Y(across));
            var key =
                soil.Depth is not null ? "floor.soil.depth"
                : soil.Zones.Count > 0 ? "floor.soil.zones"
                : $"floor.soil.{end}";
            var front = Terrain.Soil(X(Terrain.Front), Y(Terrain.Front));
            var words =
                naming == Naming.OneSide && !lengthwise && Math.Abs(front - depth) > 5e-4
                    ? $"soil {Lengths.Bare(front, DepthInches)} to {Short(depth)}"
                    : $"soil {Short(depth)}";
            list.Add(new(At(at, Terrain.Drainage + depth / 2), words, key));
        }

        if (parts.HasFlag(Parts.Drainage))
        {
            NameDrainage(list, across, at);
        }

        return list;
    }

    private void NameCover(List<Callout> list, double across, (double At, double Ground) place)
    {
        if (Terrain.Litter > 0)
        {
            var middle = place.Ground + Terrain.Moss + Terrain.Litter / 2;
            list.Add(new(At(place.At, middle), $"litter {Short(Terrain.Litter)}", "floor.litter.depth"));
        }

        if (Terrain.Moss > 0 && across > Span / 2)
        {
            var middle = place.Ground + Terrain.Moss / 2;
            list.Add(new(At(place.At, middle), $"moss {Short(Terrain.Moss)}", "floor.moss.depth"));
        }
    }

    private void NameDrainage(List<Callout> list, double across, double at)
    {
        if (scene.WaterLine is { } line && across < Span / 2)
        {
            list.Add(new(At(across + 0.08 * Span, line), $"water ≤ {Short(line)}", "drain"));
        }

        if (Terrain.Drainage > 0)
        {
            var raised = scene.Design.Floor.Drainage?.Raised is not null;
            list.Add(
                new(
                    At(at, Terrain.Drainage / 2),
                    $"{(raised ? "raised" : "drainage")} {Short(Terrain.Drainage)}",
                    raised ? "floor.drainage.raised" : "floor.drainage.depth"
                )
            );
        }
    }

    private string Short(double meters) => Lengths.Short(meters, DepthInches);
}
