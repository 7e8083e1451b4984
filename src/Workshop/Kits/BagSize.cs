using System.Collections.Immutable;

namespace Litterfall.Workshop.Kits;

/// <summary>
/// Bags that a kit is packed in. Sizes and the room for closing are our own choice: a bag that is filled to
/// its rim cannot be tied.
/// </summary>
/// <param name="Liters">Volume of one bag, liters.</param>
/// <param name="Count">How many.</param>
public readonly record struct BagSize(double Liters, int Count)
{
    private const double Fullest = 0.8;

    private static readonly ImmutableArray<double> Sizes = [1, 2, 3, 5, 8, 10, 15, 20, 30];

    /// <summary>The smallest bag that closes over an amount; several of the largest for more.</summary>
    /// <param name="liters">Liters that go in.</param>
    public static BagSize For(double liters)
    {
        var most = Sizes[^1] * Fullest;
        var count = Math.Max(1, (int)Math.Ceiling((liters / most) - 1e-9));
        var each = liters / count;
        return new(Sizes.First(s => s * Fullest >= each - 1e-9), count);
    }
}
