using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Natural convection of enclosures (Alamdari and Hammond 1983, coefficients read in an engineering
/// reference),
/// mass by heat (Lewis), and long waves in a box, worked by a second program.
/// </summary>
public static class OwnConvection
{
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, convection and long waves",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // m, K, W/(m² K)
    private static readonly (double Height, double Over, double Coefficient)[] Walls =
    [
        (0.30, 1.0, 2.043),
        (0.30, 5.0, 3.085),
        (0.45, 0.5, 1.556),
        (0.45, 1.0, 1.858),
        (0.45, 2.0, 2.223),
        (0.45, 5.0, 2.825),
        (0.60, 2.0, 2.089),
        (0.90, 2.0, 1.929),
    ];

    // K, 4 A/P m; rising, lying W/(m² K)
    private static readonly (double Over, double Width, double Rising, double Lying)[] Floors =
    [
        (1.0, 0.30, 2.0030, 0.9712),
        (1.0, 0.45, 1.8768, 0.8258),
        (5.0, 0.45, 3.0127, 1.1394),
        (2.0, 0.60, 2.2235, 0.8455),
    ];

    // length, width, height m
    private static readonly (double Length, double Width, double Height)[] Boxes =
    [
        (0.45, 0.45, 0.45),
        (0.45, 0.45, 0.60),
        (0.60, 0.45, 0.45),
        (0.90, 0.45, 0.60),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Coefficients and conductances.</returns>
    public static IEnumerable<VerificationCase> Cases() => Natural().Concat(Waves());

    private static IEnumerable<VerificationCase> Natural()
    {
        const string Reason = "Printed digits; differences are rounded off at 0.02 K.";
        foreach (var (height, over, coefficient) in Walls)
        {
            yield return Source.Case(
                $"wall {height} m high, {over} K",
                "W/(m² K)",
                (coefficient, 1.5e-3),
                Reason,
                () => AlamdariHammond1983.Published.Vertical(-over, height)
            );
        }

        foreach (var (over, width, rising, lying) in Floors)
        {
            yield return Source.Case(
                $"level surface of 4 A/P {width} m, {over} K, air rising",
                "W/(m² K)",
                (rising, 5e-4),
                Reason,
                () => AlamdariHammond1983.Published.Unstable(over, width)
            );
            yield return Source.Case(
                $"level surface of 4 A/P {width} m, {over} K, air lying on it",
                "W/(m² K)",
                (lying, 5e-4),
                Reason,
                () => AlamdariHammond1983.Published.Stable(over, width)
            );
        }

        yield return Source.Case(
            $"mass transfer by 1 W/(m² K) of convection at 25 °C",
            "m/s",
            (9.29e-4, 1e-6),
            "Three digits.",
            () => LewisTransfer.MetersPerSecond(1.0)
        );
    }

    private static IEnumerable<VerificationCase> Waves()
    {
        foreach (
            var (celsius, black) in ((double, double)[])[(15, 5.427), (20, 5.714), (25, 6.011), (30, 6.319)]
        )
        {
            yield return Source.Case(
                $"4 σ T³ at {celsius} °C",
                "W/(m² K)",
                (black, 6e-4),
                "Four digits.",
                () => Carroll1980.Black(celsius)
            );
        }

        foreach (var (length, width, height) in Boxes)
        {
            double floor = length * width;
            yield return Source.Case(
                $"black floor of {length} × {width} × {height} m to all other faces, over 4 σ T³",
                "m²",
                (floor, 1e-9),
                "A flat face sees only the others: its view factors sum to one.",
                () => Floor(length, width, height)
            );
        }
    }

    /// <summary>Floor to the joined other faces through the radiant node.</summary>
    private static double Floor(double length, double width, double height)
    {
        ImmutableArray<double> areas =
        [
            length * width,
            length * width,
            length * height,
            length * height,
            width * height,
            width * height,
        ];
        var joined = Carroll1980.Conductances(areas, [1.0, 1.0, 1.0, 1.0, 1.0, 1.0], 20.0);
        double others = joined.Skip(1).Sum();
        return joined[0] * others / (joined[0] + others) / Carroll1980.Black(20.0);
    }
}
