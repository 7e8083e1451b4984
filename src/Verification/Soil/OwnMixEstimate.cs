using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked examples of mixes from their parts. By hand: 10 L coarse and 10 L fines with a void of 0.45
/// are 5.5 + 10 = 15.5 L, with filling 0.4 0.6·20 + 0.4·15.5 = 18.2 L; dry chunks of 0.4 leave
/// 0.6/1.2 = 0.5 of the conductivity; half ash 2·1550·2650/4200 = 1955.952 kg/m³. Bark holds 0.28893 and
/// peat 0.71834 at −10 cm, so half each over 0.91 of the loose volume 0.55344. The peat-free mix was fitted
/// beforehand by another program to the same parts: 0.5194, 0.3702 and 0.2763 at −3, −10 and −50 cm.
/// </summary>
public static class OwnMixEstimate
{
    /// <summary>The cases.</summary>
    /// <returns>Volumes, density, conductivity and water contents.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string half = "Half a digit of the number worked out by hand.";
        var law = new MixingLaw();
        yield return Case("ideal volume of 10 L + 10 L", "L", (15.5, 1e-9, half), () =>
            MixEstimate.IdealVolumeCubicMeters(0.01, 0.01, 0.45) * 1e3
        );
        yield return Case("mixed volume of 10 L + 10 L", "L", (18.2, 1e-9, half), () =>
            MixEstimate.MixedVolumeCubicMeters(0.01, 0.01, law) * 1e3
        );
        yield return Case("particle density at half ash", "kg/m3", (1955.952, 5e-4, half), () =>
            MixEstimate.ParticleDensityKilogramsPerCubicMeter(0.5)
        );
        yield return Case("bark and peat 1:1 at -10 cm", "1", (0.55344, 0.01, "The curve is fitted."), () =>
            Held(-0.1, law, Bark(5), Peat(5))
        );
        foreach (var one in PeatFree(law with { MixingYield = 0.88 }))
        {
            yield return one;
        }
    }

    private static IEnumerable<VerificationCase> PeatFree(MixingLaw law)
    {
        const string fitted = "Both curves are fitted; the other allowed pores of 0.867, this one 0.859.";
        MixPart[] parts = [Chips(2), Bark(2), Charcoal(1), Pith(1), Moss(1)];
        (double Head, double Water)[] row = [(-0.03, 0.5194), (-0.1, 0.3702), (-0.5, 0.2763)];
        return row.Select(r =>
            Case($"peat-free mix at {r.Head * 100:0} cm", "1", (r.Water, 0.005, fitted), () =>
                Held(r.Head, law, parts)
            )
        );
    }

    private static double Held(double headMeters, MixingLaw law, params MixPart[] parts) =>
        new VanGenuchten(MixEstimate.Of([.. parts], law)!.Parameters).WaterContent(headMeters);

    private static MixPart Bark(double v) =>
        Part((v, 200), (0.08, 0.79, 1500), new(0.727, 63, 2.8), new(0.273, 1.65, 1.217));

    private static MixPart Peat(double v) => Part((v, 90), (0.097, 0.94, 60), new PoreMode(1, 12.4, 1.538));

    private static MixPart Pith(double v) => Part((v, 80), (0.122, 0.94, 150), new PoreMode(1, 23.3, 1.486));

    private static MixPart Chips(double v) =>
        Part((v, 80), (0, 0.93, 1500), new(0.659, 126, 2.8), new(0.341, 93.3, 1.13));

    private static MixPart Charcoal(double v) =>
        Part((v, 220), (0.08, 0.78, 1500), new(0.667, 84, 2.8), new(0.333, 3.12, 1.175));

    private static MixPart Moss(double v) =>
        Part((v, 30), (0.032, 0.97, 1500), new(0.634, 70, 2.8), new(0.366, 19.71, 1.451));

    private static MixPart Part(
        (double Volume, double Density) bulk,
        (double Dry, double Full, double KsCmPerHour) water,
        params PoreMode[] modes
    ) =>
        new(
            bulk.Volume,
            new VanGenuchten(
                new VanGenuchtenParameters
                {
                    ThetaR = water.Dry,
                    ThetaS = water.Full,
                    Modes = [.. modes],
                    KsMetersPerSecond = water.KsCmPerHour * 0.01 / 3600,
                }
            ),
            bulk.Density,
            0
        );

    private static VerificationCase Case(
        string quantity,
        string unit,
        (double Value, double Tolerance, string Reason) expected,
        Func<double> got
    ) =>
        new()
        {
            Source = "own worked example: mixes from their parts",
            Subject = "Soil",
            Quantity = quantity,
            Unit = unit,
            Expected = expected.Value,
            Got = got,
            Tolerance = expected.Tolerance,
            Reason = expected.Reason,
            Evidence = quantity.StartsWith("peat-free", StringComparison.Ordinal)
                ? Evidence.OtherCode
                : Evidence.WorkedExample,
            Provenance = Provenance.Recalled,
        };
}
