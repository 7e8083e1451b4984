using System.Collections.Immutable;
using Litterfall.Physics.Air;
using Litterfall.Physics.Soil;

namespace Litterfall.Physics.Coupling;

/// <summary>
/// Part of a day in which nothing is switched, from its start to the start of the next; what drives it but
/// for the room and the ground.
/// </summary>
/// <param name="FromSeconds">Start, s from 00:00.</param>
/// <param name="Drive">Lamps, mist, fans.</param>
/// <param name="IsLit">True while a lamp is on.</param>
/// <param name="MistKilogramsPerSecond">All the mist, kg/s.</param>
public sealed record DayPart(
    double FromSeconds,
    HeadspaceDrive Drive,
    bool IsLit,
    double MistKilogramsPerSecond
);

/// <summary>Air that the design holds constant.</summary>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Humidity">Relative humidity, 0 to 1.</param>
/// <param name="AirChangesPerSecond">Air changes, 1/s.</param>
/// <param name="VolumeCubicMeters">Volume of the air, m³.</param>
/// <param name="LeafShare">Share of the vapor that leaves give off.</param>
/// <param name="OpenShare">
/// Share of the floor that is open water, which takes as much of the mist and gives as much of the vapor
/// that does not come from leaves.
/// </param>
public sealed record HeldHeadspace(
    double Celsius,
    double Humidity,
    double AirChangesPerSecond,
    double VolumeCubicMeters,
    double LeafShare,
    double OpenShare = 0.0
);

/// <summary>Stomata of the leaves: open in light, all but closed in the dark.</summary>
/// <param name="LitMetersPerSecond">Conductance of lit leaves, m/s of one-sided leaf area.</param>
/// <param name="DarkMetersPerSecond">The same in the dark, m/s.</param>
/// <param name="BoundarySecondsPerMeter">
/// Still air around a leaf, s/m: 1/0.0025, a leaf of 5 cm at 1 K (free convection, recalled).
/// </param>
public readonly record struct Stomata(
    double LitMetersPerSecond,
    double DarkMetersPerSecond,
    double BoundarySecondsPerMeter = 400.0
);

/// <summary>A heat mat with what it is switched by.</summary>
/// <param name="Watts">Power, W.</param>
/// <param name="TargetCelsius">Temperature of the ground it holds, °C; null when it is always on.</param>
public sealed record HeatMat(double Watts, double? TargetCelsius);

/// <summary>How water is drawn off by hand.</summary>
/// <param name="AtMeters">Level at which someone draws it off, m; infinite for never.</param>
/// <param name="BarrierMeters">Level of the barrier, m; infinite without one.</param>
/// <param name="FromHour">
/// Hour from which someone watches the level. Before it water leaves by hand only as
/// <see cref="SimulationSetup.ByHand"/> tells.
/// </param>
public readonly record struct HandDrain(double AtMeters, double BarrierMeters, double FromHour = 0.0);

/// <summary>Water that someone drew off or poured in at an hour, as it was noted.</summary>
/// <param name="Hour">When, hours from the start; counted from the next full hour on.</param>
/// <param name="Kilograms">
/// Drawn off, kg, or all there is where that is less; less than 0 for poured onto the ground.
/// </param>
/// <param name="DownToMeters">Level it was drawn down to, m, in place of an amount; null for an
/// amount.</param>
public readonly record struct HandWater(double Hour, double Kilograms, double? DownToMeters = null);

/// <summary>
/// How often air and floor exchange water. The usual pace is every hour of every day. A brisker one is for
/// many runs of the same box side by side: it costs tenths of a millimeter of level.
/// </summary>
/// <param name="FloorHours">Hours from one exchange to the next, 1 to 24.</param>
/// <param name="AirDays">
/// Days in a row for which a settled day of the air counts, while room and ground stay as they are.
/// </param>
public sealed record SimulationPace(int FloorHours, int AirDays)
{
    /// <summary>Every hour of every day.</summary>
    public static readonly SimulationPace Hourly = new(1, 1);
}

/// <summary>A box with all that happens to it, ready to be run.</summary>
public sealed record SimulationSetup
{
    /// <summary>The headspace.</summary>
    public required HeadspaceModel Air { get; init; }

    /// <summary>The floor.</summary>
    public required WaterModel Water { get; init; }

    /// <summary>Its surface.</summary>
    public required GroundSurface Ground { get; init; }

    /// <summary>Area of the floor, m².</summary>
    public required double FloorSquareMeters { get; init; }

    /// <summary>The room by time, s from 00:00 of the first day.</summary>
    public required Func<double, RoomPoint> Room { get; init; }

    /// <summary>Outside of each surface over the room by time, K; null where nothing but the room.</summary>
    public Func<double, ImmutableArray<double>>? Outside { get; init; }

    /// <summary>The day, from 00:00; at least one part.</summary>
    public required ImmutableArray<DayPart> Day { get; init; }

    /// <summary>Place of the ground among the surfaces.</summary>
    public required int GroundPlace { get; init; }

    /// <summary>Place of the leaves among the surfaces; null without leaves.</summary>
    public int? LeafPlace { get; init; }

    /// <summary>
    /// Place of the open water of basins among the surfaces; null without. They are filled up at midnight,
    /// and what falls on a full one runs over to the ground.
    /// </summary>
    public int? OpenWaterPlace { get; init; }

    /// <summary>Stomata of the leaves.</summary>
    public Stomata Stomata { get; init; }

    /// <summary>Heat mat; null without.</summary>
    public HeatMat? Mat { get; init; }

    /// <summary>Drawing off by hand.</summary>
    public HandDrain Drain { get; init; } = new(double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>Drawn off and poured in by hand.</summary>
    public ImmutableArray<HandWater> ByHand { get; init; } = [];

    /// <summary>How often air and floor exchange water.</summary>
    public SimulationPace Pace { get; init; } = SimulationPace.Hourly;

    /// <summary>Air held constant; null where it is computed.</summary>
    public HeldHeadspace? Held { get; init; }

    /// <summary>How finely the headspace cuts time.</summary>
    public HeadspaceControl Control { get; init; } = HeadspaceControl.Forecast;
}

/// <summary>Air and floor at one instant.</summary>
/// <param name="Air">Headspace.</param>
/// <param name="Water">Floor.</param>
/// <param name="GroundOwedKilograms">Vapor the ground gave and has yet to deliver, kg.</param>
/// <param name="LeafOwedKilograms">The same of the leaves, kg.</param>
/// <param name="PendingKilograms">Water on its way to the ground, kg.</param>
/// <param name="BasinLackKilograms">What the basins lack to be full, kg.</param>
public sealed record SimulationState(
    HeadspaceState Air,
    WaterState Water,
    double GroundOwedKilograms = 0.0,
    double LeafOwedKilograms = 0.0,
    double PendingKilograms = 0.0,
    double BasinLackKilograms = 0.0
);
