using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>A place that light falls on, with the direction it faces (length 1).</summary>
/// <param name="At">Where, m.</param>
/// <param name="Normal">Direction it faces.</param>
public readonly record struct Receiver(Point3 At, Point3 Normal);

/// <summary>
/// A way of light from the lamp to a receiver by mirrors of glass, unfolded: the receiver and all that stands
/// in the
/// way are copied into the cells behind the panes, so that the way is straight.
/// </summary>
internal sealed class MirrorPath
{
    private readonly LightScene scene;
    private readonly int cellX;
    private readonly int cellY;
    private readonly bool isBelow;
    private readonly PaneOptics?[] crossedX;
    private readonly PaneOptics?[] crossedY;
    private readonly PaneOptics? floor;

    private MirrorPath(LightScene scene, int cellX, int cellY, bool isBelow)
    {
        this.scene = scene;
        (this.cellX, this.cellY, this.isBelow) = (cellX, cellY, isBelow);
        crossedX = Crossed(scene, cellX, BoxFace.Left, BoxFace.Right);
        crossedY = Crossed(scene, cellY, BoxFace.Front, BoxFace.Back);
        floor = isBelow ? scene.Face(BoxFace.Floor).Pane : null;
        var blocks = ImmutableArray.CreateBuilder<Box3>();
        var canopies = ImmutableArray.CreateBuilder<Canopy>();
        for (int i = Math.Min(0, cellX); i <= Math.Max(0, cellX); i++)
        {
            for (int j = Math.Min(0, cellY); j <= Math.Max(0, cellY); j++)
            {
                for (int k = 0; k <= (isBelow ? 1 : 0); k++)
                {
                    blocks.AddRange(scene.Blocks.Select(b => Copy(b.Extent, i, j, k)));
                    canopies.AddRange(
                        scene.Canopies.Select(c => c with { Extent = Copy(c.Extent, i, j, k) })
                    );
                }
            }
        }

        EntersBeside =
            Order == 0 && Sides.Any(side => scene.Face(side).Kind == FaceKind.Open) && scene.Ceiling is null;
        if (EntersBeside)
        {
            blocks.AddRange(Walls());
        }

        Blocks = blocks.ToArray();
        Canopies = canopies.ToArray();
    }

    private static readonly BoxFace[] Sides = [BoxFace.Left, BoxFace.Right, BoxFace.Front, BoxFace.Back];

    /// <summary>
    /// True where light may come in by an open side; the other walls are then among the blocks.
    /// </summary>
    public bool EntersBeside { get; }

    /// <summary>Opaque boxes in the cells of the way.</summary>
    public Box3[] Blocks { get; }

    /// <summary>Leaves in the cells of the way.</summary>
    public Canopy[] Canopies { get; }

    /// <summary>Number of mirrors.</summary>
    public int Order => Math.Abs(cellX) + Math.Abs(cellY) + (isBelow ? 1 : 0);

    /// <summary>All ways with at most so many mirrors; the direct one first.</summary>
    public static ImmutableArray<MirrorPath> All(LightScene scene, int mostMirrors)
    {
        var ways = ImmutableArray.CreateBuilder<MirrorPath>();
        for (int i = -mostMirrors; i <= mostMirrors; i++)
        {
            for (int j = -mostMirrors; j <= mostMirrors; j++)
            {
                for (int k = 0; k <= 1; k++)
                {
                    if (Math.Abs(i) + Math.Abs(j) + k <= mostMirrors && IsOpen(scene, i, j, k))
                    {
                        ways.Add(new MirrorPath(scene, i, j, k == 1));
                    }
                }
            }
        }

        return [.. ways.OrderBy(w => w.Order)];
    }

    /// <summary>The receiver in its cell.</summary>
    public Receiver Image(Receiver receiver)
    {
        var (at, normal) = (receiver.At, receiver.Normal);
        return new Receiver(
            new Point3(
                Copy(at.X, cellX, scene.Length),
                Copy(at.Y, cellY, scene.Depth),
                isBelow ? -at.Z : at.Z
            ),
            new Point3(
                (cellX & 1) == 0 ? normal.X : -normal.X,
                (cellY & 1) == 0 ? normal.Y : -normal.Y,
                isBelow ? -normal.Z : normal.Z
            )
        );
    }

    /// <summary>Share that all mirrors throw on.</summary>
    /// <param name="ray">Direction of length 1.</param>
    public double Reflected(Point3 ray)
    {
        double share = 1.0;
        foreach (var pane in crossedX)
        {
            share *= pane!.Back(Math.Abs(ray.X));
        }

        foreach (var pane in crossedY)
        {
            share *= pane!.Back(Math.Abs(ray.Y));
        }

        return floor is null ? share : share * floor.Back(Math.Abs(ray.Z));
    }

    private IEnumerable<Box3> Walls()
    {
        const double thin = 1e-6;
        var (l, d, h) = (scene.Length, scene.Depth, scene.Height);
        var all = new[]
        {
            (BoxFace.Left, new Box3(new Point3(-thin, 0.0, 0.0), new Point3(0.0, d, h))),
            (BoxFace.Right, new Box3(new Point3(l, 0.0, 0.0), new Point3(l + thin, d, h))),
            (BoxFace.Front, new Box3(new Point3(0.0, -thin, 0.0), new Point3(l, 0.0, h))),
            (BoxFace.Back, new Box3(new Point3(0.0, d, 0.0), new Point3(l, d + thin, h))),
            (BoxFace.Floor, new Box3(new Point3(0.0, 0.0, -thin), new Point3(l, d, 0.0))),
        };
        return all.Where(w => scene.Face(w.Item1).Kind != FaceKind.Open).Select(w => w.Item2);
    }

    private static bool IsOpen(LightScene scene, int i, int j, int k) =>
        Crossed(scene, i, BoxFace.Left, BoxFace.Right).All(p => p is not null)
        && Crossed(scene, j, BoxFace.Front, BoxFace.Back).All(p => p is not null)
        && (k == 0 || scene.Face(BoxFace.Floor).Pane is not null);

    private static PaneOptics?[] Crossed(LightScene scene, int cell, BoxFace low, BoxFace high)
    {
        var panes = new PaneOptics?[Math.Abs(cell)];
        for (int i = 0; i < panes.Length; i++)
        {
            panes[i] = scene.Face((i & 1) == 0 == (cell > 0) ? high : low).Pane;
        }

        return panes;
    }

    private static double Copy(double value, int cell, double period) =>
        (cell & 1) == 0 ? (cell * period) + value : ((cell + 1) * period) - value;

    private Box3 Copy(Box3 box, int i, int j, int k)
    {
        var a = new Point3(
            Copy(box.From.X, i, scene.Length),
            Copy(box.From.Y, j, scene.Depth),
            k == 1 ? -box.From.Z : box.From.Z
        );
        var b = new Point3(
            Copy(box.To.X, i, scene.Length),
            Copy(box.To.Y, j, scene.Depth),
            k == 1 ? -box.To.Z : box.To.Z
        );
        return new Box3(
            new Point3(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z)),
            new Point3(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z))
        );
    }
}
