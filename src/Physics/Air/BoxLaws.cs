using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>How air moves along a surface.</summary>
public enum SurfaceRole
{
    /// <summary>Upright pane or background.</summary>
    Wall,

    /// <summary>Level, seen from above.</summary>
    Floor,

    /// <summary>Level, seen from below.</summary>
    Ceiling,

    /// <summary>An opening through which surfaces see the room; no air moves along it here.</summary>
    Opening,
}

/// <summary>A surface as the air meets it.</summary>
/// <param name="Role">Role.</param>
/// <param name="SizeMeters">Height of a wall or leaf; 4 areas over perimeter of a level surface, m.</param>
public readonly record struct SurfacePlace(SurfaceRole Role, double SizeMeters);

/// <summary>What the exchange of a real box rests on besides its shape.</summary>
public sealed record BoxExchange
{
    /// <summary>As published, or chosen by us where nothing is.</summary>
    public static readonly BoxExchange Usual = new();

    /// <summary>Natural convection.</summary>
    public AlamdariHammond1983 Natural { get; init; } = AlamdariHammond1983.Published;

    /// <summary>
    /// Laminar flow along a plate, mean over it, in air at 24 °C: h = 3.92 √(u/L), W/(m² K) with u in m/s and
    /// L in m (0.664 Re^½ Pr^⅓ k/L, Pohlhausen, recalled).
    /// </summary>
    public double Plate { get; init; } = 3.92;

    /// <summary>Le^(2/3) of moist air.</summary>
    public double LewisTwoThirds { get; init; } = LewisTransfer.LewisTwoThirds;

    /// <summary>Least exchange of air, 1/s: what leaks through joints, own choice.</summary>
    public double LeastChangesPerSecond { get; init; } = 0.02 / 3600.0;
}

/// <summary>
/// The coefficients of a real box: natural convection of an enclosure, a stirring fan by its speed, mass by
/// heat, and air through its openings by buoyancy. What is uncertain is a factor, 1 when nothing is known.
/// </summary>
/// <param name="surfaces">The surfaces.</param>
/// <param name="openings">Exchange through the openings.</param>
/// <param name="volumeCubicMeters">Volume of the air, m³.</param>
/// <param name="factors">Factors on convection and on the air exchanged.</param>
/// <param name="pascals">Pressure of the air, Pa.</param>
/// <param name="exchange">What the laws rest on; as published by default.</param>
public sealed class BoxLaws(
    ImmutableArray<SurfacePlace> surfaces,
    OpeningFlow openings,
    double volumeCubicMeters,
    (double Convection, double AirFlow) factors,
    double pascals = MoistAir.StandardPascals,
    BoxExchange? exchange = null
) : ExchangeLaws
{
    private readonly BoxExchange with = exchange ?? BoxExchange.Usual;
    private readonly AlamdariHammond1983 by = (exchange ?? BoxExchange.Usual).Natural;

    /// <inheritdoc/>
    public override double Convection(int surface, in SurfaceAir air, HeadspaceDrive drive)
    {
        var (role, size) = surfaces[surface];
        if (role == SurfaceRole.Opening)
        {
            return 0.0;
        }

        double over = air.BuoyantKelvin;
        double natural =
            role == SurfaceRole.Wall
                ? by.Vertical(over, size)
                : by.Level(role == SurfaceRole.Floor ? over : -over, size);
        natural *= factors.Convection;
        if (drive.StirMetersPerSecond <= 0.0)
        {
            return natural;
        }

        double forced = with.Plate * Math.Sqrt(drive.StirMetersPerSecond / size);
        return Math.Cbrt((natural * natural * natural) + (forced * forced * forced));
    }

    /// <inheritdoc/>
    public override double MassTransfer(int surface, double convection) =>
        LewisTransfer.MetersPerSecond(convection, with.LewisTwoThirds);

    /// <inheritdoc/>
    public override double AirFlow(RoomPoint air, RoomPoint room, HeadspaceDrive drive) =>
        AirFlow(air, Outside(room), drive);

    /// <inheritdoc/>
    public override (double Flow, double Warmer) AirFlows(
        RoomPoint air,
        double kelvin,
        RoomPoint room,
        HeadspaceDrive drive
    )
    {
        double outside = Outside(room);
        var warmer = air with { Celsius = air.Celsius + kelvin };
        return (AirFlow(air, outside, drive), AirFlow(warmer, outside, drive));
    }

    private double Outside(RoomPoint room) => MoistAir.Density(room.Celsius, room.HumidityRatio, pascals);

    private double AirFlow(RoomPoint air, double outside, HeadspaceDrive drive)
    {
        double inside = MoistAir.Density(air.Celsius, air.HumidityRatio, pascals);
        double flow = openings(inside, outside, drive.FanCubicMetersPerSecond) * factors.AirFlow;
        flow = Math.Max(flow, with.LeastChangesPerSecond * volumeCubicMeters);
        return flow * inside / (1.0 + air.HumidityRatio);
    }
}

/// <summary>Air exchanged through the openings of a box, m³/s in and as much out.</summary>
/// <param name="insideKilogramsPerCubicMeter">Density of the air inside, kg/m³.</param>
/// <param name="outsideKilogramsPerCubicMeter">Density of the air of the room, kg/m³.</param>
/// <param name="fanCubicMetersPerSecond">Flow of a fan against them, m³/s.</param>
public delegate double OpeningFlow(
    double insideKilogramsPerCubicMeter,
    double outsideKilogramsPerCubicMeter,
    double fanCubicMetersPerSecond
);
