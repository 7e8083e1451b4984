using System.Collections.Immutable;
using Litterfall.Physics.Parcel;

namespace Litterfall.Laboratory.Parcel;

/// <summary>A case of <c>lab parcel</c>.</summary>
/// <param name="Shell">The carton.</param>
/// <param name="HeatCapacity">Heat capacity of the contents, J/K.</param>
/// <param name="StartCelsius">Temperature of the contents at hour 0, °C.</param>
/// <param name="Hours">Hours to run.</param>
public sealed record ParcelCase(CartonShell Shell, double HeatCapacity, double StartCelsius, double Hours)
{
    /// <summary>Gets the air outside, °C over s.</summary>
    public required TimeCurve Ambient { get; init; }

    /// <summary>Gets the packs that melt, in the order of the case.</summary>
    public ImmutableArray<PhaseStore> Packs { get; init; } = [];

    /// <summary>Gets the power of all heat packs, W over s.</summary>
    public TimeCurve Heat { get; init; } = TimeCurve.Zero;

    /// <summary>Gets what is asked about the air.</summary>
    public ParcelAir Air { get; init; } = new();

    /// <summary>Gets the lowest and highest temperature that count as inside; null without a band.</summary>
    public (double Low, double High)? Band { get; init; }
}

/// <summary>One row of a result.</summary>
/// <param name="Hour">Hours since the start.</param>
/// <param name="InsideC">Contents, °C.</param>
/// <param name="Liquid">Liquid share of all latent heat; null without packs that melt.</param>
/// <param name="Packs">Liquid share of each pack where there are several.</param>
public sealed record ParcelHour(double Hour, double InsideC, double? Liquid, ImmutableArray<double> Packs);

/// <summary>Time outside a band.</summary>
/// <param name="LowC">Its lower end, °C.</param>
/// <param name="HighC">Its upper end, °C.</param>
/// <param name="HoursBelow">Time below, h.</param>
/// <param name="HoursAbove">Time above, h.</param>
/// <param name="FirstBelowHour">When first below, h; null for never.</param>
/// <param name="FirstAboveHour">When first above, h; null for never.</param>
public sealed record ParcelBand(
    double LowC,
    double HighC,
    double HoursBelow,
    double HoursAbove,
    double? FirstBelowHour,
    double? FirstAboveHour
);

/// <summary>What a case came to.</summary>
/// <param name="Hours">Full hours, and the end.</param>
/// <param name="Outcome">Extremes and heat.</param>
/// <param name="Conductance">UA, W/K.</param>
/// <param name="TimeConstantHours">C ÷ UA, h.</param>
/// <param name="Milliseconds">Time of the solve alone, ms.</param>
public sealed record ParcelResult(
    ImmutableArray<ParcelHour> Hours,
    ParcelOutcome Outcome,
    double Conductance,
    double TimeConstantHours,
    double Milliseconds
)
{
    /// <summary>Gets the time outside the band; null without one.</summary>
    public ParcelBand? Band { get; init; }

    /// <summary>Gets the air of packs, carton and cup; null where not asked, or with a stop.</summary>
    public ParcelAirOutcome? Air { get; init; }

    /// <summary>Gets why the numbers did not come out; null where they did.</summary>
    public string? Stop { get; init; }
}
