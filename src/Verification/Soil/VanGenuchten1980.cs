using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// van Genuchten (1980), Soil Sci. Soc. Am. J. 44:892, equations 3, 8 and 21 (recalled): retention, and
/// conductivity after Mualem (1976). Computed with 40 digits from the published formulas, the capacity by
/// differentiating θ numerically and the flux potential by adaptive quadrature.
/// </summary>
public static class VanGenuchten1980
{
    private const string Digits = "Last digit of the number written down.";
    private static readonly CaseSource Source = new(
        "Soil",
        "van Genuchten 1980",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // h cm, θ, C 1/cm, K cm/h
    private static readonly (string Name, VanGenuchten Soil, double[][] Rows)[] Soils =
    [
        (
            "moss",
            TestSoils.Moss,
            [
                [-1.0, 0.643903532, 0.0555652510, 45.0302385],
                [-10.0, 0.346233735, 0.0121713929, 1.71867400],
                [-100.0, 0.205280240, 0.000228329587, 0.0215294251],
            ]
        ),
        (
            "mix",
            TestSoils.Mix,
            [
                [-1.0, 0.786946930, 0.0188584294, 11.4211629],
                [-5.0, 0.692441666, 0.0233281422, 1.96815426],
                [-10.0, 0.594468855, 0.0160091599, 0.458570618],
                [-20.0, 0.481116141, 0.00799019062, 0.0718750279],
                [-1000.0, 0.157144394, 2.85566528e-5, 2.81986061e-7],
            ]
        ),
        (
            "aggregate",
            TestSoils.Aggregate,
            [
                [-0.5, 0.322022892, 0.176089635, 1525.44514],
                [-1.0, 0.218809197, 0.193844052, 240.099968],
                [-3.0, 0.0625666111, 0.0232315558, 0.696309954],
                [-100.0, 0.0201123179, 1.90939866e-6, 2.27284123e-10],
            ]
        ),
        (
            "soil of New Mexico",
            TestSoils.NewMexico,
            [
                [-50.0, 0.238354238, 0.00201049162, 1.31944252e-4 * TestSoils.SecondsPerHour],
                [-1000.0, 0.109936763, 7.92969731e-6, 3.15712919e-10 * TestSoils.SecondsPerHour],
            ]
        ),
    ];

    // Φ(−1) − Φ(−10) and Φ(−10) − Φ(−100), cm²/h
    private static readonly (string Name, VanGenuchten Soil, double Wet, double Dry)[] Potentials =
    [
        ("moss", TestSoils.Moss, 82.974334437, 16.880849422),
        ("mix", TestSoils.Mix, 24.991570657, 2.6189829631),
        ("aggregate", TestSoils.Aggregate, 65.420065778, 7.6839239076e-4),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Water content, capacity, conductivity and flux potential of four soils.</returns>
    public static IEnumerable<VerificationCase> Cases() => Curves().Concat(Fluxes());

    private static IEnumerable<VerificationCase> Curves()
    {
        foreach (var (name, soil, rows) in Soils)
        {
            foreach (double[] row in rows)
            {
                double head = row[0] * TestSoils.MetersPerCentimeter;
                yield return Source.Case(
                    $"θ of {name} at {row[0]} cm",
                    "1",
                    CaseSource.Within(1e-8, row[1]),
                    Digits,
                    () => soil.WaterContent(head)
                );
                yield return Source.Case(
                    $"dθ/dh of {name} at {row[0]} cm",
                    "1/cm",
                    CaseSource.Within(1e-8, row[2]),
                    Digits,
                    () => soil.CapacityPerMeter(head) * TestSoils.MetersPerCentimeter
                );
                yield return Source.Case(
                    $"K of {name} at {row[0]} cm",
                    "cm/h",
                    CaseSource.Within(1e-8, row[3]),
                    Digits,
                    () => soil.ConductivityMetersPerSecond(head) / TestSoils.CentimetersPerHour
                );
            }
        }
    }

    private static IEnumerable<VerificationCase> Fluxes()
    {
        const string table = "Tables are within 1e-5 of the curve.";
        foreach (var (name, soil, wet, dry) in Potentials)
        {
            yield return Source.Case(
                $"flux potential of {name} from −10 to −1 cm",
                "cm²/h",
                CaseSource.Within(1e-5, wet),
                table,
                () => Potential(soil, -1.0) - Potential(soil, -10.0)
            );
            yield return Source.Case(
                $"flux potential of {name} from −100 to −10 cm",
                "cm²/h",
                CaseSource.Within(1e-5, dry),
                table,
                () => Potential(soil, -10.0) - Potential(soil, -100.0)
            );
        }
    }

    private static double Potential(VanGenuchten soil, double headCentimeters)
    {
        CurveTable.Of(soil).At(headCentimeters * TestSoils.MetersPerCentimeter, out var point);
        return point.FluxPotential / TestSoils.CentimetersPerHour / TestSoils.MetersPerCentimeter;
    }
}
