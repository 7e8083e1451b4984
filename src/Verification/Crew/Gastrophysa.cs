using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Development, reproduction and longevity of Gastrophysa viridula at constant temperatures (abstract
/// read in a catalog of the Charles University): 304.6 degree days over 7.1 °C; 28.2, 21.6, 16.1 and
/// 15.0 days at 18, 21.5, 25 and 28 °C.
/// </summary>
public static class Gastrophysa
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Gastrophysa viridula, development at four temperatures",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Times of development.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Days)[] rows = [(18.0, 28.2), (21.5, 21.6), (25.0, 16.1), (28.0, 15.0)];
        foreach (var (celsius, days) in rows)
        {
            yield return Source.Case(
                $"days to adult at {celsius} °C",
                "d",
                CaseSource.Within(0.06, days),
                "Beetles lie up to 6 % beside the line that was drawn through them.",
                () => DegreeDays.DevelopmentDays(304.6, 7.1, celsius)
            );
        }
    }
}
