using System.Collections.Immutable;
using Litterfall.Physics.Air;

namespace Litterfall.Physics.Coupling;

/// <summary>Amounts of one hour and the state at its end; row 0 is the start.</summary>
public sealed record SimulationHour
{
    /// <summary>Hours from the start.</summary>
    public required double Hour { get; init; }

    /// <summary>Air, °C.</summary>
    public required double AirCelsius { get; init; }

    /// <summary>Least and most of the hour, °C.</summary>
    public required (double Least, double Most) AirRange { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public required double Humidity { get; init; }

    /// <summary>Least and most of the hour.</summary>
    public required (double Least, double Most) HumidityRange { get; init; }

    /// <summary>Mean relative humidity of the hour.</summary>
    public required double HumidityMean { get; init; }

    /// <summary>Mean temperature of the hour, °C.</summary>
    public required double AirMean { get; init; }

    /// <summary>Vapor pressure deficit of the air, Pa.</summary>
    public required double DeficitPascals { get; init; }

    /// <summary>Ground, °C.</summary>
    public required double GroundCelsius { get; init; }

    /// <summary>Room, °C.</summary>
    public required double RoomCelsius { get; init; }

    /// <summary>Share of the hour in which dew on each surface was thick enough to see.</summary>
    public required ImmutableArray<double> Fogged { get; init; }

    /// <summary>Share of the hour in which a film, dew or mist, lay on each surface.</summary>
    public required ImmutableArray<double> Wet { get; init; }

    /// <summary>Inner temperature of each surface less the dew point of the air, K.</summary>
    public required ImmutableArray<double> DewMarginKelvin { get; init; }

    /// <summary>Air changes in the hour.</summary>
    public required double AirChanges { get; init; }

    /// <summary>Misted, kg.</summary>
    public required double MistedKilograms { get; init; }

    /// <summary>Vapor carried out, kg.</summary>
    public required double VentedKilograms { get; init; }

    /// <summary>Evaporated from ground, leaf litter and leaves' supply, less condensed there, kg.</summary>
    public required double EvaporatedKilograms { get; init; }

    /// <summary>Evaporated from open water of basins, less condensed there, kg.</summary>
    public double OpenWaterKilograms { get; init; }

    /// <summary>Mist that fell on open water, kg.</summary>
    public double CaughtKilograms { get; init; }

    /// <summary>Filled up in basins by hand, kg.</summary>
    public double ToppedUpKilograms { get; init; }

    /// <summary>Run over the edge of basins to the ground, kg.</summary>
    public double OverflowKilograms { get; init; }

    /// <summary>Condensed on panes, kg.</summary>
    public required double CondensedKilograms { get; init; }

    /// <summary>Drained, kg.</summary>
    public required double DrainedKilograms { get; init; }

    /// <summary>Level over the base, m.</summary>
    public required double LevelMeters { get; init; }

    /// <summary>Water content of the first zone's nodes from the surface down, m³/m³.</summary>
    public required ImmutableArray<double> WaterContent { get; init; }

    /// <summary>Heads of all nodes, m.</summary>
    public required ImmutableArray<double> HeadMeters { get; init; }

    /// <summary>Water in the dead leaves, m.</summary>
    public required double LitterMeters { get; init; }
}

/// <summary>Something that happened.</summary>
/// <param name="Hour">When, hours from the start.</param>
/// <param name="Kind">What: drain, barrier.</param>
/// <param name="Kilograms">Water moved, kg.</param>
public readonly record struct SimulationEvent(double Hour, string Kind, double Kilograms);

/// <summary>Where the water of a run went, kg: what came in equals what left and what stayed.</summary>
public sealed record WaterLedger
{
    /// <summary>Misted.</summary>
    public double Misted { get; init; }

    /// <summary>Put out by a fogger as vapor.</summary>
    public double Fogged { get; init; }

    /// <summary>Filled up in basins by hand.</summary>
    public double ToppedUp { get; init; }

    /// <summary>Gained by basins: not more than nothing while they were full at the start.</summary>
    public double Basins { get; init; }

    /// <summary>Vented.</summary>
    public double Vented { get; init; }

    /// <summary>Drained by hand or outlet.</summary>
    public double Drained { get; init; }

    /// <summary>Run over the rim.</summary>
    public double RunOff { get; init; }

    /// <summary>Gained by soil, moss and reservoir.</summary>
    public double Floor { get; init; }

    /// <summary>Gained by the dead leaves.</summary>
    public double Litter { get; init; }

    /// <summary>Gained by films on panes.</summary>
    public double Films { get; init; }

    /// <summary>Gained by films on leaves.</summary>
    public double Leaves { get; init; }

    /// <summary>Gained by the air.</summary>
    public double Air { get; init; }

    /// <summary>Vapor given off and not yet delivered by ground and roots: less than nothing.</summary>
    public double Owed { get; init; }

    /// <summary>Run off panes and leaves, on its way to the ground.</summary>
    public double Pending { get; init; }

    /// <summary>Dripped from films to the ground: moved, not lost.</summary>
    public double Dripped { get; init; }

    /// <summary>In less out less gained, kg.</summary>
    public double BalanceError =>
        Misted
        + Fogged
        + ToppedUp
        + Owed
        - Vented
        - Drained
        - RunOff
        - Floor
        - Basins
        - Litter
        - Films
        - Leaves
        - Air
        - Pending;
}

/// <summary>A run.</summary>
public sealed record SimulationResult
{
    /// <summary>Hours, opening with the start.</summary>
    public required ImmutableArray<SimulationHour> Hours { get; init; }

    /// <summary>Events.</summary>
    public required ImmutableArray<SimulationEvent> Events { get; init; }

    /// <summary>State at the end.</summary>
    public required SimulationState State { get; init; }

    /// <summary>Water.</summary>
    public required WaterLedger Water { get; init; }

    /// <summary>Heat; all 0 where the air is held.</summary>
    public required HeatLedger Heat { get; init; }

    /// <summary>Largest miss of the air's own water in an hour, kg.</summary>
    public required double AirBalanceErrorKilograms { get; init; }

    /// <summary>Why the numbers did not come out; null when they did.</summary>
    public string? StoppedEarly { get; init; }

    /// <summary>Steps in which the air was followed: the work of the run.</summary>
    public int AirSteps { get; init; }
}
