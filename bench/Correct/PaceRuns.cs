using System.Diagnostics;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Bench.Correct;

/// <summary>What a brisker pace costs in time, and in millimeters of level.</summary>
internal static class PaceRuns
{
    public static void Print(string root)
    {
        foreach (
            var sample in new[]
            {
                "ld-202-waiting-room.viv.yaml",
                "t-17-old-show-tank.viv.yaml",
                "ld-203-museum-foyer.viv.yaml",
                "ld-201-flat.viv.yaml",
            }
        )
        {
            var design = Designs.Read(root, sample);
            var setup = new BoxSetup(design);
            var first = BoxRun.FirstDay(design);
            var changes = ClimateEnsemble.Members(16, 1);
            SimulationResult[] fine = [];
            foreach (
                var pace in new[]
                {
                    SimulationPace.Hourly,
                    new(1, 1),
                    new(1, 5),
                    new(2, 5),
                    new(4, 5),
                    new(6, 5),
                    new(4, 8),
                }
            )
            {
                for (var again = 0; again < 2; again++)
                {
                    var watch = Stopwatch.StartNew();
                    var results = new SimulationResult[16];
                    Parallel.For(0, 16, m =>
                    {
                        var run = BoxRun.From(
                            setup,
                            first,
                            changes[m] with
                            {
                                IsDrained = true,
                            },
                            pace == SimulationPace.Hourly && fine.Length == 0 ? null : pace
                        )!;
                        results[m] = run.Through(60);
                    });
                    if (again == 0)
                        continue;
                    if (fine.Length == 0)
                        fine = results;
                    double worst = 0,
                        sum = 0;
                    int n = 0;
                    for (var m = 0; m < 16; m++)
                    for (var h = 0; h <= 1440; h += 6)
                    {
                        var miss =
                            1000 * Math.Abs(results[m].Hours[h].LevelMeters - fine[m].Hours[h].LevelMeters);
                        if (miss > 15)
                            continue;
                        worst = Math.Max(worst, miss);
                        sum += miss;
                        n++;
                    }
                    var firstDrain = Enumerable
                        .Range(0, 16)
                        .Select(m =>
                            (
                                A: results[m].Events.FirstOrDefault(e => e.Kind == "drain").Hour,
                                B: fine[m].Events.FirstOrDefault(e => e.Kind == "drain").Hour
                            )
                        )
                        .Select(x => Math.Abs(x.A - x.B))
                        .Max();
                    Console.WriteLine(
                        $"{sample} {pace} {watch.Elapsed.TotalMilliseconds * 4:0} ms/64, "
                            + $"level worst {worst:0.000} mean {sum / n:0.000} mm, drain {firstDrain:0.0} h, "
                            + $"books {results.Max(r => Math.Abs(r.Water.BalanceError)) * 1000:0.000} g, "
                            + $"air steps {results.Average(r => r.AirSteps):0}"
                    );
                }
            }
        }
    }
}
