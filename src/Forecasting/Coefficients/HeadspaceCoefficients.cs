using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

using Litterfall.Quantities.Openings;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>
/// What nobody measures of the climate of a box, and what is taken where a design leaves something open.
/// </summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class HeadspaceCoefficients(CoefficientList list)
{
    /// <summary>
    /// What nobody measures of the air exchanged, as a factor on it; its range is the band of every
    /// climate.
    /// </summary>
    public Coefficient AirFlow { get; } =
        list.Add(
            "airFlow",
            "factor on the air exchanged",
            1,
            Unit.One,
            (0.6, 1.6),
            Citation.Choice(
                "openings are told to a millimeter and a room has draughts: the flow is known by "
                    + "its order"
            )
        );

    /// <summary>The same of convection inside.</summary>
    public Coefficient Convection { get; } =
        list.Add(
            "convection",
            "factor on the convection inside",
            1,
            Unit.One,
            (0.8, 1.25),
            Citation.Choice("correlations of enclosures scatter by a fifth to a quarter")
        );

    /// <summary>The same of the heat of lamps.</summary>
    public Coefficient LampHeat { get; } =
        list.Add(
            "lampHeat",
            "factor on the heat of lamps",
            1,
            Unit.One,
            (0.8, 1.25),
            Citation.Choice("power and its split between light, beam and case are told to a fifth")
        );

    /// <summary>Gap of a lid that is set in, where none is entered.</summary>
    public Coefficient LidGap { get; } =
        list.Add(
            "lidGap",
            "gap of a lid that is set in",
            2,
            Unit.Millimeter,
            (1, 3),
            Citation.Choice("what lets a hand lift it")
        );

    /// <summary>Gap of doors, and of a lid that lies on top, where none is entered.</summary>
    public Coefficient DoorGap { get; } =
        list.Add(
            "doorGap",
            "gap of sliding doors and of a lid that lies on top",
            0.5,
            Unit.Millimeter,
            (0.25, 1),
            Citation.Choice("what lets doors slide")
        );

    /// <summary>Height of a vent in a wall that says only its area.</summary>
    public Coefficient VentWidth { get; } =
        list.Add(
            "ventWidth",
            "height of a vent that says only its area",
            VentShape.UsualWidth.Value,
            Unit.Centimeter,
            (1, 5),
            Citation.Choice("usual strip of gauze")
        );

    /// <summary>Height of a vent in a wall that says none.</summary>
    public Coefficient VentHeight { get; } =
        list.Add(
            "ventHeight",
            "height of a vent over the base, share of the box",
            VentShape.UsualHeight.Value,
            Unit.Percent,
            (70, 95),
            Citation.Choice("vents sit near the top unless they say where")
        );

    /// <summary>Wire of a mesh the library has none for.</summary>
    public Coefficient WireOfAperture { get; } =
        list.Add(
            "wireOfAperture",
            "wire of a mesh over its clear opening",
            0.4,
            Unit.One,
            (0.2, 0.6),
            Citation.Choice("between window screen and fine gauze")
        );

    /// <summary>Thickness of wood and stone as a slab.</summary>
    public Coefficient PieceThickness { get; } =
        list.Add(
            "pieceThickness",
            "thickness of wood and stone as a slab",
            3,
            Unit.Centimeter,
            (2, 6),
            Citation.Choice("cork flats and branches")
        );

    /// <summary>Humidity of the box when it is planted.</summary>
    public Coefficient StartHumidity { get; } =
        list.Add(
            "startHumidity",
            "humidity of the box on its first morning",
            80,
            Unit.Percent,
            (60, 95),
            Citation.Choice("damp goods under a closed lid")
        );

    /// <summary>What a thermostat holds where nothing is entered.</summary>
    public Coefficient Thermostat { get; } =
        list.Add(
            "thermostat",
            "what a thermostat holds where nothing is entered",
            24,
            Unit.Celsius,
            (22, 26),
            Citation.Choice("day of rainforest frogs")
        );

    /// <summary>Air speed of a small stirring fan.</summary>
    public Coefficient StirSpeed { get; } =
        list.Add(
            "stirSpeed",
            "air speed of a small stirring fan along the surfaces",
            0.2,
            CoefficientUnits.Speed,
            (0.1, 0.3),
            Citation.Recalled("own-working-value", "jet of a 40 mm fan in a box of 45 cm")
        );

    /// <summary>Share of its free flow that a small fan moves through mesh.</summary>
    public Coefficient FanThroughMesh { get; } =
        list.Add(
            "fanThroughMesh",
            "share of its free flow that a fan moves through mesh",
            40,
            Unit.Percent,
            (30, 50),
            Citation.Recalled("own-working-value", "curves of small fans against gauze")
        );

    /// <summary>When a keeper mists by hand.</summary>
    public Coefficient HandMistAt { get; } =
        list.Add(
            "handMistAt",
            "time of misting by hand",
            9,
            Unit.Hour,
            (7, 19),
            Citation.Choice("in the morning, before the lamps warm the box")
        );

    /// <summary>How long that takes.</summary>
    public Coefficient HandMistFor { get; } =
        list.Add(
            "handMistFor",
            "time misting by hand takes",
            60,
            Unit.Second,
            (30, 120),
            Citation.Choice("a sprayer of half a liter")
        );

    /// <summary>When a lamp goes on where none is entered.</summary>
    public Coefficient LampOn { get; } =
        list.Add(
            "lampOn",
            "time a lamp goes on where none is entered",
            8,
            Unit.Hour,
            (7, 9),
            Citation.Choice("twelve hours from the morning on")
        );

    /// <summary>When it goes off.</summary>
    public Coefficient LampOff { get; } =
        list.Add(
            "lampOff",
            "time a lamp goes off where none is entered",
            20,
            Unit.Hour,
            (19, 21),
            Citation.Choice("twelve hours from the morning on")
        );

    /// <summary>Warmest hour of a room.</summary>
    public Coefficient WarmestHour { get; } =
        list.Add(
            "warmestHour",
            "warmest hour of a room",
            15,
            Unit.Hour,
            (13, 18),
            Citation.Choice("some hours after noon, as the walls follow")
        );

    /// <summary>Time in which a room comes near its weekend.</summary>
    public Coefficient WeekendApproach { get; } =
        list.Add(
            "weekendApproach",
            "time in which a room comes near its weekend",
            3,
            Unit.Hour,
            (1, 8),
            Citation.Choice("air and furniture of a room that is left unheated")
        );

    /// <summary>Outer wall under its room from November to March.</summary>
    public Coefficient ColdWall { get; } =
        list.Add(
            "coldWall",
            "outer wall under its room, November to March",
            -3,
            Unit.Kelvin,
            (-6, -1),
            Citation.Choice("an insulated wall of a heated room")
        );

    /// <summary>The same from April to October.</summary>
    public Coefficient MildWall { get; } =
        list.Add(
            "mildWall",
            "outer wall under its room, April to October",
            -1.5,
            Unit.Kelvin,
            (-3, 0),
            Citation.Choice("half of the winter's")
        );

    /// <summary>Window under its room from November to March.</summary>
    public Coefficient ColdWindow { get; } =
        list.Add(
            "coldWindow",
            "window under its room, November to March",
            -5,
            Unit.Kelvin,
            (-8, -2),
            Citation.Choice("double glazing of a heated room")
        );

    /// <summary>The same from April to October.</summary>
    public Coefficient MildWindow { get; } =
        list.Add(
            "mildWindow",
            "window under its room, April to October",
            -2,
            Unit.Kelvin,
            (-4, 0),
            Citation.Choice("less than half of the winter's")
        );
}
