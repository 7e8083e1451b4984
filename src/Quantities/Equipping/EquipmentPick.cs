using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Equipping;

/// <summary>Picks among the library's and the workshop's equipment of one part.</summary>
public static class EquipmentPick
{
    /// <summary>The smallest that reaches a need, else the largest; null when there is none.</summary>
    /// <param name="catalog">The library.</param>
    /// <param name="part">Such as "mist-pump".</param>
    /// <param name="need">What it must reach.</param>
    /// <param name="of">The value that counts.</param>
    public static EquipmentEntry? Smallest(
        TradeCatalog catalog,
        string part,
        Figure need,
        Func<EquipmentEntry, Figure?> of
    )
    {
        var all = Of(catalog, part, of);
        return all.FirstOrDefault(e => of(e)!.Si >= need.Si * (1 - 1e-9)) ?? all.LastOrDefault();
    }

    /// <summary>The largest that does not pass a limit; null when there is none.</summary>
    /// <param name="catalog">The library.</param>
    /// <param name="part">Such as "ground-fault".</param>
    /// <param name="limit">What it must not pass.</param>
    /// <param name="of">The value that counts.</param>
    public static EquipmentEntry? Largest(
        TradeCatalog catalog,
        string part,
        Figure limit,
        Func<EquipmentEntry, Figure?> of
    ) => Of(catalog, part, of).LastOrDefault(e => of(e)!.Si <= limit.Si * (1 + 1e-9));

    /// <summary>The one nearest to a value; null when there is none.</summary>
    /// <param name="catalog">The library.</param>
    /// <param name="parts">Such as "heat-mat"; the earlier part wins where two are as near.</param>
    /// <param name="wanted">The value wanted.</param>
    /// <param name="of">The value that counts.</param>
    public static EquipmentEntry? Nearest(
        TradeCatalog catalog,
        IReadOnlyList<string> parts,
        Figure wanted,
        Func<EquipmentEntry, Figure?> of
    ) => parts.SelectMany(p => Of(catalog, p, of)).MinBy(e => Math.Abs(of(e)!.Si - wanted.Si));

    /// <summary>A count of whole pieces.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="amount">What is needed.</param>
    /// <param name="each">What one piece gives, in the same unit.</param>
    public static Figure Whole(string name, Figure amount, Figure each) =>
        Figure
            .Computed(
                $"{amount.Name ?? amount.Equation} ÷ {each.Name}, rounded up",
                Math.Max(1, Math.Ceiling(amount.Si / each.Si - 1e-9)),
                Dimension.None,
                amount,
                each
            )
            .As(name, Unit.One);

    private static List<EquipmentEntry> Of(
        TradeCatalog catalog,
        string part,
        Func<EquipmentEntry, Figure?> of
    ) =>
        [
            .. catalog
                .Of<EquipmentEntry>()
                .Where(e => e.Part?.Text == part && of(e) is { Si: > 0 })
                .OrderBy(e => of(e)!.Si)
                .ThenByDescending(e => e.IsWorkshops)
                .ThenBy(e => e.Key, StringComparer.Ordinal),
        ];
}
