using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.App.Labs;

/// <summary>
/// Cuts the layers of a case into elements. A cell of <see cref="AsAskedMeters"/> or less is one element, so
/// that a case posed on so many nodes runs on so many nodes. Thicker cells say how finely the result is
/// wanted, not how finely it must be computed: they are halved, so that their middles are nodes, and each
/// half is cut on, finest where the head bends most.
/// </summary>
internal static class LabGrid
{
    /// <summary>Cells up to this are taken as asked, m.</summary>
    public const double AsAskedMeters = 0.0025;

    /// <summary>More elements than this are made only of as many cells.</summary>
    public const int MostElements = 3000;

    /// <summary>Elements of a column whose cells are thicker.</summary>
    public static double ColumnShare { get; set; } = 1.0 / 400.0;
    public static double CapMeters { get; set; } = 0.0025;
    public static double SurfaceMeters { get; set; } = 0.00015;
    public static double BoundaryMeters { get; set; } = 0.0005;
    public static double Growth { get; set; } = 0.2;

    /// <summary>Layers of the engine.</summary>
    /// <param name="layers">Layers as asked.</param>
    /// <param name="fineSurface">True where the surface may dry or is held at a head.</param>
    public static ImmutableArray<SoilLayer> Layers(ImmutableArray<LabLayer> layers, bool fineSurface)
    {
        double coarser = 1.0;
        while (true)
        {
            var sizes = new ElementSize(layers, fineSurface, coarser);
            ImmutableArray<SoilLayer> cut = [.. layers.Select((l, i) => Cut(l, sizes.Tops[i], sizes))];
            if (coarser > 1e4 || cut.Sum(l => l.ElementMeters.Length) <= Most(layers))
            {
                return cut;
            }

            coarser *= 1.25;
        }
    }

    private static int Most(ImmutableArray<LabLayer> layers) =>
        Math.Max(MostElements, layers.Sum(l => l.Cells));

    private static SoilLayer Cut(LabLayer layer, double topMeters, ElementSize sizes)
    {
        double cell = layer.ThicknessMeters / layer.Cells;
        if (cell <= AsAskedMeters * (1.0 + 1e-9))
        {
            return SoilLayer.Even(layer.Curve, layer.ThicknessMeters, layer.Cells);
        }

        var elements = ImmutableArray.CreateBuilder<double>();
        for (int half = 0; half < 2 * layer.Cells; half++)
        {
            sizes.Cut(topMeters + (0.5 * cell * half), 0.5 * cell, elements);
        }

        return new SoilLayer(layer.Curve, elements.ToImmutable());
    }
}

/// <summary>How thick an element may be at a depth.</summary>
internal sealed class ElementSize
{
    private const int Samples = 64;
    private readonly List<(double DepthMeters, double LeastMeters)> fine = [];
    private readonly double largest;
    private readonly double coarser;

    public ElementSize(ImmutableArray<LabLayer> layers, bool fineSurface, double coarser)
    {
        this.coarser = coarser;
        double whole = layers.Sum(l => l.ThicknessMeters);
        largest = Math.Max(LabGrid.CapMeters, whole * LabGrid.ColumnShare) * coarser;
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

            Tops.Add(depth);
            depth += layers[i].ThicknessMeters;
        }
    }

    /// <summary>Depth of the top of each layer, m.</summary>
    public List<double> Tops { get; } = [];

    /// <summary>Cuts a stretch into as many elements as its sizes ask for, graded like them.</summary>
    public void Cut(double topMeters, double thickMeters, ImmutableArray<double>.Builder elements)
    {
        Span<double> count = stackalloc double[Samples + 1];
        count[0] = 0.0;
        double part = thickMeters / Samples;
        for (int i = 0; i < Samples; i++)
        {
            count[i + 1] = count[i] + (part / At(topMeters + ((i + 0.5) * part)));
        }

        int number = Math.Max(1, (int)Math.Ceiling(count[Samples] - 1e-6));
        double before = 0.0;
        int at = 0;
        for (int i = 1; i <= number; i++)
        {
            double want = count[Samples] * i / number;
            while (at < Samples - 1 && count[at + 1] < want)
            {
                at++;
            }

            double here =
                i == number ? thickMeters : part * (at + ((want - count[at]) / (count[at + 1] - count[at])));
            elements.Add(here - before);
            before = here;
        }
    }

    private double At(double depthMeters)
    {
        double size = largest;
        foreach (var (depth, least) in fine)
        {
            size = Math.Min(size, least + (LabGrid.Growth * Math.Abs(depthMeters - depth)));
        }

        return size;
    }
}
