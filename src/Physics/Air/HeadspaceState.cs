using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>The headspace at one instant.</summary>
/// <param name="Seconds">Time, s.</param>
/// <param name="AirCelsius">Temperature of the air, °C.</param>
/// <param name="HumidityRatio">w, kg/kg.</param>
/// <param name="Celsius">Temperatures of all nodes, from the inner face outward, °C.</param>
/// <param name="FilmKilograms">Film on each surface, kg; 0 where water soaks in.</param>
public sealed record HeadspaceState(
    double Seconds,
    double AirCelsius,
    double HumidityRatio,
    ImmutableArray<double> Celsius,
    ImmutableArray<double> FilmKilograms
)
{
    /// <summary>A film of this much is seen, kg/m².</summary>
    public const double VisibleKilogramsPerSquareMeter = 1e-3;

    /// <summary>Part of each film that came as dew, kg; the rest was misted. Empty for none.</summary>
    public ImmutableArray<double> DewKilograms { get; init; } = [];
}

/// <summary>What a surface exchanged in a span.</summary>
/// <param name="CondensedKilograms">Taken from the air, kg.</param>
/// <param name="DriedKilograms">Given to the air by its film, kg.</param>
/// <param name="SuppliedKilograms">
/// Given to the air by what lies behind it, kg; negative where a dry surface takes water up.
/// </param>
/// <param name="DrippedKilograms">Run off its film, kg.</param>
/// <param name="MistedKilograms">Mist that fell on it, kg.</param>
/// <param name="FoggedSeconds">How long its dew was thick enough to see, s.</param>
/// <param name="WetSeconds">How long its film was, dew or mist, s.</param>
public readonly record struct SurfaceTotals(
    double CondensedKilograms,
    double DriedKilograms,
    double SuppliedKilograms,
    double DrippedKilograms,
    double MistedKilograms,
    double FoggedSeconds,
    double WetSeconds
);

/// <summary>What the air and the whole box exchanged in a span.</summary>
public sealed record HeadspaceTotals
{
    /// <summary>Length, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Surfaces.</summary>
    public required ImmutableArray<SurfaceTotals> Surfaces { get; init; }

    /// <summary>Vapor carried out by the air less what came in, kg.</summary>
    public required double VentedKilograms { get; init; }

    /// <summary>Vapor made by a fogger, kg.</summary>
    public required double FoggedKilograms { get; init; }

    /// <summary>Condensed in the air itself and settled, kg.</summary>
    public required double SettledKilograms { get; init; }

    /// <summary>Dry air exchanged with the room, kg.</summary>
    public required double AirKilograms { get; init; }

    /// <summary>Integral of the temperature of the air, °C s.</summary>
    public required double AirCelsiusSeconds { get; init; }

    /// <summary>Integral of the relative humidity, s.</summary>
    public required double HumiditySeconds { get; init; }

    /// <summary>Least and most of the air's temperature, °C.</summary>
    public required (double Least, double Most) AirCelsius { get; init; }

    /// <summary>Least and most relative humidity.</summary>
    public required (double Least, double Most) Humidity { get; init; }

    /// <summary>Heat of this span.</summary>
    public required HeatLedger Heat { get; init; }

    /// <summary>
    /// Vapor gained by the air less all that the surfaces, the fogger and the room gave it, kg.
    /// </summary>
    public required double MissKilograms { get; init; }

    /// <summary>Steps taken.</summary>
    public required int Steps { get; init; }
}

/// <summary>
/// Heat that came in and stayed, J. The enthalpy of liquid that joins or leaves a film or the ground is
/// booked as its own term; that of water running from one store to another is not.
/// </summary>
/// <param name="Sources">Lamps, mats.</param>
/// <param name="Vented">Enthalpy of the air that came in less that which left.</param>
/// <param name="Outside">Through panes and base.</param>
/// <param name="Mist">Mist warmer or colder than what it falls on.</param>
/// <param name="Liquid">Enthalpy of liquid that turned to vapor, less that which condensed.</param>
/// <param name="Stored">Gained by air, panes, ground and leaves.</param>
public readonly record struct HeatLedger(
    double Sources,
    double Vented,
    double Outside,
    double Mist,
    double Liquid,
    double Stored
)
{
    /// <summary>In less stored, J: 0 but for what the steps' equations miss.</summary>
    public double MissJoules => Sources + Vented + Outside + Mist + Liquid - Stored;

    /// <summary>Sum of two spans.</summary>
    public static HeatLedger operator +(HeatLedger a, HeatLedger b) =>
        new(
            a.Sources + b.Sources,
            a.Vented + b.Vented,
            a.Outside + b.Outside,
            a.Mist + b.Mist,
            a.Liquid + b.Liquid,
            a.Stored + b.Stored
        );
}

/// <summary>A span of a headspace: where it ends and what happened in it.</summary>
/// <param name="State">State at its end.</param>
/// <param name="Totals">What was exchanged.</param>
/// <param name="NextStepSeconds">Step that the next span may begin with if nothing is switched, s.</param>
/// <param name="StoppedEarly">Why it ended before its time; null when it did not.</param>
public sealed record HeadspaceSpan(
    HeadspaceState State,
    HeadspaceTotals Totals,
    double NextStepSeconds,
    string? StoppedEarly
);
