using System.Collections.Immutable;
using Litterfall.Documents.Views;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;

namespace Litterfall.Documents.Tables;

/// <summary>The cut list of a design as a CSV file, in millimeters.</summary>
public static class CutTable
{
    private static readonly ImmutableArray<string> Columns =
    [
        "tank",
        "part",
        "material",
        "pieces",
        "length_mm",
        "width_mm",
        "thickness_mm",
        "note",
    ];

    /// <summary>The file.</summary>
    public static byte[] Write(DesignNumbers numbers, CsvStyle style = CsvStyle.Invariant)
    {
        var tank = TankNumber.Of(numbers);
        return CsvTable.Write(
            Columns,
            numbers.Cuts.Select(part =>
                ImmutableArray.Create(
                    CsvCell.Of(tank),
                    CsvCell.Of(part.Part),
                    CsvCell.Of(part.Material),
                    CsvCell.Of(part.Count.Si),
                    CsvCell.Of(Unit.Millimeter.FromSi(part.Length.Si)),
                    CsvCell.Of(Unit.Millimeter.FromSi(part.Width.Si)),
                    CsvCell.Of(part.Thickness is { } thickness ? Unit.Millimeter.FromSi(thickness.Si) : null),
                    CsvCell.Of($"{part.Note}{CutView.Holes(part)}")
                )
            ),
            style
        );
    }
}
