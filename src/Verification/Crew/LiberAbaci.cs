using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Leonardo of Pisa 1202, Liber abaci, chapter 12 (recalled): a pair that bears a pair each month
/// from its second month on, and never dies, is 377 pairs after a year and was 233 a month before.
/// </summary>
public static class LiberAbaci
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Leonardo of Pisa 1202, pairs of rabbits",
        Evidence.PrintedText,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>The growth of a month.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"growth of a month",
            "1",
            (377.0 / 233.0, 2e-5),
            "The ratio of two terms lies 1e-5 off the limit.",
            () => new LifeTable(1.0, 1.0, 1.0, 1.0, 1.0).GrowthFactor()
        );
    }
}
