using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>How a parcel is packed: cups, moss, places, list, steps, cautions and labels.</summary>
public static class PackingPlanner
{
    /// <summary>Loose paper or wool, kg/L, and its heat over that of water; own estimates.</summary>
    private const double PaddingKilogramsPerLiter = 0.02;

    private const double PaddingHeat = 0.32;

    /// <summary>More is a freight, not a parcel; own choice.</summary>
    private const int MostCups = 1000;

    /// <summary>Plans it; a plan that cannot be packed says why and which carton would do.</summary>
    /// <param name="asked">What it is packed from.</param>
    public static PackingPlan Plan(PackingCase asked)
    {
        var empty = new PackingPlan { Carton = asked.Carton, Cups = [] };
        if (Packs(asked, out var packs) is { Length: > 0 } fault)
        {
            return empty with { Refusal = fault };
        }

        var (items, refusal, cautions) = Items(asked);
        if (refusal.Length > 0)
        {
            return empty with { Refusal = refusal };
        }

        FitItem[] cups = [.. items.SelectMany(i => i.Items())];
        var fit = CartonFit.Place(asked.Carton, cups, packs);
        var plan = Whole(asked, items, packs, fit) with
        {
            Cautions = [.. cautions, .. PackingWords.Cautions(asked, items, packs)],
        };
        return fit.Fits ? plan : Refused(asked, plan, fit, (cups, packs));
    }

    private static string Packs(PackingCase asked, out ImmutableArray<TransportPack> packs)
    {
        var all = ImmutableArray.CreateBuilder<TransportPack>();
        packs = [];
        foreach (var use in asked.Packs)
        {
            if (asked.Rules.Packs.FirstOrDefault(p => p.Key == use.Pack) is not { } pack)
            {
                return Invariant($"The pack “{use.Pack}” is not in the shop's list.");
            }

            all.AddRange(Enumerable.Repeat(pack, Math.Max(0, use.Count)));
        }

        packs = all.ToImmutable();
        return "";
    }

    private static (List<PackedItem> Items, string Refusal, List<string> Cautions) Items(PackingCase asked)
    {
        var (travelers, unknown) = Traveler.Read(asked.Parcel, asked.Catalog);
        var (items, cautions) = (new List<PackedItem>(), new List<string>());
        if (unknown.Length > 0)
        {
            return (
                items,
                Invariant($"“{unknown}” is not in the library, so nobody knows its cup."),
                cautions
            );
        }

        if (travelers.Count == 0 || travelers.Any(t => t.Content.Count < 1))
        {
            return (items, "The parcel has nothing alive in it: enter what goes and how many.", cautions);
        }

        if (travelers.Sum(t => (long)t.Content.Count) > MostCups)
        {
            return (items, Invariant($"More than {MostCups} cups are no parcel: split it."), cautions);
        }

        foreach (var traveler in travelers)
        {
            if (traveler.Kind != TravelerKind.Animal)
            {
                items.Add(PackedItem.Goods(traveler));
                continue;
            }

            var choice = CupChoice.Choose(traveler, asked.Rules);
            if (choice.Cup is null)
            {
                return (items, choice.Refusal, cautions);
            }

            items.Add(PackedItem.Animal(traveler, choice, asked.Hours));
            if (choice.Caution.Length > 0 && !cautions.Contains(choice.Caution))
            {
                cautions.Add(choice.Caution);
            }
        }

        return (items, "", cautions);
    }

    private static PackingPlan Whole(
        PackingCase asked,
        List<PackedItem> items,
        ImmutableArray<TransportPack> packs,
        CartonFit fit
    )
    {
        // To half a liter upward: padding is stuffed, not measured.
        var padding = Math.Ceiling(fit.FreeLiters * 2) / 2;
        var padded = padding * PaddingKilogramsPerLiter;
        var hasAnimal = items.Exists(i => i.Cup.IsAnimal);
        return new()
        {
            Carton = asked.Carton,
            Cups = [.. items.Select(i => i.Cup)],
            Packs = PackingWords.Packs(asked),
            Places = fit.Places,
            List = PackingGoods.List(asked, items, padding),
            Steps = PackingWords.Steps(asked, items, packs),
            PaddingLiters = padding,
            FastHours = hasAnimal ? asked.Rules.FastHours : 0,
            CartonLabel = ParcelLabels.Carton(asked, items),
            Kilograms = Math.Round(
                asked.Carton.EmptyKilograms
                    + items.Sum(i => i.Cup.Count * i.Kilograms)
                    + packs.Sum(p => p.Kilograms)
                    + padded,
                3
            ),
            ContentsKilogramsOfWater = Math.Round(
                items.Sum(i => i.Cup.Count * i.KilogramsOfWater) + (padded * PaddingHeat),
                4
            ),
        };
    }

    private static PackingPlan Refused(
        PackingCase asked,
        PackingPlan plan,
        CartonFit fit,
        (FitItem[] Cups, ImmutableArray<TransportPack> Packs) load
    )
    {
        var will = asked
            .Rules.Cartons.OrderBy(c => c.Liters)
            .ThenBy(c => c.Key, StringComparer.Ordinal)
            .FirstOrDefault(c => CartonFit.Place(c, load.Cups, load.Packs).Fits);
        var why =
            fit.PackRefusal.Length > 0 ? fit.PackRefusal
            : load.Cups.Length == 1 ? Invariant($"The cup does not fit into the {asked.Carton.Name}.")
            : Invariant($"{fit.Left} of {load.Cups.Length} cups find no room in the {asked.Carton.Name}.");
        return plan with
        {
            SmallestCarton = will?.Key ?? "",
            Refusal = will is null
                ? $"{why} No carton in the list would do; split the parcel or add a larger one."
                : $"{why} The smallest that would do is the {will.Name}.",
        };
    }
}
