using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>What the water of the floor rests on besides the floor.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class FloorWaterCoefficients(CoefficientList list)
{
    /// <summary>Room air where none is entered.</summary>
    public Coefficient RoomAir { get; } =
        list.Add(
            "roomAir",
            "temperature of the room",
            21,
            Unit.Celsius,
            (18, 24),
            Citation.Choice("a heated room; enter room: { temperature: ... }")
        );

    /// <summary>Room humidity where none is entered.</summary>
    public Coefficient RoomHumidity { get; } =
        list.Add(
            "roomHumidity",
            "humidity of the room",
            50,
            Unit.Percent,
            (35, 65),
            Citation.Choice("an ordinary room; enter room: { humidity: ... }")
        );

    /// <summary>How much warmer a lit box is than its room.</summary>
    public Coefficient LampWarmth { get; } =
        list.Add(
            "lampWarmth",
            "warmth of the box over its room",
            2,
            Unit.Kelvin,
            (0, 4),
            Citation.Choice("a lit box of ordinary size, until its headspace is computed")
        );

    /// <summary>Humidity of a planted box where the headspace is not held.</summary>
    public Coefficient BoxHumidity { get; } =
        list.Add(
            "boxHumidity",
            "humidity of the box",
            90,
            Unit.Percent,
            (75, 97),
            Citation.Choice("a planted box in good order, until its headspace is computed")
        );

    /// <summary>Share of the vapor that leaves give off where plants root in the soil.</summary>
    public Coefficient LeafShare { get; } =
        list.Add(
            "leafShare",
            "share of the vapor that comes from leaves",
            30,
            Unit.Percent,
            (10, 50),
            Citation.Choice(
                "plants rooted in the soil take water from all its depth; the rest comes from the surface"
            )
        );

    /// <summary>Depth below the soil surface at which roots are judged.</summary>
    public Coefficient RootDepth { get; } =
        list.Add(
            "rootDepth",
            "depth at which roots are judged",
            3,
            Unit.Centimeter,
            (2, 5),
            Citation.Choice(
                "middle of a root ball of a small plant; half the soil where it is thinner than "
                    + "twice that"
            )
        );

    /// <summary>Depth below the soil surface at which springtails are judged.</summary>
    public Coefficient CrewDepth { get; } =
        list.Add(
            "crewDepth",
            "depth at which the crew is judged",
            1,
            Unit.Centimeter,
            (0.5, 2),
            Citation.Choice("springtails live in the leaves and the first 2 cm below them")
        );

    /// <summary>Water that dry leaves hold after rain and draining.</summary>
    public Coefficient LitterHolds { get; } =
        list.Add(
            "litterHolds",
            "water held by dry leaves",
            1.66,
            CoefficientUnits.Held,
            (1.3, 2),
            new Citation(
                "forests-14-478",
                "abstract: oak litter retained 1.66 mm per kg/m2 after drainage, pine 2.72",
                Provenance.Read
            )
        );

    /// <summary>What nobody measures of the conductivity of the soil, as a factor on it.</summary>
    public Coefficient Conductivity { get; } =
        list.Add(
            "conductivity",
            "factor on the conductivity of the soil for water",
            1,
            Unit.One,
            (1.0 / 3, 3),
            Citation.Choice("mixes of one recipe differ by a factor of three")
        );

    /// <summary>The same of the α of its curve.</summary>
    public Coefficient Alpha { get; } =
        list.Add(
            "alpha",
            "factor on α of the soil",
            1,
            Unit.One,
            (0.5, 2),
            Citation.Choice("wetting and drying branch of its curve")
        );

    /// <summary>Added to the water content of the fresh mix.</summary>
    public Coefficient Squeeze { get; } =
        list.Add(
            "squeeze",
            "added to the wetness of the fresh mix",
            0,
            Unit.Percent,
            (-5, 5),
            Citation.Choice("what a hand tells by squeezing")
        );

    /// <summary>Head above which roots take nothing up.</summary>
    public Coefficient RootsTooWet { get; } =
        list.Add(
            "rootsTooWet",
            "head above which roots take nothing up",
            -0.01,
            Unit.Meter,
            (-0.05, -0.005),
            Citation.Recalled("feddes-1978", "anaerobiosis")
        );

    /// <summary>Head from which on they take all they want.</summary>
    public Coefficient RootsWet { get; } =
        list.Add(
            "rootsWet",
            "head up to which uptake rises as soil drains",
            -0.05,
            Unit.Meter,
            (-0.25, -0.03),
            Citation.Recalled("feddes-1978", "end of anaerobiosis")
        );

    /// <summary>Head from which uptake falls.</summary>
    public Coefficient RootsDry { get; } =
        list.Add(
            "rootsDry",
            "head from which uptake falls",
            -3,
            Unit.Meter,
            (-10, -2),
            Citation.Recalled("feddes-1978", "start of drought of garden plants")
        );

    /// <summary>Head from which on they take nothing up.</summary>
    public Coefficient RootsWilted { get; } =
        list.Add(
            "rootsWilted",
            "head from which roots take nothing up",
            -80,
            Unit.Meter,
            (-150, -50),
            Citation.Recalled("feddes-1978", "wilting, soft plants early")
        );

    /// <summary>Open water as a material: α.</summary>
    public Coefficient OpenAlpha { get; } =
        list.Add(
            "openAlpha",
            "open water under a raised floor: α",
            500,
            CoefficientUnits.PerMeter,
            (300, 1000),
            Citation.Choice("empties over the last centimeters")
        );

    /// <summary>Open water as a material: n.</summary>
    public Coefficient OpenN { get; } =
        list.Add(
            "openN",
            "open water under a raised floor: n",
            4,
            Unit.One,
            (3, 6),
            Citation.Choice("empties over the last centimeters")
        );

    /// <summary>Open water as a material: conductivity.</summary>
    public Coefficient OpenConductivity { get; } =
        list.Add(
            "openConductivity",
            "open water under a raised floor: conductivity",
            0.1,
            CoefficientUnits.Speed,
            (0.05, 0.2),
            Citation.Choice("as good as without resistance")
        );

    /// <summary>Pore between grains over the grain.</summary>
    public Coefficient PorePerGrain { get; } =
        list.Add(
            "porePerGrain",
            "pore between grains over the grain",
            0.4,
            Unit.One,
            (0.2, 0.5),
            Citation.Habit("a pore is 0.4 of a grain")
        );
}
