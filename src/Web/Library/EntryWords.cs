using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Web.Library;

/// <summary>Names of the library as people say them: the common name first.</summary>
public static class EntryWords
{
    /// <summary>
    /// Common name with the scientific one behind it, such as "Nerve plant (Fittonia albivenis)".
    /// </summary>
    /// <param name="entry">An entry.</param>
    public static string Of(CatalogEntry entry)
    {
        var (common, science) = Names(entry);
        return science.Length > 0 ? $"{common} ({science})" : common;
    }

    /// <summary>The common name alone.</summary>
    /// <param name="entry">An entry.</param>
    public static string Common(CatalogEntry entry) => Names(entry).Common;

    /// <summary>The scientific name; empty where it has none or no other.</summary>
    /// <param name="entry">An entry.</param>
    public static string Science(CatalogEntry entry) => Names(entry).Science;

    /// <summary>True where every word that is looked for begins a word of its names.</summary>
    /// <param name="entry">An entry.</param>
    /// <param name="wanted">As typed.</param>
    public static bool Matches(CatalogEntry entry, string wanted)
    {
        var names = string.Join(' ', entry.Synonyms.Prepend(entry.Name));
        return wanted
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(w => names.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    private static (string Common, string Science) Names(CatalogEntry entry)
    {
        var open = entry.Name.IndexOf('(', StringComparison.Ordinal);
        var inside = open > 0 ? entry.Name[(open + 1)..].TrimEnd(')') : "";
        var isLiving = entry is AnimalEntry or CrewEntry or PlantEntry;
        if (isLiving && inside.Length > 0 && (entry is not PlantEntry || char.IsLower(inside[0])))
        {
            return (Upper(inside), entry.Name[..open].Trim());
        }

        return entry is PlantEntry && entry.Synonyms is [var common, ..]
            ? (Upper(common), entry.Name)
            : (Upper(entry.Name), "");
    }

    private static string Upper(string name) =>
        name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
