using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Rules;

/// <summary>What the library says about the materials of a design.</summary>
internal static class Materials
{
    /// <summary>The materials of the floor, a mix by its parts, each once.</summary>
    public static IReadOnlyList<CatalogEntry> OfFloor(DesignNumbers n) =>
        [
            .. n
                .Layers.SelectMany(layer => layer.Components.Select(c => c.Material).Prepend(layer.Material!))
                .Where(material => material is not null)
                .DistinctBy(material => material.Key),
        ];

    /// <summary>True when a remark or a text of the entry has one of the words in it.</summary>
    public static bool Says(CatalogEntry entry, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (
                entry
                    .Values.Select(v => v.Text)
                    .Append(entry.Note)
                    .Any(text => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true)
            )
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// A clear plastic sheet, such as acrylic or polycarbonate: glass has about 70 GPa, the plastics of lids
    /// 2 to 4, so the middle parts them.
    /// </summary>
    public static bool IsPlastic(CatalogEntry? entry) =>
        entry is SheetEntry sheet && sheet.YoungsModulus?.Si is > 0 and <= 20e9;

    /// <summary>The text with a capital at its beginning; names in the library have none.</summary>
    public static string Sentence(string text) =>
        text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string Listed(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";
}
