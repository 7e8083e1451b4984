using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Light;
using Litterfall.Physics.Coupling;

namespace Litterfall.Forecasting.Climate;

/// <summary>What a forecast is asked for.</summary>
/// <param name="First">First day.</param>
/// <param name="Days">Days.</param>
/// <param name="Members">Members of the ensemble; 0 for none.</param>
/// <param name="Seed">Its seed.</param>
public sealed record ForecastWish(DateOnly First, int Days, int Members, int Seed)
{
    /// <summary>False to see what happens where nobody draws the water off.</summary>
    public bool IsDrained { get; init; } = true;
}

/// <summary>A box through time with the band of what nobody measures.</summary>
public sealed record DesignForecast
{
    /// <summary>What was asked.</summary>
    public required ForecastWish Wish { get; init; }

    /// <summary>The box.</summary>
    public required BoxRun Run { get; init; }

    /// <summary>Its run with nothing changed.</summary>
    public required SimulationResult Result { get; init; }

    /// <summary>Runs of the members that came out.</summary>
    public required ImmutableArray<SimulationResult> Members { get; init; }

    /// <summary>Light on the ground, hour by hour of a day.</summary>
    public required LightDay Light { get; init; }

    /// <summary>
    /// Whether single panes fog between the held air and a room of a temperature, °C; null where the air is
    /// computed.
    /// </summary>
    public Func<double, bool>? HeldFog { get; init; }

    /// <summary>Depths of the soil's values, m from the surface.</summary>
    public ImmutableArray<double> DepthMeters =>
        [
            .. Enumerable
                .Range(0, Run.Floor.Columns.Nodes)
                .Select(n => Run.Floor.Columns.DepthMeters[n * Run.Floor.Columns.Zones]),
        ];

    /// <summary>The forecast of a design; null where its floor has no water curve.</summary>
    /// <param name="design">The design.</param>
    /// <param name="wish">What is asked.</param>
    /// <param name="progress">Told the share done; may be called from any thread.</param>
    /// <param name="cancel">Cancels.</param>
    public static DesignForecast? Of(
        CheckedDesign design,
        ForecastWish wish,
        Action<double>? progress = null,
        CancellationToken cancel = default
    )
    {
        var setup = new BoxSetup(design) { Cancel = cancel };
        if (
            BoxRun.From(setup, wish.First, ClimateChange.None with { IsDrained = wish.IsDrained })
            is not { } run
        )
        {
            return null;
        }

        var all = wish.Members + 1.0;
        var result = run.Through(
            wish.Days,
            hours => progress?.Invoke(hours / (24.0 * wish.Days * all)),
            cancel
        );
        var done = 1;
        return new DesignForecast
        {
            Wish = wish,
            Run = run,
            Light = LightDay.Of(LightFigures.Of(design, setup.Box, setup.Layers, setup.Shares, cancel)),
            Result = result,
            HeldFog = design.Design.Headspace is null ? null : HeldClimate.Fogs(design, setup.Box),
            Members =
                wish.Members > 0
                    ? ClimateEnsemble.Run(
                        setup,
                        (wish.First, wish.Days),
                        [
                            .. ClimateEnsemble
                                .Members(wish.Members, wish.Seed)
                                .Select(m => m with { IsDrained = wish.IsDrained }),
                        ],
                        () => progress?.Invoke(Interlocked.Increment(ref done) / all),
                        cancel
                    )
                    : [],
        };
    }

    /// <summary>Least and most of a value over members and the run itself, hour by hour.</summary>
    public ImmutableArray<(double Low, double High)> Band(Func<SimulationHour, double> of) =>
        [
            .. Result.Hours.Select(
                (hour, i) =>
                {
                    var (low, high) = (of(hour), of(hour));
                    foreach (var member in Members)
                    {
                        var value = of(member.Hours[i]);
                        (low, high) = (Math.Min(low, value), Math.Max(high, value));
                    }

                    return (low, high);
                }
            ),
        ];
}
