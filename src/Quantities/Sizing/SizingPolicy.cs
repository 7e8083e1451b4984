using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics;

namespace Litterfall.Quantities.Sizing;

/// <summary>Our own defaults for what a design leaves out, each with its reason.</summary>
public static class SizingPolicy
{
    /// <summary>Settling of a fresh mix: share of depth.</summary>
    public static readonly Figure Settling = Figure.Given(
        "settling of a fresh mix",
        0.15,
        Unit.Percent,
        Citation.Habit("settling of fresh mix 10 to 20 % in 4 to 8 weeks, middle taken")
    );

    /// <summary>Mixed liters per loose liter where a recipe stores none.</summary>
    public static readonly Figure MixingYield = Figure.Given(
        "mixing yield",
        0.88,
        Unit.Percent,
        Citation.Habit("mixing yield 80 to 92 %, to be measured with a bucket")
    );

    /// <summary>Water by volume of the finished mix at squeeze wetness.</summary>
    public static readonly Figure SqueezeWater = Figure.Given(
        "water at squeeze wetness",
        0.36,
        Unit.Percent,
        Citation.Habit("30 to 45 % by volume for bark, peat and fiber mixes")
    );

    /// <summary>No loss unless the maker enters one.</summary>
    public static readonly Figure NoLoss = Figure.Choice(
        "handling loss",
        0,
        Unit.Percent,
        "a loss is the workshop's own number; none is added unseen"
    );

    /// <summary>A ready mix and an unmixed material yield what is poured.</summary>
    public static readonly Figure WholeYield = Figure.Choice(
        "mixing yield",
        100,
        Unit.Percent,
        "nothing is mixed, so nothing is lost in mixing"
    );

    /// <summary>Layers that are not mixed do not settle in the sum.</summary>
    public static readonly Figure NoSettling = Figure.Choice(
        "settling",
        0,
        Unit.Percent,
        "the depth of this layer is its depth as laid"
    );

    /// <summary>Share of a piece that lies in the layers.</summary>
    public static readonly Figure Buried = Figure.Choice(
        "buried share",
        25,
        Unit.Percent,
        "a quarter of a piece pressed into the floor; enter buried to replace it"
    );

    /// <summary>Full cover.</summary>
    public static readonly Figure FullCover = Figure.Choice(
        "covered share",
        100,
        Unit.Percent,
        "the layer covers the whole floor unless the design says less"
    );

    /// <summary>Voids of an aggregate without a value.</summary>
    public static readonly Figure Voids = Figure.Given(
        "voids between particles",
        0.42,
        Unit.Percent,
        new Citation(
            "container-media-textbook",
            "recalled: random packing of near spheres, 38 to 45 %",
            Provenance.Recalled
        )
    );

    /// <summary>Mass of a planted plant with its root ball.</summary>
    public static readonly Figure PlantMass = Figure.Choice(
        "mass of a plant",
        0.15,
        Unit.Kilogram,
        "a small potted plant without its pot; weigh yours if the shelf is near its limit"
    );

    /// <summary>Density of water in weights and loads.</summary>
    public static readonly Figure Water = Figure.Choice(
        "density of water",
        Constants.WaterDensity,
        Unit.KilogramPerCubicMeter,
        "rounded for loads; water of 21 C has 998"
    );

    /// <summary>Standard gravity.</summary>
    public static readonly Figure Gravity = Figure.Given(
        "standard gravity",
        9.80665,
        Unit.MeterPerSecondSquared,
        new Citation(
            "cgpm-1901",
            "recalled: third general conference, declaration on g_n",
            Provenance.Recalled
        )
    );
}
