using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Losses;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Tasks;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shipping;

/// <summary>A line of the checklist of a claim.</summary>
/// <param name="Severity">The shape beside it.</param>
/// <param name="Words">In one sentence.</param>
public sealed record ChecklistLine(Severity Severity, string Words)
{
    /// <summary>Name of its look.</summary>
    public string Look => Severity.ToString().ToLowerInvariant();
}

/// <summary>Which day a parcel may go, how it is packed, and what is frozen of that.</summary>
public sealed partial class DispatchDesk
{
    private const int MostKept = 400;
    private const string FactsName = "facts.json";
    private readonly ConcurrentDictionary<string, WeekVerdict> judged = new(StringComparer.Ordinal);

    /// <summary>The week of each parcel, by its key.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcels">The parcels.</param>
    /// <param name="cancel">Ends the computing.</param>
    public async Task<IReadOnlyDictionary<string, WeekVerdict>> JudgeAsync(
        DispatchView view,
        IEnumerable<Kept<Parcel>> parcels,
        CancellationToken cancel = default
    )
    {
        ImmutableArray<Kept<Parcel>> asked = [.. parcels];
        var care = await CareAsync(asked.Select(p => p.Value), cancel);
        var rules = await LearnedAsync(view.Rules, cancel);
        if (judged.Count > MostKept)
        {
            judged.Clear();
        }

        var weeks = new ConcurrentDictionary<string, WeekVerdict>(StringComparer.Ordinal);
        await Task.Run(
            () =>
                Parallel.ForEach(asked, new ParallelOptions { CancellationToken = cancel }, parcel =>
                    weeks[parcel.Key] = Judge(view, parcel, rules, Facts(parcel.Value, care, view))
                ),
            cancel
        );
        return weeks;

        WeekVerdict Judge(DispatchView of, Kept<Parcel> parcel, DispatchRules by, Seq<AnimalFact> facts)
        {
            var told = string.Join(
                ';',
                facts.Select(f => $"{f.Key} {f.From} {f.QuarantineEnds} {f.UnexplainedDeath}")
            );
            var late = string.Join(' ', by.Carriers.Select(c => c.DayLateChance.ToString("R", Invariant)));
            return judged.GetOrAdd($"{parcel.Key} {parcel.Version} {of.Mark} {told} {late}", _ =>
                WeekJudge.Judge(Asked(of, parcel.Value, by, facts), cancel)
            );
        }
    }

    private static WeekTask Asked(
        DispatchView view,
        Parcel parcel,
        DispatchRules rules,
        Seq<AnimalFact> facts
    ) =>
        new()
        {
            Parcel = parcel,
            Catalog = view.Catalog,
            Rules = rules,
            Calendar = view.Calendar,
            // Those of its own route: a warm day elsewhere says nothing of this parcel.
            Forecasts = [.. Used(view, parcel)],
            Stock =
            [
                .. rules
                    .Cartons.Select(c => (c.Key, c.Good))
                    .Concat(rules.Packs.Select(p => (p.Key, p.Good)))
                    .Where(g => g.Good.Length > 0)
                    .Select(g => new StockCount(g.Key, (int)view.Stock.Book.Usable(g.Good, view.Today))),
            ],
            Facts = facts,
            Now = view.Now,
            From = view.Today,
            Days = DaysAhead,
        };

    private static Seq<AnimalFact> Facts(
        Parcel parcel,
        IReadOnlyDictionary<string, CareEntry[]> care,
        DispatchView view
    ) =>
        [
            .. parcel
                .Contents.Where(c => care.ContainsKey(c.From))
                .Select(c => new AnimalFact(c.Key, c.From)
                {
                    QuarantineEnds = QuarantineClocks.Find(c.From, care[c.From], view.Today)?.Ends,
                    UnexplainedDeath = QuarantineClocks.KeptByDeath(care[c.From], view.Today),
                }),
        ];

    /// <summary>Rules with the chance of a late day as the parcels so far say.</summary>
    private async Task<DispatchRules> LearnedAsync(DispatchRules rules, CancellationToken cancel)
    {
        var counts = await ArrivalsAsync(cancel);
        return counts.IsEmpty
            ? rules
            : rules with
            {
                Carriers =
                [
                    .. rules.Carriers.Select(c =>
                        c with
                        {
                            DayLateChance = DelayStatistics.LateChanceFor(c, counts).Chance,
                        }
                    ),
                ],
            };
    }

    /// <summary>How a parcel is packed for a day; null where no way of packing was found.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="day">The day.</param>
    /// <param name="week">The week it is of.</param>
    public static PackingPlan? Plan(DispatchView view, Parcel parcel, DayVerdict day, WeekVerdict week) =>
        day.Choice is { } choice
        && view.Rules.Cartons.FirstOrDefault(c => c.Key == choice.Carton) is { } carton
            ? PackingPlanner.Plan(
                new()
                {
                    Parcel = parcel,
                    Catalog = view.Catalog,
                    Rules = view.Rules,
                    Carton = carton,
                    Packs = choice.Packs,
                    BandLowCelsius = week.BandLowCelsius,
                    BandHighCelsius = week.BandHighCelsius,
                    Goods = [.. view.Stock.Goods.Values],
                    Hours = choice.Hours.Count > 0 ? choice.Hours[^1].Hour : 48,
                }
            )
            : null;

    /// <summary>Papers of the animals of a parcel.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    public static IReadOnlyList<AnimalPaper> Papers(DispatchView view, Parcel parcel) =>
        AnimalPapers.List(parcel, view.Catalog, view.Rules, view.Today);

    /// <summary>Notes that a paper is there, or is not; null where it is kept, else why not.</summary>
    /// <param name="kept">The parcel.</param>
    /// <param name="paper">Key of the paper.</param>
    /// <param name="isThere">True where it is.</param>
    public async Task<string?> TickAsync(Kept<Parcel> kept, string paper, bool isThere)
    {
        var others = kept.Value.Papers.Where(p => p != paper);
        return await shelf.WriteAsync(
            new ShopChange(await shelf.WhoAsync()).Keep(
                kept.Key,
                kept.Version,
                kept.Value with
                {
                    Papers = isThere ? [.. others, paper] : [.. others],
                },
                "papers"
            )
        );
    }

    /// <summary>Why a parcel cannot be cleared for a day; null where it can.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="day">The day.</param>
    public static string? ClearingRefusal(DispatchView view, Parcel parcel, DayVerdict day) =>
        parcel.State != ParcelState.Planned ? "It is cleared already."
        : LabelGate.Refusal(day, day.Day, view.Now, Newest(view, parcel)) is { Length: > 0 } why ? why
        : day.Choice is null ? "No way of packing was found for this day."
        : null;

    /// <summary>
    /// Clears a parcel for a day: judged once more, frozen with all it rests on, goods out of stock. Whole, or
    /// nothing of it.
    /// </summary>
    /// <param name="kept">The parcel.</param>
    /// <param name="shown">The day as it was shown.</param>
    public async Task<string?> ClearAsync(Kept<Parcel> kept, DayVerdict shown)
    {
        var view = await LoadAsync();
        var week = (await JudgeAsync(view, [kept]))[kept.Key];
        var day = week.Days.FirstOrDefault(d => d.Day == shown.Day);
        if (day is null || day.Verdict != shown.Verdict)
        {
            return "The verdict of this day has changed meanwhile. Look at it again.";
        }

        var parcel = kept.Value with
        {
            IsDepotPickUp = kept.Value.IsDepotPickUp || day.Verdict == ShipVerdict.DepotOnly,
            ShipDay = day.Day,
            State = ParcelState.Cleared,
        };
        var papers = AnimalPapers.List(parcel, view.Catalog, view.Rules, view.Today);
        if (ClearingRefusal(view, kept.Value, day) is { } refusal)
        {
            return refusal;
        }

        if (AnimalPapers.Missing(papers) is [var missing, ..])
        {
            return $"A needed paper is not there: {missing.Text}";
        }

        if (
            Plan(view, parcel, day, week) is not { Fits: true } plan
            || view.CarrierOf(parcel) is not { } terms
        )
        {
            return "It cannot be packed so; look at the packing above.";
        }

        var facts = new ClearedFacts
        {
            Parcel = parcel,
            Week = week,
            Day = day,
            Forecasts = [.. Used(view, parcel)],
            Plan = plan,
            Carrier = terms,
            Rules = view.Rules,
            Papers = papers,
            Program = options.Version,
        };
        var take = Take(view, parcel, plan);
        if (take.Short is { } lacking)
        {
            return lacking;
        }

        return await LinkAsync(
            new(
                parcel,
                EvidenceKind.Cleared,
                $"Cleared for {ShipWords.Day(day.Day)}: {ShipWords.Word(day.Verdict)}."
            )
            {
                Text = ClearedText.Write(facts),
                File = (FactsName, Encoding.UTF8.GetBytes(TradeJson.Write(facts))),
                Add = async change =>
                {
                    change.Keep(kept.Key, kept.Version, parcel, "cleared");
                    var who = await shelf.WhoAsync();
                    foreach (var line in take.Lines)
                    {
                        change.Add(line with { Who = who });
                    }
                },
            }
        );
    }

    /// <summary>When the newest forecast of its route was taken; null for none.</summary>
    private static DateTime? Newest(DispatchView view, Parcel parcel) =>
        Used(view, parcel).Select(f => (DateTime?)f.TakenAt).Max();

    /// <summary>Why no label may be printed now; null where one may.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="cleared">The parcel as it was cleared.</param>
    public static string? LabelRefusal(DispatchView view, ClearedParcel cleared) =>
        cleared.Parcel.State is ParcelState.HandedOver or ParcelState.Arrived
            ? "No label: the parcel is gone."
        : cleared.LabelRefusal.Length > 0 ? cleared.LabelRefusal
        : LabelGate.Refusal(cleared.Day, view.Today, view.Now, Newest(view, cleared.Parcel))
            is { Length: > 0 } why
            ? why
        : null;

    private static IEnumerable<PlaceForecast> Used(DispatchView view, Parcel parcel) =>
        view.PlacesOf(parcel).Select(p => view.ForecastOf(p.Node, p.Place)).OfType<PlaceForecast>();

    /// <summary>Lines that take what is packed out of stock, or what is lacking.</summary>
    private static (ImmutableArray<Movement> Lines, string? Short) Take(
        DispatchView view,
        Parcel parcel,
        PackingPlan plan
    )
    {
        var lines = ImmutableArray.CreateBuilder<Movement>();
        foreach (var part in plan.List.Where(l => l.Good.Length > 0 && l.Units > 0))
        {
            if (!view.Stock.Book.LotsOf(part.Good).Any())
            {
                continue;
            }

            var picking = Picking.Propose(view.Stock.Book, part.Good, part.Units, view.Today);
            if (picking.IsShort)
            {
                return (
                    [],
                    $"The stock lacks {part.What} for this parcel. Count it, or choose another packing."
                );
            }

            lines.AddRange(
                picking.Lots.Select(l => new Movement
                {
                    Lot = l.Lot.Lot.Id,
                    Kind = MovementKind.Used,
                    Amount = l.Amount,
                    Into = NameOf(parcel),
                    Day = view.Today,
                    Who = "",
                    Note = NameOf(parcel),
                })
            );
        }

        return (lines.ToImmutable(), null);
    }

    private static string NameOf(Parcel parcel) => string.Create(Invariant, $"parcel {parcel.Number}");

    /// <summary>Goods of a parcel go back to their lots.</summary>
    private async Task TakeBackAsync(ShopChange change, Parcel parcel)
    {
        var book = await shelf.BookAsync();
        var name = NameOf(parcel);
        var who = await shelf.WhoAsync();
        foreach (var lot in book.Lots)
        {
            foreach (var line in lot.Standing.Where(l => l.Line.Into == name))
            {
                if (Corrections.TakeBack(lot, line.Line.Id, shelf.Today, who, name).Line is { } back)
                {
                    change.Add(back);
                }
            }
        }
    }

    /// <summary>The parcel with all that its papers say; null where it was never cleared.</summary>
    /// <param name="number">Number of the parcel.</param>
    /// <param name="isUs">True for a reader of Fahrenheit.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ClearedParcel?> ClearedAsync(int number, bool isUs, CancellationToken cancel)
    {
        var view = await LoadAsync(cancel);
        var links = await LinksAsync(number, cancel);
        var link = links.LastOrDefault(l => l.Kind == EvidenceKind.Cleared);
        var frozen = await FrozenAsync(links, cancel);
        if (
            view.Find(number)?.Value is not { } parcel
            || link is null
            || frozen is null
            || parcel.ShipDay is null
        )
        {
            return null;
        }

        var customer = parcel.Order is { } order
            ? view.Stock.Orders.FirstOrDefault(o => o.Number == order)?.Customer
            : null;
        return new()
        {
            Parcel = parcel,
            Day = frozen.Day,
            Plan = frozen.Plan,
            Carrier = frozen.Carrier,
            Fingerprint = link.Sha256,
            Papers = frozen.Papers,
            Message = CustomerMessage.Leaves(
                new()
                {
                    Parcel = parcel,
                    Rules = frozen.Rules,
                    Carrier = frozen.Carrier,
                    Cups = frozen.Plan.Cups,
                    Shop = view.Stock.Terms?.Name ?? "",
                    IsUs = isUs,
                    BandLowCelsius = frozen.Week.BandLowCelsius,
                    BandHighCelsius = frozen.Week.BandHighCelsius,
                    Fingerprint = link.Sha256,
                },
                frozen.Day
            ),
            Address =
                customer is not null && view.Stock.Customers.TryGetValue(customer, out var known)
                    ? [known.Name, .. known.Address]
                    : [parcel.Recipient, parcel.DestinationPlace],
        };
    }

    private async Task<(double Low, double High)?> BandAsync(int number) =>
        await FrozenAsync(await LinksAsync(number), CancellationToken.None)
            is { Week: { BandLowCelsius: { } low, BandHighCelsius: { } high } }
            ? (low, high)
            : null;

    /// <summary>What the last clearance rested on, as it was frozen; null where there is none.</summary>
    private async Task<ClearedFacts?> FrozenAsync(
        IReadOnlyList<EvidenceEntry> links,
        CancellationToken cancel
    )
    {
        var file = links
            .LastOrDefault(l => l.Kind == EvidenceKind.Cleared)
            ?.Files.FirstOrDefault(f => f.Name.EndsWith(FactsName, StringComparison.Ordinal));
        return
            file is not null
            && await FileAsync(file.Sha256, cancel) is { } bytes
            && EvidenceChain.CheckFile(file, bytes) is null
            ? TradeJson.Read<ClearedFacts>(Encoding.UTF8.GetString(bytes))
            : null;
    }

    /// <summary>The checklist of a claim.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="claim">The claim.</param>
    /// <param name="links">Links of the parcel.</param>
    public async Task<IReadOnlyList<ChecklistLine>> ChecklistAsync(
        DispatchView view,
        Parcel parcel,
        Claim claim,
        IReadOnlyList<EvidenceEntry> links
    )
    {
        var frozen = await FrozenAsync(links, CancellationToken.None);
        var zone = view.RegionOf(parcel)?.Zone ?? "Etc/UTC";
        var found = ClaimCheck.List(
            new()
            {
                Claim = claim,
                Rules = frozen?.Rules ?? view.Rules,
                Carrier = frozen?.Carrier ?? view.CarrierOf(parcel),
                Day = frozen?.Day,
                Evidence = [.. links],
                PlannedUntil =
                    frozen?.Day.Arrives is { } arrives
                    && Litterfall.Dispatch.Forecasts.PlaceClock.Find(zone) is { } local
                        ? local.Utc(arrives, frozen.Carrier.DeliversUntilHour)
                        : null,
                Now = view.Now,
            }
        );
        return
        [
            .. found.Lines.Select(l => new ChecklistLine(
                l.State switch
                {
                    ClaimState.NotMet => Severity.Stop,
                    ClaimState.Unknown => Severity.Caution,
                    _ => Severity.Note,
                },
                l.Text
            )),
            new(
                found.IsOverdue ? Severity.Stop : Severity.Note,
                $"{found.Words} Answer by {ShipWords.Day(found.AnswerBy)}."
            ),
        ];
    }

    /// <summary>Tasks of a span of days.</summary>
    /// <param name="span">First and last day, both included.</param>
    /// <param name="isNamed">True where recipients are named.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<IEnumerable<DayTask>> TasksAsync(
        (DateOnly First, DateOnly Last) span,
        bool isNamed,
        CancellationToken cancel = default
    )
    {
        var (rules, _) = await RulesAsync(cancel);
        var parcels = await store.RecordsAsync<Parcel>(cancel);
        var claims = await store.RecordsAsync<Claim>(cancel);
        return ParcelTasks.Find(
            [.. parcels.Select(p => p.Value)],
            [.. claims.Select(c => c.Value)],
            rules,
            span,
            isNamed ? ParcelTasks.Named : ParcelTasks.Numbered
        );
    }

    /// <summary>Checks an exported file.</summary>
    /// <param name="bytes">The file.</param>
    public static (bool IsWhole, string Words) CheckExport(byte[] bytes)
    {
        var check = EvidenceExport.Check(bytes);
        return (check.IsWhole, string.Join(" ", check.Words));
    }

    /// <summary>The evidence of a parcel as one file; null where there is none.</summary>
    /// <param name="number">Number of the parcel.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<byte[]?> ExportAsync(int number, CancellationToken cancel)
    {
        var links = await LinksAsync(number, cancel);
        if (links.Count == 0)
        {
            return null;
        }

        var files = new Dictionary<string, byte[]?>(StringComparer.Ordinal);
        foreach (var file in links.SelectMany(l => l.Files))
        {
            files[file.Sha256] = await FileAsync(file.Sha256, cancel);
        }

        return EvidenceExport.Write(links, f => files.GetValueOrDefault(f.Sha256));
    }
}
