using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Domain;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>The box from the front, to scale: layers at the front pane, sill, doors, vents, lamps.</summary>
public sealed class FrontView
{
    private const double Left = 24;
    private const double Right = 12;
    private const double Above = 12;
    private const double Below = 12;
    private readonly Sketch sketch = new();
    private readonly Scene scene;
    private readonly double scale;
    private readonly double wall;
    private readonly double baseGlass;
    private readonly double lampRoom;

    private FrontView(Scene scene, double scale)
    {
        this.scene = scene;
        this.scale = scale;
        wall = scene.Numbers.Box.Walls?.Si ?? 0.004;
        baseGlass = scene.Numbers.Box.Base?.Si ?? 0.004;
        lampRoom = LampRoom(scene);
    }

    private Terrain Terrain => scene.Terrain;

    private bool Inches => Quantities.Measures.Imperial.IsUsed(scene.Design);

    private bool DepthInches => Quantities.Measures.Imperial.AreDepths(scene.Design);

    private double Length => Terrain.Length;

    /// <summary>The largest usual scale at which the front fits a room on paper.</summary>
    internal static double Fitting(Scene scene, (double Width, double Height) room) =>
        Math.Min(
            ViewScale.Fitting(scene, scene.Terrain.Length + 0.02, room.Width - Left - Right),
            ViewScale.Fitting(
                scene,
                scene.Terrain.Height + 0.02 + LampRoom(scene),
                room.Height - Above - Below
            )
        );

    /// <summary>The front at a scale.</summary>
    internal static Drawing Draw(Scene scene, double scale) => new FrontView(scene, scale).Draw();

    private static double LampRoom(Scene scene) =>
        scene.Design.Lamps.Count > 0
            ? 0.045 + Math.Min(0.3, scene.Design.Lamps.Max(l => l.Above?.Si ?? 0.03))
            : 0.012;

    /// <summary>Points to take hold of in the front view at a scale.</summary>
    internal static ImmutableArray<Grip> Grips(Scene scene, double scale)
    {
        var view = new FrontView(scene, scale);
        return
        [
            .. FloorAndDoorGrips.Steps(scene, view.At, scale * 1000),
            .. FloorAndDoorGrips.Opening(scene, view.At, scale * 1000),
            .. PlanGrips.Of(scene, p => view.At(p.X, p.Z), scale * 1000, isFront: true),
        ];
    }

    /// <summary>Where the inside of the box lies in the front view at a scale.</summary>
    internal static DrawnFrame Frame(Scene scene, double scale) =>
        new(new FrontView(scene, scale).At(0, 0), scale * 1000, 'x', 'z');

    private Spot At(double x, double z) =>
        new(Left + (x + wall) * scale * 1000, Above + (lampRoom + Terrain.Height - z) * scale * 1000);

    private ImmutableArray<Spot> Box(double x1, double z1, double x2, double z2) =>
        [At(x1, z1), At(x2, z1), At(x2, z2), At(x1, z2)];

    private Drawing Draw()
    {
        Pieces();
        Plants();
        Layers();
        Marked();
        sketch.Key = "box.glass";
        sketch.Area(Box(-wall, -baseGlass, Length + wall, Terrain.Height), new Pen(Tone.Ink, 0.4));
        sketch.Area(Box(0, 0, Length, Terrain.Height), Pen.Thin);
        Doors();
        Shelves();
        Fittings();
        Figures();
        return sketch.Done(
            Left + Right + (Length + 2 * wall) * scale * 1000,
            Above + (lampRoom + Terrain.Height + baseGlass) * scale * 1000 + Below,
            scale
        );
    }

    private void Pieces()
    {
        foreach (var piece in scene.Pieces.OrderByDescending(p => p.Y))
        {
            sketch.Key = piece.Key;
            var corner = At(piece.X - (piece.Length / 2), piece.Foot + piece.Height);
            PieceMarks.Along(
                sketch,
                scene.MaterialOf(piece),
                piece.IsStone,
                (corner, piece.Length * scale * 1000, piece.Height * scale * 1000)
            );
        }
    }

    private void Plants()
    {
        var marks = new PlantMarks(sketch, At(0, Terrain.Height), At(Length, 0));
        foreach (var plant in scene.Specimens.OrderByDescending(p => p.Y))
        {
            sketch.Key = plant.Spot.Key;
            marks.Side(plant, At(plant.X, plant.Z), plant.Drawn(Terrain) * scale * 1000);
        }

        foreach (var (entry, key, along, across) in AnimalMarks.Of(scene.Numbers.Design))
        {
            sketch.Key = key;
            var (x, y) = (
                Terrain.Left + (along * (Terrain.Right - Terrain.Left)),
                Terrain.Front + (across * (Terrain.Back - Terrain.Front))
            );
            var top = Terrain.Ground(x, y) + Terrain.Moss + Terrain.Litter;
            AnimalMarks.Side(
                sketch,
                entry,
                At(x, top),
                AnimalShapes.Length(entry) * scale * 1000,
                across > 0.45
            );
        }
    }

    /// <summary>Numbers of plants and letters of pieces.</summary>
    private void Marked()
    {
        var taken = new List<(Spot, string)>();
        Symbols.Numbers(sketch, scene, p => At(p.X, p.Z).Moved(0, -1), taken);
        Symbols.Letters(sketch, scene, p => At(p.X, p.Foot + (0.7 * p.Height)), taken);
    }

    private void Layers()
    {
        var steps = Terrain.Steps().ToList();
        if (Terrain.Drainage > 0)
        {
            sketch.Key = "floor.drainage.depth";
            var band = Box(Terrain.Left, 0, Terrain.Right, Terrain.Drainage);
            var layer = scene.Numbers.Layers.First(l => l.Kind == LayerKind.Drainage);
            sketch.Area(band, null, Tone.Paper);
            if (layer.Material is not null)
            {
                Hatching.Fill(sketch, band, Hatching.Of(layer), 2.4);
            }

            sketch.Area(band, Pen.Thin);
        }

        for (var i = 0; i + 1 < steps.Count; i++)
        {
            var middle = (steps[i] + steps[i + 1]) / 2;
            var soil = Terrain.Soil(middle, Terrain.Front);
            sketch.Key = "floor.soil.front";
            var band = Box(steps[i], Terrain.Drainage, steps[i + 1], Terrain.Drainage + soil);
            if (soil > 0 && scene.Numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil) is { } layer)
            {
                sketch.Area(band, null, Tone.Paper);
                Hatching.Fill(sketch, band, Hatching.Of(layer), 2.4);
                sketch.Area(band, new Pen(Tone.Earth, 0.3));
            }

            sketch.Key = "floor.soil.back";
            var back = Terrain.Ground(middle, Terrain.Back);
            sketch.Line(At(steps[i], back), At(steps[i + 1], back), new Pen(Tone.Earth, 0.2, 1.4));
        }
    }

    private void Doors()
    {
        if (scene.Design.Box.Opening != Opening.Front)
        {
            return;
        }

        var plan = WallPlan.Of(scene.Numbers.Design, scene.Numbers.Box, Side.Front);
        var up = Terrain.Height - plan.Width.Si;
        foreach (var cell in plan.Cells.Where(c => c.Kind is CellKind.Sill or CellKind.Bar))
        {
            sketch.Key = cell.Kind == CellKind.Sill ? "box.sill" : "box.doors";
            foreach (
                var edge in new[] { cell.Low.Si, cell.HighSi }.Where(z => z > 0 && z < plan.Width.Si - 1e-6)
            )
            {
                sketch.Line(At(0, up + edge), At(Length, up + edge), new Pen(Tone.Ink, 0.35));
            }
        }

        sketch.Key = "box.doors";
        var count = Math.Clamp(DoorPanes.CountOf(scene.Design), 1, 8);
        if (plan.Cells.FirstOrDefault(c => c.Kind == CellKind.Doors) is not { } doors)
        {
            return;
        }

        for (var i = 1; i < count; i++)
        {
            var x = Length * i / count;
            sketch.Line(At(x, up + doors.Low.Si), At(x, up + doors.HighSi), Pen.Thin);
        }
    }

    /// <summary>Shelves inside whose height is told; in the middle where their place is not.</summary>
    private void Shelves()
    {
        foreach (var shelf in ShelfPanes.Of(scene.Numbers.Design, scene.Numbers.Box))
        {
            if (shelf is { Height.Si: var top, Length.Si: var length })
            {
                sketch.Key = shelf.Path;
                var left = Math.Clamp(
                    (shelf.X ?? 0.5 * Length) - (0.5 * length),
                    0,
                    Math.Max(0, Length - length)
                );
                sketch.Area(Box(left, top - shelf.Thickness.Si, left + length, top), new Pen(Tone.Ink, 0.3));
            }
        }
    }

    private void Fittings()
    {
        foreach (var vent in scene.Vents.Where(v => v.Side is Side.Front or Side.Back or Side.Top))
        {
            sketch.Key = vent.Key;
            var half = vent.Length / 2;
            if (vent.Side == Side.Top)
            {
                sketch.Line(
                    At(vent.Middle - half, Terrain.Height).Moved(0, -0.6),
                    At(vent.Middle + half, Terrain.Height).Moved(0, -0.6),
                    new Pen(Tone.Note, 0.9, 0.7)
                );
            }
            else
            {
                sketch.Area(
                    Box(
                        vent.Middle - half,
                        vent.Height - vent.Width / 2,
                        vent.Middle + half,
                        vent.Height + vent.Width / 2
                    ),
                    new Pen(Tone.Note, 0.35, vent.Side == Side.Back ? 1 : 0)
                );
            }
        }

        if (scene.Drain is { Kind: DrainKind.Bulkhead } drain && drain.Side is Side.Front or Side.Back)
        {
            sketch.Key = "drain.height";
            sketch.Rings(
                [
                    new Ring(
                        At(scene.Drain.Along, scene.Drain.Height),
                        Math.Max(0.9, scene.Drain.Diameter / 2 * scale * 1000)
                    ),
                ],
                new Pen(Tone.Water, 0.35)
            );
        }

        for (var i = 0; i < Math.Min(scene.Design.Lamps.Count, 4); i++)
        {
            sketch.Key = $"lamps[{i}].above";
            var low = Terrain.Height + Math.Min(0.3, scene.Design.Lamps[i].Above?.Si ?? 0.03) + 0.004;
            sketch.Area(Box(Length * 0.06, low, Length * 0.94, low + 0.022), Pen.Thin, Tone.Field);
        }

        sketch.Key = "";
    }

    private void Figures()
    {
        var box = scene.Numbers.Box;
        var outside = box.OutsideLength is not null && box.OutsideHeight is not null;
        var edge = outside ? wall : 0;
        var frame = outside ? "outside" : "inside";
        Dimensions.Across(
            sketch,
            At(-edge, -baseGlass),
            At(Length + edge, -baseGlass),
            6.5,
            (
                Lengths.Edge((outside ? box.OutsideLength! : box.InsideLength).Si, Inches),
                $"box.{frame}.length"
            )
        );
        Dimensions.Upward(
            sketch,
            At(Length + wall, outside ? -baseGlass : 0),
            At(Length + wall, Terrain.Height),
            7,
            (
                Lengths.Edge((outside ? box.OutsideHeight! : box.InsideHeight).Si, Inches),
                $"box.{frame}.height"
            )
        );
        Dimensions.Beside(sketch, Heights(), Left - 3, Align.End, (Above + 3, At(0, -baseGlass).Y + 4));
    }

    /// <summary>Heights over the inside base at the front.</summary>
    private IEnumerable<Callout> Heights()
    {
        var at = Length * 0.02;
        if (Terrain.Drainage > 0)
        {
            yield return new(
                At(at, Terrain.Drainage),
                Lengths.Short(Terrain.Drainage, DepthInches),
                "floor.drainage.depth"
            );
        }

        if (scene.Design.Floor.Soil is not null)
        {
            var top = Terrain.Ground(Terrain.Left + 1e-4, Terrain.Front);
            yield return new(At(at, top), Lengths.Short(top, DepthInches), "floor.soil.front");
        }

        if (scene.Design.Box is { Opening: Opening.Front, Sill: { } sill })
        {
            yield return new(At(0, sill.Si), $"sill {Lengths.Short(sill.Si, DepthInches)}", "box.sill");
        }

        foreach (var vent in scene.Vents.Where(v => v.Side is Side.Front or Side.Back))
        {
            yield return new(
                At(vent.Middle - vent.Length / 2, vent.Height),
                $"vent {Lengths.Short(vent.Height, DepthInches)}",
                vent.Key + ".height"
            );
        }
    }
}
