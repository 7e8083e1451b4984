using System.Diagnostics;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;
using Litterfall.Running.Correcting;

namespace Litterfall.Bench.Correct;

/// <summary>Where the time of a pass goes: making a member ready, and running it.</summary>
internal static class PartRuns
{
    public static void Print(string root)
    {
        foreach (var text in new[] { Designs.Held, Designs.Reference })
        {
            var design = Designs.Pose(root, text);
            var setup = new BoxSetup(design);
            var first = BoxRun.FirstDay(design);
            for (var again = 0; again < 4; again++)
            {
                var changes = ClimateEnsemble.Members(64, again);
                var watch = Process.GetCurrentProcess().TotalProcessorTime;
                var runs = changes.Select(c => BoxRun.From(setup, first, c, TankCase.Brisk)!).ToArray();
                var ready = Process.GetCurrentProcess().TotalProcessorTime;
                var results = runs.Select(r => r.Through(60)).ToArray();
                var ran = Process.GetCurrentProcess().TotalProcessorTime;
                Console.WriteLine(
                    $"ready {(ready - watch).TotalMilliseconds:0} ms, run "
                        + $"{(ran - ready).TotalMilliseconds:0} ms "
                        + $"of processor, {results.Average(r => r.AirSteps):0} air steps, "
                        + $"{GC.GetTotalAllocatedBytes() / 1e6:0} MB"
                );
            }
        }
    }
}
