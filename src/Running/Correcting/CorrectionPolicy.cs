namespace Litterfall.Running.Correcting;

/// <summary>A number that we chose, with the reason.</summary>
/// <param name="Value">The number, in the unit that its reason names.</param>
/// <param name="Why">Why.</param>
public sealed record OwnChoice(double Value, string Why);

/// <summary>
/// How far readings are off, and how far inputs without a published range may lie from the design. All are
/// our own choices with their reasons; standard errors unless they say otherwise.
/// </summary>
public static class CorrectionPolicy
{
    /// <summary>A level, mm.</summary>
    public static readonly OwnChoice Level = new(
        1.53,
        "mm: a dipstick or a mark on the glass is read to 2 mm either way, all alike likely, "
            + "which is 1.15 mm, "
            + "and the base, the foot of the tube and a shelf out of level add 1 mm (own choice)"
    );

    /// <summary>An amount drawn off, a share of it.</summary>
    public static readonly OwnChoice Jug = new(
        0.03,
        "3 % of the amount: marks of a kitchen jug, and what stays in the hose (own choice)"
    );

    /// <summary>An amount drawn off, mL at least.</summary>
    public static readonly OwnChoice LeastJug = new(30, "mL: half a mark of a jug (own choice)");

    /// <summary>A nozzle into a cup, a share of it.</summary>
    public static readonly OwnChoice Nozzle = new(
        0.04,
        "4 %: a minute by a watch into a cup with marks, drops beside it (own choice)"
    );

    /// <summary>A weighing, kg.</summary>
    public static readonly OwnChoice Weight = new(
        0.07,
        "kg: a scale with 50 g steps, and 50 g of plants grown, food and leaves put in (own choice)"
    );

    /// <summary>Air of an hour, K.</summary>
    public static readonly OwnChoice Air = new(
        0.95,
        "K: 0.5 K of a cheap sensor, and 0.8 K between its place and the mean of the box (own choice)"
    );

    /// <summary>Humidity of an hour, points of percent.</summary>
    public static readonly OwnChoice Humidity = new(
        5.8,
        "points: 3 of a sensor without check, and 5 between its place and the mean of the box (own choice)"
    );

    /// <summary>Humidity from which a sensor is wet and says nothing, %.</summary>
    public static readonly OwnChoice Saturated = new(
        99,
        "%: such sensors stand there for hours after they were wet (common practice, no source)"
    );

    /// <summary>Readings of the air that count in full; more share their weight.</summary>
    public static readonly OwnChoice AirReadings = new(
        4,
        "readings: the place of a sensor is off by the same amount in all of them (own choice)"
    );

    /// <summary>A squeezed fist, m³/m³ of water.</summary>
    public static readonly OwnChoice Squeeze = new(
        0.06,
        "m3/m3: hands differ, and one fist is not the whole floor (own choice)"
    );

    /// <summary>Water content for drops out of a fist: usual at three drops, more by its logarithm.</summary>
    public static readonly OwnChoice PerDrops = new(
        0.035,
        "m3/m3 for each e-fold of drops and one: none is 0.05 drier than three, twenty 0.06 wetter "
            + "(own choice)"
    );

    /// <summary>Drops at which the fist test calls a mix ready.</summary>
    public static readonly OwnChoice ReadyDrops = new(3, "drops: a few (common practice, no source)");

    /// <summary>Air changes that a design holds, least.</summary>
    public static readonly OwnChoice HeldAirLow = new(
        0.5,
        "times: air changes that were typed and not measured are right within a factor of two (own choice)"
    );

    /// <summary>Air changes that a design holds, most.</summary>
    public static readonly OwnChoice HeldAirHigh = new(2, HeldAirLow.Why);

    /// <summary>Room for water in the drainage layer, least.</summary>
    public static readonly OwnChoice PoresLow = new(
        0.9,
        "times: clay balls pack to within a tenth of their usual voids (own choice)"
    );

    /// <summary>Room for water in the drainage layer, most.</summary>
    public static readonly OwnChoice PoresHigh = new(1 / 0.9, PoresLow.Why);

    /// <summary>Spread of what an empty tank weighs, kg: so wide that one weighing tells nothing.</summary>
    public static readonly OwnChoice Tare = new(
        10,
        "kg: nobody weighed it; only the difference of two weighings counts (own choice)"
    );

    /// <summary>Standard errors from the expected beyond which a reading counts little.</summary>
    public static readonly OwnChoice Far = new(
        4,
        "standard errors of reading and forecast together: a slip of the pen is likelier (own choice)"
    );
}
