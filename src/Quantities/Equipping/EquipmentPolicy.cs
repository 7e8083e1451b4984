using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Equipping;

/// <summary>Ways, margins and spans by which equipment is counted: own choices and habits.</summary>
public static class EquipmentPolicy
{
    /// <summary>Tube from the water tank to the pump.</summary>
    public static readonly Figure Suction = Figure.Choice(
        "tube from tank to pump",
        0.5,
        Unit.Meter,
        "the pump stands beside its tank"
    );

    /// <summary>Tube from the pump to the foot of the first box.</summary>
    public static readonly Figure Way = Figure.Choice(
        "tube from pump to box",
        1.5,
        Unit.Meter,
        "the pump stands below or beside the box; measure your own way"
    );

    /// <summary>Room between boxes that share a pump.</summary>
    public static readonly Figure Between = Figure.Choice(
        "room between boxes",
        10,
        Unit.Centimeter,
        "boxes on one bench stand a hand apart"
    );

    /// <summary>Row of the nozzles, behind the front, over the depth of the box.</summary>
    public static readonly Figure NozzleRow = Figure.Choice(
        "row of nozzles behind the front",
        60,
        Unit.Percent,
        "they reach the back third and the middle from there"
    );

    /// <summary>Tube for cuts, bends and a mistake.</summary>
    public static readonly Figure Slack = Figure.Choice(
        "tube for bends and cuts",
        10,
        Unit.Percent,
        "each push fitting takes a clean end"
    );

    /// <summary>Flow of the pump over that of its nozzles.</summary>
    public static readonly Figure PumpMargin = Figure.Choice(
        "flow of the pump over that of its nozzles",
        1.25,
        Unit.One,
        "pumps wear and filters clog; a pump at its limit drips"
    );

    /// <summary>Elbows of one box.</summary>
    public static readonly Figure ElbowsEach = Figure.Choice(
        "elbows of one box",
        2,
        Unit.One,
        "one over the back edge, one into the row of nozzles"
    );

    /// <summary>Span between clips of a tube.</summary>
    public static readonly Figure ClipSpan = Figure.Given(
        "span between clips of a tube",
        Unit.Centimeter.ToSiValue(30),
        Unit.Centimeter,
        Citation.Habit("thin tube is held every 30 cm")
    );

    /// <summary>Days a water tank lasts.</summary>
    public static readonly Figure TankDays = Figure.Choice(
        "days a tank of misting water lasts",
        7,
        Unit.One,
        "filled once a week; water that stands longer goes stale"
    );

    /// <summary>Hose from the outlet, or from the rim, to the bottle.</summary>
    public static readonly Figure HoseWay = Figure.Choice(
        "hose from outlet to bottle",
        1.5,
        Unit.Meter,
        "the bottle stands on the floor below; measure your own way"
    );

    /// <summary>Hole of an outlet where the design gives none.</summary>
    public static readonly Figure UsualHole = Figure.Choice(
        "hole of the outlet",
        16,
        Unit.Millimeter,
        "the design gives no hole; the smallest usual fitting"
    );

    /// <summary>Span between feet of a raised floor.</summary>
    public static readonly Figure FeetSpan = Figure.Given(
        "span between feet of a raised floor",
        Unit.Centimeter.ToSiValue(15),
        Unit.Centimeter,
        Citation.Habit("a raised floor on feet every 15 cm")
    );

    /// <summary>Pins of one mounted plant.</summary>
    public static readonly Figure PinsEach = Figure.Choice(
        "pins of a mounted plant",
        3,
        Unit.One,
        "three points hold it still until it roots"
    );

    /// <summary>Wire of one mounted plant.</summary>
    public static readonly Figure WireEach = Figure.Choice(
        "wire of a mounted plant",
        30,
        Unit.Centimeter,
        "once around a branch and a twist; cut off when it has rooted"
    );

    /// <summary>Spirit for the joints of one box.</summary>
    public static readonly Figure SpiritEach = Figure.Choice(
        "spirit for the joints of a box",
        50,
        Unit.Milliliter,
        "wipes the edges twice"
    );

    /// <summary>Peat or coir pressed on silicone.</summary>
    public static readonly Figure CoverDepth = Figure.Choice(
        "pressed cover of a background",
        3,
        Unit.Millimeter,
        "2 mm of silicone with 3 mm of peat or coir, as the library's cover has it"
    );

    /// <summary>Loose peat or coir over what stays pressed on.</summary>
    public static readonly Figure CoverLoose = Figure.Choice(
        "loose cover over pressed cover",
        2,
        Unit.One,
        "half of it is swept off again"
    );

    /// <summary>How far a fitting may be smaller than its hole.</summary>
    public static readonly Figure HolePlay = Figure.Choice(
        "play of a fitting in its hole",
        3,
        Unit.Millimeter,
        "its flange and seal cover no more"
    );
}
