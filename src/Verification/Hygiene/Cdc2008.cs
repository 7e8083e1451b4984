using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// Centers for Disease Control and Prevention 2008, Guideline for disinfection and sterilization in
/// healthcare facilities (read as quoted): one part of bleach of 5.25 to 6.15 % in a hundred has 525
/// to 615 ppm. It counts hypochlorite as chlorine.
/// </summary>
public static class Cdc2008
{
    private static readonly CaseSource Source = new(
        "Hygiene",
        "CDC 2008, disinfection in healthcare facilities",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Strengths of bleach.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Percent, double PartsPerMillion)[] rows = [(5.25, 525.0), (6.15, 615.0)];
        foreach (var (percent, partsPerMillion) in rows)
        {
            yield return Source.Case(
                $"one part in a hundred of {percent} %",
                "mg/L",
                (partsPerMillion, 0.5),
                "Half a digit.",
                () => Chlorine.SodiumHypochloriteMilligramsPerLiter(percent / 100.0)
            );
        }
    }
}
