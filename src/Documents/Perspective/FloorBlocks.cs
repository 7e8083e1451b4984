using System.Collections.Immutable;
using System.Numerics;
using Litterfall.Documents.Views;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// The floor as blocks between the backgrounds: drainage layer and soil with its steps, slopes and basins.
/// Where the backgrounds begin above the base, the floor below them reaches to the panes.
/// </summary>
internal sealed class FloorBlocks
{
    private readonly Scene scene;
    private readonly Terrain terrain;
    private readonly ImmutableArray<WaterBasin> basins;
    private readonly float from;

    /// <summary>The floor of a box.</summary>
    public FloorBlocks(Scene scene)
    {
        this.scene = scene;
        terrain = scene.Terrain;
        basins = WaterBasins.Of(scene.Numbers.Design, scene.Numbers.Box);
        from = scene.Design.Background is null ? 0 : (float)(scene.Numbers.Box.BackgroundFrom?.Si ?? 0);
    }

    /// <summary>Basins of open water.</summary>
    public ImmutableArray<WaterBasin> Basins => basins;

    /// <summary>True where a drainage layer of grains lies, not a raised floor.</summary>
    public bool HasGrains =>
        scene.Numbers.Layers.Any(l => l.Kind == LayerKind.Drainage && l.Material is not null);

    /// <summary>The drainage layer as blocks; empty for a raised floor.</summary>
    public IEnumerable<FloorBlock> Drainage()
    {
        if (!HasGrains)
        {
            yield break;
        }

        var top = (float)terrain.Drainage;
        foreach (var column in Columns(_ => 0, (_, _) => top))
        {
            var sunk = basins.FirstOrDefault(b => Covers(b, column));
            var below = sunk is null ? 0 : Math.Max(0, (float)(sunk.Depth.Si + sunk.Edge.Si - SoilMean));
            yield return below > 0
                ? column with
                {
                    FrontTop = Math.Max(0, top - below),
                    BackTop = Math.Max(0, top - below),
                }
                : column;
        }
    }

    /// <summary>The soil as blocks with level or sloping tops.</summary>
    public IEnumerable<FloorBlock> Soil() =>
        Columns(_ => (float)terrain.Drainage, (x, y) => (float)terrain.Ground(x, y))
            .Where(c => !basins.Any(b => Covers(b, c)));

    private double SoilMean =>
        scene.Numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil)?.Depth.Si ?? 0;

    private static bool Covers(WaterBasin basin, in FloorBlock column) =>
        Math.Abs(((column.Left + column.Right) / 2) - basin.Middle.X) < basin.Length.Si / 2
        && Math.Abs(((column.Front + column.Back) / 2) - basin.Middle.Y) < basin.Width.Si / 2;

    /// <summary>
    /// Blocks between all places where the ground bends, a background begins or water is let in.
    /// </summary>
    private IEnumerable<FloorBlock> Columns(Func<float, float> low, Func<double, double, float> high)
    {
        var (l, r) = ((float)terrain.Left, (float)terrain.Right);
        var (f, b) = ((float)terrain.Front, (float)terrain.Back);
        var isDeep = from > 1e-6f;
        var xs = Stops(
            [
                l,
                r,
                .. terrain.Steps().Select(s => (float)s),
                .. basins.SelectMany(w => Ends(w.Middle.X, w.Length.Si)),
                .. isDeep ? new[] { 0f, (float)terrain.Length } : [],
            ],
            isDeep ? (0, (float)terrain.Length) : (l, r)
        );
        var ys = Stops(
            [
                f,
                b,
                .. basins.SelectMany(w => Ends(w.Middle.Y, w.Width.Si)),
                .. isDeep ? new[] { 0f, (float)terrain.DepthOfBox } : [],
            ],
            isDeep ? (0, (float)terrain.DepthOfBox) : (f, b)
        );
        for (var i = 0; i + 1 < xs.Count; i++)
        {
            for (var j = 0; j + 1 < ys.Count; j++)
            {
                var x = (xs[i] + xs[i + 1]) / 2;
                var isInside = x > l && x < r && (ys[j] + ys[j + 1]) / 2 > f && (ys[j] + ys[j + 1]) / 2 < b;
                var (front, back) = (high(x, ys[j]), high(x, ys[j + 1]));
                if (!isInside)
                {
                    (front, back) = (Math.Min(front, from), Math.Min(back, from));
                }

                var foot = low(x);
                if (Math.Max(front, back) > foot + 1e-6f)
                {
                    yield return new FloorBlock(xs[i], xs[i + 1], ys[j], ys[j + 1])
                    {
                        Foot = foot,
                        FrontTop = Math.Max(foot, front),
                        BackTop = Math.Max(foot, back),
                    };
                }
            }
        }
    }

    private static float[] Ends(double middle, double length) =>
        [(float)(middle - (length / 2)), (float)(middle + (length / 2))];

    private static List<float> Stops(IEnumerable<float> all, (float From, float To) room)
    {
        var stops = new List<float>();
        foreach (var at in all.Where(s => s >= room.From - 1e-6f && s <= room.To + 1e-6f).Order())
        {
            if (stops.Count == 0 || at - stops[^1] > 1e-4f)
            {
                stops.Add(at);
            }
        }

        return stops;
    }
}

/// <summary>A block of the floor with a top that slopes from front to back.</summary>
/// <param name="Left">Its left face, m.</param>
/// <param name="Right">Its right face.</param>
/// <param name="Front">Its front face.</param>
/// <param name="Back">Its back face.</param>
internal readonly record struct FloorBlock(float Left, float Right, float Front, float Back)
{
    /// <summary>Its lower face, m over the base.</summary>
    public required float Foot { get; init; }

    /// <summary>Its top in front.</summary>
    public required float FrontTop { get; init; }

    /// <summary>Its top at the back.</summary>
    public required float BackTop { get; init; }

    /// <summary>What it holds, m³.</summary>
    public double Volume =>
        (double)(Right - Left) * (Back - Front) * ((((double)FrontTop + BackTop) / 2) - Foot);

    /// <summary>Height of its top at a place from front to back.</summary>
    public float Top(float y) =>
        Back - Front < 1e-9f ? FrontTop : FrontTop + ((BackTop - FrontTop) * (y - Front) / (Back - Front));
}
