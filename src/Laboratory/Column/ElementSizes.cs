using System.Collections.Immutable;

namespace Litterfall.Laboratory.Column;

/// <summary>How thick an element may be at a depth, and stretches cut by it.</summary>
public sealed class ElementSizes
{
    private const int Samples = 64;
    private const double RoundOff = 1e-6;
    private readonly List<(double DepthMeters, double LeastMeters)> fine = [];
    private readonly double[] largest;

    /// <param name="layers">Layers as asked.</param>
    /// <param name="fineSurface">True where the surface may dry or is held at a head.</param>
    /// <param name="coarser">All sizes times this.</param>
    public ElementSizes(ImmutableArray<LabLayer> layers, bool fineSurface, double coarser)
    {
        double whole = layers.Sum(l => l.ThicknessMeters);
        double most = Math.Max(LabGrid.LargestMeters, whole * LabGrid.LargestShare);
        largest = [.. layers.Select(l => Math.Min(most, LabGrid.LargestIn(l.Curve)) * coarser)];
        if (fineSurface)
        {
            fine.Add((0.0, LabGrid.SurfaceMeters * coarser));
        }

        double depth = 0.0;
        for (int i = 0; i < layers.Length; i++)
        {
            if (i > 0 && layers[i].Curve != layers[i - 1].Curve)
            {
                fine.Add((depth, LabGrid.BoundaryMeters * coarser));
            }

            TopMeters.Add(depth);
            depth += layers[i].ThicknessMeters;
        }
    }

    /// <summary>Depth of the top of each layer, m.</summary>
    public List<double> TopMeters { get; } = [];

    /// <summary>
    /// Cuts a stretch into as many elements as its sizes ask for: the ends stand at equal steps of the
    /// integral of 1 over the size.
    /// </summary>
    public void Cut(
        int layer,
        double topMeters,
        double thickMeters,
        ImmutableArray<double>.Builder elements
    )
    {
        Span<double> count = stackalloc double[Samples + 1];
        count[0] = 0.0;
        double part = thickMeters / Samples;
        for (int i = 0; i < Samples; i++)
        {
            count[i + 1] = count[i] + (part / At(layer, topMeters + ((i + 0.5) * part)));
        }

        int number = Math.Max(1, (int)Math.Ceiling(count[Samples] - RoundOff));
        double before = 0.0;
        int at = 0;
        for (int i = 1; i < number; i++)
        {
            double want = count[Samples] * i / number;
            while (count[at + 1] < want)
            {
                at++;
            }

            double here = part * (at + ((want - count[at]) / (count[at + 1] - count[at])));
            elements.Add(here - before);
            before = here;
        }

        elements.Add(thickMeters - before);
    }

    private double At(int layer, double depthMeters)
    {
        double size = largest[layer];
        foreach (var (depth, least) in fine)
        {
            size = Math.Min(size, least + (LabGrid.Growth * Math.Abs(depthMeters - depth)));
        }

        return size;
    }
}
