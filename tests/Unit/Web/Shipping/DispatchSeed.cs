using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shipping;

namespace Litterfall.UnitTests.Web.Shipping;

/// <summary>An invented workshop with one parcel of frogs, a mild week, cartons and packs in stock.</summary>
internal static class DispatchSeed
{
    /// <summary>A Monday.</summary>
    public static readonly DateOnly Monday = new(2026, 7, 6);

    public static readonly DateTimeOffset MondayMorning = new(2026, 7, 6, 6, 0, 0, TimeSpan.Zero);

    public static DispatchRules Rules
    {
        get
        {
            var usual = DispatchDefaults.Fill(new DispatchRules());
            return usual with
            {
                HomePlace = "Upper Sallow",
                Regions = [new DeliveryRegion { Key = "home", Name = "around Upper Sallow" }],
                Cartons = [.. usual.Cartons.Select(c => c with { Good = c.Key })],
                Carriers =
                [
                    .. usual.Carriers.Select(c =>
                        c with
                        {
                            TakesAnimals = true,
                            RulesReadOn = Monday.AddDays(-9),
                        }
                    ),
                ],
            };
        }
    }

    public static Parcel Frogs { get; } =
        new()
        {
            Number = 1,
            Recipient = "Quernmoor Museum",
            Contents = [new LiveContent("dendrobates-auratus", 2) { From = "B1" }],
            Region = "home",
            Carrier = DispatchDefaults.Carrier.Key,
            HubPlace = "Tollgate hub",
            DestinationPlace = "Quernmoor",
        };

    /// <summary>Everything, in one step.</summary>
    /// <param name="store">Where it is kept.</param>
    /// <param name="high">Warmest of each day at the hub, °C.</param>
    /// <param name="stop">Ends it.</param>
    public static async Task FillAsync(BenchStore store, Func<DateOnly, double> high, CancellationToken stop)
    {
        var change = new ShopChange("Tobin")
            .Keep(DispatchRules.Key, 0, Rules, "rules")
            .Keep("1", 0, Frogs, "parcel")
            .Keep(
                "B1",
                0,
                new Tank
                {
                    Code = "B1",
                    Name = "breeding tank B1",
                    Since = Monday.AddDays(-300),
                },
                "tank"
            )
            .Add(
                new CareEntry
                {
                    Key = "in",
                    Tank = "B1",
                    At = MondayMorning.UtcDateTime.AddDays(-250),
                    Kind = CareKind.AnimalsIn,
                    Amount = 3,
                    Species = "dendrobates-auratus",
                    Who = "Ilse",
                }
            );
        foreach (var (node, place) in Places)
        {
            var forecast = Forecast(node, place, d => node == RouteNode.Hub ? high(d) : 24);
            change.Keep(DispatchDesk.KeyOf(node, place), 0, forecast, "forecast");
        }

        foreach (var carton in Rules.Cartons)
        {
            Put(change, carton.Key, carton.Name);
        }

        await store.WriteAsync(change, stop);
    }

    private static (RouteNode, string)[] Places =>
        [
            (RouteNode.Origin, "Upper Sallow"),
            (RouteNode.Hub, "Tollgate hub"),
            (RouteNode.Destination, "Quernmoor"),
        ];

    public static PlaceForecast Forecast(RouteNode node, string place, Func<DateOnly, double> high) =>
        new()
        {
            Node = node,
            Place = place,
            TakenAt = MondayMorning.UtcDateTime.AddMinutes(-10),
            From = "typed",
            Hours = TypedDays.Hours(
                Enumerable
                    .Range(-1, 11)
                    .Select(d => Monday.AddDays(d))
                    .Select(d => new TypedForecastDay(d, 18, high(d))),
                PlaceClock.Find("Etc/UTC")!
            ),
        };

    private static void Put(ShopChange change, string key, string name) =>
        change
            .Keep(
                key,
                0,
                new Good
                {
                    Key = key,
                    Name = name,
                    Kind = GoodKind.Packaging,
                    Unit = StockUnit.Pieces,
                },
                "good"
            )
            .Add(
                new Lot
                {
                    Id = key.ToUpperInvariant(),
                    Good = key,
                    Since = Monday.AddDays(-30),
                    Amount = 4,
                }
            )
            .Add(
                new Movement
                {
                    Lot = key.ToUpperInvariant(),
                    Kind = MovementKind.Received,
                    Amount = 4,
                    Day = Monday.AddDays(-30),
                    Who = "Tobin",
                }
            );
}
