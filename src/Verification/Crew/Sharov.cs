using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Sharov, A., Quantitative population ecology, lecture 8.2 (read): a line of development rate by
/// temperature, -0.0104 + 0.00142 T, is 704 degree days over 7.3 °C.
/// </summary>
public static class Sharov
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Sharov, Quantitative population ecology, lecture 8.2",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Times of development.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (double celsius in new[] { 15.0, 20.0, 25.0, 30.0 })
        {
            yield return Source.Case(
                $"days of development at {celsius} °C",
                "d",
                CaseSource.Within(5e-3, 1.0 / (-0.0104 + (0.00142 * celsius))),
                "The threshold is printed to a tenth of a degree.",
                () => DegreeDays.DevelopmentDays(704.0, 7.3, celsius)
            );
        }
    }
}
