using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>All ways of packing that may be tried for a parcel on a day.</summary>
internal sealed class PackSpace
{
    /// <summary>Most packs of one kind in a parcel; more is a carton of its own.</summary>
    public const int MostPacks = 10;

    private static readonly int[] Counts = [1, 2, 3, 4, 6, 8, MostPacks];

    private readonly ImmutableArray<PackedCarton> cartons;
    private readonly ImmutableArray<TransportPack> packs;
    private readonly Func<string, int> stock;
    private readonly HashSet<string> refusals = new(StringComparer.Ordinal);

    /// <summary>Makes one.</summary>
    /// <param name="cartons">Cartons in stock that hold the contents.</param>
    /// <param name="packs">Packs of the shop.</param>
    /// <param name="stock">How many of a pack there are.</param>
    public PackSpace(
        ImmutableArray<PackedCarton> cartons,
        ImmutableArray<TransportPack> packs,
        Func<string, int> stock
    ) => (this.cartons, this.packs, this.stock) = (cartons, packs, stock);

    /// <summary>Coldest forecast of the route, °C.</summary>
    public required double Lowest { get; init; }

    /// <summary>Hours of the longest usual journey.</summary>
    public required double RouteHours { get; init; }

    /// <summary>True where packs may have to warm.</summary>
    public required bool Warms { get; init; }

    /// <summary>True where packs may have to cool.</summary>
    public required bool Cools { get; init; }

    /// <summary>True where ice may be used: nothing in the parcel but plants and moss.</summary>
    public required bool TakesIce { get; init; }

    /// <summary>Why packs were left out, one sentence each.</summary>
    public IEnumerable<string> Refusals => refusals.Order(StringComparer.Ordinal);

    /// <summary>Each carton without packs.</summary>
    public IEnumerable<WayOfPacking> Plain() => cartons.Select(c => new WayOfPacking(c, []));

    /// <summary>Each carton with each allowed set of packs.</summary>
    public List<WayOfPacking> Packed()
    {
        var ways = new List<WayOfPacking>();
        foreach (var carton in cartons)
        {
            var melting = Melting(carton).ToList();
            ways.AddRange(melting.Select(m => new WayOfPacking(carton, [m])));
            foreach (var heat in Heat(carton))
            {
                ways.Add(new(carton, [heat]));
                ways.AddRange(
                    melting
                        .Where(m => m.Pack.Kind == PackKind.PhaseChange)
                        .Select(m => new WayOfPacking(carton, [heat, m]))
                );
            }
        }

        ways.RemoveAll(w => w.Liters > w.Carton.FreeLiters);
        return ways;
    }

    private IEnumerable<(TransportPack Pack, PackUse Use)> Melting(PackedCarton carton)
    {
        foreach (var pack in packs.Where(IsMelting))
        {
            var room = pack.Liters > 0 ? (int)(carton.FreeLiters / pack.Liters) : MostPacks;
            var most = Math.Min(Math.Min(MostPacks, room), stock(pack.Key));
            foreach (var n in Counts.Where(n => n <= most).Append(most).Where(n => n > 0).Distinct())
            {
                foreach (var share in Shares(pack))
                {
                    yield return (pack, new(pack.Key, n, share));
                }
            }
        }
    }

    private bool IsMelting(TransportPack pack) =>
        pack.Kind == PackKind.PhaseChange || (pack.Kind == PackKind.Ice && TakesIce && Cools);

    private double[] Shares(TransportPack pack) =>
        pack.Kind == PackKind.Ice ? [0]
        : Warms && !Cools ? [1, 0.5]
        : Cools && !Warms ? [0, 0.5]
        : [0.5, 1, 0];

    private IEnumerable<(TransportPack Pack, PackUse Use)> Heat(PackedCarton carton)
    {
        foreach (var pack in packs.Where(p => p.Kind == PackKind.Heat && stock(p.Key) > 0))
        {
            var refusal = PackLimits.HeatRefusal(carton.Carton, pack, Lowest, RouteHours);
            if (refusal.Length > 0)
            {
                refusals.Add(refusal);
            }
            else if (Warms)
            {
                yield return (pack, new(pack.Key, PackLimits.MostHeatPacks, 0));
            }
        }
    }
}
