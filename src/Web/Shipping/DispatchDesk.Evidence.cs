using System.Collections.Immutable;
using Litterfall.Dispatch.Evidence;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shipping;

/// <summary>What happened to a parcel; every step is a link that is never changed.</summary>
public sealed partial class DispatchDesk
{
    // One link at a time: each names the one before.
    private readonly SemaphoreSlim turn = new(1, 1);

    /// <summary>Links of a parcel in their order.</summary>
    /// <param name="number">Number of the parcel.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<IReadOnlyList<EvidenceEntry>> LinksAsync(
        int number,
        CancellationToken cancel = default
    ) =>
        [
            .. (
                await store.RecordsBeginningAsync<EvidenceEntry>(
                    string.Create(Invariant, $"{number:000000}-"),
                    cancel
                )
            ).Select(l => l.Value),
        ];

    /// <summary>Whether the links and files of a parcel are whole, in a sentence.</summary>
    /// <param name="number">Number of the parcel.</param>
    /// <param name="links">Its links.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<string> CheckAsync(
        int number,
        IReadOnlyList<EvidenceEntry> links,
        CancellationToken cancel = default
    )
    {
        var faults = EvidenceChain.Check(links).ToList();
        foreach (var file in links.SelectMany(l => l.Files))
        {
            if (EvidenceChain.CheckFile(file, await FileAsync(file.Sha256, cancel)) is { } fault)
            {
                faults.Add(fault);
            }
        }

        return faults.Count == 0
            ? $"Whole: {ShipWords.Count(links.Count, "link", "links")} with all files, as they were written."
            : $"Not as it was written: {string.Join(" ", faults)}";
    }

    /// <summary>A file of the evidence by its fingerprint; null where there is none.</summary>
    /// <param name="sha256">64 small hexadecimal digits.</param>
    /// <param name="cancel">Ends the reading.</param>
    public Task<byte[]?> FileAsync(string sha256, CancellationToken cancel = default) =>
        store.FileAsync(EvidenceName.From(sha256), cancel);

    /// <summary>The claim of a parcel; null for none.</summary>
    /// <param name="number">Number of the parcel.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<Claim?> ClaimAsync(int number, CancellationToken cancel = default) =>
        (await store.RecordAsync<Claim>(number.ToString(Invariant), cancel))?.Value;

    /// <summary>A photo that was taken in belongs to the evidence.</summary>
    /// <param name="parcel">The parcel.</param>
    /// <param name="photo">Name of the kept picture.</param>
    public async Task<string?> AddPhotoAsync(Parcel parcel, string photo) =>
        await store.FileAsync(photo) is { } bytes
            ? await LinkAsync(new(parcel, EvidenceKind.Photo, "photo") { File = ("photo.jpg", bytes) })
            : "The photo is gone; take it again.";

    /// <summary>The file of a logger that travelled along belongs to the evidence.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="name">Name of the file.</param>
    /// <param name="bytes">What is in it.</param>
    public async Task<string?> AddLoggerAsync(DispatchView view, Parcel parcel, string name, byte[] bytes)
    {
        var band = await BandAsync(parcel.Number);
        var read = LoggerFinding.Tell(name, bytes, view.RegionOf(parcel)?.Zone ?? "Etc/UTC", band);
        return await LinkAsync(
            new(parcel, EvidenceKind.Logger, read) { File = (FileNames.Short(name), bytes) }
        );
    }

    /// <summary>
    /// It was given to the carrier: the animals leave their tanks, the lots their stock; the order says so.
    /// </summary>
    /// <param name="view">What is known.</param>
    /// <param name="kept">The parcel.</param>
    /// <param name="track">Number of the carrier; empty for none.</param>
    public async Task<string?> HandOverAsync(DispatchView view, Kept<Parcel> kept, string track)
    {
        var parcel = kept.Value;
        if (await HandOverRefusalAsync(view, parcel) is { } refusal)
        {
            return refusal;
        }

        var late = parcel.ShipDay < view.Today ? $" on {ShipWords.Day(parcel.ShipDay.Value)}" : "";
        var note = string.Create(
            Invariant,
            $"Handed over to the carrier{late}, written {LocalNow:yyyy-MM-dd HH:mm}"
                + $"{(track.Length > 0 ? $", number {track}" : "")}."
        );
        return await LinkAsync(
            new(parcel, EvidenceKind.HandedOver, note)
            {
                Add = async change =>
                {
                    change.Keep(
                        kept.Key,
                        kept.Version,
                        parcel with
                        {
                            State = ParcelState.HandedOver,
                        },
                        "handed over"
                    );
                    await LeaveAsync(change, view, parcel);
                },
            }
        );
    }

    /// <summary>
    /// A day to come is no hand-over; on the day itself what bars a label bars the hand-over too. One that
    /// was forgotten may be written later.
    /// </summary>
    private async Task<string?> HandOverRefusalAsync(DispatchView view, Parcel parcel) =>
        parcel.ShipDay is not { } day || await ClearedAsync(parcel.Number, false, default) is not { } cleared
            ? "It is not cleared. Judge it and clear it first."
        : day > view.Today
            ? $"It is cleared for {ShipWords.Day(day)}, not for today. Take the clearance back and judge it "
                + "again."
        : day < view.Today ? null
        : LabelRefusal(view, cleared)?.Replace("No label", "Not now", StringComparison.Ordinal);

    private async Task LeaveAsync(ShopChange change, DispatchView view, Parcel parcel)
    {
        var who = await shelf.WhoAsync();
        var name = NameOf(parcel);
        var running = await tanks.LoadAsync();
        foreach (var (i, content) in parcel.Contents.Index())
        {
            if (
                running.Find(content.From)?.Value is { } tank
                && view.Catalog.Find(content.Key) is AnimalEntry
            )
            {
                change.Add(Gone(parcel, (i, content), tank.Code, who));
            }
            else
            {
                foreach (var (lot, amount) in Lots(view, content))
                {
                    change.Add(
                        new Movement
                        {
                            Lot = lot,
                            Kind = MovementKind.Sold,
                            Amount = amount,
                            Into = parcel.Order?.ToString(Invariant) ?? name,
                            Day = view.Today,
                            Who = who,
                            Note = name,
                        }
                    );
                }
            }
        }

        if (parcel.Order is { } number && await store.OrderAsync(number) is { } order)
        {
            change.Keep(
                order.Key,
                order.Version,
                order.Value with
                {
                    History =
                    [
                        .. order.Value.History,
                        new OrderEvent(Now, who, order.Value.State, $"{name} handed over"),
                    ],
                },
                "parcel handed over"
            );
        }
    }

    /// <summary>The named lot, or those that would be picked; none where stock does not count it.</summary>
    private static IEnumerable<(string Lot, double Amount)> Lots(DispatchView view, LiveContent content)
    {
        var book = view.Stock.Book;
        if (book.Find(content.From) is { } named)
        {
            return [(named.Lot.Id, content.Count)];
        }

        var picking = Picking.Propose(book, content.Key, content.Count, view.Today);
        return picking.IsShort ? [] : picking.Lots.Select(l => (l.Lot.Lot.Id, l.Amount));
    }

    private CareEntry Gone(Parcel parcel, (int Number, LiveContent What) content, string tank, string who) =>
        new()
        {
            Key = string.Create(Invariant, $"parcel-{parcel.Number}-{content.Number}"),
            Tank = tank,
            At = Now,
            Kind = CareKind.AnimalsOut,
            Amount = content.What.Count,
            Species = content.What.Key,
            Other = parcel.Recipient,
            Note = NameOf(parcel),
            Who = who,
        };

    /// <summary>It arrived.</summary>
    /// <param name="kept">The parcel.</param>
    /// <param name="dead">Dead of each content.</param>
    /// <param name="how">When it was delivered, UTC, and whether that was late.</param>
    public async Task<string?> ArrivedAsync(
        Kept<Parcel> kept,
        ImmutableArray<int> dead,
        (DateTime At, bool IsLate) how
    )
    {
        var parcel = kept.Value;
        if (how.At > Now)
        {
            return "It cannot have been delivered in the future; check the time.";
        }

        var counts = parcel.Contents.Select(
            (c, i) =>
                new ArrivalCount(
                    parcel.Number,
                    parcel.Carrier,
                    parcel.ShipDay ?? shelf.Today,
                    c.Key,
                    c.Count,
                    dead[i]
                )
                {
                    IsLate = how.IsLate,
                }
        );
        var arrival = new ParcelArrival(parcel.Number, how.At, [.. counts]);
        var words = parcel.Contents.Select(
            (c, i) => string.Create(Invariant, $"{dead[i]} of {c.Count} {Called(c.Key)} dead")
        );
        return await LinkAsync(
            new(
                parcel,
                EvidenceKind.Arrived,
                string.Create(
                    Invariant,
                    $"Delivered {how.At:yyyy-MM-dd HH:mm} UTC{(how.IsLate ? ", late" : "")}: "
                        + $"{string.Join("; ", words)}."
                )
            )
            {
                Text = TradeJson.Write(arrival),
                Add = change =>
                {
                    change.Keep(
                        kept.Key,
                        kept.Version,
                        parcel with
                        {
                            State = ParcelState.Arrived,
                        },
                        "arrived"
                    );
                    change.Keep(parcel.Number.ToString(Invariant), 0, arrival, "arrived");
                    return Task.CompletedTask;
                },
            }
        );
    }

    /// <summary>The clearance is taken back; the parcel waits again.</summary>
    /// <param name="kept">The parcel.</param>
    /// <param name="why">Why, in words.</param>
    /// <param name="changed">The parcel as it is from now on; null for as it was.</param>
    public Task<string?> DropAsync(Kept<Parcel> kept, string why, Parcel? changed = null) =>
        LinkAsync(
            new(kept.Value, EvidenceKind.Dropped, $"The clearance was taken back: {why}.")
            {
                Add = change =>
                {
                    change.Keep(
                        kept.Key,
                        kept.Version,
                        (changed ?? kept.Value) with
                        {
                            State = ParcelState.Planned,
                            ShipDay = null,
                            Papers = [],
                        },
                        "clearance taken back"
                    );
                    return TakeBackAsync(change, kept.Value);
                },
            }
        );

    /// <summary>Keeps a claim; it belongs to the evidence too.</summary>
    /// <param name="parcel">The parcel.</param>
    /// <param name="claim">The claim.</param>
    public async Task<string?> KeepAsync(Parcel parcel, Claim claim)
    {
        var key = parcel.Number.ToString(Invariant);
        var known = await store.RecordAsync<Claim>(key);
        var delivered = claim.DeliveredAt ?? await DeliveredAsync(parcel.Number);
        var kept = claim with { DeliveredAt = delivered };
        return await LinkAsync(
            new(
                parcel,
                EvidenceKind.Claim,
                string.Create(
                        Invariant,
                        $"Claim: {claim.Dead} {Called(claim.Species)} dead; "
                            + $"{ShipWords.Name(claim.Outcome)}. {claim.Why}"
                    )
                    .TrimEnd()
            )
            {
                Text = TradeJson.Write(kept),
                Add = change =>
                {
                    change.Keep(key, known?.Version ?? 0, kept, "claim");
                    return Task.CompletedTask;
                },
            }
        );
    }

    /// <summary>Counts of all parcels that arrived.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public Task<ImmutableArray<ArrivalCount>> ArrivalsAsync(CancellationToken cancel = default) =>
        ArrivalReading.AllAsync(store, cancel);

    private string Called(string key) => library.Catalog.Find(key)?.CommonFirst ?? key;

    private async Task<DateTime?> DeliveredAsync(int number) =>
        (await store.RecordAsync<ParcelArrival>(number.ToString(Invariant)))?.Value.DeliveredAt;

    /// <summary>A step that becomes a link.</summary>
    private sealed record LinkStep(Parcel Parcel, EvidenceKind Kind, string Note)
    {
        public string Text { get; init; } = "";

        public (string Name, byte[] Bytes)? File { get; init; }

        /// <summary>What else is written in the same step.</summary>
        public Func<ShopChange, Task> Add { get; init; } = _ => Task.CompletedTask;
    }

    /// <summary>Writes a link with all that belongs to it, whole or not at all.</summary>
    private async Task<string?> LinkAsync(LinkStep step)
    {
        await turn.WaitAsync();
        try
        {
            return await Attempt.AtAsync(async () =>
            {
                var (change, _) = await LinkedAsync(step);
                await store.WriteAsync(change);
            });
        }
        finally
        {
            turn.Release();
        }
    }

    private async Task<(ShopChange Change, EvidenceEntry Link)> LinkedAsync(LinkStep step)
    {
        var who = await shelf.WhoAsync();
        var links = await LinksAsync(step.Parcel.Number);
        var last = await store.LastRecordAsync<EvidenceEntry>();
        var number = links.Count + 1;
        if (step.File is { } file)
        {
            var named = EvidenceChain.File(number, file.Name, file.Bytes);
            await store.AddFileAsync(EvidenceName.From(named.Sha256), file.Bytes);
        }

        var link = EvidenceChain.Next(
            new()
            {
                Parcel = step.Parcel.Number,
                Kind = step.Kind,
                At = Now,
                Who = who,
                Note = step.Note,
                Text = step.Text,
                Files = step.File is { } one ? [EvidenceChain.File(number, one.Name, one.Bytes)] : [],
            },
            links.Count > 0 ? links[^1] : null,
            last?.Value
        );
        var change = new ShopChange(who).Keep(KeyOf(link), 0, link, step.Note);
        await step.Add(change);
        return (change, link);
    }
}
