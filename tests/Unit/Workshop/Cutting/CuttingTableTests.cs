using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;
using static Litterfall.UnitTests.Workshop.Cutting.CuttingCases;

namespace Litterfall.UnitTests.Workshop.Cutting;

/// <summary>Plans of straight cuts against all ways to cut few parts, and worked examples.</summary>
public sealed class CuttingTableTests
{
    /// <summary>
    /// Own worked examples: 4 × 250 × 500 fill 1000 × 500, a kerf leaves none; 3 × 332 + 2 × 2 = 1000; a
    /// rest of
    /// 10 mm cannot be broken off at 15 mm, one of 16 mm can; five parts turn around a middle that no
    /// straight
    /// cut reaches.
    /// </summary>
    public static TheoryData<string, double, int> Worked =>
        new()
        {
            { "four quarters", 0, 1 },
            { "four quarters", 3, 2 },
            { "three of 332", 2, 1 },
            { "three of 333", 0, 1 },
            { "three of 333", 1, 2 },
            { "two of 295", 0, 1 },
            { "two of 295, strips of 15", 0, 2 },
            { "two of 292, strips of 15", 0, 1 },
            { "pinwheel", 0, 2 },
            { "two as they lie", 0, 2 },
            { "two turned", 0, 1 },
            { "seven", 0, 1 },
            { "seven", 3, 1 },
            { "seven trimmed", 3, 2 },
        };

    [Theory]
    [MemberData(nameof(Worked))]
    public void Worked_examples_take_the_sheets_they_need(string name, double kerf, int sheets)
    {
        var plan = Solved(Posed(name) with { Kerf = kerf });
        Assert.Equal(sheets, plan.Sheets.Count);
        Assert.True(plan.IsProved, $"bound {plan.Bound}");
    }

    /// <summary>
    /// Seven sizes of 749,100 mm² do not fit on 1000 × 800: all but 445 × 145 is the most, 684,575 mm²; the
    /// other
    /// seven sizes lose one 440 × 290 to a trim of 10 mm. Sets of parts are tried by <see
    /// cref="GuillotineOracle"/>.
    /// </summary>
    [Theory]
    [InlineData("eight lids", 0.0, 0.0, 684_575)]
    [InlineData("eight lids", 3.0, 0.0, 684_575)]
    [InlineData("seven", 0.0, 0.0, 837_200)]
    [InlineData("seven", 3.0, 10.0, 709_600)]
    public void Worked_examples_have_their_value(string name, double kerf, double trim, double value)
    {
        var task = Posed(name) with { Kerf = kerf, Trim = trim, Goal = CuttingGoal.MostValue };
        var plan = Solved(task);
        Assert.Equal(value, plan.Value);
        Assert.True(plan.IsProved);
        var sheet = task.Stock[0];
        Assert.Equal(value, new GuillotineOracle(task).Best(sheet.Length - 2 * trim, sheet.Width - 2 * trim));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Few_parts_are_cut_as_trying_everything_says(int block)
    {
        for (var seed = 0; seed < LongRun.Cases(12, 400); seed++)
        {
            var task = Drawn(new Random(seed + 10_000 * block), 7);
            var oracle = new GuillotineOracle(task);
            var sheet = task.Stock[0];
            var most = Solved(task with { Goal = CuttingGoal.MostValue });
            Assert.True(
                Math.Abs(oracle.Best(sheet.Length, sheet.Width) - most.Value) < 1e-6 && most.IsProved,
                $"seed {seed}: {oracle.Best(sheet.Length, sheet.Width)}, got {most.Value}"
            );
            var fewest = oracle.Fewest(sheet.Length, sheet.Width);
            var least = Solved(task);
            Assert.True(fewest == least.Value, $"seed {seed}: {fewest}, got {least.Value}");
            Assert.True(least.Bound <= fewest, $"seed {seed}: bound {least.Bound} of {fewest}");
        }
    }

    /// <summary>Two sizes with prices and an offcut, there once.</summary>
    [Fact]
    public void The_cheapest_of_several_sheets_is_taken()
    {
        for (var seed = 0; seed < LongRun.Cases(15, 300); seed++)
        {
            var random = new Random(seed);
            var drawn = Drawn(random, 6);
            var whole = drawn.Stock[0];
            var task = drawn with
            {
                Stock =
                [
                    whole with
                    {
                        Id = "whole",
                        Price = 10,
                    },
                    whole with
                    {
                        Id = "large",
                        Length = whole.Length * 1.5,
                        Price = 14,
                    },
                    whole with
                    {
                        Id = "offcut",
                        Length = whole.Length / 2,
                        Price = 3,
                        Count = 1,
                    },
                ],
            };
            var cheapest = new GuillotineOracle(task).Cheapest([
                .. task.Stock.Select(s => (s.Length, s.Width, (double)s.Price!, s.Count ?? int.MaxValue)),
            ]);
            var plan = Solved(task);
            Assert.True(Math.Abs(cheapest - plan.Value) < 1e-9, $"seed {seed}: {cheapest}, got {plan.Value}");
            Assert.True(plan.Bound <= cheapest + 1e-9);
        }
    }

    [Fact]
    public void The_shortest_piece_of_a_roll_is_taken()
    {
        for (var seed = 0; seed < LongRun.Cases(15, 300); seed++)
        {
            var drawn = Drawn(new Random(seed), 6);
            var task = drawn with { Stock = [drawn.Stock[0] with { IsRoll = true, Length = 200 }] };
            var shortest = new GuillotineOracle(task).Shortest(task.Stock[0].Width);
            var plan = Solved(task);
            Assert.True(Math.Abs(shortest - plan.Value) < 1e-6, $"seed {seed}: {shortest}, got {plan.Value}");
            Assert.True(plan.Bound <= shortest + 1e-6, $"seed {seed}: bound {plan.Bound} of {shortest}");
        }
    }

    /// <summary>
    /// Own worked example: ten pieces of 440 mm and seven of 290 mm from a roll of 1.22 m. Their area is
    /// 2.07 m of the roll; at most two of 440 lie across, so that five rows of 440 are needed: 2.20 m.
    /// </summary>
    [Fact]
    public void A_roll_of_screen_gives_lids_for_two_sizes_of_box()
    {
        var roll = Sheet(9400, 1220) with { IsRoll = true };
        var plan = Solved(Task(roll, Part(440, 440, 10), Part(290, 290, 7)));
        Assert.Equal(2200, plan.Value);
        Assert.True(plan.IsProved);
    }

    /// <summary>
    /// A plan cut in two stages is no better than one of any stages, and says how sure it is.
    /// </summary>
    [Fact]
    public void Stages_are_kept()
    {
        for (var seed = 0; seed < 10; seed++)
        {
            var task = Drawn(new Random(seed), 9);
            var free = Solved(task with { Goal = CuttingGoal.MostValue });
            var staged = Solved(task with { Goal = CuttingGoal.MostValue, Stages = 2 });
            Assert.InRange(staged.Value, 0, free.Value);
            Assert.InRange(staged.Bound, staged.Value, free.Bound);
            Assert.True(Solved(task with { Stages = 2 }).Value >= Solved(task).Bound);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_plan()
    {
        var task = Drawn(new Random(5), 12);
        Assert.Equal(Solved(task, 3), Solved(task, 3));
    }

    /// <summary>Whoever does not wait still gets a plan.</summary>
    [Theory]
    [InlineData(CuttingGoal.LeastStock)]
    [InlineData(CuttingGoal.MostValue)]
    public void A_search_that_is_ended_gives_what_it_has(CuttingGoal goal)
    {
        var task = Drawn(new Random(5), 12) with { Goal = goal };
        var plan = CuttingTable.Solve(task, new(), new CancellationToken(true))!;
        Assert.Empty(CuttingCheck.Faults(task, plan));
        Assert.NotEmpty(plan.Sheets);
    }

    [Fact]
    public void Sixty_parts_are_told_as_they_get_better()
    {
        var random = new Random(1);
        var task = Task(
            Sheet(1200, 600),
            [
                .. Enumerable
                    .Range(0, 30)
                    .Select(i => Part(80 + random.Next(300), 60 + random.Next(200), 2) with { Id = $"p{i}" }),
            ]
        );
        var told = new List<CuttingPlan>();
        var plan = CuttingTable.Solve(
            task,
            new() { Found = told.Add, Limit = TimeSpan.FromMilliseconds(300) },
            TestContext.Current.CancellationToken
        )!;
        Assert.NotEmpty(told);
        Assert.All(told, t => Assert.Empty(CuttingCheck.Faults(task, t)));
        Assert.True(plan.Value <= told[0].Value);
    }

    private static CuttingTask Posed(string name) =>
        name switch
        {
            "four quarters" => Task(Sheet(1000, 500), Part(500, 250, 4)),
            "three of 332" => Task(Sheet(1000, 500), Part(332, 500, 3, false)),
            "three of 333" => Task(Sheet(1000, 500), Part(333, 500, 3)),
            "two of 295" => Task(Sheet(600, 450), Part(295, 450, 2)),
            "two of 295, strips of 15" => Posed("two of 295") with { NarrowestStrip = 15 },
            "two of 292, strips of 15" => Task(Sheet(600, 450), Part(292, 450, 2)) with
            {
                NarrowestStrip = 15,
            },
            "pinwheel" => Task(Sheet(500, 500), Part(300, 200, 4), Part(100, 100)),
            "two as they lie" => Task(Sheet(600, 800), Part(400, 550, 2, false)),
            "two turned" => Task(Sheet(600, 800), Part(400, 550, 2)),
            "eight lids" => Task(
                Sheet(1000, 800),
                Part(445, 295, 2),
                Part(445, 145),
                Part(595, 295),
                Part(595, 145),
                Part(295, 295),
                Part(240, 180),
                Part(200, 150)
            ),
            "seven trimmed" => Posed("seven") with { Trim = 10 },
            _ => Task(
                Sheet(1050, 900),
                Part(590, 440),
                Part(590, 290),
                Part(440, 290, 2),
                Part(290, 290),
                Part(290, 140),
                Part(190, 140)
            ),
        };
}
