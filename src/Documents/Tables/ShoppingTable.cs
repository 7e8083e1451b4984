using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Buying;

namespace Litterfall.Documents.Tables;

/// <summary>The shopping list as a CSV file, one unit for each column.</summary>
public static class ShoppingTable
{
    private static readonly ImmutableArray<string> Columns =
    [
        "kind",
        "key",
        "item",
        "pieces",
        "litres_each",
        "litres",
        "length_mm",
        "width_mm",
        "height_mm",
        "thickness_mm",
        "area_m2",
        "mass_kg",
        "price_each",
        "price",
        "currency",
        "where",
        "note",
    ];

    /// <summary>The file.</summary>
    public static byte[] Write(ShoppingList list, CsvStyle style = CsvStyle.Invariant) =>
        CsvTable.Write(Columns, list.Lines.Select(line => Row(line, list.Currency)), style);

    private static ImmutableArray<CsvCell> Row(ShoppingLine line, string? currency) =>
        [
            CsvCell.Of(Word(line.Kind)),
            CsvCell.Of(line.Key),
            CsvCell.Of(line.Item),
            In(line.Pieces, Units.One),
            In(line.LitersEach, Units.Liter),
            In(line.Liters, Units.Liter),
            In(line.Length, Units.Millimeter),
            In(line.Width, Units.Millimeter),
            In(line.Height, Units.Millimeter),
            In(line.Thickness, Units.Millimeter),
            In(line.Area, Units.SquareMeter),
            In(line.Mass, Units.Kilogram),
            In(line.PriceEach, Units.Money),
            In(line.Price, Units.Money),
            CsvCell.Of(line.Price is null ? null : currency),
            CsvCell.Of(line.Where),
            CsvCell.Of(line.Note),
        ];

    private static CsvCell In(Figure? figure, Unit unit) =>
        CsvCell.Of(figure is null ? null : unit.FromSi(figure.Si));

    private static string Word(ShoppingKind kind) =>
        kind == ShoppingKind.FromStock ? "from stock" : kind.ToString().ToLowerInvariant();
}
