using System.Collections.Immutable;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Figures;

/// <summary>
/// A number of a model that no design gives: a coefficient of a published equation, a usual property, or our
/// own choice. It is cited, and an input of each number that is made with it: a model takes its value by
/// <see cref="Use"/> or <see cref="UseSi"/>, which note that it did.
/// </summary>
/// <param name="key">Its key, e.g. "headspace.glassEmissivity".</param>
/// <param name="name">Its name in words.</param>
/// <param name="number">Its value in its unit.</param>
/// <param name="unit">Its unit.</param>
/// <param name="range">
/// Least and most it may plausibly be, in its unit; null where nothing is known of it. A range is an estimate
/// of ours unless the place in the source says it.
/// </param>
/// <param name="origin">Where it stands and how far it can be trusted.</param>
public sealed class Coefficient(
    string key,
    string name,
    double number,
    Unit unit,
    (double Low, double High)? range,
    Citation origin
)
{
    /// <summary>Its key.</summary>
    public string Key => key;

    /// <summary>Least and most it may plausibly be, in its unit; null where nothing is known.</summary>
    public (double Low, double High)? Range => range;

    /// <summary>Value in its unit, for telling it; nothing is computed with it.</summary>
    public double Number => number;

    /// <summary>Its unit.</summary>
    public Unit Unit => unit;

    /// <summary>It as an input of figures, with name, unit and citation.</summary>
    public Figure Figure { get; } =
        Figure.Given(
            name,
            unit.ToSiValue(number),
            unit,
            origin,
            origin.Provenance == Provenance.OwnChoice ? origin.Place : null
        );

    /// <summary>True once a model has taken it.</summary>
    public bool IsUsed { get; private set; }

    /// <summary>The value in its unit, to compute with: it is an input of the result from then on.</summary>
    public double Use()
    {
        IsUsed = true;
        return number;
    }

    /// <summary>
    /// The same in SI; divided where the unit is a whole part of the SI unit, so that 95 % is the number
    /// 0.95.
    /// </summary>
    public double UseSi()
    {
        var parts = Math.Round(1 / unit.ToSi);
        return unit.Offset == 0 && parts > 1 && Math.Abs((parts * unit.ToSi) - 1) < 1e-12
            ? (double)((decimal)Use() / (decimal)parts)
            : unit.ToSiValue(Use());
    }

    /// <summary>The same coefficient with another value.</summary>
    /// <param name="other">The value, in its unit.</param>
    public Coefficient At(double other) => new(key, name, other, unit, range, origin);
}

/// <summary>
/// Coefficients that are set to other values, to ask what they move; numbers in their units.
/// </summary>
public sealed class CoefficientChanges
{
    private readonly ImmutableDictionary<string, double> changed;

    private CoefficientChanges(ImmutableDictionary<string, double> changed) => this.changed = changed;

    /// <summary>All as cited.</summary>
    public static readonly CoefficientChanges None = new(
        ImmutableDictionary.Create<string, double>(StringComparer.Ordinal)
    );

    /// <summary>Keys of those that are changed.</summary>
    public IEnumerable<string> Keys => changed.Keys;

    /// <summary>The same with one more changed.</summary>
    /// <param name="key">Key of the coefficient.</param>
    /// <param name="number">Its value, in its unit.</param>
    public CoefficientChanges With(string key, double number) => new(changed.SetItem(key, number));

    /// <summary>The coefficient as it is to be used.</summary>
    /// <param name="cited">As cited.</param>
    public Coefficient Of(Coefficient cited) =>
        changed.TryGetValue(cited.Key, out var number) ? cited.At(number) : cited;
}
