using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;
using static Litterfall.UnitTests.Workshop.Cutting.CuttingCases;

namespace Litterfall.UnitTests.Workshop.Cutting;

/// <summary>What must hold between the answers to two tasks that differ in one thing.</summary>
public sealed class CuttingRelationTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, LongRun.Cases(6, 200))];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Order_scale_and_axes_change_nothing(int seed)
    {
        var task = Drawn(new Random(seed), 9) with { Goal = CuttingGoal.MostValue };
        var value = Solved(task).Value;
        Assert.Equal(value, Solved(task with { Parts = [.. task.Parts.Reverse()] }).Value, 6);
        Assert.Equal(100 * value, Solved(Scaled(task, 10)).Value, 4);
        Assert.Equal(value, Solved(Swapped(task)).Value, 6);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_wider_kerf_or_one_part_more_never_needs_fewer_sheets(int seed)
    {
        var task = Drawn(new Random(seed), 8);
        var least = Solved(task);
        var kerf = Solved(task with { Kerf = task.Kerf + 1 });
        Assert.True(kerf.Value >= least.Bound);
        var fewer = Solved(task with { Parts = [.. task.Parts.Skip(1)] });
        Assert.True(fewer.Bound <= least.Value);
        Assert.True(!least.IsProved || fewer.Value <= least.Value || !fewer.IsProved);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Splitting_a_demand_is_no_better_than_its_bound(int seed)
    {
        var task = Drawn(new Random(seed), 8);
        var least = Solved(task);
        var split = task with
        {
            Parts =
            [
                .. task.Parts.SelectMany(p =>
                    Enumerable.Range(0, p.Count!.Value).Select(i => p with { Id = $"{p.Id}.{i}", Count = 1 })
                ),
            ],
        };
        Assert.True(Solved(split).Value >= least.Bound);
        Assert.Equal(least.Value, Solved(split).Value);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_sheet_nobody_needs_changes_nothing(int seed)
    {
        var task = Drawn(new Random(seed), 8);
        var priced = task with { Stock = [task.Stock[0] with { Price = 10 }] };
        var dear = priced with
        {
            Stock = [.. priced.Stock, task.Stock[0] with { Id = "dear", Length = 21, Price = 100_000 }],
        };
        Assert.Equal(Solved(priced).Value, Solved(dear).Value);
    }

    [Fact]
    public void What_cannot_be_cut_is_named_with_what_would_do()
    {
        var task = Task(Sheet(1000, 500), Part(1300, 250));
        var refusal = CuttingRefusal.Find(task)!;
        Assert.Equal(0, refusal.Part);
        Assert.Contains("1300 × 250 mm", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("2 pieces", refusal.Expected, StringComparison.Ordinal);
        var grain = Task(Sheet(1000, 500), Part(400, 800, 1, false));
        Assert.Contains("may be turned", CuttingRefusal.Find(grain)!.Expected, StringComparison.Ordinal);
        var few = Task(Sheet(1000, 500, 1), Part(500, 250, 9));
        Assert.Null(CuttingRefusal.Find(few));
        Assert.Null(CuttingTable.Solve(few, new(), TestContext.Current.CancellationToken));
        Assert.Contains("m² more", CuttingRefusal.Short(few).Expected, StringComparison.Ordinal);
    }

    private static CuttingTask Scaled(CuttingTask task, double by) =>
        task with
        {
            Kerf = task.Kerf * by,
            Stock = [.. task.Stock.Select(s => s with { Length = s.Length * by, Width = s.Width * by })],
            Parts = [.. task.Parts.Select(p => p with { Length = p.Length * by, Width = p.Width * by })],
        };

    private static CuttingTask Swapped(CuttingTask task) =>
        task with
        {
            Stock = [.. task.Stock.Select(s => s with { Length = s.Width, Width = s.Length })],
            Parts = [.. task.Parts.Select(p => p with { Length = p.Width, Width = p.Length })],
        };
}
