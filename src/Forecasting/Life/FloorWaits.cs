using System.Collections.Immutable;
using Litterfall.Domain.Findings;

namespace Litterfall.Forecasting.Life;

/// <summary>When a crew is ready for animals.</summary>
/// <param name="Day">Days from planting; null where it does not breed in this ground.</param>
/// <param name="Bears">True where it then bears all that the animals take.</param>
/// <param name="IsEaten">True where animals take any.</param>
public readonly record struct CrewReadiness(int? Day, bool Bears, bool IsEaten);

/// <summary>What holds animals back.</summary>
public static class FloorWaits
{
    /// <summary>All reasons of a design.</summary>
    /// <param name="n">The design.</param>
    /// <param name="planting">Planting day.</param>
    /// <param name="isSpringtail">Of each kind of its crew.</param>
    /// <param name="ready">When they are ready.</param>
    public static IEnumerable<WaitReason> Of(
        LifeInputs n,
        DateOnly planting,
        ImmutableArray<bool> isSpringtail,
        CrewReadiness ready
    )
    {
        var four = planting.AddDays(GrowIn.WholeDays(GrowIn.EarliestAnimals));
        yield return new WaitReason(
            FormattableString.Invariant(
                $"the box grows in for {GrowIn.WholeDays(GrowIn.EarliestAnimals)} days, mold comes and goes; "
            ) + "keepers wait at least a month (habit of the trade, no source)",
            four
        );
        var cured = GrowIn.Ends(n.Sealants, planting);
        if (cured > four)
        {
            yield return new WaitReason("foam and silicone cure until then (their labels)", cured);
        }

        if (!isSpringtail.Contains(true))
        {
            yield return new WaitReason(
                isSpringtail.IsEmpty
                    ? "no crew is seeded: nothing clears mold and droppings"
                    : "no springtails are seeded: isopods alone do not clear mold",
                null
            );
            yield break;
        }

        yield return Bred(planting, ready);
    }

    /// <summary>What is wrong with the box for animals, whatever the day.</summary>
    /// <param name="findings">Findings of the design.</param>
    public static IEnumerable<string> Stops(IEnumerable<Finding> findings) =>
        findings
            .Where(f => f is { Severity: Severity.Stop, Protects: Protects.Animal })
            .Select(f => Sentence(f.Text));

    /// <summary>The first sentence of a text.</summary>
    /// <param name="text">The text.</param>
    public static string Sentence(string text) =>
        text.IndexOf(". ", StringComparison.Ordinal) is >= 0 and var end ? text[..(end + 1)] : text;

    private static WaitReason Bred(DateOnly planting, CrewReadiness ready) =>
        ready.Day is not { } day
            ? new WaitReason(
                "the springtails hardly breed in this ground: see to its damp and warmth first, or "
                    + "animals live on feeders alone (calculated with rates from memory)",
                null
            )
        : !ready.IsEaten
            ? new WaitReason(
                "the springtails have bred to several times what was seeded; no animal of this design eats "
                    + "of them (calculated with rates from memory)",
                planting.AddDays(day)
            )
        : ready.Bears
            ? new WaitReason(
                "the springtails have bred up to what the animals take (calculated with rates from memory)",
                planting.AddDays(day)
            )
        : new WaitReason(
            "the springtails have settled; they do not bear all that the animals would take, so "
                + "feeders make up the rest (calculated with rates from memory)",
            planting.AddDays(day)
        );
}
