using System.Collections.Immutable;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;
using Litterfall.Workshop.Buying;

namespace Litterfall.App.Trade;

/// <summary>A purchase to plan.</summary>
/// <param name="Purchase">The purchase.</param>
/// <param name="Seconds">How long it may take; null for as long as it does.</param>
/// <param name="PlaceOf">Where a key of the case stands.</param>
public sealed record BuyCase(PurchaseCase Purchase, double? Seconds, Func<string, TextSpan> PlaceOf);

/// <summary>Reads a case of <c>buy</c>.</summary>
public static class BuyForm
{
    private const int MostSuppliers = 20;
    private const int MostProducts = 1000;
    private const int MostOffers = 10_000;
    private const int MostBreaks = 50;
    private const int MostCents = 100_000_000;
    private const int MostPacks = 1_000_000;
    private static readonly NumberRange Liters = NumberRange.UpTo(1e6);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static BuyCase? Read(TreeForm form)
    {
        // Cases that carry their answer are taken as they are.
        form.Ignore("name", "optimumCents", "oneOptimalPlan", "reproved");
        var suppliers = Each(form, "suppliers", "the supplier", MostSuppliers, Supplier);
        var products = Each(form, "products", "the product", MostProducts, Product);
        var offers = form.Objects("offers", "the offer", MostOffers)
            .Select(o => Offer(o, [.. suppliers.Select(s => s.Name)], [.. products.Select(p => p.Name)]))
            .ToImmutableArray();
        var budget = form.OptionalWhole("budgetCents", 0, int.MaxValue);
        var seconds = form.OptionalNumber("seconds", NumberRange.Positive(3600.0));
        form.Close();
        if (!form.IsGood)
        {
            return null;
        }

        return new BuyCase(
            new PurchaseCase
            {
                Suppliers = [.. suppliers],
                Products = [.. products],
                Offers = [.. offers.OfType<PurchaseOffer>()],
                BudgetCents = budget,
            },
            seconds,
            form.PlaceOf
        );
    }

    /// <summary>The members of an object whose keys are names.</summary>
    private static List<T> Each<T>(
        TreeForm form,
        string key,
        string what,
        int most,
        Func<TreeForm, string, T> read
    )
    {
        var all = new List<T>();
        if (form.Object(key, what) is not { } members)
        {
            return all;
        }

        var names = members.Keys.Select(k => k.Text).ToList();
        if (names.Count is 0 || names.Count > most)
        {
            form.Refuse(
                key,
                FormattableString.Invariant($"{key} holds {names.Count} names"),
                FormattableString.Invariant($"1 to {most} names, each with an object in braces")
            );
            return all;
        }

        foreach (var name in names)
        {
            if (members.Object(name, what) is { } member)
            {
                all.Add(read(member, name));
                member.Close();
            }
        }

        return all;
    }

    private static PurchaseSupplier Supplier(TreeForm form, string name) =>
        new(
            name,
            form.OptionalWhole("deliveryCents", 0, MostCents) ?? 0,
            form.OptionalWhole("freeFromCents", 0, MostCents),
            form.OptionalWhole("minOrderCents", 0, MostCents) ?? 0,
            form.FlagOrNull("mustUse", false)
        );

    private static PurchaseProduct Product(TreeForm form, string name) =>
        new(name, form.Number("need", Liters), form.OptionalNumber("stock", Liters) ?? 0.0)
        {
            LossPercent = form.OptionalNumber("lossPercent", NumberRange.UpTo(1000.0)) ?? 0.0,
            Reserved = form.OptionalNumber("reserved", Liters) ?? 0.0,
            Minimum = form.OptionalNumber("minimum", Liters) ?? 0.0,
            MostLiters = form.OptionalNumber("mostLitres", Liters),
            ShelfLifeDays = form.OptionalWhole("shelfLifeDays", 1, 36_500),
        };

    private static PurchaseOffer? Offer(TreeForm form, string[] suppliers, string[] products)
    {
        var supplier = Named(form, "supplier", suppliers);
        var product = Named(form, "product", products);
        var liters = form.Number("packLitres", new NumberRange(1e-3, 1e6));
        var pairs = form.WholePairs("breaks", "[fromPacks, cents]", MostCents, MostBreaks);
        var basket = form.OptionalWhole("inBasket", 0, MostPacks) ?? 0;
        var most = form.OptionalWhole("mostPacks", 0, MostPacks);
        form.Close();
        for (var i = 0; i < pairs.Length; i++)
        {
            if (
                pairs[i].First < 1
                || pairs[i].First > MostPacks
                || (i > 0 && pairs[i].First <= pairs[i - 1].First)
            )
            {
                form.Refuse(
                    "breaks",
                    FormattableString.Invariant($"{form.Name}.breaks[{i}] begins at {pairs[i].First} packs"),
                    "numbers of packs from 1 on, rising"
                );
                return null;
            }
        }

        if (supplier is null || product is null || pairs.IsEmpty)
        {
            return null;
        }

        Seq<PriceBreak> breaks = [.. pairs.Select(p => new PriceBreak(p.First, p.Second))];
        var offer = new PurchaseOffer(supplier, product, liters, breaks)
        {
            InBasket = basket,
            MostPacks = most,
        };
        if (basket > (most ?? MostPacks) || offer.Cents(basket) is null)
        {
            form.Refuse("inBasket", $"{form.Name}: so many packs are not sold", "packs the offer sells");
        }

        return offer;
    }

    private static string? Named(TreeForm form, string key, string[] known)
    {
        var name = form.Text(key);
        if (name is not null && !known.Contains(name, StringComparer.Ordinal))
        {
            form.Refuse(
                key,
                $"{form.Name}.{key} '{TreeNode.Shown(name)}' is not listed",
                known.Length == 0 ? $"a {key} of the case" : "one of " + string.Join(", ", known.Take(20))
            );
            return null;
        }

        return name;
    }
}
