using System.Collections.Immutable;

namespace Litterfall.Quantities.Packs;

/// <summary>
/// A pack on offer: its usable liters and its price, in whole cents, from a number of packs on.
/// </summary>
/// <param name="Name">Key of the pack.</param>
/// <param name="Liters">Usable loose liters.</param>
/// <param name="Tiers">All-units price tiers, lowest number first; the first starts at 1.</param>
public sealed record PackOffer(string Name, double Liters, ImmutableArray<PackTier> Tiers)
{
    /// <summary>An offer without breaks.</summary>
    public static PackOffer Flat(string name, double liters, long cents) =>
        new(name, liters, [new(1, cents)]);

    /// <summary>
    /// Price of so many packs in cents: the price of the highest tier reached applies to all.
    /// </summary>
    public long Cents(int packs)
    {
        var each = 0L;
        foreach (var tier in Tiers)
        {
            if (packs >= tier.FromPacks)
            {
                each = tier.CentsEach;
            }
        }

        return each * packs;
    }
}

/// <summary>From this many packs on each costs so many cents.</summary>
public sealed record PackTier(int FromPacks, long CentsEach);

/// <summary>So many of one offer.</summary>
public sealed record PackLine(PackOffer Offer, int Packs);

/// <summary>A cheapest set of packs; ties go to the least left over, then to the fewest packs.</summary>
/// <param name="Lines">Packs to buy.</param>
/// <param name="Cents">Price of all.</param>
/// <param name="LeftLiters">Liters left over.</param>
/// <param name="IsProved">False when the search was cut short.</param>
public sealed record PackSet(ImmutableArray<PackLine> Lines, long Cents, double LeftLiters, bool IsProved)
{
    /// <summary>Number of packs.</summary>
    public int Packs => Lines.Sum(line => line.Packs);
}

/// <summary>
/// Exact choice of packs for one material by depth-first search; the bound is the cheapest price per liter
/// still
/// on offer.
/// </summary>
public static class PackChoice
{
    private const long MostNodes = 2_000_000;
    private const double Tolerance = 1e-9;

    /// <summary>The cheapest set that covers a need, or null when nothing is on offer.</summary>
    /// <param name="needLiters">Net need in liters; at or below 0 nothing is bought.</param>
    /// <param name="offers">Packs of this material.</param>
    public static PackSet? Cheapest(double needLiters, IReadOnlyCollection<PackOffer> offers)
    {
        if (needLiters <= Tolerance)
        {
            return new PackSet([], 0, 0, true);
        }

        var usable = offers.Where(o => o.Liters > 0 && o.Tiers.Length > 0).ToArray();
        return usable.Length == 0 ? null : new Search(needLiters, usable).Run();
    }

    private sealed class Search
    {
        private readonly double need;
        private readonly PackOffer[] offers;
        private readonly double[] cheapestAfter;
        private readonly int[] counts;
        private long nodes;
        private int[]? best;
        private (long Cents, double Left, int Packs) bestRank = (
            long.MaxValue,
            double.MaxValue,
            int.MaxValue
        );

        public Search(double needLiters, PackOffer[] offers)
        {
            need = needLiters;
            this.offers =
            [
                .. offers
                    .OrderBy(PerLiter)
                    .ThenByDescending(o => o.Liters)
                    .ThenBy(o => o.Name, StringComparer.Ordinal),
            ];
            counts = new int[offers.Length];
            cheapestAfter = new double[offers.Length + 1];
            cheapestAfter[^1] = double.PositiveInfinity;
            for (var i = offers.Length - 1; i >= 0; i--)
            {
                cheapestAfter[i] = Math.Min(cheapestAfter[i + 1], PerLiter(this.offers[i]));
            }
        }

        public PackSet Run()
        {
            Descend(0, need, 0);
            var lines = offers
                .Select((offer, i) => new PackLine(offer, best![i]))
                .Where(line => line.Packs > 0);
            return new PackSet(
                [.. lines.OrderByDescending(line => line.Offer.Liters)],
                bestRank.Cents,
                bestRank.Left,
                nodes < MostNodes
            );
        }

        private static double PerLiter(PackOffer offer) => offer.Tiers.Min(t => t.CentsEach) / offer.Liters;

        private void Descend(int at, double rest, long cents)
        {
            if (rest <= Tolerance)
            {
                Keep(-rest, cents);
                return;
            }

            if (
                at == offers.Length
                || ++nodes > MostNodes
                || cents + rest * cheapestAfter[at] > bestRank.Cents + 1e-6
            )
            {
                return;
            }

            var offer = offers[at];
            var enough = (int)Math.Ceiling(rest / offer.Liters - Tolerance);
            foreach (var tier in offer.Tiers.Where(t => t.FromPacks > enough))
            {
                Take(at, tier.FromPacks, rest, cents);
            }

            for (var packs = enough; packs >= 0; packs--)
            {
                Take(at, packs, rest, cents);
            }

            counts[at] = 0;
        }

        private void Take(int at, int packs, double rest, long cents)
        {
            counts[at] = packs;
            Descend(at + 1, rest - packs * offers[at].Liters, cents + offers[at].Cents(packs));
            counts[at] = 0;
        }

        private void Keep(double left, long cents)
        {
            var rank = (cents, left < Tolerance ? 0 : left, counts.Sum());
            var better =
                rank.cents != bestRank.Cents ? rank.cents < bestRank.Cents
                : Math.Abs(rank.Item2 - bestRank.Left) > Tolerance ? rank.Item2 < bestRank.Left
                : rank.Item3 < bestRank.Packs;
            if (better)
            {
                bestRank = rank;
                best = [.. counts];
            }
        }
    }
}
