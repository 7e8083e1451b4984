using System.Numerics;
using Litterfall.Documents.Shapes;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>A plant with the ground, walls and room around it.</summary>
/// <param name="Plant">The plant.</param>
/// <param name="Size">Its size now, m.</param>
/// <param name="Dice">Its chance.</param>
/// <param name="Terrain">The ground.</param>
internal sealed record PlantPlace(Specimen Plant, float Size, Dice Dice, Terrain Terrain)
{
    private const float Clear = 0.002f;

    /// <summary>Where it stands.</summary>
    public Vector3 Foot { get; } = new((float)Plant.X, (float)Plant.Y, (float)Plant.Z);

    /// <summary>Color of its leaves.</summary>
    public Vector3 Color { get; } = Hue.Of(Plant.Colors[0]);

    /// <summary>Color of marks on its leaves; null without.</summary>
    public Vector3? Mark { get; } =
        Plant.Colors.Length > 1 && !IsFlower(Plant) ? Hue.Of(Plant.Colors[1]) : null;

    /// <summary>Color of its flower; null without.</summary>
    public Vector3? Flower { get; } =
        Plant.Colors.Length > 1 && IsFlower(Plant) ? Hue.Of(Plant.Colors[1][..^"flower".Length]) : null;

    /// <summary>A color a little off its own.</summary>
    public Vector3 Tint(float share = 0.07f) => Hue.Times(Color, Dice.About(share));

    /// <summary>Height of soil and moss at a place of the box, m.</summary>
    public float Ground(float x, float y) => (float)(Terrain.Ground(x, y) + Terrain.Moss);

    /// <summary>A point kept inside the box, where leaves press against the panes.</summary>
    public Vector3 Kept(Vector3 p) =>
        new(
            Math.Clamp(p.X, (float)Terrain.Left + Clear, (float)Terrain.Right - Clear),
            Math.Clamp(p.Y, (float)Terrain.Front + Clear, (float)Terrain.Back - Clear),
            Math.Clamp(p.Z, Clear, (float)Terrain.Height - Clear)
        );

    /// <summary>The wall it climbs: the nearest background, else the back.</summary>
    public (Vector3 At, Vector3 Normal) Wall(Design design)
    {
        var sides = Terrain.Covered(design);
        var walls = new List<(float Far, Vector3 At, Vector3 Normal)>();
        foreach (var side in sides.Count > 0 ? sides : [Side.Back])
        {
            var (at, normal) = side switch
            {
                Side.Left => (Foot with { X = (float)Terrain.Left }, Vector3.UnitX),
                Side.Right => (Foot with { X = (float)Terrain.Right }, -Vector3.UnitX),
                Side.Front => (Foot with { Y = (float)Terrain.Front }, Vector3.UnitY),
                _ => (Foot with { Y = (float)Terrain.Back }, -Vector3.UnitY),
            };
            walls.Add((Vector3.Distance(at, Foot), at, normal));
        }

        var (_, best, facing) = walls.MinBy(w => w.Far);
        return (best, facing);
    }

    private static bool IsFlower(Specimen plant) =>
        plant.Colors[1].EndsWith("flower", StringComparison.Ordinal);
}
