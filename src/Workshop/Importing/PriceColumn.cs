using System.Collections.Immutable;

namespace Litterfall.Workshop.Importing;

/// <summary>What a column of a price list means.</summary>
public enum PriceColumn
{
    /// <summary>Left out.</summary>
    None,

    /// <summary>Name of the good.</summary>
    Name,

    /// <summary>What one pack holds, with its unit: "20 L".</summary>
    Pack,

    /// <summary>What one pack holds, a bare number.</summary>
    Amount,

    /// <summary>Unit of that number.</summary>
    Unit,

    /// <summary>Net price of one pack.</summary>
    Price,

    /// <summary>Packs from which that price counts.</summary>
    From,

    /// <summary>Supplier.</summary>
    Supplier,

    /// <summary>Currency.</summary>
    Currency,
}

/// <summary>Guesses what columns mean by the words people write above them.</summary>
public static class ColumnGuess
{
    private static readonly (PriceColumn Column, string[] Words)[] Known =
    [
        (PriceColumn.Currency, ["currency", "währung", "waehrung", "devise", "moneda", "valuta"]),
        (PriceColumn.Supplier, ["supplier", "vendor", "lieferant", "fournisseur", "proveedor", "fornitore"]),
        (PriceColumn.From, ["from packs", "from", "min qty", "ab menge", "ab", "dès", "desde", "staffel"]),
        (
            PriceColumn.Price,
            ["price", "preis", "prix", "precio", "prezzo", "net", "netto", "cost", "eur", "usd"]
        ),
        (PriceColumn.Unit, ["unit", "einheit", "unité", "unite", "unidad", "unità", "uom"]),
        (
            PriceColumn.Amount,
            ["amount", "quantity", "menge", "inhalt", "quantité", "cantidad", "quantità", "liters"]
        ),
        (PriceColumn.Pack, ["pack", "size", "packung", "gebinde", "größe", "taille", "formato", "tamaño"]),
        (
            PriceColumn.Name,
            [
                "name",
                "item",
                "good",
                "article",
                "artikel",
                "bezeichnung",
                "désignation",
                "producto",
                "material",
                "descr",
            ]
        ),
    ];

    /// <summary>A meaning for each column; each meaning once, the nearest header first.</summary>
    /// <param name="table">The list.</param>
    public static ImmutableArray<PriceColumn> Guess(TypedTable table)
    {
        var guessed = new PriceColumn[table.Columns.Length];
        foreach (var isWhole in new[] { true, false })
        {
            foreach (var (column, words) in Known)
            {
                var at = Array.FindIndex([.. table.Columns], header =>
                    guessed[table.Columns.IndexOf(header)] == PriceColumn.None && Says(header, words, isWhole)
                );
                if (at >= 0 && !guessed.Contains(column))
                {
                    guessed[at] = column;
                }
            }
        }

        return [.. guessed];
    }

    private static bool Says(string header, string[] words, bool isWhole)
    {
        var said = header.Trim().ToLowerInvariant();
        return words.Any(word =>
            isWhole
                ? said == word
                : said.Split(' ', '_', '-', '(', ')', '/', '.', ':')
                    .Any(part => part.StartsWith(word, StringComparison.Ordinal))
        );
    }
}
