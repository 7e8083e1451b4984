namespace Litterfall.Forecasting.Coefficients;

/// <summary>How finely light is computed, and the house rule of shade: our own choices; SI.</summary>
public static class LightPolicy
{
    /// <summary>Cells of the map: as near 1 cm as these allow.</summary>
    public const double CellMeters = 0.01;

    /// <summary>Most cells along a side.</summary>
    public const int MostCells = 120;

    /// <summary>The same where many designs are compared.</summary>
    public const double CoarseMeters = 0.04;

    /// <summary>Least distance of a leaf to a wall and to the lid, m.</summary>
    public const double Free = 0.01;

    /// <summary>Rays for the heat of a lamp: 0.3 % of its flux.</summary>
    public const int Rays = 4096;

    /// <summary>
    /// House rule: share of the floor in shade, longest way to it, darkest to brightest place.
    /// </summary>
    public const double RefugeShare = 0.30;

    /// <summary>Longest way to shade, m: a few jumps of a small frog.</summary>
    public const double RefugeReach = 0.30;

    /// <summary>Darkest over brightest place.</summary>
    public const double RefugeDepth = 1.0 / 30.0;

    /// <summary>
    /// House rule: mean at the height of the animals above which missing refuge is a caution.
    /// </summary>
    public const double BrightFloor = 100.0;
}
