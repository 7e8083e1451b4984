using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// CoolProp 7.2, examples of its documentation and of its Julia package (both read): humid air after ASHRAE
/// RP-1485, a real gas. Ours is ideal, which takes 0.4 % from the humidity.
/// </summary>
public static class CoolPropAir
{
    /// <summary>The cases.</summary>
    /// <returns>Enthalpies of air half saturated.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        var source = new CaseSource("Air", "CoolProp 7.2, examples", Evidence.PrintedText, Provenance.Read);
        foreach (var (celsius, enthalpy) in new[] { (25.0, 50_423.45), (20.0, 38_622.84) })
        {
            yield return source.Case(
                $"enthalpy at {celsius} °C, 50 %",
                "J/kg",
                CaseSource.Within(4e-3, enthalpy),
                "Half of it is heat of the water, of which a real gas holds up to 0.5 % more.",
                () =>
                    MoistAir.Enthalpy(celsius, MoistAir.HumidityRatio(celsius, 0.5, MoistAir.StandardPascals))
            );
        }
    }
}
