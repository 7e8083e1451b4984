using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>
/// Cuts the layers of a case into elements. Cells say how finely the result is wanted, not how finely it
/// must be computed: they are halved, so that their middles are nodes, and each half is cut on, finest where
/// the head bends most. Under long weather, where elements are dear, a cell of <see cref="AsAskedMeters"/>
/// or less is one element, unless its material is too coarse for it: on 53 nodes of a floor under 90 days of
/// mist the drained water is good to 0.03 %.
/// </summary>
public static class LabGrid
{
    /// <summary>
    /// Cells up to this are taken as asked under long weather, m; the usual resolution of shallow columns.
    /// </summary>
    public const double AsAskedMeters = 0.0025;

    /// <summary>More elements than this are made only of as many cells.</summary>
    public const int MostElements = 3000;

    /// <summary>
    /// Largest element of a thicker cell, m. Infiltration into a dry 1 m column (Celia, Bouloutas and Zarba
    /// 1990) misses its converged value by 0.2 % at 2.5 mm, 0.1 % at this, 0.03 % at 0.5 mm; the time of the
    /// run is in proportion.
    /// </summary>
    public const double LargestMeters = 0.00125;

    /// <summary>Largest element as a share of the column, for deep ones.</summary>
    public const double LargestShare = 1.0 / 800.0;

    /// <summary>
    /// Largest element of a material, m: a quarter of the suction at its knee, which is close to 1/(4α) of
    /// coarse ones. With elements of 1/α a steady head in coarse gravel misses by 0.012 cm.
    /// </summary>
    /// <param name="curve">The material.</param>
    public static double LargestIn(HydraulicCurve curve) => -0.25 * curve.SteepestHeadMeters;

    /// <summary>
    /// Element at a surface that dries or is held at a head, m. When the surface of the loams and the clay of
    /// Vanderborght et al. (2005) runs dry depends on it: evaporated water moves by less than 0.1 % when it
    /// is cut to a third.
    /// </summary>
    public const double SurfaceMeters = 0.00015;

    /// <summary>Element beside a boundary between soils, m; water is perched in its last mm.</summary>
    public const double BoundaryMeters = 0.0005;

    /// <summary>Growth of the elements with the distance from either; half of it changes nothing.</summary>
    public const double Growth = 0.2;

    // Coarser in steps of a quarter until there are few enough.
    private const double Coarsening = 1.25;
    private const double RoundOff = 1e-9;

    /// <summary>Layers of the engine.</summary>
    /// <param name="layers">Layers as asked.</param>
    /// <param name="fineSurface">True where the surface may dry or is held at a head.</param>
    /// <param name="longWeather">True where the forcing changes so often that elements are dear.</param>
    public static ImmutableArray<ColumnLayer> Layers(
        ImmutableArray<LabLayer> layers,
        bool fineSurface,
        bool longWeather
    )
    {
        double asAsked = longWeather ? AsAskedMeters * (1.0 + RoundOff) : 0.0;
        int most = Math.Max(MostElements, 2 * layers.Sum(l => l.Cells));
        for (double coarser = 1.0; ; coarser *= Coarsening)
        {
            var sizes = new ElementSizes(layers, fineSurface, coarser);
            ImmutableArray<ColumnLayer> cut = [.. layers.Select((l, i) => Cut(l, i, sizes, asAsked))];
            if (cut.Sum(l => l.ElementMeters.Length) <= most)
            {
                return cut;
            }
        }
    }

    private static ColumnLayer Cut(LabLayer layer, int index, ElementSizes sizes, double asAskedMeters)
    {
        double cell = layer.ThicknessMeters / layer.Cells;
        if (cell <= asAskedMeters && cell <= LargestIn(layer.Curve))
        {
            return ColumnLayer.Even(layer.Curve, layer.ThicknessMeters, layer.Cells);
        }

        var elements = ImmutableArray.CreateBuilder<double>();
        for (int half = 0; half < 2 * layer.Cells; half++)
        {
            sizes.Cut(index, sizes.TopMeters[index] + (0.5 * cell * half), 0.5 * cell, elements);
        }

        return new ColumnLayer(layer.Curve, elements.ToImmutable());
    }
}
