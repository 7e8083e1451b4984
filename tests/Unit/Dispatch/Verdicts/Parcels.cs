using Litterfall.App.Files;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Verdicts;

/// <summary>Parcels for tests: a week from Monday 13 July 2026 at a workshop that keeps UTC.</summary>
internal static class Parcels
{
    private static readonly Lazy<TradeCatalog> Read = new(() => CatalogReader.Read(Shop.CatalogFiles()));

    public static TradeCatalog Catalog => Read.Value;

    public static DateOnly Monday { get; } = new(2026, 7, 13);

    public static PlaceClock Clock { get; } = PlaceClock.Find("Etc/UTC")!;

    public static DateTime Now { get; } = new(2026, 7, 13, 6, 0, 0, DateTimeKind.Utc);

    public static CarrierTerms Carrier { get; } =
        DispatchDefaults.Carrier with
        {
            TakesAnimals = true,
            RulesReadOn = new DateOnly(2026, 6, 1),
        };

    /// <summary>Forecast of a place with the same cold night and warm day all week.</summary>
    public static PlaceForecast Place(RouteNode node, double low, double high, int days = 10) =>
        Place(node, [.. Enumerable.Range(0, days).Select(_ => (low, high))]);

    public static PlaceForecast Place(RouteNode node, params (double Low, double High)[] days) =>
        new()
        {
            Node = node,
            Place = "",
            TakenAt = Now,
            Hours = TypedDays.Hours(
                days.Select((d, i) => new TypedForecastDay(Monday.AddDays(i), d.Low, d.High)),
                Clock
            ),
        };

    /// <summary>A parcel with papers, a carrier that was asked, and the same weather everywhere.</summary>
    public static WeekTask Week(string species, double low, double high) =>
        Week([new LiveContent(species, 2)], [.. Everywhere(low, high)]);

    public static IEnumerable<PlaceForecast> Everywhere(double low, double high) =>
        Enum.GetValues<RouteNode>().Select(n => Place(n, low, high));

    public static WeekTask Week(LiveContent[] contents, PlaceForecast[] forecasts)
    {
        var rules = DispatchDefaults.Fill(
            new()
            {
                HomeRegion = "home",
                Journeys = 100,
                Regions = [new() { Key = "home", Name = "workshop" }],
                Carriers = [Carrier],
            }
        );
        var parcel = new Parcel
        {
            Number = 1,
            Recipient = "",
            Contents = [.. contents],
            Region = "home",
            Carrier = Carrier.Key,
        };
        var papers = AnimalPapers.Missing(AnimalPapers.List(parcel, Catalog, rules, Monday));
        return new()
        {
            Parcel = parcel with { Papers = [.. papers.Select(p => p.Key)] },
            Catalog = Catalog,
            Rules = rules,
            Forecasts = [.. forecasts],
            Now = Now,
            From = Monday,
        };
    }

    public static WeekVerdict Judged(WeekTask task) =>
        WeekJudge.Judge(task, TestContext.Current.CancellationToken);

    public static DayVerdict OnMonday(WeekTask task) => Judged(task with { Days = 1 }).Days[0];

    public static WeekTask With(this WeekTask task, Func<DispatchRules, DispatchRules> change) =>
        task with
        {
            Rules = change(task.Rules),
        };
}
