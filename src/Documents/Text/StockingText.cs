using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Documents.Text;

/// <summary>The stocking rules side by side, one table for each species.</summary>
internal static class StockingText
{
    public static void Write(StringBuilder text, ImmutableArray<StockingRow> rows)
    {
        foreach (var species in rows.GroupBy(row => row.Animal, StringComparer.Ordinal))
        {
            One(text, [.. species]);
        }
    }

    private static void One(StringBuilder text, StockingRow[] rows)
    {
        var first = rows[0];
        text.Append(
            CultureInfo.InvariantCulture,
            $"How many: {first.Asked.Value:0} × {Terminal.Clean(first.AnimalName)}"
                + $"{(first.Where == "ratedFor" ? ", as rated" : "")}\n"
        );
        var table = new TextTable("rule", "allows", "", "rests on", "");
        foreach (var row in rows.Where(row => row.Applies))
        {
            table.Add(
                row.Name,
                string.Create(CultureInfo.InvariantCulture, $"{row.Allowed!.Value:0}"),
                row.Holds ? "" : "broken",
                row.Provenance.Word(),
                row.Remark
            );
        }

        text.Append(table);
        if (StockingTable.Strictest(rows) is { } strictest)
        {
            text.Append(
                Terminal.Wrapped(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Strictest: {strictest.Name}, {strictest.Allowed!.Value:0}. {strictest.Text}"
                    ),
                    "  "
                )
            );
        }

        var silent = rows.Where(row => !row.Applies).Select(row => $"{row.Name} ({row.Remark})").ToArray();
        if (silent.Length > 0)
        {
            text.Append(Terminal.Wrapped($"Does not apply: {string.Join("; ", silent)}.", "  "));
        }

        text.Append('\n');
    }
}
