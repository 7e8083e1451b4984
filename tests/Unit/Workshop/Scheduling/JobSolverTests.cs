using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.UnitTests.Workshop.Scheduling;

/// <summary>Stages with hours by the day, a bench with places, and two aims one after the other.</summary>
public sealed class JobSolverTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private const int Horizon = 16;
    private const int Staff = 0;
    private const int Bench = 1;

    /// <summary>
    /// Own worked example, solved by trying all days: five jobs of cutting (one day) and building, 6 hours a
    /// day, two places. Due, hours of cutting, days × hours a day × places of building.
    /// </summary>
    private static readonly (string Name, int Due, int Cut, int Days, int Hours, int Places)[] Jobs =
    [
        ("A", 5, 4, 2, 3, 1),
        ("B", 6, 3, 3, 2, 1),
        ("C", 4, 2, 1, 4, 1),
        ("D", 8, 5, 2, 4, 2),
        ("E", 8, 2, 2, 3, 1),
    ];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Tardiness_is_least_then_earliness_and_gaps(bool hasSolver)
    {
        const int Weight = 1000;
        var wish = new SearchWish { HasSolver = hasSolver, Tries = 2000 };
        var late = JobSolver.Find(Problem((end, due) => Math.Max(0, end - due), 0), wish, Stop).Plan!;
        Assert.True(late.IsProved);
        Assert.Equal(1, late.Cost);
        var both = JobSolver
            .Find(
                Problem((end, due) => (Weight * Math.Max(0, end - due)) + Math.Max(0, due - end), 1),
                wish,
                Stop
            )
            .Plan!;
        Assert.True(both.IsProved);
        Assert.Equal((1, 8), (both.Cost / Weight, both.Cost % Weight));
        Check(both.Starts);
    }

    /// <summary>Hours and places of a plan, counted day by day.</summary>
    private static void Check(int[][] starts)
    {
        var hours = new int[Horizon];
        var places = new int[Horizon];
        for (var j = 0; j < Jobs.Length; j++)
        {
            var (cut, build) = (starts[j][0], starts[j][1]);
            Assert.True(cut >= 1 && build >= cut + 1);
            hours[cut] += Jobs[j].Cut;
            for (var d = build; d < build + Jobs[j].Days; d++)
            {
                hours[d] += Jobs[j].Hours;
                places[d] += Jobs[j].Places;
            }
        }

        Assert.All(hours, h => Assert.True(h <= 6));
        Assert.All(places, p => Assert.True(p <= 2));
    }

    private static JobProblem Problem(Func<int, int, long> cost, int gap) =>
        new(
            [
                .. Jobs.Select(j =>
                {
                    int[] cut = [.. Enumerable.Range(1, Horizon - 4)];
                    int[] build = [.. Enumerable.Range(1, Horizon - j.Days)];
                    return new Job(
                        j.Name,
                        [
                            new JobStage
                            {
                                Key = "cut",
                                Days = cut,
                                Costs = [.. cut.Select(d => -(long)gap * (d + 1))],
                                Ready = [.. cut.Select(d => d + 1)],
                                Uses = [.. cut.Select(d => new[] { new DayUse(Staff, d, j.Cut) })],
                                Next = 1,
                            },
                            new JobStage
                            {
                                Key = "build",
                                Days = build,
                                Costs = [.. build.Select(d => ((long)gap * d) + cost(d + j.Days - 1, j.Due))],
                                Ready = build,
                                Uses =
                                [
                                    .. build.Select(d =>
                                        new[]
                                        {
                                            new DayUse(Staff, d, j.Hours, j.Days),
                                            new DayUse(Bench, d, j.Places, j.Days),
                                        }
                                    ),
                                ],
                            },
                        ]
                    );
                }),
            ],
            [
                [.. Enumerable.Repeat(6, Horizon)],
                [.. Enumerable.Repeat(2, Horizon)],
            ]
        );
}
