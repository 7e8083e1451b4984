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
