using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Domain;
using Litterfall.Quantities.Placing;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>What of the build a drawing shows; a step card shows the build as far as its step.</summary>
[Flags]
public enum Parts
{
    /// <summary>The box alone.</summary>
    Box = 0,

    /// <summary>Background.</summary>
    Background = 1,

    /// <summary>Drainage layer, outlet and barrier.</summary>
    Drainage = 2,

    /// <summary>Soil, wood and stone.</summary>
    Soil = 4,

    /// <summary>Moss, litter and plants.</summary>
    Life = 8,

    /// <summary>Lid, vents, nozzles, lamps.</summary>
    Fittings = 16,

    /// <summary>Everything.</summary>
    All = Background | Drainage | Soil | Life | Fittings,
}

/// <summary>Where the names and dimensions of a section stand.</summary>
internal enum Naming
{
    /// <summary>Left and right of it.</summary>
    BothSides,

    /// <summary>All on the right, for a narrow screen.</summary>
    OneSide,

    /// <summary>Nowhere: a small picture.</summary>
    None,
}

/// <summary>
/// The box cut open from front to back (front on the left), to scale; a stepped soil is cut along its length.
/// </summary>
public sealed partial class SectionView
{
    private const double UsualLeft = 27;
    private const double UsualRight = 35;
    private const double NarrowLeft = 9;
    private const double NarrowRight = 34;
    private const double NarrowRoom = 112;
    private const double BareEdge = 3;
    private const double Above = 5;
    private const double UnderBox = 13;
    private const double KeyTall = 7.5;
    private const double LampHeight = 0.035;
    private readonly Sketch sketch = new();
    private readonly Scene scene;
    private readonly Parts parts;
    private readonly double scale;
    private readonly bool lengthwise;
    private readonly double wall;
    private readonly double baseGlass;
    private readonly double lampRoom;
    private readonly Naming naming;
    private Moment? moment;

    private SectionView(Scene scene, Parts parts, double scale, Naming naming)
    {
        this.naming = naming;
        this.scene = scene;
        this.parts = parts;
        this.scale = scale;
        lengthwise = IsLengthwise(scene);
        wall = scene.Numbers.Box.Walls?.Si ?? 0.004;
        baseGlass = scene.Numbers.Box.Base?.Si ?? 0.004;
        lampRoom = LampRoom(scene, parts);
    }

    private Terrain Terrain => scene.Terrain;

    private double Sides => Margins(naming).Left;

    private double Right => Margins(naming).Right;

    private double Below => Under(scene, naming);

    /// <summary>On a screen the colors of wetness have their key under the box.</summary>
    private static double Under(Scene scene, Naming naming) =>
        naming == Naming.None ? BareEdge
        : scene.OnScreen && scene.Design.Floor.Soil is not null ? UnderBox + KeyTall
        : UnderBox;

    private double Span => lengthwise ? Terrain.Length : Terrain.DepthOfBox;

    /// <summary>The largest usual scale at which the whole section fits a room on paper.</summary>
    internal static double Fitting(Scene scene, (double Width, double Height) room, Naming naming)
    {
        var (left, right) = Margins(naming);
        var span = (IsLengthwise(scene) ? scene.Terrain.Length : scene.Terrain.DepthOfBox) + 0.02;
        var tall = scene.Terrain.Height + 0.02 + LampRoom(scene, Parts.All);
        return Math.Min(
            ViewScale.Fitting(scene, span, room.Width - left - right),
            ViewScale.Fitting(scene, tall, room.Height - Above - Under(scene, naming))
        );
    }

    /// <summary>On a narrow screen all names stand on the right.</summary>
    internal static Naming NamingOf(Scene scene, (double Width, double Height) room) =>
        scene.OnScreen && room.Width < NarrowRoom ? Naming.OneSide : Naming.BothSides;

    /// <summary>The section at a scale.</summary>
    internal static Drawing Draw(Scene scene, Parts parts, double scale, Naming naming) =>
        new SectionView(scene, parts, scale, naming).Draw();

    /// <summary>The section at a scale, as it stands at an hour of the forecast.</summary>
    internal static Drawing Draw(Scene scene, double scale, Moment moment, Naming naming) =>
        new SectionView(scene, Parts.All, scale, naming) { moment = moment }.Draw();

    /// <summary>True when the steps of the soil are better seen from the front.</summary>
    internal static bool IsLengthwise(Scene scene) => scene.Design.Floor.Soil?.Zones.Count > 0;

    private static (double Left, double Right) Margins(Naming naming) =>
        naming switch
        {
            Naming.None => (BareEdge, BareEdge),
            Naming.OneSide => (NarrowLeft, NarrowRight),
            _ => (UsualLeft, UsualRight),
        };

    private static double LampRoom(Scene scene, Parts parts) =>
        parts.HasFlag(Parts.Fittings) && scene.Design.Lamps.Count > 0
            ? LampHeight + Math.Min(0.3, scene.Design.Lamps.Max(l => l.Above?.Si ?? 0.03)) + 0.01
            : 0.012;

    private Spot At(double across, double up) =>
        new(
            Sides + (across + wall) * scale * 1000,
            Math.Max(1, Above + (lampRoom + Terrain.Height - up) * scale * 1000)
        );

    private double X(double across) => lengthwise ? across : Terrain.Length / 2;

    private double Y(double across) => lengthwise ? Terrain.DepthOfBox / 2 : across;

    private Drawing Draw()
    {
        if (parts.HasFlag(Parts.Drainage))
        {
            Drainage();
        }

        if (parts.HasFlag(Parts.Soil))
        {
            SoilLayer();
        }

        if (parts.HasFlag(Parts.Background))
        {
            Background();
        }

        if (parts.HasFlag(Parts.Soil))
        {
            Pieces();
        }

        if (parts.HasFlag(Parts.Drainage))
        {
            Outlet();
        }

        if (parts.HasFlag(Parts.Life))
        {
            Cover();
            Animals();
            Plants();
        }

        Box();
        Fog();
        Marked();

        if (parts.HasFlag(Parts.Fittings))
        {
            Fittings();
            Rays();
        }

        if (naming != Naming.None)
        {
            Figures();
            WetnessKey();
        }

        var width = Sides + Right + (Span + 2 * wall) * scale * 1000;
        var height = Above + (lampRoom + Terrain.Height + baseGlass) * scale * 1000 + Below;
        return sketch.Done(width, height, scale);
    }

    /// <summary>A band between two heights, with points where the ground bends.</summary>
    private ImmutableArray<Spot> Band(Func<double, double> low, Func<double, double> high)
    {
        var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
        var stops = lengthwise
            ? Terrain.Steps().Distinct().SelectMany(x => new[] { x - 1e-6, x + 1e-6 })
            : [from, to];
        var inside = stops
            .Where(s => s >= from - 1e-9 && s <= to + 1e-9)
            .Prepend(from)
            .Append(to)
            .Distinct()
            .Order()
            .ToList();
        return
        [
            .. inside.Select(s => At(s, low(s))),
            .. inside.AsEnumerable().Reverse().Select(s => At(s, high(s))),
        ];
    }

    private void Drainage()
    {
        var layer = scene.Numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        if (layer is null)
        {
            return;
        }

        sketch.Key = "floor.drainage.depth";
        var band = Band(_ => 0, _ => Terrain.Drainage);
        if (layer.Material is null)
        {
            sketch.Key = "floor.drainage.raised";
            sketch.Area(band, Pen.Thin);
            sketch.Line(band[0].Moved(0, -1.2), band[^1].Moved(0, 0) with { Y = band[^1].Y }, Pen.Thin);
        }
        else
        {
            sketch.Area(band, Pen.Thin);
            Hatching.Fill(sketch, band, Hatching.Of(layer), 2.2);
        }

        Level();
        Water();
        Barrier();
    }

    private void Water()
    {
        if (scene.WaterLine is not { } line)
        {
            return;
        }

        sketch.Key = "drain.height";
        var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
        sketch.Line(At(from, line), At(to, line), new Pen(Tone.Water, 0.35, 1.6));
        var tip = At(from + 0.06 * (to - from), line);
        sketch.Area(
            [tip, tip.Moved(-1.2, -1.9), tip.Moved(1.2, -1.9)],
            new Pen(Tone.Water, 0.25),
            Tone.Paper
        );
    }

    private void Barrier()
    {
        if (scene.Design.Floor.Barrier is not { } barrier)
        {
            return;
        }

        sketch.Key = "floor.barrier";
        var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
        var up = Terrain.Drainage + (barrier.Upturn?.Si ?? 0);
        var pen = new Pen(Tone.Ink, 0.5, 0.8);
        sketch.Lines(
            [
                new(
                    [
                        At(from, up).Moved(0.5, 0),
                        At(from, Terrain.Drainage).Moved(0.5, 0),
                        At(to, Terrain.Drainage).Moved(-0.5, 0),
                        At(to, up).Moved(-0.5, 0),
                    ],
                    false
                ),
            ],
            pen
        );
    }

    private void SoilLayer()
    {
        var layer = scene.Numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil);
        if (layer is null)
        {
            return;
        }

        sketch.Key = "floor.soil";
        var band = Band(_ => Terrain.Drainage, s => Terrain.Ground(X(s), Y(s)));
        sketch.Area(band, null, Tone.Field);
        Wetness();
        Hatching.Fill(sketch, band, Hatching.Of(layer));
        sketch.Area(band, new Pen(Tone.Earth, 0.3));
    }

    private void Background()
    {
        if (scene.Design.Background is null)
        {
            return;
        }

        var from = scene.Numbers.Box.BackgroundFrom?.Si ?? 0;
        var (low, high) = lengthwise ? (Side.Left, Side.Right) : (Side.Front, Side.Back);
        sketch.Key = "background.thickness";
        foreach (var side in Terrain.Covered(scene.Design).Where(s => s == low || s == high))
        {
            var (a, b) =
                side == low
                    ? (0, lengthwise ? Terrain.Left : Terrain.Front)
                    : (lengthwise ? Terrain.Right : Terrain.Back, Span);
            ImmutableArray<Spot> area =
            [
                At(a, from),
                At(b, from),
                At(b, Terrain.Height),
                At(a, Terrain.Height),
            ];
            sketch.Area(area, null, Tone.Paper);
            Hatching.Fill(sketch, area, [(Grain.Cork, 1)], 1.9);
            sketch.Area(area, Pen.Thin);
        }
    }

    private void Pieces()
    {
        foreach (var piece in scene.Pieces)
        {
            sketch.Key = piece.Key;
            var middle = lengthwise ? piece.X : piece.Y;
            var width = lengthwise ? piece.Length : piece.Depth;
            var corner = At(middle - width / 2, piece.Foot + piece.Height);
            var (w, h) = (width * scale * 1000, piece.Height * scale * 1000);
            var frame = (corner, w, h);
            if (lengthwise)
            {
                PieceMarks.Along(sketch, scene.MaterialOf(piece), piece.IsStone, frame);
            }
            else
            {
                PieceMarks.Side(sketch, scene.MaterialOf(piece), piece.IsStone, frame);
            }
        }
    }

    /// <summary>The letter of a piece in drawings and lists.</summary>
    internal static char Letter(int number) => (char)('A' + (number - 1) % 26);

    private void Cover()
    {
        if (Terrain.Moss > 0)
        {
            var moss = scene.Numbers.Layers.First(l => l.Kind == LayerKind.Moss);
            sketch.Key = "floor.moss";
            var share = Math.Clamp(scene.Design.Floor.Moss?.Cover?.Si ?? 1, 0, 1);
            var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
            var start = to - share * (to - from);
            var band = Strip(start, to, 0, Terrain.Moss);
            sketch.Area(band, null, Tone.Paper);
            Hatching.Fill(sketch, band, Hatching.Of(moss), 1.5);
            sketch.Area(band, new Pen(Tone.Leaf, 0.3));
        }

        if (Terrain.Litter > 0)
        {
            var litter = scene.Numbers.Layers.First(l => l.Kind == LayerKind.Litter);
            sketch.Key = "floor.litter";
            var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
            var band = Strip(from, to, Terrain.Moss, Terrain.Moss + Terrain.Litter);
            Hatching.Fill(sketch, band, Hatching.Of(litter), 2.3);
            sketch.Lines([new([.. band.Skip(band.Length / 2)], false)], new Pen(Tone.Earth, 0.2, 1));
        }
    }

    private ImmutableArray<Spot> Strip(double from, double to, double low, double high)
    {
        var stops = new List<double> { from, to };
        if (lengthwise)
        {
            stops.AddRange(
                Terrain.Steps().SelectMany(x => new[] { x - 1e-6, x + 1e-6 }).Where(x => x > from && x < to)
            );
        }

        stops.Sort();
        return
        [
            .. stops.Select(s => At(s, Terrain.Ground(X(s), Y(s)) + low)),
            .. stops.AsEnumerable().Reverse().Select(s => At(s, Terrain.Ground(X(s), Y(s)) + high)),
        ];
    }

    private void Plants()
    {
        var marks = new PlantMarks(sketch, At(0, Terrain.Height), At(Span, 0));
        foreach (var plant in scene.Specimens)
        {
            sketch.Key = plant.Spot.Key;
            marks.Side(
                plant,
                At(lengthwise ? plant.X : plant.Y, plant.Z),
                plant.Drawn(Terrain) * scale * 1000
            );
        }
    }

    /// <summary>Numbers of plants and letters of pieces.</summary>
    private void Marked()
    {
        var taken = new List<(Spot, string)>();
        if (parts.HasFlag(Parts.Life))
        {
            Symbols.Numbers(
                sketch,
                scene,
                p => At(lengthwise ? p.X : p.Y, p.Z).Moved(0, p.Spot.Mounted ? 1.5 : -1),
                taken
            );
        }

        if (parts.HasFlag(Parts.Soil))
        {
            Symbols.Letters(sketch, scene, p => At(lengthwise ? p.X : p.Y, p.Foot + (p.Height / 2)), taken);
        }

        sketch.Key = "";
    }

    /// <summary>Animals on the ground at true size; where they sit is chance.</summary>
    private void Animals()
    {
        var (from, to) = lengthwise ? (Terrain.Left, Terrain.Right) : (Terrain.Front, Terrain.Back);
        foreach (var (entry, key, along, across) in AnimalMarks.Of(scene.Numbers.Design))
        {
            sketch.Key = key;
            var at = from + (along * (to - from));
            var top = Terrain.Ground(X(at), Y(at)) + Terrain.Moss + Terrain.Litter;
            AnimalMarks.Side(
                sketch,
                entry,
                At(at, top),
                AnimalShapes.Length(entry) * scale * 1000,
                across > 0.45
            );
        }

        sketch.Key = "";
    }

    private bool Inches => Quantities.Measures.Imperial.IsUsed(scene.Design);

    private bool DepthInches => Quantities.Measures.Imperial.AreDepths(scene.Design);
}
