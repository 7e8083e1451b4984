using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Litterfall.Quantities.Packs;

/// <summary>A supplier's terms, in whole cents.</summary>
/// <param name="Name">The supplier.</param>
/// <param name="DeliveryCents">Charge for a delivery.</param>
/// <param name="FreeFromCents">Goods from which delivery is free; null for never.</param>
/// <param name="MinimumCents">Smallest order.</param>
public sealed record SupplierTerms(string Name, long DeliveryCents, long? FreeFromCents, long MinimumCents);

/// <summary>A pack of a material sold by a supplier.</summary>
public sealed record SupplierOffer(string Supplier, string Material, PackOffer Pack);

/// <summary>So many packs of an offer.</summary>
public sealed record Purchase(SupplierOffer Offer, int Packs, long Cents);

/// <summary>A proved cheapest basket over several suppliers.</summary>
/// <param name="Purchases">What to buy.</param>
/// <param name="TotalCents">Goods and deliveries.</param>
/// <param name="BoundCents">No basket costs less.</param>
/// <param name="IsProved">True when total and bound meet.</param>
public sealed record Basket(
    ImmutableArray<Purchase> Purchases,
    long TotalCents,
    long BoundCents,
    bool IsProved
);

/// <summary>
/// Which packs from which suppliers: all-units price tiers, delivery charges, free delivery and smallest
/// orders,
/// as an integer program solved to proof (one worker, fixed seed, deterministic limit).
/// </summary>
public static class SupplierChoice
{
    /// <summary>The cheapest basket that covers every need, or null when none does.</summary>
    /// <param name="needLiters">Net need by material in liters (or pieces).</param>
    /// <param name="terms">Suppliers.</param>
    /// <param name="offers">Their packs.</param>
    public static Basket? Cheapest(
        IReadOnlyDictionary<string, double> needLiters,
        IReadOnlyCollection<SupplierTerms> terms,
        IReadOnlyCollection<SupplierOffer> offers
    )
    {
        var program = new Program(needLiters, terms, offers);
        return program.Solve();
    }

    private sealed class Program
    {
        private const long LitersScale = 1_000;
        private readonly CpModel model = new();
        private readonly List<(SupplierOffer Offer, PackTier Tier, IntVar Packs)> choices = [];
        private readonly List<LinearExpr> costs = [];
        private readonly Dictionary<string, List<LinearExpr>> spend = new(StringComparer.Ordinal);

        public Program(
            IReadOnlyDictionary<string, double> need,
            IReadOnlyCollection<SupplierTerms> terms,
            IReadOnlyCollection<SupplierOffer> offers
        )
        {
            foreach (var supplier in terms)
            {
                spend[supplier.Name] = [];
            }

            foreach (var offer in offers.Where(o => need.GetValueOrDefault(o.Material) > 0))
            {
                AddOffer(offer, need[offer.Material]);
            }

            foreach (var (material, liters) in need.Where(n => n.Value > 0))
            {
                var cover = choices
                    .Where(c => c.Offer.Material == material)
                    .Select(c =>
                        (LinearExpr)(c.Packs * (long)Math.Floor(c.Offer.Pack.Liters * LitersScale + 1e-6))
                    );
                model.Add(LinearExpr.Sum(cover) >= (long)Math.Ceiling(liters * LitersScale - 1e-6));
            }

            foreach (var supplier in terms)
            {
                AddTerms(supplier);
            }

            model.Minimize(LinearExpr.Sum(costs));
        }

        public Basket? Solve()
        {
            var solver = new CpSolver
            {
                StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:30",
            };
            var status = solver.Solve(model);
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return null;
            }

            var purchases = choices
                .Select(c => (c.Offer, c.Tier, Packs: (int)solver.Value(c.Packs)))
                .Where(c => c.Packs > 0)
                .Select(c => new Purchase(c.Offer, c.Packs, c.Packs * c.Tier.CentsEach))
                .ToImmutableArray();
            return new Basket(
                purchases,
                (long)Math.Round(solver.ObjectiveValue),
                (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6),
                status == CpSolverStatus.Optimal
            );
        }

        private void AddOffer(SupplierOffer offer, double need)
        {
            var most = (int)Math.Ceiling(need / offer.Pack.Liters) + offer.Pack.Tiers.Max(t => t.FromPacks);
            var used = new List<BoolVar>();
            for (var i = 0; i < offer.Pack.Tiers.Length; i++)
            {
                var tier = offer.Pack.Tiers[i];
                var last = i + 1 < offer.Pack.Tiers.Length ? offer.Pack.Tiers[i + 1].FromPacks - 1 : most;
                var packs = model.NewIntVar(0, last, $"{offer.Pack.Name}:{i}");
                var chosen = model.NewBoolVar($"{offer.Pack.Name}:{i}?");
                model.Add(packs >= tier.FromPacks).OnlyEnforceIf(chosen);
                model.Add(packs == 0).OnlyEnforceIf(chosen.Not());
                used.Add(chosen);
                choices.Add((offer, tier, packs));
                costs.Add(packs * tier.CentsEach);
                spend[offer.Supplier].Add(packs * tier.CentsEach);
            }

            model.AddAtMostOne(used);
        }

        private void AddTerms(SupplierTerms supplier)
        {
            var goods = LinearExpr.Sum(spend[supplier.Name]);
            var open = model.NewBoolVar(supplier.Name);
            var free = model.NewBoolVar(supplier.Name + " free");
            model.Add(goods == 0).OnlyEnforceIf(open.Not());
            model.Add(goods >= supplier.MinimumCents).OnlyEnforceIf(open);
            model.AddImplication(free, open);
            if (supplier.FreeFromCents is { } from)
            {
                model.Add(goods >= from).OnlyEnforceIf(free);
            }
            else
            {
                model.Add(free == 0);
            }

            costs.Add(open * supplier.DeliveryCents - free * supplier.DeliveryCents);
        }
    }
}
