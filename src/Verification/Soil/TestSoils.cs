using Litterfall.Physics.Soil;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Soils of the cases, written as in the sources: cm and h. Four are our own: living moss, a ready mix, a
/// coarse aggregate and a coarser one.
/// </summary>
internal static class TestSoils
{
    public const double MetersPerCentimeter = 0.01;
    public const double SecondsPerHour = 3600.0;
    public const double SecondsPerDay = 86400.0;
    public const double CentimetersPerHour = MetersPerCentimeter / SecondsPerHour;
    public const double CentimetersPerDay = MetersPerCentimeter / SecondsPerDay;

    public static readonly VanGenuchten Moss = PerHour((0.176, 0.679), 0.381, 1.781, 122.4, -2.1);
    public static readonly VanGenuchten Mix = PerHour((0.10, 0.80), 0.150, 1.5, 30.0);
    public static readonly VanGenuchten Aggregate = PerHour((0.02, 0.36), 1.116, 2.7, 3600.0);
    public static readonly VanGenuchten CoarseAggregate = PerHour((0.05, 0.45), 5.0, 3.0, 36000.0);

    /// <summary>The field soil of New Mexico in Celia, Bouloutas and Zarba (1990).</summary>
    public static readonly VanGenuchten NewMexico = PerHour(
        (0.102, 0.368),
        0.0335,
        2.0,
        0.00922 * SecondsPerHour
    );

    /// <summary>Sand, loam and clay of Vanderborght and others (2005).</summary>
    public static readonly VanGenuchten Sand = PerDay((0.045, 0.43), 0.15, 3.0, 1000.0);
    public static readonly VanGenuchten Loam = PerDay((0.08, 0.43), 0.04, 1.6, 50.0);
    public static readonly VanGenuchten Clay = PerDay((0.1, 0.4), 0.01, 1.1, 10.0);

    /// <summary>α in 1/cm, Ks in cm/h.</summary>
    public static VanGenuchten PerHour(
        (double R, double S) theta,
        double alphaPerCentimeter,
        double n,
        double ksCentimetersPerHour,
        double l = 0.5
    ) =>
        VanGenuchten.Single(
            theta,
            alphaPerCentimeter / MetersPerCentimeter,
            n,
            ksCentimetersPerHour * CentimetersPerHour,
            l
        );

    /// <summary>α in 1/cm, Ks in cm/d.</summary>
    public static VanGenuchten PerDay(
        (double R, double S) theta,
        double alphaPerCentimeter,
        double n,
        double ksCentimetersPerDay
    ) => PerHour(theta, alphaPerCentimeter, n, ksCentimetersPerDay / 24.0);

    /// <summary>Moss 0 to 2, mix 2 to 8, aggregate 8 to 13 cm deep, in even elements.</summary>
    /// <param name="perCentimeter">Elements to the centimeter.</param>
    /// <param name="coarse">The aggregate.</param>
    /// <param name="roots">Roots, or null.</param>
    public static SoilColumns Floor(int perCentimeter, HydraulicCurve coarse, RootZone? roots = null) =>
        new([
            new SoilProfile(
                [
                    ColumnLayer.Even(Moss, 0.02, 2 * perCentimeter),
                    ColumnLayer.Even(Mix, 0.06, 6 * perCentimeter),
                    ColumnLayer.Even(coarse, 0.05, 5 * perCentimeter),
                ],
                roots
            ),
        ]);

    /// <summary>One material over a depth in cm.</summary>
    public static SoilColumns Uniform(
        HydraulicCurve curve,
        double depthCentimeters,
        int elements,
        bool gravity = true
    ) =>
        new(
            [new SoilProfile([ColumnLayer.Even(curve, depthCentimeters * MetersPerCentimeter, elements)])],
            gravity
        );

    /// <summary>Head at a depth, cm, by straight line between nodes.</summary>
    public static double HeadCentimeters(SoilColumns columns, ColumnState state, double depthCentimeters)
    {
        double depth = depthCentimeters * MetersPerCentimeter;
        int node = 1;
        while (node < columns.Nodes - 1 && columns.DepthMeters[node] < depth)
        {
            node++;
        }

        double above = columns.DepthMeters[node - 1];
        double share = (depth - above) / (columns.DepthMeters[node] - above);
        var heads = state.HeadMeters;
        return (heads[node - 1] + (share * (heads[node] - heads[node - 1]))) / MetersPerCentimeter;
    }

    /// <summary>Depth at which the head first passes a value on the way down, cm, by straight line.</summary>
    public static double DepthCentimeters(SoilColumns columns, ColumnState state, double headCentimeters)
    {
        double head = headCentimeters * MetersPerCentimeter;
        for (int node = 1; node < columns.Nodes; node++)
        {
            double above = state.HeadMeters[node - 1];
            double below = state.HeadMeters[node];
            if ((above - head) * (below - head) <= 0.0 && above != below)
            {
                double top = columns.DepthMeters[node - 1];
                double share = (above - head) / (above - below);
                return (top + (share * (columns.DepthMeters[node] - top))) / MetersPerCentimeter;
            }
        }

        return double.NaN;
    }

    /// <summary>Spans without weather that end at hours and report.</summary>
    public static ForcingSpan[] Reports(double secondsPerUnit, params ReadOnlySpan<double> times) =>
        Spans(default, secondsPerUnit, times);

    /// <summary>Spans of one forcing that end at times and report.</summary>
    public static ForcingSpan[] Spans(
        SurfaceForcing forcing,
        double secondsPerUnit,
        params ReadOnlySpan<double> times
    )
    {
        var spans = new ForcingSpan[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            spans[i] = new ForcingSpan(times[i] * secondsPerUnit, forcing, Report: true);
        }

        return spans;
    }

    /// <summary>A run that must reach its end.</summary>
    /// <exception cref="InvalidOperationException">It did not.</exception>
    public static ColumnResult Finished(ColumnResult result) =>
        result.StoppedEarly is null
            ? result
            : throw new InvalidOperationException("the run stopped early: " + result.StoppedEarly);
}
