namespace Litterfall.Physics.Soil;

/// <summary>A value and its slope with the head.</summary>
internal readonly record struct Term(double Value, double Slope);

/// <summary>
/// The surface of a column: a smooth pond, run-off above its largest depth, and evaporation that fades as
/// the surface reaches its driest head. Smooth, because a hard kink at h = 0 is what makes Newton's method
/// fail when water begins to stand.
/// </summary>
internal readonly struct SurfaceTerms
{
    private const double WidestKnee = 1e-3;
    private const double NarrowestKnee = 1e-4;
    private const double RunOffPerSecond = 1.0;
    private const double FadingShare = 0.05;
    private readonly double knee;
    private readonly double largestPond;
    private readonly double driest;

    public SurfaceTerms(TopBoundary top)
    {
        HasPond = top is TopBoundary.Air;
        FixedHead = top is TopBoundary.FixedHead fixedHead ? fixedHead.HeadMeters : null;
        if (top is TopBoundary.Air air)
        {
            largestPond = air.LargestPondMeters;
            driest = air.DriestHeadMeters;
            knee = Math.Clamp(0.5 * largestPond, NarrowestKnee, WidestKnee);
        }
    }

    public bool HasPond { get; }

    public double? FixedHead { get; }

    /// <summary>Water standing on the surface, m.</summary>
    public Term Pond(double head) =>
        !HasPond || head <= -knee ? default
        : head >= knee ? new(head, 1.0)
        : new((head + knee) * (head + knee) / (4.0 * knee), (head + knee) / (2.0 * knee));

    /// <summary>Run-off, m/s: fast enough that the pond stays within a knee of its largest depth.</summary>
    public Term RunOff(double head)
    {
        double excess = head - largestPond;
        return !HasPond || excess <= 0.0 ? default
            : excess >= 2.0 * knee ? new(RunOffPerSecond * (excess - knee), RunOffPerSecond)
            : new(RunOffPerSecond * excess * excess / (4.0 * knee), RunOffPerSecond * excess / (2.0 * knee));
    }

    /// <summary>Share of the evaporation demand that is met, 0 to 1.</summary>
    public Term Evaporation(double head)
    {
        double width = -driest * FadingShare;
        double above = head - driest;
        return !HasPond || above >= width ? new(HasPond ? 1.0 : 0.0, 0.0)
            : above <= 0.0 ? default
            : new(above / width, 1.0 / width);
    }
}
