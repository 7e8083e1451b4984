using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk.Form;

/// <summary>What the parts of a design are called.</summary>
public static class PartNames
{
    /// <summary>Names by key: by the entry of the library, with a number where there are several.</summary>
    /// <param name="document">The design.</param>
    /// <param name="parts">Its parts.</param>
    /// <param name="catalog">The library.</param>
    public static Dictionary<string, string> Of(
        DesignDocument document,
        ImmutableArray<PartForm> parts,
        TradeCatalog catalog
    )
    {
        var names = parts.ToDictionary(
            p => p.Key,
            p => p is { IsThere: true, IsList: true } ? One(document, p, catalog) : p.Name,
            StringComparer.Ordinal
        );
        var several = parts
            .Where(p => p is { IsThere: true, IsList: true })
            .GroupBy(p => (p.Group, names[p.Key]))
            .Where(g => g.Skip(1).Any());
        foreach (var group in several)
        {
            foreach (var (part, i) in group.Select((p, i) => (p, i)))
            {
                names[part.Key] = string.Create(CultureInfo.InvariantCulture, $"{group.Key.Item2} {i + 1}");
            }
        }

        return names;
    }

    private static string One(DesignDocument document, PartForm part, TradeCatalog catalog)
    {
        if (part.EntryKey is { } path)
        {
            return catalog.Find(DesignKeys.ValueAt(document.Design, path) ?? "") is { } entry
                ? EntryWords.Common(entry)
                : part.Name;
        }

        return part.Key.StartsWith("vents[", StringComparison.Ordinal)
                ? $"Vent, {DesignKeys.ValueAt(document.Design, part.Key + ".side") ?? "no side"}"
            : part.Key.StartsWith("passages[", StringComparison.Ordinal)
                ? $"Hole for {DesignKeys.ValueAt(document.Design, part.Key + ".for")}"
            : part.Key.StartsWith("shelves[", StringComparison.Ordinal) ? "Shelf inside"
            : part.Key.StartsWith("basins[", StringComparison.Ordinal) ? "Water basin"
            : part.Name;
    }
}
