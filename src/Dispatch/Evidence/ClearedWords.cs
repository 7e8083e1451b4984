using System.Globalization;
using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>A cleared parcel in plain sentences, for the reader of the frozen text.</summary>
internal static class ClearedWords
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Lines(ClearedFacts facts)
    {
        var (parcel, day, plan) = (facts.Parcel, facts.Day, facts.Plan);
        yield return Invariant($"Parcel {parcel.Number} for {parcel.Recipient}: {Words(day.Verdict)}.");
        yield return Invariant($"It leaves on {Long(day.Day)} by {facts.Carrier.Name}")
            + (day.Arrives is { } arrives ? $" and arrives on {Long(arrives)}." : ".");
        foreach (var rule in day.Rules)
        {
            yield return $"{Words(rule.Rule)}: {rule.Words}.";
        }

        foreach (var reason in day.Reasons)
        {
            yield return reason.Cure.Length > 0 ? $"{reason.Text} Cure: {reason.Cure}" : reason.Text;
        }

        foreach (var node in day.Nodes)
        {
            yield return Invariant($"Forecast at {node.Place}: {node.LowCelsius:0.#} to ")
                + Invariant($"{node.HighCelsius:0.#} °C while the parcel is there.");
        }

        if (facts.Week is { BandLowCelsius: { } low, BandHighCelsius: { } high })
        {
            yield return Invariant($"To be kept inside: {low:0.#} to {high:0.#} °C.");
        }

        if (day.Choice is { } choice)
        {
            yield return Invariant(
                $"Of {choice.Journeys} computed journeys {choice.OutShare * 100:0.#} % left "
            ) + Invariant($"that band and {choice.LethalShare * 100:0.#} % passed the absolute limit.");
        }

        foreach (var cup in plan.Cups)
        {
            yield return Invariant($"Packed: {cup.Count} × {cup.Name} in {cup.CupName}.");
        }

        foreach (var pack in plan.Packs)
        {
            yield return Invariant($"Pack: {pack}.");
        }
    }

    private static string Words(ShipVerdict verdict) =>
        verdict switch
        {
            ShipVerdict.Ship => "it may go as it is",
            ShipVerdict.ShipWithPacks => "it may go with the named packs",
            ShipVerdict.DepotOnly => "it may go where it is picked up at the depot",
            ShipVerdict.Hold => "held",
            _ => "it must not go",
        };

    private static string Words(ShipRule rule) =>
        rule switch
        {
            ShipRule.PublishedGuide => "Published guide",
            ShipRule.ClassBands => "Bands by class of animal",
            ShipRule.ShopPolicy => "The shop's own policy",
            ShipRule.Journey => "Computed journeys",
            ShipRule.Calendar => "Calendar",
            ShipRule.Carrier => "Carrier",
            ShipRule.Animals => "Animals and papers",
            ShipRule.Knowledge => "What is known",
            _ => "Packing",
        };

    private static string Long(DateOnly day) =>
        day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);
}
