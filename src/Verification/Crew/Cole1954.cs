using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Cole, L. C. 1954, Quarterly Review of Biology 29:103 (recalled): for an annual, never to die gains
/// no more than one more young in its litter would. An immortal with B young a year grows as an
/// annual with B + 1.
/// </summary>
public static class Cole1954
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Cole 1954, annual and immortal",
        Evidence.PrintedText,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Growth of populations.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (int young in new[] { 1, 2, 5 })
        {
            yield return Source.Case(
                $"growth of an immortal with {young} young a year",
                "1",
                (young + 1.0, 1e-9),
                "Exact.",
                () => new LifeTable(0.5, 0.5, young, 1.0, 1.0).GrowthFactor()
            );
        }
    }
}
