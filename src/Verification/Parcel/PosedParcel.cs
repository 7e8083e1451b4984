using Litterfall.Physics.Parcel;

namespace Litterfall.Verification.Parcel;

/// <summary>A parcel posed for a case, and questions to it.</summary>
internal sealed record PosedParcel
{
    private const double SecondsPerHour = 3600.0;

    /// <summary>Gets the conductance, W/K.</summary>
    public required double Conductance { get; init; }

    /// <summary>Gets the heat capacity, J/K.</summary>
    public required double Capacity { get; init; }

    /// <summary>Gets the start, °C.</summary>
    public required double StartC { get; init; }

    /// <summary>Gets the air outside, °C over s.</summary>
    public required TimeCurve Ambient { get; init; }

    /// <summary>Gets the packs.</summary>
    public PhaseStore[] Packs { get; init; } = [];

    /// <summary>Gets the power, W over s.</summary>
    public TimeCurve Heat { get; init; } = TimeCurve.Zero;

    /// <summary>Air that never changes.</summary>
    public static TimeCurve Still(double celsius) => new([0.0], [celsius]);

    /// <summary>Temperature after so many hours, °C.</summary>
    public double CelsiusAt(double hours) => Run(hours, []).EndCelsius;

    /// <summary>Liquid share after so many hours.</summary>
    public double LiquidAt(double hours)
    {
        double all = Packs.Sum(p => p.LatentJoules);
        double start = Packs.Sum(p => p.LatentJoules * p.StartLiquid);
        return (start + Run(hours, []).LatentJoules) / all;
    }

    /// <summary>Time on either side of a temperature.</summary>
    public LevelExposure Level(double celsius, double hours)
    {
        LevelExposure[] level = [new(celsius)];
        Run(hours, level);
        return level[0];
    }

    /// <summary>Runs it.</summary>
    public ParcelOutcome Run(double hours, Span<LevelExposure> levels) =>
        new ParcelModel(Capacity, Packs).Run(
            new ParcelDrive
            {
                AmbientSeconds = Ambient.Seconds,
                AmbientCelsius = Ambient.Values,
                HeatSeconds = Heat.Seconds,
                HeatWatts = Heat.Values,
                Conductance = Conductance,
                StartCelsius = StartC,
                EndSeconds = hours * SecondsPerHour,
            },
            new ParcelReport { Levels = levels }
        );
}
