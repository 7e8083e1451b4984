using Litterfall.Domain.Figures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>What an animal eats, by its own row of the library.</summary>
public static class Diet
{
    /// <summary>Energy of crickets as they are fed, J/g.</summary>
    private const double CricketJoulesPerGram = 5900;

    internal static readonly Citation Crickets = Cautions.Recalled(
        "whole crickets hold about 140 kcal in 100 g as fed (tables of feeder insects)"
    );

    /// <summary>The small fly of the library, whose cultures are dated.</summary>
    internal const string SmallFly = "drosophila-melanogaster";

    /// <summary>True where small flies are what it eats first.</summary>
    /// <param name="animal">The animal.</param>
    public static bool IsSmallFlies(BoxAnimal animal) =>
        animal.Entry.Food?.Text.StartsWith("small flies", StringComparison.Ordinal) is true;

    /// <summary>Grams of crickets that hold so much energy.</summary>
    internal static double CricketGrams(double joules) => joules / CricketJoulesPerGram;
}
