using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Demography of the California Spotted Owl in Northeastern California, 1990 to 1999 (abstract read): 0.291
/// female fledglings of an adult female, of subadults 0.065; 0.333 of juveniles and 0.827 of older birds
/// live through a year; a four-stage matrix gives a growth of 0.910 a year, standard error 0.025. Years
/// stand for our days; birds lay as adults in their third year, which leaves the few young of subadults out.
/// </summary>
public static class SpottedOwl2001
{
    /// <summary>The cases.</summary>
    /// <returns>The growth of the population.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        var source = new CaseSource(
            "Crew",
            "Demography of the California Spotted Owl, northeastern California",
            Evidence.PrintedText,
            Provenance.Read
        );
        yield return source.Case(
            $"growth of a year",
            "1",
            (0.910, 0.025),
            "Its standard error.",
            () => new LifeTable(1.0, 2.0, 0.291, 0.333 * 0.827 * 0.827, 0.827).GrowthFactor()
        );
    }
}
