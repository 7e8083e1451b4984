namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>Layered columns on cells of 0.25 cm, against exact and converged solutions.</summary>
public sealed class LayeredColumnTests
{
    // A coarse gravel, own test material.
    private const string CoarseGravel = """
        { "thetaR": 0.05, "thetaS": 0.45, "alphaPerCm": 5, "n": 3, "ksCmPerHour": 36000, "l": 0.5 }
        """;

    private static readonly double[] AboveCm = [1, 2, 3, 4, 6, 9, 10, 11];

    private static string Layers(double gravelCm, int cells, bool coarse)
    {
        string[] layers =
        [
            Posed.Layer(2, 8, Posed.Moss),
            Posed.Layer(6, 24, Posed.Mix),
            Posed.Layer(gravelCm, cells, coarse ? CoarseGravel : Posed.Gravel),
        ];
        return $"[{string.Join(", ", layers)}]";
    }

    public static TheoryData<bool, double, double[]> Profiles =>
        new()
        {
            { false, 2.4, [-0.9973, -1.9138, -2.3610, -2.8818, -3.6137, -4.1525, -4.8111, -5.3882] },
            { false, 0.1, [-0.9999, -1.9959, -2.9417, -3.9136, -5.8152, -8.5014, -9.4536, -10.3962] },
            { false, -0.01, [-1.0000, -2.0004, -3.0063, -4.0092, -6.0195, -9.0545, -10.0598, -11.0663] },
            { true, 2.4, [-0.6947, -0.6989, -0.6989, -1.4757, -2.7083, -3.7749, -4.4764, -5.0960] },
            { true, 0.1, [-0.9487, -1.1055, -1.1060, -2.0937, -4.0444, -6.8602, -7.8269, -8.7855] },
            { true, 0.01, [-0.9939, -1.5174, -1.5381, -2.5366, -4.5306, -7.5085, -8.5046, -9.4998] },
        };

    /// <summary>
    /// Steady flow through moss, mix and gravel to a water table: the exact dh/dZ = q/K(h) − 1 upward from
    /// it, integrated to 1e-11 (own worked example); 0.01 cm is asked.
    /// </summary>
    [Theory]
    [MemberData(nameof(Profiles))]
    public void Steady_heads_of_a_layered_column_are_exact(bool coarse, double down, double[] expected)
    {
        string layers = Layers(3, 12, coarse);
        var end = Posed.Solve(
            Posed.Case(
                layers,
                """{ "waterTableDepthCm": 11 }""",
                FormattableString.Invariant($$"""{ "kind": "flux", "cmPerHour": {{down}} }"""),
                """{ "kind": "head", "headCm": 0 }""",
                "\"hours\": 5000, \"reportHours\": [5000]"
            )
        )["times"]![0]!;
        Assert.All(AboveCm.Zip(expected), p => Assert.Equal(p.Second, end.At("headCm", 11 - p.First), 0.01));
    }

    /// <summary>
    /// Dry moss and mix over wet gravel, wetted by six storms; the outlet stands at 2 cm. Drained by 48 and
    /// 72 h 0.9281 and 2.0341 cm over gravel, 0.716 and 1.822 cm over coarse gravel: own worked example on
    /// elements of 0.016 cm, good to 0.002 cm. The start jumps from −300 to −3 cm at the gravel.
    /// </summary>
    [Theory]
    [InlineData(false, 0.9281, 2.0341)]
    [InlineData(true, 0.716, 1.822)]
    public void A_dry_floor_over_wet_gravel_drains_what_its_storms_leave(
        bool coarse,
        double by48,
        double by72
    )
    {
        string layers = Layers(5, 20, coarse);
        var heads = Enumerable
            .Repeat(-300.0, 32)
            .Concat(Enumerable.Range(0, 20).Select(i => (0.25 * i) - 2.875));
        string listed = string.Join(", ", heads.Select(h => FormattableString.Invariant($"{h}")));
        var times = Posed.Solve(
            Posed.Case(
                layers,
                $$"""{ "headsCm": [{{listed}}] }""",
                """
                { "kind": "atmosphere", "pondCm": 100,
                  "rainCmPerHour": [[0, 6], [0.25, 0], [12, 6], [12.25, 0], [24, 2.4], [24.25, 0],
                                    [36, 2.4], [36.25, 0], [48, 2.4], [48.25, 0], [60, 2.4], [60.25, 0]],
                  "evaporationCmPerHour": [[0, 0], [0.25, 0.004], [12, 0], [12.25, 0.004], [24, 0],
                                           [24.25, 0.004], [36, 0], [36.25, 0.004], [48, 0],
                                           [48.25, 0.004], [60, 0], [60.25, 0.004]] }
                """,
                """{ "kind": "zeroFlux", "overflow": { "headCm": 2, "perHour": 1000 } }""",
                "\"hours\": 72, \"reportHours\": [48, 72]"
            )
        )["times"]!;
        Assert.Equal(by48, times[0]!.Number("outCm"), 0.002);
        Assert.Equal(by72, times[1]!.Number("outCm"), 0.002);
    }

    /// <summary>Even grains have large n; with (α·|h|)ⁿ near the largest double it still runs.</summary>
    [Fact]
    public void The_steepest_soil_that_is_taken_runs_dry()
    {
        const string even =
            """{ "thetaR": 0.1, "thetaS": 0.4, "alphaPerCm": 1000, "n": 30, "ksCmPerHour": 30 }""";
        var end = Posed.Solve(
            Posed.Case(
                $"[{Posed.Layer(10, 10, even)}]",
                """{ "headCm": -1e6 }""",
                """{ "kind": "atmosphere" }""",
                """{ "kind": "zeroFlux" }"""
            )
        )["times"]![0]!;
        Assert.Equal(0.1, end.Numbers("waterContent")[0], 1e-6);
    }
}
