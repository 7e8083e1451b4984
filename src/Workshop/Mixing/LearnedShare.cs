namespace Litterfall.Workshop.Mixing;

/// <summary>
/// A share that every batch measures anew: a prior counts for so many batches, and the measured ones are
/// added to it (normal distribution with a known scatter and its conjugate prior; Gelman and others, Bayesian
/// Data Analysis, 2.5, recalled). Weight and scatter are our own choice.
/// </summary>
/// <param name="Mean">The share to compute with.</param>
/// <param name="Low">Lower end for the next batch, 90 %.</param>
/// <param name="High">Upper end for the next batch, 90 %.</param>
/// <param name="Count">Measured batches it rests on.</param>
public sealed record LearnedShare(double Mean, double Low, double High, int Count)
{
    /// <summary>The prior counts for so many batches: after two of one's own, half of it is left.</summary>
    private const double PriorBatches = 2.0;
    private const double Ninety = 1.6448536269514722;
    private const double UsualShrink = 0.12;
    private const double ShrinkScatter = 0.03;
    private const double WetScatterPoints = 3.0;

    /// <summary>Share of the loose volume lost in mixing; 0.12 before anything is measured.</summary>
    /// <param name="measured">Loose liters in and mixed liters out of past batches.</param>
    public static LearnedShare Shrink(IReadOnlyList<(double In, double Out)> measured) =>
        Learn(UsualShrink, ShrinkScatter, [.. measured.Select(m => 1.0 - (m.Out / m.In))]);

    /// <summary>Points by which mixes came out wetter than planned; 0 before anything is measured.</summary>
    /// <param name="measured">Planned and measured water of past batches, percent.</param>
    public static LearnedShare WetMiss(IReadOnlyList<(double Planned, double Found)> measured) =>
        Learn(0.0, WetScatterPoints, [.. measured.Select(m => m.Found - m.Planned)]);

    /// <summary>A share that is given and not learned.</summary>
    /// <param name="share">The share.</param>
    public static LearnedShare Given(double share) => new(share, share, share, 0);

    private static LearnedShare Learn(double prior, double scatter, double[] measured)
    {
        var weight = PriorBatches + measured.Length;
        var mean = ((PriorBatches * prior) + measured.Sum()) / weight;
        var half = Ninety * scatter * Math.Sqrt(1.0 + (1.0 / weight));
        return new LearnedShare(mean, mean - half, mean + half, measured.Length);
    }
}
