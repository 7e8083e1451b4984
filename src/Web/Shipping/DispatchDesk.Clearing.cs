using System.Collections.Immutable;
using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Stock;
using Litterfall.Store;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shipping;

/// <summary>A parcel is cleared for a day: frozen with all it rests on, goods out of stock.</summary>
public sealed partial class DispatchDesk
{
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
    /// Clears a parcel for a day: judged once more, frozen with all it rests on, goods out of stock.
    /// Whole, or nothing of it.
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

        // The chance of a late day is frozen as it was counted with.
        var learned = view with { Rules = await LearnedAsync(view.Rules, CancellationToken.None) };
        var (facts, refusal) = Facts(learned, kept.Value, week, day);
        if (facts is null)
        {
            return refusal;
        }

        var take = Take(view, facts.Parcel, facts.Plan);
        if (take.Short is { } lacking)
        {
            return lacking;
        }

        return await LinkAsync(
            new(
                facts.Parcel,
                EvidenceKind.Cleared,
                $"Cleared for {ShipWords.Day(day.Day)}: {ShipWords.Word(day.Verdict)}."
            )
            {
                Text = ClearedText.Write(facts),
                File = (FactsName, Encoding.UTF8.GetBytes(TradeJson.Write(facts))),
                Add = async change =>
                {
                    change.Keep(kept.Key, kept.Version, facts.Parcel, "cleared");
                    var who = await shelf.WhoAsync();
                    foreach (var line in take.Lines)
                    {
                        change.Add(line with { Who = who });
                    }
                },
            }
        );
    }

    /// <summary>All that a clearance rests on, or why there is none.</summary>
    private (ClearedFacts? Facts, string? Refusal) Facts(
        DispatchView view,
        Parcel kept,
        WeekVerdict week,
        DayVerdict day
    )
    {
        if (ClearingRefusal(view, kept, day) is { } refusal)
        {
            return (null, refusal);
        }

        var parcel = kept with
        {
            IsDepotPickUp = kept.IsDepotPickUp || day.Verdict == ShipVerdict.DepotOnly,
            ShipDay = day.Day,
            State = ParcelState.Cleared,
        };
        var papers = AnimalPapers.List(parcel, view.Catalog, view.Rules, view.Today);
        if (AnimalPapers.Missing(papers) is [var missing, ..])
        {
            return (null, $"A needed paper is not there: {missing.Text}");
        }

        return Plan(view, parcel, day, week) is { Fits: true } plan && view.CarrierOf(parcel) is { } terms
            ? (
                new ClearedFacts
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
                },
                null
            )
            : (null, "It cannot be packed so; look at the packing above.");
    }

    /// <summary>What the customer of a held parcel is told, a paragraph each; none where it may go.</summary>
    /// <param name="view">What is known.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="week">Its week.</param>
    /// <param name="day">The day that was asked for.</param>
    /// <param name="isUs">True for a reader of Fahrenheit.</param>
    public static IReadOnlyList<string> HoldMessage(
        DispatchView view,
        Parcel parcel,
        WeekVerdict week,
        DayVerdict day,
        bool isUs
    ) =>
        day.MayShip || view.CarrierOf(parcel) is not { } terms
            ? []
            : CustomerMessage.Stays(
                new()
                {
                    Parcel = parcel,
                    Rules = view.Rules,
                    Carrier = terms,
                    Shop = view.Stock.Terms?.Name ?? "",
                    IsUs = isUs,
                },
                week,
                day.Day
            );

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
            // What lives leaves its tank or lot at hand-over.
            if (parcel.Contents.Any(c => c.Key == part.Good) || !view.Stock.Book.LotsOf(part.Good).Any())
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
}
