using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Physics.Parcel;

namespace Litterfall.Dispatch.Routes;

/// <summary>A parcel as it is packed: carton, contents and packs.</summary>
public sealed class PackedParcel
{
    private const double WaterJoulesPerKilogramKelvin = 4186;

    // Own working values: paraffins and salt hydrates 1.8 to 2.4 kJ/(kg K), ice and water between 2.1 and
    // 4.2, iron powder with water and carbon about 1.
    private const double PhaseChangeJoules = 2000;
    private const double IceJoules = 3000;
    private const double HeatPackJoules = 1000;
    private const double SecondsPerHour = 3600;
    private const double KilojouleJoules = 1000;

    /// <summary>Oxygen in air, m²/s, at 20 °C: Massman 1998, rounded.</summary>
    private const double OxygenDiffusivity = 2.0e-5;

    private readonly ParcelModel model;
    private readonly TimeCurve heat;

    /// <summary>Packs it.</summary>
    /// <param name="carton">The carton.</param>
    /// <param name="contentsKilogramsOfWater">Heat capacity of contents and filling, as kg of water.</param>
    /// <param name="packs">Packs with how many of each and how far they are melted.</param>
    public PackedParcel(
        Carton carton,
        double contentsKilogramsOfWater,
        IEnumerable<(TransportPack Pack, int Count, double LiquidShare)> packs
    )
    {
        ImmutableArray<(TransportPack Pack, int Count, double LiquidShare)> all = [.. packs];
        Conductance = new CartonShell(
            carton.LengthMeters,
            carton.WidthMeters,
            carton.HeightMeters,
            carton.WallMeters,
            carton.ConductivityWPerMeterKelvin,
            carton.FilmsSquareMeterKelvinPerW
        ).Conductance;
        var joules = contentsKilogramsOfWater * WaterJoulesPerKilogramKelvin;
        joules += all.Sum(p => p.Count * p.Pack.Kilograms * Joules(p.Pack.Kind));
        model = new(
            joules,
            [
                .. all.Where(p => p.Pack.Kind != PackKind.Heat)
                    .Select(p => new PhaseStore(
                        p.Count * p.Pack.Kilograms,
                        p.Pack.MeltCelsius,
                        KilojouleJoules * p.Pack.LatentKilojoulesPerKilogram,
                        p.LiquidShare
                    )),
            ]
        );
        heat = TimeCurve.Sum([
            .. all.Where(p => p.Pack is { Kind: PackKind.Heat, Hours: > 0, Watts: > 0 } && p.Count > 0)
                .Select(p => Heat(carton, p.Pack, p.Count)),
        ]);
    }

    /// <summary>Conductance of the carton, W/K.</summary>
    public double Conductance { get; }

    /// <summary>Sends it on a journey.</summary>
    /// <param name="journey">The journey.</param>
    /// <param name="report">What to write down on the way.</param>
    public ParcelOutcome Send(Journey journey, in ParcelReport report)
    {
        Span<double> watts = stackalloc double[heat.Values.Length];
        for (var i = 0; i < watts.Length; i++)
        {
            watts[i] = heat.Values[i] * journey.Heat;
        }

        return model.Run(
            new ParcelDrive
            {
                AmbientSeconds = journey.Seconds,
                AmbientCelsius = journey.Celsius,
                Conductance = Conductance * journey.Wall,
                StartCelsius = journey.StartCelsius,
                EndSeconds = journey.EndSeconds,
                HeatSeconds = heat.Seconds,
                HeatWatts = watts,
                LatentFactor = journey.Latent,
            },
            report
        );
    }

    /// <summary>Power of heat packs, as far as the air that comes in lets them rust.</summary>
    private static TimeCurve Heat(Carton carton, TransportPack pack, int count)
    {
        var iron = IronPack.FromPower(pack.Watts, pack.Hours * SecondsPerHour);
        var holes = new VentHoles(carton.VentHoles, carton.VentHoleMeters, carton.WallMeters);
        var exchange =
            holes.Conductance(OxygenDiffusivity)
            + ChamberAir.LeakPerSecond(carton.Liters / 1000, ChamberAir.TapedCartonChangesPerHour);
        var use = count * iron.OxygenPerSecond(RouteChoices.StartCelsius);
        var factor = count * ChamberAir.SupplyShare(use, exchange);
        var power = iron.Power(0);
        return power with { Values = [.. power.Values.Select(v => factor * v)] };
    }

    private static double Joules(PackKind kind) =>
        kind switch
        {
            PackKind.Ice => IceJoules,
            PackKind.Heat => HeatPackJoules,
            _ => PhaseChangeJoules,
        };
}
