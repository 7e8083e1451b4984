using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// Drawn parcels with up to four packs, jumps of the air and heat packs, solved a second time by
/// <see cref="EnthalpyEuler"/>; and the heat account of many more.
/// </summary>
public static class OwnParcelSolutions
{
    private const int Solved = 12;
    private const int Counted = 1000;
    private const double StepSeconds = 1.0;
    private const double Level = 21.0;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own second solution, drawn parcels by small steps of heat content",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    /// <summary>The cases.</summary>
    /// <returns>Differences between both solutions, and the largest miss of the heat account.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        for (int i = 0; i < Solved; i++)
        {
            var drawn = DrawnParcel.From(i);
            var other = new Lazy<(double Celsius, double Latent, double SecondsAbove)>(() =>
                EnthalpyEuler.Run(drawn.Capacity, drawn.Packs, drawn.Drive, StepSeconds, Level)
            );
            yield return Source.Case($"parcel {i}, end, less small steps", "K", (0.0, 0.01), Steps, () =>
                drawn.Run([]).EndCelsius - other.Value.Celsius
            );
            yield return Source.Case($"parcel {i}, melting, less small steps", "J", (0.0, 30.0), Steps, () =>
                drawn.MeltedJoules() - other.Value.Latent
            );
            yield return Source.Case(
                $"parcel {i}, time above 21 °C, less small steps",
                "s",
                (0.0, 30.0),
                "Some steps at each crossing, where the temperature is off by a hundredth of a kelvin.",
                () => drawn.SecondsAbove(Level) - other.Value.SecondsAbove
            );
        }

        yield return Source.Case(
            $"{Counted} drawn parcels, largest miss of wall + heat = stored + melted, of all heat moved",
            "1",
            (0.0, 1e-9),
            "Rounding of some hundred pieces; asked for.",
            () => Enumerable.Range(0, Counted).Max(i => DrawnParcel.From(i).Miss())
        );
    }

    private const string Steps = "First order in steps of a second: time constants from 400 s.";
}
