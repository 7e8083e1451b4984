using System.Collections.Immutable;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Kits;

/// <summary>A thing for all kits: where it stands and from which lots it comes.</summary>
/// <param name="Item">The thing.</param>
/// <param name="Good">The workshop's good; null where it keeps none.</param>
/// <param name="Each">Amount in one kit, in the unit of the good.</param>
/// <param name="Lots">Lots for all kits; null where it is not kept in stock.</param>
public sealed record KitPickLine(KitItem Item, Good? Good, double Each, Picking? Lots);

/// <summary>What is picked for equal kits, in the order of the walk through the workshop.</summary>
/// <param name="Kits">How many kits.</param>
/// <param name="Lines">What is picked.</param>
public sealed record KitPick(int Kits, ImmutableArray<KitPickLine> Lines)
{
    /// <summary>True where something of stock is missing.</summary>
    public bool IsShort => Lines.Any(l => l.Lots?.IsShort == true);

    /// <summary>Plans the pick for equal kits of a design.</summary>
    /// <param name="numbers">Numbers of the design; shape is enough.</param>
    /// <param name="kits">How many kits.</param>
    /// <param name="goods">Goods by key.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="day">Day it is picked.</param>
    /// <param name="order">Order it is for.</param>
    public static KitPick Plan(
        DesignNumbers numbers,
        int kits,
        IReadOnlyDictionary<string, Good> goods,
        StockBook book,
        DateOnly day,
        int order
    )
    {
        var taken = new Dictionary<string, double>(StringComparer.Ordinal);
        var lines = new List<KitPickLine>();
        foreach (var item in KitItem.All(numbers))
        {
            var good = item
                .Other.Prepend(item.Key)
                .Select(goods.GetValueOrDefault)
                .FirstOrDefault(g => g is not null);
            var each = good is null ? null : item.In(good.Unit);
            if (good is null || each is not (> 0 and var amount))
            {
                lines.Add(new(item, null, item.Pieces ?? item.Liters ?? item.Kilograms ?? 0, null));
                continue;
            }

            var picking = Picking.Propose(book, good.Key, amount * kits, day, taken, order);
            foreach (var (lot, some) in picking.Lots)
            {
                taken[lot.Lot.Id] = taken.GetValueOrDefault(lot.Lot.Id) + some;
            }

            lines.Add(new(item, good, amount, picking));
        }

        return new(
            kits,
            [
                .. lines
                    .OrderBy(l => l.Good is null)
                    .ThenBy(l => l.Item.Group == KitGroup.Living)
                    .ThenBy(l => l.Good?.Walk ?? 0)
                    .ThenBy(l => l.Good?.Place, StringComparer.OrdinalIgnoreCase),
            ]
        );
    }

    /// <summary>What of each lot goes into each kit, one kit filled after the other.</summary>
    public IReadOnlyList<ImmutableArray<(KitPickLine Line, Picked Part)>> ByKit()
    {
        var kits = Enumerable
            .Range(0, Kits)
            .Select(_ => ImmutableArray.CreateBuilder<(KitPickLine, Picked)>())
            .ToList();
        foreach (var line in Lines.Where(l => l.Lots is not null))
        {
            var (kit, room) = (0, line.Each);
            foreach (var (lot, some) in line.Lots!.Lots)
            {
                var left = some;
                while (left > lot.Rounding && kit < Kits)
                {
                    var part = Math.Min(left, room);
                    kits[kit].Add((line, new(lot, part)));
                    left -= part;
                    room -= part;
                    if (room <= lot.Rounding)
                    {
                        (kit, room) = (kit + 1, line.Each);
                    }
                }
            }
        }

        return kits.ConvertAll(k => k.ToImmutable());
    }

    /// <summary>The kits as packed: a lot for each, with what went into it.</summary>
    /// <param name="good">The kits as a good.</param>
    /// <param name="ids">Numbers of the kits.</param>
    /// <param name="order">Order they are for.</param>
    /// <param name="when">Day, and who packed them.</param>
    public StockStep Pack(Good good, IReadOnlyList<string> ids, int order, (DateOnly Day, string Who) when)
    {
        var lots = new List<Lot>();
        var lines = new List<Movement>();
        var byKit = ByKit();
        for (var i = 0; i < Kits; i++)
        {
            lots.Add(
                new()
                {
                    Id = ids[i],
                    Good = good.Key,
                    Since = when.Day,
                    Amount = 1,
                    Order = order,
                }
            );
            lines.AddRange(
                byKit[i].Select(p => Line(p.Part.Lot.Lot.Id, MovementKind.Used, p.Part.Amount, ids[i]))
            );
            lines.Add(Line(ids[i], MovementKind.Made, 1, null));
        }

        return new([.. lots], [.. lines]);

        Movement Line(string lot, MovementKind kind, double amount, string? into) =>
            new()
            {
                Lot = lot,
                Kind = kind,
                Amount = amount,
                Into = into,
                Day = when.Day,
                Who = when.Who,
            };
    }
}
