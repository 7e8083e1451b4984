using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Measures;

namespace Litterfall.Workshop.Nursery;

/// <summary>Plants in plain sentences.</summary>
public static class NurseryWords
{
    /// <summary>Cautions that stand beside every work with new plants.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "Healthy plants first, new ones last; one set of tools and one tray of water for quarantine.",
        "Bleach: gloves, goggles, open window, fresh bath, cold water. Never together with acid, vinegar or "
            + "ammonia. Rinse well; soft leaves burn.",
        "Nursery plants can hold insecticide that harms springtails and frogs: wash off all soil, keep them "
            + "apart.",
        "Protected kinds need their papers; live plants need a plant passport in some countries. Ask first.",
    ];

    /// <summary>What can be done for plants that are missing.</summary>
    /// <param name="cover">The need.</param>
    /// <param name="today">Today.</param>
    public static string Remedy(PlantCover cover, DateOnly today)
    {
        var buy = cover.BuyBy is { } by
            ? by >= today
                ? $"buy {NumberText.Integer(cover.Buy)} by {NumberText.Day(by)}"
                : $"too late to buy and keep them apart (last day {NumberText.Day(by)}): tell the customer, "
                    + "or take another plant"
            : "";
        var cut =
            cover.CutBy is { } on && on >= today && cover.CanCut > 0
                ? $"take {NumberText.Count(Math.Min(cover.Cut, cover.CanCut), "cutting", "cuttings")} by "
                    + NumberText.Day(on)
                : "";
        return NumberText.Capital(string.Join("; or ", new[] { buy, cut }.Where(w => w.Length > 0))) + ".";
    }

    /// <summary>A loss with its interval: "12 % (5–22 %)".</summary>
    /// <param name="loss">The loss.</param>
    public static string Told(PlantLoss loss) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{100 * loss.Mean:0} % ({100 * loss.Low:0}–{100 * loss.High:0} %), "
        )
        + (
            loss.Plants == 0
                ? "a guess, nothing seen yet"
                : $"{NumberText.Integer(loss.Lost)} of "
                    + $"{NumberText.Count(loss.Plants, "plant", "plants")} seen"
        );

    /// <summary>The dip of a plant in one sentence.</summary>
    /// <param name="dip">The bath.</param>
    /// <param name="isHardy">True for plants that stand all of it.</param>
    public static string Told(PlantDip dip, bool isHardy)
    {
        var share = isHardy ? 1 : PlantDip.SoftShare.Si;
        var bleach = share * dip.ProductMilliliters.Value;
        var minutes = Minutes(isHardy);
        var leaves = isHardy ? "Hardy leaves" : "Soft leaves";
        var bath = PlantDip.Bucket.Value;
        var strength = share * dip.Strength.Value;
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{leaves}: {bleach:0} mL of the bleach in a bath of {bath:0} L, {strength:0.##} % "
            )
            + $"sodium hypochlorite, {NumberText.Count((int)minutes, "minute", "minutes")}; then rinse well. "
            + "Try one leaf first.";
    }

    /// <summary>Minutes a plant stays in the bath.</summary>
    /// <param name="isHardy">True for plants that stand all of it.</param>
    public static double Minutes(bool isHardy) => isHardy ? PlantDip.HardyMinutes : PlantDip.SoftMinutes;
}
