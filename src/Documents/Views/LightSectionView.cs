using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>Light from the lid down to the ground, cut from front to back in the middle of the box.</summary>
internal sealed class LightSectionView
{
    private const double Sides = 8;
    private const double Above = 5;
    private const double Below = 7 + LightMarks.KeyTall;
    private const int Across = 30;
    private const int Up = 30;
    private const int MostLines = 8;
    private const int NamedLamps = 2;
    private const double UnderLid = 0.005;
    private const double OverGround = 0.003;
    private readonly Sketch sketch = new();
    private readonly Scene scene;
    private readonly LightFigures light;
    private readonly double scale;
    private readonly double lampRoom;

    private LightSectionView(Scene scene, LightFigures light, double scale)
    {
        (this.scene, this.light, this.scale) = (scene, light, scale);
        lampRoom = LampRoom(light, scene);
    }

    private Terrain Terrain => scene.Terrain;

    private static double LampRoom(LightFigures light, Scene scene) =>
        Math.Clamp(light.Lamps.Select(l => l.Height - scene.Terrain.Height).DefaultIfEmpty(0).Max(), 0, 0.25)
        + 0.015;

    /// <summary>The largest usual scale at which it fits a room on paper.</summary>
    internal static double Fitting(Scene scene, LightFigures light, (double Width, double Height) room) =>
        Math.Min(
            ViewScale.Fitting(scene, scene.Terrain.DepthOfBox, room.Width - (2 * Sides)),
            ViewScale.Fitting(
                scene,
                scene.Terrain.Height + LampRoom(light, scene),
                room.Height - Above - Below
            )
        );

    /// <summary>The section at a scale.</summary>
    internal static Drawing Draw(Scene scene, LightFigures light, double scale) =>
        new LightSectionView(scene, light, scale).Draw();

    private Spot At(double y, double z) =>
        new(Sides + (y * scale * 1000), Above + ((lampRoom + Terrain.Height - z) * scale * 1000));

    private Drawing Draw()
    {
        double x = Terrain.Length / 2;
        double low = Ground(Terrain.Front);
        double wide = (Terrain.Back - Terrain.Front) / Across;
        double tall = (Terrain.Height - UnderLid - low) / Up;
        Spot Corner(double i, double j) => At(Terrain.Front + (i * wide), low + (j * tall));
        Spot Middle(double i, double j) => Corner(i + 0.5, j + 0.5);
        var places = Enumerable
            .Range(0, Across * Up)
            .Select(k =>
                (Y: Terrain.Front + (((k % Across) + 0.5) * wide), Z: low + (((k / Across) + 0.5) * tall))
            )
            .Select(p => (X: x, p.Y, Z: Math.Max(p.Z, Ground(p.Y) + OverGround)))
            .ToList();
        var along = light.Along(places);
        double[] values = [.. along.Select(v => v <= 0 ? double.NaN : v)];
        double[] free =
        [
            .. values.Select(
                (v, k) => places[k].Z > Ground(places[k].Y) + OverGround + 1e-9 ? v : double.NaN
            ),
        ];
        double[] shown = [.. values.Where(v => !double.IsNaN(v)).Order()];
        double most = shown.Length == 0 ? 0 : shown[(int)(0.97 * (shown.Length - 1))];
        var marks = new LightMarks(sketch);
        sketch.Key = "lamps";
        marks.Field(values, Across, most, Corner);
        Floor();
        Pieces();
        Background();
        Frame();
        foreach (var plant in light.Plants)
        {
            marks.Keep(At(plant.Spot.Y, plant.LeafHeight.Si));
        }

        sketch.Key = "lamps";
        marks.Lines(free, Across, Levels(shown, most), Middle);
        foreach (var plant in light.Plants)
        {
            sketch.Key = plant.Spot.Key;
            marks.Plant(At(plant.Spot.Y, plant.LeafHeight.Si), plant);
        }

        Words();
        marks.Key(At(Terrain.Front, 0).Moved(0, 7), (Terrain.Back - Terrain.Front) * scale * 1000, most);
        return sketch.Done(
            (2 * Sides) + (Terrain.DepthOfBox * scale * 1000),
            Above + ((lampRoom + Terrain.Height) * scale * 1000) + Below,
            scale
        );
    }

    private double Ground(double y) => Terrain.Ground(Terrain.Length / 2, y);

    /// <summary>Light falls off by shares, so the levels grow by shares too.</summary>
    private static ImmutableArray<double> Levels(double[] shown, double most)
    {
        if (shown.Length == 0)
        {
            return [];
        }

        double[] round = [1, 2, 5, 10, 15, 20, 30, 40, 50, 70, 100, 150, 200, 300, 400, 500, 700, 1000];
        ImmutableArray<double> fit = [.. round.Where(l => l > shown[0] && l < most)];
        return fit.Length <= MostLines ? fit : [.. fit.Skip(fit.Length - MostLines)];
    }

    private void Floor()
    {
        sketch.Key = "floor";
        sketch.Area(
            [
                At(Terrain.Front, 0),
                At(Terrain.Front, Ground(Terrain.Front)),
                At(Terrain.Back, Ground(Terrain.Back)),
                At(Terrain.Back, 0),
            ],
            Pen.Thin,
            Tone.Field
        );
    }

    /// <summary>Wood and stone where the cut meets them.</summary>
    private void Pieces()
    {
        double x = Terrain.Length / 2;
        foreach (var piece in scene.Pieces)
        {
            sketch.Key = piece.Key;
            double half = 0.5 * PieceSpot.EllipseEdge * piece.Depth;
            if (Math.Abs(x - piece.X) > 0.5 * PieceSpot.EllipseEdge * piece.Length)
            {
                continue;
            }

            var corner = At(piece.Y - half, piece.Foot + piece.Height);
            var (wide, tall) = (2 * half * scale * 1000, piece.Height * scale * 1000);
            sketch.Rectangle(corner, wide, tall, null, Tone.Field);
            PieceMarks.Side(sketch, scene.MaterialOf(piece), piece.IsStone, (corner, wide, tall));
        }
    }

    private void Background()
    {
        sketch.Key = "background.sides";
        foreach (var (from, to) in new[] { (0, Terrain.Front), (Terrain.Back, Terrain.DepthOfBox) })
        {
            if (to - from > 1e-3)
            {
                sketch.Area(
                    [At(from, 0), At(to, 0), At(to, Terrain.Height), At(from, Terrain.Height)],
                    Pen.Thin,
                    Tone.Field
                );
            }
        }
    }

    private void Frame()
    {
        sketch.Key = "box.glass";
        sketch.Lines(
            [
                new Contour(
                    [
                        At(0, Terrain.Height),
                        At(0, 0),
                        At(Terrain.DepthOfBox, 0),
                        At(Terrain.DepthOfBox, Terrain.Height),
                    ],
                    false
                ),
            ],
            Pen.Strong
        );
        sketch.Key = "lid";
        sketch.Line(At(0, Terrain.Height), At(Terrain.DepthOfBox, Terrain.Height), Pen.Thin);
        foreach (var (lamp, i) in light.Lamps.Select((l, i) => (l, i)))
        {
            sketch.Key = lamp.Path;
            var ys = lamp.Outlines.SelectMany(o => o.Select(p => p.Y)).ToList();
            if (ys.Count > 0)
            {
                double height = Math.Min(lamp.Height, Terrain.Height + 0.25);
                sketch.Line(At(ys.Min(), height), At(ys.Max(), height), new Pen(Tone.Ink, 1.2));
                if (i < NamedLamps)
                {
                    bool isRight = i == 0;
                    sketch.Text(
                        At(isRight ? ys.Max() : ys.Min(), height).Moved(isRight ? 1.5 : -1.5, 1.1),
                        System.FormattableString.Invariant($"{lamp.Lumens.Si:0} lm"),
                        Dimensions.Points,
                        isRight ? Align.Start : Align.End,
                        Tone.Quiet
                    );
                }
            }
        }
    }

    private void Words()
    {
        sketch.Key = "";
        sketch.Text(At(0, 0).Moved(0, 4.6), "front", Dimensions.Points, Align.Start, Tone.Quiet);
    }
}
