using System.Collections.Immutable;
using Litterfall.Forecasting;
using Litterfall.Workshop.Stock;
using FloorGoods = Litterfall.Instructions.Parts.Goods;

namespace Litterfall.Workshop.Kits;

/// <summary>What the leaflet of a kit says.</summary>
public static class KitWords
{
    /// <summary>What to do when the box arrives.</summary>
    public static ImmutableArray<string> Steps { get; } =
    [
        "Tick the packing list before you begin. Tell us what is missing before you open a bag.",
        "Let a cold box stand in the room for two hours before you open cultures.",
        "Open the bags in the order of their letters; the build sheet in the box says how deep each "
            + "layer goes.",
        "Open cultures on the day they come and seed them last of all.",
        "Plants come first, animals last: no animals before the planted tank has grown in, four weeks at "
            + "the least.",
    ];

    /// <summary>Cautions for what is in the kit.</summary>
    /// <param name="numbers">Numbers of the design.</param>
    public static ImmutableArray<string> Cautions(DesignNumbers numbers)
    {
        var goods = FloorGoods.Of(numbers);
        var design = numbers.Design.Design;
        return
        [
            .. goods.Any(FloorGoods.IsDusty) ? new[] { FloorGoods.DustCaution } : [],
            .. goods.Any(FloorGoods.IsSphagnum) ? new[] { FloorGoods.MossCaution } : [],
            "Glass edges cut: wear gloves, and carry panes upright. Never move a planted tank.",
            .. design.Lamps.Count > 0 || design.Misting is not null
                ? new[]
                {
                    "Water and mains do not go together: a residual-current breaker, drip loops, plugs above "
                        + "the water. Local code and a licensed electrician decide what is fixed to "
                        + "the wall.",
                }
                : [],
            "Wash hands after every contact with soil, cultures and animals. Nothing of it goes down a "
                + "kitchen sink, and nothing living goes outside.",
            "Keep bags and small parts away from children.",
        ];
    }

    /// <summary>How a filled bag is checked: its weight within the spread of a measuring jug.</summary>
    /// <param name="liters">Liters in it.</param>
    /// <param name="kilogramsPerLiter">What a liter weighs today, kg.</param>
    /// <returns>Least and most, kg.</returns>
    public static (double Low, double High) Weight(double liters, double kilogramsPerLiter)
    {
        var kilograms = liters * kilogramsPerLiter;
        return (kilograms * (1 - MassBalance.BulkTolerance), kilograms * (1 + MassBalance.BulkTolerance));
    }
}
