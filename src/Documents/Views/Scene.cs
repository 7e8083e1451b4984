using System.Collections.Immutable;
using Litterfall.Domain.Designs;
using Litterfall.Planning;
using Litterfall.Planning.Sizing;

namespace Litterfall.Documents.Views;

/// <summary>How a plant is drawn.</summary>
internal enum PlantForm
{
    Rosette,
    Fronds,
    Climber,
    Mat,
    Tuft,
}

/// <summary>A plant at its place, in meters inside the box.</summary>
internal sealed record PlantSpot(int Number, string Name, string Key)
{
    public required double X { get; init; }
    public required double Y { get; init; }
    public required double Z { get; init; }
    public required double Size { get; init; }
    public required PlantForm Form { get; init; }
    public required bool Mounted { get; init; }
    public required int Count { get; init; }

    /// <summary>True when the design does not say where it sits.</summary>
    public required bool PlaceIsOpen { get; init; }
}

/// <summary>A piece of wood or stone, in meters inside the box.</summary>
internal sealed record PieceSpot(int Number, string Name, string Key)
{
    public required double X { get; init; }
    public required double Y { get; init; }
    public required double Foot { get; init; }
    public required double Length { get; init; }
    public required double Height { get; init; }
    public required bool IsStone { get; init; }
}

/// <summary>
/// A vent, in meters: along its side from the left or front end, and its middle over the base.
/// </summary>
internal sealed record VentSpot(int Number, string Key, Side Side, double Middle)
{
    public required double Length { get; init; }
    public required double Width { get; init; }
    public required double Height { get; init; }
}

/// <summary>The outlet, in meters.</summary>
internal sealed record DrainSpot(DrainKind Kind, Side Side, double Along, double Height, double Diameter);

/// <summary>
/// Where everything sits in the box. What the design leaves open gets a usual place, so that a drawing can
/// be
/// made; the drawing says which places were left open.
/// </summary>
internal sealed class Scene
{
    private const double UsualVentWidth = 0.04;

    public Scene(DesignNumbers numbers)
    {
        Numbers = numbers;
        Terrain = new Terrain(numbers);
        Pieces = [.. numbers.Design.Design.Hardscape.Select((_, i) => Piece(i))];
        Plants = [.. numbers.Design.Design.Plants.Select((p, i) => Plant(p, i))];
        Vents = [.. numbers.Design.Design.Vents.Select((v, i) => Vent(v, i))];
        Drain = numbers.Design.Design.Drain is { } drain ? Outlet(drain) : null;
    }

    public DesignNumbers Numbers { get; }

    public Design Design => Numbers.Design.Design;

    public Terrain Terrain { get; }

    public ImmutableArray<PieceSpot> Pieces { get; }

    public ImmutableArray<PlantSpot> Plants { get; }

    public ImmutableArray<VentSpot> Vents { get; }

    public DrainSpot? Drain { get; }

    /// <summary>Highest allowed water: 1 cm below the barrier; null without a drainage layer.</summary>
    public double? WaterLine => Terrain.Drainage > 0.01 ? Terrain.Drainage - 0.01 : null;

    /// <summary>Nozzles, spread along the back third under the lid.</summary>
    public IEnumerable<(double X, double Y)> Nozzles()
    {
        var count = Math.Min(Design.Misting?.Nozzles ?? 0, 12);
        for (var i = 0; i < count; i++)
        {
            yield return (Terrain.Length * (i + 0.5) / count, Terrain.DepthOfBox * 0.6);
        }
    }

    private PieceSpot Piece(int i)
    {
        var piece = Design.Hardscape[i];
        var entry = Numbers.Design.Entry($"hardscape[{i}].material");
        var volume = HardscapeSize.Volume(Numbers.Design, i).Si;
        var stone = entry.Text("seat") == "base";
        var stretch = stone ? 1.5 : 2.6;
        var length = Math.Min(
            piece.Length?.Si ?? stretch * Math.Cbrt(volume / stretch * 1.4),
            Terrain.Length * 0.8
        );
        var height = Math.Clamp(
            length > 0 ? Math.Sqrt(volume / length) * 1.25 : 0.02,
            0.01,
            Terrain.Height * 0.7
        );
        var x = piece.At?.X.Si ?? Terrain.Length * (i + 0.62) / (Design.Hardscape.Count + 0.24);
        var y = piece.At?.Y.Si ?? Terrain.Front + 0.55 * (Terrain.Back - Terrain.Front);
        var ground = Terrain.Ground(x, y);
        var onBase = (piece.Seat ?? (stone ? Seat.Base : Seat.Soil)) == Seat.Base;
        var buried = piece.Buried?.Si ?? SizingPolicy.Buried.Si;
        return new PieceSpot(i + 1, entry.Name, $"hardscape[{i}]")
        {
            X = x,
            Y = y,
            Foot = onBase && stone ? Math.Max(0, ground - height * buried) : ground - height * buried,
            Length = length,
            Height = height,
            IsStone = stone,
        };
    }

    private PlantSpot Plant(Planting plant, int i)
    {
        var entry = Numbers.Design.Entry($"plants[{i}].plant");
        var grown = entry.Figure("sizeHigh")?.Si ?? 0.15;
        var habit = (entry.Text("habit") ?? "") + " " + (entry.Text("rootPlace") ?? "");
        var form = Form(entry.Key, habit);
        var x = plant.At?.X.Si ?? Terrain.Length * (i + 0.5) / Design.Plants.Count;
        var y = plant.At?.Y.Si ?? (plant.Mounted ? Terrain.Back - 0.02 : Terrain.DepthOfBox * 0.6);
        var z =
            plant.At?.Z?.Si ?? (plant.Mounted ? Terrain.Height * 0.6 : Terrain.Ground(x, y) + Terrain.Moss);
        return new PlantSpot(i + 1, entry.Name, $"plants[{i}].at")
        {
            X = Math.Clamp(x, 0, Terrain.Length),
            Y = Math.Clamp(y, 0, Terrain.DepthOfBox),
            Z = Math.Clamp(z, 0, Terrain.Height),
            Size = Math.Clamp(grown, 0.03, Math.Min(Terrain.Height, Terrain.Length) * 0.3),
            Form = form,
            Mounted = plant.Mounted,
            Count = plant.Count,
            PlaceIsOpen = plant.At is null,
        };
    }

    private static PlantForm Form(string key, string habit) =>
        Says(habit, "tank") || Says(habit, "bromeliad") || Says(habit, "atmospheric") ? PlantForm.Rosette
        : Says(habit, "climber") || Says(habit, "hemiepiphyte") ? PlantForm.Climber
        : Says(habit, "mat") || Says(habit, "moss") || Says(habit, "creeping") ? PlantForm.Mat
        : Says(habit, "nest")
        || key.StartsWith("nephrolepis", StringComparison.Ordinal)
        || key.StartsWith("adiantum", StringComparison.Ordinal)
        || key.StartsWith("davallia", StringComparison.Ordinal)
            ? PlantForm.Fronds
        : PlantForm.Tuft;

    private static bool Says(string text, string word) => text.Contains(word, StringComparison.Ordinal);

    private VentSpot Vent(Vent vent, int i)
    {
        var height = vent.Height?.Si ?? Terrain.Height;
        var side = vent.Side ?? (height > Terrain.Height - 0.03 ? Side.Top : Side.Front);
        var room = side is Side.Left or Side.Right ? Terrain.DepthOfBox : Terrain.Length;
        var width = vent.Width?.Si ?? UsualVentWidth;
        var length = vent.Length?.Si ?? Math.Min(room * 0.95, (vent.Area?.Si ?? 0) / width);
        return new VentSpot(i + 1, $"vents[{i}]", side, room / 2)
        {
            Length = length,
            Width = width,
            Height = height,
        };
    }

    private DrainSpot Outlet(Drain drain)
    {
        var side = drain.Side ?? Side.Back;
        var room = side is Side.Left or Side.Right ? Terrain.DepthOfBox : Terrain.Length;
        return new DrainSpot(
            drain.Kind,
            side,
            drain.Along?.Si ?? room * 0.9,
            drain.Height?.Si ?? (drain.Kind == DrainKind.Siphon ? 0.005 : 0.02),
            drain.Diameter?.Si ?? 0.016
        );
    }
}
