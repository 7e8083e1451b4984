using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Losses;

/// <summary>How a line of a claim's checklist stands.</summary>
public enum ClaimState
{
    /// <summary>It is so.</summary>
    Met,

    /// <summary>It is not so.</summary>
    NotMet,

    /// <summary>Nobody knows yet: ask.</summary>
    Unknown,

    /// <summary>Good to know; it speaks neither for nor against the claim.</summary>
    Remark,
}

/// <summary>A line of the checklist.</summary>
/// <param name="Key">Its stable name.</param>
/// <param name="Text">What was found, in one sentence.</param>
/// <param name="State">How it stands.</param>
public sealed record ClaimLine(string Key, string Text, ClaimState State);

/// <summary>What is known of a parcel when somebody claims.</summary>
public sealed record ClaimCase
{
    /// <summary>The claim.</summary>
    public required Claim Claim { get; init; }

    /// <summary>The shop's rules.</summary>
    public required DispatchRules Rules { get; init; }

    /// <summary>The carrier's terms as they were frozen; null where nobody knows.</summary>
    public CarrierTerms? Carrier { get; init; }

    /// <summary>The verdict as it was frozen; null where the parcel was never cleared.</summary>
    public DayVerdict? Day { get; init; }

    /// <summary>Links of the parcel.</summary>
    public Seq<EvidenceEntry> Evidence { get; init; } = [];

    /// <summary>Latest moment at which it should have been there, UTC; null where nobody knows.</summary>
    public DateTime? PlannedUntil { get; init; }

    /// <summary>Now, UTC.</summary>
    public required DateTime Now { get; init; }
}

/// <summary>A claim laid out for the person who decides it.</summary>
public sealed record ClaimView
{
    /// <summary>The checklist.</summary>
    public required Seq<ClaimLine> Lines { get; init; }

    /// <summary>Last day of the answer.</summary>
    public required DateOnly AnswerBy { get; init; }

    /// <summary>True where that day is over and nobody decided.</summary>
    public bool IsOverdue { get; init; }

    /// <summary>Moment until which photos count, UTC; null where the delivery is not known.</summary>
    public DateTime? PhotosUntil { get; init; }

    /// <summary>What to ask for, one sentence each.</summary>
    public Seq<string> Missing { get; init; } = [];

    /// <summary>The result in one sentence; it never decides.</summary>
    public required string Words { get; init; }
}

/// <summary>Lays a claim beside the terms and the evidence. It decides nothing: a person does.</summary>
public static class ClaimCheck
{
    /// <summary>The checklist of a claim.</summary>
    /// <param name="asked">What is known.</param>
    public static ClaimView List(ClaimCase asked)
    {
        ClaimLine[] lines =
        [
            Photo(asked),
            Met(asked.Claim),
            Temperatures(asked),
            Late(asked),
            Evidence(asked),
            Counted(asked.Claim),
        ];
        var answer = DateOnly.FromDateTime(asked.Claim.SaidAt).AddDays(asked.Rules.AnswerDays);
        var isOpen = asked.Claim.Outcome == ClaimOutcome.Open;
        return new()
        {
            Lines = [.. lines],
            AnswerBy = answer,
            IsOverdue = isOpen && DateOnly.FromDateTime(asked.Now) > answer,
            PhotosUntil = asked.Claim.DeliveredAt?.AddHours(asked.Rules.ClaimHours),
            Missing = [.. lines.Where(l => l.State == ClaimState.Unknown).Select(l => l.Text)],
            Words = Result(asked.Claim, lines),
        };
    }

    private static string Result(Claim claim, ClaimLine[] lines)
    {
        var not = lines.Count(l => l.State == ClaimState.NotMet);
        var open = lines.Count(l => l.State == ClaimState.Unknown);
        return claim.Outcome != ClaimOutcome.Open
                ? $"Decided: {claim.Outcome switch
                {
                    ClaimOutcome.Replaced => "replaced",
                    ClaimOutcome.PaidBack => "paid back",
                    _ => "refused",
                }}. {claim.Why}".Trim()
            : open > 0 ? Invariant($"{Count(open, "point is", "points are")} open: ask, then decide.")
            : not > 0
                ? Invariant(
                    $"{Count(not, "point speaks", "points speak")} against it: you decide, and say why."
                )
            : "All points of the terms are met: you decide whether to replace or to pay back.";
    }

    private static ClaimLine Photo(ClaimCase asked)
    {
        var (claim, hours) = (asked.Claim, asked.Rules.ClaimHours);
        return (claim.DeliveredAt, claim.PhotoAt) switch
        {
            (null, _) => new(
                "photo",
                "Ask when it was delivered: the time for photos counts from there.",
                ClaimState.Unknown
            ),
            ({ } at, null) when asked.Now <= at.AddHours(hours) => new(
                "photo",
                Invariant($"Ask for photos; they count until {at.AddHours(hours):d MMM yyyy HH:mm} UTC."),
                ClaimState.Unknown
            ),
            (_, null) => new(
                "photo",
                Invariant($"No photo came within {Hours(hours)} of delivery."),
                ClaimState.NotMet
            ),
            ({ } at, { } photo) when photo < at => new(
                "photo",
                "The photo is older than the delivery: ask for its time, or correct the entry.",
                ClaimState.Unknown
            ),
            ({ } at, { } photo) => new(
                "photo",
                Invariant($"The photo came {(photo - at).TotalHours:0.#} h after delivery; ")
                    + Invariant($"{Hours(hours)} are allowed."),
                photo <= at.AddHours(hours) ? ClaimState.Met : ClaimState.NotMet
            ),
        };
    }

    private static ClaimLine Met(Claim claim) =>
        claim.WasMet switch
        {
            true => new("met", "The first delivery attempt was met.", ClaimState.Met),
            false => new("met", "Nobody was there at the first delivery attempt.", ClaimState.NotMet),
            null => new("met", "Ask whether the first delivery attempt was met.", ClaimState.Unknown),
        };

    private static ClaimLine Temperatures(ClaimCase asked)
    {
        if (asked.Day is not { Nodes.Count: > 0 } day)
        {
            return new(
                "temperatures",
                "No forecast is frozen for this parcel, so nobody can say what it was sent into.",
                ClaimState.Remark
            );
        }

        var (low, high) = (day.Nodes.Min(n => n.LowCelsius), day.Nodes.Max(n => n.HighCelsius));
        var told = Invariant($"The frozen forecast had {low:0.#} to {high:0.#} °C");
        if (asked.Carrier is not ({ GuaranteedFromCelsius: not null } or { GuaranteedToCelsius: not null }))
        {
            return new("temperatures", $"{told}; the carrier names no limits.", ClaimState.Met);
        }

        var (from, to) = (asked.Carrier.GuaranteedFromCelsius, asked.Carrier.GuaranteedToCelsius);
        var isIn = (from is not { } f || low >= f) && (to is not { } t || high <= t);
        return new(
            "temperatures",
            Invariant($"{told}; the carrier guarantees arrival {Range(from, to)}."),
            isIn ? ClaimState.Met : ClaimState.NotMet
        );
    }

    private static string Range(double? from, double? to) =>
        (from, to) switch
        {
            ({ } low, { } high) => Invariant($"from {low:0.#} to {high:0.#} °C"),
            ({ } low, _) => Invariant($"from {low:0.#} °C"),
            (_, { } high) => Invariant($"up to {high:0.#} °C"),
            _ => "without limits",
        };

    /// <summary>A late carrier is no fault of the customer: it tells whom to claim from.</summary>
    private static ClaimLine Late(ClaimCase asked)
    {
        if (asked.Claim.DeliveredAt is not { } at || asked.PlannedUntil is not { } planned)
        {
            return new(
                "late",
                "Ask the carrier when it was delivered and when it should have been.",
                ClaimState.Unknown
            );
        }

        var late = (at - planned).TotalHours;
        return late > 0
            ? new(
                "late",
                Invariant($"The carrier delivered {late:0.#} h late: claim from the carrier as well."),
                ClaimState.Remark
            )
            : new("late", "The carrier delivered in time.", ClaimState.Met);
    }

    private static ClaimLine Evidence(ClaimCase asked)
    {
        var kinds = asked.Evidence.Select(e => e.Kind).ToHashSet();
        string[] gone =
        [
            .. new[]
            {
                (EvidenceKind.Cleared, "the frozen verdict"),
                (EvidenceKind.Photo, "a photo of the packing"),
                (EvidenceKind.HandedOver, "the hand-over"),
            }
                .Where(k => !kinds.Contains(k.Item1))
                .Select(k => k.Item2),
        ];
        var faults = Litterfall.Dispatch.Evidence.EvidenceChain.Check(asked.Evidence);
        return faults.Count > 0 ? new("evidence", $"The evidence was changed: {faults[0]}", ClaimState.Remark)
            : gone.Length == 0 ? new("evidence", "Verdict, photo and hand-over are frozen.", ClaimState.Met)
            : new("evidence", $"The evidence lacks {string.Join(", ", gone)}.", ClaimState.Remark);
    }

    private static ClaimLine Counted(Claim claim) =>
        claim.Dead > 0 && claim.Species.Length > 0
            ? new("count", Invariant($"Counted: {claim.Dead}."), ClaimState.Met)
            : new("count", "Ask which species, and how many.", ClaimState.Unknown);

    private static string Hours(int hours) => hours == 1 ? "1 hour" : Invariant($"{hours} hours");

    private static string Count(int count, string one, string many) =>
        Invariant($"{count} {(count == 1 ? one : many)}");
}
