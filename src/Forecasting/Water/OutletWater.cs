using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;

namespace Litterfall.Forecasting.Water;

/// <summary>
/// Water that leaves by an outlet at a height, on its own: once the level has reached it, what the floor
/// gains runs out and wants a bottle.
/// </summary>
public sealed record OutletWater
{
    private static readonly Figure Week = Figure.Choice(
        "shortest time between emptyings of the bottle",
        7,
        Unit.Day,
        "a bottle that fills within a week runs over when it is forgotten once"
    );

    /// <summary>Bottles and cans that are usual, L; own choice.</summary>
    private static readonly double[] BottleLiters = [1, 2, 5, 10, 20];

    /// <summary>What runs out in a day.</summary>
    public required Figure PerDay { get; init; }

    /// <summary>Its least and most; null where it has no band.</summary>
    public (Figure Low, Figure High)? PerDayBand { get; init; }

    /// <summary>The smallest usual bottle that lasts a week, else the largest.</summary>
    public required Figure Bottle { get; init; }

    /// <summary>Time in which it fills.</summary>
    public required Figure FillsIn { get; init; }

    /// <summary>The least of it; null without a band.</summary>
    public Figure? FillsInLow { get; init; }

    /// <summary>The most of it; null without a band, or where it may never fill.</summary>
    public Figure? FillsInHigh { get; init; }

    /// <summary>True where water leaves by an outlet as soon as it stands there.</summary>
    /// <param name="design">The design.</param>
    public static bool Is(CheckedDesign design) => !DrainMark.IsDrawnOff(design.Design);

    /// <summary>What runs out; null without an outlet, or where the floor gains no water.</summary>
    /// <param name="design">The design.</param>
    /// <param name="gain">Gained by the floor a day.</param>
    /// <param name="band">Its least and most.</param>
    public static OutletWater? Of(CheckedDesign design, Figure? gain, (Figure Low, Figure High)? band)
    {
        if (!Is(design) || gain is not { Si: > 0 })
        {
            return null;
        }

        var most = band is { } b ? b.High : gain;
        var liters = BottleLiters.FirstOrDefault(
            l => Unit.Liter.ToSiValue(l) >= most.Si * Week.Value - 1e-12,
            BottleLiters[^1]
        );
        var bottle = Figure.Choice(
            "bottle at the outlet",
            liters,
            Unit.Liter,
            "the smallest usual one that lasts a week at the most that runs out"
        );
        return new OutletWater
        {
            PerDay = Figure.NotNegative(gain).As("water out of the outlet a day", Unit.Milliliter),
            PerDayBand = band is { } all
                ? (
                    Figure.NotNegative(all.Low).As("least water out of the outlet a day", Unit.Milliliter),
                    Figure.NotNegative(all.High).As("most water out of the outlet a day", Unit.Milliliter)
                )
                : null,
            Bottle = bottle,
            FillsIn = Fills(bottle, gain, "time in which the bottle fills"),
            FillsInLow = band is { } fast
                ? Fills(bottle, fast.High, "shortest time in which it fills")
                : null,
            FillsInHigh = band is { Low.Si: > 0 } slow
                ? Fills(bottle, slow.Low, "longest time in which it fills")
                : null,
        };
    }

    private static Figure Fills(Figure bottle, Figure perDay, string name) =>
        (bottle / perDay * Coefficients.WaterPolicy.Day).As(name, Unit.Day);
}
