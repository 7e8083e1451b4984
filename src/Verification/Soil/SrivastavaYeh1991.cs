using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Srivastava and Yeh (1991), Water Resour. Res. 27:753 (series recalled): wetting of an exponential soil,
/// 100 cm over a water table, flux 0.1 → 0.9 cm/h. With Z* = αZ, t* = α·Ks·t/(θs − θr), q in units of Ks:
/// K* = qB − (qB − 1)e^(−Z*) − 4(qB − qA)·e^((L* − Z*)/2 − t*/4)·Σ with the terms
/// sin(λZ*)·sin(λL*)·e^(−λ²t*)/(1 + L*/2 + 2λ²L*), tan(λL*) + 2λ = 0. The table was summed with
/// 30 digits; <see cref="HeadCentimeters"/> sums it again here.
/// The series itself was checked against a numerical inversion of the Laplace transform.
/// </summary>
public static class SrivastavaYeh1991
{
    internal const double Alpha = 0.1;
    internal const double Depth = 100.0;
    internal const double DryFlux = 0.1;
    internal const double WetFlux = 0.9;

    /// <summary>Flux before and after, cm/h.</summary>
    internal static readonly (double Before, double After) Wetting = (DryFlux, WetFlux);

    /// <summary>The same problem backward.</summary>
    internal static readonly (double Before, double After) Drying = (WetFlux, DryFlux);

    internal const double Drainable = 0.34;
    private const double Length = Alpha * Depth;
    private const int Terms = 200;
    private static readonly double[] Roots = FindRoots();
    private static readonly double[] Heights = [10.0, 25.0, 50.0, 75.0, 90.0, 100.0];
    private static readonly CaseSource Source = new(
        "Soil",
        "Srivastava and Yeh 1991",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // t h; h cm at the heights; flux to the water table, cm/h
    private static readonly (double Hours, double[] Heads, double Flux)[] Rows =
    [
        (5.0, [-8.4143, -17.4889, -21.5234, -12.8023, -6.0001, -3.0658], 0.100001),
        (10.0, [-8.3354, -16.4987, -14.1901, -6.1793, -3.1062, -1.9129], 0.103600),
        (20.0, [-6.0465, -8.8488, -5.4292, -2.4888, -1.6042, -1.2858], 0.266434),
        (30.0, [-3.2098, -4.1723, -2.6519, -1.5387, -1.2341, -1.1294], 0.551827),
        (50.0, [-1.0897, -1.4714, -1.2843, -1.1196, -1.0774, -1.0636], 0.833411),
    ];

    /// <summary>The soil: α 0.1 1/cm, Ks 1 cm/h, θ 0.06 to 0.4.</summary>
    internal static readonly Gardner Soil = new(
        0.06,
        0.06 + Drainable,
        Alpha / TestSoils.MetersPerCentimeter,
        TestSoils.CentimetersPerHour
    );

    /// <summary>Backward Euler errs by the square root of this: small enough to see the grid.</summary>
    internal static readonly StepControl Fine = new() { ErrorTolerance = 1e-6, ResidualTolerance = 1e-9 };

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Run = new(() =>
        Solve(400, Fine, Wetting, [5.0, 10.0, 20.0, 30.0, 50.0])
    );

    /// <summary>The cases.</summary>
    /// <returns>Heads and flux at five times, and the series summed here against the table.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        for (int row = 0; row < Rows.Length; row++)
        {
            int at = row;
            var (hours, heads, flux) = Rows[row];
            for (int i = 0; i < heads.Length; i++)
            {
                double height = Heights[i];
                yield return Source.Case(
                    $"head {height} cm above the water table after {hours} h",
                    "cm",
                    (heads[i], 0.1),
                    "400 elements; the air above the front is steep.",
                    () =>
                        TestSoils.HeadCentimeters(
                            Run.Value.Columns,
                            Run.Value.Result.Reports[at].State,
                            Depth - height
                        )
                );
                yield return Source.Case(
                    $"series summed in doubles {height} cm above the water table after {hours} h",
                    "cm",
                    (heads[i], 1e-4),
                    "Last digit of the table.",
                    () => HeadCentimeters(height, hours, Wetting)
                );
            }

            yield return Source.Case(
                $"water drained to the water table between {hours} h and a minute later",
                "cm/h",
                (flux, 0.004),
                "The flux lags by the time error of a step.",
                () => Flux(hours)
            );
        }
    }

    /// <summary>The series, cm of head, at a height above the water table in cm and a time in h.</summary>
    internal static double HeadCentimeters(
        double heightCentimeters,
        double hours,
        (double Before, double After) flux
    )
    {
        double z = Alpha * heightCentimeters;
        double t = Alpha * hours / Drainable;
        double sum = 0.0;
        foreach (double root in Roots)
        {
            sum +=
                Math.Sin(root * z)
                * Math.Sin(root * Length)
                * Math.Exp(-root * root * t)
                / (1.0 + (Length / 2.0) + (2.0 * root * root * Length));
        }

        double transient =
            4.0 * (flux.After - flux.Before) * Math.Exp(((Length - z) / 2.0) - (t / 4.0)) * sum;
        return Math.Log(flux.After - ((flux.After - 1.0) * Math.Exp(-z)) - transient) / Alpha;
    }

    /// <summary>A run of the same problem.</summary>
    internal static (SoilColumns Columns, ColumnResult Result) Solve(
        int elements,
        StepControl control,
        (double Before, double After) flux,
        params ReadOnlySpan<double> hours
    )
    {
        var columns = TestSoils.Uniform(Soil, Depth, elements);
        var start = columns.From(
            (_, depth) =>
            {
                double z = Alpha * (Depth - (depth / TestSoils.MetersPerCentimeter));
                return TestSoils.MetersPerCentimeter
                    / Alpha
                    * Math.Log(flux.Before + ((1.0 - flux.Before) * Math.Exp(-z)));
            }
        );
        var rain = new SurfaceForcing(flux.After * TestSoils.CentimetersPerHour, 0.0, 0.0);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.FixedHead(0.0)),
                start,
                TestSoils.Spans(rain, TestSoils.SecondsPerHour, hours),
                control
            )
        );
        return (columns, result);
    }

    private static double Flux(double hours)
    {
        var (_, result) = Solve(400, Fine, Wetting, [hours, hours + (1.0 / 60.0)]);
        double drained = result.Reports[1].Totals.OutMeters - result.Reports[0].Totals.OutMeters;
        return drained * 60.0 / TestSoils.MetersPerCentimeter;
    }

    /// <summary>One root of tan(λL) + 2λ = 0 lies in each ((n − ½)π, nπ)/L; by bisection.</summary>
    private static double[] FindRoots()
    {
        var roots = new double[Terms];
        for (int n = 1; n <= Terms; n++)
        {
            double low = (n - 0.5) * Math.PI / Length;
            double high = n * Math.PI / Length;
            double sign = Math.Sign(BalanceError(low));
            for (int i = 0; i < 60; i++)
            {
                double middle = 0.5 * (low + high);
                if (Math.Sign(BalanceError(middle)) == sign)
                {
                    low = middle;
                }
                else
                {
                    high = middle;
                }
            }

            roots[n - 1] = 0.5 * (low + high);
        }

        return roots;
    }

    private static double BalanceError(double root) =>
        Math.Sin(root * Length) + (2.0 * root * Math.Cos(root * Length));
}
