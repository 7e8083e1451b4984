using System.Globalization;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Web.Tanks;

namespace Litterfall.Web.Shipping;

/// <summary>Parcels of this bench: rules, forecasts, verdicts, packing, and the evidence of each.</summary>
public sealed partial class DispatchDesk(
    BenchStore store,
    BenchLibrary library,
    StockShelf shelf,
    TankDesk tanks,
    BenchOptions options,
    TimeProvider clock
) : IDisposable
{
    /// <summary>Largest file with a forecast or a logger's readings, bytes.</summary>
    public const int LargestForecast = 5 * 1024 * 1024;

    /// <summary>Days that are judged, today included.</summary>
    public const int DaysAhead = 7;

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>Now by the clock of this machine.</summary>
    public DateTime LocalNow => clock.GetLocalNow().DateTime;

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    /// <summary>A time by the clock of this machine, as UTC.</summary>
    /// <param name="local">The time.</param>
    public DateTime Utc(DateTime local) =>
        TimeZoneInfo.ConvertTimeToUtc(
            DateTime.SpecifyKind(local, DateTimeKind.Unspecified),
            clock.LocalTimeZone
        );

    /// <summary>A time by the clock of this machine.</summary>
    /// <param name="utc">The time, UTC.</param>
    public DateTime ToLocal(DateTime utc) =>
        TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), clock.LocalTimeZone);

    /// <summary>A time by the clock of a place.</summary>
    /// <param name="utc">The time, UTC.</param>
    /// <param name="zone">Zone of the tz database.</param>
    public static DateTime Local(DateTime utc, string zone) =>
        PlaceClock.Find(zone) is { } local
            ? local.Day(utc).ToDateTime(TimeOnly.MinValue).AddHours(local.Hour(utc))
            : utc;

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    /// <summary>Key under which the forecast of a place is kept.</summary>
    /// <param name="node">Which place of the route.</param>
    /// <param name="place">Its name.</param>
    public static string KeyOf(RouteNode node, string place) =>
        $"{node.ToString().ToLowerInvariant()}-{OwnKey.From(place)}";

    /// <summary>Key under which a link of the evidence is kept.</summary>
    /// <param name="link">The link.</param>
    public static string KeyOf(EvidenceEntry link) =>
        string.Create(Invariant, $"{link.Parcel:000000}-{link.Number:0000}");

    /// <summary>The shop's rules with their version; usual goods stand in for what is not entered.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<(DispatchRules Rules, int Version)> RulesAsync(CancellationToken cancel = default)
    {
        var kept = await store.RecordAsync<DispatchRules>(DispatchRules.Key, cancel);
        var rules = DispatchDefaults.Fill(kept?.Value ?? new DispatchRules());
        var home = new DeliveryRegion { Key = rules.HomeRegion, Name = "at home" };
        return (rules.Regions.Count > 0 ? rules : rules with { Regions = [home] }, kept?.Version ?? 0);
    }

    /// <summary>All that is known of dispatch.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<DispatchView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var (rules, version) = await RulesAsync(cancel);
        var calendar = await store.RecordAsync<ShopCalendar>(ShopCalendar.Key, cancel);
        var parcels = await store.RecordsAsync<Parcel>(cancel);
        var forecasts = await store.RecordsAsync<PlaceForecast>(cancel);
        var stock = await shelf.LoadAsync(cancel);
        return new(
            stock,
            rules,
            calendar?.Value ?? new ShopCalendar(),
            [.. parcels.OrderByDescending(p => p.Value.Number)],
            forecasts,
            library.Catalog
        )
        {
            Today = shelf.Today,
            Now = Now,
            Mark = string.Create(
                Invariant,
                $"{shelf.Today:yyyyMMdd} {version} {calendar?.Version ?? 0} {stock.Book.LastLine} "
                    + $"{forecasts.Sum(f => f.Version)} {forecasts.Count} {Now.Ticks / TimeSpan.TicksPerHour}"
            ),
        };
    }

    /// <summary>Keeps the rules; null where they are kept, else why not.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="version">Version they were changed from.</param>
    public async Task<string?> KeepAsync(DispatchRules rules, int version) =>
        await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(
                DispatchRules.Key,
                version,
                rules,
                "rules of dispatch"
            )
        );

    /// <summary>Keeps a forecast in place of the one before; null where it is kept, else why not.</summary>
    /// <param name="forecast">The forecast.</param>
    public async Task<string?> KeepAsync(PlaceForecast forecast)
    {
        var key = KeyOf(forecast.Node, forecast.Place);
        var known = await store.RecordAsync<PlaceForecast>(key);
        return await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(key, known?.Version ?? 0, forecast, "forecast")
        );
    }

    /// <summary>Reads a file of hours.</summary>
    /// <param name="name">Name of the file.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="of">Which place it is for, and the zone of times that name none.</param>
    /// <returns>The forecast with notes on how it was read, or why it does not read.</returns>
    public (PlaceForecast? Forecast, IReadOnlyList<string> Notes, string? Fault) ReadForecast(
        string name,
        byte[] bytes,
        (RouteNode Node, string Place, string Zone) of
    )
    {
        var read = ForecastFile.Read(name, bytes, new() { Zone = of.Zone });
        return read.Value is { } found
            ? (
                new PlaceForecast
                {
                    Node = of.Node,
                    Place = of.Place,
                    Zone = of.Zone,
                    TakenAt = Now,
                    From = FileNames.Short(name),
                    Hours = found.Hours,
                },
                [$"Column {found.Column}, {found.Unit}, times in {found.Zone}.", .. found.Notes],
                null
            )
            : (null, [], string.Join(" ", read.Faults.Select(Sentence)));
    }

    /// <summary>A forecast from typed days, or why it cannot be made.</summary>
    /// <param name="days">The days.</param>
    /// <param name="of">Which place it is for, and its zone.</param>
    public (PlaceForecast? Forecast, string? Fault) FromDays(
        IReadOnlyList<TypedForecastDay> days,
        (RouteNode Node, string Place, string Zone) of
    ) =>
        PlaceClock.Find(of.Zone) is not { } local
            ? (null, $"The time zone '{of.Zone}' is not known. Enter one such as Europe/Berlin.")
            : (
                new PlaceForecast
                {
                    Node = of.Node,
                    Place = of.Place,
                    Zone = of.Zone,
                    TakenAt = Now,
                    From = "typed by days",
                    Hours = TypedDays.Hours(days, local),
                },
                null
            );

    /// <summary>Why a region cannot be used, in one sentence; null where it can.</summary>
    /// <param name="region">The region.</param>
    public static string? RegionRefusal(DeliveryRegion region) =>
        PlaceClock.Find(region.Zone) is null
            ? $"The time zone '{region.Zone}' is not known. Enter one such as Europe/Berlin."
        : region.Country.Length > 0
        && HolidayLibrary.Refusal(region.Country, region.Part) is { Length: > 0 } why
            ? why
        : null;

    private static string Sentence(TextFault fault) =>
        string.Create(Invariant, $"Line {fault.Line}: {fault.Message}")
        + (fault.Expected.Length > 0 ? $"; expected {fault.Expected}." : ".");

    /// <summary>A parcel begun from an order; null where there is no such order.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="number">Number of the order.</param>
    public async Task<Parcel?> FromOrderAsync(DispatchView view, int number)
    {
        if (view.Stock.Orders.FirstOrDefault(o => o.Number == number) is not { } order)
        {
            return null;
        }

        var customer = view.Stock.Customers.GetValueOrDefault(order.Customer);
        return new Parcel
        {
            Number = 0,
            Order = number,
            Recipient = customer?.Name ?? order.Customer,
            Region = view.Rules.HomeRegion,
            Carrier = view.Rules.Carriers.Count > 0 ? view.Rules.Carriers[0].Key : "",
            DestinationPlace = customer is { Address: [.., var last] } ? last : "",
            HubPlace = view.Parcels.FirstOrDefault(p => p.Value.HubPlace.Length > 0)?.Value.HubPlace ?? "",
            WishedDay =
                (await store.RecordAsync<ShopPlan>(ShopPlan.Key))?.Value.Find(number)?.Days.Ship
                    is { } planned
                && view.Calendar.ShipDays.Contains(planned.DayOfWeek)
                    ? planned
                    : null,
            Contents =
            [
                .. order
                    .Goods.Where(g => g.IsLive && view.Catalog.Find(g.Good) is not null)
                    .Select(g => new LiveContent(
                        view.Catalog.Find(g.Good)!.Key,
                        Math.Max(1, (int)Math.Round(g.Amount))
                    )),
            ],
        };
    }

    /// <summary>Keeps a new parcel; its number, or why not.</summary>
    /// <param name="parcel">The parcel.</param>
    public async Task<(int Number, string? Fault)> AddAsync(Parcel parcel)
    {
        var change = new ShopChange(await shelf.WhoAsync()).KeepNumbered<Parcel>(
            n => parcel with { Number = n },
            "parcel"
        );
        ShopWritten? written = null;
        var fault = await Attempt.AtAsync(async () => written = await store.WriteAsync(change));
        return (written?.Records[0] ?? 0, fault);
    }

    /// <summary>
    /// Keeps a changed parcel; a cleared one is planned again, and its clearance is taken back.
    /// </summary>
    /// <param name="kept">As it was.</param>
    /// <param name="parcel">As it is now.</param>
    public async Task<string?> ChangeAsync(Kept<Parcel> kept, Parcel parcel) =>
        kept.Value.State == ParcelState.Cleared
            ? await DropAsync(kept, "the parcel was changed", parcel)
            : await shelf.WriteAsync(
                new ShopChange(await shelf.WhoAsync()).Keep(kept.Key, kept.Version, parcel, "changed")
            );

    private async Task<IReadOnlyDictionary<string, Domain.Tanks.CareEntry[]>> CareAsync(
        IEnumerable<Parcel> parcels,
        CancellationToken cancel
    )
    {
        var asked = parcels
            .SelectMany(p => p.Contents)
            .Where(c => library.Catalog.Find(c.Key) is AnimalEntry && c.From.Length > 0)
            .Select(c => c.From)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (asked.Count == 0)
        {
            return new Dictionary<string, Domain.Tanks.CareEntry[]>(StringComparer.OrdinalIgnoreCase);
        }

        var known = await tanks.LoadAsync(cancel);
        return asked
            .Select(code => (Code: code, Tank: known.Find(code)?.Value.Code))
            .Where(t => t.Tank is not null)
            .ToDictionary(t => t.Code, t => known.Care[t.Tank!].ToArray(), StringComparer.OrdinalIgnoreCase);
    }
}
