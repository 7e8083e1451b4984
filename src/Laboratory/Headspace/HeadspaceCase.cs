using System.Collections.Immutable;
using Litterfall.Physics.Air;

namespace Litterfall.Laboratory.Headspace;

/// <summary>Something that is on for a part of each day.</summary>
/// <param name="OnHour">From, hours from 00:00.</param>
/// <param name="OffHour">To, hours; past 24 where it crosses midnight.</param>
public readonly record struct DailySpan(double OnHour, double OffHour)
{
    /// <summary>True at an hour of the day.</summary>
    public bool IsOn(double hour)
    {
        double since = hour - OnHour;
        since -= 24.0 * Math.Floor(since / 24.0);
        return since < OffHour - OnHour;
    }
}

/// <summary>A checked case of a lumped headspace, ready to be run.</summary>
public sealed record HeadspaceCase
{
    /// <summary>The model with its constant coefficients.</summary>
    public required HeadspaceModel Model { get; init; }

    /// <summary>State at hour 0.</summary>
    public required HeadspaceState Start { get; init; }

    /// <summary>The room by time in s.</summary>
    public required Func<double, RoomPoint> Room { get; init; }

    /// <summary>When the lamp is on.</summary>
    public required DailySpan Lamp { get; init; }

    /// <summary>Its heat to air, glass and soil, W.</summary>
    public required (double Air, double Glass, double Soil) LampWatts { get; init; }

    /// <summary>Mists: when, and kg/s.</summary>
    public required ImmutableArray<(DailySpan When, double KilogramsPerSecond)> Mists { get; init; }

    /// <summary>Temperature of the mist, °C.</summary>
    public required double MistCelsius { get; init; }

    /// <summary>Step, s.</summary>
    public required double StepSeconds { get; init; }

    /// <summary>Hours to run.</summary>
    public required double Hours { get; init; }
}
