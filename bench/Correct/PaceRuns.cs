using System.Diagnostics;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Bench.Correct;

/// <summary>What a brisker pace costs in time, and in millimeters of level.</summary>
internal static class PaceRuns
{
    private const int Members = 16;
    private const int Days = 60;

    private static readonly string[] Samples =
    [
        "ld-202-waiting-room.viv.yaml",
        "t-17-old-show-tank.viv.yaml",
        "ld-203-museum-foyer.viv.yaml",
        "ld-201-flat.viv.yaml",
    ];

    private static readonly SimulationPace[] Paces =
    [
        SimulationPace.Hourly,
        new(1, 5),
        new(2, 5),
        new(4, 5),
        new(6, 5),
        new(4, 8),
    ];

    public static void Print(string root)
    {
        foreach (var sample in Samples)
        {
            var setup = new BoxSetup(Designs.Read(root, sample));
            var fine = Run(setup, SimulationPace.Hourly).Results;
            foreach (var pace in Paces)
            {
                var (milliseconds, results) = Run(setup, pace);
                var (worst, mean) = Misses(fine, results);
                Console.WriteLine(
                    $"{sample} {pace} {milliseconds * 64 / Members:0} ms/64, "
                        + $"level worst {worst:0.000} mean {mean:0.000} mm, "
                        + $"drain {FirstDrains(fine, results):0.0} h, "
                        + $"books {results.Max(r => Math.Abs(r.Water.BalanceError)) * 1000:0.000} g, "
                        + $"air steps {results.Average(r => r.AirSteps):0}"
                );
            }
        }
    }

    private static (double Milliseconds, SimulationResult[] Results) Run(BoxSetup setup, SimulationPace pace)
    {
        var first = BoxRun.FirstDay(setup.Design);
        var changes = ClimateEnsemble.Members(Members, 1);
        var results = new SimulationResult[Members];
        var watch = Stopwatch.StartNew();
        Parallel.For(0, Members, m =>
            results[m] = BoxRun.From(setup, first, changes[m], pace)!.Through(Days)
        );
        return (watch.Elapsed.TotalMilliseconds, results);
    }

    /// <summary>Misses of the level, mm; days when one drained and the other not yet are left out.</summary>
    private static (double Worst, double Mean) Misses(SimulationResult[] fine, SimulationResult[] results)
    {
        const double Drained = 15;
        var misses = Enumerable
            .Range(0, Members)
            .SelectMany(m =>
                Enumerable
                    .Range(0, 1 + (4 * Days))
                    .Select(h =>
                        1000
                        * Math.Abs(results[m].Hours[6 * h].LevelMeters - fine[m].Hours[6 * h].LevelMeters)
                    )
            )
            .Where(miss => miss <= Drained)
            .ToArray();
        return (misses.Max(), misses.Average());
    }

    private static double FirstDrains(SimulationResult[] fine, SimulationResult[] results) =>
        Enumerable.Range(0, Members).Max(m => Math.Abs(FirstDrain(fine[m]) - FirstDrain(results[m])));

    private static double FirstDrain(SimulationResult result) =>
        result.Events.FirstOrDefault(e => e.Kind == "drain").Hour;
}
