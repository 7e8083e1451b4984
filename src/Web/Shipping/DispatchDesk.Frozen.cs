using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Losses;
using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Findings;
using Litterfall.Store;

namespace Litterfall.Web.Shipping;

/// <summary>A line of the checklist of a claim.</summary>
/// <param name="Severity">The shape beside it.</param>
/// <param name="Words">In one sentence.</param>
public sealed record ChecklistLine(Severity Severity, string Words)
{
    /// <summary>Name of its look.</summary>
    public string Look => Severity.ToString().ToLowerInvariant();
}

/// <summary>What was frozen of a parcel, shown again: papers, and the checklist of a claim.</summary>
public sealed partial class DispatchDesk
{
    private const string FactsName = "facts.json";

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
                    ? known.Address
                    : [parcel.DestinationPlace],
        };
    }

    /// <summary>Day and packing that a parcel was cleared with; null where it was never cleared.</summary>
    /// <param name="links">Its links.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<(DayVerdict Day, WeekVerdict Week, PackingPlan Plan)?> FrozenDayAsync(
        IReadOnlyList<EvidenceEntry> links,
        CancellationToken cancel
    ) => await FrozenAsync(links, cancel) is { } frozen ? (frozen.Day, frozen.Week, frozen.Plan) : null;

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
}
