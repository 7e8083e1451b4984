using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Goods;

namespace Litterfall.Web.Shop.Terms;

/// <summary>A pack with its price as it is typed, and the good it holds.</summary>
public sealed class OfferDraft
{
    /// <summary>Rolls are told in millimeters, too: 100 m.</summary>
    private const double Longest = 100_000;
    private const double Thickest = 100;

    private readonly Offer? offer;
    private readonly Good? good;
    private readonly TypedText name;
    private readonly TypedText pack;
    private readonly TypedText amount;
    private readonly TypedText[] tiers;
    private readonly TypedText length;
    private readonly TypedText width;
    private readonly TypedText thickness;
    private readonly TypedText reorder;
    private readonly TypedText keeps;
    private readonly TypedText place;
    private readonly TypedText walk;
    private readonly TypedText sells;

    /// <summary>Begins with what is kept.</summary>
    /// <param name="offer">The offer; null for a new one.</param>
    /// <param name="good">Its good; null for a new one.</param>
    public OfferDraft(Offer? offer, Good? good)
    {
        (this.offer, this.good) = (offer, good);
        name = new("Good", good?.Name ?? "") { Help = "A name of the library, or your own." };
        pack = new("Pack", offer?.Pack ?? "") { Help = "As it is sold: bag of 20 L." };
        amount = TypedText.ForNumber("Holds, as used", offer?.Amount);
        length = TypedText.ForNumber(
            "Sheet or roll, length, mm",
            offer?.LengthMillimeters,
            "Empty for what is no sheet, or cut to size."
        );
        width = TypedText.ForNumber("Its width, mm", offer?.WidthMillimeters);
        thickness = TypedText.ForNumber("Its thickness, mm", offer?.SheetMillimeters, "Empty for mesh.");
        tiers =
        [
            TypedText.ForMoney("Price of one pack, net", offer?.Tiers[0].Price),
            TypedText.ForNumber("From packs", offer?.Tiers.ElementAtOrDefault(1)?.FromPacks),
            TypedText.ForMoney("then, each", offer?.Tiers.ElementAtOrDefault(1)?.Price),
            TypedText.ForNumber("From packs, second step", offer?.Tiers.ElementAtOrDefault(2)?.FromPacks),
            TypedText.ForMoney("then, each, second step", offer?.Tiers.ElementAtOrDefault(2)?.Price),
        ];
        reorder = TypedText.ForNumber("Buy again below", good?.ReorderAt is > 0 ? good.ReorderAt : null);
        keeps = TypedText.ForNumber("Keeps, days", good?.KeepsDays, "Empty for what does not spoil.");
        place = new("Stands in", good?.Place ?? "");
        walk = TypedText.ForNumber("Turn on the walk", good?.Walk);
        sells = TypedText.ForMoney("Sold loose for, net", good?.SellsFor, "Empty where it is not.");
        Unit = good?.Unit ?? StockUnit.Pieces;
        Supplier = offer?.Supplier ?? "";
    }

    /// <summary>Fields of the pack.</summary>
    public IReadOnlyList<TypedText> Pack => [name, pack, amount, .. tiers, length, width, thickness];

    /// <summary>Fields of the good.</summary>
    public IReadOnlyList<TypedText> Kept => [reorder, keeps, place, walk, sells];

    /// <summary>What the good is counted in.</summary>
    public StockUnit Unit { get; set; }

    /// <summary>Key of the supplier.</summary>
    public string Supplier { get; set; }

    /// <summary>True where the good is known: its unit stays.</summary>
    public bool IsKnown => good is not null;

    /// <summary>Offer and good as typed; null where a field has a fault.</summary>
    /// <param name="catalog">The library.</param>
    /// <param name="goods">Goods that are kept.</param>
    /// <param name="today">Day of the price.</param>
    public (Offer Offer, Good Good)? Read(
        TradeCatalog catalog,
        IReadOnlyCollection<Good> goods,
        DateOnly today
    )
    {
        var what = Found(catalog, goods);
        var kept = what with
        {
            ReorderAt = reorder.Number(0, 1e6),
            KeepsDays = keeps.WholeOrNone(1, 10_000),
            Place = place.Free(),
            Walk = walk.Whole(0, 10_000),
            SellsFor = sells.MoneyOrNone(),
        };
        var holds = amount.Number(1e-6, 1e6);
        var steps = Steps();
        var said = pack.Required();
        if (Supplier.Length == 0)
        {
            pack.Refuse("Choose the supplier above.");
        }

        var typed = new Offer
        {
            Key = offer?.Key ?? OwnKey.From($"{Supplier}-{kept.Key}-{said}"),
            Supplier = Supplier,
            Good = kept.Key,
            Pack = said,
            LibraryPack = Library(catalog, kept, holds),
            Amount = holds,
            Tiers = [.. steps],
            Dated = today,
            LeadDays = offer?.LeadDays,
            SheetMillimeters = thickness.NumberOrNone(0.1, Thickest),
            LengthMillimeters = length.NumberOrNone(1, Longest),
            WidthMillimeters = width.NumberOrNone(1, Longest),
            IsRoll = offer?.IsRoll ?? catalog.Find(kept.Key) is MeshEntry,
        };
        typed = typed with { SheetArea = Area(typed) ?? offer?.SheetArea };
        return Pack.Concat(Kept).All(f => f.Fault is null) ? (typed, kept) : null;
    }

    /// <summary>Area of one sheet, m²; null where it has no size.</summary>
    private double? Area(Offer typed)
    {
        if (typed.LengthMillimeters is null != typed.WidthMillimeters is null)
        {
            (typed.LengthMillimeters is null ? length : width).Refuse("A sheet needs both edges.");
        }

        return typed.LengthMillimeters * typed.WidthMillimeters * 1e-6;
    }

    private Good Found(TradeCatalog catalog, IReadOnlyCollection<Good> goods)
    {
        var said = name.Required();
        if (good is not null)
        {
            return good with { Name = said };
        }

        return LibraryGoods.Find(said, goods, catalog)
            ?? new Good
            {
                Key = OwnKey.From(said),
                Name = said,
                Kind = GoodKind.Equipment,
                Unit = Unit,
            };
    }

    private ImmutableArray<PriceTier> Steps()
    {
        var first = tiers[0].Money();
        if (tiers[0].Fault is null && first == 0)
        {
            tiers[0].Refuse("Enter the price of one pack.");
        }

        var steps = new List<PriceTier> { new(1, first) };
        for (var i = 1; i < tiers.Length; i += 2)
        {
            var from = tiers[i].WholeOrNone(2, 1_000_000);
            var price = tiers[i + 1].MoneyOrNone();
            if (from is null != price is null)
            {
                tiers[from is null ? i : i + 1]
                    .Refuse("A step needs both: from how many packs, and the price of each.");
            }
            else if (from is { } packs && price is { } each)
            {
                if (packs <= steps[^1].FromPacks)
                {
                    tiers[i].Refuse("The second step begins at more packs than the first.");
                }

                steps.Add(new PriceTier(packs, each));
            }
        }

        return [.. steps];
    }

    private static string? Library(TradeCatalog catalog, Good good, double holds) =>
        good.Unit == StockUnit.Liters
            ? catalog
                .PacksOf(good.Key)
                .FirstOrDefault(p =>
                    p.LooseVolume is { } liters && Math.Abs(liters.Si * 1000 - holds) < 0.01 * holds
                )
                ?.Key
            : catalog.Find<EquipmentEntry>(good.Key)?.Key;
}
