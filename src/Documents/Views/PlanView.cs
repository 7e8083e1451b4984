using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Domain;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>The box from above, front at the bottom, to scale, with the depths at the four corners.</summary>
public sealed class PlanView
{
    private const double Sides = 15;
    private const double Above = 4;
    private const double Below = 15;
    private readonly Sketch sketch = new();
    private readonly Scene scene;
    private readonly double scale;
    private readonly double wall;

    private PlanView(Scene scene, double scale)
    {
        this.scene = scene;
        this.scale = scale;
        wall = scene.Numbers.Box.Walls?.Si ?? 0.004;
    }

    private Terrain Terrain => scene.Terrain;

    private bool Inches => Quantities.Measures.Imperial.IsUsed(scene.Design);

    private bool DepthInches => Quantities.Measures.Imperial.AreDepths(scene.Design);

    private double Length => Terrain.Length;

    private double Depth => Terrain.DepthOfBox;

    /// <summary>The largest usual scale at which the plan fits a room on paper.</summary>
    internal static double Fitting(Scene scene, (double Width, double Height) room) =>
        Math.Min(
            ViewScale.Fitting(scene, scene.Terrain.Length + 0.02, room.Width - 2 * Sides - 7),
            ViewScale.Fitting(scene, scene.Terrain.DepthOfBox + 0.02, room.Height - Above - Below)
        );

    /// <summary>The plan at a scale.</summary>
    internal static Drawing Draw(Scene scene, double scale) => new PlanView(scene, scale).Draw();

    /// <summary>Points to take hold of in the plan at a scale.</summary>
    internal static ImmutableArray<Grip> Grips(Scene scene, double scale)
    {
        var view = new PlanView(scene, scale);
        return PlanGrips.Of(scene, p => view.At(p.X, p.Y), scale * 1000, isFront: false);
    }

    /// <summary>Where the inside of the box lies in the plan at a scale.</summary>
    internal static DrawnFrame Frame(Scene scene, double scale) =>
        new(new PlanView(scene, scale).At(0, 0), scale * 1000, 'x', 'y');

    private Spot At(double x, double y) =>
        new(Sides + (x + wall) * scale * 1000, Above + (Depth + wall - y) * scale * 1000);

    private ImmutableArray<Spot> Box(double x1, double y1, double x2, double y2) =>
        [At(x1, y1), At(x2, y1), At(x2, y2), At(x1, y2)];

    private Drawing Draw()
    {
        sketch.Key = "box.glass";
        sketch.Area(Box(-wall, -wall, Length + wall, Depth + wall), new Pen(Tone.Ink, 0.4), Tone.Glass, 0.4);
        sketch.Area(Box(0, 0, Length, Depth), Pen.Thin, Tone.Paper);
        Background();
        Steps();
        Moss();
        Basins();
        Pieces();
        Shelves();
        Vents();
        Cut();
        Animals();
        Plants();
        Fittings();
        Corners();
        Figures();
        return sketch.Done(
            2 * Sides + 7 + (Length + 2 * wall) * scale * 1000,
            Above + (Depth + 2 * wall) * scale * 1000 + Below,
            scale
        );
    }

    /// <summary>A basin drawn shorter than this, mm, has no room for its words.</summary>
    private const double BasinLabel = 24;

    /// <summary>Open water, with its depth where there is room.</summary>
    private void Basins()
    {
        foreach (var basin in WaterBasins.Of(scene.Numbers.Design, scene.Numbers.Box))
        {
            sketch.Key = basin.Path;
            var (x, y) = basin.Middle;
            var (half, deep) = (basin.Length.Si / 2, basin.Width.Si / 2);
            sketch.Area(
                Box(x - half, y - deep, x + half, y + deep),
                new Pen(Tone.Water, 0.35),
                Tone.Water,
                0.15
            );
            if (basin.Length.Si * scale * 1000 > BasinLabel)
            {
                sketch.Text(
                    At(x, y).Moved(0, 1),
                    $"water {Lengths.Short(basin.Depth.Si, DepthInches)}",
                    Dimensions.Points,
                    Align.Middle,
                    Tone.Water
                );
            }
        }
    }

    /// <summary>Shelves inside, seen from above.</summary>
    private void Shelves()
    {
        for (var i = 0; i < scene.Design.Shelves.Count; i++)
        {
            var shelf = scene.Design.Shelves[i];
            sketch.Key = FormattableString.Invariant($"shelves[{i}]");
            var (length, deep) = (shelf.Length?.Si ?? Length, shelf.Depth.Si);
            var x = Math.Clamp(
                (shelf.At?.X.Si ?? Length / 2) - (length / 2),
                0,
                Math.Max(0, Length - length)
            );
            var y = Math.Clamp(
                (shelf.At?.Y.Si ?? Depth - (deep / 2)) - (deep / 2),
                0,
                Math.Max(0, Depth - deep)
            );
            sketch.Area(Box(x, y, x + length, y + deep), new Pen(Tone.Ink, 0.3, 1.4));
        }
    }

    private void Background()
    {
        sketch.Key = "background.sides";
        foreach (var side in Terrain.Covered(scene.Design))
        {
            var area = side switch
            {
                Side.Left => Box(0, 0, Terrain.Left, Depth),
                Side.Right => Box(Terrain.Right, 0, Length, Depth),
                Side.Front => Box(0, 0, Length, Terrain.Front),
                _ => Box(0, Terrain.Back, Length, Depth),
            };
            Hatching.Fill(sketch, area, [(Grain.Cork, 1)], 1.9);
            sketch.Area(area, Pen.Thin);
        }
    }

    private void Steps()
    {
        sketch.Key = "floor.soil.zones";
        foreach (var x in Terrain.Steps().Where(x => x > Terrain.Left + 1e-6 && x < Terrain.Right - 1e-6))
        {
            sketch.Line(At(x, Terrain.Front), At(x, Terrain.Back), new Pen(Tone.Earth, 0.4));
        }
    }

    private void Moss()
    {
        if (Terrain.Moss <= 0)
        {
            return;
        }

        sketch.Key = "floor.moss.cover";
        var moss = scene.Numbers.Layers.First(l => l.Kind == LayerKind.Moss);
        var share = Math.Clamp(scene.Design.Floor.Moss?.Cover?.Si ?? 1, 0, 1);
        var from = Terrain.Back - share * (Terrain.Back - Terrain.Front);
        var area = Box(Terrain.Left, from, Terrain.Right, Terrain.Back);
        Hatching.Fill(sketch, area, Hatching.Of(moss), 2.6);
        sketch.Line(At(Terrain.Left, from), At(Terrain.Right, from), new Pen(Tone.Leaf, 0.25, 1));
    }

    private void Pieces()
    {
        foreach (var piece in scene.Pieces)
        {
            sketch.Key = piece.Key;
            var deep = piece.Depth;
            var corner = At(piece.X - piece.Length / 2, piece.Y + deep / 2);
            var (w, h) = (piece.Length * scale * 1000, deep * scale * 1000);
            PieceMarks.Above(sketch, scene.MaterialOf(piece), piece.IsStone, (corner, w, h));
        }
    }

    /// <summary>Width over height of plants that spread.</summary>
    private static double Spread(PlantHabit habit) =>
        habit switch
        {
            PlantHabit.Fern or PlantHabit.Leafy or PlantHabit.Mat => 1.5,
            PlantHabit.Creeping => 4,
            PlantHabit.Moss => 3,
            PlantHabit.Vine or PlantHabit.Shingling => 0.5,
            PlantHabit.Bush or PlantHabit.Grass => 0.8,
            _ => 1,
        };

    private void Plants()
    {
        var marks = new PlantMarks(sketch, At(0, Depth), At(Length, 0));
        foreach (var plant in scene.Specimens)
        {
            sketch.Key = plant.Spot.Key;
            var middle = At(plant.X, plant.Y);
            var wide = Math.Min(plant.Drawn(Terrain) * Spread(plant.Habit), 0.45 * Math.Min(Length, Depth));
            marks.Above(plant, middle, Math.Max(5, wide * scale * 1000));
        }

        var taken = new List<(Spot, string)>();
        Symbols.Numbers(sketch, scene, p => At(p.X, p.Y), taken);
        Symbols.Letters(sketch, scene, p => At(p.X, p.Y), taken);
    }

    /// <summary>Animals at true size; where they sit is chance.</summary>
    private void Animals()
    {
        foreach (var (entry, key, along, across) in AnimalMarks.Of(scene.Numbers.Design))
        {
            sketch.Key = key;
            var at = At(
                Terrain.Left + (along * (Terrain.Right - Terrain.Left)),
                Terrain.Front + (across * (Terrain.Back - Terrain.Front))
            );
            AnimalMarks.Above(sketch, entry, at, AnimalShapes.Length(entry) * scale * 1000, along * 20);
        }
    }

    private void Vents()
    {
        foreach (var vent in scene.Vents)
        {
            sketch.Key = vent.Key;
            var half = vent.Length / 2;
            var pen = new Pen(Tone.Note, 0.35, 1);
            switch (vent.Side)
            {
                case Side.Top:
                    var y = vent.Behind;
                    sketch.Area(
                        Box(vent.Middle - half, y - vent.Width / 2, vent.Middle + half, y + vent.Width / 2),
                        pen
                    );
                    break;
                case Side.Left or Side.Right:
                    var x = vent.Side == Side.Left ? -wall / 2 : Length + wall / 2;
                    sketch.Line(At(x, vent.Middle - half), At(x, vent.Middle + half), pen with { Width = 1 });
                    break;
                default:
                    var edge = vent.Side == Side.Front ? -wall / 2 : Depth + wall / 2;
                    sketch.Line(
                        At(vent.Middle - half, edge),
                        At(vent.Middle + half, edge),
                        pen with
                        {
                            Width = 1,
                        }
                    );
                    break;
            }
        }
    }

    private void Fittings()
    {
        sketch.Key = "misting.nozzles";
        foreach (var (x, y) in scene.Nozzles())
        {
            var at = At(x, y);
            sketch.Area(
                [at.Moved(-1.4, -1), at.Moved(1.4, -1), at.Moved(0, 1.5)],
                new Pen(Tone.Water, 0.3),
                Tone.Paper
            );
        }

        LidParts();

        if (scene.Drain is { } drain)
        {
            sketch.Key = "drain";
            var at = drain.Side switch
            {
                Side.Left => At(drain.Kind == DrainKind.Bulkhead ? 0 : Terrain.Left + 0.02, drain.Along),
                Side.Right => At(
                    drain.Kind == DrainKind.Bulkhead ? Length : Terrain.Right - 0.02,
                    drain.Along
                ),
                Side.Front => At(drain.Along, drain.Kind == DrainKind.Bulkhead ? 0 : Terrain.Front + 0.02),
                _ => At(drain.Along, drain.Kind == DrainKind.Bulkhead ? Depth : Terrain.Back - 0.02),
            };
            var radius = Math.Max(1.1, drain.Diameter / 2 * scale * 1000);
            sketch.Rings([new Ring(at, radius)], new Pen(Tone.Water, 0.4), Tone.Paper);
            sketch.Rings([new Ring(at, 0.35)], null, Tone.Water);
        }
    }

    /// <summary>Where one part of the lid ends and the next begins.</summary>
    private void LidParts()
    {
        if (LidPlan.Of(scene.Numbers.Design, scene.Numbers.Box) is not { } plan)
        {
            return;
        }

        var (x, y) = ((Length - plan.Length.Si) / 2, (Depth - plan.Width.Si) / 2);
        foreach (var cell in plan.Cells)
        {
            sketch.Key = cell.Kind == CellKind.HoseStrip ? "lid.strip" : "lid";
            if (cell.Low.Si > 0)
            {
                sketch.Line(
                    At(x + cell.Left.Si, y + cell.Low.Si),
                    At(x + cell.RightSi, y + cell.Low.Si),
                    Pen.Hidden
                );
            }

            if (cell.Left.Si > 0)
            {
                sketch.Line(
                    At(x + cell.Left.Si, y + cell.Low.Si),
                    At(x + cell.Left.Si, y + cell.HighSi),
                    Pen.Hidden
                );
            }
        }
    }

    /// <summary>Settled soil at the four corners, beside them.</summary>
    private void Corners()
    {
        if (scene.Design.Floor.Soil is null)
        {
            return;
        }

        foreach (
            var (x, y, back, right) in new[]
            {
                (Terrain.Left, Terrain.Front, false, false),
                (Terrain.Right, Terrain.Front, false, true),
                (Terrain.Left, Terrain.Back, true, false),
                (Terrain.Right, Terrain.Back, true, true),
            }
        )
        {
            sketch.Key = $"floor.soil.{(back ? "back" : "front")}";
            var text = Lengths.Short(Terrain.Soil(x + (right ? -1e-4 : 1e-4), y), DepthInches);
            var at = At(right ? Length + wall : -wall, back ? Depth : 0);
            sketch.Text(
                at.Moved(right ? 1.2 : -1.2, back ? 3.2 : 0),
                text,
                Dimensions.Points,
                right ? Align.Start : Align.End
            );
        }
    }

    /// <summary>Where the section is cut.</summary>
    private void Cut()
    {
        sketch.Key = "";
        var pen = new Pen(Tone.Stop, 0.35, 2.2);
        if (SectionView.IsLengthwise(scene))
        {
            sketch.Line(At(-wall, Depth / 2).Moved(-3, 0), At(Length + wall, Depth / 2).Moved(3, 0), pen);
        }
        else
        {
            sketch.Line(At(Length / 2, -wall).Moved(0, 3), At(Length / 2, Depth + wall).Moved(0, -3), pen);
        }
    }

    private void Figures()
    {
        var box = scene.Numbers.Box;
        var outside = box.OutsideLength is not null && box.OutsideDepth is not null;
        var edge = outside ? wall : 0;
        var frame = outside ? "outside" : "inside";
        Dimensions.Across(
            sketch,
            At(-edge, -wall),
            At(Length + edge, -wall),
            8,
            (
                Lengths.Edge((outside ? box.OutsideLength! : box.InsideLength).Si, Inches),
                $"box.{frame}.length"
            )
        );
        Dimensions.Upward(
            sketch,
            At(Length + wall, -edge),
            At(Length + wall, Depth + edge),
            19,
            (Lengths.Edge((outside ? box.OutsideDepth! : box.InsideDepth).Si, Inches), $"box.{frame}.depth")
        );
        sketch.Text(
            At(0, 0).Moved(0, (wall * scale * 1000) + 4.2),
            "front",
            Dimensions.Points,
            Align.Start,
            Tone.Quiet
        );
    }
}
