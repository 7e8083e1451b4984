using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// How far masses may be off: glass by its thickness, loose goods by how they are poured, plants by their
/// size, water by how wet. The parts do not go together, so they are summed by squares.
/// </summary>
/// <param name="box">Glass of the box, kg; null where unknown.</param>
/// <param name="loose">Lid, doors and shelves.</param>
/// <param name="dry">Everything dry, kg.</param>
/// <param name="plants">Plants, kg.</param>
internal sealed class WeightSpread(Figure? box, LoosePanes loose, Figure dry, Figure plants)
{
    private static readonly Figure Glass = Figure.Choice(
        "share a pane may be lighter or heavier",
        5,
        Unit.Percent,
        "0.2 mm of 4 to 5 mm, the tolerance of float glass"
    );

    private static readonly Figure Goods = Figure.Choice(
        "share loose goods may be lighter or heavier",
        20,
        Unit.Percent,
        "bulk densities of one mix differ by this from bag to bag and with how it is poured"
    );

    private static readonly Figure PlantsLess = Figure.Choice(
        "share plants may be lighter",
        60,
        Unit.Percent,
        "60 g for a plug, against 150 g taken"
    );

    private static readonly Figure PlantsMore = Figure.Choice(
        "share plants may be heavier",
        200,
        Unit.Percent,
        "450 g for a grown one, against 150 g taken"
    );

    private static readonly Figure Moist = Figure.Choice(
        "share the water of moist layers may be less or more",
        25,
        Unit.Percent,
        "squeeze wetness is 30 to 45 % by volume, 36 taken"
    );

    private static readonly Figure Full = Figure.Choice(
        "share the water of full layers may be less or more",
        15,
        Unit.Percent,
        "voids between grains 38 to 45 %, pores of a mix as much"
    );

    /// <summary>Least and most dry.</summary>
    public (Figure Low, Figure High) Dry() => Band(dry, "dry mass", []);

    /// <summary>Least and most planted.</summary>
    /// <param name="mass">As weighed.</param>
    /// <param name="water">Water of the moist layers.</param>
    public (Figure Low, Figure High) Planted(Figure mass, Figure water) =>
        Band(
            mass,
            "planted mass",
            [(water * SizingPolicy.Water, Moist, Moist), (plants, PlantsLess, PlantsMore)]
        );

    /// <summary>Least and most at its wettest.</summary>
    /// <param name="mass">As weighed.</param>
    /// <param name="water">Water of the full layers and of the reservoir.</param>
    public (Figure Low, Figure High) Wet(Figure mass, Figure water) =>
        Band(mass, "wet mass", [(water * SizingPolicy.Water, Full, Full), (plants, PlantsLess, PlantsMore)]);

    private (Figure Low, Figure High) Band(
        Figure mass,
        string name,
        (Figure Part, Figure Less, Figure More)[] wet
    )
    {
        var panes = Figure.Total([.. new[] { box }.OfType<Figure>(), .. loose.All], Unit.Kilogram.Dimension);
        (Figure Part, Figure Less, Figure More)[] parts =
        [
            (panes, Glass, Glass),
            (dry - panes, Goods, Goods),
            .. wet,
        ];
        double Root(Func<(Figure Part, Figure Less, Figure More), double> of) =>
            Math.Sqrt(parts.Sum(p => p.Part.Si * of(p) * p.Part.Si * of(p)));
        Figure End(string which, double si) =>
            Figure
                .Computed(
                    $"{mass.Name} {(si < mass.Si ? "less" : "and")} the root of the sum of squares of what "
                        + "each part may be off",
                    Math.Max(0, si),
                    Unit.Kilogram.Dimension,
                    [mass, .. parts.SelectMany(p => new[] { p.Part, p.Less, p.More })]
                )
                .As($"{which} {name}", Unit.Kilogram);
        return (End("least", mass.Si - Root(p => p.Less.Si)), End("most", mass.Si + Root(p => p.More.Si)));
    }
}
