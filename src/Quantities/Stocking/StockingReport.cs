using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Stocking;

/// <summary>The stocking rules in the machine-readable report.</summary>
public static class StockingReport
{
    /// <summary>One row for each rule and species.</summary>
    public static ReportList Write(ImmutableArray<StockingRow> rows)
    {
        var strictest = rows.GroupBy(row => row.Animal, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, StockingTable.Strictest, StringComparer.Ordinal);
        return new ReportList([.. rows.Select(row => Row(row, ReferenceEquals(row, strictest[row.Animal])))]);
    }

    private static ReportNode Row(StockingRow row, bool isStrictest) =>
        ReportObject.Of(
            ("rule", new ReportText(row.Rule)),
            ("name", new ReportText(row.Name)),
            ("animal", new ReportText(row.Animal)),
            ("asked", new ReportNumber(row.Asked, Unit.One)),
            (
                "allowed",
                row.Allowed is { } allowed
                    ? new ReportNumber(allowed, Unit.One)
                    : new ReportAbsent($"the rule does not apply: {row.Remark}")
            ),
            ("applies", new ReportFlag(row.Applies)),
            ("holds", new ReportFlag(row.Holds)),
            ("group", new ReportFlag(row.IsGroupRule)),
            ("strictest", new ReportFlag(isStrictest)),
            ("text", new ReportText(row.Text)),
            ("remark", new ReportText(row.Remark)),
            ("source", new ReportText(row.Citation.Source)),
            ("place", new ReportText(row.Citation.Place)),
            ("provenance", new ReportText(row.Provenance.Word()))
        );
}
