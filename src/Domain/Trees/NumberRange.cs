using System.Globalization;

namespace Litterfall.Domain.Trees;

/// <summary>What a number of a case may be, and how to say it.</summary>
/// <param name="Lowest">Lower end.</param>
/// <param name="Highest">Upper end.</param>
/// <param name="TakesLowest">True when the lower end itself is allowed.</param>
/// <param name="TakesHighest">True when the upper end itself is allowed.</param>
public readonly record struct NumberRange(
    double Lowest,
    double Highest,
    bool TakesLowest = true,
    bool TakesHighest = true
)
{
    /// <summary>From 0, taken in, to an upper end.</summary>
    public static NumberRange UpTo(double highest) => new(0.0, highest);

    /// <summary>Above 0 to an upper end.</summary>
    public static NumberRange Positive(double highest) => new(0.0, highest, TakesLowest: false);

    /// <summary>As far below 0 as above.</summary>
    public static NumberRange Within(double size) => new(-size, size);

    /// <summary>
    /// True when a number may be used; a minus before nothing is none where all are 0 or more.
    /// </summary>
    /// <param name="number">A number.</param>
    public bool Takes(double number) =>
        !(number == 0.0 && double.IsNegative(number) && Lowest >= 0.0)
        && (TakesLowest ? number >= Lowest : number > Lowest)
        && (TakesHighest ? number <= Highest : number < Highest);

    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(TakesLowest ? "from" : "above")} {Lowest} {(TakesHighest ? "to" : "and below")} {Highest}"
        );
}
