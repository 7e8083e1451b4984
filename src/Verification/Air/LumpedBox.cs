using System.Collections.Immutable;
using Litterfall.Physics.Air;

namespace Litterfall.Verification.Air;

/// <summary>Boxes with constant coefficients, built on the forecast's own model.</summary>
internal static class LumpedBox
{
    /// <summary>Dry air of 0.45³ m³ at 25 °C, kg.</summary>
    public const double DryAir = 0.107888186;

    /// <summary>Glass of the cube, m².</summary>
    public const double Glass = 1.0125;

    /// <summary>Soil of the cube, m².</summary>
    public const double Soil = 0.2025;

    /// <summary>Heat so large that a node keeps its temperature, J/K.</summary>
    public const double Endless = 1e15;

    private const double Convection = 3.0;
    private const double Transfer = 1.0 / 360.0;

    /// <summary>The cube of the reference runs with a film on its glass and wet soil.</summary>
    /// <param name="airChangesPerHour">Air changes, 1/h.</param>
    /// <param name="wetShare">Share of the soil that is wet.</param>
    public static HeadspaceModel Cube(double airChangesPerHour, double wetShare = 1.0)
    {
        double radiant = 2.0 * 5.0 * Soil;
        var glass = new HeadspaceSurface
        {
            Name = "glass",
            AreaSquareMeters = Glass,
            CapacityJoulesPerKelvin = [2500.0 * 720.0 * 0.005 * Glass],
            OutwardWattsPerKelvin = [8.0 * Glass],
            RadiantWattsPerKelvin = radiant,
            Film = new FilmRule(0.005 * Glass, 0.050 * Glass, 600.0, 1),
            MistShare = 0.3,
        };
        var soil = new HeadspaceSurface
        {
            Name = "soil",
            AreaSquareMeters = Soil,
            CapacityJoulesPerKelvin = [Soil * 0.06 * 2.5e6],
            OutwardWattsPerKelvin = [2.0 * Soil],
            RadiantWattsPerKelvin = radiant,
            HasSupply = true,
            MistShare = 0.7,
        };
        return new HeadspaceModel(
            new HeadspaceShape { DryAirKilograms = DryAir, Surfaces = [glass, soil] },
            new GivenLaws(
                [Convection, Convection],
                [Transfer, Transfer * wetShare],
                airChangesPerHour / 3600.0 * DryAir
            )
        );
    }

    /// <summary>One surface of 1 m² under endless air.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="convection">Convection, W/(m² K).</param>
    /// <param name="transfer">Mass transfer, m/s.</param>
    public static HeadspaceModel UnderAir(HeadspaceSurface surface, double convection, double transfer) =>
        new(
            new HeadspaceShape { DryAirKilograms = Endless, Surfaces = [surface] },
            new GivenLaws([convection], [transfer], 0.0)
        );

    /// <summary>Air alone: a surface that keeps its temperature and takes nothing.</summary>
    /// <param name="kilograms">Dry air, kg.</param>
    /// <param name="kilogramsPerSecond">Exchanged, kg/s.</param>
    public static HeadspaceModel Alone(double kilograms, double kilogramsPerSecond) =>
        new(
            new HeadspaceShape
            {
                DryAirKilograms = kilograms,
                Surfaces =
                [
                    new HeadspaceSurface
                    {
                        Name = "shell",
                        AreaSquareMeters = 1.0,
                        CapacityJoulesPerKelvin = [Endless],
                        OutwardWattsPerKelvin = [0.0],
                    },
                ],
            },
            new GivenLaws([1e6], [0.0], kilogramsPerSecond)
        );

    /// <summary>A surface of 1 m² and little heat, for steady states.</summary>
    /// <param name="outward">To the room, W/K.</param>
    /// <param name="isWet">True for free water.</param>
    public static HeadspaceSurface Light(double outward, bool isWet) =>
        new()
        {
            Name = "surface",
            AreaSquareMeters = 1.0,
            CapacityJoulesPerKelvin = [1.0],
            OutwardWattsPerKelvin = [outward],
            HasSupply = isWet,
        };

    /// <summary>Runs to a steady state.</summary>
    /// <param name="model">The model.</param>
    /// <param name="start">State at the start.</param>
    /// <param name="drive">What drives it.</param>
    /// <param name="hours">How long, h.</param>
    public static HeadspaceSpan Settle(
        HeadspaceModel model,
        HeadspaceState start,
        HeadspaceDrive drive,
        double hours
    ) => model.Advance(start, drive, hours * 3600.0, HeadspaceControl.Even(hours * 36.0));

    /// <summary>A room that stays as it is.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">w, kg/kg.</param>
    public static HeadspaceDrive Room(double celsius, double humidityRatio) =>
        new() { Room = _ => new RoomPoint(celsius, humidityRatio) };

    /// <summary>The limit of a second-order quantity from two steps, one half the other.</summary>
    /// <param name="whole">With the step.</param>
    /// <param name="half">With half of it.</param>
    public static double Limit(double whole, double half) => ((4.0 * half) - whole) / 3.0;

    /// <summary>Heat into air, glass and soil as the reference lamp shares it, W.</summary>
    /// <param name="drive">Drive without lamp.</param>
    /// <param name="watts">All of it, W.</param>
    public static HeadspaceDrive Lit(HeadspaceDrive drive, double watts) =>
        drive with
        {
            AirWatts = 0.1 * watts,
            SurfaceWatts = ImmutableArray.Create(0.3 * watts, 0.6 * watts),
        };
}
