using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Bench.Dispatch;

/// <summary>Orders that nobody gave.</summary>
internal static class MadeUpOrders
{
    private static readonly string[] Species =
    [
        "dendrobates-auratus",
        "epipedobates-anthonyi",
        "ranitomeya-imitator",
        "dendrobates-leucomelas",
        "phyllobates-vittatus",
    ];

    /// <summary>An order of a week with so cold nights and so warm days.</summary>
    public static WeekTask Order(TradeCatalog catalog, int number, double low, double high)
    {
        var monday = new DateOnly(2026, 5, 18);
        var region = new DeliveryRegion
        {
            Key = "home",
            Name = "workshop",
            Zone = "Europe/Berlin",
        };
        var rules = DispatchDefaults.Fill(
            new()
            {
                Regions = [region],
                Carriers = [DispatchDefaults.Carrier with { TakesAnimals = true, RulesReadOn = monday }],
            }
        );
        var parcel = new Parcel
        {
            Number = number,
            Recipient = "",
            Contents = [new(Species[number % Species.Length], 4), new("folsomia-candida", 2)],
            Region = "home",
            Carrier = "overnight",
        };
        var papers = AnimalPapers.Missing(AnimalPapers.List(parcel, catalog, rules, monday));
        var clock = PlaceClock.Find(region.Zone)!;
        var hours = TypedDays.Hours(
            Enumerable.Range(0, 10).Select(d => new TypedForecastDay(monday.AddDays(d), low, high)),
            clock
        );
        var now = clock.Utc(monday, 6);
        return new()
        {
            Parcel = parcel with { Papers = [.. papers.Select(p => p.Key)] },
            Catalog = catalog,
            Rules = rules,
            From = monday,
            Now = now,
            Forecasts =
            [
                .. Enum.GetValues<RouteNode>()
                    .Select(n => new PlaceForecast
                    {
                        Node = n,
                        Place = "",
                        Zone = region.Zone,
                        TakenAt = now,
                        Hours = hours,
                    }),
            ],
        };
    }
}
