using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>
/// Light on the ground from above, front at the bottom, with lines of equal light and the plants.
/// </summary>
internal sealed class LightPlanView
{
    private const double Sides = 8;
    private const double Above = 3;
    private const double Below = 7 + LightMarks.KeyTall;
    private const int MostLines = 6;
    private const double HoldShare = 0.8;
    private readonly Sketch sketch = new();
    private readonly Scene scene;
    private readonly LightFigures light;
    private readonly double scale;

    private LightPlanView(Scene scene, LightFigures light, double scale) =>
        (this.scene, this.light, this.scale) = (scene, light, scale);

    private Terrain Terrain => scene.Terrain;

    /// <summary>The largest usual scale at which it fits a room on paper.</summary>
    internal static double Fitting(Scene scene, (double Width, double Height) room) =>
        Math.Min(
            ViewScale.Fitting(scene, scene.Terrain.Length, room.Width - (2 * Sides)),
            ViewScale.Fitting(scene, scene.Terrain.DepthOfBox, room.Height - Above - Below)
        );

    /// <summary>The map at a scale.</summary>
    internal static Drawing Draw(Scene scene, LightFigures light, double scale) =>
        new LightPlanView(scene, light, scale).Draw();

    /// <summary>Lamps, plants and pieces by two edges: what they do to the light is seen at once.</summary>
    internal static ImmutableArray<Grip> Grips(Scene scene, LightFigures light, double scale)
    {
        var view = new LightPlanView(scene, light, scale);
        return
        [
            .. PlanGrips.Of(scene, p => view.At(p.X, p.Y), scale * 1000, isFront: false),
            .. light.Lamps.Where(l => l.Outlines.Length > 0).Select(view.Hung),
        ];
    }

    /// <summary>Where the inside of the box lies in the map at a scale.</summary>
    internal static DrawnFrame Frame(Scene scene, LightFigures light, double scale) =>
        new(new LightPlanView(scene, light, scale).At(0, 0), scale * 1000, 'x', 'y');

    /// <summary>A lamp by the place of its middle.</summary>
    private Grip Hung(LampLight lamp)
    {
        var corners = lamp.Outlines.SelectMany(o => o).ToList();
        var (x, y) = (corners.Average(c => c.X), corners.Average(c => c.Y));
        // Taken near its left end: its middle often hangs over a plant or a piece.
        var hold = Math.Max(0, x + (HoldShare * (corners.Min(c => c.X) - x)));
        return new Grip(lamp.Path, lamp.Name, At(hold, y), scale * 1000)
        {
            Across = new($"{lamp.Path}.at.x", x, 0.0, Terrain.Length),
            Up = new($"{lamp.Path}.at.y", y, 0.0, Terrain.DepthOfBox),
        };
    }

    private Spot At(double x, double y) =>
        new(Sides + (x * scale * 1000), Above + ((Terrain.DepthOfBox - y) * scale * 1000));

    private Drawing Draw()
    {
        var map = light.Map;
        Spot Corner(double i, double j) => At(map.Left + (i * map.Cell.X), map.Front + (j * map.Cell.Y));
        Spot Middle(double i, double j) => Corner(i + 0.5, j + 0.5);
        double[] values = [.. map.Micromoles.Select((v, i) => map.IsCovered[i] ? double.NaN : v)];
        var marks = new LightMarks(sketch);
        sketch.Key = "lamps";
        marks.Field(values, map.CellsX, map.Statistics.Most, Corner);
        Frame();
        Pieces();
        Lamps();
        foreach (var plant in light.Plants)
        {
            marks.Keep(At(plant.Spot.X, plant.Spot.Y));
        }

        sketch.Key = "lamps";
        marks.Lines(
            values,
            map.CellsX,
            Isolines.Levels(map.Statistics.Least, map.Statistics.Most, MostLines),
            Middle
        );
        foreach (var plant in light.Plants)
        {
            sketch.Key = plant.Spot.Key;
            marks.Plant(At(plant.Spot.X, plant.Spot.Y), plant);
        }

        sketch.Key = "";
        sketch.Text(At(0, 0).Moved(0, 4.6), "front", Dimensions.Points, Align.Start, Tone.Quiet);
        marks.Key(At(0, 0).Moved(0, 7), Terrain.Length * scale * 1000, map.Statistics.Most);
        return sketch.Done(
            (2 * Sides) + (Terrain.Length * scale * 1000),
            Above + (Terrain.DepthOfBox * scale * 1000) + Below,
            scale
        );
    }

    private ImmutableArray<Spot> Box(double x1, double y1, double x2, double y2) =>
        [At(x1, y1), At(x2, y1), At(x2, y2), At(x1, y2)];

    private void Frame()
    {
        sketch.Key = "box.glass";
        sketch.Area(Box(0, 0, Terrain.Length, Terrain.DepthOfBox), Pen.Strong);
    }

    private void Pieces()
    {
        foreach (var piece in scene.Pieces)
        {
            sketch.Key = piece.Key;
            var half = (
                X: 0.5 * PieceSpot.EllipseEdge * piece.Length,
                Y: 0.5 * PieceSpot.EllipseEdge * piece.Depth
            );
            var (left, right) = (Math.Max(0, piece.X - half.X), Math.Min(Terrain.Length, piece.X + half.X));
            var (front, back) = (
                Math.Max(0, piece.Y - half.Y),
                Math.Min(Terrain.DepthOfBox, piece.Y + half.Y)
            );
            sketch.Area(Box(left, front, right, back), null, Tone.Field);
            var corner = At(left, back);
            var (wide, tall) = ((right - left) * scale * 1000, (back - front) * scale * 1000);
            PieceMarks.Above(sketch, scene.MaterialOf(piece), piece.IsStone, (corner, wide, tall));
            var middle = corner.Moved(wide / 2, tall / 2);
            Symbols.Tag(sketch, middle, SectionView.Letter(piece.Number));
        }
    }

    /// <summary>Outlines of what shines, dashed: it hangs over the drawing.</summary>
    private void Lamps()
    {
        foreach (var lamp in light.Lamps)
        {
            sketch.Key = lamp.Path;
            foreach (var outline in lamp.Outlines)
            {
                ImmutableArray<Spot> spots = [.. outline.Select(p => At(p.X, p.Y))];
                sketch.Area(spots, new Pen(Tone.Paper, 0.5));
                sketch.Area(spots, new Pen(Tone.Ink, 0.25, 1.6));
            }
        }
    }
}
