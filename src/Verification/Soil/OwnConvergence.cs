using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, order of convergence, on the problem of Srivastava and Yeh (1991): how fast the error
/// of the heads falls as elements or steps are halved, against the closed form or, where the other error is
/// in the way, from three grids, log₂(|u₁ − u₂|/|u₂ − u₃|). By construction: space 2, time 1.
/// </summary>
public static class OwnConvergence
{
    private const double Hours = 10.0;
    private static readonly double[] Heights = [10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0];
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, order of convergence",
        Evidence.OrderOfConvergence,
        Provenance.Recomputed
    );

    private const string NotYetLimit = "Orders are limits; grids as coarse as these come within a fifth.";

    /// <summary>The cases.</summary>
    /// <returns>Orders in space and time, and the error that is left.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"order in space, draining, 100 to 400 elements",
            "1",
            (2.0, 0.2),
            NotYetLimit,
            () => SpaceOrder(SrivastavaYeh1991.Drying, 100)
        );
        yield return Source.Case(
            $"order in space, wetting, 100 to 400 elements",
            "1",
            (2.0, 0.2),
            NotYetLimit,
            () => SpaceOrder(SrivastavaYeh1991.Wetting, 100)
        );
        yield return Source.Case(
            $"order in time, draining, steps of 0.1 to 0.025 h",
            "1",
            (1.0, 0.1),
            NotYetLimit,
            () => TimeOrder(SrivastavaYeh1991.Drying)
        );
        yield return Source.Case(
            $"order in time, wetting, steps of 0.1 to 0.025 h",
            "1",
            (1.0, 0.2),
            NotYetLimit,
            () => TimeOrder(SrivastavaYeh1991.Wetting)
        );
        yield return Source.Case(
            $"largest error of the heads, draining, 400 elements, step of 0.05 h continued to zero",
            "cm",
            (0.0, 0.005),
            "Closed form; an element of 1/4 cm over the length 1/α, squared, over 12, times 1/α.",
            () =>
                Largest(
                    Continued(400, SrivastavaYeh1991.Drying),
                    [
                        .. Heights.Select(z =>
                            SrivastavaYeh1991.HeadCentimeters(z, Hours, SrivastavaYeh1991.Drying)
                        ),
                    ]
                )
        );
    }

    private static double SpaceOrder((double Before, double After) flux, int elements)
    {
        var steps = Even(0.05);
        return Order(
            Heads(elements, steps, flux),
            Heads(2 * elements, steps, flux),
            Heads(4 * elements, steps, flux)
        );
    }

    private static double TimeOrder((double Before, double After) flux) =>
        Order(Heads(100, Even(0.1), flux), Heads(100, Even(0.05), flux), Heads(100, Even(0.025), flux));

    /// <summary>Twice the half step less the whole one: the first-order error in time is gone.</summary>
    private static double[] Continued(int elements, (double Before, double After) flux) =>
        [
            .. Heads(elements, Even(0.025), flux)
                .Zip(Heads(elements, Even(0.05), flux), (half, whole) => (2.0 * half) - whole),
        ];

    private static double Order(double[] first, double[] second, double[] third) =>
        Math.Log2(Largest(first, second) / Largest(second, third));

    private static double Largest(double[] a, double[] b) => a.Zip(b, (x, y) => Math.Abs(x - y)).Max();

    /// <summary>Steps of one length, whatever their error.</summary>
    private static StepControl Even(double stepHours) =>
        new()
        {
            ErrorTolerance = 1.0,
            ResidualTolerance = 1e-11,
            FirstStepSeconds = stepHours * TestSoils.SecondsPerHour,
            LongestStepSeconds = stepHours * TestSoils.SecondsPerHour,
        };

    private static double[] Heads(int elements, StepControl control, (double Before, double After) flux)
    {
        var (columns, result) = SrivastavaYeh1991.Solve(elements, control, flux, [Hours]);
        return
        [
            .. Heights.Select(z =>
                TestSoils.HeadCentimeters(columns, result.State, SrivastavaYeh1991.Depth - z)
            ),
        ];
    }
}
