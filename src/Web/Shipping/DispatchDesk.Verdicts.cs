using System.Collections.Concurrent;
using System.Collections.Immutable;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Losses;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Tasks;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Litterfall.Store;

namespace Litterfall.Web.Shipping;

/// <summary>Which day a parcel may go, and how it is packed.</summary>
public sealed partial class DispatchDesk
{
    private const int MostKept = 400;
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

    /// <summary>Checks an exported file, against the links that are kept here where there are any.</summary>
    /// <param name="bytes">The file.</param>
    public async Task<(bool IsWhole, string Words)> CheckExportAsync(byte[] bytes)
    {
        var check = EvidenceExport.Check(bytes);
        var kept = check.Parcel is { } number ? await LinksAsync(number) : [];
        check = kept.Count > 0 ? EvidenceExport.Check(bytes, kept) : check;
        return (check.IsWhole, string.Join(" ", check.Words));
    }

    /// <summary>Checks the evidence of all parcels; in a sentence.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<(bool IsWhole, string Words)> CheckAllAsync(CancellationToken cancel = default)
    {
        var links = (await store.RecordsAsync<EvidenceEntry>(cancel))
            .OrderBy(l => l.When)
            .ThenBy(l => l.Key, StringComparer.Ordinal)
            .Select(l => l.Value)
            .ToList();
        var faults = EvidenceChain
            .CheckShop(links)
            .Concat(
                links
                    .GroupBy(l => l.Parcel)
                    .SelectMany(p =>
                        EvidenceChain
                            .Check([.. p])
                            .Select(f =>
                                f with
                                {
                                    Where = string.Create(Invariant, $"parcel {p.Key}, {f.Where}"),
                                }
                            )
                    )
            )
            .ToList();
        return faults.Count == 0
            ? (
                true,
                $"Whole: {ShipWords.Count(links.Count, "link", "links")} of all parcels, in their order."
            )
            : (false, string.Join(" ", faults));
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
