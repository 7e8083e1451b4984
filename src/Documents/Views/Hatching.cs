using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>What the grains of a material look like in a section.</summary>
internal enum Grain
{
    Pebble,
    Flake,
    Chip,
    Fiber,
    Dot,
    Leaf,
    Cork,
}

/// <summary>
/// Hatching by material, readable in grey print: clay as rings, bark as flakes, charcoal as angular chips,
/// moss
/// and fiber as strokes, fine stuff as dots, litter as leaves. A mix shows the grains of its parts in their
/// shares. Grains sit on a jittered grid that is the same on every run.
/// </summary>
internal static class Hatching
{
    /// <summary>Grains of a material, by its catalog key and kind.</summary>
    public static Grain GrainOf(EntryKind? kind, string key) =>
        kind switch
        {
            EntryKind.Aggregate => key.StartsWith("perlite", StringComparison.Ordinal)
                ? Grain.Dot
                : Grain.Pebble,
            EntryKind.Moss => Grain.Fiber,
            EntryKind.Litter => Grain.Leaf,
            EntryKind.Background or EntryKind.Hardscape => Grain.Cork,
            _ when Has(key, "bark") || Has(key, "chips") => Grain.Flake,
            _ when Has(key, "charcoal") => Grain.Chip,
            _ when Has(key, "fern") || Has(key, "sphagnum") || Has(key, "fibre") => Grain.Fiber,
            _ when Has(key, "clay-8") || Has(key, "clay-4") || Has(key, "pumice") || Has(key, "lava") =>
                Grain.Pebble,
            _ when Has(key, "leaf-mould") => Grain.Leaf,
            _ => Grain.Dot,
        };

    /// <summary>The grains of a layer with their shares.</summary>
    public static ImmutableArray<(Grain Grain, double Share)> Of(FloorLayer layer) =>
        layer.Components.Length > 0
            ? [.. layer.Components.Select(c => (GrainOf(c.Material.Kind, c.Material.Key), c.Share.Si))]
            : [(GrainOf(layer.Material?.Kind, layer.Material?.Key ?? ""), 1)];

    /// <summary>Fills an outline with grains.</summary>
    public static void Fill(
        Sketch sketch,
        ImmutableArray<Spot> outline,
        ImmutableArray<(Grain Grain, double Share)> grains,
        double pitch = 2.1
    )
    {
        var lines = ImmutableArray.CreateBuilder<Contour>();
        var rings = ImmutableArray.CreateBuilder<Ring>();
        var (left, top) = (outline.Min(s => s.X), outline.Min(s => s.Y));
        var small = Math.Clamp(Thickness(outline) / (pitch * 2.6), 0.5, 1);
        pitch *= small;
        var columns = (int)Math.Min(400, (outline.Max(s => s.X) - left) / pitch + 1);
        var rows = (int)Math.Min(400, (outline.Max(s => s.Y) - top) / (pitch * 0.8) + 1);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var seed = (uint)(row * 7919 + column * 104729);
                var spot = new Spot(
                    left + (column + 0.5 * (row % 2) + 0.25 + 0.4 * Chance(seed)) * pitch,
                    top + (row + 0.3 + 0.4 * Chance(seed + 1)) * pitch * 0.8
                );
                Grow(spot, Pick(grains, Chance(seed + 2)), (seed, small), (outline, lines, rings));
            }
        }

        sketch.Add(
            new PathMark(lines.ToImmutable(), rings.ToImmutable())
            {
                Pen = new Pen(Tone.Quiet, 0.15),
                Key = sketch.Key,
                Layer = Layers.Hatch,
            }
        );
    }

    /// <summary>Mean thickness of an outline: its area over its longer extent.</summary>
    private static double Thickness(ImmutableArray<Spot> outline)
    {
        var twice = 0.0;
        for (int i = 0, j = outline.Length - 1; i < outline.Length; j = i++)
        {
            twice += outline[j].X * outline[i].Y - outline[i].X * outline[j].Y;
        }

        var wide = outline.Max(s => s.X) - outline.Min(s => s.X);
        var tall = outline.Max(s => s.Y) - outline.Min(s => s.Y);
        return Math.Abs(twice) / 2 / Math.Max(0.1, Math.Max(wide, tall));
    }

    private static bool Has(string key, string part) => key.Contains(part, StringComparison.Ordinal);

    private static void Grow(
        Spot at,
        Grain grain,
        (uint Seed, double Size) draw,
        (
            ImmutableArray<Spot> Outline,
            ImmutableArray<Contour>.Builder Lines,
            ImmutableArray<Ring>.Builder Rings
        ) to
    )
    {
        var size = draw.Size * (0.75 + 0.5 * Chance(draw.Seed + 3));
        var turn = Chance(draw.Seed + 4) * Math.PI;
        var radius = Radius(grain) * size;
        if (!IsInside(to.Outline, at, radius * 0.8))
        {
            return;
        }

        switch (grain)
        {
            case Grain.Pebble:
            case Grain.Dot:
                to.Rings.Add(new Ring(at, radius));
                break;
            case Grain.Flake:
                to.Lines.Add(
                    new(Turned(at, turn, [(-1, -.35), (.6, -.4), (1, .2), (-.7, .45)], radius), true)
                );
                break;
            case Grain.Chip:
                to.Lines.Add(new(Turned(at, turn, [(-.9, .5), (.1, -.9), (.9, .6)], radius), true));
                break;
            case Grain.Leaf:
                to.Lines.Add(
                    new(
                        Turned(at, turn * 0.4 - 0.6, [(-1, 0), (-.2, -.45), (1, 0), (-.2, .45)], radius),
                        true
                    )
                );
                break;
            case Grain.Cork:
                to.Lines.Add(
                    new(Turned(at, turn, [(-1, .2), (-.3, -.3), (.3, .3), (1, -.2)], radius), false)
                );
                break;
            default:
                to.Lines.Add(
                    new(Turned(at, turn * 0.5 - 0.8, [(-1, .3), (0, -.15), (1, .25)], radius), false)
                );
                break;
        }
    }

    private static double Radius(Grain grain) =>
        grain switch
        {
            Grain.Pebble => 0.72,
            Grain.Dot => 0.14,
            Grain.Flake => 0.8,
            Grain.Chip => 0.6,
            Grain.Leaf => 1.0,
            _ => 0.8,
        };

    private static ImmutableArray<Spot> Turned(
        Spot at,
        double turn,
        ReadOnlySpan<(double X, double Y)> shape,
        double size
    )
    {
        var (sin, cos) = Math.SinCos(turn);
        var spots = ImmutableArray.CreateBuilder<Spot>(shape.Length);
        foreach (var (x, y) in shape)
        {
            spots.Add(at.Moved(size * (x * cos - y * sin), size * (x * sin + y * cos)));
        }

        return spots.MoveToImmutable();
    }

    private static Grain Pick(ImmutableArray<(Grain Grain, double Share)> grains, double chance)
    {
        var end = 0.0;
        foreach (var (grain, share) in grains)
        {
            end += share;
            if (chance < end)
            {
                return grain;
            }
        }

        return grains[^1].Grain;
    }

    /// <summary>A number from 0 to 1 that depends on the seed alone (integer hash).</summary>
    private static double Chance(uint seed)
    {
        var x = seed + 0x9E3779B9;
        x = (x ^ (x >> 16)) * 0x85EBCA6B;
        x = (x ^ (x >> 13)) * 0xC2B2AE35;
        return (x ^ (x >> 16)) / (double)uint.MaxValue;
    }

    private static bool IsInside(ImmutableArray<Spot> outline, Spot at, double margin)
    {
        var inside = false;
        for (int i = 0, j = outline.Length - 1; i < outline.Length; j = i++)
        {
            var (a, b) = (outline[i], outline[j]);
            if (a.Y > at.Y != b.Y > at.Y && at.X < (b.X - a.X) * (at.Y - a.Y) / (b.Y - a.Y) + a.X)
            {
                inside = !inside;
            }

            if (Distance(at, a, b) < margin)
            {
                return false;
            }
        }

        return inside;
    }

    private static double Distance(Spot at, Spot a, Spot b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = dx * dx + dy * dy;
        var t = length <= 0 ? 0 : Math.Clamp(((at.X - a.X) * dx + (at.Y - a.Y) * dy) / length, 0, 1);
        return Math.Sqrt(Math.Pow(at.X - a.X - t * dx, 2) + Math.Pow(at.Y - a.Y - t * dy, 2));
    }
}
