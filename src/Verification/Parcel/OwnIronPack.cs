using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>A heat pack of 50 g of iron over 40 hours, worked out by hand.</summary>
/// <remarks>
/// 824.2 kJ ÷ (2 · 55.845 g) = 7.379 kJ/g; 50 g: 369 kJ; ÷ 144,000 s = 2.562 W. 50/55.845 = 0.89534 mol of
/// iron take 3/4 as much oxygen, 0.6715 mol; at 20 °C a mole of gas is 24.055 L: 16.15 L, in 16.15/0.2095 =
/// 77.1 L of air, 1.93 L an hour. The curve: rise of 1 h, plateau, decline over the last 10 h: 369 kJ ÷
/// (40 − 0.5 − 5) h = 2.971 W.
/// </remarks>
public static class OwnIronPack
{
    private const double SecondsPerHour = 3600.0;
    private const double RoomC = 20.0;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own worked example, heat pack of iron",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    /// <summary>The cases.</summary>
    /// <returns>Joules, watts, liters.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Digits worked out.";
        var pack = new IronPack(0.050, 40.0 * SecondsPerHour);
        (string What, string Unit, double Value, double Tolerance, Func<double> Got)[] rows =
        [
            ("heat of iron", "kJ/g", 7.38, 6e-3, () => IronPack.JoulesPerKilogram / 1e6),
            ("heat of 50 g", "kJ", 369.0, 0.6, () => pack.Joules / 1e3),
            ("mean power of 50 g over 40 h", "W", 2.56, 6e-3, () => pack.MeanWatts),
            ("oxygen of 50 g", "mol", 0.6715, 6e-5, () => pack.OxygenMoles),
            ("oxygen of 50 g at 20 °C", "L", 16.2, 0.06, () => 1e3 * pack.OxygenVolume(RoomC)),
            ("air of 50 g at 20 °C", "L", 77.0, 0.6, () => 1e3 * pack.AirVolume(RoomC)),
            ("air of 50 g an hour at 20 °C", "L/h", 1.93, 6e-3, () => 1e3 * pack.AirVolume(RoomC) / 40.0),
            ("power of 50 g on its plateau", "W", 2.971, 6e-4, () => pack.PlateauWatts),
            ("heat of 50 g along its curve", "kJ", 369.0, 0.6, () => Heat(pack.Power(7200.0)) / 1e3),
            ("iron in a pack of 2.562 W over 40 h", "g", 50.0, 0.02, () =>
                1e3 * IronPack.FromPower(2.562, 40.0 * SecondsPerHour).Kilograms
            ),
        ];
        foreach (var (what, unit, value, tolerance, got) in rows)
        {
            yield return Source.Case($"{what}", unit, (value, tolerance), Reason, got);
        }

        foreach (var one in Supply(pack))
        {
            yield return one;
        }
    }

    /// <summary>Heat that a parcel without walls takes up along a curve.</summary>
    private static double Heat(TimeCurve power)
    {
        var closed = new PosedParcel
        {
            Conductance = 0.0,
            Capacity = 1000.0,
            StartC = 0.0,
            Ambient = PosedParcel.Still(20.0),
            Heat = power,
        };
        return closed.Run(100.0, []).StoredJoules;
    }

    // On its plateau 2.971 W · 1.5/824,200 J/mol · 24.055 L/mol = 1.3006e-4 L/s = 0.4682 L/h of oxygen. A
    // carton of 12 L that changes half of its air an hour gets 6 · 0.209476 = 1.2569 L/h and keeps
    // 20.9476 − 100 · 0.4682/6 = 13.14 %; one that changes a tenth of it gets 0.2514 L/h, 53.7 % of the need.
    private static IEnumerable<VerificationCase> Supply(IronPack pack)
    {
        const string Reason = "Digits worked out.";
        double use = pack.OxygenPerSecond(RoomC);
        yield return Source.Case(
            $"oxygen left in a carton of 12 L with half a change an hour",
            "%",
            (13.14, 0.006),
            Reason,
            () => 100.0 * ChamberAir.SteadyOxygen(use, ChamberAir.LeakPerSecond(0.012, 0.5), 0.209476)
        );
        yield return Source.Case(
            $"power allowed by a tenth of a change an hour",
            "%",
            (53.7, 0.06),
            Reason,
            () => 100.0 * ChamberAir.SupplyShare(use, ChamberAir.LeakPerSecond(0.012, 0.1))
        );
    }
}
