using Litterfall.Domain.Figures;

namespace Litterfall.Judging.Rules;

/// <summary>
/// A number or a range that sentences tell and nothing is computed with, and where it is from: advice of
/// practice, such as how often plants are trimmed.
/// </summary>
/// <param name="Least">The number, or the lower end of the range, in the unit.</param>
/// <param name="Most">The number again, or the upper end of the range, in the unit.</param>
/// <param name="Unit">The unit as it is said: "weeks".</param>
/// <param name="Origin">Where it is from.</param>
public sealed record PracticeNumber(double Least, double Most, string Unit, Citation Origin)
{
    /// <summary>One number.</summary>
    /// <param name="number">In the unit.</param>
    /// <param name="unit">The unit as it is said.</param>
    /// <param name="origin">Where it is from.</param>
    public static PracticeNumber One(double number, string unit, Citation origin) =>
        new(number, number, unit, origin);

    /// <summary>"4 to 8 weeks"; "10 minutes".</summary>
    public override string ToString() =>
        Least < Most
            ? FormattableString.Invariant($"{Least:0.###} to {Most:0.###} {Unit}").TrimEnd()
            : FormattableString.Invariant($"{Least:0.###} {Unit}").TrimEnd();
}
