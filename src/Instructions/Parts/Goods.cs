using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;

namespace Litterfall.Instructions.Parts;

/// <summary>What a material asks of the hands that use it.</summary>
public static class Goods
{
    /// <summary>Said beside every dusty material.</summary>
    public const string DustCaution = "Dust can harm the lungs: wet it first and wear an FFP2 or N95 mask.";

    /// <summary>Said beside sphagnum.</summary>
    public const string MossCaution = "Wear gloves: sphagnum can carry Sporothrix.";

    private static readonly ImmutableArray<string> Dusty =
    [
        "charcoal",
        "clay-powder",
        "coir",
        "diatomite",
        "expanded-clay",
        "peat",
        "perlite",
        "pumice",
        "sand",
        "vermiculite",
    ];

    /// <summary>True for goods whose dry dust harms the lungs.</summary>
    public static bool IsDusty(CatalogEntry entry) =>
        Dusty.Any(word => entry.Key.StartsWith(word, StringComparison.Ordinal));

    /// <summary>True for peat and dried sphagnum, which repel water while dry.</summary>
    public static bool RepelsWater(CatalogEntry entry) =>
        entry.Key.StartsWith("peat", StringComparison.Ordinal)
        || entry.Key is "long-fibre-sphagnum" or "chopped-sphagnum";

    /// <summary>True for sphagnum, living or dried.</summary>
    public static bool IsSphagnum(CatalogEntry entry) =>
        entry.Key.Contains("sphagnum", StringComparison.Ordinal);

    /// <summary>Bulk materials of the floor, mixes by their components, each once.</summary>
    public static ImmutableArray<CatalogEntry> Of(DesignNumbers numbers) =>
        [
            .. numbers
                .Layers.SelectMany(layer =>
                    layer.Components.Length > 0 ? layer.Components.Select(c => c.Material)
                    : layer.Material is { } whole ? [whole]
                    : []
                )
                .DistinctBy(entry => entry.Key),
        ];

    /// <summary>True when the piece or the leaves still have to be heated.</summary>
    public static bool NeedsHeat(Preparation? prepared) =>
        prepared is null or Preparation.Raw or Preparation.Soaked;

    /// <summary>"93 C" as "93 °C" in a text of the catalog.</summary>
    public static string Degrees(string text) =>
        text.Replace(" C ", " °C ", StringComparison.Ordinal)
            .Replace(" C.", " °C.", StringComparison.Ordinal)
            .Replace(" C,", " °C,", StringComparison.Ordinal)
            .Replace(" C;", " °C;", StringComparison.Ordinal);
}
