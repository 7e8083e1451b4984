using Litterfall.Running.Diagnosis.Finding;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Running.Diagnosis;

/// <summary>
/// The chances that fault-finding states come true as often as stated, over invented tanks (own generator).
/// Of n
/// independent events with chances p the number that comes true has mean Σp and variance Σp(1 − p).
/// </summary>
public sealed class StatedChanceTests
{
    [Fact]
    public void The_first_cause_comes_true_as_often_as_stated()
    {
        var invented = new InventedTanks(SampleFiles.Catalog, 11);
        var (sum, variance, hits, three) = (0.0, 0.0, 0, 0);
        var tanks = LongRun.Cases(30, 400);
        for (var i = 0; i < tanks; i++)
        {
            var (truth, asked) = invented.Next();
            var answer = FaultFinder.Find(asked, TestContext.Current.CancellationToken);
            var first = answer.Causes[0];
            sum += first.Probability;
            variance += first.Probability * (1 - first.Probability);
            hits += first.Row.Cause == truth ? 1 : 0;
            three += answer.Causes.Take(3).Any(c => c.Row.Cause == truth) ? 1 : 0;
        }

        // Four standard deviations: a fair finder fails once in 16,000 seeds.
        Assert.InRange(hits, sum - (4 * Math.Sqrt(variance)), sum + (4 * Math.Sqrt(variance)));
        Assert.True(three >= 0.65 * tanks, $"{three} of {tanks} among the first three");
    }
}
