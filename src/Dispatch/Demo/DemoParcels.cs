using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;

namespace Litterfall.Dispatch.Demo;

/// <summary>
/// Parcels of the invented workshop around a day: a hub too hot on Tuesday, a holiday that traps Wednesday, a
/// frost, a mild week, and how earlier ones arrived. All invented.
/// </summary>
/// <param name="today">Day the demo is filled.</param>
/// <param name="now">When it is filled, UTC.</param>
public sealed class DemoParcels(DateOnly today, DateTime now)
{
    private const string Zone = "Europe/Berlin";
    private const string Home = "Upper Sallow";
    private const string HubPlace = "Tollgate hub";
    private const string Service = "overnight";
    private const string Who = "Tobin";
    private const int ForecastDays = 9;
    private const int EveHour = 12;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>The Tuesday of the day or the next one.</summary>
    private DateOnly Tuesday => today.AddDays(((int)DayOfWeek.Tuesday - (int)today.DayOfWeek + 7) % 7);

    /// <summary>The next Thursday after that: the holiday.</summary>
    private DateOnly Holiday => today.AddDays(1 + ((int)DayOfWeek.Thursday - (int)today.DayOfWeek + 6) % 7);

    /// <summary>The shop's rules with its stock named.</summary>
    public DispatchRules Rules
    {
        get
        {
            var usual = DispatchDefaults.Fill(new DispatchRules());
            return usual with
            {
                HomePlace = Home,
                HomeRegion = "home",
                EmergencyPhone = "000 112233",
                Cartons = [.. usual.Cartons.Select(c => c with { Good = c.Key })],
                Packs = [.. usual.Packs.Select(p => p with { Good = p.Key })],
                Cups = [.. usual.Cups.Select(c => c with { Good = c.Key })],
                Carriers =
                [
                    .. usual.Carriers.Select(c =>
                        c with
                        {
                            TakesAnimals = true,
                            RulesReadOn = today.AddDays(-20),
                        }
                    ),
                ],
                Regions =
                [
                    new DeliveryRegion
                    {
                        Key = "home",
                        Name = "around Upper Sallow",
                        Zone = Zone,
                    },
                    new DeliveryRegion
                    {
                        Key = "pelloway",
                        Name = "Pelloway and the coast",
                        Zone = Zone,
                        Days = [new RestDay(Holiday, "Harvest holiday") { EveEndsAtHour = EveHour }],
                    },
                ],
            };
        }
    }

    /// <summary>Cartons, packs and cups as goods.</summary>
    public ImmutableArray<Good> Goods =>
        [
            .. Rules
                .Cartons.Select(c => (c.Key, c.Name))
                .Concat(Rules.Packs.Select(p => (p.Key, p.Name)))
                .Concat(Rules.Cups.Select(c => (c.Key, c.Name)))
                .Select(g => new Good
                {
                    Key = g.Key,
                    Name = g.Name,
                    Kind = GoodKind.Packaging,
                    Unit = StockUnit.Pieces,
                    Place = "packing bench",
                }),
        ];

    /// <summary>What is there of them.</summary>
    public ImmutableArray<Lot> Lots =>
        [
            .. Goods.Select(
                (g, i) =>
                    new Lot
                    {
                        Id = string.Create(Invariant, $"PKG-{i + 1:00}"),
                        Good = g.Key,
                        Since = today.AddDays(-40),
                        Amount = g.Key.StartsWith("cup", StringComparison.Ordinal) ? 60 : 14,
                    }
            ),
        ];

    /// <summary>Forecasts of the places.</summary>
    public ImmutableArray<PlaceForecast> Forecasts =>
        [
            Forecast(RouteNode.Origin, Home, _ => (14, 24)),
            Forecast(RouteNode.Hub, HubPlace, d => d == Tuesday ? (24, 34) : (16, 25)),
            Forecast(RouteNode.Destination, "Quernmoor", _ => (15, 25)),
            Forecast(RouteNode.Destination, "Pelloway", _ => (14, 22)),
            Forecast(RouteNode.Destination, "Marl Street", d => d < Tuesday ? (9, 15) : (15, 23)),
            Forecast(RouteNode.Destination, "Underbank", _ => (3, 8)),
        ];

    /// <summary>Parcels that wait.</summary>
    public ImmutableArray<Parcel> Waiting =>
        [
            Parcel(
                1,
                203,
                "Quernmoor Museum",
                "Quernmoor",
                [new("dendrobates-leucomelas", 6) { From = "C1" }]
            ) with
            {
                Papers = ["origin/dendrobates-leucomelas", "captive-bred/dendrobates-leucomelas"],
                WishedDay = Tuesday,
                Note = "Hot hub on Tuesday.",
            },
            Parcel(2, 204, "Pelloway Pet Supplies", "Pelloway", [new("folsomia-candida", 8)]) with
            {
                Region = "pelloway",
                WishedDay = Holiday.AddDays(-1),
                Note = "Holiday on Thursday: what leaves on Wednesday lies over it.",
            },
            Parcel(3, 202, "Marl Street Dental", "Marl Street", [new("dendrobates-auratus", 4)]) with
            {
                Papers = ["origin/dendrobates-auratus", "captive-bred/dendrobates-auratus"],
                WishedDay = Tuesday.AddDays(1),
            },
            Parcel(4, 205, "Rafe Underbank", "Underbank", [new("neoregelia-small", 3)]) with
            {
                WishedDay = Tuesday,
                Note = "Plants only: his attic is too hot for animals.",
            },
        ];

    /// <summary>Earlier parcels with how they arrived, from the workshop's book.</summary>
    public ImmutableArray<ParcelArrival> Arrivals
    {
        get
        {
            // Every second week back from the day; every eleventh with a loss, one late. Invented.
            var all = ImmutableArray.CreateBuilder<ParcelArrival>();
            string[] species =
            [
                "epipedobates-anthonyi",
                "folsomia-candida",
                "dendrobates-leucomelas",
                "drosophila-hydei",
                "neoregelia-small",
            ];
            for (var i = 0; i < Past; i++)
            {
                var day = Tuesday.AddDays(-14 * (Past - i));
                var number = Waiting.Length + 1 + i;
                var count = new ArrivalCount(
                    number,
                    Service,
                    day,
                    species[i % species.Length],
                    2 + (i % 4),
                    i % 11 == 7 ? 1 : 0
                )
                {
                    IsLate = i == 12,
                };
                all.Add(
                    new(
                        number,
                        day.AddDays(count.IsLate ? 2 : 1).ToDateTime(new(10, 20), DateTimeKind.Utc),
                        [count]
                    )
                );
            }

            return all.ToImmutable();
        }
    }

    /// <summary>The earlier parcels themselves.</summary>
    public ImmutableArray<Parcel> Gone =>
        [
            .. Arrivals.Select(a =>
                Parcel(
                    a.Parcel,
                    null,
                    "Callers and fairs",
                    "Quernmoor",
                    [.. a.Counts.Select(c => new LiveContent(c.Species, c.Sent))]
                ) with
                {
                    State = ParcelState.Arrived,
                    ShipDay = a.Counts[0].Day,
                }
            ),
        ];

    /// <summary>Their evidence: the day they arrived, entered from the book.</summary>
    /// <param name="tell">An arrival as text.</param>
    public ImmutableArray<EvidenceEntry> Evidence(Func<ParcelArrival, string> tell)
    {
        var all = ImmutableArray.CreateBuilder<EvidenceEntry>();
        foreach (var arrival in Arrivals)
        {
            var at = arrival.DeliveredAt.AddHours(3);
            var first = EvidenceChain.Next(
                Draft(
                    arrival,
                    EvidenceKind.Note,
                    at,
                    "Entered from the workshop's book; nothing was frozen then."
                ),
                null,
                all.Count > 0 ? all[^1] : null
            );
            var count = arrival.Counts[0];
            var words = string.Create(
                Invariant,
                $"Delivered {arrival.DeliveredAt:yyyy-MM-dd HH:mm} UTC{(count.IsLate ? ", late" : "")}: "
                    + $"{count.Dead} of {count.Sent} {count.Species} dead."
            );
            all.Add(first);
            all.Add(
                EvidenceChain.Next(
                    Draft(arrival, EvidenceKind.Arrived, at.AddMinutes(2), words) with
                    {
                        Text = tell(arrival),
                    },
                    first,
                    null
                )
            );
        }

        return all.ToImmutable();
    }

    private const int Past = 26;

    private static EvidenceDraft Draft(ParcelArrival arrival, EvidenceKind kind, DateTime at, string note) =>
        new()
        {
            Parcel = arrival.Parcel,
            Kind = kind,
            At = at,
            Who = Who,
            Note = note,
        };

    private static Parcel Parcel(
        int number,
        int? order,
        string recipient,
        string place,
        ImmutableArray<LiveContent> contents
    ) =>
        new()
        {
            Number = number,
            Order = order,
            Recipient = recipient,
            Contents = [.. contents],
            Region = "home",
            Carrier = Service,
            HubPlace = HubPlace,
            DestinationPlace = place,
        };

    private PlaceForecast Forecast(
        RouteNode node,
        string place,
        Func<DateOnly, (double Low, double High)> of
    ) =>
        new()
        {
            Node = node,
            Place = place,
            Zone = Zone,
            TakenAt = now,
            From = "typed from the weather page (invented)",
            Hours = TypedDays.Hours(
                Enumerable
                    .Range(-1, ForecastDays + 1)
                    .Select(d => today.AddDays(d))
                    .Select(d => new TypedForecastDay(d, of(d).Low, of(d).High)),
                PlaceClock.Find(Zone)!
            ),
        };
}
