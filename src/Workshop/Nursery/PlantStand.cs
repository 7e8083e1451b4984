using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Nursery;

namespace Litterfall.Workshop.Nursery;

/// <summary>A tray as it stands: plants left, when they are usable, how many are expected then.</summary>
/// <param name="Tray">The tray.</param>
/// <param name="Left">Plants that live in it.</param>
/// <param name="UsableFrom">First day they can be planted out.</param>
/// <param name="Expected">Plants expected on that day.</param>
/// <param name="Low">Fewest expected.</param>
/// <param name="PotOn">Day its cuttings have rooted; null where none are.</param>
public sealed record PlantStand(
    PlantTray Tray,
    int Left,
    DateOnly UsableFrom,
    double Expected,
    double Low,
    DateOnly? PotOn
)
{
    /// <summary>A tray as it stands.</summary>
    /// <param name="tray">The tray.</param>
    /// <param name="onHand">Plants of its lot that are left in the book; null where it has no lot.</param>
    /// <param name="clock">Clock of its bench; null where it is not kept apart.</param>
    /// <param name="loss">Loss of plants like these.</param>
    /// <param name="place">Library, and temperature of its bench, °C.</param>
    public static PlantStand Of(
        PlantTray tray,
        double? onHand,
        QuarantineClock? clock,
        PlantLoss loss,
        (TradeCatalog Catalog, double Celsius) place
    )
    {
        var left = (int)Math.Round(onHand ?? tray.Plants - tray.Died);
        DateOnly? rooted =
            tray.Origin == TrayOrigin.Bought
                ? null
                : tray.Since.AddDays(
                    NurseryPractice.RootingDays(place.Catalog.Find<PlantEntry>(tray.Plant), place.Celsius)
                );
        var grown = (tray.Potted ?? rooted)?.AddDays(NurseryPractice.Days(NurseryPractice.GrowOn));
        var free = tray.IsInQuarantine ? clock?.Ends ?? tray.Since.AddDays(tray.QuarantineDays) : tray.Since;
        var usable = grown is { } day && day > free ? day : free;
        // What was lost already is gone; the share learned holds for the plants of the first day.
        double Kept(double share) => Math.Clamp(tray.Plants * (1 - share), 0, left);
        var isDone = tray.Released is not null && grown is null;
        return new(
            tray,
            left,
            usable,
            isDone ? left : Kept(loss.Mean),
            isDone ? left : Kept(loss.High),
            rooted
        );
    }
}
