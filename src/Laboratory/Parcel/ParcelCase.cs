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
    /// <summary>Gets the time below the band and above it; null without a band.</summary>
    public (LevelExposure Low, LevelExposure High)? Band { get; init; }

    /// <summary>Gets the air of packs, carton and cup.</summary>
    public required ParcelAirOutcome Air { get; init; }

    /// <summary>Gets whether every number is one that can be printed.</summary>
    public bool IsFinite =>
        double.IsFinite(Outcome.BalanceErrorJoules) && Hours.All(h => double.IsFinite(h.InsideC));
}
