using System.Collections.Immutable;
using Litterfall.Documents.Shapes;
using Litterfall.Domain;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>The outlet, in meters.</summary>
internal sealed record DrainSpot(DrainKind Kind, Side Side, double Along, double Height, double Diameter);

/// <summary>
/// Where everything sits in the box. What the design leaves open gets a usual place, so that a drawing can
/// be
/// made; the drawing says which places were left open.
/// </summary>
internal sealed class Scene
{
    public Scene(DesignNumbers numbers)
    {
        Numbers = numbers;
        Terrain = new Terrain(numbers.Design, numbers.Box, numbers.Layers);
        Pieces = PieceSpot.Of(numbers.Design, Terrain);
        Plants = PlantSpot.Of(numbers.Design, Terrain);
        Specimens = Specimen.Of(numbers.Design, Terrain, Plants);
        Vents = VentSpot.Of(numbers.Design, numbers.Box);
        Drain = numbers.Design.Design.Drain is { } drain ? Outlet(drain) : null;
    }

    /// <summary>True for a screen: any scale, and names on one side where it is narrow.</summary>
    public bool OnScreen { get; init; }

    public DesignNumbers Numbers { get; }

    public Design Design => Numbers.Design.Design;

    public Terrain Terrain { get; }

    public ImmutableArray<PieceSpot> Pieces { get; }

    public ImmutableArray<PlantSpot> Plants { get; }

    /// <summary>Every single plant.</summary>
    public ImmutableArray<Specimen> Specimens { get; }

    public ImmutableArray<VentSpot> Vents { get; }

    public DrainSpot? Drain { get; }

    /// <summary>Highest allowed water: 1 cm below the barrier; null without a drainage layer.</summary>
    public double? WaterLine => Terrain.Drainage > 0.01 ? Terrain.Drainage - 0.01 : null;

    /// <summary>Key of the material of a piece.</summary>
    public string MaterialOf(PieceSpot piece) => Design.Hardscape[piece.Number - 1].Material;

    /// <summary>Nozzles, spread along the back third under the lid.</summary>
    public IEnumerable<(double X, double Y)> Nozzles()
    {
        var count = Math.Min(Design.Misting?.Nozzles ?? 0, 12);
        for (var i = 0; i < count; i++)
        {
            yield return (
                Terrain.Length * (i + 0.5) / count,
                Terrain.DepthOfBox * EquipmentPolicy.NozzleRow.Si
            );
        }
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
