using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>Our own choices for the water of the floor, each with its reason.</summary>
public static class WaterPolicy
{
    /// <summary>Pressure of a meter of water, Pa/m: suction from head.</summary>
    public const double PascalsPerMeter = Constants.WaterDensity * Constants.StandardGravity;

    /// <summary>One day.</summary>
    public static readonly Figure Day = Figure.Given(
        "one day",
        Unit.Day.ToSi,
        Unit.Day,
        Citation.OwnDerivation
    );

    /// <summary>Room air where none is entered.</summary>
    public static readonly Figure RoomAir = Figure.Choice(
        "temperature of the room",
        21,
        Unit.Celsius,
        "a heated room; enter room: { temperature: ... }"
    );

    /// <summary>Room humidity where none is entered.</summary>
    public static readonly Figure RoomHumidity = Figure.Choice(
        "humidity of the room",
        50,
        Unit.Percent,
        "an ordinary room; enter room: { humidity: ... }"
    );

    /// <summary>How much warmer a lit box is than its room.</summary>
    public static readonly Figure LampWarmth = Figure.Choice(
        "warmth of the box over its room",
        2,
        Unit.Kelvin,
        "a lit box of ordinary size, until its headspace is computed"
    );

    /// <summary>Humidity of a planted box where the headspace is not held.</summary>
    public static readonly Figure BoxHumidity = Figure.Choice(
        "humidity of the box",
        90,
        Unit.Percent,
        "a planted box in good order, until its headspace is computed"
    );

    /// <summary>Share of the vapor that leaves give off where plants root in the soil.</summary>
    public static readonly Figure LeafShare = Figure.Choice(
        "share of the vapor that comes from leaves",
        30,
        Unit.Percent,
        "plants rooted in the soil take water from all its depth; the rest comes from the surface"
    );

    /// <summary>Depth below the soil surface at which roots are judged.</summary>
    public static readonly Figure RootDepth = Figure.Choice(
        "depth at which roots are judged",
        3,
        Unit.Centimeter,
        "middle of a root ball of a small plant; half the soil where it is thinner than twice that"
    );

    /// <summary>Depth below the soil surface at which springtails are judged.</summary>
    public static readonly Figure CrewDepth = Figure.Choice(
        "depth at which the crew is judged",
        1,
        Unit.Centimeter,
        "springtails live in the leaves and the first 2 cm below them"
    );

    /// <summary>Least air in the soil for roots.</summary>
    public static readonly Figure LeastAir = Figure.Given(
        "least air-filled porosity for roots",
        0.10,
        Unit.Percent,
        new Citation(
            "container-media-textbook",
            "recalled: potting media keep 10 to 15 % air in the root layer at its wettest",
            Provenance.Recalled
        )
    );

    /// <summary>Suction at which springtails stop breeding.</summary>
    public static readonly Figure MostSuction = Figure.Given(
        "suction at which springtails stop breeding",
        15e3,
        Unit.Kilopascal,
        new Citation(
            "wang-2022",
            "abstract: reproduction stops at a matric potential of -15 kPa",
            Provenance.Read
        )
    );

    /// <summary>Water that dry leaves hold after rain and draining.</summary>
    public static readonly Figure LitterHolds = Figure.Given(
        "water held by dry leaves",
        1.66e-3,
        new Unit("mm m2/kg", 1e-3, Unit.Meter.Dimension / Unit.KilogramPerSquareMeter.Dimension),
        new Citation(
            "forests-14-478",
            "abstract: oak litter retained 1.66 mm per kg/m2 after drainage, pine 2.72",
            Provenance.Read
        )
    );

    /// <summary>Shortest drain interval that is no burden.</summary>
    public static readonly Figure ShortestInterval = Figure.Given(
        "shortest comfortable time between drains",
        14 * 86400.0,
        Unit.Day,
        Citation.Habit("2 to 6 weeks between drains under a misting system")
    );

    /// <summary>Longest drain interval that is told; beyond it the level is as good as steady.</summary>
    public static readonly Figure LongestInterval = Figure.Choice(
        "longest drain interval told",
        5 * 365,
        Unit.Day,
        "a gain that needs longer is inside the error of every input"
    );

    /// <summary>Days simulated from planting.</summary>
    public const int Days = 365;
}
