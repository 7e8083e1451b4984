using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Instructions.Buying;

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
        "use",
    ];

    /// <summary>The file.</summary>
    public static byte[] Write(ShoppingList list, CsvStyle style = CsvStyle.Invariant) =>
        CsvTable.Write(Columns, list.Lines.Select(line => Row(line, list.Currency)), style);

    private static ImmutableArray<CsvCell> Row(ShoppingLine line, string? currency) =>
        [
            CsvCell.Of(Word(line.Kind)),
            CsvCell.Of(line.Key),
            CsvCell.Of(line.Item),
            In(line.Pieces, Unit.One),
            In(line.LitersEach, Unit.Liter),
            In(line.Liters, Unit.Liter),
            In(line.Length, Unit.Millimeter),
            In(line.Width, Unit.Millimeter),
            In(line.Height, Unit.Millimeter),
            In(line.Thickness, Unit.Millimeter),
            In(line.Area, Unit.SquareMeter),
            In(line.Mass, Unit.Kilogram),
            In(line.PriceEach, Unit.Money),
            In(line.Price, Unit.Money),
            CsvCell.Of(line.Price is null ? null : currency),
            CsvCell.Of(line.Where),
            CsvCell.Of(line.Note),
            CsvCell.Of(line.Use),
        ];

    private static CsvCell In(Figure? figure, Unit unit) =>
        CsvCell.Of(figure is null ? null : unit.FromSi(figure.Si));

    private static string Word(ShoppingKind kind) =>
        kind == ShoppingKind.FromStock ? "from stock" : kind.ToString().ToLowerInvariant();
}
