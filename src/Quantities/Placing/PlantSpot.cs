using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;

namespace Litterfall.Quantities.Placing;

/// <summary>How a plant stands.</summary>
public enum PlantForm
{
    /// <summary>A rosette or cup.</summary>
    Rosette,

    /// <summary>Fronds from one foot.</summary>
    Fronds,

    /// <summary>Climbs or shingles on a wall.</summary>
    Climber,

    /// <summary>A low mat or moss.</summary>
    Mat,

    /// <summary>A tuft of leaves.</summary>
    Tuft,
}

/// <summary>
/// A plant at its place, in meters inside the box. What the design leaves open gets a usual place.
/// </summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Name">Its name.</param>
/// <param name="Key">Key of its place in the design.</param>
public sealed record PlantSpot(int Number, string Name, string Key)
{
    private const double UsualSize = 0.15;
    private const double LeastSize = 0.03;

    /// <summary>Along the front from the left, m.</summary>
    public required double X { get; init; }

    /// <summary>From front to back, m.</summary>
    public required double Y { get; init; }

    /// <summary>Its foot over the base, m.</summary>
    public required double Z { get; init; }

    /// <summary>Grown size, kept to what a drawing bears, m.</summary>
    public required double Size { get; init; }

    /// <summary>How it stands.</summary>
    public required PlantForm Form { get; init; }

    /// <summary>True on wood or background.</summary>
    public required bool Mounted { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>True when the design does not say where it sits.</summary>
    public required bool PlaceIsOpen { get; init; }

    /// <summary>All plants of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="terrain">Its ground.</param>
    public static ImmutableArray<PlantSpot> Of(CheckedDesign design, Terrain terrain) =>
        [.. design.Design.Plants.Select((p, i) => One(design, terrain, p, i))];

    private static PlantSpot One(CheckedDesign design, Terrain terrain, Planting plant, int i)
    {
        var entry = design.Entry<PlantEntry>(FormattableString.Invariant($"plants[{i}].plant"));
        var grown = entry.LargestGrown?.Si ?? UsualSize;
        var habit = (entry.Habit?.Text ?? "") + " " + (entry.RootPlace?.Text ?? "");
        var x = plant.At?.X.Si ?? terrain.Length * (i + 0.5) / design.Design.Plants.Count;
        var y = plant.At?.Y.Si ?? (plant.Mounted ? terrain.Back - 0.02 : terrain.DepthOfBox * 0.6);
        var z = plant.At?.Z?.Si
            ?? (plant.Mounted ? terrain.Height * 0.6 : terrain.Ground(x, y) + terrain.Moss);
        return new PlantSpot(i + 1, entry.Name, FormattableString.Invariant($"plants[{i}].at"))
        {
            X = Math.Clamp(x, 0, terrain.Length),
            Y = Math.Clamp(y, 0, terrain.DepthOfBox),
            Z = Math.Clamp(z, 0, terrain.Height),
            Size = Math.Clamp(
                grown,
                LeastSize,
                Math.Max(LeastSize, Math.Min(terrain.Height, terrain.Length) * 0.3)
            ),
            Form = FormOf(entry.Key, habit),
            Mounted = plant.Mounted,
            Count = plant.Count,
            PlaceIsOpen = plant.At is null,
        };
    }

    private static PlantForm FormOf(string key, string habit) =>
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
}
