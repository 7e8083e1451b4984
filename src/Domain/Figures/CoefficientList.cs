using System.Collections.Immutable;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Figures;

/// <summary>
/// Collects the coefficients of a model while its set is made, so that each named property is also in the
/// list; those that are changed come out with their other value.
/// </summary>
/// <param name="model">First word of the keys, e.g. "headspace".</param>
/// <param name="changes">What is changed.</param>
public sealed class CoefficientList(string model, CoefficientChanges changes)
{
    private readonly ImmutableArray<Coefficient>.Builder all = ImmutableArray.CreateBuilder<Coefficient>();

    /// <summary>All that were added, in their order.</summary>
    public ImmutableArray<Coefficient> All => all.ToImmutable();

    /// <summary>Figures of those that a model has taken.</summary>
    public IEnumerable<Figure> Used => all.Where(c => c.IsUsed).Select(c => c.Figure);

    /// <summary>Adds one.</summary>
    /// <param name="key">Its key after the model's.</param>
    /// <param name="name">Its name in words.</param>
    /// <param name="number">Its cited value, in its unit.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="range">Least and most it may be, in its unit; null where nothing is known.</param>
    /// <param name="origin">Where it stands.</param>
    /// <returns>The coefficient, changed where it is to be.</returns>
    public Coefficient Add(
        string key,
        string name,
        double number,
        Unit unit,
        (double Low, double High)? range,
        Citation origin
    )
    {
        var one = changes.Of(new Coefficient($"{model}.{key}", name, number, unit, range, origin));
        all.Add(one);
        return one;
    }
}
