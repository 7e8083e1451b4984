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
/// Cups really placed in a carton: stacks with card between cups, in rows seen from above, with padding at
/// floor and lid. Stacks are kept as low as the floor allows.
/// </summary>
public sealed record CartonFit
{
    /// <summary>Between cups, m; own choice, filled with padding.</summary>
    public const double GapMeters = 0.004;

    /// <summary>Card between two layers, m.</summary>
    private const double SheetMeters = 0.003;

    /// <summary>How much higher the stacks are tried each time, m.</summary>
    private const double HeightStepMeters = 0.01;

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

        var placed = Best([.. items], packed.Room);
        var taken = items.Sum(i => i.Liters) + packs.Sum(p => PackPlaces.Liters(p));
        return new()
        {
            Places = [.. packed.Places, .. placed],
            Left = items.Count - placed.Count,
            FreeLiters = Math.Max(0, carton.Liters - taken),
        };
    }

    /// <summary>The lowest stacks that take all; else the highest, as far as they go.</summary>
    private static List<PlacedThing> Best(FitItem[] items, CupRoom room)
    {
        var sorted = items
            .Where(i => i.HeightMeters <= room.Height + Rounding)
            .OrderByDescending(i => i.WidthMeters)
            .ThenByDescending(i => i.HeightMeters)
            .ThenBy(i => i.Label, StringComparer.Ordinal)
            .ToList();
        List<PlacedThing> best = [];
        var height = sorted.Count > 0 ? sorted.Max(i => i.HeightMeters) : room.Height;
        while (true)
        {
            var stacks = Stacks(sorted, height);
            foreach (var isTurned in new[] { false, true })
            {
                var placed = Standing(stacks, room, isTurned);
                best = placed.Count > best.Count ? placed : best;
            }

            if (best.Count == items.Length || height >= room.Height)
            {
                return best;
            }

            height = Math.Min(room.Height, height + HeightStepMeters);
        }
    }

    /// <summary>Stacks of at most a height, nothing wider on anything narrower.</summary>
    private static List<Stack> Stacks(List<FitItem> sorted, double height)
    {
        var stacks = new List<Stack>();
        foreach (var item in sorted)
        {
            var stack = stacks.Find(s => s.Takes(item, height));
            if (stack is null)
            {
                stack = new(item.WidthMeters);
                stacks.Add(stack);
            }

            stack.Add(item);
        }

        return stacks;
    }

    /// <summary>Stacks in rows on the floor, the widest first; those without room are left out.</summary>
    private static List<PlacedThing> Standing(List<Stack> stacks, CupRoom room, bool isTurned)
    {
        var (length, width) = isTurned ? (room.Width, room.Length) : (room.Length, room.Width);
        var placed = new List<PlacedThing>();
        var rows = new List<Row>();
        var across = 0.0;
        foreach (var stack in stacks)
        {
            var row = rows.Find(r => r.Takes(stack.Width, length));
            if (row is null)
            {
                if (across + stack.Width > width + Rounding || stack.Width > length + Rounding)
                {
                    continue;
                }

                row = new Row(across, stack.Width);
                rows.Add(row);
                across += stack.Width + GapMeters;
            }

            var (x, y) = isTurned ? (row.Across, row.Used) : (row.Used, row.Across);
            placed.AddRange(stack.At(room.X + x, room.Y + y, room.Z));
            row.Used += stack.Width + GapMeters;
        }

        return placed;
    }

    private sealed class Stack(double width)
    {
        private readonly List<(FitItem Item, double Z)> items = [];
        private double top;

        public double Width { get; } = width;

        public bool Takes(FitItem item, double height) =>
            item.WidthMeters <= Width + Rounding && top + item.HeightMeters <= height + Rounding;

        public void Add(FitItem item)
        {
            items.Add((item, top));
            top += item.HeightMeters + SheetMeters;
        }

        public IEnumerable<PlacedThing> At(double x, double y, double z) =>
            items.Select(
                (one, i) =>
                    new PlacedThing(
                        one.Item.Kind,
                        one.Item.Label,
                        x + ((Width - one.Item.WidthMeters) / 2),
                        y + ((Width - one.Item.WidthMeters) / 2),
                        one.Item.WidthMeters,
                        one.Item.WidthMeters
                    )
                    {
                        Layer = i,
                        ZMeters = z + one.Z,
                        HeightMeters = one.Item.HeightMeters,
                        IsRound = true,
                    }
            );
    }

    private sealed class Row(double across, double depth)
    {
        public double Across { get; } = across;

        public double Used { get; set; }

        public bool Takes(double width, double length) =>
            width <= depth + Rounding && Used + width <= length + Rounding;
    }
}
