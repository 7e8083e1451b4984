using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>A column of one mix for the tests of single parts.</summary>
internal static class Columns
{
    public const double Ks = 1e-4;
    public const double ThetaS = 0.8;
    public const double Hour = 3600.0;
    public const double Day = 24.0 * Hour;

    public static readonly VanGenuchten Mix = VanGenuchten.Single((0.1, ThetaS), 15.0, 1.5, Ks);

    /// <summary>Mix in elements of 5 mm.</summary>
    public static SoilColumns OfMix(double meters, RootZone? roots = null) =>
        new([new SoilProfile([ColumnLayer.Even(Mix, meters, (int)Math.Round(meters / 0.005))], roots)]);

    /// <summary>A run of one forcing that must reach its end.</summary>
    public static ColumnResult Run(
        SoilColumns columns,
        TopBoundary top,
        LowerBoundary foot,
        ColumnState start,
        double seconds,
        SurfaceForcing forcing = default
    )
    {
        var result = Richards.Run(
            columns,
            new ColumnBoundaries(top, foot),
            start,
            [new ForcingSpan(start.Seconds + seconds, forcing)],
            new StepControl()
        );
        Assert.Null(result.StoppedEarly);
        Assert.InRange(result.BalanceErrorMeters, 0.0, 1e-7);
        return result;
    }
}
