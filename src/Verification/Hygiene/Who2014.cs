using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// World Health Organization 2014, Infection prevention and control of acute respiratory infections
/// in health care, table G.1 (read): household bleach of 5 % has 50 000 ppm, and one part in a
/// hundred 500 ppm. It counts hypochlorite as chlorine.
/// </summary>
public static class Who2014
{
    private static readonly CaseSource Source = new(
        "Hygiene",
        "WHO 2014, infection prevention, annex G",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Strengths of bleach.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Percent, double PartsPerMillion)[] rows = [(5.0, 50_000.0), (5.0 / 100.0, 500.0)];
        foreach (var (percent, partsPerMillion) in rows)
        {
            yield return Source.Case(
                $"strength of {percent} %",
                "mg/L",
                (partsPerMillion, 0.5),
                "Half a digit; parts per million by mass per volume.",
                () => Chlorine.SodiumHypochloriteMilligramsPerLiter(percent)
            );
        }
    }
}
