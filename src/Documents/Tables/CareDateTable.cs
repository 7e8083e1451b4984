using System.Collections.Immutable;
using Litterfall.Instructions.Care;

namespace Litterfall.Documents.Tables;

/// <summary>The dates of one tank as a CSV file, with ISO dates.</summary>
public static class CareDateTable
{
    private static readonly ImmutableArray<string> Columns =
    [
        "tank",
        "key",
        "day",
        "repeat",
        "title",
        "text",
        "where",
    ];

    /// <summary>The file.</summary>
    public static byte[] Write(CarePlan plan, string tank, CsvStyle style = CsvStyle.Invariant) =>
        CsvTable.Write(
            Columns,
            plan.Dates.Select(date =>
                ImmutableArray.Create(
                    CsvCell.Of(tank),
                    CsvCell.Of(date.Key),
                    CsvCell.Of(date.Day),
                    CsvCell.Of(date.Repeat?.Words),
                    CsvCell.Of(date.Title),
                    CsvCell.Of(date.Text),
                    CsvCell.Of(date.Where)
                )
            ),
            style
        );
}
