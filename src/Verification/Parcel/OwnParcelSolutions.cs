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
    private const int Solved = 40;
    private const int Counted = 1000;
    private const double StepSeconds = 1.0;
    private const double Level = 21.0;
    private const double MostMiss = 1e-9;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own second solution, drawn parcels by small steps of heat content",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    /// <summary>The cases.</summary>
    /// <returns>Largest differences between both solutions, and misses of the heat account.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Steps = "First order in steps of a second: time constants from 400 s.";
        var both = new Lazy<(double Celsius, double Joules, double Seconds)[]>(() =>
            [.. Enumerable.Range(0, Solved).Select(Difference)]
        );
        yield return Source.Case(
            $"{Solved} drawn parcels, largest difference at the end",
            "K",
            (0.0, 0.01),
            Steps,
            () => both.Value.Max(d => d.Celsius)
        );
        yield return Source.Case(
            $"{Solved} drawn parcels, largest difference of melting",
            "J",
            (0.0, 30.0),
            Steps,
            () => both.Value.Max(d => d.Joules)
        );
        yield return Source.Case(
            $"{Solved} drawn parcels, largest difference of the time above 21 °C",
            "s",
            (0.0, 30.0),
            "Some steps at each crossing, where the temperature is off by a hundredth of a kelvin.",
            () => both.Value.Max(d => d.Seconds)
        );
        yield return Source.Case(
            $"{Counted} drawn parcels, that miss wall + heat = stored + melted by 1e-9 of all heat moved",
            "1",
            (0.0, 0.0),
            "None may.",
            () => Enumerable.Range(0, Counted).Count(i => !(DrawnParcel.From(i).Miss() <= MostMiss))
        );
    }

    private static (double Celsius, double Joules, double Seconds) Difference(int seed)
    {
        var drawn = DrawnParcel.From(seed);
        var other = EnthalpyEuler.Run(drawn.Capacity, drawn.Packs, drawn.Drive, StepSeconds, Level);
        return (
            Math.Abs(drawn.Run([]).EndCelsius - other.Celsius),
            Math.Abs(drawn.MeltedJoules() - other.Latent),
            Math.Abs(drawn.SecondsAbove(Level) - other.SecondsAbove)
        );
    }
}
