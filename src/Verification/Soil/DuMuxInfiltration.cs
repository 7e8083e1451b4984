using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Input files of the infiltration test of DuMux (read), after Vanderborght and others (2005): 100 cm/d on
/// soil at −400 cm until its surface is full, then a head of 0; the depth of the mean of θ before and θ at
/// the surface, which the files give as "determined with 1500 cells".
/// </summary>
public static class DuMuxInfiltration
{
    private static readonly CaseSource Source = new(
        "Soil",
        "DuMux, infiltration test, inputs",
        Evidence.PrintedTable,
        Provenance.Read
    );

    // days; θ at the surface; depth, cm
    private static readonly (
        string Name,
        VanGenuchten Soil,
        double Days,
        double Surface,
        double Depth
    )[] Rows =
    [
        ("sand", TestSoils.Sand, 0.1, 0.2824, 42.78),
        ("loam", TestSoils.Loam, 0.2, 0.43, 40.03),
        ("clay", TestSoils.Clay, 0.1, 0.40, 24.41),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Depths of the front in sand, loam and clay.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Rows.Select(row =>
            Source.Case(
                $"depth of the front in {row.Name} after {row.Days} d",
                "cm",
                CaseSource.Within(0.005, row.Depth),
                "An element of theirs is 0.13 cm, of ours 0.25 cm.",
                () => Depth(row.Soil, row.Days, row.Surface)
            )
        );

    private static double Depth(VanGenuchten soil, double days, double surface)
    {
        var columns = TestSoils.Uniform(soil, 200.0, 800);
        var rain = new SurfaceForcing(100.0 * TestSoils.CentimetersPerDay, 0.0, 0.0);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.Air(-1000.0, 0.0), new LowerBoundary.FreeDrainage()),
                columns.From((_, _) => -4.0),
                TestSoils.Spans(rain, TestSoils.SecondsPerDay, days),
                new StepControl { ErrorTolerance = 1e-4 }
            )
        );
        double front = 0.5 * (soil.WaterContent(-4.0) + surface);
        double head = soil.HeadMeters(front) / TestSoils.MetersPerCentimeter;
        return TestSoils.DepthCentimeters(columns, result.State, head);
    }
}
