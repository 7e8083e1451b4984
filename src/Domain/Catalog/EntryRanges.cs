using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trees;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog;

/// <summary>
/// Between what a value of an own entry lies. Outside of it a slip of the pen (mL for L, mm for cm) is far
/// likelier than such a thing, and sums would divide by next to nothing. All are own choices: a hundred times
/// around what the library knows of the same value, and for shares, exponents and packs what they can be.
/// </summary>
internal static class EntryRanges
{
    private const double Around = 100;
    private const double MostSettling = 89;
    private static readonly NumberRange Share = NumberRange.UpTo(1);
    private static readonly NumberRange Exponent = new(1.01, 20);
    private static readonly NumberRange Celsius = new(-60, 100);

    /// <summary>Ranges of values, each in a unit of its own.</summary>
    private static readonly ImmutableDictionary<string, (NumberRange Range, string Unit)> ByName =
        new Dictionary<string, (NumberRange, string)>(StringComparer.Ordinal)
        {
            ["n1"] = (Exponent, "1"),
            ["n2"] = (Exponent, "1"),
            ["l"] = (NumberRange.Within(10), "1"),
            ["alpha1"] = (new(1e-3, 20), "1/cm"),
            ["alpha2"] = (new(1e-4, 20), "1/cm"),
            ["ks"] = (new(1e-4, 1e5), "cm/h"),
            ["thetaR"] = (Share, "1"),
            ["thetaS"] = (NumberRange.Positive(1), "1"),
            ["weight1"] = (NumberRange.Positive(1), "1"),
            ["waterAt10cm"] = (Share, "1"),
            ["reflectance"] = (Share, "1"),
            ["poisson"] = (new(0, 0.5, TakesHighest: false), "1"),
            ["refractiveIndex"] = (new(1, 3), "1"),
            ["hatch"] = (Share, "1"),
            ["birthSurvival"] = (Share, "1"),
            ["survival"] = (Share, "1"),
            ["femaleFraction"] = (Share, "1"),
            ["litres"] = (new(0.01, 10_000), "L"),
            ["kilograms"] = (new(0.001, 10_000), "kg"),
            ["pieces"] = (new(1, 1e6), "1"),
        }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>What is wrong with a number, or null.</summary>
    /// <param name="own">An own value with a number and its unit.</param>
    /// <param name="usual">The values of that name that the library has, each with number and unit.</param>
    public static (string Message, string Expected)? Fault(
        CatalogValue own,
        IReadOnlyCollection<CatalogValue> usual
    )
    {
        var unit = own.Unit!;
        if (usual.FirstOrDefault() is { Unit: { } known } && known.Dimension != unit.Dimension)
        {
            return ($"{own.Name} is not measured in {unit.Symbol}", $"a unit such as {known.Symbol}");
        }

        var outside = new[] { own.Number, own.Low, own.High }
            .OfType<double>()
            .Select(number => Outside(own, number, usual))
            .FirstOrDefault(expected => expected is not null);
        return outside is null ? null : ($"{own.Name} is out of its range", outside);
    }

    /// <summary>The range a number lies outside of, in words; null where it lies inside.</summary>
    private static string? Outside(CatalogValue own, double number, IReadOnlyCollection<CatalogValue> usual)
    {
        var unit = own.Unit!;
        if (ByName.TryGetValue(own.Name, out var named) && Unit.Find(named.Unit) is { } its)
        {
            var there = Math.Round(its.FromSi(unit.ToSiValue(number)), 12);
            return its.Dimension == unit.Dimension && !named.Range.Takes(there)
                ? $"a number {named.Range} {(named.Unit == "1" ? "" : named.Unit)}".TrimEnd()
                : null;
        }

        if (unit.Offset != 0)
        {
            return Celsius.Takes(unit.ToSiValue(number) - Unit.Celsius.ToSiValue(0))
                ? null
                : $"a temperature {Celsius} °C";
        }

        if (unit.Symbol == "%")
        {
            var most = own.Name is "settling" or "interparticleVoids" ? MostSettling : 100;
            return number >= 0 && number <= most ? null : $"a share {NumberRange.UpTo(most)} %";
        }

        var sizes = usual
            .Select(v => Math.Abs(v.Unit!.ToSiValue(v.Number!.Value)))
            .Where(size => size > 0)
            .ToList();
        if (number < 0 && !usual.Any(v => v.Number < 0))
        {
            return "0 or more";
        }

        if (sizes.Count == 0 || (number == 0 && usual.Any(v => v.Number == 0)))
        {
            return null;
        }

        var (least, largest) = (sizes.Min() / Around, sizes.Max() * Around);
        var size = Math.Abs(unit.ToSiValue(number));
        return size >= least * (1 - 1e-9) && size <= largest * (1 + 1e-9)
            ? null
            : FormattableString.Invariant(
                $"{unit.FromSi(least):G4} to {unit.FromSi(largest):G4} {unit.Symbol}"
            );
    }
}
