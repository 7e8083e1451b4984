using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Lande, R. 1988, Oecologia 75:601 (abstract read: growth 0.96, standard error 0.03; rates recalled:
/// 0.24 daughters a year, 0.60 to fledging to 0.18 of dispersal to 0.71 of the second year, 0.942 of
/// adults). Years stand for our days.
/// </summary>
public static class Lande1988
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Lande 1988, northern spotted owl",
        Evidence.PrintedText,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>The growth of the population.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"growth of a year", "1", (0.96, 0.03), "Its standard error.", () =>
            new LifeTable(1.0, 2.0, 0.24, 0.60 * 0.18 * 0.71, 0.942).GrowthFactor()
        );
    }
}
