using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Demo;

/// <summary>Lots and lines of the demo.</summary>
/// <param name="book">Where they go.</param>
/// <param name="shift">Days by which the scenario is moved.</param>
internal sealed class DemoStock(DemoBook book, int shift)
{
    /// <summary>Key of the good that finished tanks are.</summary>
    public const string TankGood = "tank";

    // Small parts that are bought by the dozen.
    private static readonly (string Key, double Count, decimal Each)[] Drawers =
    [
        ("mist-nozzle", 12, 3.20m),
        ("mist-tee", 14, 1.10m),
        ("mist-elbow", 9, 0.95m),
        ("mist-end-cap", 11, 0.70m),
        ("tube-clip", 60, 0.35m),
        ("mist-tube-6", 22, 1.20m),
        ("grommet", 15, 0.60m),
        ("mount-pin", 90, 0.15m),
        ("mount-wire", 18, 0.45m),
        ("tank-label", 40, 0.30m),
        ("dip-tube", 4, 2.80m),
        ("thermometer", 5, 6.90m),
        ("hygrometer", 5, 8.90m),
    ];

    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Good> goods = book.Goods.ToDictionary(
        g => g.Key,
        StringComparer.Ordinal
    );

    /// <summary>A day of the scenario, moved.</summary>
    public DateOnly Day(DateOnly scene) => scene.AddDays(shift);

    /// <summary>A good; null where the demo does not keep it.</summary>
    public Good? Find(string key) => goods.GetValueOrDefault(key);

    /// <summary>A lot that came from a supplier.</summary>
    /// <param name="good">Key of the good.</param>
    /// <param name="amount">Amount in its unit.</param>
    /// <param name="each">Price of one.</param>
    /// <param name="day">Day it came.</param>
    /// <param name="with">What is known of it besides.</param>
    public string Receive(string good, double amount, decimal each, DateOnly day, Func<Lot, Lot>? with = null)
    {
        var what = goods[good];
        var lot = new Lot
        {
            Id = Next(what),
            Good = good,
            Since = day,
            Supplier = what.Kind == GoodKind.Bulk ? DemoShop.Bulk : DemoShop.Wares,
            SupplierLot = string.Create(CultureInfo.InvariantCulture, $"{day:yyMMdd}/{numbers.Count:00}"),
            Amount = amount,
            Cost = Math.Round((decimal)amount * each, 2, MidpointRounding.AwayFromZero),
            Expires = what.KeepsDays is { } days ? day.AddDays(days) : null,
        };
        book.NewLots.Add(with?.Invoke(lot) ?? lot);
        Line(lot.Id, MovementKind.Received, amount, day);
        return lot.Id;
    }

    /// <summary>A lot that was made or bred here.</summary>
    /// <param name="lot">The lot; its number is given here unless it has one.</param>
    public string Make(Lot lot)
    {
        var named = lot.Id.Length > 0 ? lot : lot with { Id = Next(goods[lot.Good]) };
        book.NewLots.Add(named);
        Line(named.Id, MovementKind.Made, named.Amount, named.Since);
        return named.Id;
    }

    /// <summary>A line of stock.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="kind">What happened.</param>
    /// <param name="amount">Amount.</param>
    /// <param name="day">Day.</param>
    /// <param name="into">Where it went.</param>
    /// <param name="note">In words.</param>
    public void Line(
        string lot,
        MovementKind kind,
        double amount,
        DateOnly day,
        string? into = null,
        string note = ""
    ) =>
        book.NewLines.Add(
            new Movement
            {
                Lot = lot,
                Kind = kind,
                Amount = amount,
                Into = into,
                Day = day,
                Who = kind is MovementKind.Sold or MovementKind.Received
                    ? DemoShop.Bookkeeper
                    : DemoShop.Builder,
                Note = note,
            }
        );

    /// <summary>What lies on the shelves in the scenario.</summary>
    public void Open()
    {
        var came = Day(DemoShop.Scene.AddDays(-24));
        Receive("expanded-clay-8-16", 110, 0.36m, came);
        Receive("fine-bark", 34, 0.49m, came.AddDays(-20));
        Receive("fine-bark", 40, 0.445m, came);
        Receive("charcoal", 22, 1.30m, came);
        Receive("tree-fern-fibre", 31, 1.10m, came);
        Receive("peat", 107.5, 0.135m, came.AddDays(-34));
        Receive("peat", 215, 0.1326m, came);
        Receive("chopped-sphagnum", 35, 0.87m, came);
        Receive("long-fibre-sphagnum", 35, 1.19m, came);
        Receive("oak-leaves", 46, 0.65m, came);
        Receive("shipping-carton", 4, 4.90m, came);
        foreach (var (key, count, each) in Drawers)
        {
            Receive(key, count, each, came.AddDays(-9));
        }
    }

    /// <summary>Plants that came and are kept apart.</summary>
    /// <param name="key">Key of the plant.</param>
    /// <param name="count">How many.</param>
    /// <param name="each">Price of one.</param>
    /// <param name="came">Day they came.</param>
    /// <returns>The lot.</returns>
    public string Quarantine(string key, int count, decimal each, DateOnly came)
    {
        var good = goods[key];
        var lot = new Lot
        {
            Id = Next(good),
            Good = key,
            Since = came,
            Supplier = DemoShop.Wares,
            Amount = count,
            Cost = count * each,
            QuarantinedUntil = came.AddDays(30),
            Expires = good.KeepsDays is { } days ? came.AddDays(days) : null,
        };
        book.NewLots.Add(lot);
        Line(lot.Id, MovementKind.Received, count, came);
        return lot.Id;
    }

    private string Next(Good good)
    {
        var letters = LotNumber.LettersOf(good);
        var number = numbers[letters] = numbers.GetValueOrDefault(letters) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{letters}-{number}");
    }
}
