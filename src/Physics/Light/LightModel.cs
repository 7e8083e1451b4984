using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>How finely light is summed up.</summary>
/// <param name="PatchMeters">Longest side of a patch of diffuse light, m.</param>
/// <param name="Mirrors">Most mirrors on a way.</param>
/// <param name="Points">Points of the rule between two bends, for single places.</param>
public sealed record LightDetail(double PatchMeters, int Mirrors, int Points)
{
    /// <summary>
    /// Most patches: in a box with more than these the sides are longer, for the work grows with the
    /// square of their number. A box of 60 x 45 x 45 cm has 600 of 5 cm.
    /// </summary>
    public int MostPatches { get; init; } = 1000;

    /// <summary>For drawings that follow the hand: 5 cm, two mirrors.</summary>
    public static readonly LightDetail Live = new(0.05, 2, 4);

    /// <summary>For single cases: 2.5 cm, three mirrors.</summary>
    public static readonly LightDetail Fine = new(0.025, 3, 6) { MostPatches = 3500 };
}

/// <summary>Cells of a level map.</summary>
/// <param name="Height">Over the ground, m.</param>
/// <param name="CellsX">Along x.</param>
/// <param name="CellsY">Along y.</param>
public readonly record struct MapGrid(double Height, int CellsX, int CellsY);

/// <summary>
/// Light of lamps in a box: straight through the lid, by mirrors of glass, and thrown back by diffuse faces.
/// What depends on
/// the box alone is kept, so a moved lamp costs little. Not for several threads at once.
/// </summary>
/// <remarks>
/// Deterministic: the same box and lamps give the same bits. Far-field tables in an opening, glass by
/// Fresnel,
/// faces by Lambert, leaves by Monsi and Saeki. Illuminance in lx.
/// </remarks>
public sealed class LightModel
{
    private const int NodesX = 16;
    private const int NodesY = 12;
    private readonly LightScene scene;
    private readonly LightDetail detail;
    private readonly ImmutableArray<MirrorPath> paths;
    private readonly PatchNet net;
    private readonly LightScratch scratch = new();
    private readonly Nodes lastMap;

    /// <summary>The model of a box.</summary>
    /// <param name="scene">The box.</param>
    /// <param name="detail">How finely.</param>
    /// <param name="cancel">
    /// Ends this and what is asked of the model, until another is set as <see cref="Cancel"/>.
    /// </param>
    public LightModel(LightScene scene, LightDetail detail, CancellationToken cancel = default)
        : this(scene, detail, new PatchNet(scene, detail, cancel), new Nodes()) => Cancel = cancel;

    private LightModel(LightScene scene, LightDetail detail, PatchNet net, Nodes lastMap)
    {
        this.lastMap = lastMap;
        this.scene = scene;
        this.detail = detail;
        this.net = net;
        paths = MirrorPath.All(scene, detail.Mirrors);
    }

    /// <summary>
    /// The same box with other leaves before the lamps; light between faces stays as it is.
    /// </summary>
    /// <param name="canopies">The leaves.</param>
    public LightModel Under(ImmutableArray<Canopy> canopies) =>
        new(scene with { Canopies = canopies }, detail, net, lastMap) { Cancel = Cancel };

    /// <summary>
    /// Ends what is asked of the model with an <see cref="OperationCanceledException"/>, between two places.
    /// </summary>
    public CancellationToken Cancel { get; set; }

    /// <summary>The box.</summary>
    public LightScene Scene => scene;

    /// <summary>
    /// Lets go of what only the next lamp or the next map would use; light at places is there at once as
    /// before.
    /// </summary>
    public void Release()
    {
        net.Release();
        lastMap.Kept = null;
    }

    /// <summary>A lamp with the diffuse light it makes.</summary>
    /// <param name="lamp">The lamp.</param>
    public LitLamp Light(Luminaire lamp)
    {
        double[] direct = new double[net.Patches.Length];
        for (int i = 0; i < direct.Length; i++)
        {
            Cancel.ThrowIfCancellationRequested();
            direct[i] = OnPatch(net.Patches[i].Receiver, lamp);
        }

        return new LitLamp(lamp, net.Exitance(direct));
    }

    /// <summary>Illuminance at a place, lx.</summary>
    /// <param name="receiver">The place and the direction it faces.</param>
    /// <param name="lamp">A lamp of <see cref="Light"/>.</param>
    public double At(Receiver receiver, LitLamp lamp) => At(receiver, [lamp])[0];

    /// <summary>
    /// Illuminance of several lamps at a place, lx: what the box alone decides is found once.
    /// </summary>
    /// <param name="receiver">The place and the direction it faces.</param>
    /// <param name="lamps">Lamps of <see cref="Light"/>.</param>
    public double[] At(Receiver receiver, IReadOnlyList<LitLamp> lamps)
    {
        Cancel.ThrowIfCancellationRequested();
        double[] sums = new double[lamps.Count];
        double[]? factors = null;
        for (int i = 0; i < sums.Length; i++)
        {
            sums[i] = WithMirrors(receiver, lamps[i].Lamp);
            if (lamps[i].Exitance.Length > 0)
            {
                if (factors is null)
                {
                    factors = new double[lamps[i].Exitance.Length];
                    net.Gather(receiver, factors);
                }

                sums[i] += PatchNet.Dot(factors, lamps[i].Exitance);
            }
        }

        return sums;
    }

    /// <summary>Illuminance straight from the lamp through the lid, past blocks and leaves, lx.</summary>
    /// <param name="receiver">The place and the direction it faces.</param>
    /// <param name="lamp">The lamp.</param>
    public double Direct(Receiver receiver, Luminaire lamp) =>
        new LampView(scene, lamp, paths[0], receiver, scratch).Fine(detail.Points);

    /// <summary>
    /// Level illuminance at the middles of cells, lx; rows from front to back, x rising within.
    /// </summary>
    /// <param name="grid">The cells.</param>
    /// <param name="lamp">A lamp of <see cref="Light"/>.</param>
    /// <param name="rises">Height of each cell over that of the grid, m; level if left out.</param>
    public double[] Map(MapGrid grid, LitLamp lamp, double[]? rises = null)
    {
        double[] cells = new double[grid.CellsX * grid.CellsY];
        double[] nodes = Smooth(grid, lamp, rises);
        double nearest = 0.5 * Math.Max(lamp.Lamp.Half.X, lamp.Lamp.Half.Y);
        double highest = grid.Height + (rises is null ? 0.0 : rises.Max());
        bool isNear = Math.Abs(lamp.Lamp.Center.Z - highest) < nearest;
        for (int j = 0; j < grid.CellsY; j++)
        {
            Cancel.ThrowIfCancellationRequested();
            double y = (j + 0.5) * scene.Depth / grid.CellsY;
            for (int i = 0; i < grid.CellsX; i++)
            {
                int cell = (j * grid.CellsX) + i;
                var at = new Point3(
                    (i + 0.5) * scene.Length / grid.CellsX,
                    y,
                    grid.Height + (rises is null ? 0.0 : rises[cell])
                );
                if (IsInside(at))
                {
                    continue;
                }

                var view = new LampView(scene, lamp.Lamp, paths[0], new Receiver(at, Point3.Up), scratch);
                cells[cell] =
                    (isNear ? view.Fine(4) : view.Quick(QuickRule.Direct)) + Between(nodes, grid, i, j);
            }
        }

        return cells;
    }

    private double WithMirrors(Receiver receiver, Luminaire lamp)
    {
        double sum = 0.0;
        foreach (var path in paths)
        {
            sum += new LampView(scene, lamp, path, path.Image(receiver), scratch).Fine(detail.Points);
        }

        return sum;
    }

    /// <summary>
    /// Light on a patch; the last mirror is left out, for next to nothing of it is thrown back.
    /// </summary>
    private double OnPatch(Receiver receiver, Luminaire lamp)
    {
        double sum = 0.0;
        foreach (var path in paths)
        {
            if (path.Order < detail.Mirrors)
            {
                var view = new LampView(scene, lamp, path, path.Image(receiver), scratch);
                sum += view.Quick(path.Order == 0 ? QuickRule.Direct : QuickRule.Mirrored);
            }
        }

        return sum;
    }

    /// <summary>Mirrored and diffuse light at coarse nodes: both change slowly.</summary>
    private double[] Smooth(MapGrid grid, LitLamp lamp, double[]? rises)
    {
        double[] nodes = new double[NodesX * NodesY];
        double[] factors = Gathered(grid, rises);
        int n = net.Patches.Length;
        for (int k = 0; k < nodes.Length; k++)
        {
            Cancel.ThrowIfCancellationRequested();
            var at = Node(grid, k, rises);
            if (IsInside(at))
            {
                nodes[k] = double.NaN;
                continue;
            }

            double sum = n > 0 ? PatchNet.Dot(factors.AsSpan(k * n, n), lamp.Exitance) : 0.0;
            for (int p = 1; p < paths.Length; p++)
            {
                var image = paths[p].Image(new Receiver(at, Point3.Up));
                sum += new LampView(scene, lamp.Lamp, paths[p], image, scratch).Quick(QuickRule.Mirrored);
            }

            nodes[k] = sum;
        }

        Fill(nodes);
        return nodes;
    }

    /// <summary>A node inside a block takes the light of the nearest one outside.</summary>
    private static void Fill(double[] nodes)
    {
        double[] known = [.. nodes];
        for (int k = 0; k < nodes.Length; k++)
        {
            if (!double.IsNaN(known[k]))
            {
                continue;
            }

            int nearest = int.MaxValue;
            nodes[k] = 0.0;
            for (int m = 0; m < known.Length; m++)
            {
                int dx = (m % NodesX) - (k % NodesX);
                int dy = (m / NodesX) - (k / NodesX);
                int square = (dx * dx) + (dy * dy);
                if (!double.IsNaN(known[m]) && square < nearest)
                {
                    nearest = square;
                    nodes[k] = known[m];
                }
            }
        }
    }

    private double[] Gathered(MapGrid grid, double[]? rises)
    {
        if (lastMap.Kept is { } kept && kept.Grid == grid && ReferenceEquals(kept.Rises, rises))
        {
            return kept.Factors;
        }

        double[] factors = net.GatherAll(
            [
                .. Enumerable
                    .Range(0, NodesX * NodesY)
                    .Select(k => new Receiver(Node(grid, k, rises), Point3.Up)),
            ],
            Cancel
        );
        lastMap.Kept = (grid, rises, factors);
        return factors;
    }

    /// <summary>
    /// Factors at the nodes of the last map; light between faces is the same under other leaves, and so are
    /// they.
    /// </summary>
    private sealed class Nodes
    {
        public (MapGrid Grid, double[]? Rises, double[] Factors)? Kept { get; set; }
    }

    private Point3 Node(MapGrid grid, int k, double[]? rises)
    {
        double x = Spread(k % NodesX, NodesX, grid.CellsX);
        double y = Spread(k / NodesX, NodesY, grid.CellsY);
        int cell = (Math.Min((int)y, grid.CellsY - 1) * grid.CellsX) + Math.Min((int)x, grid.CellsX - 1);
        return new Point3(
            x * scene.Length / grid.CellsX,
            y * scene.Depth / grid.CellsY,
            grid.Height + (rises is null ? 0.0 : rises[cell])
        );
    }

    /// <summary>Place of a node in cells, from the middle of the first cell to that of the last.</summary>
    private static double Spread(int node, int nodes, int cells) =>
        0.5 + ((cells - 1.0) * node / (nodes - 1));

    private static double Between(double[] nodes, MapGrid grid, int i, int j)
    {
        double x = grid.CellsX > 1 ? (double)i / (grid.CellsX - 1) * (NodesX - 1) : 0.0;
        double y = grid.CellsY > 1 ? (double)j / (grid.CellsY - 1) * (NodesY - 1) : 0.0;
        int a = Math.Min((int)x, NodesX - 2);
        int b = Math.Min((int)y, NodesY - 2);
        double u = x - a;
        double v = y - b;
        int k = (b * NodesX) + a;
        return ((1.0 - v) * (((1.0 - u) * nodes[k]) + (u * nodes[k + 1])))
            + (v * (((1.0 - u) * nodes[k + NodesX]) + (u * nodes[k + NodesX + 1])));
    }

    private bool IsInside(Point3 at)
    {
        foreach (var block in scene.Blocks)
        {
            if (block.Extent.Contains(at))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>A lamp with the exitance of each patch that it lights, lm/m².</summary>
/// <param name="Lamp">The lamp.</param>
/// <param name="Exitance">Exitance of the patches of the model it was lit in, lm/m².</param>
public sealed record LitLamp(Luminaire Lamp, double[] Exitance);
