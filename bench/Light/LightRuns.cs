using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Litterfall.Physics.Light;

namespace Litterfall.Bench.Light;

/// <summary>
/// A box of 60 × 45 × 45 cm with glass sides, a pale back and floor, three lamps and twelve pieces of wood:
/// the map of 60 × 45
/// cells of 1 cm, all warm, on one core.
/// </summary>
[InProcess]
[WarmupCount(5)]
[IterationCount(9)]
public class LightRuns
{
    private static readonly MapGrid Grid = new(0.0, 60, 45);
    private readonly LightScene scene = Scene();
    private readonly ImmutableArray<Luminaire> lamps =
    [
        Luminaire.Rectangle(new Point3(0.30, 0.225, 0.50), (0.40, 0.10), 2000.0),
        Luminaire.Rectangle(new Point3(0.30, 0.10, 0.49), (0.55, 0.03), 1500.0),
        Luminaire.Rectangle(new Point3(0.15, 0.35, 0.52), (0.20, 0.20), 1000.0),
    ];

    private LightModel model = null!;
    private double moved;

    /// <summary>The factors of the box are kept between runs, as on the bench.</summary>
    [GlobalSetup]
    public void Warm()
    {
        model = new LightModel(scene, LightDetail.Live);
        MapOfThree();
    }

    /// <summary>The whole map.</summary>
    [Benchmark(Baseline = true)]
    public double MapOfThree() => lamps.Sum(lamp => model.Map(Grid, model.Light(lamp))[1234]);

    /// <summary>One lamp pushed by a millimeter; the other two are kept.</summary>
    [Benchmark]
    public double MovedLamp()
    {
        moved = (moved + 0.001) % 0.05;
        var lamp = lamps[0] with { Center = lamps[0].Center with { X = 0.30 + moved } };
        return model.Map(Grid, model.Light(lamp))[1234];
    }

    /// <summary>A changed box: all factors anew.</summary>
    [Benchmark]
    public double ChangedBox()
    {
        var anew = new LightModel(scene, LightDetail.Live);
        return lamps.Sum(lamp => anew.Map(Grid, anew.Light(lamp))[1234]);
    }

    /// <summary>Straight light alone, as lines with exact shadows.</summary>
    [Benchmark]
    public double StraightByLines()
    {
        var alone = Straight();
        return lamps.Sum(lamp => alone.Map(Grid, alone.Light(lamp))[1234]);
    }

    /// <summary>
    /// The peer: straight light by 144 points of a Fibonacci lattice on each lamp, each tried against each
    /// piece.
    /// </summary>
    [Benchmark]
    public double StraightByLattice() => lamps.Sum(lamp => Lattice.Map(scene, lamp, Grid)[1234]);

    /// <summary>Worst cell of each way against the finest sum, share of the mean.</summary>
    public static (double Lines, double Points) WorstCells()
    {
        var runs = new LightRuns();
        var straight = runs.Straight();
        var fine = new LightModel(straight.Scene, LightDetail.Fine);
        double[] exact = new double[Grid.CellsX * Grid.CellsY];
        double[] lines = new double[exact.Length];
        double[] points = new double[exact.Length];
        foreach (var lamp in runs.lamps)
        {
            Add(lines, straight.Map(Grid, straight.Light(lamp)));
            Add(points, Lattice.Map(runs.scene, lamp, Grid));
            for (int i = 0; i < exact.Length; i++)
            {
                var at = new Point3(((i % 60) + 0.5) * 0.01, ((i / 60) + 0.5) * 0.01, 0.0);
                exact[i] += runs.scene.Blocks.Any(b => b.Extent.Contains(at))
                    ? 0.0
                    : fine.Direct(new Receiver(at, Point3.Up), lamp);
            }
        }

        double Worst(double[] map) => map.Zip(exact, (a, b) => Math.Abs(a - b)).Max() / exact.Average();
        return (Worst(lines), Worst(points));
    }

    private static void Add(double[] sum, double[] one)
    {
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] += one[i];
        }
    }

    /// <summary>The box with nothing that throws light back.</summary>
    private LightModel Straight() =>
        new(
            scene with
            {
                Faces = [.. scene.Faces.Select(_ => FaceFinish.Black)],
                Blocks = [.. scene.Blocks.Select(b => b with { Reflectance = 0.0 })],
            },
            LightDetail.Live
        );

    private static LightScene Scene()
    {
        var pane = PaneOptics.Single(0.004, 1.52, 5.0);
        var glass = FaceFinish.Glass(pane);
        var box = new LightScene
        {
            Length = 0.60,
            Depth = 0.45,
            Height = 0.45,
            Faces = [glass, glass, glass, FaceFinish.Diffuse(0.25), FaceFinish.Diffuse(0.10)],
            Blocks =
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(i =>
                    {
                        var from = new Point3(
                            0.04 + (0.14 * (i % 4)),
                            0.05 + (0.13 * (i / 4)),
                            0.03 * (i % 5)
                        );
                        return new LightBlock(new Box3(from, from + new Point3(0.07, 0.05, 0.04)), 0.2);
                    }),
            ],
        };
        return box with { Lid = [box.WholeLid(LidKind.Pane, pane)] };
    }
}
