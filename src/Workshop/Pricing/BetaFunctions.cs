namespace Litterfall.Workshop.Pricing;

/// <summary>
/// The incomplete beta function and its inverse. Continued fraction by the modified Lentz method; log gamma
/// by the Lanczos series (Numerical Recipes, 3rd ed., 6.1 and 6.4; recalled).
/// </summary>
internal static class BetaFunctions
{
    private const int MostTerms = 20_000;
    private const double Tiny = 1e-300;

    private static readonly double[] Lanczos =
    [
        76.18009172947146,
        -86.50532032941677,
        24.01409824083091,
        -1.231739572450155,
        0.1208650973866179e-2,
        -0.5395239384953e-5,
    ];

    /// <summary>I_x(a, b), the share of a beta distribution below x.</summary>
    public static double Below(double x, double a, double b)
    {
        if (x <= 0.0 || x >= 1.0)
        {
            return x <= 0.0 ? 0.0 : 1.0;
        }

        var front = Math.Exp(
            LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1.0 - x))
        );
        return x < (a + 1.0) / (a + b + 2.0)
            ? front * Fraction(x, a, b) / a
            : 1.0 - (front * Fraction(1.0 - x, b, a) / b);
    }

    /// <summary>The x below which a share of the distribution lies, by halving.</summary>
    public static double Quantile(double share, double a, double b)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 100; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Below(middle, a, b) < share ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    public static double LogGamma(double x)
    {
        var shifted = x + 5.5;
        shifted -= (x + 0.5) * Math.Log(shifted);
        var sum = 1.000000000190015;
        for (var i = 0; i < Lanczos.Length; i++)
        {
            sum += Lanczos[i] / (x + 1.0 + i);
        }

        return -shifted + Math.Log(2.5066282746310005 * sum / x);
    }

    private static double Fraction(double x, double a, double b)
    {
        var c = 1.0;
        var d = Safe(1.0 - ((a + b) * x / (a + 1.0)));
        d = 1.0 / d;
        var all = d;
        for (var m = 1; m <= MostTerms; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1.0) * (a + (2 * m)));
            d = 1.0 / Safe(1.0 + (even * d));
            c = Safe(1.0 + (even / c));
            all *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1.0));
            d = 1.0 / Safe(1.0 + (odd * d));
            c = Safe(1.0 + (odd / c));
            all *= d * c;
            if (Math.Abs((d * c) - 1.0) < 1e-15)
            {
                break;
            }
        }

        return all;
    }

    private static double Safe(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
