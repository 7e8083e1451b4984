using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Packing;

/// <summary>A cup or a pot to be placed.</summary>
/// <param name="Kind">"cup" or "pot".</param>
/// <param name="Label">Short word beside it.</param>
/// <param name="WidthMeters">Outer width, m.</param>
/// <param name="HeightMeters">Height with its lid, m.</param>
public sealed record FitItem(string Kind, string Label, double WidthMeters, double HeightMeters)
{
    /// <summary>Room it takes, L.</summary>
    public double Liters => 1000 * Math.PI / 4 * WidthMeters * WidthMeters * HeightMeters;
}

/// <summary>Room left for cups in a carton, m.</summary>
internal readonly record struct CupRoom(
    double X,
    double Y,
    double Z,
    double Length,
    double Width,
    double Height
);

/// <summary>
/// Cups really placed in a carton: layers from below, each in rows seen from above, with padding at floor and
/// lid and card between the layers.
/// </summary>
public sealed record CartonFit
{
    /// <summary>Between cups, m; own choice, filled with padding.</summary>
    public const double GapMeters = 0.004;

    /// <summary>Card between two layers, m.</summary>
    private const double SheetMeters = 0.003;

    private const double Rounding = 1e-9;

    /// <summary>Where everything lies; as far as it fits.</summary>
    public Seq<PlacedThing> Places { get; init; } = [];

    /// <summary>Cups and pots that found no room.</summary>
    public int Left { get; init; }

    /// <summary>Room that neither cups nor packs take, L.</summary>
    public double FreeLiters { get; init; }

    /// <summary>Why the packs cannot lie in it; empty where they can.</summary>
    public string PackRefusal { get; init; } = "";

    /// <summary>True where all of it fits.</summary>
    public bool Fits => Left == 0 && PackRefusal.Length == 0;

    /// <summary>Places cups and packs in a carton.</summary>
    /// <param name="carton">The carton.</param>
    /// <param name="items">Cups and pots.</param>
    /// <param name="packs">Each pack, one by one.</param>
    public static CartonFit Place(
        Carton carton,
        IReadOnlyCollection<FitItem> items,
        IReadOnlyCollection<TransportPack> packs
    )
    {
        var packed = PackPlaces.Place(carton, packs);
        if (packed.Refusal.Length > 0)
        {
            return new() { Left = items.Count, PackRefusal = packed.Refusal };
        }

        FitItem[] sorted =
        [
            .. items
                .OrderByDescending(i => i.HeightMeters)
                .ThenByDescending(i => i.WidthMeters)
                .ThenBy(i => i.Label, StringComparer.Ordinal),
        ];
        var along = Layers(sorted, packed.Room, false);
        var across = Layers(sorted, packed.Room, true);
        // More cups placed first; for as many, fewer layers.
        var isAlong =
            along.Count != across.Count ? along.Count > across.Count : along.Layers <= across.Layers;
        var best = isAlong ? along : across;
        var taken = items.Sum(i => i.Liters) + packs.Sum(p => PackPlaces.Liters(p));
        return new()
        {
            Places = [.. packed.Places, .. best.Places],
            Left = items.Count - best.Count,
            FreeLiters = Math.Max(0, carton.Liters - taken),
        };
    }

    private static (List<PlacedThing> Places, int Count, int Layers) Layers(
        FitItem[] sorted,
        CupRoom room,
        bool isTurned
    )
    {
        var floor = isTurned ? (room.Width, room.Length) : (room.Length, room.Width);
        var left = sorted.ToList();
        var placed = new List<PlacedThing>();
        var (layer, z) = (0, room.Z);
        while (left.Count > 0)
        {
            var height = left.FirstOrDefault(i =>
                i.WidthMeters <= Math.Min(floor.Item1, floor.Item2) + Rounding
                && z + i.HeightMeters <= room.Z + room.Height + Rounding
            )?.HeightMeters;
            if (height is not { } tall)
            {
                break;
            }

            foreach (var (item, at) in Rows(left, floor, tall))
            {
                var (x, y) = isTurned ? (at.Across, at.Along) : (at.Along, at.Across);
                placed.Add(
                    new(item.Kind, item.Label, room.X + x, room.Y + y, item.WidthMeters, item.WidthMeters)
                    {
                        Layer = layer,
                        ZMeters = z,
                        HeightMeters = item.HeightMeters,
                        IsRound = true,
                    }
                );
            }

            z += tall + SheetMeters;
            layer++;
        }

        return (placed, placed.Count, layer);
    }

    /// <summary>Fills one layer with what is no higher than it, row by row, and takes it off the list.</summary>
    private static List<(FitItem Item, (double Along, double Across) At)> Rows(
        List<FitItem> left,
        (double Length, double Width) floor,
        double height
    )
    {
        var placed = new List<(FitItem, (double, double))>();
        var rows = new List<Row>();
        var across = 0.0;
        foreach (var item in left.Where(i => i.HeightMeters <= height + Rounding).ToList())
        {
            var row = rows.Find(r => r.Takes(item, floor.Length));
            if (
                row is null
                && across + item.WidthMeters <= floor.Width + Rounding
                && item.WidthMeters <= floor.Length + Rounding
            )
            {
                row = new Row(across, item.WidthMeters);
                rows.Add(row);
                across += item.WidthMeters + GapMeters;
            }

            if (row is not null)
            {
                placed.Add((item, (row.Used, row.Across)));
                row.Used += item.WidthMeters + GapMeters;
                left.Remove(item);
            }
        }

        return placed;
    }

    private sealed class Row(double across, double depth)
    {
        public double Across { get; } = across;

        public double Used { get; set; }

        public bool Takes(FitItem item, double length) =>
            item.WidthMeters <= depth + Rounding && Used + item.WidthMeters <= length + Rounding;
    }
}
