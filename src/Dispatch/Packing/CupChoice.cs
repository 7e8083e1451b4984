using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>The cup of one animal, or why there is none.</summary>
/// <param name="Cup">The cup; null where none will do.</param>
/// <param name="Holes">Pin holes to make in its lid.</param>
/// <param name="Refusal">Why none will do, in one sentence.</param>
/// <param name="Caution">What to do besides; empty for nothing.</param>
public sealed record CupChoice(TransportCup? Cup, int Holes, string Refusal, string Caution)
{
    /// <summary>Inside width over the length from snout to vent (air-transport principle, keeper practice).
    /// </summary>
    public const double WidthPerLength = 3;

    /// <summary>What curls up needs half its length (common practice, no source).</summary>
    private const double WidthPerCurledLength = 0.5;

    /// <summary>Smallest cup of an adult frog, L (common practice, no source).</summary>
    private const double AdultFrogLiters = 0.24;

    /// <summary>Largest cup of an adult frog, L: in a larger one it is thrown about.</summary>
    private const double LargestFrogLiters = 0.475;

    /// <summary>Smallest cup of anything, L; own choice.</summary>
    private const double SmallestLiters = 0.06;

    private const double Rounding = 1e-9;

    /// <summary>The smallest cup that an animal may travel in.</summary>
    /// <param name="animal">The animal.</param>
    /// <param name="rules">The shop's cups.</param>
    public static CupChoice Choose(Traveler animal, DispatchRules rules)
    {
        if (animal.LengthMeters is not { } length)
        {
            return Refused(
                $"No length is known for the {animal.CommonName}, so no cup can be chosen; enter its length."
            );
        }

        var width = NeededWidth(animal, length);
        var liters = animal is { IsFrog: true, IsAdult: true } ? AdultFrogLiters : SmallestLiters;
        var most = animal.IsFrog ? LargestFrogLiters : double.MaxValue;
        var cup = rules
            .Cups.Where(c => c.DiameterMeters >= width - Rounding && c.Liters >= liters - Rounding)
            .OrderBy(c => c.Liters > most + Rounding)
            .ThenBy(c => c.Liters)
            .ThenBy(c => c.DiameterMeters)
            .ThenBy(c => c.Key, StringComparer.Ordinal)
            .FirstOrDefault();
        if (cup is null)
        {
            return Refused(
                Invariant($"No cup in the list will do for a {animal.CommonName} of {length * 1000:0.#} mm: ")
                    + Invariant($"it needs one at least {width * 1000:0} mm wide inside and of ")
                    + Invariant($"{liters * 1000:0} mL or more.")
            );
        }

        return CupBreath.Holes(cup, animal.Kilograms) is not { } holes
            ? Refused($"Ten pin holes in the {cup.Name} let in too little air for a {animal.CommonName}.")
            : new(
                cup,
                holes,
                "",
                cup.Liters > most + Rounding
                    ? Invariant(
                        $"The cup of the {animal.CommonName} is larger than {most * 1000:0} mL because "
                    )
                        + "no smaller one is wide enough: fill it loosely with damp moss so that the animal "
                        + "is not thrown about."
                    : ""
            );
    }

    private static double NeededWidth(Traveler animal, double length) =>
        length * (animal.Taxon is "millipede" or "snake" ? WidthPerCurledLength : WidthPerLength);

    private static CupChoice Refused(string why) => new(null, 0, why, "");
}
