using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Judging;

namespace Litterfall.Web.Library;

/// <summary>A figure of one box beside that of all equal boxes.</summary>
/// <param name="Name">What it is.</param>
/// <param name="One">Of one box, SI.</param>
/// <param name="All">Of all, SI.</param>
/// <param name="Unit">Unit it is told in.</param>
public sealed record BatchRow(string Name, double One, double All, Unit Unit)
{
    // Figures of the report that stand for one box.
    private static readonly (string Key, string Name)[] Told =
    [
        ("weights.dryKg", "Weight before water"),
        ("weights.plantedKg", "Weight planted"),
        ("weights.wetKg", "Heaviest (waterlogged)"),
        ("water.mistMlPerDay", "Mist per day"),
    ];

    /// <summary>The figures of a batch; none for a single box.</summary>
    /// <param name="result">The computed design.</param>
    public static ImmutableArray<BatchRow> Of(DesignResult result)
    {
        var numbers = result.Numbers;
        var boxes = numbers.Design.Design.Boxes;
        var money = numbers.Design.Catalog.Workshop?.Currency is { } currency ? $", {currency}" : "";
        return boxes <= 1
            ? []
            :
            [
                .. numbers
                    .Layers.Where(l => l.ToBuy.Si > 0)
                    .Select(l => new BatchRow(
                        $"{Capital(l.Layer)}, to buy loose ({l.Material?.Name})",
                        l.ToBuy.Si,
                        boxes * l.ToBuy.Si,
                        Unit.Liter
                    )),
                .. Told.Select(t => (t.Name, Number: ReportPath.Find(result.Report, t.Key) as ReportNumber))
                    .Where(t => t.Number is not null)
                    .Select(t => new BatchRow(
                        t.Name,
                        t.Number!.Figure.Si,
                        boxes * t.Number.Figure.Si,
                        t.Number.Unit
                    )),
                // The cost of goods counts all boxes.
                .. ReportPath.Find(result.Report, "cost.goods") is ReportNumber goods
                    ? new[]
                    {
                        new BatchRow(
                            $"Cost of materials{money}",
                            goods.Figure.Si / boxes,
                            goods.Figure.Si,
                            goods.Unit
                        ),
                    }
                    : [],
            ];
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
