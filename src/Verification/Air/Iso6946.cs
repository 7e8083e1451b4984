using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// ISO 6946:2017, Building components, annex on surfaces (recalled): radiative coefficient of a black
/// body by mean temperature.
/// </summary>
public static class Iso6946
{
    private static readonly CaseSource Source = new(
        "Air",
        "ISO 6946:2017, black-body radiation of a surface",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Coefficients of radiation.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Coefficient)[] rows =
        [
            (-10.0, 4.1),
            (0.0, 4.6),
            (10.0, 5.1),
            (20.0, 5.7),
            (30.0, 6.3),
        ];
        foreach (var (celsius, coefficient) in rows)
        {
            yield return Source.Case(
                $"radiation at {celsius} °C",
                "W/(m² K)",
                (coefficient, 0.051),
                "Half a digit; 5.15 is printed as 5.1.",
                () => Carroll1980.Black(celsius)
            );
        }
    }
}
