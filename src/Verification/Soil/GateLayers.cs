using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Question of an entrance examination in civil engineering on a deposit of sand over silt over clay
/// (read with its solution): the silt conducts a tenth of the sand and ten times the clay, and is
/// twice as thick as the sand and two thirds of the clay; upright the whole conducts 0.187 of the
/// silt.
/// </summary>
public static class GateLayers
{
    private static readonly CaseSource Source = new(
        "Soil",
        "GATE examination in civil engineering, deposit of three layers",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>A conductivity.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"conductivity upright over that of the silt",
            "1",
            (0.187, 5e-4),
            "Half a digit.",
            () => Flux() / SiltMetersPerSecond
        );
    }

    private const double SiltMetersPerSecond = 1e-6;
    private const double CentimeterPerDay = TestSoils.MetersPerCentimeter / TestSoils.SecondsPerDay;

    /// <summary>Water that runs down through the full layers, as high a head on them as under them.</summary>
    private static double Flux()
    {
        var columns = new SoilColumns([
            new SoilProfile([
                ColumnLayer.Even(Of(10.0), 0.05, 5),
                ColumnLayer.Even(Of(1.0), 0.10, 10),
                ColumnLayer.Even(Of(0.1), 0.15, 15),
            ]),
        ]);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedHead(0.5), new LowerBoundary.FixedHead(0.5)),
                columns.From((_, _) => 0.5),
                TestSoils.Reports(TestSoils.SecondsPerDay, 1.0, 2.0),
                new StepControl()
            )
        );
        return (result.Reports[1].Totals.InMeters - result.Reports[0].Totals.InMeters)
            / TestSoils.SecondsPerDay;
    }

    private static VanGenuchten Of(double times) =>
        TestSoils.PerDay((0.08, 0.43), 0.04, 1.6, times * SiltMetersPerSecond / CentimeterPerDay);
}
