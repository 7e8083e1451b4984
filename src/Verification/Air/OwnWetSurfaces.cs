using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Surfaces that evaporate into still air, by bisection in a second program: a wet node without and with long
/// waves (ρ c_p 1192, Le^⅔ 0.908), leaves with stomata, the skin of a drying soil (van de Griend and Owe
/// 1994),
/// and water in pores (Kelvin). The open dish is a band over five published correlations that scatter by a
/// factor
/// of two.
/// </summary>
public static class OwnWetSurfaces
{
    private const double KilogramsPerSquareMeterDay = 86_400.0;
    private const string Correlations =
        "five published correlations give 1.2 to 3.0; those for still pools differ by up to a factor of four "
        + "(ASHRAE Transactions 1995, no. 3841, abstract read)";

    private const double HeatOfAir = 1192.0;
    private const double LongWaves = 0.0048; // m/s
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, surfaces that evaporate",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // °C, %, long waves W/(m² K); °C, mm/day
    private static readonly (double T, double Rh, double Waves, double Wet, double Loss)[] Nodes =
    [
        (25, 50, 0.0, 17.67602, 0.7717),
        (25, 80, 0.0, 22.32356, 0.2833),
        (21, 50, 0.0, 14.34987, 0.6985),
        (30, 50, 0.0, 21.84679, 0.8625),
        (25, 50, 5.7, 20.37107, 1.4181),
        (25, 80, 5.7, 23.22152, 0.5463),
        (21, 50, 5.7, 16.97825, 1.2281),
        (30, 50, 5.7, 24.57318, 1.6692),
    ];

    // °C, %, net radiation W/m², boundary layer m/s, stomata m/s; °C, mg/(m² s)
    private static readonly (
        double T,
        double Rh,
        double Net,
        double Layer,
        double Open,
        double Leaf,
        double Loss
    )[] Leaves =
    [
        (24, 80, 30, 0.003, 0.0020, 24.74629, 6.6058),
        (24, 80, 30, 0.003, 0.0004, 25.32767, 2.1851),
        (24, 80, 0, 0.003, 0.0003, 23.84974, 1.1419),
        (25, 60, 60, 0.003, 0.0020, 26.40487, 13.8344),
        (25, 60, 60, 0.010, 0.0020, 25.53733, 16.7936),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Wet nodes, leaves, a dish, dry skins and pores.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        WetNodes().Concat(LeafNodes()).Concat(Dish()).Concat(Ground());

    private static IEnumerable<VerificationCase> WetNodes()
    {
        foreach (var (t, percent, waves, wet, loss) in Nodes)
        {
            var end = new Lazy<HeadspaceSpan>(() =>
                Steady(
                    LumpedBox.UnderAir(LumpedBox.Light(waves, true), 3.0, 3.0 / (HeatOfAir * 0.908)),
                    t,
                    percent,
                    0.0,
                    WaterSupply.Free
                )
            );
            yield return Source.Case(
                $"wet node at {t} °C, {percent} %, long waves {waves} W/(m² K): temperature",
                "°C",
                (wet, 1e-4),
                "Five decimals of a bisection.",
                () => end.Value.State.Celsius[0]
            );
            yield return Source.Case(
                $"wet node at {t} °C, {percent} %, long waves {waves} W/(m² K): loss",
                "mm/day",
                (loss, 2e-4),
                "Four decimals.",
                () => KilogramsPerSquareMeterDay * Rate(end.Value)
            );
        }
    }

    private static IEnumerable<VerificationCase> LeafNodes()
    {
        foreach (var (t, percent, net, layer, open, leaf, loss) in Leaves)
        {
            var end = new Lazy<HeadspaceSpan>(() =>
                Steady(
                    LumpedBox.UnderAir(
                        LumpedBox.Light(2.0 * HeatOfAir * LongWaves, true),
                        2.0 * HeatOfAir * layer,
                        1.08 * layer
                    ),
                    t,
                    percent,
                    net,
                    new WaterSupply(1.0, 1.0 / open)
                )
            );
            yield return Source.Case(
                $"leaf at {t} °C, {percent} %, {net} W/m², layer {layer}, stomata {open} m/s: temperature",
                "°C",
                (leaf, 2e-3 + (6e-3 * Math.Abs(leaf - t))),
                "Two digits of the long waves' 0.0048 m/s: 0.6 % of all that carries heat.",
                () => end.Value.State.Celsius[0]
            );
            yield return Source.Case(
                $"leaf at {t} °C, {percent} %, {net} W/m², layer {layer}, stomata {open} m/s: loss",
                "mg/(m² s)",
                CaseSource.Within(2e-3, loss),
                "Its latent heat falls with 2361, ours with 2326 J/(kg K); long waves as above.",
                () => 1e6 * Rate(end.Value)
            );
        }
    }

    private static IEnumerable<VerificationCase> Dish()
    {
        const string Reason = "Published correlations give 1.2 to 3.0.";
        yield return Source.Case(
            $"open dish of 20 cm kept at 25 °C, air 25 °C, 50 %, wholly still",
            "mm/day",
            (2.1, 0.9),
            Reason,
            () => KilogramsPerSquareMeterDay * Rate(OfDish(LumpedBox.Endless, 0.0))
        ) with
        {
            Spread = Correlations,
        };
        yield return Source.Case(
            $"open dish of 20 cm free to cool, 25 °C, 50 %, a quiet room of 0.1 m/s",
            "mm/day",
            (2.1, 0.9),
            Reason,
            () => KilogramsPerSquareMeterDay * Rate(OfDish(1.0, 0.1))
        ) with
        {
            Spread = Correlations,
        };
    }

    private static HeadspaceSpan OfDish(double capacity, double speed)
    {
        var water = LumpedBox.Light(5.7, true) with { CapacityJoulesPerKelvin = [capacity] };
        var shape = new HeadspaceShape { DryAirKilograms = LumpedBox.Endless, Surfaces = [water] };
        var laws = new BoxLaws([new SurfacePlace(SurfaceRole.Floor, 0.2)], (_, _, _) => 0.0, 1.0, (1.0, 1.0));
        return Steady(new HeadspaceModel(shape, laws), 25.0, 50.0, 0.0, WaterSupply.Free, speed);
    }

    private static IEnumerable<VerificationCase> Ground()
    {
        foreach (
            var (theta, resistance) in ((double, double)[])
                [
                    (0.20, 10.0),
                    (0.15, 10.0),
                    (0.12, 29.122),
                    (0.10, 59.388),
                    (0.08, 121.108),
                    (0.05, 352.688),
                    (0.02, 1027.09),
                ]
        )
        {
            yield return Source.Case(
                $"skin of a sandy loam at {theta} m³/m³",
                "s/m",
                CaseSource.Within(1e-4, resistance),
                "The printed digits.",
                () => DryingSkin.Usual.Resistance(theta / 0.15)
            );
        }

        foreach (
            var (head, humidity) in ((double, double)[])
                [
                    (-1, 0.9999287),
                    (-10, 0.9992876),
                    (-100, 0.9928986),
                    (-150, 0.9893668),
                    (-1000, 0.9312126),
                    (-3000, 0.8075074),
                    (-10_000, 0.4903299),
                ]
        )
        {
            yield return Source.Case(
                $"humidity over water at {head} m, 25 °C",
                "1",
                (humidity, 2e-7),
                "Seven decimals.",
                () => GroundSurface.Humidity(head, 25.0)
            );
        }
    }

    /// <summary>Last second of a long run under air that does not change.</summary>
    private static HeadspaceSpan Steady(
        HeadspaceModel model,
        double celsius,
        double percent,
        double watts,
        WaterSupply supply,
        double speed = 0.0
    )
    {
        var start = model.Even(celsius, percent / 100.0);
        var drive = LumpedBox.Room(celsius, start.HumidityRatio) with
        {
            SurfaceWatts = [watts],
            Supply = [supply],
            StirMetersPerSecond = speed,
        };
        var settled = model.Advance(start, drive, 3600.0, HeadspaceControl.Even(1.0)).State;
        return model.Advance(settled, drive, settled.Seconds + 1.0, HeadspaceControl.Even(1.0));
    }

    private static double Rate(HeadspaceSpan span) => span.Totals.Surfaces[0].SuppliedKilograms;
}
