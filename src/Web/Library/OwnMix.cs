using System.Globalization;
using System.Text.Json.Nodes;
using Litterfall.Domain.Catalog;

namespace Litterfall.Web.Library;

/// <summary>
/// A mix of the workshop's own, by loose parts; its water curve is estimated from the parts.
/// </summary>
public static class OwnMix
{
    private const int LongestName = 80;
    private const double MostParts = 1000;

    /// <summary>Adds the mix; its key, or one sentence on what is missing.</summary>
    /// <param name="library">The library.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="parts">Material and loose parts as typed.</param>
    public static async Task<(string? Key, string? Fault)> AddAsync(
        BenchLibrary library,
        string name,
        IReadOnlyList<(string Material, string Parts)> parts
    )
    {
        var plain = name.Trim();
        if (plain.Length is 0 or > LongestName)
        {
            return (null, $"Give the mix a name of 1 to {LongestName} characters.");
        }

        var list = new JsonArray();
        foreach (var (material, typed) in parts)
        {
            if (library.Catalog.Find(material) is not { } entry)
            {
                return (null, "Choose a material for each part.");
            }

            if (
                !double.TryParse(
                    typed.Replace(',', '.').Trim(),
                    NumberStyles.Float,
                    CultureInfo.InvariantCulture,
                    out var share
                ) || share is not (> 0 and <= MostParts)
            )
            {
                return (null, $"{EntryWords.Of(entry)}: give its loose parts as a number above 0, e.g. 2.");
            }

            list.Add(new JsonObject { ["material"] = entry.Key, ["parts"] = share });
        }

        if (list.Count == 0)
        {
            return (null, "Add at least one part.");
        }

        var key = KeyOf(library.Catalog, plain);
        var json = new JsonObject
        {
            ["key"] = key,
            ["kind"] = "recipe",
            ["name"] = plain,
            ["values"] = new JsonObject(),
            ["parts"] = list,
        };
        var fault = await OwnEntry.AddAsync(library, json.ToJsonString(), $"own mix {plain}");
        return fault is null ? (key, null) : (null, fault);
    }

    /// <summary>Letters and digits of the name; a number behind it where another entry has it.</summary>
    private static string KeyOf(TradeCatalog catalog, string name)
    {
        var word = string.Join(
            '-',
            new string([
                .. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' '),
            ]).Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
        var stem = word.Length > 0 ? $"own-{word}" : "own-mix";
        var key = stem;
        for (var i = 2; catalog.Find(key) is not null; i++)
        {
            key = string.Create(CultureInfo.InvariantCulture, $"{stem}-{i}");
        }

        return key;
    }
}
