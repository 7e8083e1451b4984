using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Light;

namespace Litterfall.Laboratory.Light;

/// <summary>Runs a case of light: points as finely as can be, the map as the bench draws it.</summary>
public static class LightLab
{
    private const int Rays = 65_536;

    /// <summary>Runs a case.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="progress">Told the lamps done.</param>
    /// <param name="cancel">Cancels between two places.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static LightOutcome Run(LightCase asked, Action<double> progress, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        double[] points = new double[asked.Points.Length];
        double[]? map = asked.Map is { } grid ? new double[grid.CellsX * grid.CellsY] : null;
        var fine = points.Length > 0 ? new LightModel(asked.Scene, LightDetail.Fine, cancel) : null;
        var live = map is not null ? new LightModel(asked.Scene, LightDetail.Live, cancel) : null;
        var budget = new Budget(asked.Scene);
        var lit = new List<LitLamp>(asked.Lamps.Length);
        for (int k = 0; k < asked.Lamps.Length; k++)
        {
            cancel.ThrowIfCancellationRequested();
            var lamp = asked.Lamps[k];
            if (fine is not null)
            {
                lit.Add(fine.Light(lamp));
            }

            if (live is not null)
            {
                double[] one = live.Map(asked.Map!.Value, live.Light(lamp));
                for (int i = 0; i < one.Length; i++)
                {
                    map![i] += one[i];
                }
            }

            budget.Add(LightTracer.Of(asked.Scene, lamp, Rays, cancel), lamp.Lumens);
            progress(k + 1);
        }

        for (int i = 0; i < points.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            points[i] = fine!.At(asked.Points[i], lit).Sum();
        }

        return new LightOutcome(
            [.. points],
            map,
            budget.Shares(),
            Math.Round(watch.Elapsed.TotalMilliseconds, 3)
        );
    }

    /// <summary>The ends of all lamps' light, weighted by their flux.</summary>
    private sealed class Budget(LightScene scene)
    {
        private static readonly (string Name, BoxFace Face)[] Faces =
        [
            ("left", BoxFace.Left),
            ("right", BoxFace.Right),
            ("front", BoxFace.Front),
            ("back", BoxFace.Back),
            ("floor", BoxFace.Floor),
        ];

        private readonly double[] sums = new double[Faces.Length + 4];
        private double lumens;

        public void Add(LightBudget budget, double flux)
        {
            lumens += flux;
            for (int i = 0; i < Faces.Length; i++)
            {
                sums[i] += flux * budget.On(Faces[i].Face);
            }

            sums[^4] += flux * budget.Lid;
            sums[^3] += flux * budget.Blocks.Sum();
            sums[^2] += flux * budget.Canopies.Sum();
            sums[^1] += flux * budget.Lost;
        }

        public ImmutableArray<(string, double)> Shares()
        {
            string[] names = [.. Faces.Select(f => f.Name), "lid", "blocks", "canopies", "lost"];
            return
            [
                .. names
                    .Select((name, i) => (name, lumens > 0.0 ? sums[i] / lumens : 0.0))
                    .Where(s => s.name != "blocks" || scene.Blocks.Length > 0)
                    .Where(s => s.name != "canopies" || scene.Canopies.Length > 0),
            ];
        }
    }
}
