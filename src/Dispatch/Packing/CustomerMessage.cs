using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>What a message to a customer speaks of.</summary>
public sealed record MessageCase
{
    /// <summary>The parcel.</summary>
    public required Parcel Parcel { get; init; }

    /// <summary>The shop's rules.</summary>
    public required DispatchRules Rules { get; init; }

    /// <summary>The carrier's terms.</summary>
    public required CarrierTerms Carrier { get; init; }

    /// <summary>Cups that go; empty while it is not packed.</summary>
    public Seq<PackedCup> Cups { get; init; } = [];

    /// <summary>Name of the workshop.</summary>
    public string Shop { get; init; } = "";

    /// <summary>True for a reader of Fahrenheit and a clock of twelve hours.</summary>
    public bool IsUs { get; init; }

    /// <summary>Band inside the parcel, °C; null where nobody knows it.</summary>
    public double? BandLowCelsius { get; init; }

    /// <summary>Band inside the parcel, °C; null where nobody knows it.</summary>
    public double? BandHighCelsius { get; init; }

    /// <summary>Fingerprint of the frozen verdict; empty before it is frozen.</summary>
    public string Fingerprint { get; init; } = "";
}

/// <summary>Messages to customers in plain words, a paragraph each.</summary>
public static class CustomerMessage
{
    private const string Opened =
        "Open it indoors in dim light, out of the sun and away from heaters. Leave the cups closed for 1 "
        + "to 2 hours until they have the warmth of the room. Never warm them fast: no hot water, no lamp, "
        + "no heater.";

    private const string Settled =
        "Then open one cup at a time inside the tank, let each animal walk out by itself, mist, and leave "
        + "them alone in the dark until the next day. Keep them in quarantine, away from other animals, and "
        + "wash your hands before and after.";

    private const string Hurt =
        "If an animal lies on its back, is limp or bleeds, call a veterinarian who knows these animals. "
        + "Never release anything outdoors.";

    /// <summary>The parcel leaves: what comes, when, where, and what to do.</summary>
    /// <param name="asked">What it speaks of.</param>
    /// <param name="day">Verdict of the day it leaves.</param>
    public static Seq<string> Leaves(MessageCase asked, DayVerdict day)
    {
        var hasAnimal = asked.Cups.Any(c => c.IsAnimal);
        string[] lines =
        [
            $"Your parcel {asked.Parcel.Number} leaves us on {Day(day.Day)}: {Contents(asked)}.",
            When(asked, day),
            Met(asked),
            Opened,
            hasAnimal ? Settled : "",
            Has(asked, "culture") ? "Springtails and isopods can look dead on arrival; wait two days." : "",
            Has(asked, "pot")
                ? "Unwrap plants the same day, water them, and keep them in half shade for a week."
                : "",
            Photos(asked),
            asked.Rules.ClaimTerms.Count > 0 ? Terms(asked) : "",
            hasAnimal ? Hurt : "",
            asked.Fingerprint.Length > 0 ? Frozen(asked) : "",
        ];
        return [.. lines.Where(l => l.Length > 0)];
    }

    /// <summary>The parcel stays: why, and when it goes instead.</summary>
    /// <param name="asked">What it speaks of.</param>
    /// <param name="week">Verdicts of the days to come.</param>
    /// <param name="wished">The day it should have left.</param>
    public static Seq<string> Stays(MessageCase asked, WeekVerdict week, DateOnly wished)
    {
        var day = week.Days.FirstOrDefault(d => d.Day == wished)
            ?? (week.Days.Count > 0 ? week.Days[0] : null);
        var next =
            week.NextDay is { } free
                ? $"The next day that works by today's forecast is {Day(free)}. We look again the day before "
                    + "and write to you."
            : week.NextDayOnceDone is { } once
                ? $"As soon as that is done, the next day that works by today's forecast is {Day(once)}. We "
                    + "write to you."
            : "None of the days in the forecast works yet. We look again every day and write to you.";
        var lines = new List<string>
        {
            $"Your parcel {asked.Parcel.Number} does not leave on {Day(wished)}.",
            $"The reason: {Why(asked, day)}",
            next,
        };
        if (day?.Verdict == ShipVerdict.DepotOnly)
        {
            lines.Add("Can you pick it up at the depot? Then it may go earlier; tell us.");
        }

        lines.Add("What you ordered stays in our care meanwhile.");
        return [.. lines];
    }

    /// <summary>What holds it; what the workshop still has to do is told without its list.</summary>
    private static string Why(MessageCase asked, DayVerdict? day)
    {
        var all = day?.Reasons.Where(r => r.Verdict >= ShipVerdict.DepotOnly).ToList() ?? [];
        var told = all.Where(r => !OpenTasks.Is(r)).Take(2).Select(r => Warm(asked, r.Text)).ToList();
        if (all.Exists(OpenTasks.Is))
        {
            told.Add("We still have papers or answers to complete here before it may leave.");
        }

        return told.Count > 0 ? string.Join(" ", told) : "we do not know enough to send it safely.";
    }

    private static string Met(MessageCase asked) =>
        asked.Parcel.IsDepotPickUp
            ? "Bring an identity card and pick it up within an hour of opening; keep the car at room warmth."
            : "An adult has to be there for the first attempt: a parcel that goes round the town again can "
                + "kill what is in it. Is nobody home? Tell us today and we choose the depot or another day.";

    private static bool Has(MessageCase asked, string cup) =>
        asked.Cups.Any(c => !c.IsAnimal && c.CupName.StartsWith(cup, StringComparison.Ordinal));

    private static string Frozen(MessageCase asked) =>
        "The forecast and the packing list of this parcel are frozen under "
        + $"{Fingerprint.Short(asked.Fingerprint)}. Keep this message: with it anybody can see later that "
        + "nothing was changed.";

    private static string Contents(MessageCase asked) =>
        asked.Cups.Count == 0
            ? "live goods"
            : string.Join(
                "; ",
                asked
                    .Cups.GroupBy(c => c.Name, StringComparer.Ordinal)
                    .Select(g => Invariant($"{g.Sum(c => c.Count)} × {g.Key}"))
            );

    private static string When(MessageCase asked, DayVerdict day)
    {
        var on = day.Arrives is { } arrives ? $"on {Day(arrives)}" : "on a day that we still tell you";
        var from = Clock(asked.Carrier.DeliversFromHour, asked.IsUs);
        var until = Clock(asked.Carrier.DeliversUntilHour, asked.IsUs);
        return asked.Parcel.IsDepotPickUp
            ? $"It is ready {on} from {from} at the carrier's depot. Pick it up there; it is not brought to "
                + "the door."
            : $"It comes {on} between {from} and {until} to your door, if the carrier keeps its times.";
    }

    private static string Photos(MessageCase asked)
    {
        var band = asked is { BandLowCelsius: { } low, BandHighCelsius: { } high }
            ? $" Inside it should have {Degrees(low, high, asked.IsUs)}; write down what you measure."
            : "";
        return Invariant(
                $"Photograph the label and each closed cup at once. If something is wrong, send the "
            ) + Invariant($"photos within {Hours(asked.Rules.ClaimHours)} of delivery.{band}");
    }

    private static string Terms(MessageCase asked) =>
        $"Terms of a claim: {string.Join(" ", asked.Rules.ClaimTerms)}";

    private static string Hours(int hours) => hours == 1 ? "1 hour" : Invariant($"{hours} hours");

    private static string Degrees(double low, double high, bool isUs) =>
        isUs
            ? Invariant($"{(low * 1.8) + 32:0}–{(high * 1.8) + 32:0} °F")
            : Invariant($"{low:0}–{high:0} °C");

    /// <summary>Reasons speak in °C; a reader of Fahrenheit gets whole °F instead.</summary>
    private static string Warm(MessageCase asked, string text) =>
        asked.IsUs
            ? System.Text.RegularExpressions.Regex.Replace(
                text,
                @"(?<t>-?\d+(?:\.\d+)?) °C",
                m =>
                    Invariant(
                        $"{(double.Parse(m.Groups["t"].Value, CultureInfo.InvariantCulture) * 1.8) + 32:0} °F"
                    ),
                System.Text.RegularExpressions.RegexOptions.ExplicitCapture,
                TimeSpan.FromSeconds(1)
            )
            : text;

    private static string Day(DateOnly day) => day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Clock(double hour, bool isUs)
    {
        var minutes = (int)Math.Round(hour * 60);
        var time = new TimeOnly(minutes / 60 % 24, minutes % 60);
        return time.ToString(isUs ? "h:mm tt" : "HH:mm", CultureInfo.InvariantCulture);
    }
}
