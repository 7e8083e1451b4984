using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Light;

/// <summary>Light on the ground: the map, its means, and the shade in it.</summary>
internal sealed class GroundLight
{
    private const int CoarseX = 12;
    private const int CoarseY = 9;
    private readonly LightBox box;
    private readonly LightField field;
    private readonly MapGrid grid;
    private readonly LightField.Sums[] cells;
    private readonly bool[] isCovered;
    private readonly bool[] isWater;
    private readonly bool[] isShelter;

    /// <summary>The light on the ground of a box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="field">Its lamps.</param>
    /// <param name="cellMeters">Cells of the map, about, m.</param>
    public GroundLight(LightBox box, LightField field, double cellMeters)
    {
        this.box = box;
        this.field = field;
        grid = Grid(Count(box.Scene.Length, cellMeters), Count(box.Scene.Depth, cellMeters));
        double[] rises = Rises(grid);
        double[] lampMeans = new double[field.LampCount];
        cells = field.Map(grid, rises, box.Scene.Canopies, lampMeans);
        double all = lampMeans.Sum();
        LampShares = [.. lampMeans.Select(m => all > 0.0 ? m / all : 0.0)];
        isCovered = [.. cells.Select((_, i) => box.Scene.Blocks.Any(b => Stands(b.Extent, i, rises)))];
        isWater = [.. cells.Select((_, i) => box.IsWater(At(i).X, At(i).Y))];
        isShelter = [.. cells.Select((_, i) => box.Covers.Any(b => Stands(b, i, rises)))];
        double[] open = [.. cells.Where((_, i) => IsOpen(i)).Select(c => c.Micromoles).DefaultIfEmpty(0.0)];
        Map = new LightMap(grid.CellsX, grid.CellsY, box.Origin.X, box.Origin.Y)
        {
            Cell = (box.Scene.Length / grid.CellsX, box.Scene.Depth / grid.CellsY),
            Micromoles = [.. cells.Select((c, i) => isCovered[i] ? 0.0 : c.Micromoles)],
            IsCovered = [.. isCovered],
            Statistics = MapStatistics.Of(open),
        };
    }

    /// <summary>The map.</summary>
    public LightMap Map { get; }

    /// <summary>Share of each lamp in the photons on the ground.</summary>
    public ImmutableArray<double> LampShares { get; }

    /// <summary>Mean on the moss, µmol/(m² s); null without.</summary>
    public double? Moss
    {
        get
        {
            if (box.Terrain.Moss <= 0.0)
            {
                return null;
            }

            var moss = cells.Where((_, i) => IsOpen(i) && At(i).Y >= box.MossFrom).ToList();
            return moss.Count == 0 ? null : moss.Average(c => c.Micromoles);
        }
    }

    /// <summary>
    /// Mean of the open ground, and its photons with more and with fewer leaves, µmol/(m² s).
    /// </summary>
    /// <param name="thin">Fewer leaves.</param>
    /// <param name="thick">More.</param>
    public (LightField.Sums Mean, double Low, double High) Means(
        ImmutableArray<Canopy> thin,
        ImmutableArray<Canopy> thick
    )
    {
        var open = cells.Where((_, i) => IsOpen(i)).ToList();
        if (open.Count == 0)
        {
            return (default, 0.0, 0.0);
        }

        var sum = open.Aggregate((a, b) => a + b);
        var mean = (1.0 / open.Count) * sum;
        if (thin.IsEmpty)
        {
            return (mean, mean.Micromoles, mean.Micromoles);
        }

        var coarse = Grid(CoarseX, CoarseY);
        double[] rises = Rises(coarse);
        double Of(ImmutableArray<Canopy> leaves) =>
            field.Map(coarse, rises, leaves).Average(c => c.Micromoles);
        double usual = Of(box.Scene.Canopies);
        return usual <= 0.0
            ? (mean, mean.Micromoles, mean.Micromoles)
            : (mean, mean.Micromoles * Of(thick) / usual, mean.Micromoles * Of(thin) / usual);
    }

    /// <summary>
    /// Light on the leaf litter over that at soil level, the same places of the open ground; 1 without.
    /// </summary>
    public double LitterOverSoil()
    {
        var coarse = Grid(CoarseX, CoarseY);
        double Of(double litter) =>
            field
                .Map(coarse, Rises(coarse, litter), box.Scene.Canopies)
                .Where((_, i) => !IsWaterAt(coarse, i))
                .Select(c => c.Micromoles)
                .DefaultIfEmpty(0.0)
                .Average();
        double soil = box.Terrain.Litter > 0.0 ? Of(0.0) : 0.0;
        return soil > 0.0 ? Of(box.Terrain.Litter) / soil : 1.0;
    }

    /// <summary>True for ground that is neither under wood or stone nor open water.</summary>
    private bool IsOpen(int cell) => !isCovered[cell] && !isWater[cell];

    /// <summary>The shade on the ground.</summary>
    /// <param name="plants">Light at the plants, among which the brightest place may be.</param>
    /// <param name="computed">Makes a figure.</param>
    public LightRefuge Refuge(IEnumerable<PlantLight> plants, Func<string, Unit, double, Figure> computed)
    {
        double limit = box.With.Light.RefugeLight.Use();
        bool[] isDark =
        [
            .. cells.Select(
                (c, i) => isShelter[i] || (!isCovered[i] && c.Micromoles <= limit && !isWater[i])
            ),
        ];
        int ground = cells.Where((_, i) => IsOpen(i) || isShelter[i]).Count();
        double cell = Map.Cell.X * Map.Cell.Y;
        double one = box.With.Light.RefugePatch.UseSi();
        double[] sizes = [.. Patches(isDark).Select(size => (size * cell) + 1e-9)];
        bool[] isOpen = [.. isCovered.Select((covered, i) => !covered || isShelter[i])];
        double bright = plants.Select(p => p.Level.Si * 1e6).Append(Map.Statistics.Most).Max();
        double dark = isShelter.Any(s => s) ? 0.0 : Map.Statistics.Least;
        return new LightRefuge(
            computed(
                "share of the ground that is dark or under a cover",
                Unit.Percent,
                ground > 0 ? isDark.Count(d => d) / (double)ground : 0.0
            ),
            computed(
                FormattableString.Invariant(
                    $"shady patches of {box.With.Light.RefugePatch.Number:0.#} cm2 or more"
                ),
                Unit.One,
                sizes.Count(size => size >= one)
            ),
            computed("darkest over brightest place", Unit.One, bright > 0.0 ? dark / bright : 0.0)
        )
        {
            Places = computed(
                FormattableString.Invariant(
                    $"places of {box.With.Light.RefugePatch.Number:0.#} cm2 in the shade"
                ),
                Unit.One,
                sizes.Sum(size => Math.Floor(size / one))
            ),
            Reach = computed(
                "longest way from open ground to shade",
                Unit.Centimeter,
                ShadeReach.Meters(isDark, isOpen, grid.CellsX, Map.Cell)
            ),
        };
    }

    /// <summary>Sizes of patches that hang together by edges, in cells.</summary>
    private IEnumerable<int> Patches(bool[] isDark)
    {
        bool[] seen = new bool[isDark.Length];
        var open = new Stack<int>();
        for (int start = 0; start < isDark.Length; start++)
        {
            if (!isDark[start] || seen[start])
            {
                continue;
            }

            int size = 0;
            seen[start] = true;
            open.Push(start);
            while (open.TryPop(out int i))
            {
                size++;
                int x = i % grid.CellsX;
                foreach (
                    int next in new[]
                    {
                        x > 0 ? i - 1 : -1,
                        x < grid.CellsX - 1 ? i + 1 : -1,
                        i - grid.CellsX,
                        i + grid.CellsX,
                    }
                )
                {
                    if (next >= 0 && next < isDark.Length && isDark[next] && !seen[next])
                    {
                        seen[next] = true;
                        open.Push(next);
                    }
                }
            }

            yield return size;
        }
    }

    private static int Count(double meters, double cellMeters) =>
        Math.Clamp((int)Math.Round(meters / cellMeters), 4, LightPolicy.MostCells);

    private static MapGrid Grid(int x, int y) => new(0.0, x, y);

    private (double X, double Y) At(int cell) => At(grid, cell);

    private (double X, double Y) At(MapGrid of, int cell) =>
        (
            ((cell % of.CellsX) + 0.5) * box.Scene.Length / of.CellsX,
            ((cell / of.CellsX) + 0.5) * box.Scene.Depth / of.CellsY
        );

    private bool IsWaterAt(MapGrid of, int cell) => box.IsWater(At(of, cell).X, At(of, cell).Y);

    private double[] Rises(MapGrid of, double litterMeters = 0.0) =>
        [
            .. Enumerable
                .Range(0, of.CellsX * of.CellsY)
                .Select(i => box.Rise(At(of, i).X, At(of, i).Y, litterMeters)),
        ];

    private bool Stands(in Box3 block, int cell, double[] rises)
    {
        var (x, y) = At(cell);
        return x >= block.From.X
            && x <= block.To.X
            && y >= block.From.Y
            && y <= block.To.Y
            && rises[cell] <= block.To.Z;
    }
}
