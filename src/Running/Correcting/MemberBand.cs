namespace Litterfall.Running.Correcting;

/// <summary>Bands of members.</summary>
internal static class MemberBand
{
    /// <summary>
    /// The number below which a share of what the members stand for lies: at rank share × (n + 1), so that
    /// the next value, drawn as the members were, falls below it with just that chance (Weibull 1939,
    /// recalled).
    /// </summary>
    /// <param name="sorted">Members, rising; infinity for never.</param>
    /// <param name="share">The share.</param>
    public static double At(double[] sorted, double share)
    {
        var rank = Math.Clamp((share * (sorted.Length + 1)) - 1, 0, sorted.Length - 1);
        var below = (int)Math.Floor(rank);
        var above = Math.Min(below + 1, sorted.Length - 1);
        var part = rank - below;
        return part <= 0 ? sorted[below]
            : double.IsInfinity(sorted[above]) ? sorted[above]
            : sorted[below] + (part * (sorted[above] - sorted[below]));
    }
}
