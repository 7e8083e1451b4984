using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trees;

namespace Litterfall.App.Shipping;

/// <summary>Reads a case of <c>ship</c>.</summary>
/// <param name="path">The case file; forecast files are seen from its folder.</param>
/// <param name="library">The library of animals, feeders and plants.</param>
public sealed class ShipForm(string path, Func<TradeCatalog> library)
{
    private const int MostDays = 14;
    private const int MostContents = 60;
    private const int MostItems = 40;
    private const double JudgedAtHour = 6;
    private static readonly NumberRange Length = new(1, 2000);
    private static readonly EntryKind[] Live =
    [
        EntryKind.Animal,
        EntryKind.Crew,
        EntryKind.Feeder,
        EntryKind.Plant,
    ];

    private readonly DispatchRules defaults = new();

    /// <summary>The checked case, or null and faults on the form.</summary>
    public ShipCase? Read(TreeForm form)
    {
        var from = ShipFields.Day(form, "from");
        var days = form.OptionalWhole("days", 1, MostDays) ?? 7;
        var day = ShipFields.OptionalDay(form, "day");
        var catalog = library();
        var (contents, facts) = Contents(form, catalog);
        var regions = ShipPlaces.Regions(form);
        var carrier = ShipGoods.Carrier(form);
        var rules = Rules(form) with
        {
            Regions = [regions.Home, regions.Away],
            HomeRegion = regions.Home.Key,
            Carriers = [carrier],
        };
        var stock = new List<StockCount>();
        rules = Stocked(form, rules, stock);
        var parcel = new Parcel
        {
            Number = 1,
            Recipient = "",
            Contents = [.. contents],
            Region = regions.Away.Key,
            Carrier = carrier.Key,
            IsDepotPickUp = form.Flag("depotPickUp", false),
        };
        var hasPapers = form.Flag("papersChecked", false);
        var calendar = Calendar(form);
        var now = Now(form, regions.Home, from);
        var (forecasts, notes) = new ShipPlaces(path).Forecasts(form, from, now, regions);
        form.Close();
        if (day is { } asked && form.IsGood && (asked < from || asked >= from.AddDays(days)))
        {
            form.Refuse("day", "day is none of the days that are judged", "one of the days from 'from' on");
        }

        return form.IsGood
            ? new(
                new WeekTask
                {
                    Parcel = hasPapers ? Papered(parcel, catalog, rules, from) : parcel,
                    Catalog = catalog,
                    Rules = rules,
                    Calendar = calendar,
                    Forecasts = [.. forecasts],
                    Stock = [.. stock],
                    Facts = [.. facts],
                    Now = now,
                    From = from,
                    Days = days,
                },
                day,
                [.. notes]
            )
            : null;
    }

    private static DispatchRules Stocked(TreeForm form, DispatchRules rules, List<StockCount> stock) =>
        DispatchDefaults.Fill(
            rules with
            {
                Cartons = [.. ShipGoods.Cartons(form, stock)],
                Packs = [.. ShipGoods.Packs(form, stock)],
            }
        );

    /// <summary>All papers that are needed, ticked off.</summary>
    private static Parcel Papered(Parcel parcel, TradeCatalog catalog, DispatchRules rules, DateOnly today) =>
        parcel with
        {
            Papers =
            [
                .. AnimalPapers.Missing(AnimalPapers.List(parcel, catalog, rules, today)).Select(p => p.Key),
            ],
        };

    private static (List<LiveContent> Contents, List<AnimalFact> Facts) Contents(
        TreeForm form,
        TradeCatalog catalog
    )
    {
        var (contents, facts) = (new List<LiveContent>(), new List<AnimalFact>());
        foreach (var item in form.Objects("contents", "something alive", MostContents))
        {
            var what = item.Text("what") ?? "";
            var key = TradeCatalog.Canonical(what);
            if (item.IsGood && catalog.Find(key) is { } entry && !Live.Contains(entry.Kind))
            {
                item.Refuse("what", $"{TreeNode.Shown(what)} is nothing alive", Near(catalog, key));
            }
            else if (item.IsGood && catalog.Find(key) is null && catalog.Near(key, Live).Length > 0)
            {
                item.Refuse("what", $"the library has no {TreeNode.Shown(what)}", Near(catalog, key));
            }

            var from = item.OptionalText("from") ?? "";
            var length = item.OptionalNumber("lengthMm", Length);
            contents.Add(
                new(key, item.Whole("count", 1, 1000)) { From = from, LengthMeters = length / 1000 }
            );
            facts.Add(
                new(key, from)
                {
                    QuarantineEnds = ShipFields.OptionalDay(item, "quarantineEnds"),
                    UnexplainedDeath = ShipFields.OptionalDay(item, "unexplainedDeath"),
                }
            );
            item.Close();
        }

        return (contents, facts);
    }

    private static string Near(TradeCatalog catalog, string key) =>
        catalog.Near(key, Live) is { Length: > 0 } near
            ? "one such as " + string.Join(", ", near)
            : "an animal, springtail, isopod, feeder or plant of the library";

    /// <summary>Rules that may only be made stricter.</summary>
    private DispatchRules Rules(TreeForm top)
    {
        if (top.ObjectOrNull("rules", "the rules") is not { } form)
        {
            return defaults;
        }

        double Up(string key, double least, double most) => form.Number(key, new(least, most), least);
        var rules = defaults with
        {
            RiskPercent = form.Number(
                "riskPercent",
                NumberRange.UpTo(defaults.RiskPercent),
                defaults.RiskPercent
            ),
            Journeys = form.OptionalWhole("journeys", defaults.Journeys, 100_000) ?? defaults.Journeys,
            Seed = form.OptionalWhole("seed", 0, int.MaxValue) ?? defaults.Seed,
            ForecastErrorKelvin = Up("forecastErrorK", defaults.ForecastErrorKelvin, 10),
            ForecastErrorPerDayKelvin = Up("forecastErrorPerDayK", defaults.ForecastErrorPerDayKelvin, 5),
            VanSunKelvin = Up("vanSunK", defaults.VanSunKelvin, 30),
            DoorstepHours = Up("doorstepHours", defaults.DoorstepHours, 48),
            DoorstepSunKelvin = Up("doorstepSunK", defaults.DoorstepSunKelvin, 30),
            Bands = [.. Bands(form)],
        };
        form.Close();
        return rules;
    }

    private static ImmutableArray<OwnBand> Bands(TreeForm form)
    {
        var bands = ImmutableArray.CreateBuilder<OwnBand>();
        foreach (var item in form.OptionalObjects("bands", "a band", MostItems))
        {
            var letter = item.Choice("class", "A", "B", "C", "D", "E", "F", "G");
            var low = item.Number("holdBelowC", ShipFields.Air);
            var high = item.Number("holdAboveC", ShipFields.Air);
            item.Close();
            if (letter is not null && item.IsGood)
            {
                bands.Add(new(letter, low, high));
            }
        }

        return bands.ToImmutable();
    }

    private static ShopCalendar Calendar(TreeForm form)
    {
        var calendar = new ShopCalendar();
        var days = ShipFields.Weekdays(form, "shipDays");
        return days.IsEmpty ? calendar : calendar with { ShipDays = [.. days] };
    }

    /// <summary>No clock is asked: a case is judged at its own time, else on the first morning.</summary>
    private static DateTime Now(TreeForm form, DeliveryRegion home, DateOnly from)
    {
        if (ShipFields.OptionalTime(form, "now") is { } now)
        {
            return now;
        }

        return form.IsGood && PlaceClock.Find(home.Zone) is { } clock
            ? clock.Utc(from, JudgedAtHour)
            : from.ToDateTime(new TimeOnly(6, 0), DateTimeKind.Utc);
    }
}
