using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Air;
using Litterfall.Physics.Soil;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>Coefficients of published equations of convection, of openings and of a drying ground.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class AirCoefficients(CoefficientList list)
{
    /// <summary>Upright surfaces, laminar.</summary>
    public Coefficient WallLaminar { get; } =
        list.Add(
            "wallLaminar",
            "convection at walls, laminar: factor on (ΔT/H)^¼",
            AlamdariHammond1983.Published.WallLaminar,
            Unit.One,
            (1.2, 1.8),
            Citation.Recalled("alamdari-hammond-1983", "1.5, upright, laminar; W, m, K")
        );

    /// <summary>Upright surfaces, turbulent.</summary>
    public Coefficient WallTurbulent { get; } =
        list.Add(
            "wallTurbulent",
            "convection at walls, turbulent: factor on ΔT^⅓",
            AlamdariHammond1983.Published.WallTurbulent,
            Unit.One,
            (1, 1.5),
            Citation.Recalled("alamdari-hammond-1983", "1.23, upright, turbulent; W, m, K")
        );

    /// <summary>Level surfaces from which air rises, laminar.</summary>
    public Coefficient LevelLaminar { get; } =
        list.Add(
            "levelLaminar",
            "convection over warm floors, laminar: factor on (ΔT/D)^¼",
            AlamdariHammond1983.Published.LevelLaminar,
            Unit.One,
            (1.1, 1.7),
            Citation.Recalled("alamdari-hammond-1983", "1.4, level, rising, laminar; W, m, K")
        );

    /// <summary>Level surfaces from which air rises, turbulent.</summary>
    public Coefficient LevelTurbulent { get; } =
        list.Add(
            "levelTurbulent",
            "convection over warm floors, turbulent: factor on ΔT^⅓",
            AlamdariHammond1983.Published.LevelTurbulent,
            Unit.One,
            (1.3, 2),
            Citation.Recalled("alamdari-hammond-1983", "1.63, level, rising, turbulent; W, m, K")
        );

    /// <summary>Level surfaces on which air lies.</summary>
    public Coefficient LevelStable { get; } =
        list.Add(
            "levelStable",
            "convection under warm lids: factor on (ΔT/D²)^⅕",
            AlamdariHammond1983.Published.LevelStable,
            Unit.One,
            (0.4, 0.8),
            Citation.Recalled("alamdari-hammond-1983", "0.6, level, resting; W, m, K")
        );

    /// <summary>Least convection.</summary>
    public Coefficient LeastConvection { get; } =
        list.Add(
            "leastConvection",
            "least convection",
            AlamdariHammond1983.Published.Least,
            CoefficientUnits.Film,
            (0.1, 0.5),
            Citation.Choice("a still layer conducts too")
        );

    /// <summary>Convection in the draught of a fan.</summary>
    public Coefficient Plate { get; } =
        list.Add(
            "plate",
            "convection in a draught: factor on √(u/L)",
            BoxExchange.Usual.Plate,
            Unit.One,
            (3.5, 4.3),
            Citation.Recalled(
                "own-derivation",
                "0.664 Re^½ Pr^⅓ of a laminar plate (Pohlhausen), air of 24 °C; W, m, s, K"
            )
        );

    /// <summary>Heat transfer over mass transfer.</summary>
    public Coefficient LewisTwoThirds { get; } =
        list.Add(
            "lewisTwoThirds",
            "heat transfer over mass transfer, Le^⅔",
            LewisTransfer.LewisTwoThirds,
            Unit.One,
            (0.88, 0.93),
            Citation.Recalled(
                "ashrae-fundamentals-2017",
                "chapter 6: Chilton and Colburn 1934; moist air of 25 °C"
            )
        );

    /// <summary>Least air changes.</summary>
    public Coefficient LeastChanges { get; } =
        list.Add(
            "leastChanges",
            "least air changes of a closed box",
            0.02,
            CoefficientUnits.PerHour,
            (0.005, 0.05),
            Citation.Choice("joints leak; museum cases change their air once in days")
        );

    /// <summary>Discharge coefficient of an opening with sharp edges.</summary>
    public Coefficient Discharge { get; } =
        list.Add(
            "discharge",
            "discharge through sharp edges",
            AirOpening.SharpEdges,
            Unit.One,
            (0.6, 0.65),
            Citation.Recalled("own-derivation", "0.60 to 0.65 in handbooks of natural ventilation")
        );

    /// <summary>Drag of a woven mesh.</summary>
    public Coefficient MeshFactor { get; } =
        list.Add(
            "meshFactor",
            "drag of a woven mesh: factor on μ/d (1 − ε²)/ε²",
            AirOpening.MeshFactor,
            Unit.One,
            (3, 4.6),
            Citation.Recalled(
                "brundrett-1993",
                "slow end of its formula; holes of equal area give a third more"
            )
        );

    /// <summary>Two streams through a level opening.</summary>
    public Coefficient LevelExchange { get; } =
        list.Add(
            "levelExchange",
            "two streams through a level opening: factor on √(g Δρ D⁵/ρ)",
            OpeningExchange.Usual.LevelExchange,
            Unit.One,
            (0.045, 0.065),
            Citation.Recalled("epstein-1988", "0.055")
        );

    /// <summary>Pressure that floods a level opening.</summary>
    public Coefficient FloodingShape { get; } =
        list.Add(
            "floodingShape",
            "pressure that floods a level opening, C",
            OpeningExchange.Usual.FloodingShape,
            Unit.One,
            (0.754, 0.942),
            Citation.Recalled("cooper-1989", "0.754 of a circle, 0.942 of a rectangle")
        );

    /// <summary>Still air through which vapor diffuses at an opening.</summary>
    public Coefficient StillAir { get; } =
        list.Add(
            "stillAir",
            "still air before and behind an opening",
            OpeningExchange.Usual.StillMeters * 100,
            Unit.Centimeter,
            (2, 8),
            Citation.Choice("two layers of 2 cm")
        );

    /// <summary>Draughts through an opening.</summary>
    public Coefficient Gusts { get; } =
        list.Add(
            "gusts",
            "draughts through an opening: share of area × speed",
            OpeningExchange.Usual.Gusts,
            Unit.One,
            (0.01, 0.05),
            Citation.Recalled("warren-parkins-1985", "0.025 of single-sided openings")
        );

    /// <summary>Speed of draughts in a room.</summary>
    public Coefficient Draught { get; } =
        list.Add(
            "draught",
            "speed of draughts in a room",
            OpeningExchange.Usual.DraughtMetersPerSecond,
            CoefficientUnits.Speed,
            (0.05, 0.2),
            Citation.Choice("a room without wind and fan")
        );

    /// <summary>Resistance of a wet skin of soil.</summary>
    public Coefficient SkinWet { get; } =
        list.Add(
            "skinWet",
            "resistance of a wet skin of soil",
            DryingSkin.Usual.WetResistance,
            CoefficientUnits.Resistance,
            (5, 20),
            Citation.Recalled("van-de-griend-owe-1994", "10 s/m")
        );

    /// <summary>How fast a drying skin shuts.</summary>
    public Coefficient SkinSlope { get; } =
        list.Add(
            "skinSlope",
            "how fast a drying skin shuts: slope of the logarithm",
            DryingSkin.Usual.Slope,
            Unit.One,
            (3.5, 7),
            Citation.Recalled(
                "van-de-griend-owe-1994",
                "35.63 × 0.15 of their loam, as a slope over its wetness"
            )
        );

    /// <summary>Head at which a skin counts as wet.</summary>
    public Coefficient SkinHead { get; } =
        list.Add(
            "skinHead",
            "head at which a skin counts as wet",
            DryingSkin.Usual.WetHeadMeters,
            Unit.Meter,
            (-3, -1),
            Citation.Choice("for the 0.15 of a loam: a mix of peat and bark holds more at the same suction")
        );

    /// <summary>Depth of the drying skin.</summary>
    public Coefficient SkinDepth { get; } =
        list.Add(
            "skinDepth",
            "depth of the drying skin",
            DryingSkin.Usual.Meters * 100,
            Unit.Centimeter,
            (0.5, 2),
            Citation.Recalled("van-de-griend-owe-1994", "the top centimeter")
        );

    /// <summary>Mass transfer of still air over the ground.</summary>
    public Coefficient GroundStillAir { get; } =
        list.Add(
            "groundStillAir",
            "mass transfer of still air over the ground",
            DryingSkin.Usual.StillAirMetersPerSecond * 1000,
            CoefficientUnits.Conductance,
            (1.5, 4),
            Citation.Choice(
                "convection of 2 to 3 W/(m² K) by the Lewis relation; it only weighs leaves and "
                    + "soil side by side"
            )
        );
}
