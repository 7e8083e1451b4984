using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// When a pane of 5 mm (λ 1.0, EN 572-1, recalled) fogs: two resistances in series, and the saturation
/// pressures
/// at its inner face and in the air. Films of 0.13 m² K/W as in EN ISO 6946 (recalled), and of 8 and 12
/// W/(m² K)
/// for a draughty room.
/// </summary>
public static class OwnPaneFog
{
    private static readonly PaneFog Pane = new(0.005, 1.0, 0.13);
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, when a pane fogs",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // box, room °C; still: inner °C, fogs above %; draughty: the same
    private static readonly (
        double Box,
        double Room,
        double Still,
        double Fogs,
        double Windy,
        double Sooner
    )[] Rows =
    [
        (22, 21, 21.5094, 97.05, 21.4141, 96.48),
        (23, 21, 22.0189, 94.21, 21.8281, 93.12),
        (24, 21, 22.5283, 91.49, 22.2422, 89.91),
        (26, 21, 23.5472, 86.37, 23.0703, 83.92),
        (28, 21, 24.5661, 81.65, 23.8984, 78.45),
        (24, 18, 21.0567, 83.63, 20.4844, 80.73),
        (26, 18, 22.0755, 79.00, 21.3125, 75.40),
        (22, 16, 19.0567, 83.39, 18.4844, 80.46),
        (25, 15, 20.0944, 74.23, 19.1406, 69.96),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Inner faces, and the humidity at which they fog.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (box, room, still, fogs, windy, sooner) in Rows)
        {
            yield return Source.Case(
                $"box {box} °C, room {room} °C: inner face",
                "°C",
                (still, 2e-4),
                "0.13 m² K/W against 7.7 W/(m² K).",
                () => Pane.InnerCelsius(box, room)
            );
            yield return Source.Case(
                $"box {box} °C, room {room} °C: fogs above",
                "%",
                (fogs, 0.01),
                "Two decimals.",
                () => 100.0 * Pane.FogsAbove(box, room)
            );
            yield return Source.Case(
                $"box {box} °C, draughty room {room} °C: inner face",
                "°C",
                (windy, 1e-4),
                "Four decimals.",
                () => Inner(box, room)
            );
            yield return Source.Case(
                $"box {box} °C, draughty room {room} °C: fogs above",
                "%",
                (sooner, 0.01),
                "Two decimals.",
                () => 100.0 * MoistAir.SaturationPressure(Inner(box, room)) / MoistAir.SaturationPressure(box)
            );
        }

        foreach (var one in Room())
        {
            yield return one;
        }
    }

    /// <summary>A box of 25 °C and 90 % in a room of 18 °C.</summary>
    private static IEnumerable<VerificationCase> Room()
    {
        const string Reason = "The printed digits.";
        yield return Source.Case($"25 °C, 90 %: dew point", "°C", (23.2, 0.06), Reason, () =>
            MoistAir.DewPoint(0.9 * MoistAir.SaturationPressure(25.0))
        );
        yield return Source.Case($"box 25 °C, room 18 °C: inner face", "°C", (21.6, 0.06), Reason, () =>
            Pane.InnerCelsius(25.0, 18.0)
        );
        yield return Source.Case($"box 25 °C, room 18 °C: fogs above", "%", (81.0, 0.6), Reason, () =>
            100.0 * Pane.FogsAbove(25.0, 18.0)
        );
        yield return Source.Case($"box 25 °C, 90 %: fogs in rooms below", "°C", (21.4, 0.06), Reason, () =>
            Pane.FogsBelowRoom(25.0, 0.9)
        );
    }

    /// <summary>Inner face by the headspace itself, with films of 8 and 12 W/(m² K).</summary>
    private static double Inner(double box, double room)
    {
        double outward = 1.0 / (0.005 + (1.0 / 12.0));
        var model = LumpedBox.UnderAir(LumpedBox.Light(outward, false), 8.0, 0.0);
        return LumpedBox.Settle(model, model.Even(box, 0.5), LumpedBox.Room(room, 0.005), 10.0).State.Celsius[
            0
        ];
    }
}
