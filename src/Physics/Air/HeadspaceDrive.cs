using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>The room at one instant.</summary>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="HumidityRatio">w, kg/kg.</param>
public readonly record struct RoomPoint(double Celsius, double HumidityRatio);

/// <summary>How water behind a surface comes to it.</summary>
/// <param name="RelativeHumidity">Vapor pressure at the water over that of free water.</param>
/// <param name="ResistanceSecondsPerMeter">Between it and the surface, s/m.</param>
public readonly record struct WaterSupply(double RelativeHumidity, double ResistanceSecondsPerMeter)
{
    /// <summary>Free water at the surface.</summary>
    public static readonly WaterSupply Free = new(1.0, 0.0);
}

/// <summary>What drives a headspace during a span without switching.</summary>
public sealed record HeadspaceDrive
{
    /// <summary>The room, by time in s.</summary>
    public required Func<double, RoomPoint> Room { get; init; }

    /// <summary>Heat into the air, W.</summary>
    public double AirWatts { get; init; }

    /// <summary>Heat into each surface's inner node, W; empty for none.</summary>
    public ImmutableArray<double> SurfaceWatts { get; init; } = [];

    /// <summary>Heat into each surface's outermost node, W; empty for none.</summary>
    public ImmutableArray<double> BackWatts { get; init; } = [];

    /// <summary>Mist, kg/s.</summary>
    public double MistKilogramsPerSecond { get; init; }

    /// <summary>Temperature of the mist, °C.</summary>
    public double MistCelsius { get; init; }

    /// <summary>Droplets of a fogger, kg/s; they evaporate while the air can take them.</summary>
    public double FogKilogramsPerSecond { get; init; }

    /// <summary>Water behind the surfaces that have a supply; empty for free water at each.</summary>
    public ImmutableArray<WaterSupply> Supply { get; init; } = [];

    /// <summary>
    /// Temperature outside each surface over that of the room, K; empty for what the surfaces say.
    /// </summary>
    public ImmutableArray<double> OutsideOffsetKelvin { get; init; } = [];

    /// <summary>Flow of a fan that blows out or in, m³/s.</summary>
    public double FanCubicMetersPerSecond { get; init; }

    /// <summary>True where lamps, mist, fogger and fans do as in another.</summary>
    /// <param name="other">The other.</param>
    public bool IsSwitchedAs(HeadspaceDrive other) =>
        AirWatts == other.AirWatts
        && MistKilogramsPerSecond == other.MistKilogramsPerSecond
        && FogKilogramsPerSecond == other.FogKilogramsPerSecond
        && FanCubicMetersPerSecond == other.FanCubicMetersPerSecond
        && StirMetersPerSecond == other.StirMetersPerSecond
        && SurfaceWatts.AsSpan().SequenceEqual(other.SurfaceWatts.AsSpan());

    /// <summary>Outside of a surface over the room, K.</summary>
    /// <param name="shape">The headspace.</param>
    /// <param name="surface">Its place.</param>
    public double OutsideOffset(HeadspaceShape shape, int surface) =>
        OutsideOffsetKelvin.IsDefaultOrEmpty
            ? shape.Surfaces[surface].OutsideOffsetKelvin
            : OutsideOffsetKelvin[surface];

    /// <summary>Air speed along the surfaces that a stirring fan makes, m/s.</summary>
    public double StirMetersPerSecond { get; init; }
}

/// <summary>The air around a surface, for laws of exchange.</summary>
/// <param name="SurfaceCelsius">Temperature of the surface, °C.</param>
/// <param name="SurfaceHumidityRatio">w at it: saturated where it is wet, kg/kg.</param>
/// <param name="AirCelsius">Temperature of the air, °C.</param>
/// <param name="AirHumidityRatio">w of the air, kg/kg.</param>
public readonly record struct SurfaceAir(
    double SurfaceCelsius,
    double SurfaceHumidityRatio,
    double AirCelsius,
    double AirHumidityRatio
)
{
    /// <summary>Virtual temperature of the surface less that of the air, K.</summary>
    public double BuoyantKelvin =>
        MoistAir.VirtualKelvin(SurfaceCelsius, SurfaceHumidityRatio)
        - MoistAir.VirtualKelvin(AirCelsius, AirHumidityRatio);
}

/// <summary>
/// The coefficients of a headspace: the correlations of a real box, or constants given for an experiment.
/// They are taken at the start of each step.
/// </summary>
public abstract class ExchangeLaws
{
    /// <summary>Convection at a surface, W/(m² K).</summary>
    /// <param name="surface">Its place.</param>
    /// <param name="air">Surface and air.</param>
    /// <param name="drive">What drives the span.</param>
    public abstract double Convection(int surface, in SurfaceAir air, HeadspaceDrive drive);

    /// <summary>Mass transfer at a surface, m/s.</summary>
    /// <param name="surface">Its place.</param>
    /// <param name="convection">Its convection, W/(m² K).</param>
    public abstract double MassTransfer(int surface, double convection);

    /// <summary>Dry air exchanged with the room, kg/s.</summary>
    /// <param name="air">Air of the box.</param>
    /// <param name="room">Air of the room.</param>
    /// <param name="drive">What drives the span.</param>
    public abstract double AirFlow(RoomPoint air, RoomPoint room, HeadspaceDrive drive);

    /// <summary>The same, and with the air of the box so much warmer, kg/s.</summary>
    /// <param name="air">Air of the box.</param>
    /// <param name="kelvin">How much warmer, K.</param>
    /// <param name="room">Air of the room.</param>
    /// <param name="drive">What drives the span.</param>
    public virtual (double Flow, double Warmer) AirFlows(
        RoomPoint air,
        double kelvin,
        RoomPoint room,
        HeadspaceDrive drive
    ) => (AirFlow(air, room, drive), AirFlow(air with { Celsius = air.Celsius + kelvin }, room, drive));
}

/// <summary>Constant coefficients.</summary>
/// <param name="ConvectionWattsPerSquareMeterKelvin">Convection of each surface, W/(m² K).</param>
/// <param name="MassTransferMetersPerSecond">Mass transfer of each surface, m/s.</param>
/// <param name="AirKilogramsPerSecond">Dry air exchanged, kg/s.</param>
public sealed class GivenLaws(
    ImmutableArray<double> ConvectionWattsPerSquareMeterKelvin,
    ImmutableArray<double> MassTransferMetersPerSecond,
    double AirKilogramsPerSecond
) : ExchangeLaws
{
    /// <inheritdoc/>
    public override double Convection(int surface, in SurfaceAir air, HeadspaceDrive drive) =>
        ConvectionWattsPerSquareMeterKelvin[surface];

    /// <inheritdoc/>
    public override double MassTransfer(int surface, double convection) =>
        MassTransferMetersPerSecond[surface];

    /// <inheritdoc/>
    public override double AirFlow(RoomPoint air, RoomPoint room, HeadspaceDrive drive) =>
        AirKilogramsPerSecond;
}
