using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain;

namespace Litterfall.Documents.Views;

/// <summary>The section as it stands at an hour, and what of it can be taken hold of.</summary>
public sealed partial class SectionView
{
    private const double LeastLayer = 0.005;
    private const double MostLamp = 0.3;

    /// <summary>Points to take hold of in the section at a scale.</summary>
    internal static ImmutableArray<Grip> Grips(Scene scene, double scale, Naming naming)
    {
        var view = new SectionView(scene, Parts.All, scale, naming);
        return
        [
            .. view.FloorGrips(),
            .. view.lengthwise ? FloorAndDoorGrips.Steps(scene, view.At, view.PerMeter) : [],
            .. view.FittingGrips(),
            .. scene.Plants.SelectMany(p => view.Placed(p.Key, p.Name, (p.X, p.Y, p.Z), p.Mounted)),
            .. scene.Pieces.SelectMany(p =>
                view.Placed(p.Key, $"piece {Letter(p.Number)}", (p.X, p.Y, p.Foot), false)
            ),
        ];
    }

    /// <summary>Where the inside of the box lies in the section at a scale.</summary>
    internal static DrawnFrame Frame(Scene scene, double scale, Naming naming)
    {
        var view = new SectionView(scene, Parts.All, scale, naming);
        return new(view.At(0, 0), view.PerMeter, view.lengthwise ? 'x' : 'y', 'z');
    }

    /// <summary>Free water up to its level.</summary>
    private void Level()
    {
        if (moment is not { LevelMeters: > 0 } now)
        {
            return;
        }

        var top = Math.Min(now.LevelMeters, Terrain.Height);
        var band = Band(_ => 0, s => Math.Min(top, Math.Max(Terrain.Drainage, Terrain.Ground(X(s), Y(s)))));
        sketch.Key = "drain";
        sketch.Add(
            new PathMark([new Contour(band, true)], [])
            {
                Shade = 0x2B6E9E,
                Strength = 0.55,
                Key = sketch.Key,
            }
        );
        sketch.Lines([new([.. band.Skip(band.Length / 2)], false)], new Pen(Tone.Water, 0.45));
    }

    /// <summary>Soil tinted by how full its pores are, slice by slice from the surface down.</summary>
    private void Wetness()
    {
        if (moment is not { Wetness.Length: > 1 } now)
        {
            return;
        }

        for (var i = 0; i + 1 < now.Wetness.Length; i++)
        {
            var (from, share) = now.Wetness[i];
            var (to, next) = now.Wetness[i + 1];
            var band = Band(s => Inside(s, to), s => Inside(s, from));
            sketch.Add(
                new PathMark([new Contour(band, true)], [])
                {
                    Shade = Moment.ColorOf(0.5 * (share + next)),
                    Strength = 0.8,
                    Key = sketch.Key,
                }
            );
        }
    }

    /// <summary>The colors of wetness and of open water with their values.</summary>
    private void WetnessKey()
    {
        if (moment is not { Wetness.Length: > 1 } || !scene.OnScreen)
        {
            return;
        }

        const double Wide = 6;
        sketch.Key = "floor.soil";
        var corner = new Spot(Sides, At(0, -baseGlass).Y + 13);
        for (var i = 0; i < Moment.Colors.Length; i++)
        {
            Swatch(corner.Moved(i * Wide, 0), Wide, Moment.Colors[i], 0.8);
        }

        var end = Moment.Colors.Length * Wide;
        sketch.Text(corner.Moved(0, 6.4), "0", Dimensions.Points, Align.Start, Tone.Quiet);
        sketch.Text(corner.Moved(end, 6.4), "100 % of pores", Dimensions.Points, Align.End, Tone.Quiet);
        Swatch(corner.Moved(end + 4, 0), Wide, 0x2B6E9E, 0.55);
        sketch.Text(corner.Moved(end + 4, 6.4), "water", Dimensions.Points, Align.Start, Tone.Quiet);
    }

    private void Swatch(Spot corner, double wide, uint color, double strength) =>
        sketch.Add(
            new PathMark([new(Sketch.Corners(corner, wide, 3), true)], [])
            {
                Pen = Pen.Fine,
                Shade = color,
                Strength = strength,
            }
        );

    /// <summary>Height at a share of the soil's depth below its surface.</summary>
    private double Inside(double across, double share)
    {
        var ground = Terrain.Ground(X(across), Y(across));
        return ground - (share * (ground - Terrain.Drainage));
    }

    /// <summary>Dew on the panes of the cut, as a stippled strip along their inner face.</summary>
    private void Fog()
    {
        if (moment is null || lengthwise)
        {
            return;
        }

        sketch.Key = "";
        var low = Math.Max(Terrain.Ground(X(0), Y(0)), scene.Design.Box.Sill?.Si ?? 0);
        if (moment.FrontFogs)
        {
            Stipple(0.002, low);
        }

        if (moment.BackFogs)
        {
            Stipple(Span - 0.008, Terrain.Ground(X(Span), Y(Span)));
        }
    }

    private void Stipple(double across, double low)
    {
        var rings = ImmutableArray.CreateBuilder<Ring>();
        for (var (up, k) = (low + 0.01, 0); up < Terrain.Height - 0.01; up += 0.012, k++)
        {
            rings.Add(new Ring(At(across + (k % 2 * 0.004), up), 0.45));
        }

        sketch.Rings(rings.ToImmutable(), new Pen(Tone.Water, 0.2), Tone.Paper);
    }

    /// <summary>Light under lamps that burn.</summary>
    private void Rays()
    {
        if (moment is not { IsLit: true })
        {
            return;
        }

        var count = Math.Min(scene.Design.Lamps.Count, 4);
        for (var i = 0; i < count; i++)
        {
            var middle = Span * (i + 1) / (count + 1);
            var top = Terrain.Height - 0.01;
            foreach (var lean in new[] { -0.05, -0.025, 0, 0.025, 0.05 })
            {
                sketch.Line(
                    At(middle + (0.3 * lean), top),
                    At(Math.Clamp(middle + lean, 0.003, Span - 0.003), top - 0.05),
                    new Pen(Tone.Caution, 0.2, 0.8)
                );
            }
        }
    }

    private double PerMeter => scale * 1000;

    private IEnumerable<Grip> FloorGrips()
    {
        var floor = scene.Design.Floor;
        var top = Terrain.Height;
        if (floor.Drainage is { } drainage && Terrain.Drainage > 0)
        {
            var path = drainage.Raised is null ? "floor.drainage.depth" : "floor.drainage.raised";
            yield return new Grip(
                "floor.drainage",
                "drainage layer",
                At(Span * 0.5, Terrain.Drainage),
                PerMeter
            )
            {
                Up = new(path, Terrain.Drainage, LeastLayer, top * 0.5),
            };
        }

        foreach (var grip in SoilGrips(floor))
        {
            yield return grip;
        }

        if (Terrain.Litter > 0)
        {
            var at = Span * 0.3;
            var foot = Terrain.Ground(X(at), Y(at)) + Terrain.Moss;
            yield return new Grip("floor.litter", "leaf litter", At(at, foot + Terrain.Litter), PerMeter)
            {
                Up = new("floor.litter.depth", Terrain.Litter, LeastLayer, 0.15),
            };
        }

        if (Terrain.Moss > 0)
        {
            var at = Span * 0.82;
            yield return new Grip(
                "floor.moss",
                "moss",
                At(at, Terrain.Ground(X(at), Y(at)) + Terrain.Moss),
                PerMeter
            )
            {
                Up = new("floor.moss.depth", Terrain.Moss, LeastLayer, 0.1),
            };
        }
    }

    private IEnumerable<Grip> SoilGrips(Floor floor)
    {
        if (floor.Soil is not { Zones.Count: 0 } soil)
        {
            yield break;
        }

        var most = Terrain.Height * 0.6;
        var (front, back) = (Terrain.Front + 0.03, Terrain.Back - 0.03);
        var (low, high) = (
            Terrain.Soil(X(Terrain.Front), Y(Terrain.Front)),
            Terrain.Soil(X(Terrain.Back), Y(Terrain.Back))
        );
        if (soil.Depth is not null)
        {
            yield return new Grip("floor.soil", "soil", At(Span * 0.62, Terrain.Drainage + low), PerMeter)
            {
                Up = new("floor.soil.depth", low, LeastLayer, most),
            };
        }

        yield return new Grip("floor.soil", "soil in front", At(front, Terrain.Drainage + low), PerMeter)
        {
            Up = new("floor.soil.front", low, LeastLayer, most),
        };
        yield return new Grip("floor.soil", "soil at the back", At(back, Terrain.Drainage + high), PerMeter)
        {
            Up = new("floor.soil.back", high, LeastLayer, most),
        };
    }

    private IEnumerable<Grip> FittingGrips()
    {
        var design = scene.Design;
        if (scene.Drain is { } drain && design.Drain is not null)
        {
            var side = drain.Side is Side.Front or Side.Left ? 0.02 : Span - 0.02;
            yield return new Grip("drain", "height of the drain", At(side, drain.Height), PerMeter)
            {
                Up = new("drain.height", drain.Height, 0.0, Math.Max(0.02, Terrain.Drainage)),
            };
        }

        var (low, high) = lengthwise ? (Side.Left, Side.Right) : (Side.Front, Side.Back);
        foreach (var vent in scene.Vents.Where(v => v.Side == low || v.Side == high))
        {
            yield return new Grip(
                vent.Key,
                "vent",
                At(vent.Side == low ? -wall / 2 : Span + (wall / 2), vent.Height),
                PerMeter
            )
            {
                Up = new($"{vent.Key}.height", vent.Height, 0.01, Terrain.Height - 0.01),
            };
        }

        for (var i = 0; i < Math.Min(design.Lamps.Count, 4); i++)
        {
            var above = Math.Min(MostLamp, design.Lamps[i].Above?.Si ?? 0.03);
            var middle = Span * (i + 1) / (Math.Min(design.Lamps.Count, 4) + 1);
            yield return new Grip($"lamps[{i}]", "lamp", At(middle, Terrain.Height + above + 0.015), PerMeter)
            {
                Up = new($"lamps[{i}].above", above, 0.0, MostLamp),
            };
        }
    }

    /// <summary>A plant or piece: from front to back always, in height where it hangs.</summary>
    private IEnumerable<Grip> Placed(string key, string name, (double X, double Y, double Z) at, bool isHung)
    {
        var across = lengthwise ? at.X : at.Y;
        yield return new Grip(Part(key), name, At(across, at.Z), PerMeter)
        {
            Across = new($"{Part(key)}.at.{(lengthwise ? "x" : "y")}", across, 0.0, Span),
            Up = isHung ? new($"{Part(key)}.at.z", at.Z, 0.0, Terrain.Height) : null,
            Hidden = lengthwise
                ? new($"{Part(key)}.at.y", at.Y, 0.0, Terrain.DepthOfBox)
                : new($"{Part(key)}.at.x", at.X, 0.0, Terrain.Length),
        };
    }

    /// <summary>plants[0] of plants[0].at.</summary>
    internal static string Part(string key) =>
        key.EndsWith(".at", StringComparison.Ordinal) ? key[..^3] : key;
}
