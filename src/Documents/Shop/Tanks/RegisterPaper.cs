using System.Globalization;
using System.Text;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Tanks;

/// <summary>A line of the register as it is exported.</summary>
/// <param name="Day">The day.</param>
/// <param name="Event">What happened.</param>
/// <param name="Species">Scientific name.</param>
/// <param name="Common">Common name.</param>
/// <param name="Count">How many; null for none.</param>
/// <param name="Source">Where from.</param>
/// <param name="Destination">Where to.</param>
/// <param name="Words">What else was written.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="KeepUntil">Last day on which it must be kept.</param>
public sealed record RegisterRow(
    DateOnly Day,
    string Event,
    string Species,
    string Common,
    int? Count,
    string Source,
    string Destination,
    string Words,
    string Who,
    DateOnly KeepUntil
);

/// <summary>What an inspection is shown.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Rows">Lines.</param>
/// <param name="Stock">Animals at the end, in sentences.</param>
/// <param name="Permits">Permits, in sentences.</param>
public sealed record RegisterText(
    DateOnly From,
    DateOnly Until,
    Seq<RegisterRow> Rows,
    Seq<string> Stock,
    Seq<string> Permits
);

/// <summary>The register of animals for an inspection: on paper and as a table.</summary>
public static class RegisterPaper
{
    /// <summary>Said once on each export.</summary>
    public const string Law =
        "Fields and three years of retention follow SI 2018/486 (England); isopod shipments between US "
        + "states are kept three years too. Your own law and authority decide.";

    private static readonly string[] Heads =
    [
        "Date",
        "Event",
        "Species",
        "Common name",
        "Number",
        "Source",
        "Destination",
        "Remarks",
        "Entered by",
        "Keep until",
    ];

    /// <summary>The paper.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="register">What it says.</param>
    public static PaperFile Write(ShopSheet sheet, RegisterText register) =>
        sheet.Pdf(
            "register.pdf",
            "Register of animals",
            PageFrame.Sides(
                sheet.Size,
                sheet.Head(
                    "Register of animals",
                    $"{NumberText.Day(register.From)} to {NumberText.Day(register.Until)}"
                ),
                _ => Blocks(register)
            )
        );

    /// <summary>The table, as RFC 4180 writes it.</summary>
    /// <param name="register">What it says.</param>
    public static byte[] Csv(RegisterText register)
    {
        var text = new StringBuilder();
        Line(text, Heads);
        foreach (var row in register.Rows)
        {
            Line(text, Cells(row, Iso));
        }

        return new UTF8Encoding(true).GetBytes(text.ToString());
    }

    private static string[] Cells(RegisterRow row, Func<DateOnly, string> day) =>
        [
            day(row.Day),
            row.Event,
            row.Species,
            row.Common,
            row.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
            row.Source,
            row.Destination,
            row.Words,
            row.Who,
            day(row.KeepUntil),
        ];

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, string[] cells) =>
        text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    /// <summary>Quoted; what a spreadsheet would take for a formula is kept as words.</summary>
    private static string Cell(string text)
    {
        var plain =
            text.Length > 0 && "=+-@\t\r".Contains(text[0], StringComparison.Ordinal) ? $"'{text}" : text;
        return $"\"{plain.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static List<Block> Blocks(RegisterText register)
    {
        var blocks = new List<Block> { new Words(Law) { Tone = Drawings.Tone.Quiet } };
        if (register.Stock.Count > 0)
        {
            blocks.Add(new Heading("Animals at the end of the window") { KeepsWithNext = true });
            blocks.AddRange(register.Stock.Select(s => new Words(s) { Sign = Sign.Dash }));
        }

        if (register.Permits.Count > 0)
        {
            blocks.Add(new Heading("Permits and proofs") { KeepsWithNext = true });
            blocks.AddRange(register.Permits.Select(s => new Words(s) { Sign = Sign.Dash }));
        }

        blocks.AddRange(
            register.Rows.Count > 0
                ? Rows(register).Blocks
                : [new Words("Nothing was entered in this window.")]
        );
        return blocks;
    }

    private static Table Rows(RegisterText register)
    {
        var table = Table.Of(
            "Entries",
            (0.13, "date", false),
            (0.14, "event", false),
            (0.21, "species", false),
            (0.05, "no.", true),
            (0.13, "source", false),
            (0.13, "destination", false),
            (0.08, "by", false),
            (0.13, "keep until", false)
        );
        foreach (var row in register.Rows)
        {
            var words = row.Words.Length > 0 ? $"; {row.Words}" : "";
            table.Row(
                "",
                Iso(row.Day),
                row.Event + words,
                row.Common.Length > 0 ? $"{row.Common} ({row.Species})" : row.Species,
                row.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
                row.Source,
                row.Destination,
                row.Who,
                Iso(row.KeepUntil)
            );
        }

        return table;
    }
}
