using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;

namespace Litterfall.UnitTests.Workshop.Cutting;

/// <summary>Cutting tasks written short, and drawn at random.</summary>
internal static class CuttingCases
{
    public static StockSheet Sheet(double length, double width, int? count = null, decimal? price = null) =>
        new()
        {
            Id = FormattableString.Invariant($"sheet {length}"),
            Length = length,
            Width = width,
            Count = count,
            Price = price,
        };

    public static CutDemand Part(double length, double width, int? count = 1, bool mayTurn = true) =>
        new()
        {
            Id = FormattableString.Invariant($"{length} × {width}{(mayTurn ? "" : " as it lies")}"),
            Length = length,
            Width = width,
            Count = count,
            MayTurn = mayTurn,
        };

    public static CuttingTask Task(StockSheet sheet, params CutDemand[] parts) =>
        new()
        {
            Stock = [sheet],
            Parts = [.. parts],
            OffcutShort = 0,
            OffcutLong = 0,
        };

    /// <summary>A plan that the checker takes.</summary>
    public static CuttingPlan Solved(CuttingTask task, int seed = 1)
    {
        var plan = CuttingTable.Solve(task, new() { Seed = seed }, TestContext.Current.CancellationToken)!;
        Assert.Empty(CuttingCheck.Faults(task, plan));
        return plan;
    }

    /// <summary>Few parts for one sheet or more.</summary>
    public static CuttingTask Drawn(Random random, int mostParts)
    {
        var (length, width) = (20 + random.Next(15), 12 + random.Next(15));
        var parts = new List<CutDemand>();
        for (var left = 3 + random.Next(mostParts - 2); left > 0;)
        {
            var count = Math.Min(left, 1 + random.Next(2));
            left -= count;
            parts.Add(
                Part(2 + random.Next(width - 4), 2 + random.Next(width - 4), count, random.Next(2) == 0) with
                {
                    Id = $"p{parts.Count}",
                }
            );
        }

        return Task(Sheet(length, width), [.. parts]) with
        {
            Kerf = random.Next(3) * 0.5,
        };
    }
}
